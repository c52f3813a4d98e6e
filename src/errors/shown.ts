/**
 * Whatever was given, as a short text that no object can make fail: for the `value` of an error.
 *
 * @param given - anything
 * @returns texts in quotes, numbers and words as they are, the rest by its kind; `missing` for undefined
 */
export function shown(given: unknown): string {
  if (given === undefined) return 'missing'
  if (typeof given === 'string') return `'${given.slice(0, longestText)}'`
  if (Object(given) === given) return Array.isArray(given) ? 'a list' : `some ${typeof given}`
  // eslint-disable-next-line @typescript-eslint/no-base-to-string -- no object comes as far as this
  return String(given)
}

const longestText = 60
