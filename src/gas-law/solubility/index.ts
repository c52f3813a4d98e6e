export {
  type DissolvedGas,
  type HenryCoefficients,
  type HenryConstant,
  henryCoefficients,
  henryConstant,
} from './henry-constant.ts'
export type { SeaDissolvedGas } from './sea-water.table.ts'
export {
  airSaturation,
  bunsenCoefficient,
  type DissolvingWater,
  dissolvedConcentration,
} from './sea-water.ts'
