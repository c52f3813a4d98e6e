import { parseArgs } from 'node:util'
import { type Chapter, chapterText, citation, readChapter, sortedSources } from '../course/index.ts'
import { explainStamp, readStamp } from '../cylinder/index.ts'
import { cautionOf } from '../references/index.ts'
import { allUnits, type Dimension, dimensions, format, parseUnit } from '../units/index.ts'
import { type Console, exit, WrongUse } from './console.ts'

const options = {
  find: { type: 'string' },
  show: { type: 'string' },
  units: { type: 'string' },
  mistakes: { type: 'boolean' },
} as const

/** `litrebar explain`: a worked formula, a stamp, or a number in other units. */
export function explainCommand(args: readonly string[], console: Console): number {
  const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options })
  const [first, ...rest] = positionals
  if (first === undefined) throw new WrongUse('Say what to explain.')
  if (first === 'stamp') return stamp(rest.join(' '), console)
  if (/^[-−+\d.]/.test(first)) return number(positionals.join(' '), console)
  return formula(first, rest, values, console)
}

/** The worked solution is what the same lines in a chapter give: one way to read them, one way to refuse them. */
function formula(
  name: string,
  given: readonly string[],
  values: { find?: string; show?: string; units?: string; mistakes?: boolean },
  console: Console,
): number {
  const lines = given.map((text) => {
    const at = text.indexOf('=')
    if (at < 1) throw new WrongUse(`"${text}" is not of the form SYMBOL=VALUE.`)
    return `${text.slice(0, at)}: ${JSON.stringify(text.slice(at + 1))}`
  })
  const { find, show, units, mistakes } = values
  const body = [
    `formula: ${JSON.stringify(name)}`,
    ...lines,
    ...(find === undefined ? [] : [`find: ${JSON.stringify(find)}`]),
    ...(show === undefined ? [] : [`show: ${JSON.stringify(show)}`]),
    ...(units === undefined ? [] : [`units: ${JSON.stringify(units)}`]),
    ...(mistakes === true ? ['mistakes: yes'] : []),
  ]
  const source = ['# T', '', 'L.', '', '## S', '', '```working', ...body, '```', ''].join('\n')
  const { chapter, problems } = readChapter(source, { file: 'litrebar explain' })
  for (const { message } of problems) console.say(message)
  if (problems.length > 0) return exit.wrongUse
  const blocks = chapter.sections[0]?.blocks ?? []
  console.out(textOf({ ...chapter, sections: [{ id: 's', title: '', blocks }] }))
  return exit.done
}

/** The text of the blocks alone, without the heads of a chapter. */
function textOf(chapter: Chapter): string {
  return chapterText(chapter).split('\n').slice(7).join('\n').trimStart()
}

function stamp(text: string, console: Console): number {
  if (text.trim() === '') throw new WrongUse('Write the stamp behind the word stamp, in quotes.')
  const read = readStamp(text)
  const { fields, findings, cautions } = explainStamp(read)
  for (const { text: mark, meaning, reading } of fields)
    console.out(`${console.bold(mark)}  ${meaning}${reading === undefined ? '' : `: ${reading}`}\n`)
  for (const { says, remedy } of findings) console.out(`! ${says} ${remedy}\n`)
  for (const id of cautions) console.out(`${console.bold('Caution:')} ${cautionOf(id).text}\n`)
  const cited = [...fields, ...findings].map(({ source }) => source)
  for (const id of sortedSources(cited)) console.out(`Source: ${citation(id)}\n`)
  return exit.done
}

/** A number in every unit that makes sense of it. */
function number(text: string, console: Console): number {
  const [, digits = '', name = ''] = /^([-−+]?[\d.]+)\s*(.*)$/.exec(text) ?? []
  const value = Number(digits.replace('−', '-'))
  const plain = name.replace(/\(?\b(gauge|absolute)\b\)?$/, '').trimEnd()
  const unit = allUnits.find(({ symbol, spellings }) => symbol === plain || spellings?.includes(plain))
  if (unit === undefined || !Number.isFinite(value) || plain === '') {
    const near = (Object.keys(dimensions) as Dimension[])[0] ?? 'pressure'
    parseUnit(plain === '' ? '?' : plain, near) // throws with the nearest unit
    throw new WrongUse(`"${text}" is no number with a unit.`)
  }
  const si = value * unit.factor + (unit.offset ?? 0)
  const others = allUnits.filter(
    (other) =>
      other.quantity === unit.quantity && other.symbol !== '' && isReadable((si - (other.offset ?? 0)) / other.factor),
  )
  for (const other of others) console.out(`${format(si as never, { unit: other, figures: 6 })}\n`)
  return exit.done
}

function isReadable(value: number): boolean {
  return value === 0 || (Math.abs(value) >= 1e-3 && Math.abs(value) < 1e7)
}
