import { assert, constantFrom, double, property, tuple } from 'fast-check'
import { expect, test } from 'vitest'
import { boyle, charles, combinedGasLaw, gayLussac, idealGasLaw } from '../../../src/gas-law/index.ts'
import {
  finalPressure,
  finalTemperature,
  finalVolume,
  initialPressure,
  initialTemperature,
  initialVolume,
} from '../../../src/gas-law/laws/law.ts'
import {
  absolute,
  bar,
  gasVolumeOf,
  gauge,
  internalVolumeOf,
  kelvin,
  litre,
  measure,
  mole,
  requireWithin,
  temperatureOf,
} from '../../../src/units/index.ts'

// The laws as untyped callers see them: numbers by name.
type Numbers = Record<string, number>
type Solver = (knowns: Numbers) => Numbers

const p1 = initialPressure
const change = [
  'initialPressure',
  'initialVolume',
  'initialTemperature',
  'finalPressure',
  'finalVolume',
  'finalTemperature',
]
const without = (word: string) => change.filter((name) => !name.endsWith(word))
const molarGasConstant = 8.31446261815324 // codata-2018

/** What a law says stays the same, written out by hand: 1 if it holds. */
const laws: { name: string; solve: Solver; names: string[]; holds: (q: Numbers) => number }[] = [
  {
    name: 'Boyle',
    solve: boyle as unknown as Solver,
    names: without('Temperature'),
    holds: ({ initialPressure: p = 0, initialVolume: v = 0, finalPressure = 0, finalVolume = 0 }) =>
      (p * v) / (finalPressure * finalVolume),
  },
  {
    name: 'Charles',
    solve: charles as unknown as Solver,
    names: without('Pressure'),
    holds: ({ initialVolume: v = 0, initialTemperature: t = 0, finalVolume = 0, finalTemperature = 0 }) =>
      v / t / (finalVolume / finalTemperature),
  },
  {
    name: 'Gay-Lussac',
    solve: gayLussac as unknown as Solver,
    names: without('Volume'),
    holds: ({ initialPressure: p = 0, initialTemperature: t = 0, finalPressure = 0, finalTemperature = 0 }) =>
      p / t / (finalPressure / finalTemperature),
  },
  {
    name: 'combined',
    solve: combinedGasLaw as unknown as Solver,
    names: change,
    holds: (q) =>
      ((q['initialPressure'] ?? 0) * (q['initialVolume'] ?? 0) * (q['finalTemperature'] ?? 0)) /
      ((q['finalPressure'] ?? 0) * (q['finalVolume'] ?? 0) * (q['initialTemperature'] ?? 0)),
  },
  {
    name: 'ideal',
    solve: idealGasLaw as unknown as Solver,
    names: ['pressure', 'volume', 'amount', 'temperature'],
    holds: ({ pressure = 0, volume = 0, amount = 0, temperature = 0 }) =>
      (pressure * volume) / (amount * molarGasConstant * temperature),
  },
]

const usual: Numbers = { pressure: 2e5, volume: 0.01, amount: 0.8, temperature: 290 }
const usualOf = (name: string): number => usual[name.replace(/^initial|^final/, '').toLowerCase()] ?? Number.NaN
const scale = double({ min: 0.5, max: 2, noNaN: true })

test.each(laws)(
  '$name: whichever quantity is left out, the same state comes back and the law holds',
  ({ solve, names, holds }) => {
    assert(
      property(constantFrom(...names), tuple(...names.map(() => scale)), (first, scales) => {
        const given = Object.fromEntries(names.map((name, i) => [name, usualOf(name) * (scales[i] ?? 1)]))
        const state = solve(leavingOut(first, given))
        expect(holds(state)).toBeCloseTo(1, 12)
        for (const name of names) {
          expect((solve(leavingOut(name, state))[name] ?? 0) / (state[name] ?? 0)).toBeCloseTo(1, 12)
        }
      }),
    )
  },
)

test.each(laws)('$name: none or two left out is refused', ({ solve, names }) => {
  const complete = Object.fromEntries(names.map((name) => [name, usualOf(name)]))
  const [one = '', two = ''] = names
  const input = { code: 'input', argument: 'knowns', expected: `all but one of ${names.join(', ')}` }
  expect(() => solve(complete)).toThrow(expect.objectContaining({ ...input, value: 'without a gap' }))
  expect(() => solve(leavingOut(two, leavingOut(one, complete)))).toThrow(
    expect.objectContaining({ ...input, value: `without ${one}, ${two}` }),
  )
})

test.each(laws)(
  '$name: a quantity that is not finite, not above zero or beyond its limit is refused by name',
  ({ solve, names }) => {
    const complete = Object.fromEntries(names.map((name) => [name, usualOf(name)]))
    for (const [i, argument] of names.entries()) {
      const other = names[(i + 1) % names.length] ?? ''
      for (const bad of [Number.NaN, Infinity, -Infinity, 0, -1, 1e12]) {
        const knowns = { ...leavingOut(other, complete), [argument]: bad }
        expect(() => solve(knowns)).toThrow(expect.objectContaining({ code: 'range', argument }))
      }
    }
  },
)

test('an answer beyond the range of its quantity is refused, not passed on', () => {
  const knowns = { initialPressure: absolute(1000, bar), initialVolume: gasVolumeOf(1e6, litre) }
  expect(() => boyle({ ...knowns, finalVolume: gasVolumeOf(1e-300, litre) })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'finalPressure' }),
  )
})

// The laws write their own refusal to stay small; it must not drift from that of the units room.
test.each([p1, finalPressure, initialVolume, finalVolume, initialTemperature, finalTemperature])(
  'a law refuses in the words of requireWithin (%i, $unit.symbol)',
  (exponent, factor) => {
    expect(Math.abs(exponent)).toBe(1)
    const names = ['initialPressure', 'initialVolume', 'finalPressure', 'finalVolume', 'finalTemperature']
    const argument = names.find((name) => name.toLowerCase().endsWith(factor.unit.quantity)) ?? ''
    for (const stated of [Number.NaN, Infinity, -3, 0, 1.5e9]) {
      const value = stated * factor.unit.factor
      const knowns = Object.fromEntries(names.map((name) => [name, usualOf(name)]))
      const said = errorOf(() => (combinedGasLaw as unknown as Solver)({ ...knowns, [argument]: value }))
      expect(said).toEqual(errorOf(() => requireWithin(argument, value, factor)))
    }
  },
)

test('says what to do about a pressure that is too high', () => {
  const v = gasVolumeOf(1, litre)
  expect(() => boyle({ initialPressure: absolute(10_001, bar), initialVolume: v, finalVolume: v })).toThrow(
    'initialPressure is 10001 bar, expected above 0 and at most 10000 bar. Check the unit; pressures are absolute.',
  )
})

// Checked by `tsc`, and true at run time as well: an omission that the types forbid is refused.
test('types: exactly one quantity is left out', () => {
  const p = absolute(1, bar)
  const v = gasVolumeOf(1, litre)
  const input = expect.objectContaining({ code: 'input' })
  expect(boyle({ initialPressure: p, initialVolume: v, finalPressure: p }).finalVolume).toBe(v)
  // @ts-expect-error none left out
  expect(() => boyle({ initialPressure: p, initialVolume: v, finalPressure: p, finalVolume: v })).toThrow(input)
  // @ts-expect-error two left out
  expect(() => boyle({ initialPressure: p, initialVolume: v })).toThrow(input)
})

test('types: a gauge pressure and an internal volume do not fit', () => {
  const t = temperatureOf(290, kelvin)
  const n = measure(1, mole)
  idealGasLaw({ pressure: absolute(1, bar), amount: n, temperature: t })
  // @ts-expect-error gauge where absolute belongs; no run-time trace is left of the difference
  idealGasLaw({ pressure: gauge(1, bar), amount: n, temperature: t })
  idealGasLaw({ volume: gasVolumeOf(24, litre), amount: n, temperature: t })
  // @ts-expect-error the volume of a cylinder is not the volume of its gas
  idealGasLaw({ volume: internalVolumeOf(24, litre), amount: n, temperature: t })
})

function leavingOut(name: string, numbers: Numbers): Numbers {
  return Object.fromEntries(Object.entries(numbers).filter(([other]) => other !== name))
}

function errorOf(action: () => unknown): unknown {
  try {
    action()
  } catch (thrown) {
    return (thrown as { toJSON(): unknown }).toJSON()
  }
  return undefined
}
