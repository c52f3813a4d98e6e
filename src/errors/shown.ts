const longestText = 60

/**
 * Whatever was given, as a short text that no object can make fail: for the `value` of an error.
 *
 * @param given - anything
 * @returns texts in quotes, numbers and words as they are, the rest by its kind; `missing` for undefined
 */
export function shown(given: unknown): string {
  if (given === undefined) return 'missing'
  if (typeof given === 'string') return given.length > longestText ? `'${given.slice(0, longestText)}…'` : `'${given}'`
  if (typeof given === 'function') return 'a function'
  if (typeof given === 'bigint') return `${String(given)}n`
  if (given === null || typeof given !== 'object') return String(given)
  return Array.isArray(given) ? 'a list' : 'an object'
}
