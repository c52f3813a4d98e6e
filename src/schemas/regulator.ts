import * as z from 'zod/mini'
import type { BreathingLog, BreathingSetting, TestConditions } from '../regulator-performance/index.ts'
import { allUnits, type Dimension, type Fraction, parseUnit } from '../units/index.ts'
import { type MixtureInput, mixtureSchema } from './gas.ts'
import { guarded, type QuantityInput, quantitySchema } from './quantity.ts'
import { goingTogether } from './record.ts'

/** One column of a log with the unit of its numbers. A missing value is null. */
export interface ColumnInput {
  readonly values: readonly (number | null)[]
  readonly unit: string
}

function columnSchema(dimension: Dimension): z.ZodMiniType<Float64Array, ColumnInput> {
  return z.codec(
    z.strictObject({ values: z.array(z.nullable(z.number())), unit: z.string() }),
    z.custom<Float64Array>((given) => given instanceof Float64Array),
    {
      decode: ({ values, unit }, context) =>
        guarded(context, () => {
          const { factor, offset = 0 } = parseUnit(unit, dimension)
          return Float64Array.from(values, (value) => (value === null ? Number.NaN : value * factor + offset))
        }),
      encode: (column) => ({
        // zod runs this for an optional field that is not there, too, and drops what comes of it
        values: Array.from((column as Float64Array | undefined) ?? [], (value) => (Number.isNaN(value) ? null : value)),
        unit: allUnits.find((unit) => unit.quantity === dimension && unit.factor === 1 && !unit.offset)?.symbol ?? '',
      }),
    },
  )
}

/** A log of breaths in columns, each with its unit. */
export interface BreathingLogInput {
  readonly time: ColumnInput
  readonly volume?: ColumnInput
  readonly flow?: ColumnInput
  readonly pressure: ColumnInput
}

/** What `breathingAnalysis` takes: time, volume or flow, and mouth pressure. Rows with a missing value are told apart there. */
export const breathingLogSchema: z.ZodMiniType<BreathingLog, BreathingLogInput> = z
  .strictObject({
    time: columnSchema('duration'),
    volume: z.exactOptional(columnSchema('volume')),
    flow: z.exactOptional(columnSchema('volume flow')),
    pressure: columnSchema('pressure'),
  })
  .check(
    z.refine(
      (log) => (log.volume === undefined) !== (log.flow === undefined),
      'Give the volume or the flow, not both and not neither.',
    ),
  )

/** How a breathing machine is set. */
export interface BreathingSettingInput {
  readonly tidalVolume: QuantityInput
  readonly breathingFrequency: QuantityInput
  readonly waveform:
    | { readonly shape: 'sinusoid' }
    | { readonly shape: 'trapezoid'; readonly inhalationShare: number; readonly rampShare: number }
}

const fraction = z.number() as unknown as z.ZodMiniType<Fraction, number>

/** What `simulatedBreathing` takes. */
export const breathingSettingSchema: z.ZodMiniType<BreathingSetting, BreathingSettingInput> = z.strictObject({
  tidalVolume: quantitySchema('volume'),
  breathingFrequency: quantitySchema('frequency'),
  waveform: z.discriminatedUnion('shape', [
    z.strictObject({ shape: z.literal('sinusoid') }),
    z.strictObject({ shape: z.literal('trapezoid'), inhalationShare: fraction, rampShare: fraction }),
  ]),
})

/** Under what a regulator was measured. */
export interface TestConditionsInput {
  readonly ambientPressure?: QuantityInput
  readonly surfacePressure?: QuantityInput
  readonly gas?: MixtureInput
  readonly waveform?: 'sinusoid' | 'trapezoid' | 'other'
  readonly tidalVolume?: QuantityInput
  readonly breathingFrequency?: QuantityInput
  readonly respiratoryMinuteVolume?: QuantityInput
  readonly waterTemperature?: QuantityInput
  readonly supplyPressure?: QuantityInput
  readonly ratedWorkingPressure?: QuantityInput
  readonly attitude?: 'vertical' | 'horizontal'
}

/** The conditions that `assessAcceptance` compares with those of the limits. What is left out is not known, and makes a limit not comparable. */
export const testConditionsSchema: z.ZodMiniType<TestConditions, TestConditionsInput> = z
  .strictObject({
    ambientPressure: z.exactOptional(quantitySchema('absolute pressure', { role: 'ambient pressure' })),
    surfacePressure: z.exactOptional(quantitySchema('absolute pressure', { role: 'surface pressure' })),
    gas: z.exactOptional(mixtureSchema),
    waveform: z.exactOptional(z.enum(['sinusoid', 'trapezoid', 'other'])),
    tidalVolume: z.exactOptional(quantitySchema('volume')),
    breathingFrequency: z.exactOptional(quantitySchema('frequency')),
    respiratoryMinuteVolume: z.exactOptional(quantitySchema('volume flow', { role: 'respiratory minute volume' })),
    waterTemperature: z.exactOptional(quantitySchema('temperature', { role: 'water temperature' })),
    supplyPressure: z.exactOptional(quantitySchema('gauge pressure', { role: 'cylinder gauge pressure' })),
    ratedWorkingPressure: z.exactOptional(quantitySchema('gauge pressure', { role: 'service pressure' })),
    attitude: z.exactOptional(z.enum(['vertical', 'horizontal'])),
  })
  .check(
    goingTogether<TestConditions>((conditions) => ({
      'ambient pressure': conditions.ambientPressure,
      'surface pressure': conditions.surfacePressure,
      'water temperature': conditions.waterTemperature,
      'cylinder gauge pressure': conditions.supplyPressure,
      'service pressure': conditions.ratedWorkingPressure,
      'respiratory minute volume': conditions.respiratoryMinuteVolume,
    })),
  )
