import { LitrebarError } from './litrebar-error.ts'
import { shown } from './shown.ts'

/**
 * Refuses an object with a key that the function does not know, or without one that it needs: a misspelt option would otherwise
 * change a result in silence.
 *
 * @param argument - the parameter with its path, as the caller wrote it
 * @param given - what was handed in
 * @param keys - every key the function reads: `true` where it is required, `false` where it may be left out
 * @throws LitrebarError `input` for something that is no object, a missing key, or an unknown key, with the nearest known one
 */
export function requireKeys(argument: string, given: unknown, keys: Readonly<Record<string, boolean>>): void {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    throw new LitrebarError({
      code: 'input',
      argument,
      value: shown(given),
      expected: `an object with ${listed(Object.keys(keys))}`,
      hint: 'Pass the fields in one object.',
    })
  }
  for (const key of Object.keys(given)) {
    if (Object.hasOwn(keys, key)) continue
    const near = nearestOf(key, Object.keys(keys))
    throw new LitrebarError({
      code: 'input',
      argument: `${argument}.${key}`,
      value: 'not an option',
      expected: listed(Object.keys(keys)),
      hint: near === undefined ? 'Leave it out.' : `Did you mean ${near}?`,
    })
  }
  for (const key in keys) {
    if (keys[key] === true && (given as Record<string, unknown>)[key] === undefined) {
      throw new LitrebarError({
        code: 'input',
        argument: `${argument}.${key}`,
        value: 'missing',
        expected: 'a value',
        hint: `State ${key}.`,
      })
    }
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
  const texts = words.filter((known) => typeof known === 'string')
  const near = typeof word === 'string' ? nearestOf(word, texts) : undefined
  throw new LitrebarError({
    code: 'input',
    argument,
    value: shown(word),
    expected: listed(words.map(shown)),
    hint: near === undefined ? 'Choose one of these words.' : `Did you mean '${near}'?`,
  })
}

/**
 * The known name nearest to a misspelt one.
 *
 * @param word - as given
 * @param known - the names there are
 * @returns the nearest, or undefined where none is within a third of its letters
 */
export function nearestOf(word: string, known: readonly string[]): string | undefined {
  const given = word.slice(0, longestWord).toLowerCase()
  let best: string | undefined
  let least = Number.POSITIVE_INFINITY
  for (const name of known) {
    const steps = editDistance(given, name.toLowerCase())
    if (steps < least && steps <= Math.max(1, Math.floor(name.length / 3))) {
      least = steps
      best = name
    }
  }
  return best
}

// Longer words are nobody's slip of the pen; this keeps a hostile text from costing time.
const longestWord = 60

/** Letters to insert, delete, replace, or swap with their neighbour, to come from one word to the other. */
function editDistance(a: string, b: string): number {
  let before: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, i) => i)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let steps = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        steps = Math.min(steps, (before[j - 2] ?? 0) + 1)
      row.push(steps)
    }
    before = last
    last = row
  }
  return last[b.length] ?? 0
}

function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`
}
