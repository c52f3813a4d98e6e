import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { type BlendOrder, blendByMass, planBlend, trimBlend } from '../../../src/cylinder/index.ts'
import { dryAir, molarMass, nitrox, pureGas, trimix } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  fractionOf,
  gram,
  internalVolumeOf,
  inUnit,
  litre,
  measure,
  temperatureOf,
} from '../../../src/units/index.ts'

const order: BlendOrder = {
  internalVolume: internalVolumeOf(12, litre),
  start: { mixture: dryAir, pressure: absolute(0, bar) },
  target: { oxygen: fractionOf(0.32), pressure: absolute(201, bar) },
  gases: [pureGas('oxygen'), dryAir],
  temperature: temperatureOf(20, celsius),
}
const trimixOrder: BlendOrder = {
  ...order,
  target: { oxygen: fractionOf(0.18), helium: fractionOf(0.45), pressure: absolute(201, bar) },
  gases: [pureGas('helium'), pureGas('oxygen'), dryAir],
}
const fine = { resolution: measure(1, gram) }

test('an empty cylinder is brought to 32 % by the masses that a balance by hand gives', () => {
  // Per mole of mixture: y of pure oxygen and 1 - y of air with 20.946 %: y = (0.32 - 0.20946) / (1 - 0.20946).
  const y = (0.32 - dryAir.oxygen) / (1 - dryAir.oxygen)
  const { steps, mixture } = blendByMass(order, fine)
  const [oxygen = 0, air = 0] = steps.map(({ mass }): number => mass)
  expect(oxygen / air).toBeCloseTo((y * 0.0319988) / ((1 - y) * 0.0289655), 4)
  expect(mixture.oxygen).toBeCloseTo(0.32, 12)
})

test('the readings of the scale are the sums of the masses, and the masses those of the amounts', () => {
  let sum = 0
  for (const { mass, reading, amount, mixture } of blendByMass(trimixOrder, fine).steps) {
    sum += mass
    expect(reading).toBeCloseTo(sum, 12)
    expect(mass).toBeCloseTo(amount * molarMass(mixture), 12)
  }
})

test('the mixture and the pressures are those of the same plan by pressure', () => {
  const plan = planBlend(trimixOrder)
  const blend = blendByMass(trimixOrder, fine)
  expect(blend.mixture).toEqual(plan.mixture)
  expect(blend.steps.map(({ pressure }) => pressure)).toEqual(plan.steps.map(({ pressure }) => pressure))
  expect(blend.cautions).toEqual(plan.cautions)
})

test('the uncertainty is that of uniform readings, sampled', () => {
  const resolution = measure(20, gram)
  const blend = blendByMass(trimixOrder, { resolution })
  const masses = blend.steps.map(({ reading }) => reading)
  let seed = 12345
  const uniform = (): number => {
    seed = (seed * 1103515245 + 12345) % 2147483648
    return (seed / 2147483648 - 0.5) * resolution
  }
  const fractions = Array.from({ length: 20_000 }, () => {
    const readings = [0, ...masses].map((reading) => reading + uniform())
    const amounts = blend.steps.map(
      ({ mixture }, k) => ((readings[k + 1] as number) - (readings[k] as number)) / molarMass(mixture),
    )
    const total = amounts.reduce((sum, amount) => sum + amount, 0)
    const of = (gas: 'oxygen' | 'helium'): number =>
      amounts.reduce((sum, amount, k) => sum + amount * (blend.steps[k]?.mixture[gas] ?? 0), 0) / total
    return { oxygen: of('oxygen'), helium: of('helium') }
  })
  for (const [gas, stated] of [
    ['oxygen', blend.oxygenUncertainty],
    ['helium', blend.heliumUncertainty],
  ] as const) {
    const mean = fractions.reduce((sum, made) => sum + made[gas], 0) / fractions.length
    const spread = Math.sqrt(fractions.reduce((sum, made) => sum + (made[gas] - mean) ** 2, 0) / fractions.length)
    // 20 000 trials leave 0.5 % of a standard deviation; the reading of a helium scale is nearly linear
    expect(spread / stated).toBeGreaterThan(0.97)
    expect(spread / stated).toBeLessThan(1.03)
  }
})

test('twice the step of the scale is twice the uncertainty, and nitrox has no helium to be unsure of', () => {
  const one = blendByMass(order, { resolution: measure(5, gram) })
  const two = blendByMass(order, { resolution: measure(10, gram) })
  expect(two.oxygenUncertainty / one.oxygenUncertainty).toBeCloseTo(2, 12)
  expect(one.heliumUncertainty).toBe(0)
})

test.each([0, -0.01, Number.NaN, 1.1])('a scale of %d kg is refused', (resolution) => {
  const options = { resolution: resolution as never }
  expect(() => blendByMass(order, options)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'options.resolution' }),
  )
})

test('a scale whose step is more than all the gas is refused', () => {
  const small = { ...order, internalVolume: internalVolumeOf(0.01, litre) }
  expect(() => blendByMass(small, { resolution: measure(5, gram) })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'options.resolution' }),
  )
})

const missed: BlendOrder = { ...order, start: { mixture: nitrox(0.305), pressure: absolute(190, bar) } }

test('a lean mixture with room above it is brought to its target by adding', () => {
  const trim = trimBlend(missed)
  expect(trim.outcome).toBe('add')
  expect(trim.plan?.mixture.oxygen).toBeCloseTo(0.32, 12)
  expect(trim.plan?.steps.map(({ action }) => action)).toEqual(['add', 'add'])
  expect(trim.cautions).toContain('analyse-mixture')
})

test('a full cylinder has to be drained first, and the reason says how far', () => {
  const trim = trimBlend({ ...missed, start: { mixture: nitrox(0.305), pressure: absolute(201, bar) } })
  expect(trim.outcome).toBe('drain and add')
  expect(trim.plan?.steps[0]?.action).toBe('drain')
  expect(trim.because[0]?.code).toBe('drain-first')
  expect(trim.because[0]?.text).toContain(inUnit(trim.plan?.steps[0]?.pressure ?? absolute(0, bar), bar).toFixed(1))
})

test('what no gas at hand can make is out of reach, with the reason', () => {
  const trim = trimBlend({ ...missed, target: { oxygen: fractionOf(0.18), pressure: absolute(201, bar) } })
  expect([trim.outcome, trim.plan, trim.because[0]?.code]).toEqual(['out of reach', undefined, 'out-of-reach'])
  expect(trim.singleGases).toEqual([])
  expect(trim.cautions).toContain('analyse-mixture')
})

test('one gas alone brings the fraction exactly to its target, by a balance of amounts', () => {
  const { singleGases } = trimBlend(missed)
  const [alone] = singleGases
  expect(singleGases.map(({ gas, of }) => [gas, of])).toEqual([[0, 'oxygen']])
  expect(alone?.mixture.oxygen).toBeCloseTo(0.32, 12)
  // n (1 - 0.32) = held (0.32 - 0.305)
  const held = planBlend({ ...missed, target: { ...missed.target, pressure: absolute(202, bar) } })
  expect(held.amount).toBeGreaterThan(alone?.amount ?? 0)
  expect((alone?.amount ?? 0) * 0.68).toBeCloseTo(
    0.015 * (held.amount - held.steps.reduce((sum, { amount }) => sum + amount, 0)),
    9,
  )
})

test('too rich is diluted with air alone; helium and oxygen each have their single gas', () => {
  const rich = trimBlend({ ...missed, start: { mixture: nitrox(0.34), pressure: absolute(100, bar) } })
  expect(rich.singleGases.map(({ gas, of }) => [gas, of])).toEqual([[1, 'oxygen']])
  const trimixMissed = trimBlend({
    ...trimixOrder,
    start: { mixture: trimix({ oxygen: 0.17, helium: 0.42 }), pressure: absolute(150, bar) },
  })
  expect(trimixMissed.singleGases.map(({ gas, of }) => [gas, of])).toEqual([
    [1, 'oxygen'],
    [2, 'oxygen'],
    [0, 'helium'],
  ])
})

test('an addition beyond the highest pressure of a cylinder is left out', () => {
  const far = trimBlend({
    ...missed,
    start: { mixture: nitrox(0.4), pressure: absolute(190, bar) },
    target: { oxygen: fractionOf(0.215), pressure: absolute(201, bar) },
  })
  expect(far.outcome).toBe('drain and add')
  expect(far.singleGases).toEqual([])
})

test('an evacuated cylinder has nothing to trim', () => {
  expect(() => trimBlend(order)).toThrow(expect.objectContaining({ code: 'range', argument: 'start.pressure' }))
})

test('whatever was analysed, the plan makes the target or says that it cannot', () => {
  assert(
    property(
      double({ min: 0.22, max: 0.6, noNaN: true }),
      double({ min: 20, max: 200, noNaN: true }),
      (oxygen, bars) => {
        const trim = trimBlend({ ...missed, start: { mixture: nitrox(oxygen), pressure: absolute(bars, bar) } })
        if (trim.outcome === 'out of reach') return false
        return Math.abs((trim.plan?.mixture.oxygen ?? 0) - 0.32) < 1e-9
      },
    ),
    { numRuns: 30 },
  )
})
