import { expect, test } from 'vitest'
import {
  absolute,
  bar,
  celsius,
  gauge,
  internalVolumeOf,
  inUnit,
  kelvin,
  likelySlips,
  litre,
  litrePerMinute,
  measure,
  pascal,
  temperatureOf,
} from '../../src/units/index.ts'

// Ranges of what is met in practice: common practice, no source.
test.each([
  ['service pressure', gauge(3000, bar), 'psi-read-as-bar', 20_684_271.9],
  ['gas temperature', temperatureOf(72, celsius), 'fahrenheit-read-as-celsius', 295.372],
  ['gas temperature', temperatureOf(293, celsius), 'kelvin-read-as-celsius', 293],
  ['water temperature', temperatureOf(12, kelvin), 'celsius-read-as-kelvin', 285.15],
  ['surface pressure', absolute(0, bar), 'gauge-read-as-absolute', 101_325],
  ['internal volume', internalVolumeOf(2400, litre), 'free-gas-read-as-internal-volume', 2.4],
  ['rated capacity', 0.08, 'cubic-feet-read-as-litres', 2.26535],
  ['rated capacity', 0.012, 'internal-volume-read-as-free-gas', 0.012],
  ['oxygen fraction', 32, 'percent-read-as-fraction', 0.32],
  ['respiratory minute volume', measure(0.7, litrePerMinute), 'cubic-feet-read-as-litres', 0.000330363],
] as const)('%s of %s SI: %s', (role, value, id, meant) => {
  const { usual, slips } = likelySlips(role, value)
  expect(usual).toBe(false)
  const slip = slips.find((row) => row.id === id)
  expect((slip?.meant ?? Number.NaN) / meant).toBeCloseTo(1, 5)
})

test('a usual number has no slip; an unusual one without a reading has none either', () => {
  expect(likelySlips('service pressure', gauge(232, bar))).toEqual({ usual: true, slips: [] })
  expect(likelySlips('service pressure', gauge(9e9, pascal))).toEqual({ usual: false, slips: [] })
  expect(inUnit(gauge(232, bar), bar)).toBe(232)
})
