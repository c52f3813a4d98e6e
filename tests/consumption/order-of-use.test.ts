import { assert, double, integer, property } from 'fast-check'
import { expect, test } from 'vitest'
import { orderOfUse } from '../../src/consumption/index.ts'
import { amountOfGas } from '../../src/gas-law/index.ts'
import { absolute, bar, inUnit } from '../../src/units/index.ts'
import { cylinder } from './given.ts'

const rule = { fraction: 1 / 3, portions: 1, gaugeZero: absolute(1, bar), show: { unit: bar, step: 5 } }

test('two equal cylinders are breathed down by a third one after the other', () => {
  const { turns, cautions } = orderOfUse([cylinder(12, 210), cylinder(12, 210)], { ...rule, gas: 'ideal' })
  expect(turns.map(({ cylinder: which, until }) => [which, Math.round(inUnit(until, bar))])).toEqual([
    [0, 140],
    [1, 140],
  ])
  expect(turns.map(({ shown }) => shown.text)).toEqual(['140', '140'])
  expect(cautions).toContain('reserve')
})

test('whatever the portions, every cylinder keeps its share at every moment, and gives it all in the end', () => {
  assert(
    property(
      double({ min: 5, max: 20, noNaN: true }),
      integer({ min: 1, max: 6 }),
      double({ min: 0.1, max: 0.8, noNaN: true }),
      (litres, portions, fraction) => {
        const cylinders = [cylinder(12, 230), cylinder(litres, 200), cylinder(7, 300)]
        const { turns } = orderOfUse(cylinders, { ...rule, portions, fraction })
        expect(turns.length).toBe(3 * portions)
        for (const { cylinder: which, until, from, shown } of turns) {
          const contents = cylinders[which] as (typeof cylinders)[number]
          const left = amountOfGas({ ...contents, pressure: until }) / amountOfGas(contents)
          expect(left).toBeGreaterThanOrEqual(1 - fraction - 1e-9)
          expect(until).toBeLessThan(from)
          expect(shown.value).toBeGreaterThanOrEqual(inUnit(until, bar) - 1 - 1e-9)
        }
        for (const { cylinder: which, until } of turns.slice(-3)) {
          const contents = cylinders[which] as (typeof cylinders)[number]
          expect(amountOfGas({ ...contents, pressure: until }) / amountOfGas(contents)).toBeCloseTo(1 - fraction, 9)
        }
      },
    ),
    { numRuns: 40 },
  )
})

test('more portions keep the cylinders closer together', () => {
  const apart = (portions: number): number => {
    const now = [200, 200]
    let largest = 0
    for (const { cylinder: which, until } of orderOfUse([cylinder(12, 200), cylinder(12, 200)], { ...rule, portions })
      .turns) {
      now[which] = inUnit(until, bar)
      largest = Math.max(largest, Math.abs((now[0] ?? 0) - (now[1] ?? 0)))
    }
    return largest
  }
  expect(apart(4)).toBeLessThan(apart(1) / 3)
})

test('a single cylinder has no order, and half a portion is none', () => {
  expect(() => orderOfUse([cylinder(12, 200)], rule)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'cylinders' }),
  )
  expect(() => orderOfUse([cylinder(12, 200), cylinder(12, 200)], { ...rule, portions: 1.5 })).toThrow(
    expect.objectContaining({ argument: 'options.portions' }),
  )
})
