export { type FillWater, fillWater, type MoistFill } from './fill-water.ts'
export { type InspectionAdvice, inspectionAdvice } from './inspection-advice.ts'
export {
  type InspectionFindingId,
  type InspectionFindingRow,
  inspectionFindings,
  type WearLimit,
  type WearLimitId,
  wearLimits,
} from './inspection-finding.table.ts'
export {
  assessNeckCrack,
  eddyCurrentNotch,
  type NeckCrack,
  type NeckCrackCriterion,
  neckCrackCriteria,
} from './neck-crack.ts'
export { type RustProduct, type RustProductName, rustMolarMasses, rustProducts } from './rust.table.ts'
export {
  type BreathedOxygen,
  breathedOxygenPressure,
  oxygenInRust,
  type RustedContents,
  type RustFound,
  rustedContents,
  type WetCylinder,
} from './rusted-contents.ts'
export { assessStorage, storagePressure } from './storage-pressure.ts'
export { assessPit, assessWear, type MeasuredPit, type WearShareId } from './wear.ts'
