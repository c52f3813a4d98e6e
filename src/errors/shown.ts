const longestText = 60

/**
 * Whatever was given, as a short text that no object can make fail: for the `value` of an error.
 *
 * @param given - anything
 * @returns texts in quotes, numbers and words as they are, the rest by its kind; `missing` for undefined
 */
export function shown(given: unknown): string {
  switch (typeof given) {
    case 'undefined':
      return 'missing'
    case 'string':
      return given.length > longestText ? `'${given.slice(0, longestText)}…'` : `'${given}'`
    case 'bigint':
      return `${String(given)}n`
    case 'function':
      return 'a function'
    case 'object':
      return given === null ? 'null' : Array.isArray(given) ? 'a list' : 'an object'
    default:
      return String(given)
  }
}
