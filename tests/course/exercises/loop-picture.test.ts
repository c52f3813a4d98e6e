import { execFileSync, spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'
import {
  chartSvg,
  type ExerciseItem,
  exerciseItem,
  type LineChart,
  loopFaultTexts,
  moodleXml,
  qtiItem,
  sheetChapter,
  sheetsCsv,
  variantsOf,
} from '../../../src/course/index.ts'
import { german } from '../../../src/german/index.ts'
import { exercises } from './bank-files.ts'

const exercise = exercises.find(({ id }) => id === 'fault-of-a-loop') as (typeof exercises)[number]
const variant = variantsOf(exercise)
const xmllint = spawnSync('xmllint', ['--version']).status === 0

function loopOf(item: ExerciseItem): { readonly inhaling: readonly number[]; readonly exhaling: readonly number[] } {
  const { x, y } = item.chart?.series[0] ?? { x: [0], y: [0] }
  const turn = x.indexOf(Math.max(...x))
  return { inhaling: y.slice(0, turn + 1), exhaling: y.slice(turn + 1) }
}

// What a reader of the picture looks for, worked out from its points alone.
const signs: Readonly<Record<string, (item: ExerciseItem) => boolean>> = {
  'stiff-valve': (item) => (loopOf(item).inhaling[0] as number) <= -14,
  'starved-valve': (item) => {
    const { inhaling } = loopOf(item)
    return Math.min(...inhaling) < -22 && (inhaling[0] as number) > -5
  },
  'sticking-exhaust': (item) => Math.max(...loopOf(item).exhaling) >= 22,
  'strong-assist': (item) => Math.max(...loopOf(item).inhaling) > 4,
}

test('each picture shows one fault, the right answer names it, and each fault comes up', () => {
  const seen = new Set<string>()
  for (let seed = 0; seed < 300; seed++) {
    const item = variant(seed)
    const shown = Object.keys(signs).filter((id) => signs[id]?.(item))
    expect(shown).toHaveLength(1)
    const right = item.choices?.filter((choice) => choice.right) ?? []
    expect(right.map(({ text }) => text)).toEqual([loopFaultTexts[shown[0] as keyof typeof loopFaultTexts].fault])
    expect(item.choices).toHaveLength(4)
    seen.add(shown[0] as string)
  }
  expect(seen.size).toBe(4)
})

test('nothing but the loop itself gives the fault away before the key', () => {
  const item = variant(3)
  const told = `${item.text} ${item.chart?.title ?? ''} ${item.chart?.description ?? ''} ${item.chart?.series[0]?.name ?? ''}`
  expect(told).not.toMatch(/valve|exhaust|assist|stiff|starved|late/i)
})

test('the chart stands in both editions, under an id of its own for each exercise', () => {
  const sheet = { student: 'Ada', items: [variant(1), variant(2)] }
  for (const edition of ['reader', 'teacher'] as const) {
    const charts = sheetChapter(sheet, { edition }).sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'chart' ? [block.chart.id] : [])),
    )
    expect(charts).toEqual(['exercise-1-chart', 'exercise-2-chart'])
  }
  expect(sheetsCsv([sheet])).toContain(variant(1).chart?.description)
})

test('in German the chart has German words', () => {
  const { chart } = exerciseItem(exercise, 1, { language: german })
  expect([chart?.title, chart?.x.label, chart?.y.label].join(' ')).not.toMatch(/\b(mouth|pressure|volume)\b/i)
})

test.skipIf(!xmllint)('the picture that travels is a drawing that a parser reads', () => {
  const item = variant(5)
  const parsed = (svg: string): string =>
    execFileSync('xmllint', ['--xpath', 'name(/*)', '-'], { input: svg }).toString()
  for (const version of ['2.1', '2.2', '3.0'] as const) {
    const [, source] = /<img src="data:image\/svg\+xml,([^"]+)" alt="[^"]+"\/>/.exec(qtiItem(item, version)) ?? []
    expect(parsed(decodeURIComponent(source ?? ''))).toMatch(/^svg/)
  }
  const [, file] =
    /<file name="loop-picture.svg" path="\/" encoding="base64">([^<]+)<\/file>/.exec(moodleXml([item])) ?? []
  expect(parsed(Buffer.from(file ?? '', 'base64').toString('utf8'))).toMatch(/^svg/)
})

test('the file of a picture is its drawing to the last byte', () => {
  for (let seed = 0; seed < 12; seed++) {
    const item = exerciseItem(exercise, seed, { language: german }) // letters beyond ASCII, and each remainder of three
    const [, file = ''] = /encoding="base64">([^<]+)<\/file>/.exec(moodleXml([item])) ?? []
    expect(file).toBe(Buffer.from(chartSvg(item.chart as LineChart)).toString('base64'))
  }
})

test('an item whose chart is none is refused by name', () => {
  const item = { ...variant(5), chart: { id: 'a' } } as unknown as ExerciseItem
  expect(() => qtiItem(item, '3.0')).toThrow(/item\.chart/)
})
