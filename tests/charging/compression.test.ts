import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  absolute,
  bar,
  type CompressionPath,
  celsius,
  compression,
  dryAir,
  fractionOf,
  kelvin,
  measure,
  mixture,
  molarMass,
  one,
  temperatureOf,
} from '../../src/index.ts'
import vectors from '../fixtures/charging-vectors.json' with { type: 'json' }
import { off, refused } from './refused.ts'

/** The mixture of the reference program’s mixture columns. */
const referenceAir = mixture({ nitrogen: 0.7812, oxygen: 0.2096, argon: 0.0092 })
const perKilogram = molarMass(referenceAir) * 1000 // J/mol to kJ/kg: divide

interface StageRow {
  readonly inputs: { readonly p1_bar: number; readonly T1_K: number; readonly p2_bar: number }
  readonly value: Readonly<Record<string, number>>
  readonly mixture: { readonly T2: number; readonly w: number; readonly g: number; readonly q: number }
}
const stages = Object.entries(vectors.realAir).filter(([, row]) => row.kind === 'real-air-stage') as unknown as [
  string,
  StageRow,
][]
const gasOf = ({ inputs }: StageRow) => ({
  mixture: referenceAir,
  from: { pressure: absolute(inputs.p1_bar, bar), temperature: temperatureOf(inputs.T1_K, kelvin) },
  to: absolute(inputs.p2_bar, bar),
})

describe('one compression of real air', () => {
  // tolerances of the vectors: 0.3 K, above 1000 K 1 K; work 2e-3 between equations of state
  test.each(stages)(
    '%s agrees with the pseudo-pure air and with the mixture model of the reference program',
    (_, row) => {
      const found = compression(gasOf(row), { process: 'isentropic' })
      const kelvins = (row.value['T2_isentropic_K'] as number) > 1000 ? 1 : 0.3
      for (const temperature of [row.value['T2_isentropic_K'] as number, row.mixture.T2]) {
        expect(Math.abs(found.dischargeTemperature - temperature)).toBeLessThan(kelvins)
      }
      for (const work of [row.value['w_isentropic_kJ_kg'] as number, row.mixture.w]) {
        expect(off(found.molarWork / perKilogram, work)).toBeLessThan(2e-3)
      }
      expect(off(found.molarWork / perKilogram, row.mixture.w)).toBeLessThan(5e-4)
      expect(off(found.isothermalMolarWork / perKilogram, row.mixture.g)).toBeLessThan(5e-4)
      const isothermal = compression(gasOf(row), { process: 'isothermal' })
      expect(off(isothermal.molarHeat / perKilogram, row.mixture.q)).toBeLessThan(5e-4)
      expect(off(isothermal.molarHeat / perKilogram, row.value['q_isothermal_kJ_kg'] as number)).toBeLessThan(2e-3)
    },
  )

  test.each(stages)('%s: ideal on request gives the ideal columns', (_, row) => {
    const ideal = { gas: 'ideal', heatCapacityRatio: 1.4 } as const
    const scale = (8.314462618 / 287.05 / molarMass(referenceAir)) * perKilogram // their gas constant per kilogram
    const found = compression(gasOf(row), { process: 'isentropic' }, ideal)
    expect(off(found.dischargeTemperature, row.value['T2_ideal_K'] as number)).toBeLessThan(2e-6)
    expect(off(found.molarWork / scale, row.value['w_isentropic_ideal_kJ_kg'] as number)).toBeLessThan(3e-6)
    expect(off(found.isothermalMolarWork / scale, row.value['w_isothermal_ideal_kJ_kg'] as number)).toBeLessThan(3e-6)
  })
})

const someGas = fc.record({
  from: fc.double({ min: 0.5, max: 120, noNaN: true }),
  ratio: fc.double({ min: 1.05, max: 4, noNaN: true }),
  warm: fc.double({ min: 0, max: 60, noNaN: true }),
})
const made = ({ from, ratio, warm }: { from: number; ratio: number; warm: number }) => ({
  mixture: dryAir,
  from: { pressure: absolute(from, bar), temperature: temperatureOf(warm, celsius) },
  to: absolute(from * ratio, bar),
})

describe('paths of one compression', () => {
  test('isothermal asks for least, polytropic for more, isentropic for most below n = κ', () => {
    fc.assert(
      fc.property(someGas, (some) => {
        const work = (path: CompressionPath) => compression(made(some), path).molarWork
        const isothermal = work({ process: 'isothermal' })
        const isentropic = work({ process: 'isentropic' })
        expect(work({ process: 'isentropic', efficiency: measure(0.8, one) })).toBeCloseTo(isentropic / 0.8, 6)
        expect(isothermal).toBeLessThan(isentropic)
      }),
      { numRuns: 60 },
    )
  })

  test('a polytropic efficiency of 1 is the isentrope, and its steps add up', () => {
    fc.assert(
      fc.property(someGas, (some) => {
        const gas = made(some)
        const isentropic = compression(gas, { process: 'isentropic' })
        const polytropic = compression(gas, { process: 'polytropic', efficiency: measure(1, one) })
        expect(polytropic.dischargeTemperature).toBeCloseTo(isentropic.dischargeTemperature, 5)
        expect(off(polytropic.molarWork, isentropic.molarWork)).toBeLessThan(1e-7)
        const path = { process: 'polytropic', efficiency: measure(0.8, one) } as const
        const middle = absolute(some.from * Math.sqrt(some.ratio), bar)
        const first = compression({ ...gas, to: middle }, path)
        if (first.dischargeTemperature > 420) return
        const second = compression(
          { ...gas, from: { pressure: middle, temperature: first.dischargeTemperature } },
          path,
        )
        const whole = compression(gas, path)
        expect(second.dischargeTemperature).toBeCloseTo(whole.dischargeTemperature, 5)
        expect(off(first.molarWork + second.molarWork, whole.molarWork)).toBeLessThan(1e-7)
      }),
      { numRuns: 40 },
    )
  })

  test('work is the area under p v along p vⁿ, for real gas as for ideal', () => {
    const gas = made({ from: 40, ratio: 4, warm: 30 })
    const path = { process: 'polytropic', exponent: measure(1.25, one) } as const
    for (const options of [{}, { gas: 'ideal' }] as const) {
      const whole = compression(gas, path, options)
      let sum = 0
      let from: typeof gas.from = gas.from
      const parts = 8
      for (let k = 1; k <= parts; k++) {
        const to = absolute(40 * 4 ** (k / parts), bar)
        const part = compression({ ...gas, from, to }, path, options)
        sum += part.molarWork
        from = { pressure: to, temperature: part.dischargeTemperature }
      }
      expect(off(sum, whole.molarWork)).toBeLessThan(1e-9)
    }
  })
})

test('bad input is refused by its name', () => {
  const gas = made({ from: 1, ratio: 4, warm: 20 })
  const isentropic = { process: 'isentropic' } as const
  expect(refused(() => compression({ ...gas, to: absolute(1, bar) }, isentropic))).toBe('range gas.to')
  expect(refused(() => compression({ ...gas, to: Number.NaN as never }, isentropic))).toBe('range gas.to')
  expect(refused(() => compression(gas, { process: 'Isentropic' } as never))).toBe('input path.process')
  expect(refused(() => compression(gas, { process: 'isentropic', exponent: 1.3 } as never))).toBe('input path.exponent')
  expect(refused(() => compression(gas, { process: 'polytropic' } as never))).toBe('input path.exponent')
  expect(refused(() => compression(gas, { process: 'isothermal', efficiency: 0.9 } as never))).toBe(
    'input path.efficiency',
  )
  expect(refused(() => compression(gas, { ...isentropic, efficiency: measure(1.2, one) }))).toBe(
    'range path.efficiency',
  )
  expect(refused(() => compression(gas, isentropic, { gas: 'Ideal' } as never))).toBe('input options.gas')
  expect(refused(() => compression(gas, isentropic, { gass: 'ideal' } as never))).toBe('input options.gass')
  expect(refused(() => compression({ ...gas, mixtures: dryAir } as never, isentropic))).toBe('input gas.mixtures')
  // @ts-expect-error a mole fraction is no pressure
  expect(refused(() => compression({ ...gas, to: fractionOf(0.5) }, isentropic))).toBe('range gas.to')
})
