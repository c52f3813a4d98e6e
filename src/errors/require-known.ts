import { inputError, type LitrebarError } from './litrebar-error.ts'
import { shown } from './shown.ts'

/**
 * Refuses an object with a key that the function does not know, or without one that it needs: a misspelt option would otherwise
 * change a result in silence.
 *
 * @param argument - the parameter with its path, as the caller wrote it
 * @param given - what was handed in
 * @param keys - every key the function reads: `true` where it is required; any other value, such as the row of a table, where it
 *   may be left out
 * @throws LitrebarError `input` for something that is not an object, a missing key, or an unknown key, with the nearest known one
 */
export function requireKeys(argument: string, given: unknown, keys: Readonly<Record<string, unknown>>): void {
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    throw inputError(
      argument,
      shown(given),
      `an object with ${listed(Object.keys(keys))}`,
      'Pass the fields in one object.',
    )
  for (const key in given) {
    // not `in`: every object inherits names such as `constructor`
    if (!Object.hasOwn(keys, key))
      throw unknown(`${argument}.${key}`, 'not an option', Object.keys(keys), nearestOf(key, Object.keys(keys)))
  }
  for (const key in keys) {
    if (keys[key] === true && (given as Record<string, unknown>)[key] === undefined)
      throw inputError(`${argument}.${key}`, 'missing', 'a value', `State ${key}.`)
  }
}

/**
 * Refuses a word that is none of the allowed ones: read as one of them, it would become an answer.
 *
 * @param argument - the parameter with its path
 * @param word - what was given
 * @param words - the allowed ones; true and false count as words
 * @throws LitrebarError `input`, with the nearest allowed word
 */
export function requireWord<Word extends string | boolean>(
  argument: string,
  word: unknown,
  words: readonly Word[],
): asserts word is Word {
  if ((words as readonly unknown[]).includes(word)) return
  const value = shown(word)
  const near = nearestOf(typeof word === 'string' ? word : value, words.map(String))
  throw unknown(
    argument,
    value,
    words.map(shown),
    near === undefined ? near : shown(words.find((one) => String(one) === near)),
  )
}

/**
 * The known name nearest to a misspelt one.
 *
 * @param word - as given
 * @param known - the names there are
 * @returns the nearest, or undefined where more than one letter and more than a third of the letters differ; their order does not count
 */
export function nearestOf(word: string, known: readonly string[]): string | undefined {
  const apart = (name: string): number => surplus(word, name) + surplus(name, word)
  // more than a third of a word is another word, and so is one without a letter in common
  const isNear = (name: string): boolean =>
    Math.max(surplus(word, name), surplus(name, word)) <= Math.max(3, name.length) / 3 &&
    surplus(name, word) < name.length
  return known.filter(isNear).sort((a, b) => apart(a) - apart(b))[0]
}

/** How many letters a word has that the other lacks. */
function surplus(word: string, other: string): number {
  let rest = word.toLowerCase()
  // longer words are nobody's slip of the pen
  for (const letter of other.slice(0, 60).toLowerCase()) rest = rest.replace(letter, '')
  return rest.length
}

function unknown(argument: string, value: string, known: readonly string[], near: string | undefined): LitrebarError {
  return inputError(argument, value, listed(known), near === undefined ? 'Use one of these.' : `Did you mean ${near}?`)
}

function listed(words: readonly string[]): string {
  return words.join(', ').replace(/, ([^,]*)$/, ' or $1')
}
