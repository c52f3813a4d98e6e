import type { RetestSuffix } from './stamp.ts'
import type { Word } from './words.ts'

/** Every sign that may stand behind a date. */
export const retestSuffixes: readonly RetestSuffix[] = ['+', '★', 'E', 'S', 'VE', 'UE', 'AE', 'FS', 'R', 'RR', 'V', 'L']
const suffixes: ReadonlySet<string> = /* @__PURE__ */ new Set(retestSuffixes)

/** A word that is a sign behind a date, and nothing else. */
export function suffixOf(text: string): RetestSuffix | undefined {
  if (text.length > 2) return undefined
  if (suffixes.has(text)) return text as RetestSuffix
  return text === '†' || text === '✚' ? '+' : undefined
}

/** The sign that is typed right behind the figures of a date: `03/93V`. */
export function suffixBehind(text: string): RetestSuffix | undefined {
  const last = text.charCodeAt(text.length - 1)
  if (last >= 48 && last <= 57) return undefined
  for (const length of [2, 1]) {
    const at = text.length - length
    const before = text.charCodeAt(at - 1)
    const suffix = at > 3 && before >= 48 && before <= 57 ? suffixOf(text.slice(at)) : undefined
    if (suffix !== undefined) return suffix
  }
  return undefined
}

/** The signs in a row from one word on, on one line. */
export function suffixesFrom(words: readonly Word[], index: number, line: number): readonly RetestSuffix[] {
  const signs: RetestSuffix[] = []
  for (let at = index; at < words.length && words[at]?.line === line; at++) {
    const sign = suffixOf((words[at] as Word).text)
    if (sign === undefined) break
    signs.push(sign)
  }
  return signs
}
