import { assert, double, integer, property } from 'fast-check'
import { expect, test } from 'vitest'
import { orderOfUse } from '../../../src/consumption/index.ts'
import { amountOfGas } from '../../../src/gas-law/index.ts'
import {
  type AbsolutePressure,
  absolute,
  bar,
  barLitre,
  celsius,
  inUnit,
  temperatureOf,
} from '../../../src/units/index.ts'
import { breathed } from '../given.ts'

const rule = {
  fraction: 1 / 3,
  portions: 1,
  ambientPressure: absolute(1, bar),
  breathingGasTemperature: temperatureOf(15, celsius),
  gaugeZero: absolute(1, bar),
  show: { unit: bar, step: 5 },
}

test('two equal cylinders are breathed down by a third one after the other', () => {
  const { turns, cautions } = orderOfUse([breathed(12, 211, 1), breathed(12, 211, 1)], { ...rule, gas: 'ideal' })
  expect(turns.map(({ cylinder: which, gaugePressure }) => [which, Math.round(inUnit(gaugePressure, bar))])).toEqual([
    [0, 140],
    [1, 140],
  ])
  expect(turns.map(({ shown }) => shown.text)).toEqual(['140', '140'])
  expect(cautions).toContain('reserve')
})

function shareLeft({ contents, residualPressure }: ReturnType<typeof breathed>, pressure: AbsolutePressure): number {
  const kept = amountOfGas({ ...contents, pressure: residualPressure })
  return (amountOfGas({ ...contents, pressure }) - kept) / (amountOfGas(contents) - kept)
}

test('whatever the portions, every cylinder keeps its share at every moment, and gives it all in the end', () => {
  assert(
    property(
      double({ min: 5, max: 20, noNaN: true }),
      integer({ min: 1, max: 6 }),
      double({ min: 0.1, max: 0.8, noNaN: true }),
      (litres, portions, fraction) => {
        const cylinders = [breathed(12, 230, 10), breathed(litres, 200, 20), breathed(7, 300, 30)]
        const { turns } = orderOfUse(cylinders, { ...rule, portions, fraction })
        expect(turns.length).toBe(3 * portions)
        for (const { cylinder: which, pressure: until, from, shown } of turns) {
          const left = shareLeft(cylinders[which] as (typeof cylinders)[number], until)
          expect(left).toBeGreaterThanOrEqual(1 - fraction - 1e-9)
          expect(until).toBeLessThan(from)
          expect(shown.value).toBeGreaterThanOrEqual(inUnit(until, bar) - 1 - 1e-9)
        }
        for (const { cylinder: which, pressure: until } of turns.slice(-3)) {
          expect(shareLeft(cylinders[which] as (typeof cylinders)[number], until)).toBeCloseTo(1 - fraction, 9)
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
    for (const { cylinder: which, pressure: until } of orderOfUse([breathed(12, 200, 1), breathed(12, 200, 1)], {
      ...rule,
      portions,
    }).turns) {
      now[which] = inUnit(until, bar)
      largest = Math.max(largest, Math.abs((now[0] ?? 0) - (now[1] ?? 0)))
    }
    return largest
  }
  expect(apart(4)).toBeLessThan(apart(1) / 3)
})

test('a single cylinder has no order, and half a portion is none', () => {
  expect(() => orderOfUse([breathed(12, 200, 1)], rule)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'cylinders' }),
  )
  expect(() => orderOfUse([breathed(12, 200, 1), breathed(12, 200, 1)], { ...rule, portions: 1.5 })).toThrow(
    expect.objectContaining({ argument: 'options.portions' }),
  )
})

test('equal thirds of cylinders of different sizes do not survive the loss of the richer, and the result says by how much', () => {
  const given = (a: readonly [number, number], b: readonly [number, number], residual: number) =>
    orderOfUse([breathed(...a, residual), breathed(...b, residual)], { ...rule, gas: 'ideal' })
  // 12 L at 220 and 12 L at 200 bar above what stays: used 1680, left in the poorer 1600
  const alike = given([12, 221], [12, 201], 1)
  expect(inUnit(alike.used, barLitre)).toBeCloseTo(1680, 6)
  expect(inUnit(alike.shortfall, barLitre)).toBeCloseTo(80, 6)
  expect(alike.worstLoss).toBe(0)
  // the smaller first in the list
  const swapped = given([7, 200], [12, 220], 20)
  expect(inUnit(swapped.shortfall, barLitre)).toBeCloseTo(1220 - 840, 6)
  expect(swapped.worstLoss).toBe(1)
  expect(given([12, 201], [12, 201], 1).shortfall).toBe(0)
})

test('a residual below the pressure around the diver is refused for every cylinder', () => {
  const deep = { ...rule, ambientPressure: absolute(6, bar) }
  expect(() => orderOfUse([breathed(12, 200, 10), breathed(12, 200, 5)], deep)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'cylinders[1].residualPressure' }),
  )
})
