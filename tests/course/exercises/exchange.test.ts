import { execFileSync, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import {
  chapterHtml,
  chapterMarkdown,
  type ExerciseItem,
  exerciseItem,
  exerciseSheets,
  markAnswer,
  moodleXml,
  type QtiVersion,
  qtiItem,
  qtiPackage,
  sheetChapter,
  sheetsCsv,
  variantsOf,
} from '../../../src/course/index.ts'
import { seededRandom } from '../../../src/uncertainty/index.ts'
import { exercises } from './bank-files.ts'
import { qtiScore } from './qti-scorer.ts'

const versions: readonly QtiVersion[] = ['3.0', '2.2', '2.1']
const items = exercises.map((exercise) => variantsOf(exercise)(7))
const scratch = (files: Readonly<Record<string, string>>, use: (paths: string[]) => void): void => {
  const folder = mkdtempSync(join(tmpdir(), 'litrebar-'))
  try {
    const paths = Object.entries(files).map(([name, text]) => {
      writeFileSync(join(folder, name), text)
      return join(folder, name)
    })
    use(paths)
  } finally {
    rmSync(folder, { recursive: true })
  }
}
const xmllint = spawnSync('xmllint', ['--version']).status === 0

/** Answers of all kinds to an item: the key, its edges, just beyond, wrong ones, anything. */
function answers(item: ExerciseItem, random: () => number): string[] {
  const { number, choices } = item
  if (choices !== undefined) {
    const right = choices.flatMap((choice) => (choice.right ? [choice.id] : []))
    return [right.join(','), ...choices.map(({ id }) => id), choices.map(({ id }) => id).join(',')]
  }
  if (number === undefined) return []
  const { value, tolerance, distractors, text } = number
  return [
    text,
    ...[-1, -0.999, -0.5, 0.5, 0.999, 1].map((share) => String(value + share * tolerance.total)),
    ...[-1.001, 1.001].map((share) => String(value + share * tolerance.total)),
    ...distractors.map((wrong) => wrong.text),
    String(value * (0.5 + random())),
  ]
}

test.each(versions)('QTI %s: an own scorer agrees with the marking on 1,000 answers', (version) => {
  const random = seededRandom(5)
  let compared = 0
  for (const item of [...items, ...exercises.map((exercise) => exerciseItem(exercise, 8))]) {
    const document = qtiItem(item, version)
    for (const answer of answers(item, random)) {
      const mark = markAnswer(item, answer)
      const choice = item.choices !== undefined
      const scored = qtiScore(document, choice ? answer.split(',') : answer)
      expect(scored.score, `${item.exercise}: ${answer}`).toBe(mark.score)
      if (!choice)
        expect(scored.feedback?.startsWith('error'), item.exercise).toBe(
          mark.misconception === undefined ? (mark.score === 1 ? false : undefined) : true,
        )
      compared += 1
    }
    expect(qtiScore(document, undefined).score).toBe(0)
  }
  expect(compared).toBeGreaterThanOrEqual(1000)
})

test('QTI: the key stands first, so that a one-sided reader cannot build the range round the answer', () => {
  const item = items.find((one) => one.kind === 'number') as ExerciseItem
  for (const version of versions)
    expect(qtiItem(item, version)).toMatch(/<(qti-)?equal[^>]*><(qti-)?correct [^>]*\/><(qti-)?variable /)
})

test.skipIf(!xmllint)('every document is well-formed by xmllint', () => {
  const files = Object.fromEntries([
    ['moodle.xml', moodleXml(items)],
    ...versions.flatMap((version) =>
      Object.entries(qtiPackage(items, version)).map(([name, text]) => [`${version}-${name}`, text] as const),
    ),
  ])
  scratch(files, (paths) => {
    execFileSync('xmllint', ['--noout', ...paths])
    writeFileSync(paths[0] as string, '<quiz>')
    expect(spawnSync('xmllint', ['--noout', paths[0] as string]).status).not.toBe(0)
  })
})

const schemaFolder = process.env['QTI_SCHEMAS'] ?? ''
const schemas: Readonly<Record<QtiVersion, string>> = { '3.0': 'qti30.xsd', '2.2': 'qti22.xsd', '2.1': 'qti21.xsd' }
test.each(versions)(
  'QTI %s validates against its schema, where QTI_SCHEMAS names a folder that holds it',
  (version) => {
    const schema = join(schemaFolder, schemas[version])
    if (schemaFolder === '' || !existsSync(schema)) {
      console.warn(
        `SKIPPED: QTI ${version} was not validated: its schema may not be shipped. Set QTI_SCHEMAS to a folder with ${schemas[version]}.`,
      )
      return
    }
    const documents = Object.fromEntries(items.map((item, index) => [`${String(index)}.xml`, qtiItem(item, version)]))
    scratch(documents, (paths) => execFileSync('xmllint', ['--nonet', '--noout', '--schema', schema, ...paths]))
  },
)

const hostile = '<script>&"\'=cmd|\u0000 ]]> \u{1F300}'
const strange: ExerciseItem = {
  exercise: 'strange',
  subject: hostile,
  level: 1,
  seed: 1,
  kind: 'judgement',
  text: hostile,
  exhibit: [hostile],
  choices: [
    { id: 'A', text: hostile, right: true },
    { id: 'B', text: `=1+1`, right: false },
  ],
  working: [hostile],
  cautions: [],
  sources: [],
}

test('hostile text goes through every writer as text', () => {
  for (const text of [moodleXml([strange]), ...versions.map((version) => qtiItem(strange, version))]) {
    expect(text).not.toMatch(/<script|\]\]>/)
    expect(text.includes('\u0000')).toBe(false)
    expect(text).toContain('&lt;script&gt;')
  }
  const csv = sheetsCsv([{ student: '=HYPERLINK("x")', items: [strange] }])
  expect(csv).toContain(`"'=HYPERLINK(""x"")"`)
  const chapter = sheetChapter({ student: hostile, items: [strange] }, { edition: 'teacher' })
  expect(chapterHtml(chapter)).not.toContain('<script')
})

test('Moodle XML has a question for each item, its fractions sum to a whole', () => {
  const text = moodleXml(items)
  expect(text.match(/<question /g)).toHaveLength(items.length)
  for (const [question] of text.matchAll(/<question .*?<\/question>/gs)) {
    const positive = [...question.matchAll(/fraction="([\d.]+)"/g)].reduce((sum, [, share]) => sum + Number(share), 0)
    expect(positive).toBeCloseTo(100, 3)
    expect(question).toMatch(/<generalfeedback format="plain_text"><text>./)
  }
})

test('the reader’s edition has no key; the teacher’s has key, tolerance, errors, working and sources', () => {
  const { sheets } = exerciseSheets({ exercises, seed: 3, students: ['Ada'] })
  const sheet = sheets[0] as (typeof sheets)[number]
  const reader = chapterHtml(sheetChapter(sheet, { edition: 'reader' }))
  const teacher = chapterHtml(sheetChapter(sheet, { edition: 'teacher' }))
  expect(reader).not.toMatch(/Worked solution|Accepted: ±|Common errors/)
  expect(teacher).toMatch(/Worked solution/)
  expect(teacher).toMatch(/Accepted: ±/)
  expect(teacher).toMatch(/Common errors/)
  expect(teacher.length).toBeGreaterThan(1.5 * reader.length)
  expect(chapterMarkdown(sheetChapter(sheet, { edition: 'reader' }))).toContain('Ada')
  for (const { text } of sheet.items) expect(reader).toContain(text.split(/[&<>"'\n{]/)[0])
})
