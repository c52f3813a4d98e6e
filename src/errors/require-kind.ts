import { inputError } from './litrebar-error.ts'
import { shown } from './shown.ts'

/**
 * Refuses what is not a list, or one that is too short.
 *
 * @param argument - the parameter with its path
 * @param given - what was handed in
 * @param least - how many it must hold
 * @param hint - what to do about it
 * @throws LitrebarError `input`
 */
export function requireList(argument: string, given: unknown, least = 0, hint = 'Pass a list.'): void {
  const isList = Array.isArray(given)
  if (isList && given.length >= least) return
  throw inputError(
    argument,
    isList ? (given.length === 0 ? 'empty' : `${given.length} in number`) : 'not a list',
    least > 0 ? `at least ${least}` : 'a list',
    hint,
  )
}

/**
 * Refuses what is not a text.
 *
 * @param argument - the parameter with its path
 * @param given - what was handed in
 * @param hint - what to do about it
 * @throws LitrebarError `input`
 */
export function requireText(argument: string, given: unknown, hint = 'Pass a text.'): asserts given is string {
  if (typeof given !== 'string') throw inputError(argument, shown(given), 'a text', hint)
}
