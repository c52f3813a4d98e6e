export {
  type CartridgeAir,
  type CartridgeLife,
  cartridgeCapacity,
  cartridgeLife,
  cartridgeLifeRatio,
  cartridgeLoad,
  type FillThroughSeparator,
  fillWaterFraction,
} from './cartridge.ts'
export { assessCartridge, type CartridgeLeft, type CartridgeLog, type CartridgeRun } from './cartridge-log.ts'
export {
  assessFrost,
  type DeliveredMoisture,
  type DewPointAt,
  deliveredMoisture,
  type ExpandedAir,
} from './delivered-moisture.ts'
export type { SeparatorState, WaterFlow } from './saturation.ts'
export {
  type DrainInterval,
  drainInterval,
  type SeparatedWater,
  type Separator,
  type SeparatorTrain,
  separatedWater,
  type TrainWater,
} from './separators.ts'
export { type RunningColumns, separatedWaterInto, type WaterColumns } from './water-columns.ts'
