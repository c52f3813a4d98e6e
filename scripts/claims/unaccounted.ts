import { existsSync, readFileSync } from 'node:fs'
import { filesIn } from '../files-in.ts'
import { generatedPages, stated } from './stated.ts'

/**
 * The numbers of README.md and docs/measured that nobody measures: neither in a table that a command writes, nor in code that is run,
 * nor in a phrase of `stated.ts`. Phrases that no page has any more are faults as well.
 *
 * @returns one line for each fault
 */
export function unaccounted(): string[] {
  return ['README.md', ...filesIn('docs/measured', '.md')].flatMap((page) => {
    if (generatedPages.includes(page)) return []
    const phrases = Object.entries(stated[page] ?? {})
    let text = readFileSync(page, 'utf8')
      .replaceAll(/~~~~[\s\S]*?~~~~/g, '')
      .replaceAll(/```[\s\S]*?```/g, '')
      .replaceAll(/<!-- (?!end)[\s\S]*?<!-- end -->/g, '')
      .replaceAll(/`[^`\n]*`/g, '')
      .replaceAll(/\]\([^)]*\)/g, ']')
      .replaceAll(/\s+/g, ' ')
    const gone = phrases.filter(([phrase]) => !text.includes(phrase))
    for (const [phrase] of phrases.toSorted(([a], [b]) => b.length - a.length)) text = text.replaceAll(phrase, ' ')
    const numbers = [...text.matchAll(/\d[\d.,:/–-]*/g)]
    const untested = phrases.filter(([, why]) => why.startsWith('tested: ') && !existsSync(why.slice(8)))
    return [
      ...untested.map(([phrase, why]) => `${page}: "${phrase}" is said to be ${why}, which is not there`),
      ...gone.map(([phrase]) => `${page} no longer says "${phrase}": drop it from scripts/claims/stated.ts`),
      ...numbers.map(
        ({ 0: number, index }) =>
          `${page}: nothing measures "${number}" in "… ${text.slice(Math.max(0, index - 40), index + 30).trim()} …"`,
      ),
    ]
  })
}
