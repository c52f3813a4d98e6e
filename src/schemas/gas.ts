import * as z from 'zod'
import { type Gas, type GasContents, type Mixture, mixture } from '../gas-law/index.ts'
import { guarded, type QuantityInput, quantitySchema } from './quantity.ts'

const fraction = z.number().meta({ description: 'mole fraction, 0 to 1' })

/** Mole fractions by gas; gases left out are absent. */
export type MixtureInput = { readonly [Name in Gas]?: number | undefined }

/** Mixture by mole fractions, which must sum to 1: nothing is normalised. */
export const mixtureSchema: z.ZodType<Mixture, MixtureInput> = z
  .strictObject({
    nitrogen: fraction.optional(),
    oxygen: fraction.optional(),
    argon: fraction.optional(),
    helium: fraction.optional(),
    carbonDioxide: fraction.optional(),
    water: fraction.optional(),
    hydrogen: fraction.optional(),
  })
  .transform((fractions, context) =>
    guarded(context, () =>
      mixture(Object.fromEntries(Object.entries(fractions).filter(([, value]) => value !== undefined))),
    ),
  )

/** What a cylinder holds, its pressure as a gauge shows it. */
export interface CylinderContentsInput {
  readonly internalVolume: QuantityInput
  readonly gaugePressure: QuantityInput
  readonly ambientPressure: QuantityInput
  readonly temperature: QuantityInput
  readonly mixture: MixtureInput
}

/** Contents of a cylinder: internal volume, gauge pressure with the ambient pressure around the gauge, temperature of the gas, mixture. */
export const cylinderContentsSchema: z.ZodType<GasContents, CylinderContentsInput> = z.strictObject({
  internalVolume: quantitySchema('internal volume', { role: 'internal volume' }),
  gaugePressure: quantitySchema('gauge pressure', { role: 'cylinder gauge pressure' }),
  ambientPressure: quantitySchema('absolute pressure', { role: 'ambient pressure' }),
  temperature: quantitySchema('temperature', { role: 'gas temperature' }),
  mixture: mixtureSchema,
})
