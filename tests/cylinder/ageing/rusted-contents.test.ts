import { assert, constantFrom, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  breathedOxygenPressure,
  oxygenInRust,
  type RustProductName,
  rustedContents,
  rustMolarMasses,
  rustProducts,
} from '../../../src/cylinder/ageing/index.ts'
import { dryAir, molarDensity, nitrox, pureGas } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  gram,
  internalVolumeOf,
  inUnit,
  litre,
  measure,
  temperatureOf,
} from '../../../src/units/index.ts'

const stored = {
  mixture: dryAir,
  pressure: absolute(21, bar),
  temperature: temperatureOf(15, celsius),
  internalVolume: internalVolumeOf(12, litre),
}
const names = Object.keys(rustProducts) as RustProductName[]

test('the balance of atoms: every product holds the oxygen of gas and water that its formula says', () => {
  // Atoms of iron, oxygen and hydrogen in one formula unit, by hand.
  const formulas = { goethite: [1, 2, 1], hydroxide: [1, 3, 3], haematite: [2, 3, 0], magnetite: [3, 4, 0] } as const
  for (const name of names) {
    const [iron, oxygen, hydrogen] = formulas[name]
    const { ironPerOxygen, waterPerOxygen } = rustProducts[name]
    // Per formula unit: water brings the hydrogen, gas the oxygen that water did not bring.
    const water = hydrogen / 2
    const gas = (oxygen - water) / 2
    expect(ironPerOxygen).toBeCloseTo(iron / gas, 12)
    expect(waterPerOxygen).toBeCloseTo(water / gas, 12)
  }
})

test('little water bounds it: a gram takes an eighteenth of a mole and a half of oxygen', () => {
  const left = rustedContents({ ...stored, water: measure(1, gram), product: 'goethite' })
  expect(left.boundedBy).toBe('water')
  expect(left.oxygenConsumed).toBeCloseTo((1 / 18.015268) * 1.5, 9)
})

test('plenty of water leaves no oxygen, and the pressure falls by about a fifth only', () => {
  const left = rustedContents({ ...stored, water: measure(500, gram), product: 'goethite' })
  expect([left.boundedBy, left.oxygenFraction]).toEqual(['oxygen', 0])
  expect(left.pressure / stored.pressure).toBeCloseTo(1 - 0.2095, 2)
  expect(left.mixture.nitrogen).toBeCloseTo(0.7808 / 0.7905, 12)
  expect(left.cautions).toContain('rust-oxygen')
})

test('where water only carries the reaction, a trace is enough to take all, and none takes nothing', () => {
  for (const product of ['haematite', 'magnetite'] as const) {
    expect(rustedContents({ ...stored, water: measure(0.001, gram), product }).oxygenFraction).toBe(0)
    expect(rustedContents({ ...stored, water: measure(0, gram), product }).oxygenFraction).toBeCloseTo(0.2095, 12)
  }
})

test('oxygen is conserved: what is left and what is bound make up what was there', () => {
  assert(
    property(
      constantFrom(...names),
      double({ min: 0, max: 60, noNaN: true }),
      double({ min: 0.21, max: 0.6, noNaN: true }),
      (product, grams, oxygen) => {
        const mixture = nitrox(oxygen)
        const cylinder = { ...stored, mixture, water: measure(grams, gram), product }
        const left = rustedContents(cylinder)
        const before = stored.internalVolume * molarDensity(mixture, stored.pressure, stored.temperature)
        const after = stored.internalVolume * molarDensity(left.mixture, left.pressure, stored.temperature)
        expect(after * left.oxygenFraction + left.oxygenConsumed).toBeCloseTo(before * oxygen, 8)
        expect(after * left.mixture.nitrogen).toBeCloseTo(before * mixture.nitrogen, 8)
        // Mass balance: rust is iron, oxygen and the water that it bound.
        const boundWater = left.oxygenConsumed * rustProducts[product].waterPerOxygen * rustMolarMasses.water
        expect(left.rustFormed).toBeCloseTo(
          left.ironConsumed + left.oxygenConsumed * rustMolarMasses.oxygen + boundWater,
          12,
        )
        expect(boundWater).toBeLessThanOrEqual((grams / 1000) * (1 + 1e-12))
        if (left.rustFormed > 1e-100) {
          expect(oxygenInRust({ rust: left.rustFormed, product })).toBeCloseTo(left.oxygenConsumed, 10)
        }
      },
    ),
    { numRuns: 60 },
  )
})

test('what is left can be too thin at the surface though not at depth', () => {
  // 16 g of water can bind 1.33 mol of the 2.2 mol of oxygen.
  const left = rustedContents({ ...stored, water: measure(16, gram), product: 'goethite' })
  const at = (pressure: number): number => {
    const breathed = breathedOxygenPressure({
      oxygenFraction: left.oxygenFraction,
      ambientPressure: absolute(pressure, bar),
    })
    return inUnit(breathed, bar)
  }
  expect(at(4)).toBeGreaterThan(0.16)
  expect(at(1)).toBeLessThan(0.16)
})

test('nothing but oxygen and more than enough water leaves no gas to describe', () => {
  const pure = { ...stored, mixture: pureGas('oxygen'), water: measure(5000, gram), product: 'goethite' } as const
  expect(() => rustedContents(pure)).toThrow(expect.objectContaining({ code: 'mixture' }))
  expect(() => rustedContents({ ...stored, water: measure(-1, gram), product: 'goethite' })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'water' }),
  )
})
