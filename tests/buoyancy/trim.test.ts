import { array, assert, double, property, tuple } from 'fast-check'
import { expect, test } from 'vitest'
import { shiftForTrim, trim } from '../../src/buoyancy/index.ts'
import { measure, metre, newton, newtonMetre } from '../../src/units/index.ts'

function placed(...forces: readonly (readonly [number, number])[]) {
  return forces.map(([n, m]) => ({ force: measure(n, newton), position: measure(m, metre) }))
}

// engineering vector B3-1
test('B3-1: three forces give 2 N and -10.1 N·m about the hip', () => {
  const { net, moment } = trim(placed([30, -0.25], [-18, 0.2], [-10, -0.1]))
  expect(net / 2).toBeCloseTo(1, 12)
  expect(moment / -10.1).toBeCloseTo(1, 12)
})

test('moving a weight by the shift found takes the moment away', () => {
  const n = double({ min: -200, max: 200, noNaN: true })
  const m = double({ min: -1, max: 1, noNaN: true })
  assert(
    property(
      array(tuple(n, m), { maxLength: 6 }),
      double({ min: 1, max: 100, noNaN: true }),
      m,
      (forces, weight, at) => {
        const { moment } = trim(placed(...forces, [-weight, at]))
        const shift = shiftForTrim(moment, measure(weight, newton))
        if (Math.abs(at + shift) > 5) return
        expect(trim(placed(...forces, [-weight, at + shift])).moment).toBeCloseTo(0, 9)
      },
    ),
    { numRuns: 100 },
  )
})

test('without a net force the moment is the same about every point', () => {
  const forces = [
    [40, 0.3],
    [-25, -0.1],
    [-15, 0.2],
  ] as const
  const moved = forces.map(([n, m]) => [n, m + 0.7] as const)
  expect(trim(placed(...moved)).moment).toBeCloseTo(trim(placed(...forces)).moment, 12)
})

test('a weight that does not pull down cannot trim', () => {
  expect(() => shiftForTrim(measure(3, newtonMetre), measure(0, newton))).toThrow(
    expect.objectContaining({ code: 'range', argument: 'weight' }),
  )
  expect(() => trim(placed([Number.MAX_VALUE, 0]))).toThrow(expect.objectContaining({ argument: 'forces[0].force' }))
})
