import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  airThermalConductivity,
  airViscosity,
  dryAir,
  gasState,
  heliox,
  mixture,
  molarMass,
  nitrox,
  pureGas,
  thermalConductivity,
  transportUncertainty,
  trimix,
  viscosity,
} from '../../../src/gas-law/index.ts'
import { pureTransport, type TransportGas } from '../../../src/gas-law/transport/pure.ts'
import { absolute, bar, kelvin, temperatureOf } from '../../../src/units/index.ts'
import fixture from '../../fixtures/transport.json' with { type: 'json' }

const molarMasses: Record<TransportGas, number> = {
  nitrogen: 28.01348,
  oxygen: 31.9988,
  argon: 39.948,
  helium: 4.002602,
  carbonDioxide: 44.0098,
  hydrogen: 2.01588,
  air: 28.96546,
}

type Published = [string, TransportGas, 'viscosity' | 'conductivity', number, string, number, number]
const published = fixture.published.rows as Published[]

function found([, gas, quantity, temperature, unit, value]: Published): number {
  const { diluteViscosity, excessViscosity, diluteConductivity, excessConductivity } = pureTransport[gas]
  const density = unit === 'kg/m3' ? (value / molarMasses[gas]) * 1000 : value
  return quantity === 'viscosity'
    ? diluteViscosity(temperature) + excessViscosity(temperature, density)
    : diluteConductivity(temperature) + excessConductivity(temperature, density)
}

// Points where the conductivity rises towards the critical point, which is left out: the loss, relative, from the published value.
const criticalRise: Record<string, number> = {
  'hydrogen 35 30': 0.22,
  'carbonDioxide 250 1058': 0.005,
  'carbonDioxide 310 400': 0.46,
  'nitrogen 100 25000': 0.004,
  'nitrogen 200 10000': 0.026,
  'nitrogen 126.195 11180': 0.96,
  'argon 100 33000': 0.0006,
  'argon 200 10000': 0.065,
  'argon 300 5000': 0.001,
  'argon 150.69 13400': 0.97,
  'oxygen 200 10000': 0.055,
  'oxygen 300 5000': 0.002,
  'oxygen 154.6 13600': 0.9,
  'air 100 28000': 0.0014,
  'air 200 10000': 0.039,
  'air 132.64 10400': 0.63,
}
const keyOf = ([, gas, quantity, temperature, , value]: Published): string =>
  quantity === 'conductivity' ? `${gas} ${String(temperature)} ${String(value)}` : 'viscosity'

const byDensity = published.filter((row) => row[4] !== 'Pa')
const smooth = byDensity.filter((row) => !(keyOf(row) in criticalRise))

test.each(smooth)('%s: %s, %s at %d K and %s %d is %d, to 2e-5 or its last digit', (...row) => {
  // carbon dioxide at 250 K is printed with four digits, 0.01299 and 0.01305, hydrogen at 18 K with five, 0.10448
  const tolerance = row[1] === 'carbonDioxide' && row[2] === 'conductivity' ? 5.1e-6 / row[6] : 2.6e-5
  expect(Math.abs(found(row) / row[6] - 1)).toBeLessThan(tolerance)
})

test('the rise at the critical point costs what is said of it, and nothing else does', () => {
  const rising = byDensity.filter((row) => keyOf(row) in criticalRise)
  expect(rising).toHaveLength(Object.keys(criticalRise).length)
  for (const row of rising) {
    const loss = 1 - found(row) / row[6]
    expect(loss).toBeGreaterThan(0)
    expect(loss).toBeLessThan(criticalRise[keyOf(row)] ?? 0)
  }
})

// arp-1998, hands-arp-1981: printed to three or four digits, by pressure; the equation of state brings in the rest
test('helium by pressure is as printed to 0.02 % where it is a dilute gas', () => {
  const rows = published.filter((row) => row[4] === 'Pa')
  expect(rows).toHaveLength(7)
  const warm = rows.filter((row) => row[3] >= 300)
  expect(warm).toHaveLength(3)
  for (const [, gas, quantity, temperature, unit, pressure, value] of warm) {
    const density = pressure / (8.314 * temperature)
    const row: Published = ['', gas, quantity, temperature, unit.replace('Pa', 'mol/m3'), density, value]
    expect(Math.abs(found(row) / value - 1)).toBeLessThan(2e-4)
  }
  // The four rows at 20 and 50 K are below what helium is used at here: the form of the gas begins at 100 K.
})

test('195 states of the pure gases are those of an independent program', () => {
  const rows = fixture.pure.rows as [TransportGas, number, number, number, number, number][]
  expect(rows).toHaveLength(195)
  for (const [gas, temperature, pressure, density, eta, lambda] of rows) {
    const molar = (density / molarMasses[gas]) * 1000
    const { diluteViscosity, excessViscosity, diluteConductivity, excessConductivity } = pureTransport[gas]
    const ofViscosity = (diluteViscosity(temperature) + excessViscosity(temperature, molar)) * 1e6
    expect(Math.abs(ofViscosity / eta - 1)).toBeLessThan(1e-5)
    const ofConductivity = (diluteConductivity(temperature) + excessConductivity(temperature, molar)) * 1e3
    // the table has the critical rise in it: 1.7 % of argon and oxygen at 263 K and 200 bar, more of carbon dioxide near its liquid
    const rise = gas === 'carbonDioxide' ? 0.12 : gas === 'argon' || gas === 'oxygen' || gas === 'air' ? 0.017 : 1e-5
    expect(ofConductivity / lambda - 1).toBeLessThan(1e-5)
    expect(ofConductivity / lambda - 1).toBeGreaterThan(-rise)
    if (pressure < 50 && temperature > 290 && gas !== 'carbonDioxide') {
      expect(ofConductivity / lambda - 1).toBeGreaterThan(-7e-4)
    }
  }
})

test('240 states of ten mixtures are those of an independent program to 5e-5, its printed digits', () => {
  let compared = 0
  for (const { fractions, rows } of fixture.mixtures) {
    const gas = mixture(fractions)
    for (const [t, p, eta, lambda, density, heatCapacity] of rows as [
      number,
      number,
      number,
      number,
      number,
      number,
    ][]) {
      const state = { temperature: temperatureOf(t, kelvin), pressure: absolute(p, bar) }
      expect(Math.abs((viscosity(gas, state) * 1e6) / eta - 1)).toBeLessThan(5e-5)
      expect(Math.abs((thermalConductivity(gas, state) * 1e3) / lambda - 1)).toBeLessThan(5e-5)
      const { density: found, isobaricHeatCapacity } = gasState(gas, state)
      expect(Math.abs(found / density - 1)).toBeLessThan(1e-5)
      expect(Math.abs(isobaricHeatCapacity / molarMass(gas) / heatCapacity - 1)).toBeLessThan(1e-5)
      compared++
    }
  }
  expect(compared).toBe(240)
})

test('30 dilute mixtures are those of an independent program to 5e-5', () => {
  let compared = 0
  for (const { fractions, rows } of fixture.dilute) {
    const gas = mixture(fractions)
    for (const [t, eta, lambda] of rows as [number, number, number][]) {
      const state = { temperature: temperatureOf(t, kelvin), pressure: absolute(1e-6, bar) }
      expect(Math.abs((viscosity(gas, state) * 1e6) / eta - 1)).toBeLessThan(5e-5)
      expect(Math.abs((thermalConductivity(gas, state) * 1e3) / lambda - 1)).toBeLessThan(5e-5)
      compared++
    }
  }
  expect(compared).toBe(30)
})

// lemmon-jacobsen-2004: the equation of air against the rule of mixtures; density by GERG-2008 instead of the equation of air
test('air by its own equation is as worked out elsewhere to 5e-4, and the rule of mixtures within the stated uncertainty', () => {
  const rows = fixture.air.rows as [number, number, number, number][]
  expect(rows).toHaveLength(18)
  const stated = transportUncertainty.find((row) => row.of === 'viscosity' && row.gas === 'mixture without helium')
  for (const [t, p, eta, lambda] of rows) {
    const state = { temperature: temperatureOf(t, kelvin), pressure: absolute(p, bar) }
    expect(Math.abs((airViscosity(state) * 1e6) / eta - 1)).toBeLessThan(5e-4)
    expect(Math.abs((airThermalConductivity(state) * 1e3) / lambda - 1)).toBeLessThan(0.005)
    expect(Math.abs((viscosity(dryAir, state) * 1e6) / eta - 1)).toBeLessThan(stated?.relative ?? 0)
    expect(Math.abs((thermalConductivity(dryAir, state) * 1e3) / lambda - 1)).toBeLessThan(0.02)
  }
})

test('a mixture of one gas is that gas', () => {
  const state = { temperature: temperatureOf(290, kelvin), pressure: absolute(50, bar) }
  const nearly = mixture({ nitrogen: 1 - 1e-12, helium: 1e-12 })
  expect(viscosity(nearly, state) / viscosity(pureGas('nitrogen'), state)).toBeCloseTo(1, 10)
  expect(thermalConductivity(nearly, state) / thermalConductivity(pureGas('nitrogen'), state)).toBeCloseTo(1, 10)
})

test('helium makes gas conduct better, whatever it replaces', () => {
  const within = (min: number, max: number) => double({ min, max, noNaN: true })
  assert(
    property(within(0, 0.7), within(230, 350), within(1, 290), (helium, t, p) => {
      const state = { temperature: temperatureOf(t, kelvin), pressure: absolute(p, bar) }
      const less = thermalConductivity(trimix({ oxygen: 0.2, helium }), state)
      const more = thermalConductivity(trimix({ oxygen: 0.2, helium: helium + 0.1 }), state)
      expect(more).toBeGreaterThan(less)
    }),
    { numRuns: 50 },
  )
})

test('viscosity and conductivity run without a step from dilute to dense', () => {
  for (const gas of [dryAir, nitrox(0.5), heliox(0.2)]) {
    let last = 0
    for (let p = 1; p <= 300; p += 1) {
      const state = { temperature: temperatureOf(283, kelvin), pressure: absolute(p, bar) }
      const eta = viscosity(gas, state)
      if (last > 0) expect(Math.abs(eta / last - 1)).toBeLessThan(0.004)
      last = eta
    }
  }
})

test('water in the mixture, a pressure beyond 300 bar and a cold outside the comparison are refused', () => {
  const state = { temperature: temperatureOf(300, kelvin), pressure: absolute(1, bar) }
  expect(() => viscosity(mixture({ nitrogen: 0.78, oxygen: 0.21, water: 0.01 }), state)).toThrow(
    expect.objectContaining({ code: 'mixture', argument: 'mixture.water' }),
  )
  expect(() => viscosity(dryAir, { ...state, pressure: absolute(351, bar) })).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'pressure' }),
  )
  expect(() => thermalConductivity(dryAir, { ...state, temperature: temperatureOf(200, kelvin) })).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'temperature' }),
  )
})

test('the mixture rule stays within its stated uncertainty of the equation of air at 350 bar', () => {
  const stated = transportUncertainty.find(({ of, gas }) => of === 'viscosity' && gas === 'mixture without helium')
  for (const temperature of [220, 250, 293.15, 400].map((t) => temperatureOf(t, kelvin))) {
    const at = { pressure: absolute(350, bar), temperature }
    expect(Math.abs(viscosity(dryAir, at) / airViscosity(at) - 1)).toBeLessThan(stated?.relative ?? 0)
    // lemmon-jacobsen-2004: 5 % of dense air
    expect(Math.abs(thermalConductivity(dryAir, at) / airThermalConductivity(at) - 1)).toBeLessThan(0.05)
  }
})
