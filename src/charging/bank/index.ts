export { type BoostedDrive, boostedDrive } from './boosted-drive.ts'
export {
  type BoostedFill,
  type Booster,
  type BoosterStroke,
  boosterDrawDown,
  boosterStroke,
} from './booster.ts'
export { type BankRun, type BankYield, compressorStart, fillsFromBank, type LackedFill } from './fills-from-bank.ts'
export { type FillFromBank, type PlannedFill, type PlannedFills, plannedFills } from './planned-fills.ts'
