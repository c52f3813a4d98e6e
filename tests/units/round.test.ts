import { Decimal } from 'decimal.js'
import { assert, constantFrom, double, integer, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  bar,
  format,
  gauge,
  internalVolumeOf,
  litre,
  round,
  roundingUses,
  roundNumber,
  withNumberStyle,
} from '../../src/units/index.ts'

// Ties to even, one step: iso-80000-1 annex B rule A. The three first are the decimals that binary arithmetic gets wrong.
test.each([
  [1.005, { decimals: 2 }, '1.00'],
  [1.255, { decimals: 2 }, '1.26'],
  [0.145, { decimals: 2 }, '0.14'],
  [2.5, { decimals: 0 }, '2'],
  [-2.5, { decimals: 0 }, '-2'],
  [2.5, { decimals: 0, ties: 'away' }, '3'],
  [-2.5, { decimals: 0, ties: 'away' }, '-3'],
  [12.25, { figures: 3 }, '12.2'],
  [9.996, { figures: 3 }, '10.0'],
  [0.0099996, { figures: 2 }, '0.010'],
  [1234.5, { figures: 2 }, '1200'],
  [0, { figures: 3 }, '0.00'],
  [4, { decimals: 2 }, '4.00'],
  [1234.4, { step: 5 }, '1235'],
  [3050, { step: 200 }, '3000'],
  [3100, { step: 200 }, '3200'],
  [3300, { step: 200 }, '3200'],
  [0.35, { step: 0.1 }, '0.4'],
  [7, { step: 3 }, '6'],
  [50.0000000000001, { step: 5, toward: 'up' }, '50'],
  [50.2, { step: 5, toward: 'up' }, '55'],
  [-50.2, { step: 5, toward: 'up' }, '-50'],
  [-50.2, { step: 5, toward: 'down' }, '-55'],
  [231.97, { decimals: 0, toward: 'caution', use: 'fill limit' }, '231'],
  [231.02, { decimals: 0, toward: 'caution', use: 'reserve' }, '232'],
  [1e21, { decimals: 0 }, '1000000000000000000000'],
  [1.5e-7, { decimals: 7 }, '0.0000002'],
] as const)('%s by %o is %s', (n, rule, text) => {
  expect(roundNumber(n, rule).text).toBe(text)
  expect(roundNumber(n, rule).value).toBe(Number(text))
})

test('agrees with decimal.js on every tie and direction of the shortest text', () => {
  const modes = { nearest: Decimal.ROUND_HALF_EVEN, up: Decimal.ROUND_CEIL, down: Decimal.ROUND_FLOOR } as const
  assert(
    property(
      double({ min: -1e9, max: 1e9, noNaN: true }).map((n) => Number(n.toPrecision(11))),
      integer({ min: 0, max: 6 }),
      constantFrom('nearest', 'up', 'down'),
      (n, decimals, toward) => {
        const expected = new Decimal(n).toDecimalPlaces(decimals, modes[toward]).toNumber()
        expect(roundNumber(n, { decimals, toward }).value).toBe(expected === 0 ? 0 : expected)
      },
    ),
  )
})

test('a directed rounding never lands on the wrong side, and is idempotent', () => {
  assert(
    property(double({ min: 0.001, max: 1e6, noNaN: true }), constantFrom(0.1, 0.25, 1, 5, 10, 200), (n, step) => {
      const up = roundNumber(n, { step, toward: 'up' }).value
      const down = roundNumber(n, { step, toward: 'down' }).value
      expect(up).toBeGreaterThanOrEqual(n * (1 - 1e-12))
      expect(down).toBeLessThanOrEqual(n * (1 + 1e-12))
      expect(up - down).toBeLessThanOrEqual(step * 1.000001)
      expect(roundNumber(up, { step, toward: 'up' }).value).toBe(up)
    }),
  )
})

test('states its rule in words', () => {
  expect(round(gauge(50.2, bar), { unit: bar, step: 5, toward: 'caution', use: 'turn pressure' }).rule).toBe(
    'rounded up in steps of 5 (turn pressure: an amount needed)',
  )
  expect(roundNumber(1, { figures: 1 }).rule).toBe('rounded to 1 significant figure, ties to even')
})

test('every use names a side, a reason and a source', () => {
  for (const [use, row] of Object.entries(roundingUses)) {
    expect(['up', 'down', 'nearest'], use).toContain(row.side)
    expect(row.because, use).not.toBe('')
    expect(row.source, use).not.toBe('')
  }
})

test.each([
  [{ step: 0 }, 'step'],
  [{ step: Number.NaN }, 'step'],
  [{ decimals: 1.5 }, 'decimals'],
  [{ figures: 0 }, 'figures'],
] as const)('refuses the rule %o', (rule, argument) => {
  expect(() => roundNumber(1, rule)).toThrow(expect.objectContaining({ code: 'range', argument }))
})

test('refuses a number that is not finite', () => {
  expect(() => roundNumber(Number.NaN, { decimals: 1 })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'n' }),
  )
})

test('writes point or comma, groups from five digits on, true minus, and never parts a number from its unit', () => {
  expect(format(internalVolumeOf(12_345.6, litre), { unit: litre, decimals: 1, decimal: 'comma' })).toBe(
    '12\u202f345,6\u202fL',
  )
  expect(format(gauge(-2, bar), { unit: bar, decimals: 0 })).toBe('−2\u202fbar')
  expect(withNumberStyle('2630')).toBe('2630')
  expect(withNumberStyle('1234567.891', { grouping: 'none' })).toBe('1234567.891')
})
