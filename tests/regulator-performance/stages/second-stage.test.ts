import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { standardGravity } from '../../../src/environment/index.ts'
import {
  attitudeEffect,
  crackingPressure,
  exhaustPressure,
  fittedAssist,
  pilotOpening,
} from '../../../src/regulator-performance/index.ts'
import {
  bar,
  difference,
  type Fraction,
  inUnit,
  kilogramPerCubicMetre,
  litrePerSecond,
  measure,
  metre,
  millibar,
  newton,
  squareMillimetre,
} from '../../../src/units/index.ts'

const valve = {
  seat: 'downstream',
  springForce: measure(25.9, newton),
  orificeArea: measure(23.76, squareMillimetre),
  balancedShare: 0 as Fraction,
  leverRatio: 4.5 as Fraction,
  diaphragmArea: measure(3318, squareMillimetre),
} as const

test('a downstream valve stands open above its relief pressure and closed below it', () => {
  const relief = crackingPressure(valve, difference(9, bar)).reliefPressure as number
  const above = crackingPressure(valve, (relief * 1.001) as never)
  const below = crackingPressure(valve, (relief * 0.999) as never)
  expect(above.crackingPressure).toBeLessThan(0)
  expect(above.because.map(({ code }) => code)).toEqual(['fails-open', 'free-flow'])
  expect(below.crackingPressure).toBeGreaterThan(0)
  expect(below.because.map(({ code }) => code)).toEqual(['fails-open'])
})

test('an upstream valve gets harder with intermediate pressure, has no relief pressure, and says that it needs a valve', () => {
  const upstream = { ...valve, seat: 'upstream', springForce: measure(4, newton) } as const
  const low = crackingPressure(upstream, difference(9, bar))
  const high = crackingPressure(upstream, difference(10, bar))
  expect(high.crackingPressure).toBeGreaterThan(low.crackingPressure)
  expect(high.reliefPressure).toBeUndefined()
  expect(high.because.map(({ code }) => code)).toEqual(['needs-relief'])
})

test('half a bar of drift moves the effort of an unbalanced valve by 0.80 mbar, of one balanced by 0.7 by 0.24', () => {
  const moved = (balancedShare: number) => {
    const at = (over: number) =>
      crackingPressure({ ...valve, balancedShare: balancedShare as Fraction }, difference(over, bar)).crackingPressure
    return inUnit(difference((at(9) - at(9.5)) / 100, millibar), millibar)
  }
  expect(moved(0)).toBeCloseTo(0.796, 3)
  expect(moved(0.7)).toBeCloseTo(0.239, 3)
})

test('a pilot keeps its effort whatever the main seat, and bleeds the share of its areas', () => {
  const found = pilotOpening({
    pilotCrackingPressure: difference(1, millibar),
    areaRatio: 4 as Fraction,
    intermediatePressure: difference(8, bar),
  })
  expect(found.crackingPressure).toBe(difference(1, millibar))
  expect(inUnit(found.bleedPressure, bar)).toBeCloseTo(2, 12)
})

test('turned round, the water column helps as much as it hindered', () => {
  const at = (height: number) =>
    attitudeEffect({
      diaphragmBelowExhaust: measure(height, metre),
      waterDensity: measure(1000, kilogramPerCubicMetre),
      gravity: standardGravity,
      crackingPressure: difference(3, millibar),
      exhaustPressure: difference(1, millibar),
    })
  expect(at(0.05).head).toBe(-at(-0.05).head)
  expect(at(0.05).leaks).toBe(true)
  expect(at(-0.05).leaks).toBe(false)
})

test('what drives gas through the exhaust grows with its density, what opens the valve does not', () => {
  const at = (density: number) =>
    exhaustPressure({
      openingPressure: difference(1, millibar),
      area: measure(300, squareMillimetre),
      dischargeCoefficient: 0.7 as Fraction,
      flow: measure(3.27, litrePerSecond),
      gasDensity: measure(density, kilogramPerCubicMetre),
    }).pressure - 100
  expect(at(7.2) / at(1.2)).toBeCloseTo(6, 10)
})

const flows = Array.from({ length: 40 }, (_, index) => (index + 1) * 1e-4)

test('a loop made from known figures gives them back, with where the valve helps itself', () => {
  assert(
    property(
      double({ min: 50, max: 600, noNaN: true }),
      double({ min: 1e4, max: 2e5, noNaN: true }),
      double({ min: 5e6, max: 5e7, noNaN: true }),
      (cracking, stiffness, assist) => {
        const pressure = flows.map((q) => -(cracking + stiffness * q) + assist * q * q)
        const found = fittedAssist({ flow: flows, pressure })
        expect(found.crackingPressure / cracking).toBeCloseTo(1, 6)
        expect(found.stiffness / stiffness).toBeCloseTo(1, 6)
        expect(found.assist / assist).toBeCloseTo(1, 6)
        expect((found.turningFlow as number) / (stiffness / (2 * assist))).toBeCloseTo(1, 6)
        const q = found.positiveFrom as number
        expect((assist * q * q - stiffness * q - cracking) / cracking).toBeCloseTo(0, 5)
      },
    ),
  )
})

test('with the cracking pressure from the bench two points are enough; a valve without assist has no flow at which it helps itself', () => {
  const bench = { crackingPressure: difference(3, millibar) }
  const found = fittedAssist({ flow: [0.001, 0.003], pressure: [-400, -700] }, bench)
  expect(found.positiveFrom).toBeUndefined()
  expect(found.assist).toBeLessThan(0)
  const fitted = (q: number) => -(300 + found.stiffness * q) + found.assist * q * q
  expect([fitted(0.001), fitted(0.003)].map((p) => p.toFixed(6))).toEqual(['-400.000000', '-700.000000'])
})

test.each([
  ['two points for three figures', { flow: [0.001, 0.002], pressure: [-1, -2] }, 'input'],
  ['columns of two lengths', { flow: [0.001, 0.002, 0.003], pressure: [-1, -2] }, 'input'],
  ['a flow of nothing', { flow: [0, 0.002, 0.003], pressure: [-1, -2, -3] }, 'input'],
  ['one flow three times', { flow: [0.002, 0.002, 0.002], pressure: [-1, -2, -3] }, 'input'],
  ['a missing pressure', { flow: [0.001, 0.002, 0.003], pressure: [-1, Number.NaN, -3] }, 'range'],
])('%s is refused', (_, inhalation, code) => {
  expect(() => fittedAssist(inhalation)).toThrow(expect.objectContaining({ code }))
})

test('a share of seventy and a diaphragm of no size are refused by name', () => {
  expect(() => crackingPressure({ ...valve, balancedShare: 70 as Fraction }, difference(9, bar))).toThrow(
    expect.objectContaining({ code: 'range', argument: 'valve.balancedShare' }),
  )
  const none = { ...valve, diaphragmArea: measure(0, squareMillimetre) }
  expect(() => crackingPressure(none, difference(9, bar))).toThrow(
    expect.objectContaining({ code: 'range', argument: 'valve.diaphragmArea' }),
  )
})
