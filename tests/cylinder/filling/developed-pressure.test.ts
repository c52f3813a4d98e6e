import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { developedPressure, developedPressureInto, stopPressure } from '../../../src/cylinder/index.ts'
import { rowCodes } from '../../../src/errors/index.ts'
import { dryAir, gasState, heliox, type Mixture, pureGas, trimix } from '../../../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  difference,
  gauge,
  inUnit,
  kelvin,
  measure,
  millilitre,
  one,
  pascal,
  percent,
  type Temperature,
  temperatureOf,
  toAbsolute,
  toGauge,
} from '../../../src/units/index.ts'
import fixture from '../../fixtures/filling-vectors.json' with { type: 'json' }

const ambient = absolute(1, atmosphere)
const mixtures = { Air: dryAir, Oxygen: pureGas('oxygen'), Helium: pureGas('helium') }
const celsiusOf = (t: number): Temperature => temperatureOf(t, celsius)

// Other equations of state: air 0.01 % there, oxygen and helium 0.05 %.
test.each(fixture.formulas['FILL-T'])(
  '$in.fluid from $in.P1_bar_gauge bar at $in.T1_C to $in.T2_C °C',
  ({ in: given, out }) => {
    const contents = {
      mixture: mixtures[given.fluid as keyof typeof mixtures],
      pressure: toAbsolute(gauge(given.P1_bar_gauge, bar), ambient),
      temperature: celsiusOf(given.T1_C),
    }
    const real = toGauge(developedPressure(contents, celsiusOf(given.T2_C)), ambient)
    const ideal = toGauge(developedPressure(contents, celsiusOf(given.T2_C), { gas: 'ideal' }), ambient)
    expect(Math.abs(inUnit(real, bar) / out.P2_real_bar_gauge - 1)).toBeLessThan(given.fluid === 'Air' ? 1e-4 : 5e-4)
    expect(inUnit(ideal, bar)).toBeCloseTo(out.P2_ideal_bar_gauge, 3 - 1)
  },
)

// Filled to 232 bar at 20 °C; the same equation evaluated by another program, printed to 0.1 bar.
test.each([
  ['air', dryAir, [208.4, 213.1, 220.2, 243.8, 255.5, 267.2]],
  ['oxygen', pureGas('oxygen'), [206.3, 211.5, 219.2, 244.8, 257.5, 270.2]],
  ['trimix 18/45', trimix({ oxygen: 0.18, helium: 0.45 }), [214.3, 217.8, 223.1, 240.8, 249.7, 258.5]],
  ['heliox 21/79', heliox(0.21), [215.8, 219.1, 223.9, 240.1, 248.1, 256.2]],
] as const)('%s filled to 232 bar at 20 °C cools and warms along the equation', (_name, mixture, expected) => {
  const contents = { mixture, pressure: toAbsolute(gauge(232, bar), ambient), temperature: celsiusOf(20) }
  for (const [k, t] of [0, 4, 10, 30, 40, 50].entries()) {
    const reading = toGauge(developedPressure(contents, celsiusOf(t)), ambient)
    expect(Math.abs(inUnit(reading, bar) - (expected[k] ?? 0))).toBeLessThan(0.051)
  }
})

test('a growing vessel develops less, by what it grew', () => {
  const contents = { mixture: dryAir, pressure: absolute(201, bar), temperature: celsiusOf(15) }
  const rigid = developedPressure(contents, celsiusOf(65))
  const elastic = { fraction: measure(0.43, percent), per: difference(232, bar) }
  const thermal = { fraction: measure(0.18, percent), per: difference(50, celsius) }
  const soft = developedPressure(contents, celsiusOf(65), { growth: { elastic } })
  const warm = developedPressure(contents, celsiusOf(65), { growth: { thermal } })
  const both = developedPressure(contents, celsiusOf(65), { growth: { elastic, thermal } })
  // to first order: how steeply pressure follows density there, times the growth
  const { pressureDensityDerivative, molarDensity } = gasState(dryAir, { pressure: rigid, temperature: celsiusOf(65) })
  const steepness = (pressureDensityDerivative * molarDensity) / rigid
  const stretched = (p: number): number => (0.0043 * (p - contents.pressure)) / 232e5
  expect((1 - soft / rigid) / (steepness * stretched(soft))).toBeCloseTo(1, 2)
  expect((1 - warm / rigid) / (steepness * 0.0018)).toBeCloseTo(1, 2)
  expect((1 - both / rigid) / (steepness * (0.0018 + stretched(both)))).toBeCloseTo(1, 2)
})

test('warming and cooling back is no change, and warmer is higher', () => {
  const growth = { elastic: { fraction: measure(0.4, percent), per: difference(232, bar) } }
  assert(
    property(
      double({ min: 5, max: 350, noNaN: true }),
      double({ min: -30, max: 40, noNaN: true }),
      double({ min: 1, max: 40, noNaN: true }),
      (bars, t, warming) => {
        const contents = { mixture: dryAir, pressure: absolute(bars, bar), temperature: celsiusOf(t) }
        const hot = developedPressure(contents, celsiusOf(t + warming), { growth })
        const back = developedPressure(
          { ...contents, pressure: hot, temperature: celsiusOf(t + warming) },
          contents.temperature,
          {
            growth,
          },
        )
        expect(hot).toBeGreaterThan(contents.pressure)
        expect(back / contents.pressure).toBeCloseTo(1, 10)
      },
    ),
    { numRuns: 50 },
  )
})

test('stopping at the stop pressure settles at the wanted one', () => {
  const wanted = {
    mixture: dryAir,
    ambientPressure: ambient,
    settledPressure: gauge(232, bar),
    settledTemperature: celsiusOf(15),
    gasTemperature: celsiusOf(48),
  }
  const { gaugePressure, cautions } = stopPressure(wanted)
  const contents = { mixture: dryAir, pressure: toAbsolute(gaugePressure, ambient), temperature: wanted.gasTemperature }
  expect(inUnit(toGauge(developedPressure(contents, celsiusOf(15)), ambient), bar)).toBeCloseTo(232, 8)
  expect(cautions).toEqual(['fill-limit', 'hot-fill'])
})

test('a temperature beyond the scale and a growth without bounds are refused', () => {
  const contents = { mixture: dryAir, pressure: absolute(200, bar), temperature: celsiusOf(20) }
  expect(() => developedPressure(contents, celsiusOf(288.15))).toThrow('at is 288.15')
  const elastic = { fraction: measure(0.43, one), per: difference(232, bar) }
  expect(() => developedPressure(contents, celsiusOf(60), { growth: { elastic } })).toThrow(
    'options.growth.elastic.fraction',
  )
})

test('a column gives what the single calls give, and a code where they refuse', () => {
  const rows = 40
  const columns = {
    pressurePascal: Float64Array.from({ length: rows }, (_, k) => (k % 10 === 3 ? Number.NaN : (10 + 7 * k) * 1e5)),
    temperatureKelvin: Float64Array.from({ length: rows }, (_, k) => (k % 10 === 5 ? 20 : 273.15 + k)),
    atKelvin: Float64Array.from({ length: rows }, (_, k) => (k % 10 === 7 ? 1000 : 338.15 - k)),
  }
  for (const gas of ['real', 'ideal'] as const) {
    const out = { developedPressurePascal: new Float64Array(rows), code: new Uint8Array(rows) }
    developedPressureInto(out, columns, { mixture: dryAir, gas })
    for (let k = 0; k < rows; k++) {
      const isBad = [3, 5, 7].includes(k % 10)
      expect(out.code[k]).toBe(isBad ? (k % 10 === 3 ? rowCodes.missing : rowCodes.outOfRange) : rowCodes.good)
      if (isBad) {
        expect(out.developedPressurePascal[k]).toBeNaN()
        continue
      }
      const contents = {
        mixture: dryAir,
        pressure: absolute(columns.pressurePascal[k] ?? 0, pascal),
        temperature: temperatureOf(columns.temperatureKelvin[k] ?? 0, kelvin),
      }
      const single = developedPressure(contents, temperatureOf(columns.atKelvin[k] ?? 0, kelvin), { gas })
      expect(out.developedPressurePascal[k]).toBe(single)
    }
  }
})

test('a row that condenses, or whose pressure leaves the equation, has its own code and stops no other', () => {
  // propane-like mixtures are none of ours: carbon dioxide condenses at 20 °C, and helium at 500 bar passes 700 when it is warmed
  const rows = (mixture: Mixture, pressures: number[], at: number): readonly number[] => {
    const columns = {
      pressurePascal: Float64Array.from(pressures, (bars) => bars * 1e5),
      temperatureKelvin: new Float64Array(pressures.length).fill(293.15),
      atKelvin: new Float64Array(pressures.length).fill(at),
    }
    const out = { developedPressurePascal: new Float64Array(pressures.length), code: new Uint8Array(pressures.length) }
    developedPressureInto(out, columns, { mixture })
    expect([...out.developedPressurePascal].map(Number.isNaN)).toEqual([...out.code].map((code) => code !== 0))
    return [...out.code]
  }
  expect(rows(pureGas('carbonDioxide'), [40, 100, 40], 293.15)).toEqual([0, rowCodes.condensing, 0])
  expect(rows(pureGas('carbonDioxide'), [40, 50], 263.15)).toEqual([rowCodes.condensing, rowCodes.condensing])
  expect(rows(dryAir, [200, 500], 423.15)).toEqual([0, rowCodes.outsideValidity])
})

test('rows that the columns do not have, short columns and unknown options are refused once', () => {
  const columns = {
    pressurePascal: Float64Array.of(200e5, 200e5),
    temperatureKelvin: Float64Array.of(293.15, 293.15),
    atKelvin: Float64Array.of(300, 300),
  }
  const out = { developedPressurePascal: new Float64Array(2), code: new Uint8Array(2) }
  const options = { mixture: dryAir }
  for (const [from, to] of [
    [-1, 2],
    [0, 3],
    [0.5, 2],
    [Number.NaN, 2],
    [0, 1e9],
    [-Infinity, 2],
    [2, 1],
  ] as const) {
    expect(() => developedPressureInto(out, columns, options, from, to)).toThrow(
      expect.objectContaining({ code: 'range' }),
    )
  }
  const short = { ...out, code: new Uint8Array(1) }
  expect(() => developedPressureInto(short, columns, options)).toThrow(
    expect.objectContaining({ argument: 'out.code' }),
  )
  expect(() => developedPressureInto(out, { ...columns, atKelvin: Float64Array.of(300) }, options)).toThrow('atKelvin')
  expect(() => developedPressureInto(out, columns, { ...options, gas: 'Ideal' as never })).toThrow(
    "Did you mean 'ideal'?",
  )
  const faulty = {
    ...columns,
    get atKelvin(): never {
      throw new TypeError('not ours')
    },
  }
  expect(() => developedPressureInto(out, faulty, options)).toThrow('not ours')
})

test('a gauge reading with the ambient pressure is as good as an absolute pressure', () => {
  const ambientPressure = absolute(1, atmosphere)
  const temperature = temperatureOf(15, celsius)
  const at = temperatureOf(65, celsius)
  const read = developedPressure({ mixture: dryAir, gaugePressure: gauge(200, bar), ambientPressure, temperature }, at)
  const pressure = toAbsolute(gauge(200, bar), ambientPressure)
  expect(read).toBe(developedPressure({ mixture: dryAir, pressure, temperature }, at))
  expect(() =>
    developedPressure(
      { mixture: dryAir, gaugePressure: gauge(200, bar), ambientPressure, pressure, temperature } as never,
      at,
    ),
  ).toThrow('one of the two')
  const elasticExpansion = { volume: measure(50, millilitre), at: gauge(300, bar) }
  expect(() =>
    developedPressure(
      { mixture: dryAir, gaugePressure: gauge(200, bar), ambientPressure, temperature, elasticExpansion },
      at,
    ),
  ).toThrow('treated as rigid')
})
