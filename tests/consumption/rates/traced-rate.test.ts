import { describe, expect, test } from 'vitest'
import { measuredRate, type PressureTrace, profileInWater, tracedRate } from '../../../src/consumption/index.ts'
import { dryAir, gasState, pressureAtDensity } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  depthOf,
  difference,
  internalVolumeOf,
  inUnit,
  kelvin,
  litre,
  litrePerMinute,
  type MolarDensity,
  measure,
  metre,
  minute,
  pascal,
  second,
  type Temperature,
  temperatureOf,
} from '../../../src/units/index.ts'
import { metresOfSeaWater } from '../given.ts'

const profile = profileInWater(
  [
    [0, 0],
    [3, 20],
    [30, 20],
    [36, 5],
    [40, 0],
  ].map(([minutes = 0, metres = 0]) => ({ time: measure(minutes, minute), depth: depthOf(metres, metre) })),
  metresOfSeaWater,
)
const water = temperatureOf(8, celsius)
const volume = internalVolumeOf(12, litre)

function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

interface Making {
  readonly seed: number
  /** L/min, for each minute of the dive. */
  readonly rateAt: (minutes: number) => number
  readonly startCelsius: number
  readonly constantMinutes: number
  readonly noiseBar: number
  readonly stepBar: number
}
const usual: Making = { seed: 1, rateAt: () => 18, startCelsius: 8, constantMinutes: 4, noiseBar: 0, stepBar: 0 }

/** A cylinder by energy in small steps of time, apart from the fit: gas leaves, what stays expands, the wall gives heat. */
function made(change: Partial<Making> = {}): PressureTrace {
  const { seed, rateAt, startCelsius, constantMinutes, noiseBar, stepBar } = { ...usual, ...change }
  const random = seeded(seed)
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
  const step = 2
  let temperature = temperatureOf(startCelsius, celsius) as number
  let density = gasState(dryAir, { pressure: absolute(200, bar), temperature: temperature as Temperature })
    .molarDensity as number
  const readings = []
  for (let t = 0; t <= 2400; t += step) {
    const pressure = pressureAtDensity(dryAir, {
      molarDensity: density as MolarDensity,
      temperature: temperature as Temperature,
    })
    if (t % 20 === 0) {
      const noisy = pressure / 1e5 + noiseBar * normal()
      const shown = stepBar === 0 ? noisy : Math.round(noisy / stepBar) * stepBar
      readings.push({ time: measure(t, second), pressure: absolute(shown, bar) })
    }
    const ambient = ambientAt(t + step / 2)
    const breathed = gasState(dryAir, { pressure: absolute(ambient, pascal), temperature: water }).molarDensity
    const taken = ((rateAt(t / 60) / 60_000) * breathed * step) / volume
    const state = gasState(dryAir, { pressure, temperature: temperature as Temperature })
    const perDensity =
      (temperature * state.pressureTemperatureDerivative) / (density ** 2 * state.isochoricHeatCapacity)
    temperature -= perDensity * taken + ((temperature - water) / (constantMinutes * 60)) * step
    density -= taken
  }
  return {
    internalVolume: volume,
    mixture: dryAir,
    readings,
    profile,
    startTemperature: temperatureOf(startCelsius, celsius),
    surroundings: water,
    timeConstant: measure(constantMinutes, minute),
    breathingGasTemperature: water,
    uncertainty: {
      reading: difference(Math.max(0.05, noiseBar, stepBar / Math.sqrt(12)), bar),
      startTemperature: difference(0, kelvin),
      relativeTimeConstant: 0,
      relativeVolume: 0,
    },
  }
}

function ambientAt(seconds: number): number {
  const after = profile.findIndex(({ time }) => time >= seconds)
  const a = profile[after - 1] ?? profile[0]
  const b = profile[after] ?? profile.at(-1)
  if (a === undefined || b === undefined || a === b) return a?.ambientPressure ?? 1e5
  return a.ambientPressure + ((b.ambientPressure - a.ambientPressure) * (seconds - a.time)) / (b.time - a.time)
}

const litres = (trace: PressureTrace): number => inUnit(tracedRate(trace).respiratoryMinuteVolume, litrePerMinute)

test.each([
  ['in balance with the water', 8, 4],
  ['warm from filling', 35, 4],
  ['warm, in a thick wall', 30, 12],
  ['cold', 0, 6],
])('a rate of 18 L/min comes back within 0.5 %%: %s', (_, startCelsius, constantMinutes) => {
  expect(Math.abs(litres(made({ startCelsius, constantMinutes })) / 18 - 1)).toBeLessThan(0.005)
})

test('what two readings at the temperature of the water make of a warm fill is too much', () => {
  const trace = made({ startCelsius: 35 })
  const contents = (i: number) => ({
    internalVolume: volume,
    mixture: dryAir,
    pressure: trace.readings.at(i)?.pressure as never,
    temperature: water,
  })
  const plain = measuredRate({
    cylinders: [{ before: contents(0), after: contents(-1) }],
    profile,
    breathingGasTemperature: water,
    surfacePressure: absolute(101_325, pascal),
  })
  expect(inUnit(plain.respiratoryMinuteVolume, litrePerMinute) / 18).toBeGreaterThan(1.1)
})

test('twice the standard uncertainty covers the mean rate on at least 36 of 40 logs with noise, steps and uneven breathing', () => {
  let covered = 0
  for (let seed = 1; seed <= 40; seed++) {
    const random = seeded(1000 + seed)
    const rates = Array.from({ length: 41 }, () => 18 * (1 + 0.3 * (random() - 0.5)))
    const trace = made({ seed, rateAt: (minutes) => rates[Math.floor(minutes)] as number, noiseBar: 0.3, stepBar: 0.5 })
    let taken = 0
    let whole = 0
    for (let t = 1; t < 2400; t += 2) {
      taken += (rates[Math.floor(t / 60)] as number) * ambientAt(t)
      whole += ambientAt(t)
    }
    const found = tracedRate(trace)
    const off = Math.abs(inUnit(found.respiratoryMinuteVolume, litrePerMinute) - taken / whole)
    if (off <= 2 * inUnit(found.standardUncertainty, litrePerMinute)) covered++
  }
  expect(covered).toBeGreaterThanOrEqual(36)
}, 60_000)

test('each stated uncertainty has its part, and the whole is their root of squares', () => {
  const trace = made({ startCelsius: 30 })
  const found = tracedRate({
    ...trace,
    uncertainty: {
      ...trace.uncertainty,
      startTemperature: difference(3, kelvin),
      relativeTimeConstant: 0.3,
      relativeVolume: 0.02,
    },
  })
  expect(found.parts.volume).toBeCloseTo(0.02 * found.respiratoryMinuteVolume, 12)
  for (const part of Object.values(found.parts)) expect(part).toBeGreaterThan(0)
  expect(found.standardUncertainty).toBeCloseTo(Math.hypot(...Object.values(found.parts)), 12)
  expect(tracedRate(trace).parts.startTemperature).toBe(0)
})

const codesOf = (trace: PressureTrace) => tracedRate(trace).findings.map(({ code }) => code)
const clean = made()
const withPressure = (change: (bars: number, i: number) => number): PressureTrace => ({
  ...clean,
  readings: clean.readings.map(({ time, pressure }, i) => ({
    time,
    pressure: absolute(change(pressure / 1e5, i), bar),
  })),
})

describe('findings', () => {
  test('a sound log has none', () => {
    expect(codesOf(clean)).toEqual([])
  })
  test.each([
    ['small-drop', { ...clean, uncertainty: { ...clean.uncertainty, reading: difference(12, bar) } }],
    ['pressure-rises', withPressure((bars, i) => (i < 50 ? bars : bars + 10))],
    ['outlier', withPressure((bars, i) => (i === 40 ? bars + 5 : bars))],
    ['stuck', withPressure((bars, i) => (i > 40 && i < 60 ? (clean.readings[40]?.pressure as number) / 1e5 : bars))],
    ['gap', { ...clean, readings: clean.readings.filter((_, i) => i < 50 || i > 70) }],
    ['rate-changes', made({ rateAt: (minutes) => (minutes < 15 ? 12 : 24) })],
    ['temperature-dominates', made({ startCelsius: 45, rateAt: () => 5 })],
    ['near-ambient', withPressure((bars) => bars - (clean.readings.at(-1)?.pressure as number) / 1e5 + 6)],
  ] as const)('%s', (code, trace) => {
    expect(codesOf(trace)).toContain(code)
  })
})

/** Pressure that goes from one reading of the clean log to a later one, bar. */
const gone = (from: number, to: number): number =>
  ((clean.readings[from]?.pressure as number) - (clean.readings[to]?.pressure as number)) / 1e5
const withReading = (bars: number, trace: PressureTrace = clean): PressureTrace => ({
  ...trace,
  uncertainty: { ...trace.uncertainty, reading: difference(bars, bar) },
})
const hanging = withPressure((bars, i) => (i > 40 && i <= 46 ? (clean.readings[40]?.pressure as number) / 1e5 : bars))
const deepest = Math.max(...profile.map(({ ambientPressure }) => ambientPressure)) / 1e5
const last = (clean.readings.at(-1)?.pressure as number) / 1e5
const found = tracedRate(clean)
const shareOfReadings = found.parts.readings / found.respiratoryMinuteVolume

describe('each finding on both sides of its multiple', () => {
  // What counts is amount: between it and a pressure lie real gas, some per cent, and the warming that a sudden rise would bring, two fifths.
  test.each<readonly [code: string, what: string, below: PressureTrace, above: PressureTrace]>([
    [
      'small-drop',
      'twice what the readings leave open, 3.9 and 4.1 %',
      withReading((0.05 * 0.0195) / shareOfReadings),
      withReading((0.05 * 0.0205) / shareOfReadings),
    ],
    [
      'pressure-rises',
      'the pressure jumps by 7.5 and 8.5 uncertainties',
      withPressure((bars, i) => (i < 50 ? bars : bars + gone(49, 50) + 7.5 * 0.05)),
      withPressure((bars, i) => (i < 50 ? bars : bars + gone(49, 50) + 8.5 * 0.05)),
    ],
    [
      'pressure-rises',
      'gas comes in over ten readings, by less than a jump each',
      withReading(
        0.1,
        withPressure((bars, i) => (i < 50 ? bars : bars + gone(50, Math.min(i, 60)) + 0.05 * Math.min(i - 50, 10))),
      ),
      withReading(
        0.1,
        withPressure((bars, i) => (i < 50 ? bars : bars + gone(50, Math.min(i, 60)) + 0.75 * Math.min(i - 50, 10))),
      ),
    ],
    [
      'gap',
      'a hole of a tenth of the log, and one reading more',
      { ...clean, readings: clean.readings.filter((_, i) => i < 50 || i > 60) },
      { ...clean, readings: clean.readings.filter((_, i) => i < 50 || i > 61) },
    ],
    [
      'stuck',
      'hangs while gas for 7 and 9 uncertainties is breathed',
      withReading(gone(40, 46) / 7, hanging),
      withReading(gone(40, 46) / 9, hanging),
    ],
    [
      'outlier',
      'a reading 10 and 12 uncertainties above the one before it, as if the gas had been warmed',
      withReading(
        0.5,
        withPressure((bars, i) => (i === 80 ? bars + gone(79, 80) + 10 * 0.5 : bars)),
      ),
      withReading(
        0.5,
        withPressure((bars, i) => (i === 80 ? bars + gone(79, 80) + 12 * 0.5 : bars)),
      ),
    ],
    [
      'rate-changes',
      '12 L/min, then 17 or 20',
      made({ rateAt: (minutes) => (minutes < 20 ? 12 : 17) }),
      made({ rateAt: (minutes) => (minutes < 20 ? 12 : 20) }),
    ],
    [
      'temperature-dominates',
      'from 45 °C at 10 and at 8 L/min',
      made({ startCelsius: 45, rateAt: () => 10 }),
      made({ startCelsius: 45, rateAt: () => 8 }),
    ],
    [
      'near-ambient',
      'emptied to 5.2 and 4.8 bar above the pressure at depth',
      withPressure((bars) => bars - last + deepest + 5.2),
      withPressure((bars) => bars - last + deepest + 4.8),
    ],
  ])('%s: %s', (code, _, below, above) => {
    expect(codesOf(below)).not.toContain(code)
    expect(codesOf(above)).toContain(code)
  })

  test('scatter of few readings is no change of rate', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const trace = made({ seed, noiseBar: 1 })
      const few = { ...trace, readings: trace.readings.filter((_, i) => i % 6 === 0) }
      expect(codesOf(few)).not.toContain('rate-changes')
    }
  })
})

test.each([
  ['trace.readings', { readings: clean.readings.slice(0, 17) }],
  [
    'trace.readings[3].time',
    { readings: clean.readings.map((r, i) => (i === 3 ? { ...r, time: measure(20, second) } : r)) },
  ],
  [
    'trace.readings[120].time',
    { readings: clean.readings.map((r, i) => (i === 120 ? { ...r, time: measure(41, minute) } : r)) },
  ],
  [
    'trace.readings[5].pressure',
    { readings: clean.readings.map((r, i) => (i === 5 ? { ...r, pressure: Number.NaN as never } : r)) },
  ],
  ['trace.timeConstant', { timeConstant: measure(0, minute) }],
  ['trace.startTemperature', { startTemperature: 8 as never }],
  ['trace.uncertainty.reading', { uncertainty: { ...clean.uncertainty, reading: difference(0, bar) } }],
  ['trace.timeconstant', { timeconstant: 1 }],
])('%s is refused by name', (argument, change) => {
  expect(() => tracedRate({ ...clean, ...change })).toThrow(expect.objectContaining({ argument }))
})

test('a log that gains gas has no rate', () => {
  const backwards = clean.readings.map(({ time }, i) => ({
    time,
    pressure: clean.readings.at(-1 - i)?.pressure as never,
  }))
  expect(() => tracedRate({ ...clean, readings: backwards })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'trace.readings' }),
  )
})
