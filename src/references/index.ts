export { type Assessment, type Evidence, type Reason, type Verdict, verdictFrom } from './assessment.ts'
export { type Caution, type CautionId, cautionOf, cautions } from './cautions.ts'
export { cautionsOf } from './cautions-of.table.ts'
export { type Source, type SourceId, type SourceKind, sourceOf, sources } from './sources.ts'
