import { LitrebarError, shown } from '../errors/index.ts'

/** Refuses what is not a function. */
export function requireFunction(argument: string, fn: unknown): void {
  if (typeof fn === 'function') return
  throw new LitrebarError({
    code: 'input',
    argument,
    value: shown(fn),
    expected: 'a function',
    hint: 'Pass the function itself, or an arrow that calls it.',
  })
}
