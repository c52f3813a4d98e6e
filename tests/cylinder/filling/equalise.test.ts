import { assert, constantFrom, double, property, record } from 'fast-check'
import { expect, test } from 'vitest'
import { bankOrder, bankSequence, equalise, type JoinedCylinder } from '../../../src/cylinder/index.ts'
import { dryAir, gases, gasState, type Mixture, molarDensity, nitrox, pureGas } from '../../../src/gas-law/index.ts'
import { absolute, bar, celsius, internalVolumeOf, inUnit, litre, temperatureOf } from '../../../src/units/index.ts'
import fixture from '../../fixtures/filling-vectors.json' with { type: 'json' }

const of = (litres: number, bars: number, mixture: Mixture = dryAir, t = 20): JoinedCylinder => ({
  internalVolume: internalVolumeOf(litres, litre),
  mixture,
  pressure: absolute(bars, bar),
  temperature: temperatureOf(t, celsius),
})
const isothermal = { heat: 'isothermal' } as const
const adiabatic = { heat: 'adiabatic' } as const
const amountIn = ({ internalVolume, mixture, pressure, temperature }: JoinedCylinder): number =>
  internalVolume * molarDensity(mixture, pressure, temperature)

// Ideal by p = ΣpV/ΣV; real by another equation for air.
test.each(fixture.vectors.filter(({ id }) => id.startsWith('H10')))('$id: $title', ({ in: given, out, tolerance }) => {
  const { V: volumes = [], p: pressures = [] } = given as { V?: number[]; p?: number[] }
  const cylinders = volumes.map((litres, k) => of(litres, pressures[k] ?? Number.NaN))
  const expected = out as { p_ideal: number; p_real_air: number }
  expect(inUnit(equalise(cylinders, { ...isothermal, gas: 'ideal' }).pressure, bar)).toBeCloseTo(expected.p_ideal, 10)
  expect(Math.abs(inUnit(equalise(cylinders, isothermal).pressure, bar) / expected.p_real_air - 1)).toBeLessThan(
    tolerance,
  )
})

// Closed form, ideal gas.
test.each(fixture.vectors.filter(({ id }) => id.startsWith('H11')))('$id: $title', ({ in: given, out }) => {
  const {
    banks_L_bar: banks = [],
    Vc = 0,
    p = 0,
  } = given as { banks_L_bar?: [number, number][]; Vc?: number; p?: number }
  const expected = out as { p_final: number; bank_after: number[] }
  const fill = { receiver: of(Vc, p), bank: banks.map(([litres, bars]) => of(litres, bars)) }
  const sequence = bankSequence(fill, [...banks.keys()], { gas: 'ideal' })
  expect(inUnit(sequence.pressure, bar) / expected.p_final).toBeCloseTo(1, 12)
  for (const [k, after] of expected.bank_after.entries()) {
    expect(inUnit(sequence.bankPressures[k] ?? absolute(0, bar), bar) / after).toBeCloseTo(1, 12)
  }
})

const anyCylinder = record({
  litres: double({ min: 1, max: 60, noNaN: true }),
  bars: double({ min: 20, max: 280, noNaN: true }),
  mixture: constantFrom(dryAir, pureGas('helium'), nitrox(0.5)),
  t: double({ min: 0, max: 30, noNaN: true }),
}).map(({ litres, bars, mixture, t }) => of(litres, bars, mixture, t))

test('nothing is made or lost, and the common pressure lies between the pressures', () => {
  assert(
    property(anyCylinder, anyCylinder, anyCylinder, (first, second, third) => {
      const cylinders = [first, second, third]
      const joined = equalise(cylinders, isothermal)
      const total = cylinders.reduce((sum, cylinder) => sum + amountIn(cylinder), 0)
      for (const gas of gases) {
        const before = cylinders.reduce((sum, cylinder) => sum + amountIn(cylinder) * cylinder.mixture[gas], 0)
        const after = joined.cylinders.reduce((sum, { amount, mixture }) => sum + amount * mixture[gas], 0)
        expect(Math.abs(after - before)).toBeLessThan(1e-12 * total)
      }
      const pressures = cylinders.map(({ pressure }): number => pressure)
      expect(joined.pressure).toBeGreaterThanOrEqual(Math.min(...pressures))
      expect(joined.pressure).toBeLessThanOrEqual(Math.max(...pressures))
    }),
    { numRuns: 15 },
  )
})

test('each state afterwards is one of the equation, at the common pressure', () => {
  const joined = equalise([of(50, 250, pureGas('helium')), of(12, 30, nitrox(0.32)), of(12, 60)], isothermal)
  for (const cylinder of joined.cylinders) expect(amountIn(cylinder) / cylinder.amount).toBeCloseTo(1, 10)
  const [giving, poor, rich] = joined.cylinders
  expect(giving?.mixture.helium).toBe(1)
  expect(giving?.received).toBeLessThan(0)
  expect(poor?.mixture.helium).toBeGreaterThan(rich?.mixture.helium ?? 1)
  expect(joined.cautions).toEqual(['fill-limit', 'analyse-mixture', 'oxygen-handling'])
})

test('without heat the energy of all gas stays, the giving cylinder cools and the receiving one warms', () => {
  const energyOf = (cylinder: JoinedCylinder, amount: number): number =>
    amount * gasState(cylinder.mixture, cylinder).molarInternalEnergy
  for (const cylinders of [
    [of(50, 250), of(12, 50)],
    [of(50, 250), of(50, 180), of(12, 20), of(10, 100)],
    [of(50, 250, pureGas('helium')), of(12, 30, nitrox(0.32))],
  ]) {
    const joined = equalise(cylinders, adiabatic)
    const total = cylinders.reduce((sum, cylinder) => sum + amountIn(cylinder), 0)
    const before = cylinders.reduce((sum, cylinder) => sum + energyOf(cylinder, amountIn(cylinder)), 0)
    const after = joined.cylinders.reduce((sum, cylinder) => sum + energyOf(cylinder, cylinder.amount), 0)
    expect(Math.abs(after - before) / total).toBeLessThan(1e-6)
    expect(joined.cylinders.reduce((sum, { received }) => sum + received, 0) / total).toBeCloseTo(0, 12)
    for (const { received, temperature } of joined.cylinders) {
      if (received < 0) expect(temperature).toBeLessThan(temperatureOf(20, celsius))
      else expect(temperature).toBeGreaterThan(temperatureOf(20, celsius))
    }
    // what was warmed falls further once it settles: less has passed than with heat
    const slow = equalise(cylinders, isothermal)
    expect(joined.cylinders[0]?.received).toBeGreaterThan(slow.cylinders[0]?.received ?? 0)
  }
})

test('an ideal gas ends at the same pressure with heat and without', () => {
  const cylinders = [of(50, 250), of(12, 50)]
  const slow = equalise(cylinders, { ...isothermal, gas: 'ideal' })
  const fast = equalise(cylinders, { ...adiabatic, gas: 'ideal' })
  expect(fast.pressure / slow.pressure).toBeCloseTo(1, 10)
})

test('cylinders at one pressure exchange nothing', () => {
  const joined = equalise([of(50, 200), of(12, 200, nitrox(0.32))], isothermal)
  expect(joined.cylinders.map(({ received }) => received)).toEqual([0, 0])
})

test('the best order of a bank is low to high, and it leaves the full cylinder fullest', () => {
  const fill = { receiver: of(12, 20), bank: [of(50, 250), of(50, 100), of(50, 180)] }
  const best = bankOrder(fill)
  expect(best.order).toEqual([1, 2, 0])
  const target = { ...fill, target: absolute(200, bar) }
  const toTarget = bankOrder(target)
  expect(toTarget.order).toEqual([1, 2, 0])
  expect(inUnit(toTarget.pressure, bar)).toBeCloseTo(200, 9)
  expect(toTarget.stillAbove).toBeGreaterThan(bankSequence(target, [0, 1, 2]).stillAbove)
  const given = toTarget.steps.reduce((sum, { amount }) => sum + amount, 0)
  const received = amountIn({ ...fill.receiver, pressure: toTarget.pressure }) - amountIn(fill.receiver)
  expect(given / received).toBeCloseTo(1, 12)
})

test('one cylinder, a vacuum, and a place that the bank does not have are refused', () => {
  expect(() => equalise([of(12, 200)], isothermal)).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => equalise([of(12, 200), of(12, 0)], isothermal)).toThrow('cylinders[1].pressure is 0 bar')
  const fill = { receiver: of(12, 20), bank: [of(50, 250)] }
  expect(() => bankSequence(fill, [1])).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => bankSequence(fill, [0, 0])).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => bankOrder({ ...fill, bank: Array.from({ length: 7 }, () => of(50, 200)) })).toThrow('at most 6')
})
