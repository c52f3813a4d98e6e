import type { NumberStyle } from '../units/index.ts'
import { solutionShape } from './card-shape.table.ts'
import { requireShape } from './require-shape.ts'
import { numberStyleShape } from './shapes.table.ts'
import type { WorkedSolution } from './worked-solution.ts'

/** Refuses what is no worked solution, and how its numbers cannot be written. */
export function requireSolution(solution: WorkedSolution, style: NumberStyle): void {
  requireShape('solution', solution, solutionShape)
  requireShape('style', style, numberStyleShape)
}
