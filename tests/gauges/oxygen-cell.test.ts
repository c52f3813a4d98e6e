import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  analysedFraction,
  assessCell,
  cellAgreement,
  cellLife,
  cellLinearity,
  depthOfAnalysis,
  expectedOutput,
  limitedCell,
  oxygenAtCell,
  oxygenShown,
  thermistorLagFactor,
} from '../../src/gauges/index.ts'
import { normalDistribution, propagateBySampling, rectangular } from '../../src/uncertainty/index.ts'
import {
  type AbsolutePressure,
  absolute,
  bar,
  celsius,
  difference,
  type Fraction,
  fractionOf,
  hectopascal,
  hour,
  inUnit,
  kelvin,
  kilogramPerCubicMetre,
  measure,
  millivolt,
  one,
  pascal,
  percent,
  temperatureOf,
} from '../../src/units/index.ts'

const mV = (n: number) => measure(n, millivolt)
const moist = (pressure: number, t: number, relativeHumidity: number, oxygen = 0.20946) => ({
  pressure: absolute(pressure, pascal),
  temperature: temperatureOf(t, celsius),
  relativeHumidity: measure(relativeHumidity, one),
  oxygenFraction: fractionOf(oxygen),
})

// vectors GO-01 to GO-07. Their fit of the enhancement lies up to 0.18 % of the vapour below the equation of CIPM-2007, which the
// next test holds ours against; that is 1.2e-4 of the oxygen at most, and 1e-5 where the air is dry.
test.each([
  { p: 101_325, t: 20, rh: 0.5, water: 1173.268, oxygen: 20_977.782, wet: 0.207035, told: 1.009493, shown: 50.4747 },
  { p: 101_325, t: 30, rh: 1, water: 4259.383, oxygen: 20_331.364, wet: 0.200655, told: 1.041589, shown: 52.0794 },
  { p: 101_325, t: 10, rh: 0.3, water: 369.679, oxygen: 21_146.102, wet: 0.208696, told: 1.001458, shown: 50.0729 },
  { p: 74_682.51, t: 5, rh: 0.6, water: 524.872, oxygen: 15_533.059, wet: 0.207988, told: 1.363345, shown: 50.2433 },
  { p: 95_460.83, t: 35, rh: 0.9, water: 5079.74, oxygen: 18_931.224, wet: 0.198314, told: 1.118624, shown: 52.6942 },
  { p: 61_640.21, t: -5, rh: 0.4, water: 161.078, oxygen: 12_877.418, wet: 0.208913, told: 1.644501, shown: 50.0209 },
])(
  'air of $t °C and humidity $rh at $p Pa holds $oxygen Pa of oxygen',
  ({ p, t, rh, water, oxygen, wet, told, shown }) => {
    const air = oxygenAtCell(moist(p, t, rh))
    expect(Math.abs(air.waterVapourPressure / water - 1)).toBeLessThan(2e-3)
    expect(Math.abs(air.partialPressure / oxygen - 1)).toBeLessThan(1.2e-4)
    expect(Math.abs(air.moistFraction / wet - 1)).toBeLessThan(1.2e-4)
    // told 20.9 % of 1013.25 hPa, and a display in per cent set to 20.9 in moist air and shown a dry half
    expect(Math.abs((0.209 * 101_325) / air.partialPressure / told - 1)).toBeLessThan(1.2e-4)
    expect(Math.abs((50 * 0.209) / air.moistFraction / shown - 1)).toBeLessThan(1.2e-4)
  },
)

test('GO-08: a saturated loop of 40 % at 34 °C and 2.3 bar holds 0.899 bar, not 0.92', () => {
  const loop = oxygenAtCell(moist(230_000, 34, 1, 0.4))
  expect(Math.abs(loop.waterVapourPressure / 5359.731 - 1)).toBeLessThan(2e-3)
  expect(Math.abs(loop.partialPressure / 89_856.108 - 1)).toBeLessThan(1.2e-4)
})

// cipm-2007, equation A1.2: f = 1.00062 + 3.14e-8 p + 5.6e-7 t², for 600 to 1100 hPa and 15 to 27 °C
test.each([
  { p: 101_325, t: 20 },
  { p: 101_325, t: 27 },
  { p: 74_682, t: 15 },
])('at $t °C and $p Pa the vapour is enhanced as CIPM-2007 has it', ({ p, t }) => {
  const wet = oxygenAtCell(moist(p, t, 1)).waterVapourPressure
  const plain = oxygenAtCell(moist(p, t, 1), { gas: 'ideal' }).waterVapourPressure
  expect(Math.abs(wet / plain - (1.00062 + 3.14e-8 * p + 5.6e-7 * t * t))).toBeLessThan(3e-4)
})

test('GO-09: a flush to 97 % at 2000 m told as 1.00 bar: 1.30 shown is 1.00', () => {
  const { partialPressure } = oxygenAtCell(moist(79_495.2, 20, 0, 0.97))
  expect(partialPressure / 77_110.34).toBeCloseTo(1, 6)
  expect(100_000 / partialPressure).toBeCloseTo(1.296843, 6)
  expect((1.3 * partialPressure) / 100_000).toBeCloseTo(1.002434, 6)
})

// engineering vectors I5-1 to I5-3 (vapour without enhancement, 5e-5)
test.each([
  { p: 101_325, t: 20, rh: 0, calibrated: 21_227.587, oxygen: 33_964.14, fraction: 0.3352 },
  { p: 101_325, t: 30, rh: 1, calibrated: 20_337.847, oxygen: 32_540.555, fraction: 0.32115031 },
  { p: 80_000, t: 20, rh: 0.5, calibrated: 16_514.956, oxygen: 26_423.93, fraction: 0.33029913 },
])(
  'a cell set in air of $t °C and humidity $rh finds $fraction, and 0.3352 if the water is forgotten',
  ({ p, t, rh, ...expected }) => {
    const { partialPressure } = oxygenAtCell(moist(p, t, rh, 0.2095), { gas: 'ideal' })
    const shown = oxygenShown([{ partialPressure, voltage: mV(10) }], mV(16))
    expect(Math.abs(partialPressure / expected.calibrated - 1)).toBeLessThan(5e-5)
    expect(Math.abs(shown / expected.oxygen - 1)).toBeLessThan(5e-5)
    expect(Math.abs(shown / p / expected.fraction - 1)).toBeLessThan(5e-5)
    const dry = oxygenAtCell(moist(p, t, 0, 0.2095)).partialPressure
    expect(oxygenShown([{ partialPressure: dry, voltage: mV(10) }], mV(16)) / p).toBeCloseTo(0.3352, 12)
  },
)

// engineering vectors I6-1, I6-2 (own closed form, 1e-12)
test.each([
  {
    low: 10.2,
    high: 47.5,
    shown: 22,
    fraction: 0.4595777479892761,
    straight: 48.68735083532219,
    linearity: 0.9756127450980393,
  },
  { low: 10, high: 43, shown: 43, fraction: 1, straight: 47.7326968973747, linearity: 0.90085 },
])('a cell of $low mV in air and $high mV in oxygen has linearity $linearity', ({ low, high, shown, ...expected }) => {
  const inAir = { partialPressure: absolute(0.2095, bar), voltage: mV(low) }
  const inOxygen = { partialPressure: absolute(1, bar), voltage: mV(high) }
  expect(inUnit(oxygenShown([inAir, inOxygen], mV(shown)), bar) / expected.fraction).toBeCloseTo(1, 12)
  expect(inUnit(expectedOutput([inAir], absolute(1, bar)), millivolt) / expected.straight).toBeCloseTo(1, 12)
  expect(cellLinearity(inAir, inOxygen) / expected.linearity).toBeCloseTo(1, 12)
})

test('I7-2: a cell limited to 70 mV shows 1.4 bar in 1.6', () => {
  const calibration = [{ partialPressure: absolute(1, bar), voltage: mV(50) }] as const
  const limited = limitedCell(calibration, { partialPressure: absolute(1.6, bar), limit: mV(70) })
  expect(inUnit(limited.voltage, millivolt)).toBeCloseTo(70, 12)
  expect(inUnit(limited.shown, bar)).toBeCloseTo(1.4, 12)
})

test('a limit never makes a cell show more, and below it changes nothing', () => {
  const calibration = [{ partialPressure: absolute(1, bar), voltage: mV(50) }] as const
  const pressures = fc.double({ min: 0.05, max: 5, noNaN: true })
  fc.assert(
    fc.property(pressures, fc.double({ min: 1, max: 300, noNaN: true }), (p, limit) => {
      const partialPressure = absolute(p, bar)
      const { shown } = limitedCell(calibration, { partialPressure, limit: mV(limit) })
      expect(shown).toBeLessThanOrEqual(partialPressure * (1 + 1e-12))
      if (50 * p < limit) expect(shown / partialPressure).toBeCloseTo(1, 12)
    }),
  )
})

describe('two limited cells against a good one', () => {
  // vector GO-10
  const cells = (
    [
      [9.5, undefined],
      [10, 12],
      [10.2, 12.1],
    ] as const
  ).map(([perBar, limit]) => {
    const calibration = [{ partialPressure: absolute(1, bar), voltage: mV(perBar) }] as const
    const at = { partialPressure: absolute(1.6, bar), limit: mV(limit ?? 900) }
    return { shown: limitedCell(calibration, at).shown }
  })

  test('GO-10: a vote shows 1.19 bar and throws out the only right cell', () => {
    const found = cellAgreement(cells, difference(0.1, bar))
    expect(cells.map(({ shown }) => Number(inUnit(shown, bar).toFixed(6)))).toEqual([1.6, 1.2, 1.186275])
    expect(inUnit(found.median, bar)).toBeCloseTo(1.2, 9)
    expect(inUnit(found.nearestTwo, bar)).toBeCloseTo(1.193137, 6)
    expect(found.outvoted).toBe(0)
    expect(inUnit(found.highest, bar)).toBeCloseTo(1.6, 9)
    expect(found.verdict).toBe('beyond')
  })

  test('the two limited cells alone agree, and that is not enough', () => {
    const found = cellAgreement(cells.slice(1), difference(0.1, bar))
    expect(found.verdict).toBe('undetermined')
    expect(found.because.map(({ code }) => code)).toEqual(['untried', 'shared-fault'])
    expect(found.outvoted).toBeUndefined()
    expect(found.cautions).toContain('oxygen-limits')
  })

  test.each([
    { shown: [1.2, 1.25], tried: [1.6, 1.6], verdict: 'within', codes: ['shared-fault'] },
    { shown: [1.2, 1.25], tried: [1.6, 1], verdict: 'undetermined', codes: ['untried', 'shared-fault'] },
    { shown: [1.2, 1.4], tried: [1.6, 1.6], verdict: 'beyond', codes: ['cells-apart', 'shared-fault'] },
    { shown: [1.2, 1.4], tried: [1.6, 1.3], verdict: 'beyond', codes: ['cells-apart', 'untried', 'shared-fault'] },
  ])('$shown tried to $tried: $verdict', ({ shown, tried, verdict, codes }) => {
    const given = shown.map((p, i) => ({ shown: absolute(p, bar), triedTo: absolute(tried[i] ?? 0, bar) }))
    const found = cellAgreement(given, difference(0.1, bar))
    expect(found.verdict).toBe(verdict)
    expect(found.because.map(({ code }) => code)).toEqual(codes)
  })

  test('one cell, a missing reading and a misspelt field are refused', () => {
    const allowed = difference(0.1, bar)
    expect(() => cellAgreement(cells.slice(0, 1), allowed)).toThrow(expect.objectContaining({ code: 'input' }))
    const lost = [...cells.slice(1), { shown: Number.NaN as AbsolutePressure }]
    expect(() => cellAgreement(lost, allowed)).toThrow(expect.objectContaining({ argument: 'cells[2].shown' }))
    const misspelt = cells.map((cell) => ({ ...cell, triedUpTo: 1 }))
    expect(() => cellAgreement(misspelt, allowed)).toThrow(expect.objectContaining({ code: 'input' }))
  })
})

test.each([
  { air: 10, richest: 1.6, output: 75, highest: 1.6, verdict: 'within', codes: [] },
  { air: 10, richest: 1, output: 47.5, highest: 1.6, verdict: 'undetermined', codes: ['untried'] },
  { air: 10, richest: 1.6, output: 70, highest: 1.6, verdict: 'beyond', codes: ['linearity'] },
  { air: 7.9, richest: 1.6, output: 60, highest: 1.6, verdict: 'beyond', codes: ['output'] },
  { air: 7.9, richest: 1, output: 30, highest: 1.6, verdict: 'beyond', codes: ['output', 'linearity', 'untried'] },
])(
  '$air mV in air, $output mV at $richest bar: $verdict $codes',
  ({ air, richest, output, highest, verdict, codes }) => {
    const found = assessCell({
      inAir: { partialPressure: absolute(0.21, bar), voltage: mV(air) },
      richer: [{ partialPressure: absolute(richest, bar), voltage: mV(output) }],
      highestUsed: absolute(highest, bar),
      leastLinearity: measure(95, percent),
      leastInAir: mV(8),
    })
    expect(found.verdict).toBe(verdict)
    expect(found.because.map(({ code }) => code)).toEqual(codes)
  },
)

test('GO-12: 500 000 per cent hours are 23 810 h in air, 5000 h at 1 bar and 3846 h at 1.3', () => {
  const rating = { partialPressure: absolute(1, bar), duration: measure(5000, hour) }
  const left = (p: number) => inUnit(cellLife(rating, [], absolute(p, bar)).left, hour)
  expect([0.21, 1, 1.3].map((p) => Number(left(p).toFixed(2)))).toEqual([23_809.52, 5000, 3846.15])
  const past = cellLife(
    rating,
    [{ partialPressure: absolute(1, bar), duration: measure(6000, hour) }],
    absolute(1, bar),
  )
  expect(past.used).toBeCloseTo(1.2, 12)
  expect(past.left).toBe(0)
})

test('a thermistor ten kelvin behind makes a reading 28 % high, ten ahead 22 % low', () => {
  expect(thermistorLagFactor(difference(10, kelvin), 0.025)).toBeCloseTo(Math.exp(0.25), 12)
  expect(thermistorLagFactor(difference(-10, kelvin), 0.025)).toBeLessThan(0.78)
})

describe('an analysis', () => {
  const analysis = {
    airVoltage: rectangular(mV(10), mV(0.05)),
    sampleVoltage: rectangular(mV(16), mV(0.05)),
    airPressure: normalDistribution(absolute(1013.25, hectopascal), difference(2, hectopascal)),
    backPressure: rectangular(0, 0),
    temperature: rectangular(temperatureOf(20, celsius), difference(2, kelvin)),
    relativeHumidity: rectangular(measure(50, percent), measure(20, percent) as Fraction),
    linearity: rectangular(1, 0.01),
  }

  test('finds the fraction with an uncertainty that sampling confirms', () => {
    const found = analysedFraction(analysis)
    const sampled = propagateBySampling(
      ({ a, s, l, h }) => (1.6 * (s / a) * 0.20946 * (1 - h * 0.0232)) / l,
      { a: rectangular(1, 0.005), s: rectangular(1, 0.05 / 16), l: rectangular(1, 0.01), h: rectangular(0.5, 0.2) },
      { trials: 50_000, seed: 3 },
    )
    expect(found.oxygen).toBeCloseTo(1.6 * 0.207035, 3)
    expect(found.standardUncertainty / sampled.standardUncertainty).toBeCloseTo(1, 1)
    expect(found.budget.contributions.map(({ share }) => share).reduce((a, b) => a + b)).toBeCloseTo(1, 9)
    expect(found.cautions).toContain('analyse-mixture')
  })

  test('ten per cent of back pressure unnoticed read ten per cent high', () => {
    const noticed = analysedFraction({ ...analysis, backPressure: rectangular(10_132.5, 0) })
    expect(analysedFraction(analysis).oxygen / noticed.oxygen).toBeCloseTo(1.1, 9)
  })

  test('a richer mixture than read brings its depth up', () => {
    const water = { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) }
    const at = { water, maximumOxygenPartialPressure: absolute(1.4, bar) }
    const analysed = { oxygen: fractionOf(32, percent), expandedUncertainty: 0.01 }
    const found = depthOfAnalysis(analysed, at)
    expect(found.depth).toBeCloseTo((140_000 / 0.32 - 101_325) / (1025 * 9.80665), 9)
    expect(found.certainDepth).toBeCloseTo((140_000 / 0.33 - 101_325) / (1025 * 9.80665), 9)
    const limit = { ...at, maximumOxygenPartialPressure: absolute(0.3, bar) }
    expect(depthOfAnalysis(analysed, limit).certainDepth).toBe(0)
  })

  test('a missing or misspelt input is refused', () => {
    const { linearity, ...rest } = analysis
    // @ts-expect-error linearity is missing
    expect(() => analysedFraction(rest)).toThrow(expect.objectContaining({ argument: 'analysis.linearity' }))
    expect(linearity.value).toBe(1)
    expect(() => oxygenAtCell({ ...moist(101_325, 20, 0.5), humidity: 1 } as never)).toThrow(
      expect.objectContaining({ code: 'input' }),
    )
    expect(() => oxygenAtCell(moist(101_325, 20, 50))).toThrow(
      expect.objectContaining({ argument: 'gas.relativeHumidity' }),
    )
  })
})

test('points that make no line are refused', () => {
  const inAir = { partialPressure: absolute(0.21, bar), voltage: mV(10) }
  const lower = { partialPressure: absolute(1, bar), voltage: mV(9) }
  expect(() => oxygenShown([inAir, lower], mV(10))).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => oxygenShown([inAir, inAir], mV(10))).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => oxygenShown([] as never, mV(10))).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => cellLinearity(lower, inAir)).toThrow(expect.objectContaining({ code: 'input' }))
})
