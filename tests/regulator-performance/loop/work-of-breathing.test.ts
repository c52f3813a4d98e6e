import { assert, double, integer, property } from 'fast-check'
import { expect, test } from 'vitest'
import { meanWorkOfBreathing, siColumn, workOfBreathing } from '../../../src/regulator-performance/index.ts'
import { normalQuantile, seededRandom } from '../../../src/uncertainty/index.ts'
import {
  centimetreOfWater,
  cubicInch,
  difference,
  inchOfWater,
  inUnit,
  joule,
  joulePerLitre,
  kilogramForceMetrePerLitre,
  kilopascal,
  litre,
  millibar,
  type Unit,
} from '../../../src/units/index.ts'

type Points = readonly (readonly [number, number])[]

function loopOf(points: Points, volumeUnit: Unit<'volume'> = litre, pressureUnit: Unit<'pressure'> = kilopascal) {
  return {
    volume: siColumn({ values: points.map(([v]) => v), unit: volumeUnit }),
    pressure: siColumn({ values: points.map(([, p]) => p), unit: pressureUnit }),
  }
}

/** Resistance and elastance on a sinusoid of 2.5 L, kPa. */
function ellipse(samples: number, start = 0): Points {
  return Array.from({ length: samples }, (_, k) => {
    const phase = 2 * Math.PI * (k / samples + start)
    return [1.25 * (1 - Math.cos(phase)), -Math.sin(phase) - 0.3 * (1 - Math.cos(phase))]
  })
}

const codes = (points: Points) => workOfBreathing(loopOf(points)).findings.map(({ code }) => code)

test('the whole is the sum of its halves, and diver less assist in each', () => {
  assert(
    property(integer({ min: 3, max: 400 }), double({ min: 0, max: 1, noNaN: true }), (samples, start) => {
      const { workOfBreathing: work, inhalation, exhalation } = workOfBreathing(loopOf(ellipse(samples, start)))
      expect(inhalation.work + exhalation.work).toBeCloseTo(work, 12)
      expect(inhalation.workOfDiver - inhalation.workOfAssist).toBeCloseTo(inhalation.work, 12)
    }),
  )
})

test('the starting point does not matter', () => {
  assert(
    property(integer({ min: 3, max: 300 }), integer({ min: 0, max: 299 }), (samples, shift) => {
      const points = ellipse(samples)
      const turned = points.map((_, k) => points[(k + shift) % samples] as readonly [number, number])
      expect(workOfBreathing(loopOf(turned)).workOfBreathing).toBeCloseTo(
        workOfBreathing(loopOf(points)).workOfBreathing,
        12,
      )
    }),
  )
})

test('the reverse order changes the sign and nothing else', () => {
  const points = ellipse(60)
  const there = workOfBreathing(loopOf(points))
  const back = workOfBreathing(loopOf([...points].reverse()))
  expect(inUnit(back.workOfBreathing, joule)).toBeCloseTo(-inUnit(there.workOfBreathing, joule), 12)
  expect(back.tidalVolume).toBe(there.tidalVolume)
  expect(back.findings.map(({ code }) => code)).toContain('reversed')
})

test('points added on the sides of the polygon change nothing', () => {
  assert(
    property(integer({ min: 3, max: 40 }), integer({ min: 1, max: 20 }), (samples, parts) => {
      const points = ellipse(samples)
      const finer = points.flatMap(([v, p], k) => {
        const [w, q] = points[(k + 1) % samples] as readonly [number, number]
        return Array.from({ length: parts }, (_, i) => [v + ((w - v) * i) / parts, p + ((q - p) * i) / parts] as const)
      })
      const coarse = workOfBreathing(loopOf(points))
      const fine = workOfBreathing(loopOf(finer))
      expect(fine.workOfBreathing).toBeCloseTo(coarse.workOfBreathing, 12)
      expect(fine.crossings).toBe(coarse.crossings)
      expect(fine.grossWork).toBeCloseTo(coarse.grossWork, 12)
    }),
  )
})

test('the unit of the log does not matter', () => {
  const points = ellipse(80)
  const inSi = workOfBreathing(loopOf(points))
  const inOldUnits = points.map(
    ([v, p]) => [(v * litre.factor) / cubicInch.factor, (p * kilopascal.factor) / inchOfWater.factor] as const,
  )
  const old = workOfBreathing(loopOf(inOldUnits, cubicInch, inchOfWater))
  expect(old.workOfBreathingPerLitre / inSi.workOfBreathingPerLitre).toBeCloseTo(1, 12)
  expect(inUnit(old.workOfBreathingPerLitre, kilogramForceMetrePerLitre) * 9.80665).toBeCloseTo(
    inUnit(inSi.workOfBreathingPerLitre, joulePerLitre),
    12,
  )
  expect(inUnit(inSi.inhalation.peakPressure, centimetreOfWater) * 0.980665).toBeCloseTo(
    inUnit(inSi.inhalation.peakPressure, millibar),
    12,
  )
})

test('halving the step quarters the error of sampling', () => {
  const exact = (Math.PI / 2) * 2.5
  const error = (samples: number) => exact - inUnit(workOfBreathing(loopOf(ellipse(samples))).workOfBreathing, joule)
  for (const samples of [20, 40, 80, 160, 320, 640]) {
    expect(error(samples) / error(2 * samples)).toBeGreaterThan(3.9)
    expect(error(samples) / error(2 * samples)).toBeLessThan(4.1)
  }
})

test('a static pressure moves work from one half to the other and keeps the sum', () => {
  const loop = loopOf(ellipse(90))
  const plain = workOfBreathing(loop)
  const shifted = workOfBreathing(loop, { zeroPressure: difference(0.2, kilopascal) })
  expect(shifted.workOfBreathing).toBe(plain.workOfBreathing)
  // p_h · VT, equations R6
  expect(inUnit(shifted.inhalation.workPerLitre, joulePerLitre)).toBeCloseTo(
    inUnit(plain.inhalation.workPerLitre, joulePerLitre) + 0.2,
    12,
  )
})

test('a loop that crosses at any volume shows its gross work', () => {
  assert(
    property(double({ min: 0.1, max: 0.9, noNaN: true }), (share) => {
      // two triangles of opposite sign that meet at the given share of the tidal volume; heights 1 kPa at the ends
      const at = 2.5 * share
      const points: Points = [
        [0, -0.5],
        [at, 0],
        [2.5, 0.5],
        [2.5, -0.5],
        [at, 0],
        [0, 0.5],
      ]
      const { crossings, grossWork, workOfBreathing: work } = workOfBreathing(loopOf(points))
      expect(crossings).toBe(1)
      expect(grossWork).toBeCloseTo(1.25, 12)
      expect(work).toBeCloseTo(at / 2 - (2.5 - at) / 2, 12)
    }),
  )
})

test('gross work and crossings of a finely sampled crossing loop come out as of its corners', () => {
  const corners: Points = [
    [0, -1],
    [2.5, 1],
    [2.5, -1],
    [0, 1],
  ]
  const finer = corners.flatMap(([v, p], k) => {
    const [w, q] = corners[(k + 1) % 4] as readonly [number, number]
    return Array.from({ length: 500 }, (_, i) => [v + ((w - v) * i) / 500, p + ((q - p) * i) / 500] as const)
  })
  const { crossings, grossWork } = workOfBreathing(loopOf(finer))
  expect(crossings).toBe(1)
  expect(grossWork).toBeCloseTo(2.5, 4) // slices of equal width blur the crossing by half a slice
})

test.each([
  ['a half record', ellipse(200).slice(0, 90), 'open'],
  ['mbar read as kPa', ellipse(50).map(([v, p]) => [v, p * 10] as const), 'unlikely-pressure'],
  ['kPa read as Pa', ellipse(50).map(([v, p]) => [v, p / 1000] as const), 'unlikely-pressure'],
  ['litres read as cubic metres', ellipse(50).map(([v, p]) => [v * 1000, p] as const), 'unlikely-volume'],
  ['a pressure channel that is not connected', ellipse(50).map(([v]) => [v, 0.4] as const), 'constant-pressure'],
] satisfies [string, Points, string][])('%s is found out', (_, points, code) => {
  expect(codes(points)).toContain(code)
})

test('a sound loop has no findings', () => {
  for (const samples of [12, 60, 250, 3000]) expect(codes(ellipse(samples))).toEqual([])
})

test('bad input is refused by name', () => {
  const refuses = (points: Points, facts: object) =>
    expect(() => workOfBreathing(loopOf(points))).toThrow(expect.objectContaining(facts))
  refuses(ellipse(2), { code: 'input', value: '2 points', expected: 'at least 3 points' })
  refuses(
    ellipse(20).map(([v, p], k) => [v, k === 7 ? Number.NaN : p] as const),
    { code: 'range', argument: 'loop.pressure[7]' },
  )
  refuses(
    ellipse(20).map(([, p]) => [1, p] as const),
    { code: 'input', argument: 'loop.volume' },
  )
  expect(() => workOfBreathing({ volume: [0, 1, 2], pressure: [0, 1] })).toThrow(
    expect.objectContaining({ code: 'input', value: 'volume 3, pressure 2' }),
  )
})

test('of several breaths the mean breath is given, drift taken off and said', () => {
  const breaths = 6
  const one = ellipse(200)
  const many = Array.from({ length: 200 * breaths + 1 }, (_, k) => {
    const [v, p] = one[k % 200] as readonly [number, number]
    return [v + 1e-4 * k, p + 2e-4 * k] as const
  })
  const single = workOfBreathing(loopOf(one))
  const mean = meanWorkOfBreathing(loopOf(many))
  expect(mean.breaths).toBe(breaths)
  expect(single.breaths).toBe(1)
  expect(mean.workOfBreathingPerLitre / single.workOfBreathingPerLitre).toBeCloseTo(1, 3)
  expect(mean.tidalVolume / single.tidalVolume).toBeCloseTo(1, 4)
  expect(mean.inhalation.work + mean.exhalation.work).toBeCloseTo(mean.workOfBreathing, 9)
  expect(mean.findings.map(({ code }) => code)).toEqual(['several-breaths'])
  expect(mean.findings[0]?.text).toContain('A drift of 240 Pa and 0.12 L')
})

test('two breaths in too few points are refused, not added up', () => {
  const points: Points = [
    [0, 1],
    [2.5, -1],
    [0, 1.2],
    [2.5, -1.1],
  ]
  expect(() => meanWorkOfBreathing(loopOf(points))).toThrow(
    expect.objectContaining({ code: 'input', value: '2 breaths in 4 points' }),
  )
  expect(() => workOfBreathing(loopOf(points))).toThrow(
    expect.objectContaining({
      code: 'input',
      value: '2 breaths',
      hint: expect.stringContaining('meanWorkOfBreathing'),
    }),
  )
})

test('noise on a single breath makes neither a crossing nor a second breath', () => {
  assert(
    property(integer({ min: 1, max: 1e6 }), integer({ min: 40, max: 1000 }), (seed, samples) => {
      const uniform = seededRandom(seed)
      const noise = () => normalQuantile(uniform())
      const noisy = ellipse(samples, uniform()).map(([v, p]) => [v + 0.002 * noise(), p + 0.05 * noise()] as const)
      const { crossings, breaths } = workOfBreathing(loopOf(noisy))
      expect(crossings).toBe(0)
      expect(breaths).toBe(1)
    }),
    { numRuns: 200 },
  )
})

test('where noise is as large as the loop is open, its lobes are not taken for crossings', () => {
  assert(
    property(integer({ min: 1, max: 1e6 }), integer({ min: 100, max: 250 }), (seed, samples) => {
      const uniform = seededRandom(seed)
      const noise = () => normalQuantile(uniform())
      const noisy = ellipse(samples).map(([v, p]) => [v, 0.15 * p + 0.08 * noise()] as const)
      const { crossings, grossWork, workOfBreathing: work } = workOfBreathing(loopOf(noisy))
      expect(crossings).toBe(0)
      expect(grossWork).toBeGreaterThanOrEqual(work * (1 - 1e-12)) // lobes only ever add to it
    }),
    { numRuns: 50 },
  )
})

test('the assist peak is the highest pressure of inhalation, and the lowest of exhalation', () => {
  const { inhalation, exhalation } = workOfBreathing(
    loopOf([
      [0, 0],
      [0.2, -0.6],
      [0.6, 0.3],
      [2, 0.25],
      [2.5, 0],
      [2.5, 0.7],
      [1, -0.1],
      [0, 0.5],
    ]),
  )
  expect(inUnit(inhalation.peakPressure, kilopascal)).toBeCloseTo(-0.6, 12)
  expect(inUnit(inhalation.peakAssistPressure, kilopascal)).toBeCloseTo(0.3, 12)
  expect(inUnit(exhalation.peakPressure, kilopascal)).toBeCloseTo(0.7, 12)
  expect(inUnit(exhalation.peakAssistPressure, kilopascal)).toBeCloseTo(-0.1, 12)
})

test.each([0, 0.2, 0.34, 0.5, 0.7, 0.9])(
  'breaths are counted round the end of a record that starts at phase %s',
  (start) => {
    const two = Array.from({ length: 400 }, (_, k) => ellipse(200, start)[k % 200] as readonly [number, number])
    expect(() => workOfBreathing(loopOf(two))).toThrow(expect.objectContaining({ code: 'input', value: '2 breaths' }))
    expect(workOfBreathing(loopOf(ellipse(200, start))).findings).toEqual([])
  },
)

test('a loop and its options are refused by the name of what is wrong', () => {
  const loop = loopOf(ellipse(20))
  expect(() => workOfBreathing({ ...loop, flow: [] } as never)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'loop.flow' }),
  )
  expect(() => workOfBreathing(loop, { zero: 1 } as never)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'options.zero' }),
  )
  expect(() => workOfBreathing(loop, { zeroPressure: Number.NaN as never })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'options.zeroPressure' }),
  )
  expect(() => meanWorkOfBreathing({ volume: [1, 1, 1], pressure: [0, 1, 0] })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'loop.volume' }),
  )
})
