import fc from 'fast-check'
import { expect, test } from 'vitest'
import { LitrebarError, rowCodes } from '../../src/errors/index.ts'
import { dryAir, molarDensity } from '../../src/gas-law/index.ts'
import { solveFor, solveForInto } from '../../src/uncertainty/index.ts'
import { absolute, bar, celsius, temperatureOf } from '../../src/units/index.ts'

test('every crossing and touch of a function that rises and falls is found', () => {
  const { roots } = solveFor((x: number) => Math.sin(x), 0, { from: -10, to: 10 })
  expect(roots).toHaveLength(7)
  roots.forEach((root, place) => {
    expect(root).toBeCloseTo((place - 3) * Math.PI, 12)
  })
  const touched = solveFor((x: number) => Math.sin(x), 1, { from: -10, to: 10 })
  expect(touched.roots).toHaveLength(3)
  touched.roots.forEach((root, place) => {
    expect(root).toBeCloseTo(Math.PI / 2 + (place - 1) * 2 * Math.PI, 6)
  })
})

test('two answers within one step are found where the function turns between them', () => {
  const { roots } = solveFor((x: number) => (x - 0.5) ** 2, 1e-6, { from: 0, to: 1.3, steps: 10 })
  expect(roots).toHaveLength(2)
  expect(roots[0]).toBeCloseTo(0.499, 9)
  expect(roots[1]).toBeCloseTo(0.501, 9)
})

test('any rising function is inverted, whichever its shape', () => {
  const powers = fc.double({ min: 0.2, max: 9, noNaN: true })
  const places = fc.double({ min: 0.01, max: 99, noNaN: true })
  fc.assert(
    fc.property(powers, places, (power, place) => {
      const { roots } = solveFor((x: number) => x ** power, place ** power, { from: 0, to: 100 })
      expect(roots).toHaveLength(1)
      expect((roots[0] as number) / place).toBeCloseTo(1, 9)
    }),
  )
})

test('a jump or a pole is no answer, an end is one', () => {
  expect(solveFor((x: number) => (x < 0.3 ? -1 : 1), 0, { from: 0, to: 1 }).roots).toEqual([])
  expect(solveFor((x: number) => 1 / (x - 0.3), 0, { from: 0, to: 1 }).roots).toEqual([])
  expect(solveFor((x: number) => x, 0, { from: 0, to: 1 }).roots).toEqual([0])
  expect(solveFor((x: number) => x, 1, { from: 0, to: 1 }).roots).toEqual([1])
})

test('where there is no answer, what can be reached is said', () => {
  expect(solveFor((x: number) => x * x, 5, { from: -1, to: 2 })).toEqual({
    roots: [],
    lowest: expect.closeTo(0, 3) as number,
    highest: 4,
    stepsWithout: 0,
  })
})

test('inputs that the function refuses are passed over, other errors are not', () => {
  const refusing = (x: number): number => {
    if (x >= 1) return x
    throw new LitrebarError({
      code: 'range',
      argument: 'x',
      value: String(x),
      expected: 'from 1 on',
      hint: 'Raise it.',
    })
  }
  const { roots, stepsWithout, lowest } = solveFor(refusing, 1.5, { from: 0, to: 2, steps: 100 })
  expect(roots[0]).toBeCloseTo(1.5, 12)
  expect(stepsWithout).toBe(50)
  expect(lowest).toBe(1)
  const failing = (): number => {
    throw new Error('mine')
  }
  expect(() => solveFor(failing, 1, { from: 0, to: 1 })).toThrow('mine')
})

test('the pressure at which air has a density goes back to the density', () => {
  const temperature = temperatureOf(20, celsius)
  const of = (pressure: ReturnType<typeof absolute>): number => molarDensity(dryAir, pressure, temperature)
  const { roots } = solveFor(of, 8000, { from: absolute(1, bar), to: absolute(300, bar) })
  expect(roots).toHaveLength(1)
  expect(of(roots[0] as ReturnType<typeof absolute>)).toBeCloseTo(8000, 6)
})

test('a column: answers, none, missing, and no function', () => {
  const rows = 4
  const out = { root: new Float64Array(rows), count: new Uint8Array(rows), code: new Uint8Array(rows) }
  const fn = (x: number, row: number): number => (row === 3 ? Number.NaN : x * x)
  solveForInto(out, { wanted: Float64Array.of(4, -1, Number.NaN, 1) }, fn, { from: -3, to: 3 })
  expect(out.root[0]).toBeCloseTo(-2, 12)
  expect([...out.count]).toEqual([2, 0, 0, 0])
  expect([...out.code]).toEqual([rowCodes.good, rowCodes.outOfRange, rowCodes.missing, rowCodes.notConverged])
  expect(out.root.slice(1).every(Number.isNaN)).toBe(true)
})

test.each([
  [{ from: 1, to: 0 }, 'lower end first'],
  [{ from: 0, to: Number.NaN }, 'range.to'],
  [{ from: 0, to: 1, steps: 2.5 }, 'whole number'],
  [{ from: 0, to: 1, step: 5 }, 'steps'],
])('a range that is none is refused: %#', (range, words) => {
  expect(() => solveFor((x: number) => x, 0, range)).toThrow(words)
})
