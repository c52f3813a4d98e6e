export { type CalendarDate, type CalendarMonth, daysBetween, lastDayOf, monthsLater } from './calendar-month.ts'
export { type ExplainedField, type ExplainedFinding, type ExplainedStamp, explainStamp } from './explain-stamp.ts'
export { type FieldText, fieldTexts } from './field-text.table.ts'
export {
  type Finding,
  type FindingCode,
  type FindingDetail,
  type FindingSeverity,
  findingSeverity,
} from './finding.ts'
export { type FindingEvidence, findingEvidence } from './finding-evidence.ts'
export { type FindingText, findingTexts } from './finding-text.table.ts'
export { type MarkingRule, markingRules, type ShoulderColour, shoulderColours } from './marking-rule.table.ts'
export { type ReadStampOptions, readStamp } from './read-stamp.ts'
export {
  type CylinderMaterial,
  type CylinderSpecification,
  type DesignStandard,
  designStandards,
  type SpecificationName,
  specificationOf,
  type UsSpecification,
  usSpecifications,
} from './specification.table.ts'
export type {
  Deadline,
  DualMark,
  MarkingFamily,
  NeckThread,
  Retest,
  RetestSuffix,
  Stamp,
  StampField,
  StampFieldName,
  StampMarks,
  TestKind,
  UsPrefix,
} from './stamp.ts'
export { testKindOf } from './test-kind.ts'
export { waterDensityForCapacity, waterVolume } from './water-capacity.ts'
export { writeStamp } from './write-stamp.ts'
