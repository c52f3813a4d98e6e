import { requireKeys } from '../../errors/index.ts'
import { markNames } from './reading.ts'

/**
 * Refuses a stamp, or marks by hand, with a name that no stamp has: a misspelt mark would count as not stamped.
 *
 * @param argument - the parameter
 * @param given - what was handed in
 * @param required - the names that the function cannot do without
 * @throws LitrebarError `input` for something that is no object, an unknown or a missing name
 */
export function requireStampKeys(argument: string, given: unknown, required: readonly string[]): void {
  const keys: Record<string, boolean> = { system: false, alloyHint: false, fields: false, findings: false }
  for (const name of markNames) keys[name] = false
  for (const name of required) keys[name] = true
  requireKeys(argument, given, keys)
}
