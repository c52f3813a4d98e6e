export type { BreathingLoop, HalfBreath, WorkOfBreathing } from './breathing-loop.ts'
export { elastanceAndInertance, type LinearLoad, type LoadedBreath, loadedBreath } from './elastance.ts'
export { type HydrostaticHead, hydrostaticImbalance } from './hydrostatic-imbalance.ts'
export type { LoopFinding, LoopFindingCode } from './loop-finding.ts'
export { meanWorkOfBreathing } from './mean-work-of-breathing.ts'
export {
  type LoopOptions,
  loopWork,
  workOfBreathing,
} from './work-of-breathing.ts'
export { powerOfBreathing, workOfBreathingPerLitreOf } from './work-per-litre.ts'
