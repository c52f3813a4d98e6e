import { expect, test } from 'vitest'
import { unfilledDrySuit } from '../../src/buoyancy/index.ts'
import {
  absolute,
  bar,
  gasVolumeOf,
  inUnit,
  kilogramForce,
  kilogramPerCubicMetre,
  litre,
  measure,
} from '../../src/units/index.ts'

const water = { density: measure(1000, kilogramPerCubicMetre) }
const suit = { gasVolume: gasVolumeOf(10, litre), filledAt: absolute(1, bar), loft: gasVolumeOf(6, litre) }

test('without gas the suit halves at twice the pressure, and loses half its lift', () => {
  const { gasVolume, lift, missing, isSqueezed } = unfilledDrySuit(suit, absolute(2, bar), water)
  expect(inUnit(gasVolume, litre)).toBeCloseTo(5, 12)
  expect(inUnit(lift, kilogramForce)).toBeCloseTo(5, 12)
  expect(inUnit(missing, litre)).toBeCloseTo(1, 12)
  expect(isSqueezed).toBe(true)
})

test('the squeeze begins just beyond the pressure stated', () => {
  const { squeezeFrom } = unfilledDrySuit(suit, absolute(1, bar), water)
  expect(unfilledDrySuit(suit, absolute(squeezeFrom / 1e5 - 1e-6, bar), water).isSqueezed).toBe(false)
  expect(unfilledDrySuit(suit, absolute(squeezeFrom / 1e5 + 1e-6, bar), water).isSqueezed).toBe(true)
})

test('a suit without gas is refused', () => {
  expect(() => unfilledDrySuit({ ...suit, gasVolume: gasVolumeOf(0, litre) }, absolute(2, bar), water)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'suit.gasVolume' }),
  )
})
