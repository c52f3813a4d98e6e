export { type CircuitConditions, type CircuitEndurance, type Circuits, circuitEndurance } from './circuit-endurance.ts'
export {
  assessSemiClosed,
  type ConstantMassFlow,
  type SemiClosedAssessment,
  type SemiClosedLoop,
  semiClosedFlow,
  semiClosedOxygen,
  semiClosedUptake,
} from './semi-closed.ts'
