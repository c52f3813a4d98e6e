import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  burstDiscWindow,
  connectionOf,
  connections,
  endLoad,
  reserveOf,
  type ValveOutletId,
  valveOutletsFor,
} from '../../../src/cylinder/valves/index.ts'
import { dryAir, gasState, heliox } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  gauge,
  internalVolumeOf,
  inUnit,
  kelvin,
  kilogramForce,
  litre,
  measure,
  millimetre,
  newton,
  one,
  psi,
  temperatureOf,
  toAbsolute,
} from '../../../src/units/index.ts'

// engineering vectors P2-1, P2-2, computed independently, relative tolerance 1e-12
test.each([
  [16, 232, 4664.636772050125, 475.6605744112541],
  [11.5, 300, 3116.067213279376, 317.7504258109932],
])('P2: end load on a %s mm seal at %s bar', (diameter, pressure, newtons, kilograms) => {
  const load = endLoad(gauge(pressure, bar), measure(diameter, millimetre))
  expect(Math.abs(inUnit(load, newton) / newtons - 1)).toBeLessThan(1e-12)
  expect(Math.abs(inUnit(load, kilogramForce) / kilograms - 1)).toBeLessThan(1e-12)
})

test('P3-2: disc window of a 232 bar cylinder tested at one and a half times it, ideal gas', () => {
  // The vector ignores the difference of gauge and absolute pressure: 397.251 K is reached at 313.2 bar from 232 bar at
  // 294.26 K, all taken as absolute. Taking one atmosphere off both gauge figures states the same case.
  const ambient = absolute(1.01325, bar)
  const asAbsolute = (n: number): ReturnType<typeof gauge> => gauge(n - 1.01325, bar)
  const common = { fillTemperature: temperatureOf(294.26, kelvin), ambientPressure: ambient, mixture: dryAir }
  const window = burstDiscWindow(
    { ...common, testPressure: gauge(348, bar), toleranceBelow: measure(0.1, one), fillPressure: asAbsolute(232) },
    { gas: 'ideal' },
  )
  expect(inUnit(window.lowest, bar) / 313.2).toBeCloseTo(1, 11)
  expect(inUnit(window.highest, bar)).toBe(348)
  const shifted = {
    ...common,
    testPressure: asAbsolute(313.2),
    toleranceBelow: measure(0, one),
    fillPressure: asAbsolute(232),
  }
  expect(burstDiscWindow(shifted, { gas: 'ideal' }).temperatureAtLowest / 397.251).toBeCloseTo(1, 11)
})

test('the real gas reaches the disc tens of degrees sooner than the ideal rule says, at one density', () => {
  const disc = {
    testPressure: gauge(348, bar),
    toleranceBelow: measure(0.1, one),
    fillPressure: gauge(232, bar),
    fillTemperature: temperatureOf(15, celsius),
    ambientPressure: absolute(1.01325, bar),
    mixture: dryAir,
  }
  const real = burstDiscWindow(disc)
  const ideal = burstDiscWindow(disc, { gas: 'ideal' })
  expect(ideal.temperatureAtLowest - real.temperatureAtLowest).toBeGreaterThan(25)
  const densityAt = (pressure: typeof real.lowest, temperature: typeof real.temperatureAtLowest): number =>
    gasState(dryAir, { pressure: toAbsolute(pressure, disc.ambientPressure), temperature }).molarDensity
  const filled = densityAt(disc.fillPressure, disc.fillTemperature)
  expect(densityAt(real.lowest, real.temperatureAtLowest) / filled).toBeCloseTo(1, 9)
  expect(densityAt(real.highest, real.temperatureAtHighest) / filled).toBeCloseTo(1, 9)
})

test('a disc marked outside its window, or below the fill, is reported; an unmarked one is asked for', () => {
  const disc = {
    testPressure: gauge(5000, psi),
    toleranceBelow: measure(0.1, one),
    fillPressure: gauge(3000, psi),
    fillTemperature: temperatureOf(21, celsius),
    ambientPressure: absolute(1.01325, bar),
    mixture: dryAir,
  }
  const codes = (marked?: number): string[] =>
    burstDiscWindow(marked === undefined ? disc : { ...disc, markedRating: gauge(marked, psi) }).because.map(
      ({ code }) => code,
    )
  expect(codes()).toEqual(['rating-not-stated'])
  expect(codes(4800)).toEqual([])
  expect(codes(5200)).toEqual(['rating-above-test'])
  expect(codes(3750)).toEqual(['rating-below-window'])
  expect(codes(2900)).toEqual(['rating-below-window', 'rating-below-fill'])
})

const reserve = {
  setting: difference(20, bar),
  tolerance: measure(0.25, one),
  internalVolume: internalVolumeOf(12, litre),
  mixture: dryAir,
  temperature: temperatureOf(10, celsius),
}

test('a reserve valve closes at a higher pressure the deeper it is, keeps nearly the same gas, and gives fewer breaths', () => {
  const surface = reserveOf({ ...reserve, ambientPressure: absolute(1, bar) }).asSet
  const deep = reserveOf({ ...reserve, ambientPressure: absolute(5, bar) }).asSet
  expect([inUnit(surface.closesAt, bar), inUnit(deep.closesAt, bar)]).toEqual([21, 25])
  expect(deep.amount / surface.amount).toBeCloseTo(1, 1)
  expect(surface.volumeAtAmbient / deep.volumeAtAmbient).toBeCloseTo(5, 0)
  // ideal gas: exactly setting times volume, whatever the depth
  const ideal = reserveOf({ ...reserve, ambientPressure: absolute(5, bar) }, { gas: 'ideal' }).asSet
  expect(inUnit(ideal.volumeAtAmbient, litre)).toBeCloseTo((20 * 12) / 5, 9)
})

test('a weak spring keeps back less and a strong one more, in proportion to its setting', () => {
  const { weakSpring, asSet, strongSpring } = reserveOf(
    { ...reserve, ambientPressure: absolute(3, bar) },
    { gas: 'ideal' },
  )
  expect([weakSpring.amount / asSet.amount, strongSpring.amount / asSet.amount].map((x) => x.toFixed(9))).toEqual([
    '0.750000000',
    '1.250000000',
  ])
})

test('in a pair with one sprung cylinder the gas spreads over both when the lever is pulled', () => {
  const pair = { ...reserve, sharedVolume: internalVolumeOf(12, litre), ambientPressure: absolute(3, bar) }
  expect(inUnit(reserveOf(pair, { gas: 'ideal' }).asSet.afterPulling, bar)).toBeCloseTo(3 + 10, 9)
  assert(
    property(double({ min: 1, max: 10, noNaN: true }), (pressure) => {
      const single = reserveOf({ ...reserve, ambientPressure: absolute(pressure, bar) }).asSet
      expect(single.afterPulling / single.closesAt).toBeCloseTo(1, 9)
    }),
    { numRuns: 20 },
  )
})

test('helium leaves a reserve too, and bad input names its field', () => {
  const helium = reserveOf({ ...reserve, mixture: heliox(0.2), ambientPressure: absolute(5, bar) }).asSet
  expect(inUnit(helium.volumeAtAmbient, litre)).toBeCloseTo(47.5, 0)
  expect(() => reserveOf({ ...reserve, tolerance: measure(25, one), ambientPressure: absolute(3, bar) })).toThrow(
    expect.objectContaining({ argument: 'tolerance' }),
  )
})

test('what fits what: a low-pressure connector never on a high-pressure outlet, air never on nitrox', () => {
  const outcome = (
    outlet: ValveOutletId,
    connector: 'yoke' | 'threaded-232' | 'threaded-300',
    pressure: number,
  ): string => connectionOf({ outlet, connector, workingPressure: gauge(pressure, bar) }).outcome
  expect(outcome('threaded-300', 'threaded-232', 200)).toBe('does not fit')
  expect(outcome('threaded-300', 'yoke', 200)).toBe('does not fit')
  expect(outcome('threaded-nitrox', 'threaded-300', 200)).toBe('does not fit')
  expect(outcome('cga-540', 'threaded-300', 100)).toBe('does not fit') // not in the table at all
  expect(outcome('threaded-232', 'threaded-300', 232)).toBe('fits')
  expect(outcome('threaded-232', 'threaded-300', 300)).toBe('fits, but not at this pressure')
  expect(connectionOf({ outlet: 'threaded-232', connector: 'yoke', workingPressure: gauge(232, bar) })).toMatchObject({
    outcome: 'fits',
    needs: 'yoke adaptor',
  })
})

test('no pair of the table that fits is allowed more than either standard gives', () => {
  for (const { outlet, connector, fits, atMostBar } of connections) {
    expect(fits).toBe(atMostBar !== undefined)
    if (connector === 'yoke' || outlet === 'yoke-iso' || outlet === 'threaded-232')
      expect(atMostBar ?? 0).toBeLessThanOrEqual(232)
  }
})

test('outlets for a pressure: yoke to 232 bar and no further, threaded classes above', () => {
  const air = (pressure: number, isForDiving = true): readonly string[] =>
    valveOutletsFor({ gas: 'air', workingPressure: gauge(pressure, bar), isForDiving })
  expect(air(200)).toEqual(['yoke-iso', 'threaded-232', 'threaded-300', 'threaded-500', 'cga-850'])
  expect(air(232)).toEqual(['yoke-iso', 'threaded-232', 'threaded-300', 'threaded-500'])
  expect(air(300)).toEqual(['threaded-300', 'threaded-500'])
  expect(air(350, false)).toEqual(['en-a3', 'cga-347'])
})
