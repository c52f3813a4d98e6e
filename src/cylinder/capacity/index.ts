export { type BankCapacity, bankCapacity } from './bank-capacity.ts'
export {
  type CapacityRow,
  type CapacityTableCondition,
  capacityColumns,
  capacityTable,
  type ListedCylinder,
  tradeSizes,
} from './capacity-table.ts'
export {
  type CapacityComparison,
  type CapacityCondition,
  type CapacityOptions,
  compareRatedCapacity,
  internalVolumeForCapacity,
  ratedCapacity,
} from './rated-capacity.ts'
export { type TradeSizeReading, tradeSizeReadings } from './trade-size.ts'
