export {
  amountOfFreeGas,
  type FreeGasByModel,
  freeGas,
  freeGasAt,
  freeGasByModel,
  freeGasOfAmount,
} from './free-gas.ts'
export { type ContentsColumns, freeGasInto } from './free-gas-columns.ts'
export {
  amountOfGas,
  type ContentsByAbsolutePressure,
  type ContentsByGaugePressure,
  type ElasticExpansion,
  type GasContents,
  type GasModelOption,
  massOfGas,
} from './gas-contents.ts'
export { atpd, atps, btpsAt, type MeasuredState } from './measured-reference-condition.ts'
export { pressureChange, pressureVolume } from './pressure-volume.ts'
export {
  btps,
  btpsConventional,
  isoStandard,
  iupacStandard,
  normalCondition,
  referenceConditions,
  roomCondition,
  stpd,
  usStandard,
} from './reference-condition.table.ts'
export type { ReferenceCondition } from './reference-condition.ts'
