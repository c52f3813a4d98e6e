import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { dryAir, trimix } from '../../../src/gas-law/index.ts'
import { type MeasuredInGas, workInTwoGases } from '../../../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  type EnergyPerVolume,
  joulePerLitre,
  temperatureOf,
} from '../../../src/units/index.ts'

const temperature = temperatureOf(20, celsius)
const measured = (ambient: number, work: number, mixture = dryAir, u = 0.02): MeasuredInGas => ({
  gas: { mixture, pressure: absolute(ambient, bar), temperature },
  workOfBreathingPerLitre: difference(work, joulePerLitre),
  standardUncertainty: difference(u, joulePerLitre),
})

test('work made by the model comes out as no change, whatever the gases and the share', () => {
  assert(
    property(double({ min: 0, max: 1, noNaN: true }), double({ min: 3, max: 5.5, noNaN: true }), (share, ambient) => {
      const { densities } = workInTwoGases(measured(4, 1), measured(ambient, 1), { constantShare: 'unknown' })
      const work = share + (1 - share) * (densities.second / densities.first)
      // the share of the second's own work that density leaves alone
      const own = share / work
      const result = workInTwoGases(measured(4, 1), measured(ambient, work), { constantShare: { from: own, to: own } })
      expect(result.change / 1000).toBeCloseTo(0, 12)
      expect(result.meaning).toBe('no change shown')
      const unknown = workInTwoGases(measured(4, 1), measured(ambient, work), { constantShare: 'unknown' })
      expect(unknown.meaning).toBe('no change shown')
    }),
  )
})

test('the parts add up, and the share counts as a rectangle', () => {
  const { parts, standardUncertainty, expandedUncertainty, densityRatio, correctedWork, change } = workInTwoGases(
    measured(4, 1.2, dryAir, 0.03),
    measured(3, 1, dryAir, 0.04),
    { constantShare: { from: 0.2, to: 0.6 } },
  )
  expect(densityRatio).toBeCloseTo(4 / 3, 2)
  const grows = densityRatio - 1
  expect(correctedWork / 1000).toBeCloseTo(1 + 0.6 * grows, 9)
  expect(change / 1000).toBeCloseTo(1 + 0.6 * grows - 1.2, 9)
  expect(parts.first / 1000).toBeCloseTo(0.03, 12)
  expect(parts.second / 1000).toBeCloseTo(0.04 * (1 + 0.6 * grows), 9)
  expect(parts.constantShare / 1000).toBeCloseTo((0.4 * grows) / Math.sqrt(12), 9)
  expect(standardUncertainty).toBeCloseTo(Math.hypot(...Object.values(parts)), 9)
  expect(expandedUncertainty).toBe(2 * standardUncertainty)
})

test('the meaning follows the sign, and only beyond the expanded uncertainty', () => {
  const options = { constantShare: { from: 0.3, to: 0.3 } }
  const meaning = (work: number) => workInTwoGases(measured(4, 1), measured(4, work), options).meaning
  // 2 · √2 · 0.02
  expect(meaning(1.058)).toBe('more work')
  expect(meaning(1.056)).toBe('no change shown')
  expect(meaning(0.942)).toBe('less work')
})

test('densities more than twice apart are refused, or said', () => {
  const light = measured(4, 0.8, trimix({ oxygen: 0.1, helium: 0.8 }))
  expect(() => workInTwoGases(measured(4, 1), light, { constantShare: 'unknown' })).toThrow(/factor of 2/)
  const { findings } = workInTwoGases(measured(4, 1), light, { constantShare: 'unknown', extrapolate: true })
  expect(findings.map(({ code }) => code)).toEqual(['extrapolated'])
  expect(workInTwoGases(measured(4, 1), measured(3, 1), { constantShare: 'unknown' }).findings).toEqual([])
})

test('bad input is refused by name', () => {
  const air = measured(4, 1)
  expect(() => workInTwoGases(air, air, { constantShare: { from: 0.5, to: 0.4 } })).toThrow(/constantShare.to/)
  expect(() => workInTwoGases(air, air, { constantShare: 'half' as never })).toThrow(/constantShare/)
  expect(() => workInTwoGases(air, air, { share: 1 } as never)).toThrow(/options.share/)
  expect(() =>
    workInTwoGases({ ...air, workOfBreathingPerLitre: Number.NaN as EnergyPerVolume }, air, {
      constantShare: 'unknown',
    }),
  ).toThrow(/first.workOf/)
  expect(() => workInTwoGases(air, measured(4, 1, dryAir, -1), { constantShare: 'unknown' })).toThrow(/second.standard/)
  expect(() => workInTwoGases({ ...air, gas: undefined } as never, air, { constantShare: 'unknown' })).toThrow(/gas/)
})
