import { LitrebarError } from '../../errors/index.ts'
import { type Random, seededRandom } from '../../uncertainty/index.ts'
import { celsius, roundNumber, type Unit, withNumberStyle, withUnit } from '../../units/index.ts'
import type { Expression } from '../expression.ts'
import { filled } from '../filled.ts'
import type { CourseLanguage } from '../language.ts'
import { linesOf } from '../notation.ts'
import { plainNotation } from '../plain.ts'
import { requireShape } from '../require-shape.ts'
import type { RoundingWords } from '../rounding-text.table.ts'
import { solutionOf } from '../worked-solution.ts'
import { drawnItems } from './drawn/drawn.ts'
import { type DrawnWords, englishDrawn } from './drawn/drawn-text.table.ts'
import { type Evaluator, evaluatorOf, type Numbers, roundingSpreadOf } from './evaluator.ts'
import type {
  Choice,
  Distractor,
  Exercise,
  ExerciseItem,
  JudgementExercise,
  NumberExercise,
  NumberKey,
  Statement,
} from './exercise.ts'
import { itemOptionFields, seedShape } from './exercise-shapes.ts'
import { type ExerciseTexts, exerciseTexts } from './exercise-text.table.ts'
import { streamOf } from './fingerprint.ts'
import { requireExercise } from './require-exercise.ts'
import { shuffled } from './shuffled.ts'

/** How items are written. */
export interface ItemOptions {
  /** Fixed texts in other words; what is left out stays English. */
  readonly texts?: Partial<ExerciseTexts>
  /** The language of the items, with its decimal sign; English without it. */
  readonly language?: CourseLanguage
}

/** What an item is written with. */
interface ItemWords {
  readonly texts: ExerciseTexts
  readonly drawn: DrawnWords
  readonly decimal: 'point' | 'comma'
  readonly roundings?: RoundingWords
}

function wordsOf({ texts, language }: ItemOptions): ItemWords {
  return {
    texts: { ...exerciseTexts, ...language?.exercises, ...texts },
    drawn: language?.drawn ?? englishDrawn,
    decimal: language?.decimal ?? 'point',
    ...(language !== undefined && { roundings: language.roundings }),
  }
}

/**
 * A function that draws variants of one exercise. What depends on the exercise alone is made ready once.
 *
 * @param exercise - the exercise
 * @param options - fixed texts in other words
 * @returns a function from a seed, any whole number, to the variant: the same for the same seed
 * @throws LitrebarError `input` for what is no exercise, and for unknown options; the function throws `input` where no fit variant was found in 200 draws
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * const variant = variantsOf(exercise)
 * variant(7).text === variant(7).text // => true
 */
export function variantsOf(exercise: Exercise, options: ItemOptions = {}): (seed: number) => ExerciseItem {
  requireExercise('exercise', exercise)
  requireShape('options', options, { fields: itemOptionFields })
  return variantMaker(exercise, options)
}

/** Draws variants of what is known to be an exercise: behind the doors that have checked it. */
export function variantMaker(exercise: Exercise, options: ItemOptions): (seed: number) => ExerciseItem {
  const words = wordsOf(options)
  const stream = streamOf(exercise.id)
  const make = makerOf(exercise, words)
  const { id, subject, level, cautions, sources } = exercise
  return (seed) => {
    if (!Number.isSafeInteger(seed)) requireShape('seed', seed, seedShape)
    const item = make(seededRandom(seed, stream))
    return { exercise: id, subject, level, seed, cautions, sources, ...item }
  }
}

/**
 * One variant of an exercise: question, key with its tolerance, wrong answers with what leads to them, worked solution.
 * The tolerance is computed: half a unit of the last figure asked for, rounding on the way, other accepted constants.
 *
 * @param exercise - the exercise
 * @param seed - any whole number
 * @param options - fixed texts in other words
 * @returns the variant, plain JSON
 * @throws LitrebarError `input` for a seed that is no whole number, or where no fit variant was found
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * const item = exerciseItem(exercise, 7)
 * item.number?.unit // => 'N'
 */
export function exerciseItem(exercise: Exercise, seed: number, options: ItemOptions = {}): ExerciseItem {
  return variantsOf(exercise, options)(seed)
}

type Made = Omit<ExerciseItem, 'exercise' | 'subject' | 'level' | 'seed' | 'cautions' | 'sources'> &
  Partial<Pick<ExerciseItem, 'cautions' | 'sources'>>

function makerOf(exercise: Exercise, words: ItemWords): (random: Random) => Made {
  const { texts } = words
  switch (exercise.kind) {
    case 'drawn': {
      const { kind, draw } = drawnItems[exercise.drawn]
      return (random) => {
        const { text, exhibit, chart, statements, working, cautions } = draw(random, words.drawn)
        return {
          kind,
          text: `${text} ${kind === 'several' ? texts.chooseSeveral : texts.chooseOne}`,
          exhibit,
          ...(chart !== undefined && { chart }),
          choices: lettered(shuffled(statements, random)),
          working,
          cautions: [...new Set([...exercise.cautions, ...cautions])],
        }
      }
    }
    case 'judgement':
    case 'several':
      return (random) => judged(exercise, random, texts)
    default:
      return numberMaker(exercise, words)
  }
}

function judged({ kind, text, right, wrong, because }: JudgementExercise, random: Random, texts: ExerciseTexts): Made {
  const rights = shuffled(right, random)
  const count = kind === 'judgement' ? 1 : 1 + Math.floor(random() * Math.min(rights.length, 3))
  const marked = (statements: readonly Statement[], isRight: boolean) =>
    statements.map((one) => ({ ...one, right: isRight }))
  const chosen = [
    ...marked(rights.slice(0, count), true),
    ...marked(shuffled(wrong, random).slice(0, kind === 'judgement' ? 3 : Math.max(1, 5 - count)), false),
  ]
  const choices = lettered(shuffled(chosen, random))
  return {
    kind,
    text: `${text} ${kind === 'judgement' ? texts.chooseOne : texts.chooseSeveral}`,
    choices,
    working: [because, ...choices.flatMap(({ id, because: why }) => (why === undefined ? [] : [`${id}: ${why}`]))],
  }
}

const mostDraws = 200

/** The greatest tolerance that an item may have, as a share of its key: half a unit of the last of two figures, and a little. */
const bluntest = 0.06

function numberMaker(exercise: NumberExercise, words: ItemWords): (random: Random) => Made {
  const { texts, decimal, roundings } = words
  const { card, find, givens, asked, kind } = exercise
  const names = Object.keys(givens)
  const tools = toolsOf(exercise)
  const units = Object.fromEntries(
    names.filter((name) => name in card.symbols).map((name) => [name, (givens[name] as { unit: Unit }).unit]),
  )
  const figures = { unit: asked.unit.symbol, figures: String(asked.figures) }
  const ask =
    kind === 'choice' ? texts.chooseOne : filled(figures.unit === '' ? texts.answerPure : texts.answerIn, figures)
  return (random) => {
    for (let draw = 0; draw < mostDraws; draw++) {
      const values: Record<string, number> = {}
      const printed: Record<string, string> = {}
      for (const name of names) {
        const { values: all, texts: written, unit } = givens[name] as NumberExercise['givens'][string]
        const index = Math.floor(random() * all.length)
        values[name] = all[index] as number
        printed[name] = printedNumber(written[index] as string, unit, decimal)
      }
      const key = keyOf(exercise, values, tools)
      if (key === undefined || (kind === 'choice' && key.distractors.length < 2)) continue
      const constants = card.constants ?? {}
      const knowns = Object.fromEntries(
        Object.entries(values).filter(([name]) => name in card.symbols && !(name in constants)),
      )
      const solution = solutionOf(card, knowns, {
        find,
        units: { ...units, [find]: asked.unit },
        figures: asked.figures,
        ...(roundings !== undefined && { roundings }),
      })
      return {
        kind,
        text: `${filled(exercise.text, printed)} ${ask}`,
        number: key,
        ...(kind === 'choice' && { choices: numberChoices(key, asked.unit, random, decimal) }),
        working: linesOf(solution, plainNotation, { decimal }).map(({ text, note }) =>
          note === undefined ? text : `${text} (${note})`,
        ),
      }
    }
    throw new LitrebarError({
      code: 'input',
      argument: exercise.id,
      value: `no fit variant in ${String(mostDraws)} draws`,
      expected: `givens that lead to answers from ${exercise.within.join(' to ')} with wrong answers apart from the key`,
      hint: 'Narrow the givens, widen the range of the answer, or name other common errors.',
    })
  }
}

interface Tools {
  readonly value: Evaluator
  readonly spread: Evaluator
  readonly constants: Numbers
  readonly conventions: readonly ((values: Numbers) => Numbers)[]
}

function toolsOf({ card, find, givens, asked, conventions }: NumberExercise): Tools {
  const expression = card.forms[find] as Expression
  const celsiusNames = Object.keys(givens).filter((name) => givens[name]?.unit.symbol === celsius.symbol)
  return {
    value: evaluatorOf(expression, card.calls),
    spread: roundingSpreadOf(expression, asked.figures + 1, card.calls),
    constants: card.constants ?? {},
    conventions: [
      ...conventions.map((other) => (values: Numbers) => ({ ...values, ...other })),
      // many books add 273 to a temperature in degrees Celsius
      ...(celsiusNames.length === 0
        ? []
        : [
            (values: Numbers) => ({
              ...values,
              ...Object.fromEntries(celsiusNames.map((name) => [name, (values[name] as number) - 0.15])),
            }),
          ]),
    ],
  }
}

/** The key of a variant; nothing where the variant is not fit to be asked. */
function keyOf(
  exercise: NumberExercise,
  givens: Readonly<Record<string, number>>,
  tools: Tools,
): NumberKey | undefined {
  const { asked, within, misconceptions } = exercise
  const { unit, figures, kind } = asked
  const all = { ...tools.constants, ...givens }
  const si = tools.value(all)
  const inUnit = (value: number): number => (value - (unit.offset ?? 0)) / unit.factor
  const value = inUnit(si)
  if (!(value >= within[0] && value <= within[1]) || Math.abs(value) < 1e-12) return undefined
  const rounded = roundNumber(value, { figures })
  const lastPlace = 10 ** (Math.floor(Math.log10(Math.abs(rounded.value)) + 1e-12) - figures + 1)
  const halfUnit = lastPlace / 2
  if (Math.abs(Math.abs(value - rounded.value) - halfUnit) < lastPlace * 1e-6) return undefined // a tie: two schools, two answers
  const rounding = tools.spread(all) / unit.factor
  const conventions = tools.conventions.reduce((sum, of) => sum + Math.abs(inUnit(tools.value(of(all))) - value), 0)
  const total = halfUnit + rounding + conventions
  if (total > bluntest * Math.abs(value)) return undefined // a small difference of large numbers: hand work cannot meet it
  const distractors: Distractor[] = []
  for (const { says, of } of misconceptions) {
    const wrong = inUnit(orNothing(of, givens))
    if (!Number.isFinite(wrong) || Math.sign(wrong) !== Math.sign(value)) continue
    if (Math.abs(wrong) > 1e6 || Math.abs(wrong) < 1e-4) continue
    if (Math.abs(wrong - value) <= 3 * total) continue
    const { text, value: shown } = roundNumber(wrong, { figures })
    if (Math.abs(shown - value) <= 3 * total) continue
    if (distractors.some((other) => Math.abs(other.value - shown) <= 2 * total || other.text === text)) continue
    distractors.push({ says, value: wrong, text })
  }
  return {
    value,
    text: rounded.text,
    unit: unit.symbol,
    kind,
    figures,
    tolerance: { halfUnit, rounding, conventions, total },
    distractors,
  }
}

/** A common error may lead outside what a function accepts: then nothing comes of it. */
function orNothing(of: Evaluator, givens: Readonly<Record<string, number>>): number {
  try {
    return of(givens)
  } catch {
    return Number.NaN
  }
}

function numberChoices(key: NumberKey, unit: Unit, random: Random, decimal: 'point' | 'comma'): Choice[] {
  const wrong = shuffled(key.distractors, random).slice(0, 4)
  const all = [
    { text: key.text, right: true },
    ...wrong.map(({ text, says }) => ({ text, right: false, because: `${says}.` })),
  ].toSorted((a, b) => Number(a.text) - Number(b.text))
  return lettered(all.map((choice) => ({ ...choice, text: printedNumber(choice.text, unit, decimal) })))
}

function printedNumber(text: string, unit: Unit, decimal: 'point' | 'comma'): string {
  return withUnit(withNumberStyle(text, { decimal, grouping: 'none' }), unit)
}

function lettered(choices: readonly Omit<Choice, 'id'>[]): Choice[] {
  return choices.map(({ text, right, because }, index) => ({
    id: String.fromCharCode(65 + index),
    text,
    right,
    ...(because !== undefined && { because }),
  }))
}
