export { type PeakDemand, peakDemand } from './breathing-demand.ts'
export {
  type BreathingSeries,
  type BreathingSetting,
  breathingSeries,
  peakInhalationFlow,
  type SimulatedBreathing,
  simulatedBreathing,
  type Waveform,
} from './breathing-waveform.ts'
export {
  type PredictionOptions,
  predictedWork,
  type WorkInGas,
  type WorkPrediction,
  workAtDensity,
} from './density-scaling.ts'
export { type FittedResistance, type ResistanceMeasurement, resistanceFit } from './resistance-fit.ts'
export {
  type LoopShape,
  loopShape,
  powerLawWorkPerLitre,
  type ResistanceParts,
  type ResistiveWork,
  resistiveWork,
} from './resistance-model.ts'
export { type SharedBreath, type SharingBreather, type TwoBreathers, twoBreathers } from './two-breathers.ts'
export { type MeasuredInGas, type WorkInTwoGases, workInTwoGases } from './work-in-two-gases.ts'
