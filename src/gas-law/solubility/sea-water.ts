import { requireKeys, requireWord } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  atmosphere,
  bar,
  celsius,
  type Fraction,
  type MolarDensity,
  one,
  type PracticalSalinity,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { airSaturationTable, bunsenTable, type SeaDissolvedGas } from './sea-water.table.ts'

const temperatureRange: Accepted = {
  atLeast: -1,
  atMost: 40,
  unit: celsius,
  code: 'outside-validity',
  hint: 'The equations hold from -1 to 40 °C; for hot water use henryConstant().',
}
const salinityRange: Accepted = {
  atLeast: 0,
  atMost: 40,
  unit: one,
  code: 'outside-validity',
  hint: 'Give the practical salinity: fresh water 0, open ocean 35.',
}
const pressureRange: Accepted = {
  atLeast: 0,
  atMost: 50,
  unit: bar,
  hint: 'Give the partial pressure of the gas, absolute; beyond 50 bar solubility falls off by 5 %.',
}

/** Water that a gas dissolves in. */
export interface DissolvingWater {
  readonly temperature: Temperature
  readonly salinity: PracticalSalinity
}

/**
 * Bunsen coefficient: the volume of a gas, at 0 °C and 1 atm, that a volume of water takes up under one atmosphere of that gas.
 * Within 0.5 % of the best air measurements. Sea water takes up a fifth less than fresh.
 *
 * @param gas - oxygen, nitrogen, argon or helium
 * @param water - temperature, K, -1 to 40 °C; practical salinity, 0 to 40
 * @returns volume of gas per volume of water, under 1 atm
 * @throws LitrebarError `outside-validity`, naming the field, out of range; `input` for another gas
 * @source weiss-1970, weiss-1971, equation for the Bunsen coefficient; hamme-emerson-2004 for nitrogen
 * @example
 * const water = { temperature: temperatureOf(20, celsius), salinity: practicalSalinityOf(0) }
 * bunsenCoefficient('oxygen', water).toFixed(5) // => '0.03105'
 */
export function bunsenCoefficient(gas: SeaDissolvedGas, water: DissolvingWater): Fraction {
  requireKeys('water', water, { temperature: true, salinity: true })
  requireWord('gas', gas, Object.keys(bunsenTable) as SeaDissolvedGas[])
  requireWater(water)
  const { a, b, factor } = bunsenTable[gas]
  const t = water.temperature / 100
  const log = a[0] + a[1] / t + a[2] * Math.log(t) + saltOf(b, t) * water.salinity
  return (factor * Math.exp(log)) as Fraction
}

/**
 * Concentration of a gas dissolved in water, in balance with its partial pressure.
 *
 * @param gas - oxygen, nitrogen, argon or helium
 * @param water - temperature, K, -1 to 40 °C; practical salinity, 0 to 40; partial pressure of the gas, absolute, Pa, 0 to 50 bar
 * @returns concentration, mol/m³
 * @throws LitrebarError `outside-validity` or `range`, naming the field; `input` for another gas
 * @source weiss-1970, weiss-1971, equation for the Bunsen coefficient
 * @example
 * const water = { temperature: temperatureOf(10, celsius), salinity: practicalSalinityOf(35), partialPressure: absolute(1, bar) }
 * dissolvedConcentration('nitrogen', water).toFixed(3) // => '0.659'
 */
export function dissolvedConcentration(
  gas: SeaDissolvedGas,
  water: DissolvingWater & { readonly partialPressure: AbsolutePressure },
): MolarDensity {
  requireKeys('water', water, { temperature: true, salinity: true, partialPressure: true })
  requireWithin('partialPressure', water.partialPressure, pressureRange)
  const perAtmosphere =
    bunsenCoefficient(gas, { temperature: water.temperature, salinity: water.salinity }) / molarVolume
  return ((perAtmosphere * water.partialPressure) / atmosphere.factor) as MolarDensity
}

/** Of an ideal gas at 0 °C and 1 atm, m³/mol: the volume that Bunsen coefficients count in. */
const molarVolume = 0.022_413_97

/**
 * Volume of a gas that water holds in balance with moist air at one atmosphere: what surface water brings down.
 *
 * @param gas - oxygen, nitrogen or argon
 * @param water - temperature, K, -1 to 40 °C; practical salinity, 0 to 40
 * @returns volume of gas at 0 °C and 1 atm per volume of water; 0.006 is 6 mL/L
 * @throws LitrebarError `outside-validity`, naming the field, out of range; `input` for another gas
 * @source weiss-1970, equation for moist air
 * @example
 * const water = { temperature: temperatureOf(10, celsius), salinity: practicalSalinityOf(35) }
 * const millilitrePerLitre = 1000 * airSaturation('oxygen', water)
 * millilitrePerLitre.toFixed(2) // => '6.32'
 */
export function airSaturation(gas: 'oxygen' | 'nitrogen' | 'argon', water: DissolvingWater): Fraction {
  requireKeys('water', water, { temperature: true, salinity: true })
  requireWord('gas', gas, Object.keys(airSaturationTable) as (typeof gas)[])
  requireWater(water)
  const { a, b } = airSaturationTable[gas]
  const t = water.temperature / 100
  const log = a[0] + a[1] / t + a[2] * Math.log(t) + a[3] * t + saltOf(b, t) * water.salinity
  return (1e-3 * Math.exp(log)) as Fraction
}

function saltOf([b1, b2, b3]: readonly [number, number, number], t: number): number {
  return b1 + (b2 + b3 * t) * t
}

function requireWater({ temperature, salinity }: DissolvingWater): void {
  requireWithin('temperature', temperature, temperatureRange)
  requireWithin('salinity', salinity, salinityRange)
}
