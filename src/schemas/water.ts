import * as z from 'zod/mini'
import type { WaterColumn } from '../environment/index.ts'
import { type QuantityInput, quantitySchema } from './quantity.ts'

/** Water over a depth. */
export interface WaterColumnInput {
  readonly surfacePressure: QuantityInput
  readonly density: QuantityInput
}

/** A column of water: absolute pressure at the surface and density. The surface pressure is never assumed. */
export const waterColumnSchema: z.ZodMiniType<WaterColumn, WaterColumnInput> = z.strictObject({
  surfacePressure: quantitySchema('absolute pressure', { role: 'surface pressure' }),
  density: quantitySchema('density'),
})
