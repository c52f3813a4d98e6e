import { assert, constantFrom, double, property, record } from 'fast-check'
import { expect, test } from 'vitest'
import { bankOrder, bankSequence, equalise } from '../../../src/cylinder/index.ts'
import {
  type ContentsByAbsolutePressure,
  dryAir,
  type GasContents,
  gases,
  gasState,
  type Mixture,
  molarDensity,
  nitrox,
  pureGas,
} from '../../../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  internalVolumeOf,
  inUnit,
  litre,
  temperatureOf,
  toGauge,
} from '../../../src/units/index.ts'
import fixture from '../../fixtures/filling-vectors.json' with { type: 'json' }

const of = (litres: number, bars: number, mixture: Mixture = dryAir, t = 20): ContentsByAbsolutePressure => ({
  internalVolume: internalVolumeOf(litres, litre),
  mixture,
  pressure: absolute(bars, bar),
  temperature: temperatureOf(t, celsius),
})
const isothermal = { heat: 'isothermal' } as const
const adiabatic = { heat: 'adiabatic' } as const
const amountIn = ({ internalVolume, mixture, pressure, temperature }: ContentsByAbsolutePressure): number =>
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
  const energyOf = ({ mixture, pressure, temperature }: ContentsByAbsolutePressure, amount: number): number =>
    amount * gasState(mixture, { pressure, temperature }).molarInternalEnergy
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

test('one cylinder, a pressure below nothing, and a place that the bank does not have are refused', () => {
  expect(() => equalise([of(12, 200)], isothermal)).toThrow(expect.objectContaining({ code: 'input' }))
  const below = { ...of(12, 200), pressure: -1 as never }
  expect(() => equalise([of(12, 200), below], isothermal)).toThrow('cylinders[1].pressure is -0.00001 bar')
  const fill = { receiver: of(12, 20), bank: [of(50, 250)] }
  expect(() => bankSequence(fill, [1])).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => bankSequence(fill, [0, 0])).toThrow(expect.objectContaining({ code: 'input' }))
  // a list has a constructor, which is no cylinder
  expect(() => bankSequence(fill, ['constructor'] as never)).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => bankSequence(fill, [0.5])).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => bankOrder({ ...fill, bank: Array.from({ length: 7 }, () => of(50, 200)) })).toThrow('at most 6')
})

test.each([isothermal, adiabatic])('between evacuated cylinders nothing flows ($heat)', ({ heat }) => {
  const { pressure, cylinders } = equalise([of(12, 0), of(7, 0, nitrox(0.32), 30)], { heat })
  expect(pressure).toBe(0)
  expect(cylinders.map(({ amount, received }) => [amount, received])).toEqual([
    [0, 0],
    [0, 0],
  ])
  expect(inUnit(cylinders[1]?.temperature ?? temperatureOf(0, celsius), celsius)).toBeCloseTo(30, 10)
})

test('an evacuated cylinder takes gas as one at nearly nothing does, with and without heat', () => {
  for (const heat of ['isothermal', 'adiabatic'] as const) {
    const evacuated = equalise([of(50, 250), of(12, 0)], { heat })
    const nearly = equalise([of(50, 250), of(12, 1e-6)], { heat })
    expect(evacuated.pressure / nearly.pressure).toBeCloseTo(1, 7)
    expect((evacuated.cylinders[1]?.temperature ?? 0) / (nearly.cylinders[1]?.temperature ?? 1)).toBeCloseTo(1, 5)
  }
  const both = equalise([of(50, 0), of(12, 0)], isothermal)
  expect([both.pressure, both.cylinders.map(({ amount }) => amount)]).toEqual([0, [0, 0]])
  expect(bankSequence({ receiver: of(12, 0), bank: [of(50, 100)] }, [0]).pressure).toBeGreaterThan(75e5)
  expect(bankOrder({ receiver: of(12, 0), bank: [of(50, 0), of(50, 100)] }).steps).toHaveLength(1)
})

test('a word or key that is none is refused, not read as another', () => {
  const pair = [of(50, 250), of(12, 50)]
  expect(() => equalise(pair, { heat: 'Isothermal' as never })).toThrow("Did you mean 'isothermal'?")
  expect(() => equalise(pair, {} as never)).toThrow('options.heat is missing')
  expect(() => equalise(pair, { ...isothermal, gas: 'Ideal' as never })).toThrow("Did you mean 'ideal'?")
  expect(() => equalise(pair, { ...isothermal, gass: 'ideal' } as never)).toThrow('Did you mean gas?')
  expect(() => equalise([of(50, 250), { ...of(12, 50), presure: 1 } as never], isothermal)).toThrow(
    'Did you mean pressure?',
  )
  expect(() => bankSequence({ receiver: of(12, 20), bank: pair, targett: 1 } as never, [0])).toThrow(
    'Did you mean target?',
  )
})

test('copies of one mixture, as read from JSON, are one gas', () => {
  const copy = (cylinder: ContentsByAbsolutePressure) =>
    JSON.parse(JSON.stringify(cylinder)) as ContentsByAbsolutePressure
  const pair = [of(50, 250), of(12, 50)]
  const joined = equalise(pair.map(copy), isothermal)
  expect(joined).toEqual(equalise(pair, isothermal))
  expect(joined.cautions).toEqual(['fill-limit'])
  // an evacuated cylinder holds no gas to be mixed
  expect(equalise([of(50, 250, nitrox(0.32)), of(12, 0)], isothermal).cautions).toEqual([
    'fill-limit',
    'oxygen-handling',
  ])
})

test('gauge readings with their ambient pressure join as absolute pressures do', () => {
  const byGauge = ({ internalVolume, mixture, pressure, temperature }: ContentsByAbsolutePressure): GasContents => ({
    internalVolume,
    mixture,
    temperature,
    gaugePressure: toGauge(pressure, absolute(1, atmosphere)),
    ambientPressure: absolute(1, atmosphere),
  })
  const pair = [of(50, 250), of(12, 50)]
  const read = equalise(pair.map(byGauge), isothermal)
  expect(read.pressure / equalise(pair, isothermal).pressure).toBeCloseTo(1, 12)
  const receiver = byGauge(of(12, 20))
  const sequence = bankSequence({ receiver, bank: [byGauge(of(50, 250))] }, [0])
  expect(sequence.pressure / bankSequence({ receiver: of(12, 20), bank: [of(50, 250)] }, [0]).pressure).toBeCloseTo(
    1,
    12,
  )
})
