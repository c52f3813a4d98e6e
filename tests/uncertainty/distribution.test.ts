import { expect, test } from 'vitest'
import {
  arcsine,
  fromGaugeClass,
  fromResolution,
  maximumPermissibleError,
  normalDistribution,
  propagateBySampling,
  quantizationStep,
  rectangular,
  triangular,
} from '../../src/uncertainty/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  gauge,
  internalVolumeOf,
  inUnit,
  kelvin,
  litre,
  measure,
  temperatureOf,
} from '../../src/units/index.ts'

// engineering vectors I1-1, I1-3, I1-4: class error of a gauge (own closed form, 1e-12)
test.each([
  { span: 400, percent: 1.6, reading: 50, error: 6.4, relative: 0.128, u: 3.695041722813605 },
  { span: 360, percent: 2.5, reading: 50, error: 9, relative: 0.18, u: 5.196152422706632 },
  { span: 250, percent: 1, reading: 100, error: 2.5, relative: 0.025, u: 1.4433756729740645 },
])(
  'a gauge of $span bar and class $percent errs by up to $error bar',
  ({ span, percent, reading, error, relative, u }) => {
    const gaugeClass = { span: difference(span, bar), accuracyClass: percent / 100 }
    expect(inUnit(maximumPermissibleError(gaugeClass), bar) / error).toBeCloseTo(1, 12)
    expect(inUnit(maximumPermissibleError(gaugeClass), bar) / reading / relative).toBeCloseTo(1, 12)
    const read = fromGaugeClass(gauge(reading, bar), gaugeClass)
    expect(inUnit(read.standardUncertainty, bar) / u).toBeCloseTo(1, 12)
  },
)

// engineering vector I11-2: 12 bits over 30 bar
test('12 bits over 30 bar resolve 732 Pa, of which 211 Pa are standard uncertainty', () => {
  const step = quantizationStep(difference(30, bar), 12)
  expect(step).toBe(732.421875)
  expect(fromResolution(absolute(4, bar), step).standardUncertainty / 211.43198334581024).toBeCloseTo(1, 12)
})

test('the spread of each shape is that of its drawings, and none leaves its ends', () => {
  const shapes = { rectangular, triangular, arcsine }
  for (const shape of Object.values(shapes)) {
    const { sorted, standardUncertainty, mean } = propagateBySampling(
      ({ x }) => x,
      { x: shape(10, 3) },
      { trials: 100_000, seed: 4 },
    )
    expect(sorted[0]).toBeGreaterThanOrEqual(7 - 1e-12)
    expect(sorted.at(-1)).toBeLessThanOrEqual(13 + 1e-12)
    expect(mean).toBeCloseTo(10, 1)
    expect(standardUncertainty / shape(10, 3).standardUncertainty).toBeCloseTo(1, 2)
  }
})

test('the spread of a pressure is a difference of pressures, of a temperature one of temperatures, of a volume a volume', () => {
  expect(normalDistribution(absolute(200, bar), difference(2, bar)).standardUncertainty).toBe(2e5)
  // @ts-expect-error an absolute pressure is no spread
  expect(normalDistribution(absolute(200, bar), absolute(2, bar)).standardUncertainty).toBe(2e5)
  expect(rectangular(temperatureOf(20, celsius), difference(2, kelvin)).value).toBe(293.15)
  // @ts-expect-error a temperature is no spread
  expect(rectangular(temperatureOf(20, celsius), temperatureOf(2, kelvin)).value).toBe(293.15)
  expect(normalDistribution(internalVolumeOf(12, litre), measure(0.1, litre)).value).toBe(0.012)
  // @ts-expect-error a pressure is no spread of a volume
  expect(normalDistribution(internalVolumeOf(12, litre), difference(0.1, bar)).value).toBe(0.012)
})

test('a negative, missing or endless value is refused with its name', () => {
  expect(() => normalDistribution(12, -1)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'standardUncertainty' }),
  )
  expect(() => normalDistribution(Number.NaN, 1)).toThrow(expect.objectContaining({ code: 'range', argument: 'value' }))
  expect(() => rectangular(1, Infinity)).toThrow(expect.objectContaining({ code: 'range' }))
  expect(() => normalDistribution(1, 1, 0)).toThrow(expect.objectContaining({ argument: 'degreesOfFreedom' }))
  expect(() => maximumPermissibleError({ span: difference(400, bar), accuracyClass: 1.6 })).toThrow(/1.6 per cent/)
  expect(() => quantizationStep(difference(30, bar), 0)).toThrow(expect.objectContaining({ argument: 'bits' }))
})
