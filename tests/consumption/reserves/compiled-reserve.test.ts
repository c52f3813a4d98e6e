import { expect, test } from 'vitest'
import {
  type Ascent,
  compileReserve,
  type ReserveCylinder,
  type ReserveSample,
  reservePressure,
  reservePressureInto,
} from '../../../src/consumption/index.ts'
import { rowCodes } from '../../../src/errors/index.ts'
import { dryAir, type Mixture, nitrox, trimix } from '../../../src/gas-law/index.ts'
import { normalDistribution, propagateBySampling, seededRandom } from '../../../src/uncertainty/index.ts'
import {
  absolute,
  bar,
  celsius,
  depthOf,
  difference,
  internalVolumeOf,
  litre,
  litrePerMinute,
  measure,
  metre,
  metrePerMinute,
  minute,
  temperatureOf,
} from '../../../src/units/index.ts'
import { metresOfSeaWater } from '../given.ts'

const ascent: Ascent = {
  depth: depthOf(30, metre),
  water: metresOfSeaWater,
  breathers: [measure(20, litrePerMinute), measure(18, litrePerMinute)],
  stressFactor: 1.5,
  timeAtDepth: measure(2, minute),
  ascentRate: measure(9, metrePerMinute),
  stop: { depth: depthOf(5, metre), duration: measure(3, minute) },
}
const cylinder = (change: Partial<ReserveCylinder> = {}): ReserveCylinder => ({
  internalVolume: internalVolumeOf(12, litre),
  temperature: temperatureOf(8, celsius),
  mixture: dryAir,
  residualPressure: absolute(20, bar),
  maximumPermissibleError: difference(5, bar),
  ...change,
})
const mixtures: readonly Mixture[] = [dryAir, nitrox(0.32), trimix({ oxygen: 0.18, helium: 0.45 })]

function drawn(random: () => number): Required<ReserveSample> & { readonly ascent: Ascent } {
  const respiratoryMinuteVolume = measure(12 + 30 * random(), litrePerMinute)
  const stressFactor = 1 + random()
  const timeAtDepth = measure(5 * random(), minute)
  const ascentRate = measure(9 + 21 * random(), metrePerMinute)
  const stopDuration = measure(6 * random(), minute)
  const { stop, ...rest } = ascent
  return {
    ...{ respiratoryMinuteVolume, stressFactor, timeAtDepth, ascentRate, stopDuration },
    ascent: {
      ...rest,
      breathers: [respiratoryMinuteVolume],
      ...{ stressFactor, timeAtDepth, ascentRate },
      ...(stop && { stop: { ...stop, duration: stopDuration } }),
    },
  }
}

test.each([
  ['a residual above the pressure at depth', absolute(20, bar)],
  ['a residual that follows the depth', { aboveAmbient: difference(10, bar) }],
  ['a residual below the pressure at depth', absolute(2, bar)],
] as const)('a compiled reserve is the one worked out each time, with %s', (_, residualPressure) => {
  const random = seededRandom(11)
  for (const mixture of mixtures) {
    for (const gas of ['real', 'ideal'] as const) {
      const held = cylinder({ mixture, residualPressure })
      const reserve = compileReserve(ascent, held, { gas })
      for (let k = 0; k < 40; k++) {
        const { ascent: changed, ...sample } = drawn(random)
        expect(Math.abs(reserve(sample) / reservePressure(changed, held, { gas }) - 1)).toBeLessThan(1e-9)
      }
      expect(Math.abs(reserve({}) / reservePressure(ascent, held, { gas }) - 1)).toBeLessThan(1e-9)
    }
  }
})

test('without a stop, and beyond the isotherm, it is the same', () => {
  const { stop: _, ...straight } = ascent
  const small = cylinder({ internalVolume: internalVolumeOf(3, litre) })
  for (const wait of [0, 2, 2.7]) {
    const timeAtDepth = measure(wait, minute)
    const full = reservePressure({ ...straight, timeAtDepth }, small)
    expect(compileReserve(straight, small)({ timeAtDepth }) / full - 1).toBeCloseTo(0, 9)
    expect(compileReserve(straight, small)({ timeAtDepth, stopDuration: measure(9, minute) }) / full).toBeCloseTo(1, 9)
  }
  // more than the 400 bar that the series covers
  expect(reservePressure({ ...straight, timeAtDepth: measure(2.7, minute) }, small)).toBeGreaterThan(400e5)
})

test('it is handed to the sampling as it is', () => {
  const inputs = {
    respiratoryMinuteVolume: normalDistribution(measure(38, litrePerMinute), measure(4, litrePerMinute)),
  }
  const sampled = propagateBySampling(compileReserve(ascent, cylinder()), inputs, { trials: 2000, seed: 3 })
  const one = propagateBySampling(
    ({ respiratoryMinuteVolume }) => reservePressure({ ...ascent, breathers: [respiratoryMinuteVolume] }, cylinder()),
    inputs,
    { trials: 2000, seed: 3 },
  )
  expect(sampled.mean / one.mean).toBeCloseTo(1, 9)
})

test('columns are the function row by row, and bad rows get their code', () => {
  const rates = [40, 0, 40, Number.NaN, 60].map((litres) => litres / 60_000)
  const columns = {
    respiratoryMinuteVolumeCubicMetrePerSecond: Float64Array.from(rates),
    stressFactor: Float64Array.from([1.5, 1.5, 0.5, 1.5, 2]),
    timeAtDepthSecond: Float64Array.from([120, 120, 120, 120, 60]),
  }
  const out = { pressurePascal: new Float64Array(5).fill(7), code: new Uint8Array(5).fill(9) }
  const options = { ascent, cylinder: cylinder(), gas: 'real' } as const
  reservePressureInto(out, columns, options, 0, 4)
  const reserve = compileReserve(ascent, cylinder())
  expect([...out.code]).toEqual([rowCodes.good, rowCodes.outOfRange, rowCodes.outOfRange, rowCodes.missing, 9])
  expect(out.pressurePascal[0]).toBe(reserve({ respiratoryMinuteVolume: measure(40, litrePerMinute) }))
  expect(out.pressurePascal.slice(1, 4).every(Number.isNaN)).toBe(true)
  expect(out.pressurePascal[4]).toBe(7)
  // 0.1 L would need more than the equation of state reaches
  const empty = { ascent, cylinder: cylinder({ internalVolume: internalVolumeOf(0.1, litre) }) }
  reservePressureInto(out, columns, empty, 4)
  expect([out.code[4], out.pressurePascal[4]]).toEqual([rowCodes.outsideValidity, Number.NaN])
  reservePressureInto(out, columns, { ...empty, gas: 'ideal' })
  expect(out.code[4]).toBe(rowCodes.good)
})

test.each([
  [{ respiratoryMinuteVolume: 0 }, 'sample.respiratoryMinuteVolume'],
  [{ respiratoryMinuteVolume: 501 / 60_000 }, 'sample.respiratoryMinuteVolume'],
  [{ respiratoryMinuteVolume: Number.NaN }, 'sample.respiratoryMinuteVolume'],
  [{ stressFactor: 0.99 }, 'sample.stressFactor'],
  [{ stressFactor: 10.01 }, 'sample.stressFactor'],
  [{ stressFactor: '2' }, 'sample.stressFactor'],
  [{ timeAtDepth: -1 }, 'sample.timeAtDepth'],
  [{ timeAtDepth: 36_001 }, 'sample.timeAtDepth'],
  [{ timeAtDepth: null }, 'sample.timeAtDepth'],
  [{ ascentRate: 0 }, 'sample.ascentRate'],
  [{ ascentRate: 101 / 60 }, 'sample.ascentRate'],
  [{ ascentRate: true }, 'sample.ascentRate'],
  [{ stopDuration: -1 }, 'sample.stopDuration'],
  [{ stopDuration: 36_001 }, 'sample.stopDuration'],
  [{ stopDuration: Number.POSITIVE_INFINITY }, 'sample.stopDuration'],
  [{ stress: 2 }, 'sample.stress'],
])('a sample of %o is refused by name', (sample, argument) => {
  const reserve = compileReserve(ascent, cylinder())
  expect(() => reserve(sample as ReserveSample)).toThrow(expect.objectContaining({ name: 'LitrebarError', argument }))
})

test('what is no ascent, cylinder or option is refused before the first sample', () => {
  for (const [call, argument] of [
    [() => compileReserve({ ...ascent, stressFactor: 0 }, cylinder()), 'stressFactor'],
    [() => compileReserve(ascent, { ...cylinder(), residual: 1 } as ReserveCylinder), 'cylinder.residual'],
    [() => compileReserve(ascent, cylinder(), { gas: 'perfect' as 'ideal' }), 'options.gas'],
    [() => compileReserve(ascent, cylinder(), { table: 1 } as never), 'options.table'],
  ] as const) {
    expect(call).toThrow(expect.objectContaining({ name: 'LitrebarError', argument }))
  }
})
