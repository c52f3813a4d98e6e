export {
  type AscentRate,
  type AscentRateColumns,
  ascentRate,
  ascentRateInto,
  type DepthAtTime,
  type FilterLag,
  filterLag,
} from './ascent-rate.ts'
export { type AutomaticTime, automaticTime, timerError, watchRates } from './timer.ts'
