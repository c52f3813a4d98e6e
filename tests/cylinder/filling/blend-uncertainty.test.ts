import { expect, test } from 'vitest'
import { blendUncertainty } from '../../../src/cylinder/index.ts'
import { dryAir, nitrox, pureGas, trimix } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  internalVolumeOf,
  litre,
  measure,
  percent,
  temperatureOf,
} from '../../../src/units/index.ts'

const empty = {
  internalVolume: internalVolumeOf(12, litre),
  start: { mixture: dryAir, pressure: absolute(0, bar) },
  steps: [
    { mixture: pureGas('oxygen'), pressure: absolute(28, bar) },
    { mixture: nitrox(0.21), pressure: absolute(200, bar) },
  ],
  temperature: temperatureOf(20, celsius),
}

test('for an ideal gas in an empty cylinder the uncertainty is that of f = f_top + (1 - f_top) p1/p2', () => {
  const { oxygen } = blendUncertainty({ fill: empty, reading: difference(1, bar) }, { gas: 'ideal' })
  expect(oxygen.value).toBeCloseTo(0.21 + (0.79 * 28) / 200, 12)
  expect(oxygen.standardUncertainty / ((0.79 / 200) * Math.hypot(1, 28 / 200))).toBeCloseTo(1, 4)
})

test('a wrong scale of the gauge cancels for an ideal gas and nearly so for a real one', () => {
  const scale = measure(2, percent)
  expect(blendUncertainty({ fill: empty, scale }, { gas: 'ideal' }).oxygen.standardUncertainty).toBeLessThan(1e-12)
  const real = blendUncertainty({ fill: empty, scale }).oxygen.standardUncertainty
  expect(real).toBeGreaterThan(1e-5)
  expect(real).toBeLessThan(1e-3)
})

test('the reading after the oxygen carries nearly all of the uncertainty', () => {
  const { oxygen } = blendUncertainty({ fill: empty, reading: difference(1, bar) })
  const share = oxygen.contributions.find(({ input }) => input === 'pressure of step 1')?.share
  expect(share).toBeGreaterThan(0.95)
  expect(oxygen.linear).toBe(true)
})

test('oxygen that has not settled enriches too little: a kelvin on 28 bar of oxygen is a third of a per cent of it', () => {
  const { oxygen } = blendUncertainty({ fill: empty, temperature: difference(10, celsius) }, { gas: 'ideal' })
  const first = oxygen.contributions.find(({ input }) => input === 'temperature of step 1')
  // n1 = p1 V / (R T1), so d f / d T1 = -(1 - f_top) p1/p2 / T1
  expect((first?.sensitivity ?? 0) / ((-0.79 * 28) / 200 / 293.15)).toBeCloseTo(1, 2)
})

test('what was in the cylinder brings the uncertainty of its analysis along, in proportion to what it is of the fill', () => {
  const topped = {
    ...empty,
    start: { mixture: trimix({ oxygen: 0.21, helium: 0.35 }), pressure: absolute(100, bar) },
    steps: [{ mixture: nitrox(0.21), pressure: absolute(200, bar) }],
  }
  const uncertain = { fill: topped, analyser: measure(1, percent) }
  const { oxygen, helium } = blendUncertainty(uncertain, { gas: 'ideal' })
  expect(oxygen.standardUncertainty).toBeCloseTo(0.005, 6)
  expect(helium.standardUncertainty).toBeCloseTo(0.005, 6)
  expect(helium.value).toBeCloseTo(0.175, 12)
})

test('an uncertainty given in per cent as a plain number is refused', () => {
  expect(() => blendUncertainty({ fill: empty, analyser: measure(1, percent) })).not.toThrow()
  expect(() => blendUncertainty({ fill: empty, scale: measure(200, percent) })).toThrow('scale is 200 %')
})

// Helium and oxygen rest on no measurement of the pair; another equation differs by up to 0.4 points of oxygen in heliox 16/84.
test('the equation itself is a part of the uncertainty, a large one for heliox and hardly any for nitrox', () => {
  const heliox = {
    ...empty,
    steps: [
      { mixture: pureGas('helium'), pressure: absolute(172, bar) },
      { mixture: pureGas('oxygen'), pressure: absolute(200, bar) },
    ],
  }
  const { oxygen } = blendUncertainty({ fill: heliox })
  expect(oxygen.value).toBeCloseTo(0.16, 1)
  expect(oxygen.standardUncertainty).toBeGreaterThan(0.003)
  expect(oxygen.standardUncertainty).toBeLessThan(0.006)
  expect(oxygen.contributions.map(({ input }) => input)).toContain('equation for heliox')
  const nitroxFill = {
    ...empty,
    start: { mixture: dryAir, pressure: absolute(50, bar) },
    steps: [{ mixture: nitrox(0.32), pressure: absolute(200, bar) }],
  }
  // one class throughout: the error is common to both readings, and cancels
  expect(blendUncertainty({ fill: nitroxFill }).oxygen.standardUncertainty).toBeLessThan(2e-5)
  expect(blendUncertainty({ fill: heliox }, { gas: 'ideal' }).oxygen.standardUncertainty).toBe(0)
})
