import { expect, test } from 'vitest'
import {
  assessIntermediatePressure,
  findBenchFindings,
  oRingFit,
  preload,
  reliefArea,
  seatLeak,
} from '../../../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  difference,
  internalVolumeOf,
  litre,
  measure,
  millimetre,
  minute,
  newtonMetre,
  one,
  squareMillimetre,
} from '../../../src/units/index.ts'

const ring = {
  sectionDiameter: measure(2, millimetre),
  insideDiameter: measure(10, millimetre),
  grooveDiameter: measure(12, millimetre),
  grooveWidth: measure(2.8, millimetre),
  glandDepth: measure(1.6, millimetre),
}
const creep = {
  volume: internalVolumeOf(0.05, litre),
  rise: difference(0.5, bar),
  during: measure(1, minute),
  statedAt: absolute(1, bar),
}
const failure = {
  orificeArea: measure(3, squareMillimetre),
  supplyPressure: absolute(200, bar),
  reliefPressure: absolute(20, bar),
}
const thread = { torque: measure(30, newtonMetre), diameter: measure(20, millimetre), nutFactor: measure(0.2, one) }
const range = { lowest: difference(9, bar), highest: difference(9.6, bar) }

const argumentOf = (call: () => unknown): string => {
  try {
    call()
  } catch (thrown) {
    return (thrown as { argument: string }).argument
  }
  return 'taken'
}

/** Every field of a record left out, made 0 less than nothing, and a field too many: each named with its path. */
function namesOf(path: string, record: object, call: (changed: never) => unknown): readonly (readonly string[])[] {
  const names = Object.keys(record)
  return names.map((name) => [
    `${path}.${name}`,
    argumentOf(() => call({ ...record, [name]: undefined } as never)),
    argumentOf(() => call({ ...record, [name]: -1e9 } as never)),
  ])
}

test.each([
  ['ring', ring, oRingFit],
  ['creep', creep, seatLeak],
  ['failure', failure, reliefArea],
  ['thread', thread, preload],
  ['range', range, (changed: typeof range) => assessIntermediatePressure(difference(9, bar), changed)],
] as const)('what is missing or out of range in a %s is named with its path', (path, record, call) => {
  for (const [expected, missing, wrong] of namesOf(path, record, call)) {
    expect([missing, wrong]).toEqual([expected, expected])
  }
  expect(argumentOf(() => call({ ...record, more: 1 } as never))).toBe(`${path}.more`)
  expect(argumentOf(() => call(5 as never))).toBe(path)
})

test('a reading that is none is refused by its name', () => {
  expect(argumentOf(() => assessIntermediatePressure(difference(-1, bar)))).toBe('intermediatePressure')
  expect(argumentOf(() => assessIntermediatePressure(difference(50.1, bar)))).toBe('intermediatePressure')
  expect(
    argumentOf(() => assessIntermediatePressure(difference(9, bar), { lowest: range.highest, highest: range.lowest })),
  ).toBe('range.highest')
})

test('what is judged says its value, the nearer end of the range, its cautions and its sources', () => {
  const of = (bars: number) => assessIntermediatePressure(difference(bars, bar), range)
  const facts = { cautions: ['regulator'], sources: ['common-practice'] }
  expect(of(9.2)).toMatchObject({ ...facts, value: difference(9.2, bar), limit: range.lowest })
  expect(of(9.5)).toMatchObject({ ...facts, limit: range.highest })
  expect(of(9.2).margin).toBeCloseTo(0.2e5, 6)
  expect(of(9.5).margin).toBeCloseTo(0.1e5, 6)
  expect(of(8).margin).toBeCloseTo(-1e5, 6)
  expect(oRingFit(ring).judged).toMatchObject(facts)
  expect(oRingFit(ring).judged.because.map(({ text }) => text)).toEqual(['stretch of 20.0 % lies outside 0 to 5 %'])
  // on the upper end itself: 10 mm stretched to 10.5
  const stretched = { ...ring, insideDiameter: measure(1, one), grooveDiameter: measure(1.05, one) } as never
  expect(argumentOf(() => oRingFit(stretched))).toBe('ring.insideDiameter')
})

// closed forms by hand
test('leak, relief and preload are products of what was given', () => {
  expect(seatLeak(creep)).toBeCloseTo((5e-5 * 0.5e5) / (60 * 1e5), 15)
  expect(reliefArea(failure)).toEqual({ area: expect.closeTo(30e-6, 12), cautions: ['regulator'] })
  const { force, lowest, highest, cautions } = preload(thread)
  expect(force).toBeCloseTo(30 / (0.2 * 0.02), 6)
  expect([lowest / force, highest / force]).toEqual([expect.closeTo(0.7, 12), expect.closeTo(1.3, 12)])
  expect(cautions).toEqual(['regulator'])
})

test('findings are found by all their words, however they are spaced', () => {
  expect(findBenchFindings('filter   green').map(({ id }) => id)).toEqual(['filter-green'])
  expect(findBenchFindings('  ')).toEqual([])
})
