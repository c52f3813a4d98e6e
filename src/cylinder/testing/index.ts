export {
  averageWallStress,
  type ElasticFactor,
  type ElasticTest,
  rejectionElasticExpansion,
} from './average-wall-stress.ts'
export {
  type DirectReadings,
  directExpansion,
  type WaterDensities,
  waterCompression,
  waterCompressionByPractice,
  waterDensities,
} from './direct-expansion.ts'
export {
  type ElasticExcessRule,
  type ExpansionTestTerm,
  elasticExcessRules,
  expansionTestTerms,
  type PermanentExpansionLimit,
  type PermanentExpansionLimitId,
  permanentExpansionLimits,
} from './expansion-rule.table.ts'
export { type ExpansionJudgement, type ExpansionReadings, type ExpansionTest, expansionTest } from './expansion-test.ts'
export { type GuaranteedWall, guaranteedWall, type WallDesignRule, wallDesignRules } from './guaranteed-wall.ts'
export { type MaterialRule, materialRules } from './material-rule.table.ts'
export {
  bendingStress,
  type CylinderShell,
  longitudinalStress,
  minimumWallForStress,
  type Stress,
  wallStress,
} from './wall-stress.ts'
