import * as z from 'zod/mini'
import { type Gas, type GasContents, gases, type Mixture, mixture, mixtureFromText } from '../gas-law/index.ts'
import { guarded, type QuantityInput, quantitySchema } from './quantity.ts'

const fraction = z.number().check(z.meta({ description: 'mole fraction, 0 to 1' }))

/** A mixture as people write it, `nitrox 32` or `18/45`, or mole fractions by gas; gases left out are absent. */
export type MixtureInput = string | { readonly [Name in Gas]?: number | undefined }

/**
 * Mixture from text, or by mole fractions, which must sum to 1: nothing is normalised. `z.encode` gives it back by the fractions of the
 * gases that are there.
 */
export const mixtureSchema: z.ZodMiniType<Mixture, MixtureInput> = z.codec(
  z.union([
    z.string().check(z.meta({ description: 'a mixture as people write it', examples: ['air', 'nitrox 32', '18/45'] })),
    z.strictObject({
      nitrogen: z.optional(fraction),
      oxygen: z.optional(fraction),
      argon: z.optional(fraction),
      helium: z.optional(fraction),
      carbonDioxide: z.optional(fraction),
      water: z.optional(fraction),
      hydrogen: z.optional(fraction),
    }),
  ]),
  z.custom<Mixture>(),
  {
    decode: (stated, context) =>
      guarded(context, () =>
        typeof stated === 'string'
          ? mixtureFromText(stated)
          : mixture(Object.fromEntries(Object.entries(stated).filter(([, value]) => value !== undefined))),
      ),
    encode: (made: Mixture | undefined) =>
      // zod runs this for an optional field that is not there, too, and drops what comes of it
      made === undefined
        ? {}
        : Object.fromEntries(gases.filter((gas) => made[gas] > 0).map((gas) => [gas, Number(made[gas])])),
  },
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
export const cylinderContentsSchema: z.ZodMiniType<GasContents, CylinderContentsInput> = z.strictObject({
  internalVolume: quantitySchema('internal volume', { role: 'internal volume' }),
  gaugePressure: quantitySchema('gauge pressure', { role: 'cylinder gauge pressure' }),
  ambientPressure: quantitySchema('absolute pressure', { role: 'ambient pressure' }),
  temperature: quantitySchema('temperature', { role: 'gas temperature' }),
  mixture: mixtureSchema,
})
