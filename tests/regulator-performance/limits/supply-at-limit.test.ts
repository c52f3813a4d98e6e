import { expect, test } from 'vitest'
import { supplyAtLimit, type WorkAtSupply } from '../../../src/regulator-performance/index.ts'
import { seededRandom } from '../../../src/uncertainty/index.ts'
import {
  bar,
  difference,
  type EnergyPerVolume,
  type GaugePressure,
  gauge,
  inUnit,
  joulePerLitre,
} from '../../../src/units/index.ts'

const at = (supply: number, work: number, u = 0.05): WorkAtSupply => ({
  supplyPressure: gauge(supply, bar),
  workOfBreathingPerLitre: difference(work, joulePerLitre),
  standardUncertainty: difference(u, joulePerLitre),
})
const limit = difference(3, joulePerLitre)

test('the supply lies where the line between the two supplies meets the limit, whatever the order', () => {
  const rows = [at(30, 4), at(200, 1.4), at(40, 2), at(50, 1.6)]
  const found = supplyAtLimit(rows, limit)
  expect(rows[0]?.supplyPressure).toBe(gauge(30, bar))
  if (found.kind !== 'passes') throw new Error(found.kind)
  expect(inUnit(found.supplyPressure, bar)).toBeCloseTo(35, 9)
  expect(found.between).toEqual({ beyondAt: gauge(30, bar), withinAt: gauge(40, bar) })
  // 5 bar per J/L, each work counting half
  expect(found.parts.work / 1e5).toBeCloseTo(5 * Math.SQRT1_2 * 0.05, 9)
  expect(found.parts.interpolation / 1e5).toBeCloseTo(5 / Math.sqrt(3), 9)
  expect(found.standardUncertainty).toBeCloseTo(Math.hypot(found.parts.work, found.parts.interpolation), 9)
  expect(found.because).toEqual([])
  expect(found.cautions).toEqual(['always', 'regulator', 'reserve'])
})

test('a work nearer to the limit weighs more in the uncertainty', () => {
  const found = supplyAtLimit([at(40, 2.8, 0.1), at(30, 4.8, 0)], limit)
  if (found.kind !== 'passes') throw new Error(found.kind)
  expect(inUnit(found.supplyPressure, bar)).toBeCloseTo(39, 9)
  expect(found.parts.work / 1e5).toBeCloseTo(5 * 0.9 * 0.1, 9)
  expect(found.parts.interpolation / 1e5).toBeCloseTo(9 / Math.sqrt(3), 9)
})

test('no crossing is said by its side', () => {
  expect(supplyAtLimit([at(200, 1), at(10, 2)], limit)).toMatchObject({
    kind: 'within throughout',
    lowestMeasured: gauge(10, bar),
  })
  expect(supplyAtLimit([at(200, 3.5), at(10, 2)], limit)).toMatchObject({
    kind: 'beyond at the highest',
    highestMeasured: gauge(200, bar),
    because: [{ code: 'passes-more-than-once' }],
  })
  expect(supplyAtLimit([at(200, 1), at(10, 3)], limit).kind).toBe('within throughout')
})

test('the first crossing from the full cylinder counts, and a second one is said', () => {
  const found = supplyAtLimit([at(200, 1), at(100, 5), at(50, 2), at(20, 5)], limit)
  expect(found).toMatchObject({ kind: 'passes', between: { withinAt: gauge(200, bar), beyondAt: gauge(100, bar) } })
  expect(found.because.map(({ code }) => code)).toEqual(['passes-more-than-once'])
  expect(found.because[0]?.text).toContain('50 bar')
})

test('a work within its expanded uncertainty of the limit is said', () => {
  const codes = (u: number) => supplyAtLimit([at(50, 2.9, u), at(30, 4)], limit).because.map(({ code }) => code)
  expect(codes(0.051)).toEqual(['within-uncertainty'])
  expect(codes(0.049)).toEqual([])
})

test('the interval of two standard uncertainties holds the supply of stages with a knee, wherever it lies', () => {
  const uniform = seededRandom(12)
  let held = 0
  const trials = 2000
  for (let trial = 0; trial < trials; trial++) {
    const knee = 15 + 25 * uniform()
    const steepness = 0.02 + 0.6 * uniform()
    const level = 1 + 1.5 * uniform()
    const work = (supply: number) => level + Math.max(0, knee - supply) * steepness
    const truth = knee - (3 - level) / steepness
    const supplies = [200, 50, 40, 30, 20, 10]
    const noisy = supplies.map((supply) => at(supply, work(supply) + 0.05 * Math.sqrt(12) * (uniform() - 0.5)))
    const found = supplyAtLimit(noisy, limit)
    if (found.kind !== 'passes') {
      held += truth <= 11 ? 1 : 0
      continue
    }
    held += Math.abs(found.supplyPressure / 1e5 - truth) <= (2 * found.standardUncertainty) / 1e5 ? 1 : 0
  }
  expect(held / trials).toBeGreaterThan(0.95)
})

test('bad measurements are refused by name', () => {
  expect(() => supplyAtLimit([at(200, 1)], limit)).toThrow(/at least 2/)
  expect(() => supplyAtLimit(undefined as never, limit)).toThrow(/measurements/)
  expect(() => supplyAtLimit([at(200, 1), at(200, 2)], limit)).toThrow(/two measurements at 200 bar/)
  expect(() =>
    supplyAtLimit([at(200, 1), { ...at(50, 2), workOfBreathingPerLitre: Number.NaN as EnergyPerVolume }], limit),
  ).toThrow(/measurements\[1\].workOfBreathingPerLitre/)
  expect(() => supplyAtLimit([at(200, 1), { ...at(50, 2), supplyPressure: -1 as GaugePressure }], limit)).toThrow(
    /measurements\[1\].supplyPressure/,
  )
  expect(() => supplyAtLimit([at(200, 1), at(50, 2, -1)], limit)).toThrow(/measurements\[1\].standardUncertainty/)
  expect(() => supplyAtLimit([at(200, 1), { ...at(50, 2), suply: 1 } as WorkAtSupply], limit)).toThrow(/suply/)
  expect(() => supplyAtLimit([at(200, 1), at(50, 2)], 0 as EnergyPerVolume)).toThrow(/limit/)
})
