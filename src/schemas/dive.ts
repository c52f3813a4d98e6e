import * as z from 'zod/mini'
import type {
  Ascent,
  BreathedCylinder,
  BreathedDive,
  DepthPoint,
  MeasuredUse,
  Profile,
  Residual,
  Supply,
} from '../consumption/index.ts'
import { profileInWater } from '../consumption/index.ts'
import type { WaterColumn } from '../environment/index.ts'
import type { StatedRecord } from '../units/index.ts'
import { type CylinderContentsInput, cylinderContentsSchema } from './gas.ts'
import { guarded, type QuantityInput, quantitySchema } from './quantity.ts'
import { goingTogether, recordOfDive } from './record.ts'
import { type WaterColumnInput, waterColumnSchema } from './water.ts'

const rate = quantitySchema('volume flow', { role: 'respiratory minute volume' })
const temperature = quantitySchema('temperature', { role: 'gas temperature' })

/** One reading of a depth recorder. */
export interface DepthPointInput {
  readonly time: QuantityInput
  readonly depth: QuantityInput
}

/** One reading of a depth recorder. */
export const depthPointSchema: z.ZodMiniType<DepthPoint, DepthPointInput> = z.strictObject({
  time: quantitySchema('duration'),
  depth: quantitySchema('depth', { role: 'depth' }),
})

/** A dive as a recorder has it, with the water it was made in. */
export interface DiveProfileInput {
  readonly water: WaterColumnInput
  readonly points: readonly DepthPointInput[]
}

/** A profile of depth against time in stated water; gives the profile of ambient pressure. Refuses a profile that goes back in time. */
export const diveProfileSchema: z.ZodMiniType<Profile, DiveProfileInput> = z.pipe(
  z.strictObject({ water: waterColumnSchema, points: z.array(depthPointSchema) }),
  z.transform(({ points, water }: { points: DepthPoint[]; water: WaterColumn }, context) =>
    guarded(context, () => profileInWater(points, water)),
  ),
)

/** A dive with the readings that a breathing rate is measured from. */
export interface MeasuredUseInput {
  readonly cylinders: readonly { readonly before: CylinderContentsInput; readonly after: CylinderContentsInput }[]
  readonly profile: DiveProfileInput
  readonly breathingGasTemperature: QuantityInput
  readonly surfacePressure: QuantityInput
}

/** What `measuredRate` takes. */
export const measuredUseSchema: z.ZodMiniType<MeasuredUse, MeasuredUseInput> = z
  .strictObject({
    cylinders: z
      .array(z.strictObject({ before: cylinderContentsSchema, after: cylinderContentsSchema }))
      .check(z.minLength(1)),
    profile: diveProfileSchema,
    breathingGasTemperature: temperature,
    surfacePressure: quantitySchema('absolute pressure', { role: 'surface pressure' }),
  })
  .check(goingTogether<MeasuredUse>(recordOfUse))

/** Several cylinders may hold several gases, and nobody knows which was breathed where. */
function recordOfUse({ cylinders, profile }: MeasuredUse): StatedRecord {
  const [only, ...others] = cylinders
  if (only === undefined || others.length > 0) return {}
  const { after } = only
  return {
    ...recordOfDive(profile, only.before),
    'ending gauge pressure': 'gaugePressure' in after ? after.gaugePressure : undefined,
    duration: (profile.at(-1)?.time ?? 0) - (profile[0]?.time ?? 0),
  }
}

/** An absolute pressure, or what the first stage needs above the pressure around the diver. */
export type ResidualInput = QuantityInput | { readonly aboveAmbient: QuantityInput }

/** The pressure at which a cylinder is taken as used up. */
export const residualSchema: z.ZodMiniType<Residual, ResidualInput> = z.union([
  quantitySchema('absolute pressure'),
  z.strictObject({ aboveAmbient: quantitySchema('pressure difference') }),
])

/** A cylinder that is breathed from. */
export interface BreathedCylinderInput {
  readonly contents: CylinderContentsInput
  readonly residualPressure: ResidualInput
}

/** A cylinder with the pressure at which it is taken as used up. */
export const breathedCylinderSchema: z.ZodMiniType<BreathedCylinder, BreathedCylinderInput> = z.strictObject({
  contents: cylinderContentsSchema,
  residualPressure: residualSchema,
})

/** What an endurance is asked of. */
export interface SupplyInput {
  readonly cylinders: readonly BreathedCylinderInput[]
  readonly respiratoryMinuteVolume: QuantityInput
  readonly ambientPressure: QuantityInput
  readonly breathingGasTemperature: QuantityInput
}

/** What `endurance` takes. */
export const supplySchema: z.ZodMiniType<Supply, SupplyInput> = z.strictObject({
  cylinders: z.array(breathedCylinderSchema).check(z.minLength(1)),
  respiratoryMinuteVolume: rate,
  ambientPressure: quantitySchema('absolute pressure', { role: 'ambient pressure' }),
  breathingGasTemperature: temperature,
})

/** A dive with what is breathed on it, and out of which cylinder. */
export interface BreathedDiveInput {
  readonly profile: DiveProfileInput
  readonly breathing: readonly {
    readonly from: QuantityInput
    readonly respiratoryMinuteVolume: QuantityInput
    readonly cylinder: string
  }[]
  readonly cylinders: Readonly<Record<string, BreathedCylinderInput>>
  readonly breathingGasTemperature: QuantityInput
}

/** What `gasUsed` takes. */
export const breathedDiveSchema: z.ZodMiniType<BreathedDive, BreathedDiveInput> = z
  .strictObject({
    profile: diveProfileSchema,
    breathing: z
      .array(z.strictObject({ from: quantitySchema('duration'), respiratoryMinuteVolume: rate, cylinder: z.string() }))
      .check(z.minLength(1)),
    cylinders: z.record(z.string(), breathedCylinderSchema),
    breathingGasTemperature: temperature,
  })
  .check(
    goingTogether<BreathedDive>(({ cylinders, profile }) => {
      const [only, ...others] = Object.values(cylinders)
      return only === undefined || others.length > 0 ? {} : recordOfDive(profile, only.contents)
    }),
  )

/** An ascent that gas is kept for. */
export interface AscentInput {
  readonly depth: QuantityInput
  readonly water: WaterColumnInput
  readonly breathers: readonly QuantityInput[]
  readonly stressFactor: number
  readonly timeAtDepth: QuantityInput
  readonly ascentRate: QuantityInput
  readonly stop?: { readonly depth: QuantityInput; readonly duration: QuantityInput }
}

/** What `ascentReserve` takes of the ascent. */
export const ascentSchema: z.ZodMiniType<Ascent, AscentInput> = z.strictObject({
  depth: quantitySchema('depth', { role: 'depth' }),
  water: waterColumnSchema,
  breathers: z.array(rate).check(z.minLength(1)),
  stressFactor: z.number().check(z.gte(1)),
  timeAtDepth: quantitySchema('duration'),
  ascentRate: quantitySchema('speed'),
  stop: z.exactOptional(
    z.strictObject({ depth: quantitySchema('depth', { role: 'depth' }), duration: quantitySchema('duration') }),
  ),
})
