export type { AnalysisOptions, BreathingAnalysis } from './analysed-breathing.ts'
export type { AveragedHalf, AveragedLoop } from './averaged-loop.ts'
export type { BreathRow, BreathSummary, ColumnSummary } from './breath-table.ts'
export { breathingAnalysis } from './breathing-analysis.ts'
export type { BreathingLog } from './breathing-log.ts'
export {
  driftError,
  type LagError,
  type LaggingChannel,
  lagError,
  type SamplingLoss,
  samplingLoss,
  type WorkUncertainty,
  type WorkUncertaintyInput,
  workUncertainty,
} from './channel-error.ts'
export { type ChannelHealth, channelHealth, type RepeatedRows } from './channel-health.ts'
export { type LogColumn, type LoggedColumn, siColumn } from './column.ts'
export type { ChannelLag } from './lag-correction.ts'
export type { MeasuredWork } from './measured-work.ts'
