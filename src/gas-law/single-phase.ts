import { LitrebarError } from '../errors/index.ts'
import type { Equation } from './gerg2008.ts'

export function requireSinglePhase(equation: Equation, pressure: number, temperature: number, delta: number): void {
  if (delta > 0) return
  throw new LitrebarError({
    code: 'outside-validity',
    argument: 'state',
    value: `${pressure / 1e5} bar at ${temperature} K`,
    expected: 'a gas',
    hint: `The mixture of ${equation.present.join(', ')} is not a gas there.`,
  })
}
