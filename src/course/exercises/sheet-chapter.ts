import { roundNumber } from '../../units/index.ts'
import type { Block, Chapter } from '../chapter.ts'
import { filled } from '../filled.ts'
import type { CourseLanguage } from '../language.ts'
import { exerciseTextsShape, languageShape } from '../language-shape.table.ts'
import { requireShape, type Shape } from '../require-shape.ts'
import { valueText } from '../value-text.ts'
import type { ExerciseItem, NumberKey } from './exercise.ts'
import type { ExerciseSheet } from './exercise-sheet.ts'
import { type ExerciseTexts, exerciseTexts } from './exercise-text.table.ts'
import { requireSheet } from './require-exercise.ts'

/** How a sheet is laid out. */
export interface SheetStyle {
  /** The reader’s has questions and cautions; the teacher’s adds keys, tolerances, common errors, working and sources. */
  readonly edition: 'reader' | 'teacher'
  readonly title?: string
  /** BCP 47 tag of the language that the texts are written in; `en` unless given. */
  readonly language?: string
  readonly texts?: Partial<ExerciseTexts>
  /** The language of the fixed texts, with its decimal sign; its tag stands for `language` where that is left out. */
  readonly words?: CourseLanguage
}

/**
 * A sheet as a chapter: written from there as HTML to print, as Markdown, LaTeX or plain text. Both editions come from one sheet.
 *
 * @param sheet - the sheet of one student
 * @param style - which edition, title, language, fixed texts
 * @returns the chapter
 * @throws LitrebarError `input` for an unknown edition or option
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * const item = exerciseItem(exercise, 7)
 * sheetChapter({ student: 'Ada', items: [item] }, { edition: 'reader' }).sections[0]?.title // => 'Exercise 1'
 */
export function sheetChapter(sheet: ExerciseSheet, style: SheetStyle): Chapter {
  requireSheet('sheet', sheet)
  requireShape('style', style, styleShape)
  const texts = { ...exerciseTexts, ...style.words?.exercises, ...style.texts }
  const shown = (text: string, unit: string): string =>
    valueText({ text, unit }, { decimal: style.words?.decimal ?? 'point', grouping: 'none' })
  const teacher = style.edition === 'teacher'
  const lead = `${filled(texts.forStudent, { student: sheet.student })}. ${teacher ? texts.teacher : texts.reader}`
  return {
    title: style.title ?? texts.sheet,
    lead,
    language: style.language ?? style.words?.tag ?? 'en',
    sections: sheet.items.map((item, index) => ({
      id: `exercise-${String(index + 1)}`,
      title: filled(texts.exercise, { number: String(index + 1) }),
      blocks: [
        ...question(item, `exercise-${String(index + 1)}-chart`, texts),
        ...(teacher ? key(item, texts, shown) : []),
      ],
    })),
  }
}

const styleShape: Shape = {
  fields: {
    edition: { words: ['reader', 'teacher'] },
    'title?': 'text',
    'language?': 'text',
    'texts?': exerciseTextsShape,
    'words?': languageShape,
  },
}

function question(item: ExerciseItem, chartId: string, texts: ExerciseTexts): Block[] {
  return [
    ...(item.cautions.length > 0 ? [{ kind: 'cautions' as const, cautions: item.cautions }] : []),
    { kind: 'paragraph', text: item.text },
    ...(item.exhibit === undefined || item.exhibit.length === 0
      ? []
      : [{ kind: 'code' as const, text: item.exhibit.join('\n') }]),
    ...(item.chart === undefined ? [] : [{ kind: 'chart' as const, chart: { ...item.chart, id: chartId } }]),
    ...(item.choices === undefined
      ? [{ kind: 'paragraph' as const, text: `${texts.answer} ____________________` }]
      : [list(item.choices.map(({ id, text }) => `${id}: ${text}`))]),
  ]
}

type WriteNumber = (text: string, unit: string) => string

function key(item: ExerciseItem, texts: ExerciseTexts, shown: WriteNumber): Block[] {
  const { number, choices } = item
  const right = choices?.filter((choice) => choice.right).map(({ id, text }) => `${id}: ${text}`)
  return [
    { kind: 'heading', text: texts.key },
    { kind: 'answer', text: right?.join('; ') ?? shown(number?.text ?? '', number?.unit ?? '') },
    ...(number === undefined ? [] : numberKey(number, texts, shown)),
    { kind: 'heading', text: texts.working },
    list(item.working),
    { kind: 'sources', sources: item.sources },
  ]
}

function numberKey({ tolerance, distractors, unit }: NumberKey, texts: ExerciseTexts, shown: WriteNumber): Block[] {
  const part = (value: number): string => shown(roundNumber(value, { figures: 2 }).text, unit)
  const { total, halfUnit, rounding, conventions } = tolerance
  return [
    {
      kind: 'paragraph',
      text: filled(texts.tolerance, {
        total: part(total),
        halfUnit: part(halfUnit),
        rounding: part(rounding),
        conventions: part(conventions),
      }),
    },
    ...(distractors.length === 0
      ? []
      : [
          { kind: 'heading' as const, text: texts.commonErrors },
          list(distractors.map(({ text, says }) => filled(texts.comesOut, { answer: shown(text, unit), says }))),
        ]),
  ]
}

function list(lines: readonly string[]): Block {
  return { kind: 'list', ordered: false, items: lines.map((text): Block[] => [{ kind: 'paragraph', text }]) }
}
