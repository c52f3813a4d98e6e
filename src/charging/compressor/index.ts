export {
  assessRunning,
  type CompressorEvidence,
  type CompressorFault,
  type RunningAssessment,
  type RunningCheck,
  type StageReadings,
} from './assess-running.ts'
export { type ChargingTime, type CylinderToCharge, chargingTime } from './charging-time.ts'
export { type CompressedGas, type Compression, type CompressionPath, compression } from './compression.ts'
export { compressorDelivery, type Delivery, type IntakeStage } from './delivery.ts'
export {
  bestInterstagePressures,
  type SharingModel,
  type StageBound,
  type StagesToShare,
  stagesNeeded,
} from './interstage.ts'
export {
  type CompressorAtWork,
  type CompressorStage,
  compressorWork,
  type MultistageCompressor,
  type StageAtWork,
  shaftPower,
} from './multistage.ts'
export {
  type FillingRate,
  type FillingTest,
  fillingRate,
  fillingRateFromFreeAir,
  fillingRateOf,
  freeAirFromFillingRate,
} from './rating.ts'
export {
  type BuiltStage,
  type RunningCompressor,
  type RunningPressures,
  runningPressures,
} from './running-pressures.ts'
export {
  type ClearanceSpace,
  clearanceFromStall,
  stallRatio,
  volumetricEfficiency,
} from './volumetric-efficiency.ts'
