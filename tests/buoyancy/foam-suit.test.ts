import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  type FoamSuit,
  foamFacts,
  foamLoss,
  foamModelUncertainty,
  foamVolume,
  gasFractionOfFoam,
} from '../../src/buoyancy/index.ts'
import { pressureAtDepth } from '../../src/environment/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  barLitre,
  depthOf,
  difference,
  displacedVolumeOf,
  type Fraction,
  inUnit,
  kilogram,
  kilogramForce,
  kilogramPerCubicMetre,
  litre,
  measure,
  metre,
  one,
  pascal,
} from '../../src/units/index.ts'

function suitOf(litres: number, gasFraction: number): FoamSuit {
  return {
    mass: measure(3, kilogram),
    displacedVolume: displacedVolumeOf(litres, litre),
    statedAt: absolute(101_325, pascal),
    gasFraction: measure(gasFraction, one),
  }
}

function water(density: number) {
  return { surfacePressure: absolute(101_325, pascal), density: measure(density, kilogramPerCubicMetre) }
}

// engineering vectors C10-1, C10-2
test.each([
  {
    litres: 12,
    phi: 0.75,
    metres: 30,
    density: 1025,
    lost: 6.736481929971677,
    lift: 6.9048939782209695,
    gas: 27.139903875,
  },
  {
    litres: 8,
    phi: 0.7,
    metres: 40,
    density: 1000,
    lost: 4.450424744373377,
    lift: 4.450424744373377,
    gas: 21.966895999999995,
  },
])('C10: $litres L of foam lose $lost L and $lift kg of lift at $metres m', (given) => {
  const column = water(given.density)
  const to = pressureAtDepth({ ...column, depth: depthOf(given.metres, metre) })
  const loss = foamLoss(suitOf(given.litres, given.phi), { from: column.surfacePressure, to }, column)
  expect(inUnit(loss.lostVolume, litre) / given.lost).toBeCloseTo(1, 11)
  expect(inUnit(loss.lostLift, kilogramForce) / given.lift).toBeCloseTo(1, 11)
  expect(inUnit(loss.deviceGas, barLitre) / given.gas).toBeCloseTo(1, 11)
  expect(inUnit(loss.band.low, litre)).toBeCloseTo((1 - foamModelUncertainty) * given.lost, 9)
  expect(inUnit(loss.band.high, litre)).toBeCloseTo((1 + foamModelUncertainty) * given.lost, 9)
})

// An own table of the model for three foams of 1230 kg/m³ rubber in sea water, computed apart; four decimals, water near 1025 kg/m³
test.each([
  [170, [0.7142, 0.5708, 0.4845, 0.4269, 0.3549, 0.3116, 0.2621, 0.2171]],
  [230, [0.7304, 0.5951, 0.5137, 0.4594, 0.3914, 0.3506, 0.3039, 0.2614]],
  [260, [0.7385, 0.6072, 0.5283, 0.4756, 0.4097, 0.3701, 0.3248, 0.2836]],
] as const)('a foam of %d kg/m³ keeps its tabled share of volume down to 100 m', (foam, shares) => {
  const phi = gasFractionOfFoam(measure(foam, kilogramPerCubicMetre), measure(1230, kilogramPerCubicMetre))
  const suit = suitOf(1, phi)
  for (const [i, metres] of [5, 10, 15, 20, 30, 40, 60, 100].entries()) {
    const pressure = pressureAtDepth({ ...water(1025.5), depth: depthOf(metres, metre) })
    // the water of the table is known to 1 kg/m³ only, worth 2e-4 here
    expect(Math.abs(inUnit(foamVolume(suit, pressure), litre) - (shares[i] ?? 0))).toBeLessThan(3e-4)
  }
})

// published fact: about half as thick at about 15 m
test('a usual foam is about half as thick at 15 m, as published', () => {
  const half = inUnit(foamVolume(suitOf(1, 0.83), absolute(2.5, bar)), litre)
  expect(half).toBeCloseTo(0.5, 1)
  expect(foamFacts.map(({ source }) => source)).toContain('bardy-mollendorf-2008')
})

const fraction = double({ min: 0.1, max: 0.9, noNaN: true })

test('foam shrinks with pressure, never below its rubber, and a stiffer one shrinks less', () => {
  assert(
    property(
      fraction,
      double({ min: 1.1, max: 15, noNaN: true }),
      double({ min: 0.01, max: 20, noNaN: true }),
      (phi, p, e) => {
        const suit = suitOf(10, phi)
        const soft = foamVolume(suit, absolute(p, atmosphere))
        expect(soft).toBeLessThan(suit.displacedVolume)
        expect(soft).toBeGreaterThan(suit.displacedVolume * (1 - phi))
        expect(foamVolume(suit, absolute(p + 0.1, atmosphere))).toBeLessThan(soft)
        const stiff = foamVolume({ ...suit, stiffness: difference(e, bar) }, absolute(p, atmosphere))
        expect(stiff).toBeGreaterThan(soft)
        expect(stiff).toBeLessThan(suit.displacedVolume)
        // the balance of pressures that the root comes from
        const r = (stiff / suit.displacedVolume - 1 + phi) / phi
        expect((101_325 / r + e * 1e5 * (1 - r)) / (p * 101_325)).toBeCloseTo(1, 9)
      },
    ),
    { numRuns: 100 },
  )
})

test('at the stated pressure the volume is the stated one, with and without stiffness', () => {
  const suit = suitOf(10, 0.8)
  expect(foamVolume(suit, suit.statedAt) / suit.displacedVolume).toBeCloseTo(1, 14)
  const stiff = { ...suit, stiffness: difference(3, bar) }
  expect(foamVolume(stiff, suit.statedAt) / suit.displacedVolume).toBeCloseTo(1, 12)
})

test('what is no foam is refused with its field', () => {
  expect(() => foamVolume({ ...suitOf(10, 0.8), gasFraction: 80 as Fraction }, absolute(2, bar))).toThrow(
    expect.objectContaining({ code: 'range', argument: 'suit.gasFraction' }),
  )
  expect(() => foamVolume(suitOf(10, 0.8), absolute(0, bar))).toThrow(expect.objectContaining({ argument: 'pressure' }))
  expect(() => gasFractionOfFoam(measure(1300, kilogramPerCubicMetre), measure(1230, kilogramPerCubicMetre))).toThrow(
    expect.objectContaining({ argument: 'foam' }),
  )
  const upwards = { from: absolute(4, bar), to: absolute(1, bar) }
  expect(() => foamLoss(suitOf(10, 0.8), upwards, water(1000))).toThrow(/exchange/)
})
