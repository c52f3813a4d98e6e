import { allUnits } from '../../../units/index.ts'
import { chartSvg } from '../../chart.ts'
import { escaped } from '../../escape.ts'
import type { ExerciseItem, NumberKey } from '../exercise.ts'
import { requireItems } from '../require-exercise.ts'
import { type Element, element, xmlDocument } from './xml.ts'

/**
 * Items as Moodle XML: numbers as numerical questions with tolerance and the units of the dimension, the others as multiple choice.
 * The worked solution stands in the general feedback, common errors in the feedback of the answers that they lead to.
 *
 * @param items - the variants
 * @returns the document
 * @throws LitrebarError `input` for what is no item
 * @source memory, the elements of the format
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * const item = exerciseItem(exercise, 7)
 * moodleXml([item]).includes('<question type="numerical">') // => true
 */
export function moodleXml(items: readonly ExerciseItem[]): string {
  requireItems('items', items)
  return xmlDocument(element('quiz', {}, ...items.map(question)))
}

function question(item: ExerciseItem): Element {
  const typed = item.choices === undefined ? item.number : undefined
  return element(
    'question',
    { type: typed === undefined ? 'multichoice' : 'numerical' },
    element('name', {}, text(`${item.exercise} ${String(item.seed)}`)),
    questionText(item),
    element('generalfeedback', { format: 'plain_text' }, text(item.working.join('\n'))),
    element('defaultgrade', {}, '1'),
    element('penalty', {}, '0'),
    element('hidden', {}, '0'),
    ...(typed === undefined ? choices(item) : numerical(typed)),
  )
}

/** Plain text, or HTML where a picture stands in it: the picture travels as a file of the question. */
function questionText({ text: asked, exhibit = [], chart }: ExerciseItem): Element {
  const lines = [asked, ...exhibit]
  if (chart === undefined) return element('questiontext', { format: 'plain_text' }, text(lines.join('\n')))
  const name = `${chart.id}.svg`
  const paragraphs = lines.map((line) => `<p>${escaped(line)}</p>`).join('')
  const image = `<p><img src="@@PLUGINFILE@@/${name}" alt="${escaped(chart.description)}"></p>`
  return element(
    'questiontext',
    { format: 'html' },
    text(`${paragraphs}${image}`),
    element('file', { name, path: '/', encoding: 'base64' }, base64(chartSvg(chart))),
  )
}

const base64Signs = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'

/** UTF-8 in base64; written here, since what encodes it elsewhere is not the same in every environment. */
function base64(content: string): string {
  const bytes = Array.from(encodeURIComponent(content).matchAll(/%([0-9A-F]{2})|./g), ([one, hex]) =>
    hex === undefined ? one.charCodeAt(0) : Number.parseInt(hex, 16),
  )
  let written = ''
  for (let at = 0; at < bytes.length; at += 3) {
    const [first = 0, second, third] = bytes.slice(at, at + 3)
    const bits = first * 65_536 + (second ?? 0) * 256 + (third ?? 0)
    const signs = [18, 12, 6, 0].map((shift) => base64Signs.charAt(Math.floor(bits / 2 ** shift) % 64))
    written += signs
      .slice(0, second === undefined ? 2 : third === undefined ? 3 : 4)
      .join('')
      .padEnd(4, '=')
  }
  return written
}

function text(content: string): Element {
  return element('text', {}, content)
}

function answer(fraction: string, content: string, feedback: string, ...more: readonly Element[]): Element {
  return element(
    'answer',
    { fraction, format: 'plain_text' },
    text(content),
    element('feedback', { format: 'plain_text' }, text(feedback)),
    ...more,
  )
}

function choices({ kind, choices: all = [] }: ExerciseItem): Element[] {
  const right = all.filter((choice) => choice.right).length
  const share = (count: number): number => Number((100 / count).toFixed(5))
  const fraction = (isRight: boolean): string => {
    if (isRight) return String(share(right))
    return kind === 'several' ? String(-share(all.length - right)) : '0'
  }
  return [
    element('single', {}, kind === 'several' ? 'false' : 'true'),
    element('shuffleanswers', {}, 'true'),
    element('answernumbering', {}, 'ABCD'),
    ...all.map((choice) => answer(fraction(choice.right), choice.text, choice.because ?? '')),
  ]
}

function numerical({ value, tolerance, distractors, unit }: NumberKey): Element[] {
  const within = element('tolerance', {}, String(tolerance.total * (1 + 1e-9)))
  const asked = allUnits.find(({ symbol }) => symbol === unit)
  const others = allUnits.filter(
    (other) =>
      other !== asked && other.quantity === asked?.quantity && other.offset === undefined && other.symbol !== '',
  )
  const units = asked === undefined || unit === '' ? [] : [asked, ...(asked.offset === undefined ? others : [])]
  return [
    answer('100', String(value), '', within),
    ...distractors.map((wrong) => answer('0', String(wrong.value), `${wrong.says}.`, within)),
    ...(units.length === 0
      ? []
      : [
          element('unitgradingtype', {}, '0'),
          element('unitpenalty', {}, '0'),
          element('showunits', {}, '0'),
          element('unitsleft', {}, '0'),
          element(
            'units',
            {},
            ...units.map(({ symbol, factor }) =>
              element(
                'unit',
                {},
                element('multiplier', {}, String((asked?.factor ?? 1) / factor)),
                element('unit_name', {}, symbol),
              ),
            ),
          ),
        ]),
  ]
}
