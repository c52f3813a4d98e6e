import { LitrebarError } from '../errors/index.ts'

/**
 * Refuses what is no list, or one that is too short.
 *
 * @param argument - the parameter with its path
 * @param given - what was handed in
 * @param least - how many it must hold
 * @param hint - what to do about it
 * @throws LitrebarError `input`
 */
export function requireList(argument: string, given: unknown, least: number, hint: string): void {
  const isList = Array.isArray(given)
  if (isList && given.length >= least) return
  throw new LitrebarError({
    code: 'input',
    argument,
    value: isList ? (given.length === 0 ? 'empty' : `${String(given.length)} in number`) : 'not a list',
    expected: least > 0 ? `at least ${String(least)}` : 'a list',
    hint,
  })
}
