import { expect, test } from 'vitest'
import {
  absolute,
  altitudeOf,
  bar,
  celsius,
  depthOf,
  difference,
  displacedVolumeOf,
  fractionOf,
  freeGasFlowOf,
  freeGasOf,
  gasVolumeOf,
  gauge,
  internalVolumeOf,
  litre,
  litrePerMinute,
  massFractionOf,
  measure,
  metre,
  one,
  temperatureOf,
  volumeFractionOf,
} from '../../src/units/index.ts'

const reference = { name: '15 °C, 1 atm' } as const
type Constructor = (n: never, unit: never) => unknown
const constructors: readonly (readonly [string, Constructor, unknown, unknown])[] = [
  ['gauge', gauge, bar, litre],
  ['absolute', absolute, bar, litre],
  ['difference', difference, bar, litre],
  ['temperatureOf', temperatureOf, celsius, bar],
  ['internalVolumeOf', internalVolumeOf, litre, bar],
  ['gasVolumeOf', gasVolumeOf, litre, metre],
  ['displacedVolumeOf', displacedVolumeOf, litre, metre],
  ['depthOf', depthOf, metre, litre],
  ['altitudeOf', altitudeOf, metre, bar],
  ['fractionOf', fractionOf, one, bar],
  ['volumeFractionOf', volumeFractionOf, one, bar],
  ['massFractionOf', massFractionOf, one, bar],
  ['measure', measure, litre, bar],
  ['freeGasOf', (n, unit) => freeGasOf(n, unit, reference), litre, bar],
  ['freeGasFlowOf', (n, unit) => freeGasFlowOf(n, unit, reference), litrePerMinute, litre],
]

test.each(constructors)('%s takes a number, and nothing that JavaScript would count as one', (_, make, unit) => {
  expect(make(0.5 as never, unit as never)).toBeTypeOf('number')
  for (const slip of [null, undefined, [], [1], {}, true, '5', '', 1n, Symbol('n'), () => 1])
    expect(() => make(slip as never, unit as never)).toThrow(expect.objectContaining({ code: 'input' }))
  for (const slip of [Number.NaN, Infinity, -Infinity])
    expect(() => make(slip as never, unit as never)).toThrow(expect.objectContaining({ code: 'range' }))
})

test.each(constructors)('%s takes a unit of its quantity only', (_, make, unit, other) => {
  const nameless = { quantity: (unit as { quantity: string }).quantity }
  for (const slip of [other, null, {}, 'bar', 5, nameless])
    expect(() => make(0.5 as never, slip as never)).toThrow(expect.objectContaining({ code: 'unit' }))
  expect(() => make(0.5 as never, { ...(unit as object), factor: '5' } as never)).toThrow(
    expect.objectContaining({ code: 'unit' }),
  )
})

test('the refusal names what was given and what to use', () => {
  expect(() => absolute(200, litre as never)).toThrow(
    'absolute pressure is 200 L, expected a unit of pressure. Use bar or psi.',
  )
  expect(() => temperatureOf(15, bar as never)).toThrow(
    '15 bar, expected a unit of temperature. Use celsius or fahrenheit.',
  )
  expect(() => gauge('232' as never, bar)).toThrow("gauge pressure is '232', expected a number.")
  expect(() => measure(1, 0 as never)).toThrow('measure is 1 with 0 for its unit, expected a unit of any quantity')
  expect(() => freeGasOf(1, litre, undefined as never)).toThrow('reference.name is missing, expected a reference')
})

test('a unit of one’s own is a unit', () => {
  const lungful = { symbol: 'lungful', quantity: 'volume', factor: 0.005 } as const
  expect(gasVolumeOf(2, lungful)).toBe(0.01)
})
