import type { SourceId } from '../../references/sources.ts'
import { figuresAt } from './figures.ts'
import type { NeckThread } from './stamp.ts'
import { isDigitCode } from './words.ts'

interface ThreadCode {
  readonly designation: string
  readonly form: 'parallel' | 'taper'
  readonly source: SourceId
  readonly place: string
}

/** Two-digit thread codes of the UN and ISO marks. */
export const threadCodes: Readonly<Record<string, ThreadCode>> = {
  '17E': { designation: '17E', form: 'taper', source: 'memory', place: 'ISO 11363-1' },
  '25E': { designation: '25E', form: 'taper', source: 'memory', place: 'ISO 11363-1' },
  '18P': { designation: 'M18x1.5', form: 'parallel', source: 'memory', place: 'ISO 15245' },
  '25P': { designation: 'M25x2', form: 'parallel', source: 'memory', place: 'ISO 15245' },
  '30P': { designation: 'M30x2', form: 'parallel', source: 'memory', place: 'ISO 15245' },
}

const unified = ['UNF', 'NPSM', 'NPT', 'NGT', 'NGS'] as const
const tapered: ReadonlySet<string> = new Set(['NPT', 'NGT'])

/** A neck thread, if a word (or two, for `1.125-12 UNF`) is one. */
export function threadAt(
  text: string,
  following: string | undefined,
): { thread: NeckThread; words: 1 | 2 } | undefined {
  const code = isCodeShaped(text) && Object.hasOwn(threadCodes, text) ? threadCodes[text] : undefined
  if (code !== undefined) {
    const { designation, form } = code
    return { thread: designation === text ? { designation, form } : { designation, form, code: text }, words: 1 }
  }
  const first = text.charCodeAt(0)
  if (first === 77 && isDigitCode(text.charCodeAt(1))) return metricThread(text)
  if (!isDigitCode(first) && first !== 46) return undefined
  if (!text.includes('-')) return undefined
  for (const series of unified) {
    if (text.endsWith(series)) return unifiedThread(text.slice(0, -series.length), series, 1)
  }
  for (const series of unified) if (following === series) return unifiedThread(text, series, 2)
  return undefined
}

function isCodeShaped(text: string): boolean {
  return text.length === 3 && isDigitCode(text.charCodeAt(0)) && (text.endsWith('E') || text.endsWith('P'))
}

function metricThread(text: string): { thread: NeckThread; words: 1 } | undefined {
  const diameter = figuresAt(text, 1)
  if (diameter === undefined || text.charAt(diameter.end) !== 'X') return undefined
  const pitch = figuresAt(text, diameter.end + 1)
  if (pitch?.end !== text.length || Number.isNaN(diameter.value) || Number.isNaN(pitch.value)) return undefined
  return { thread: { designation: `M${String(diameter.value)}x${String(pitch.value)}` }, words: 1 }
}

function unifiedThread(
  size: string,
  series: (typeof unified)[number],
  words: 1 | 2,
): { thread: NeckThread; words: 1 | 2 } | undefined {
  const trimmed = size.endsWith('-') ? size.slice(0, -1) : size
  const dash = trimmed.lastIndexOf('-')
  if (dash <= 0 || !isDigitCode(trimmed.charCodeAt(dash + 1))) return undefined
  const designation = `${trimmed} ${series}`
  return { thread: tapered.has(series) ? { designation, form: 'taper' } : { designation }, words }
}
