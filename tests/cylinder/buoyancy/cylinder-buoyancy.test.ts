import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { cylinderBuoyancy, massOfGasTaken } from '../../../src/cylinder/index.ts'
import { dryAir, pureGas } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  displacedVolumeOf,
  gauge,
  internalVolumeOf,
  inUnit,
  kelvin,
  kilogram,
  kilogramPerCubicMetre,
  litre,
  measure,
  pascal,
  temperatureOf,
  toAbsolute,
} from '../../../src/units/index.ts'
import fixture from '../../fixtures/filling-vectors.json' with { type: 'json' }

// Air there is another equation's: 0.1 % of 3 kg.
test.each(fixture.formulas.BUOY)('$in.case: full, at 50 bar and evacuated', ({ in: given, out }) => {
  const cylinder = {
    internalVolume: internalVolumeOf(given.V_L, litre),
    body: { mass: measure(given.m_metal_kg, kilogram), density: measure(given.rho_metal, kilogramPerCubicMetre) },
    attached: [{ mass: measure(given.m_valve_kg, kilogram), density: measure(given.rho_valve, kilogramPerCubicMetre) }],
    waterDensity: measure(given.rho_water, kilogramPerCubicMetre),
    mixture: dryAir,
    temperature: temperatureOf(given.T_C, celsius),
  }
  const at = (bars: number): number => {
    const pressure = bars === 0 ? absolute(0, bar) : toAbsolute(gauge(bars, bar), absolute(1.01325, bar))
    return inUnit(cylinderBuoyancy({ ...cylinder, pressure }), kilogram)
  }
  expect(Math.abs(at(given.P_full_bar) - out.net_full_kg)).toBeLessThan(0.001 * out.m_gas_full_kg)
  expect(Math.abs(at(50) - out.net_at_50bar_kg)).toBeLessThan(0.001)
  expect(Math.abs(at(0) - out.net_empty_kg)).toBeLessThan(1e-5)
})

test.each(fixture.vectors.filter(({ id }) => id.startsWith('B1')))('$id: $title', ({ in: given, out, tolerance }) => {
  const { Vc, p1, p2, T, fluid } = given as { Vc: number; p1: number; p2: number; T: number; fluid: string }
  const taken = {
    internalVolume: internalVolumeOf(Vc, litre),
    mixture: fluid === 'Air' ? dryAir : pureGas(fluid === 'Helium' ? 'helium' : 'oxygen'),
    temperature: temperatureOf(T, kelvin),
    from: absolute(p1, pascal),
    to: absolute(p2, pascal),
  }
  const { dm, dm_ideal: ideal } = out as { dm: number; dm_ideal: number }
  expect(Math.abs(massOfGasTaken(taken) / dm - 1)).toBeLessThan(tolerance)
  // the ideal figures rest on other molar masses, some 1e-5 off
  expect(massOfGasTaken(taken, { gas: 'ideal' }) / ideal).toBeCloseTo(1, 4)
})

const steel = {
  internalVolume: internalVolumeOf(12, litre),
  body: { mass: measure(14.5, kilogram), density: measure(7850, kilogramPerCubicMetre) },
  waterDensity: measure(1025, kilogramPerCubicMetre),
  mixture: dryAir,
  temperature: temperatureOf(15, celsius),
}

test('what a cylinder gains in buoyancy is the mass of the gas taken, in any water', () => {
  assert(
    property(double({ min: 995, max: 1040, noNaN: true }), double({ min: 1, max: 199, noNaN: true }), (rho, bars) => {
      const cylinder = { ...steel, waterDensity: measure(rho, kilogramPerCubicMetre) }
      const from = absolute(200, bar)
      const to = absolute(bars, bar)
      const gain = cylinderBuoyancy({ ...cylinder, pressure: to }) - cylinderBuoyancy({ ...cylinder, pressure: from })
      const { internalVolume, mixture, temperature } = cylinder
      expect(gain).toBeCloseTo(massOfGasTaken({ internalVolume, mixture, temperature, from, to }), 10)
    }),
    { numRuns: 30 },
  )
})

test('a displaced volume measured as a whole gives the same as mass and density', () => {
  const outside = displacedVolumeOf(12 + (1000 * 14.5) / 7850, litre)
  const measured = { ...steel, body: { mass: measure(14.5, kilogram), displacedVolume: outside } }
  const pressure = absolute(200, bar)
  expect(cylinderBuoyancy({ ...measured, pressure })).toBeCloseTo(cylinderBuoyancy({ ...steel, pressure }), 12)
})

test('volumes that contradict each other are refused', () => {
  const pressure = absolute(200, bar)
  for (const litres of [11.5, 12.0001, 40]) {
    const body = { mass: measure(14.5, kilogram), displacedVolume: displacedVolumeOf(litres, litre) }
    expect(() => cylinderBuoyancy({ ...steel, body, pressure })).toThrow(expect.objectContaining({ code: 'input' }))
  }
})

test('types: a body is given by density or by displaced volume, not both', () => {
  const pressure = absolute(200, bar)
  const displacedVolume = displacedVolumeOf(13.85, litre)
  expect(cylinderBuoyancy({ ...steel, pressure })).toBeLessThan(0)
  // @ts-expect-error two ways at once
  expect(cylinderBuoyancy({ ...steel, body: { ...steel.body, displacedVolume }, pressure })).toBeLessThan(0)
  expect(() => cylinderBuoyancy({ ...steel, waterDensity: measure(1.025, kilogramPerCubicMetre), pressure })).toThrow(
    'waterDensity is 1.025 kg/m³',
  )
})
