import { assert, constantFrom, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  droop,
  effectiveArea,
  type FirstStage,
  imbalance,
  lockUp,
  sealedChamberPressure,
  staticIntermediatePressure,
} from '../../../src/regulator-performance/index.ts'
import {
  type Area,
  absolute,
  bar,
  difference,
  type Fraction,
  inUnit,
  measure,
  millimetre,
  newton,
  newtonPerMillimetre,
  squareMillimetre,
} from '../../../src/units/index.ts'

const area = (n: number) => measure(n, squareMillimetre)
const force = (n: number) => measure(n, newton)
const surface = absolute(1, bar)

const piston: FirstStage = {
  kind: 'balanced piston',
  springForce: force(325),
  headArea: area(380),
  stemArea: area(38.5),
  edgeArea: area(37.4),
}
const unbalanced: FirstStage = {
  kind: 'unbalanced piston',
  springForce: force(330),
  headArea: area(380),
  stemArea: area(38.5),
  seatArea: area(3.8),
}
const diaphragm: FirstStage = {
  kind: 'diaphragm',
  springForce: force(500),
  poppetSpringForce: force(15),
  diaphragmArea: area(500),
  seatArea: area(12.6),
  balanceArea: area(11.3),
}
const stages = [piston, unbalanced, diaphragm]

test('the static pressure balances all forces on the moving part', () => {
  // second route: sum of the forces on piston or poppet, with every area counted by itself
  const supply = 200e5
  const ambient = 1e5
  for (const stage of stages) {
    const over = staticIntermediatePressure(stage, absolute(200, bar), surface).intermediatePressure
    const between = over + ambient
    const opening =
      stage.kind === 'diaphragm'
        ? stage.springForce -
          stage.poppetSpringForce +
          ambient * stage.diaphragmArea -
          between * (stage.diaphragmArea - stage.seatArea) -
          supply * stage.seatArea +
          supply * stage.balanceArea -
          between * stage.balanceArea
        : stage.kind === 'unbalanced piston'
          ? stage.springForce +
            ambient * (stage.headArea - stage.stemArea) +
            supply * stage.seatArea -
            between * (stage.headArea - stage.stemArea + stage.seatArea)
          : stage.springForce +
            ambient * (stage.headArea - stage.stemArea) +
            supply * (stage.stemArea - stage.edgeArea) -
            between * (stage.headArea - stage.edgeArea)
    expect(Math.abs(opening) / stage.springForce, stage.kind).toBeLessThan(1e-12)
  }
})

test('a stage with an open chamber keeps its pressure over ambient when supply and ambient rise together', () => {
  assert(
    property(
      constantFrom(...stages),
      double({ min: 30, max: 250, noNaN: true }),
      double({ min: 0, max: 20, noNaN: true }),
      (stage, supply, deeper) => {
        const at = (by: number) =>
          staticIntermediatePressure(stage, absolute(supply + by, bar), absolute(1 + by, bar)).intermediatePressure
        expect(at(deeper)).toBeCloseTo(at(0), 3)
      },
    ),
  )
})

test('two readings give back the sensitivity of the stage that made them', () => {
  for (const stage of stages) {
    const read = (supply: number) => ({
      supplyPressure: absolute(supply, bar),
      intermediatePressure: staticIntermediatePressure(stage, absolute(supply, bar), surface).intermediatePressure,
    })
    const found = imbalance([read(200), read(50)], area(350), difference(0.01, bar))
    const { supplySensitivity } = staticIntermediatePressure(stage, absolute(100, bar), surface)
    expect(found.supplySensitivity).toBeCloseTo(supplySensitivity, 10)
    expect(found.meaning).toBe(
      stage.kind === 'diaphragm' ? 'rises as the cylinder empties' : 'falls as the cylinder empties',
    )
  }
})

test('a change smaller than a step of the gauge counts as balanced', () => {
  const read = (supply: number, over: number) => ({
    supplyPressure: absolute(supply, bar),
    intermediatePressure: difference(over, bar),
  })
  expect(imbalance([read(200, 9.5), read(50, 9.45)], area(350), difference(0.1, bar)).meaning).toBe('balanced')
})

test('readings at one supply pressure are refused, whatever they show', () => {
  const reading = { supplyPressure: absolute(200, bar), intermediatePressure: difference(9.5, bar) }
  expect(() => imbalance([reading, reading], area(350), difference(0.1, bar))).toThrow(
    expect.objectContaining({ code: 'input' }),
  )
})

test('lock-up and droop follow from force, stiffness and effective area', () => {
  // 20 N on 342.6 mm², and 25 N/mm × 0.5 mm on the same
  expect(inUnit(lockUp(force(20), piston), bar)).toBeCloseTo(200 / 342.6, 10)
  const opening = { springRate: measure(25, newtonPerMillimetre), lift: measure(0.5, millimetre) }
  expect(inUnit(droop(opening, piston), bar)).toBeCloseTo(125 / 342.6, 10)
})

test('a transmitter of equal areas leaves the pressure over ambient alone, a larger one gains on the depth', () => {
  const at = (ratio: number) => sealedChamberPressure(difference(9.5, bar), ratio as Fraction, difference(4, bar))
  expect(at(1)).toBe(difference(9.5, bar))
  expect(inUnit(at(1.12), bar)).toBeCloseTo(9.98, 10)
})

test('forces and areas that give no pressure are refused', () => {
  const weak = { ...piston, springForce: force(0), stemArea: area(30) }
  expect(() => staticIntermediatePressure(weak, absolute(200, bar), surface)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'intermediate pressure' }),
  )
  const swapped = { ...piston, headArea: piston.stemArea, edgeArea: piston.headArea }
  expect(() => staticIntermediatePressure(swapped, absolute(200, bar), surface)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'stage' }),
  )
  const nothing = { ...piston, headArea: Number.NaN as Area }
  expect(() => staticIntermediatePressure(nothing, absolute(200, bar), surface)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'stage.headArea' }),
  )
})

test('a gauge pressure is no supply pressure', () => {
  // @ts-expect-error a difference where an absolute pressure belongs
  staticIntermediatePressure(piston, difference(200, bar), surface)
  staticIntermediatePressure(piston, absolute(200, bar), surface)
})

test.each(stages)('$kind: lock-up and droop need no more than the effective area', (stage) => {
  const effective = effectiveArea(stage)
  const opening = { springRate: measure(50, newtonPerMillimetre), lift: measure(0.1, millimetre) }
  expect(lockUp(force(10), effective)).toBe(lockUp(force(10), stage))
  expect(droop(opening, effective)).toBe(droop(opening, stage))
  expect(() => lockUp(force(10), 0 as Area)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'effectiveArea' }),
  )
  expect(() => lockUp(force(10), Number.NaN as Area)).toThrow(expect.objectContaining({ code: 'range' }))
})

test.each(['piston', 'constructor', 'Diaphragm', undefined])('a stage of kind %s is refused by name', (kind) => {
  const wrong = { ...piston, kind } as never
  const opening = { springRate: measure(50, newtonPerMillimetre), lift: measure(0.1, millimetre) }
  const named = expect.objectContaining({ name: 'LitrebarError', code: 'input', argument: 'stage.kind' })
  expect(() => staticIntermediatePressure(wrong, absolute(200, bar), surface)).toThrow(named)
  expect(() => lockUp(force(1), wrong)).toThrow(named)
  expect(() => droop(opening, wrong)).toThrow(named)
})

test('a stage with a key too many or too few is refused, and an imbalance from one reading', () => {
  expect(() => effectiveArea({ ...piston, steamArea: area(1) } as never)).toThrow(
    expect.objectContaining({ argument: 'stage.steamArea', hint: 'Did you mean stemArea?' }),
  )
  const without = { ...piston, edgeArea: undefined }
  expect(() => effectiveArea(without as never)).toThrow(expect.objectContaining({ argument: 'stage.edgeArea' }))
  const reading = { supplyPressure: absolute(200, bar), intermediatePressure: difference(9.3, bar) }
  for (const readings of [[], [reading], [reading, reading, reading], undefined]) {
    expect(() => imbalance(readings as never, area(500), difference(0.1, bar))).toThrow(
      expect.objectContaining({ name: 'LitrebarError', code: 'input', argument: 'readings' }),
    )
  }
})
