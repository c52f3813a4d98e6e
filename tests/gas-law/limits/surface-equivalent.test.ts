import { expect, test } from 'vitest'
import { surfaceEquivalentFraction } from '../../../src/gas-law/index.ts'
import { absolute, atmosphere, bar, fractionOf, inUnit, partPerMillion, percent } from '../../../src/units/index.ts'

const surfacePressure = absolute(1, atmosphere)

// Worked out apart from this library: y p/p0 at a depth display of 10 kPa per metre.
test.each([
  { ppm: 5, msw: 40, equivalent: 24.738465334320257 },
  { ppm: 10, msw: 30, equivalent: 39.60769800148039 },
  { ppm: 500, msw: 50, equivalent: 2967.308166790032 },
])('$ppm ppm at $msw msw acts like $equivalent ppm at the surface', ({ ppm, msw, equivalent }) => {
  const pressure = absolute(1.01325 + msw / 10, bar)
  const found = surfaceEquivalentFraction({ fraction: fractionOf(ppm, partPerMillion), pressure, surfacePressure })
  expect(inUnit(found, partPerMillion) / equivalent).toBeCloseTo(1, 12)
})

test('goes beyond 100 per cent where no mixture at the surface could', () => {
  const at = { fraction: fractionOf(40, percent), pressure: absolute(4, atmosphere), surfacePressure }
  expect(inUnit(surfaceEquivalentFraction(at), percent)).toBeCloseTo(160, 9)
})

test.each(['fraction', 'pressure', 'surfacePressure'] as const)(
  'names %s when it is no number of that kind',
  (argument) => {
    const at = { fraction: fractionOf(1, percent), pressure: absolute(4, bar), surfacePressure }
    for (const bad of [Number.NaN, Infinity, -1]) {
      expect(() => surfaceEquivalentFraction({ ...at, [argument]: bad })).toThrow(
        expect.objectContaining({ code: 'range', argument }),
      )
    }
  },
)
