import { expect, test } from 'vitest'
import { seededRandom } from '../../src/uncertainty/index.ts'
import {
  absolute,
  bar,
  celsius,
  depthOf,
  fractionOf,
  gauge,
  internalVolumeOf,
  kilopascal,
  litre,
  metre,
  minute,
  type RecordSlip,
  recordSlips,
  type StatedRecord,
  temperatureOf,
} from '../../src/units/index.ts'
import { drawRecord, drawSlip } from './slip-records.ts'

const twelveLitres = { 'internal volume': internalVolumeOf(12, litre), 'service pressure': gauge(232, bar) }
const half = 40 * minute.factor

// Ranges of what is met in practice: common practice, no source.
const cases: readonly [what: string, record: StatedRecord, id: string, meant: number][] = [
  ['12 L at 3000 bar', { ...twelveLitres, 'service pressure': gauge(3000, bar) }, 'psi-read-as-bar', 20_684_271.9],
  ['130 m on air', { depth: depthOf(130, metre), 'oxygen fraction': fractionOf(0.21) }, 'feet-read-as-metres', 39.624],
  [
    'a capacity that is the water volume',
    { ...twelveLitres, 'rated capacity': 0.012 },
    'internal-volume-read-as-free-gas',
    0.012,
  ],
  [
    'an absolute pressure that the gauge shows',
    { 'cylinder gauge pressure': gauge(207, bar), 'cylinder absolute pressure': absolute(207, bar) },
    'gauge-read-as-absolute',
    20_801_325,
  ],
  [
    '3 bar absolute at 30 m',
    { 'ambient pressure': absolute(3, bar), 'surface pressure': absolute(1, bar), depth: depthOf(30, metre) },
    'gauge-read-as-absolute',
    400_000,
  ],
  ['water of 50 °C', { 'water temperature': temperatureOf(50, celsius) }, 'fahrenheit-read-as-celsius', 283.15],
  [
    'gas of 60 °C in water of 14 °C',
    { 'gas temperature': temperatureOf(60, celsius), 'water temperature': temperatureOf(14, celsius) },
    'fahrenheit-read-as-celsius',
    288.706,
  ],
  ['a surface pressure of 101.3 bar', { 'surface pressure': absolute(101.3, bar) }, 'kilopascal-read-as-bar', 101_300],
  ['an oxygen fraction of 32', { depth: depthOf(30, metre), 'oxygen fraction': 32 }, 'percent-read-as-fraction', 0.32],
  [
    'a mean depth in feet',
    { depth: depthOf(30, metre), 'mean depth': depthOf(55, metre) },
    'feet-read-as-metres',
    16.764,
  ],
  [
    'minutes that were read as seconds',
    {
      'starting gauge pressure': gauge(200, bar),
      'ending gauge pressure': gauge(60, bar),
      'internal volume': internalVolumeOf(12, litre),
      'mean depth': depthOf(12, metre),
      duration: 40,
    },
    'minutes-read-as-seconds',
    half,
  ],
]

const slipOf = (slips: readonly RecordSlip[], id: string): RecordSlip | undefined =>
  slips.find((slip) => slip.id === id)

test.each(cases)('%s is unusual, and the slip is named', (_, record, id, meant) => {
  const { usual, findings, slips } = recordSlips(record)
  expect(usual).toBe(false)
  expect(findings).not.toEqual([])
  expect((slipOf(slips, id)?.meant ?? Number.NaN) / meant).toBeCloseTo(1, 5)
})

test('metres of sea water are told from metres by good figures alone', () => {
  const record = { depth: depthOf(30, metre), 'surface pressure': absolute(101.3, kilopascal) }
  const ambient = (n: number) => ({ ...record, 'ambient pressure': absolute(n, kilopascal) })
  const waterDensity = 1025
  // 1025 × 9.80665 × 30 = 301.55 kPa, against 300 kPa
  expect(recordSlips(ambient(401.3), { waterDensity }).slips[0]?.meant).toBeCloseTo(29.845, 3)
  expect(recordSlips(ambient(402.9), { waterDensity })).toEqual({ usual: true, findings: [], slips: [] })
  expect(recordSlips(ambient(402.1), { waterDensity }).usual).toBe(true)
  expect(recordSlips(ambient(401.3)).usual).toBe(true)
})

test('what no slip explains is unusual without one', () => {
  const { usual, slips } = recordSlips({ depth: depthOf(900, metre) })
  expect([usual, slips]).toEqual([false, []])
})

test('a slip must explain all that is unusual', () => {
  const both = { 'service pressure': gauge(3000, bar), 'water temperature': temperatureOf(90, celsius) }
  expect(recordSlips(both)).toMatchObject({ usual: false, slips: [] })
  expect(recordSlips(both).findings).toHaveLength(2)
})

test('an unknown role, a value that is no number and a density of no water are refused', () => {
  expect(() => recordSlips({ deepth: 30 } as never)).toThrow(/deepth/)
  expect(() => recordSlips({ depth: Number.NaN })).toThrow(/finite number/)
  expect(() => recordSlips({ depth: '30' as never })).toThrow(/finite number/)
  expect(() => recordSlips({ depth: 30 }, { waterDensity: 1.025 })).toThrow(/kg\/m³/)
  expect(() => recordSlips({ depth: 30 }, { density: 1025 } as never)).toThrow(/density/)
})

test('an empty record is usual', () => {
  expect(recordSlips({})).toEqual({ usual: true, findings: [], slips: [] })
  expect(recordSlips({ depth: undefined }).usual).toBe(true)
})

// The long form is `npm run script -- slip-trials`: 10 000 with a slip, 100 000 without.
test('of seeded records with one slip 95 % are named, of sound ones less than 0.1 % are held against', () => {
  const uniform = seededRandom(7)
  const given = (waterDensity?: number) => (waterDensity === undefined ? {} : { waterDensity })
  const named = Array.from({ length: 1500 }, () => drawSlip(uniform)).filter(({ record, waterDensity, role, id }) =>
    recordSlips(record, given(waterDensity)).slips.some((slip) => slip.id === id && slip.role === role),
  )
  expect(named.length).toBeGreaterThan(0.95 * 1500)
  const alarms = Array.from({ length: 10_000 }, () => drawRecord(uniform)).filter(
    ({ record, waterDensity }) => !recordSlips(record, given(waterDensity)).usual,
  )
  expect(alarms.length).toBeLessThan(10)
})
