import { unit as generalUnit } from 'mathjs'
import { expect, test } from 'vitest'
import * as units from '../../src/units/index.ts'
import { celsius, fahrenheit, inUnit, kelvin, rankine, temperatureOf, type Unit } from '../../src/units/index.ts'

// A general-purpose package as a second opinion. Where its constant is exact, ours is the same to the last bits of the arithmetic.
const exact: [Unit, string, string][] = [
  [units.hectopascal, 'hPa', 'Pa'],
  [units.kilopascal, 'kPa', 'Pa'],
  [units.megapascal, 'MPa', 'Pa'],
  [units.bar, 'bar', 'Pa'],
  [units.millibar, 'mbar', 'Pa'],
  [units.atmosphere, 'atm', 'Pa'],
  [units.millimetreOfWater, 'mmH2O', 'Pa'],
  [units.centimetreOfWater, 'cmH2O', 'Pa'],
  [units.technicalAtmosphere, 'kgf/cm^2', 'Pa'],
  [units.litre, 'L', 'm^3'],
  [units.millilitre, 'mL', 'm^3'],
  [units.cubicInch, 'in^3', 'm^3'],
  [units.cubicFoot, 'cuft', 'm^3'],
  [units.usGallon, 'gal', 'm^3'],
  [units.gram, 'g', 'kg'],
  [units.pound, 'lbm', 'kg'],
  [units.ounce, 'oz', 'kg'],
  [units.grain, 'grain', 'kg'],
  [units.tonne, 'tonne', 'kg'],
  [units.inch, 'in', 'm'],
  [units.foot, 'ft', 'm'],
  [units.yard, 'yd', 'm'],
  [units.minute, 'minute', 's'],
  [units.hour, 'hour', 's'],
  [units.day, 'day', 's'],
  [units.kilogramForce, 'kgf', 'N'],
  [units.kilogramForceMetre, 'kgf m', 'J'],
  [units.kilowattHour, 'kWh', 'J'],
  [units.squareFoot, 'sqft', 'm^2'],
  [units.squareInch, 'sqin', 'm^2'],
  [units.cubicFootPerMinute, 'cuft/minute', 'm^3/s'],
  [units.litrePerMinute, 'L/minute', 'm^3/s'],
  [units.footPerMinute, 'ft/minute', 'm/s'],
  [units.poundPerCubicFoot, 'lbm/cuft', 'kg/m^3'],
  [units.poundForce, 'lbf', 'N'],
  [units.footPoundForce, 'ft lbf', 'J'],
  [units.poundForcePerSquareFoot, 'lbf/sqft', 'Pa'],
]

// Where it is rounded, so far at most: the rounding of its own printed constant.
const rounded: [Unit, string, string, number][] = [
  [units.psi, 'psi', 'Pa', 6e-11], // 6894.75729276459
  [units.torr, 'torr', 'Pa', 2.8e-6], // 133.322
  [units.millimetreOfMercury, 'mmHg', 'Pa', 3e-6], // 133.322
  [units.horsepower, 'hp', 'W', 6e-11], // 745.6998715386
]

test.each(exact)('$symbol has the factor of %s', (unit, name, base) => {
  expect(Math.abs(ratio(unit, name, base) - 1)).toBeLessThan(5e-16)
})

test.each(rounded)('$symbol differs from %s by the rounding of that constant, %s', (unit, name, base, error) => {
  const off = Math.abs(ratio(unit, name, base) - 1)
  expect(off).toBeLessThan(error)
  expect(off).toBeGreaterThan(error / 2) // else the difference has gone, and the row belongs above
})

test.each([-40, 0, 21.1, 98.6])('%s degrees are the same temperature', (n) => {
  const scales = { degC: celsius, degF: fahrenheit, degR: rankine }
  for (const [name, unit] of Object.entries(scales)) {
    if (name === 'degR' && n <= 0) continue
    const theirs = generalUnit(n, name).toNumber('K')
    expect(Math.abs(inUnit(temperatureOf(n, unit), kelvin) / theirs - 1)).toBeLessThan(5e-16)
  }
})

function ratio(unit: Unit, name: string, base: string): number {
  return generalUnit(`1 ${name}`).toNumber(base) / unit.factor
}
