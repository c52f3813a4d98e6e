import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { pressureAtDepth } from '../../src/environment/index.ts'
import { dryAir, isoStandard } from '../../src/gas-law/index.ts'
import {
  assessDisagreement,
  assessEquivalentGauges,
  assessGaugeTest,
  calibrationLine,
  certainGas,
  correctedReading,
  cylinderPressureBehind,
  gaugeError,
  pressureUsed,
  type ReadCylinder,
  shownCylinderPressure,
  type TestPoint,
} from '../../src/gauges/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  depthOf,
  difference,
  gauge,
  internalVolumeOf,
  inUnit,
  kilogramForcePerSquareCentimetre,
  kilogramPerCubicMetre,
  kilopascal,
  litre,
  litrePerMinute,
  measure,
  metre,
  millimetreOfMercury,
  minute,
  temperatureOf,
} from '../../src/units/index.ts'

const roomTemperature = temperatureOf(20, celsius)
const dial = { span: difference(400, bar), accuracyClass: 0.016 }

// gauge budgets GG-01 to GG-03 (own closed form, 1e-6)
test.each([
  {
    span: 400,
    percent: 1.6,
    reading: 50,
    t: 4,
    classError: 6.4,
    temperature: 2.56,
    sum: 8.96,
    u: 3.979682,
    share: 0.1792,
  },
  {
    span: 360,
    percent: 2.5,
    reading: 40,
    t: 2,
    classError: 9,
    temperature: 2.592,
    sum: 11.592,
    u: 5.407355,
    share: 0.2898,
  },
  { span: 300, percent: 1, reading: 200, t: 30, classError: 3, temperature: 1.2, sum: 4.2, u: 1.865476, share: 0.021 },
])('a gauge of $span bar and class $percent errs by up to $sum bar at $t °C', ({ span, percent, t, ...expected }) => {
  const error = gaugeError({ span: difference(span, bar), accuracyClass: percent / 100 }, temperatureOf(t, celsius))
  expect(inUnit(error.classError, bar)).toBeCloseTo(expected.classError, 9)
  expect(inUnit(error.temperatureError, bar)).toBeCloseTo(expected.temperature, 9)
  expect(inUnit(error.largestError, bar)).toBeCloseTo(expected.sum, 9)
  expect(inUnit(error.standardUncertainty, bar) / expected.u).toBeCloseTo(1, 6)
  expect(inUnit(error.largestError, bar) / expected.reading / expected.share).toBeCloseTo(1, 6)
})

test('the span counts from end to end: class 1 of -1 to 5 bar is 0.06 bar, not 0.05 nor the 0.26 of a bad copy', () => {
  const error = (span: number, percent: number) =>
    inUnit(gaugeError({ span: difference(span, bar), accuracyClass: percent / 100 }, roomTemperature).classError, bar)
  expect(error(6, 1)).toBeCloseTo(0.06, 12)
  expect(error(10, 1.6)).toBeCloseTo(0.16, 12)
})

test('a diaphragm gauge drifts twice as far in the cold as a Bourdon tube', () => {
  const cold = temperatureOf(0, celsius)
  const { temperatureError } = gaugeError({ ...dial, element: 'diaphragm' }, cold)
  expect(temperatureError / gaugeError(dial, cold).temperatureError).toBeCloseTo(2, 12)
})

test('a gauge reads against the pressure around it: nested tanks of 35 and 20 kPa under 750 mm of mercury', () => {
  // example 2.8 of a book of solved problems: unit weight of mercury 13.6 × 9.79 kN/m³, results in millimetres of it, to 0.05
  const perMillimetre = 13.6 * 9.79
  const outer = cylinderPressureBehind({
    reading: gauge(35, kilopascal),
    casePressure: absolute(750 * perMillimetre, { ...kilopascal, factor: 1 }),
  })
  const inner = cylinderPressureBehind({ reading: gauge(20, kilopascal), casePressure: outer })
  expect(Math.abs(outer / perMillimetre - 1012.9)).toBeLessThan(0.05)
  expect(Math.abs(inner / perMillimetre - 1163.1)).toBeLessThan(0.05)
})

test('a gauge 20 m below a water line at 10 kgf/cm² shows 12, one 30 m above it 7', () => {
  const water = { surfacePressure: absolute(1, atmosphere), density: measure(1000, kilogramPerCubicMetre) }
  const head = (metres: number) =>
    (pressureAtDepth({ depth: depthOf(metres, metre), ...water }) - water.surfacePressure) /
    kilogramForcePerSquareCentimetre.factor
  expect(10 + head(20)).toBeCloseTo(12, 9)
  expect(10 - head(30)).toBeCloseTo(7, 9)
})

test('reading and pressure are each other’s inverse, for any pressure in the case', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1e8, noNaN: true }),
      fc.double({ min: 2e4, max: 1e7, noNaN: true }),
      (p, around) => {
        const casePressure = absolute(around, { ...bar, factor: 1 })
        const reading = shownCylinderPressure({ pressure: absolute(p, { ...bar, factor: 1 }), casePressure })
        if (reading < -1e5) return
        expect(Math.abs(cylinderPressureBehind({ reading, casePressure }) - p)).toBeLessThan(1e-6)
      },
    ),
  )
})

describe('what of a low reading is certain', () => {
  const cylinder = {
    gauge: dial,
    reading: gauge(50, bar),
    casePressure: absolute(1, bar),
    gaugeTemperature: temperatureOf(4, celsius),
    internalVolume: internalVolumeOf(12, litre),
    mixture: dryAir,
    gasTemperature: temperatureOf(4, celsius),
    residualPressure: absolute(10, bar),
    reference: isoStandard,
    respiratoryMinuteVolume: measure(20, litrePerMinute),
    ambientPressure: absolute(3, bar),
  } satisfies ReadCylinder<string>

  test('the certain pressure lies below the shown one by class and temperature, in ideal gas the time follows', () => {
    const { certain, shown, most } = certainGas(cylinder, { gas: 'ideal' })
    expect(inUnit(shown.pressure, bar)).toBeCloseTo(51, 9)
    expect(inUnit(certain.pressure, bar)).toBeCloseTo(51 - 8.96, 9)
    expect(inUnit(most.pressure, bar)).toBeCloseTo(51 + 8.96, 9)
    expect(inUnit(certain.duration, minute)).toBeCloseTo((12 * 32.04) / (3 * 20), 9)
    const perBar = (12 * (288.15 / 277.15)) / 1 // litres at 15 °C and 1 bar
    expect(inUnit(certain.freeGas, litre)).toBeCloseTo(32.04 * perBar * (1 / inUnit(isoStandard.pressure, bar)), 6)
  })

  test('nothing is certain where the residual pressure is not', () => {
    const { certain, most } = certainGas({ ...cylinder, reading: gauge(15, bar) })
    expect(certain.duration).toBe(0)
    expect(certain.freeGas).toBe(0)
    expect(most.duration).toBeGreaterThan(0)
  })

  test('a reading that the error swallows whole leaves no pressure', () => {
    expect(certainGas({ ...cylinder, reading: gauge(2, bar) }).certain.pressure).toBe(0)
  })

  test('a misspelt field is refused', () => {
    // @ts-expect-error no such field
    expect(() => certainGas({ ...cylinder, temprature: 1 })).toThrow(expect.objectContaining({ code: 'input' }))
    expect(certainGas(cylinder).cautions).toEqual(['instrument', 'reserve'])
  })
})

// vectors I10-1, I10-2: E_n with expanded uncertainties, here twice the standard ones
test.each([
  { u1: 0.25, u2: 0.3, value: 0.6401843996644799, verdict: 'within' },
  { u1: 0.1, u2: 0.1, value: 1.7677669529663689, verdict: 'beyond' },
])('30.4 and 29.9 m with $u1 and $u2 m: $verdict', ({ u1, u2, value, verdict }) => {
  const pair = {
    first: { value: 30.4, standardUncertainty: u1 },
    second: { value: 29.9, standardUncertainty: u2 },
    correlation: 0,
  }
  const assessed = assessDisagreement(pair)
  expect(assessed.value / value).toBeCloseTo(1, 12)
  expect(assessed.verdict).toBe(verdict)
})

test('what agrees as independent disagrees once the shared error is counted as shared', () => {
  const pair = {
    first: { value: 30.4, standardUncertainty: 0.25 },
    second: { value: 29.9, standardUncertainty: 0.25 },
  }
  expect(assessDisagreement({ ...pair, correlation: 0 }).verdict).toBe('within')
  expect(assessDisagreement({ ...pair, correlation: 0.9 }).verdict).toBe('beyond')
  for (const second of [pair.first, pair.second]) {
    expect(() => assessDisagreement({ ...pair, second, correlation: 1 })).toThrow(
      expect.objectContaining({ code: 'range', argument: 'pair' }),
    )
  }
  expect(assessDisagreement({ ...pair, correlation: 0 }).because.map(({ code }) => code)).toContain('shared-error')
  expect(() => assessDisagreement({ ...pair, correlation: 1.1 })).toThrow(expect.objectContaining({ code: 'range' }))
})

test('GG-05: two readings of one gauge differ by 140 bar, ± 5.23 if independent, ± 0 if not, ± 2.24 of scale in any case', () => {
  const readings = { before: gauge(200, bar), after: gauge(60, bar), gauge: dial, temperature: roomTemperature }
  const independent = pressureUsed({ ...readings, correlation: 0 })
  expect(inUnit(independent.used, bar) * 12).toBeCloseTo(1680, 9)
  expect(inUnit(independent.standardUncertainty, bar) / 5.225578).toBeCloseTo(1, 6)
  expect((2 * 12 * inUnit(independent.standardUncertainty, bar)) / 125.4139).toBeCloseTo(1, 6)
  const same = pressureUsed({ ...readings, correlation: 1 })
  expect(same.standardUncertainty).toBe(0)
  expect(inUnit(same.largestScaleError, bar)).toBeCloseTo(2.24, 9)
})

test.each([
  { second: 29.2, verdict: 'within' },
  { second: 29.1, verdict: 'beyond' },
])('30.4 and $second m on a 60 m scale: $verdict two per cent', ({ second, verdict }) => {
  expect(assessEquivalentGauges({ first: 30.4, second, fullScale: 60, allowed: 0.02 }).verdict).toBe(verdict)
})

describe('a test of a gauge', () => {
  const small = { span: difference(25, bar), accuracyClass: 0.016 } // 0.4 bar
  const points = (up: number, down: number | undefined, count = 5): readonly TestPoint[] =>
    Array.from({ length: count }, (_, i) => ({
      reference: gauge(5 * i, bar),
      rising: gauge(5 * i + up, bar),
      ...(down === undefined ? {} : { falling: gauge(5 * i + down, bar) }),
    }))

  test.each([
    { up: 0, down: 0.4, t: 20, verdict: 'within', codes: [] },
    { up: 0, down: 0.41, t: 20, verdict: 'beyond', codes: ['error', 'hysteresis'] },
    { up: -0.41, down: -0.41, t: 20, verdict: 'beyond', codes: ['error'] },
    { up: 0.41, down: 0.41, t: 10, verdict: 'undetermined', codes: ['temperature'] },
    { up: 0.51, down: 0.51, t: 10, verdict: 'beyond', codes: ['error'] },
    { up: 0.3, down: -0.3, t: 20, verdict: 'undetermined', codes: ['hysteresis'] },
    { up: 0.1, down: undefined, t: 20, verdict: 'undetermined', codes: ['one-way'] },
    { up: 0.1, down: 0.1, t: 20, count: 4, verdict: 'undetermined', codes: ['few-points'] },
    { up: 0.1, down: 0.1, t: 20, percent: 1.5, verdict: 'undetermined', codes: ['class'] },
    { up: 0.1, down: 0.1, t: 20, percent: 0.6, count: 5, verdict: 'undetermined', codes: ['few-points'] },
  ])('$up up and $down down at $t °C: $verdict $codes', ({ up, down, t, count, percent, verdict, codes }) => {
    const found = assessGaugeTest({
      gauge: percent === undefined ? small : { ...small, accuracyClass: percent / 100 },
      points: points(up, down, count),
      temperature: temperatureOf(t, celsius),
    })
    expect(found.verdict).toBe(verdict)
    expect(found.because.map(({ code }) => code)).toEqual(codes)
    expect(found.hysteresis === undefined).toBe(down === undefined)
  })

  test('no points, a reading that is none and a misspelt field are refused', () => {
    const given = { gauge: small, temperature: roomTemperature }
    const refused = (list: readonly unknown[]) => () => assessGaugeTest({ ...given, points: list as TestPoint[] })
    expect(refused([])).toThrow(expect.objectContaining({ code: 'input', argument: 'test.points' }))
    expect(refused([{ reference: 0, rising: Number.NaN }])).toThrow(
      expect.objectContaining({ code: 'range', argument: 'test.points[0].rising' }),
    )
    expect(refused([{ reference: 0, raising: 0 }])).toThrow(expect.objectContaining({ code: 'input' }))
  })
})

describe('a calibration', () => {
  // gum-2008, annex H.3, table H.6: readings of a thermometer and their corrections, °C
  const readings = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511]
  const corrections = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16]
  const line = calibrationLine(readings.map((reading, i) => ({ reading, correction: corrections[i] as number })))

  test('annex H.3: -0.1712 at 20 °C ± 0.0029, slope 0.00218 ± 0.00067, -0.1494 at 30 °C ± 0.0041', () => {
    const at = (reading: number) => correctedReading(line, reading, { beyondRange: true })
    expect(at(20).value - 20).toBeCloseTo(-0.1712, 4)
    expect(at(20).lineUncertainty).toBeCloseTo(0.0029, 4)
    expect(line.slope).toBeCloseTo(0.00218, 5)
    expect(line.slopeUncertainty).toBeCloseTo(0.00067, 5)
    expect(at(30).value - 30).toBeCloseTo(-0.1494, 4)
    expect(at(30).lineUncertainty).toBeCloseTo(0.0041, 4)
    expect(line.degreesOfFreedom).toBe(9)
  })

  test('beyond the calibrated readings nothing is corrected unasked', () => {
    expect(() => correctedReading(line, 30)).toThrow(expect.objectContaining({ code: 'outside-validity' }))
    expect(() => correctedReading(line, Number.NaN)).toThrow(expect.objectContaining({ code: 'range' }))
    expect(correctedReading(line, 24).standardUncertainty).toBeGreaterThan(line.scatter)
  })

  test('points on a line leave no scatter, whatever the offset', () => {
    const exact = calibrationLine([0, 50, 100, 300].map((reading) => ({ reading, correction: 1000 + 0.01 * reading })))
    expect(exact.scatter).toBeLessThan(1e-9)
    expect(correctedReading(exact, 200).value).toBeCloseTo(1202, 9)
  })

  test('two points, or one reading three times, are refused', () => {
    expect(() => calibrationLine([{ reading: 0, correction: 1 }])).toThrow(expect.objectContaining({ code: 'input' }))
    const same = [1, 2, 3].map((correction) => ({ reading: 5, correction }))
    expect(() => calibrationLine(same)).toThrow(expect.objectContaining({ code: 'input' }))
  })
})

test('a class, span or element that is none is refused', () => {
  expect(() => gaugeError({ ...dial, accuracyClass: 1.6 }, roomTemperature)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'gauge.accuracyClass' }),
  )
  expect(() => gaugeError({ ...dial, element: 'constructor' as 'bourdon' }, roomTemperature)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'gauge.element' }),
  )
  expect(() => gaugeError(dial, temperatureOf(400, celsius))).toThrow(expect.objectContaining({ code: 'range' }))
  expect(inUnit(absolute(1, atmosphere), millimetreOfMercury)).toBeCloseTo(760, 3)
})
