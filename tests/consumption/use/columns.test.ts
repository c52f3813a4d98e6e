import { expect, test } from 'vitest'
import {
  endurance,
  enduranceInto,
  pressureVolumeBreathed,
  pressureVolumeBreathedInto,
  profileInWater,
} from '../../../src/consumption/index.ts'
import { rowCodes } from '../../../src/errors/index.ts'
import { compileMixture, dryAir } from '../../../src/gas-law/index.ts'
import { seededRandom } from '../../../src/uncertainty/index.ts'
import {
  type AbsolutePressure,
  absolute,
  bar,
  celsius,
  depthOf,
  type InternalVolume,
  litrePerMinute,
  measure,
  metre,
  second,
  type Temperature,
  temperatureOf,
  type VolumeFlow,
} from '../../../src/units/index.ts'
import { metresOfSeaWater } from '../given.ts'

const rows = 2000

function record() {
  const random = seededRandom(4)
  const timeSecond = new Float64Array(rows)
  const depthMetre = new Float64Array(rows)
  let time = 0
  for (let row = 0; row < rows; row++) {
    time += 1 + 9 * random()
    timeSecond[row] = time
    depthMetre[row] = 40 * random()
  }
  return { timeSecond, depthMetre, respiratoryMinuteVolumeCubicMetrePerSecond: new Float64Array(rows).fill(3e-4) }
}

function emptyUse() {
  return { pressureVolumePascalCubicMetre: new Float64Array(rows), code: new Uint8Array(rows) }
}

test('a column of uses adds up to the use of the profile, also when it is worked out in parts', () => {
  const columns = record()
  const out = emptyUse()
  pressureVolumeBreathedInto(out, columns, { water: metresOfSeaWater })
  const parts = emptyUse()
  for (const [from, to] of [
    [0, 700],
    [1500, rows],
    [700, 1500],
  ]) {
    pressureVolumeBreathedInto(parts, columns, { water: metresOfSeaWater }, from, to)
  }
  expect(parts).toEqual(out)
  const profile = profileInWater(
    Array.from(columns.timeSecond, (time, row) => ({
      time: measure(time, second),
      depth: depthOf(columns.depthMetre[row] ?? 0, metre),
    })),
    metresOfSeaWater,
  )
  const whole = pressureVolumeBreathed(profile, measure(18, litrePerMinute))
  expect(out.pressureVolumePascalCubicMetre.reduce((sum, use) => sum + use, 0) / whole).toBeCloseTo(1, 11)
  expect(out.code.every((code) => code === rowCodes.good)).toBe(true)
})

test('a missing depth, time that stands or goes back, and a gap are marked in their rows and count nothing', () => {
  const columns = record()
  columns.depthMetre[10] = Number.NaN
  columns.timeSecond[20] = columns.timeSecond[19] ?? 0
  columns.timeSecond[30] = 0
  columns.respiratoryMinuteVolumeCubicMetrePerSecond[40] = -1
  const out = emptyUse()
  pressureVolumeBreathedInto(out, columns, { water: metresOfSeaWater, longestGapSecond: 60 })
  const { good, missing, outOfRange, input } = rowCodes
  expect([...out.code.subarray(9, 13)]).toEqual([good, missing, missing, good])
  expect(out.code[20]).toBe(input)
  expect(out.code[30]).toBe(input)
  expect(out.code[31]).toBe(outOfRange)
  expect(out.code[40]).toBe(outOfRange)
  for (const row of [10, 11, 20, 30, 31, 40]) expect(out.pressureVolumePascalCubicMetre[row]).toBeNaN()
})

test('an infinite time or depth, and a rate above 500 L/min, are out of range in the first row too', () => {
  for (const [column, value] of [
    ['timeSecond', Infinity],
    ['depthMetre', Infinity],
    ['depthMetre', 11_001],
    ['respiratoryMinuteVolumeCubicMetrePerSecond', 501 / 60_000],
  ] as const) {
    const columns = record()
    columns[column][0] = value
    const out = emptyUse()
    pressureVolumeBreathedInto(out, columns, { water: metresOfSeaWater }, 0, 3)
    expect(out.code[0]).toBe(rowCodes.outOfRange)
    expect(out.pressureVolumePascalCubicMetre[0]).toBeNaN()
  }
})

test('rows that there are not, and columns that are too short, are refused once instead of lost', () => {
  const columns = record()
  for (const [from, to] of [
    [-1, 3],
    [0, Number.NaN],
    [0.5, 3],
    [3, 2],
    [0, 1e9],
    [-Infinity, 3],
  ] as const) {
    expect(() => pressureVolumeBreathedInto(emptyUse(), columns, { water: metresOfSeaWater }, from, to)).toThrow(
      expect.objectContaining({ code: 'range', argument: 'rows' }),
    )
  }
  const short = { ...emptyUse(), code: new Uint8Array(3) }
  expect(() => pressureVolumeBreathedInto(short, columns, { water: metresOfSeaWater })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'out.code' }),
  )
  // @ts-expect-error -- a misspelt option
  expect(() => pressureVolumeBreathedInto(emptyUse(), columns, { water: metresOfSeaWater, longestGap: 3 })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'options.longestGap' }),
  )
  const lasting = { enduranceSecond: new Float64Array(3), code: new Uint8Array(3) }
  expect(() => enduranceInto(lasting, enduranceColumns(2), { gas: 'ideal' }, 0, 3)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'rows' }),
  )
  // @ts-expect-error -- no word of the list
  expect(() => enduranceInto(lasting, enduranceColumns(3), { gas: 'Ideal' })).toThrow(/Did you mean 'ideal'/)
})

function enduranceColumns(count: number) {
  const random = seededRandom(12)
  const filled = (low: number, high: number): Float64Array =>
    Float64Array.from({ length: count }, () => low + (high - low) * random())
  return {
    internalVolumeCubicMetre: filled(0.003, 0.024),
    pressurePascal: filled(60e5, 300e5),
    residualPressurePascal: filled(10e5, 50e5),
    ambientPressurePascal: filled(1e5, 7e5),
    temperatureKelvin: filled(275, 300),
    breathedTemperatureKelvin: filled(275, 300),
    respiratoryMinuteVolumeCubicMetrePerSecond: filled(1e-4, 6e-4),
  }
}

test('a column of endurances from a compiled mixture agrees with the scalar form within the error of the table', () => {
  const count = 500
  const columns = enduranceColumns(count)
  const compiled = compileMixture(dryAir, {
    temperature: [temperatureOf(0, celsius), temperatureOf(40, celsius)],
    pressure: [absolute(0.5, bar), absolute(310, bar)],
    tolerance: 5e-9,
  })
  const fast = { enduranceSecond: new Float64Array(count), code: new Uint8Array(count) }
  const full = { enduranceSecond: new Float64Array(count), code: new Uint8Array(count) }
  enduranceInto(fast, columns, { compiled })
  enduranceInto(full, columns, { mixture: dryAir })
  for (let row = 0; row < count; row++) {
    const exact = endurance({
      cylinders: [
        {
          contents: {
            internalVolume: columns.internalVolumeCubicMetre[row] as InternalVolume,
            pressure: columns.pressurePascal[row] as AbsolutePressure,
            temperature: columns.temperatureKelvin[row] as Temperature,
            mixture: dryAir,
          },
          residualPressure: columns.residualPressurePascal[row] as AbsolutePressure,
        },
      ],
      respiratoryMinuteVolume: columns.respiratoryMinuteVolumeCubicMetrePerSecond[row] as VolumeFlow,
      ambientPressure: columns.ambientPressurePascal[row] as AbsolutePressure,
      breathingGasTemperature: columns.breathedTemperatureKelvin[row] as Temperature,
    }).duration
    expect((full.enduranceSecond[row] ?? 0) / exact).toBeCloseTo(1, 12)
    // the difference of two densities may be a fifth of the larger one, which makes an error of 5e-9 one of 5e-8
    expect(Math.abs((fast.enduranceSecond[row] ?? 0) / exact - 1)).toBeLessThan(1e-7)
  }
  expect(fast.code.every((code) => code === 0)).toBe(true)
})

test('bad rows of endurance carry a code, a cylinder below its residual lasts 0 s, and the others are not touched', () => {
  const columns = enduranceColumns(8)
  const compiled = compileMixture(dryAir, {
    temperature: [temperatureOf(0, celsius), temperatureOf(40, celsius)],
    pressure: [absolute(0.5, bar), absolute(310, bar)],
    tolerance: 1e-6,
  })
  columns.pressurePascal[1] = Number.NaN
  columns.residualPressurePascal[2] = 400e5
  columns.ambientPressurePascal[3] = 0
  columns.temperatureKelvin[4] = 350
  columns.residualPressurePascal[5] = 0.5e5
  columns.residualPressurePascal[6] = Number.NaN
  const out = { enduranceSecond: new Float64Array(8), code: new Uint8Array(8) }
  enduranceInto(out, columns, { compiled })
  const { good, missing, outOfRange, outsideValidity, input } = rowCodes
  expect([...out.code]).toEqual([good, missing, good, outOfRange, outsideValidity, input, missing, good])
  expect(Array.from(out.enduranceSecond, Number.isNaN)).toEqual([false, true, false, true, true, true, true, false])
  expect(out.enduranceSecond[2]).toBe(0)
})
