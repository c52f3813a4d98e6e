import { assert, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  dryAir,
  type GasState,
  gasState,
  type Mixture,
  molarDensity,
  nitrox,
  pressureAtDensity,
  pureGas,
  temperatureAtDensity,
  temperatureAtEnthalpy,
  temperatureAtEntropy,
  temperatureAtInternalEnergy,
} from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  inUnit,
  joulePerMole,
  kelvin,
  type MolarDensity,
  measure,
  type Temperature,
  temperatureOf,
} from '../../../src/units/index.ts'
import { anyState } from '../states.ts'

/** The temperature of a state, from each pair that fixes it. */
function foundFrom(gas: Mixture, state: GasState): Readonly<Record<string, Temperature>> {
  const { pressure, molarDensity, molarEnthalpy, molarEntropy, molarInternalEnergy } = state
  return {
    density: temperatureAtDensity(gas, { molarDensity, pressure }),
    enthalpy: temperatureAtEnthalpy(gas, { molarEnthalpy, pressure }),
    entropy: temperatureAtEntropy(gas, { molarEntropy, pressure }),
    'internal energy': temperatureAtInternalEnergy(gas, { molarInternalEnergy, molarDensity }),
  }
}

test('temperature comes back from density, enthalpy, entropy and internal energy, to 1e-11', () => {
  assert(
    property(anyState, ({ gas, pressure, temperature }) => {
      const state = gasState(gas, { pressure, temperature })
      for (const [way, found] of Object.entries(foundFrom(gas, state)))
        expect(Math.abs(found / temperature - 1), way).toBeLessThan(1e-11)
    }),
    { numRuns: 500 },
  )
})

test.each([90, 700])('the end of the range, %s K, is found too', (kelvins) => {
  const gas = pureGas('nitrogen')
  const state = gasState(gas, { pressure: absolute(2, bar), temperature: temperatureOf(kelvins, kelvin) })
  for (const [way, found] of Object.entries(foundFrom(gas, state))) expect(found, way).toBeCloseTo(kelvins, 8)
})

// Computed apart from this code with the same equation: throttling from 232 bar gauge and 20 °C to 10 bar absolute
test.each([
  ['air', dryAir, 232, -16.9],
  ['air', dryAir, 300, -21.5],
  ['oxygen', pureGas('oxygen'), 232, -31.4],
  ['argon', pureGas('argon'), 300, -59.8],
  ['helium', pureGas('helium'), 232, 34.0],
  ['nitrox 32', nitrox(0.32), 232, -18.6],
] as const)('%s throttled from %s bar ends at %s °C', (_, gas, gauge, want) => {
  const before = gasState(gas, { pressure: absolute(gauge + 1.01325, bar), temperature: temperatureOf(20, celsius) })
  const after = temperatureAtEnthalpy(gas, { molarEnthalpy: before.molarEnthalpy, pressure: absolute(10, bar) })
  expect(inUnit(after, celsius)).toBeCloseTo(want, 1)
})

test.each([
  ['air', dryAir, 0, 208.4],
  ['air', dryAir, 50, 267.2],
  ['oxygen', pureGas('oxygen'), 4, 211.5],
  ['helium-free nitrox', nitrox(0.32), 20, 232],
] as const)('%s filled to 232 bar at 20 °C shows at %s °C %s bar', (_, gas, t, want) => {
  const content = molarDensity(gas, absolute(233.01325, bar), temperatureOf(20, celsius))
  const pressure = pressureAtDensity(gas, { molarDensity: content, temperature: temperatureOf(t, celsius) })
  expect(inUnit(pressure, bar) - 1.01325).toBeCloseTo(want, 1)
})

test('what no gas has is refused, not answered', () => {
  const outside = expect.objectContaining({ code: 'outside-validity' })
  const pressure = absolute(10, bar)
  expect(() => temperatureAtEnthalpy(dryAir, { molarEnthalpy: measure(1e6, joulePerMole), pressure })).toThrow(outside)
  expect(() => temperatureAtEnthalpy(dryAir, { molarEnthalpy: measure(-1e6, joulePerMole), pressure })).toThrow(outside)
  expect(() =>
    pressureAtDensity(dryAir, { molarDensity: 60_000 as MolarDensity, temperature: temperatureOf(300, kelvin) }),
  ).toThrow(outside)
})

test('a density between those of gas and liquid carbon dioxide is refused', () => {
  const outside = expect.objectContaining({ code: 'outside-validity' })
  const temperature = temperatureOf(20, celsius)
  const dioxide = pureGas('carbonDioxide')
  // saturated gas has 4410, saturated liquid 17 600 mol/m³
  expect(inUnit(pressureAtDensity(dioxide, { molarDensity: 4300 as MolarDensity, temperature }), bar)).toBeCloseTo(
    56.8,
    1,
  )
  for (const density of [5000, 10_000, 15_000, 18_000, 22_000]) {
    expect(
      () => pressureAtDensity(dioxide, { molarDensity: density as MolarDensity, temperature }),
      `${density}`,
    ).toThrow(outside)
  }
})

test('not a number is refused as such', () => {
  const range = expect.objectContaining({ code: 'range' })
  expect(() =>
    pressureAtDensity(dryAir, { molarDensity: Number.NaN as MolarDensity, temperature: temperatureOf(300, kelvin) }),
  ).toThrow(range)
  expect(() =>
    temperatureAtEnthalpy(dryAir, { molarEnthalpy: Number.NaN as never, pressure: absolute(1, bar) }),
  ).toThrow(range)
})
