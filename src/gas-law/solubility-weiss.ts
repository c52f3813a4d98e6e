import { LitrebarError } from '../errors/index.ts'
import type { SourceId } from '../references/sources.ts'
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
} from '../units/index.ts'

/** The gases whose solubility in sea water was measured closely. */
export type SeaDissolvedGas = 'oxygen' | 'nitrogen' | 'argon' | 'helium'

/** Coefficients by temperature (A) and salinity (B), and the factor that later measurements put on them. */
interface BunsenRow {
  readonly a: readonly [number, number, number]
  readonly b: readonly [number, number, number]
  readonly source: SourceId
  readonly place: string
  readonly factor: number
}

/**
 * Bunsen coefficients of the pure gases. From memory, held against two other sets: IAPWS in fresh water, the equations for air in sea water.
 * Nitrogen lies 1 to 1.6 % below the later measurements and carries a factor of 1.013 for them.
 */
export const bunsenTable: Readonly<Record<SeaDissolvedGas, BunsenRow>> = {
  oxygen: {
    a: [-58.3877, 85.8079, 23.8439],
    b: [-0.034892, 0.015568, -0.0019387],
    source: 'weiss-1970',
    place: 'equation for the Bunsen coefficient; from memory',
    factor: 1,
  },
  nitrogen: {
    a: [-59.6274, 85.7661, 24.3696],
    b: [-0.05158, 0.026329, -0.0037252],
    source: 'weiss-1970',
    place: 'equation for the Bunsen coefficient; from memory; factor after hamme-emerson-2004',
    factor: 1.013,
  },
  argon: {
    a: [-55.6578, 82.0262, 22.5929],
    b: [-0.036267, 0.016241, -0.0020114],
    source: 'weiss-1970',
    place: 'equation for the Bunsen coefficient; from memory',
    factor: 1,
  },
  helium: {
    a: [-34.6261, 43.0285, 14.1391],
    b: [-0.04234, 0.022624, -0.003312],
    source: 'weiss-1971',
    place: 'equation for the Bunsen coefficient; from memory',
    factor: 1,
  },
}

/** Coefficients for air at one atmosphere, saturated with vapour: mL of the gas at 0 °C and 1 atm per litre of water. */
export const airSaturationTable: Readonly<
  Record<
    'oxygen' | 'nitrogen' | 'argon',
    {
      readonly a: readonly [number, number, number, number]
      readonly b: readonly [number, number, number]
      readonly source: SourceId
      readonly place: string
    }
  >
> = {
  oxygen: {
    a: [-173.4292, 249.6339, 143.3483, -21.8492],
    b: [-0.033096, 0.014259, -0.0017],
    source: 'weiss-1970',
    place: 'equation for moist air, as carried by ocean routines',
  },
  nitrogen: {
    a: [-172.4965, 248.4262, 143.0738, -21.712],
    b: [-0.049781, 0.025018, -0.0034861],
    source: 'weiss-1970',
    place: 'equation for moist air, as carried by ocean routines',
  },
  argon: {
    a: [-173.5146, 245.451, 141.8222, -21.802],
    b: [-0.034474, 0.014934, -0.0017729],
    source: 'weiss-1970',
    place: 'equation for moist air, as carried by ocean routines',
  },
}

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
  requireGas(gas, bunsenTable)
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
  requireWithin('partialPressure', water.partialPressure, pressureRange)
  const perAtmosphere = bunsenCoefficient(gas, water) / molarVolume
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
  requireGas(gas, airSaturationTable)
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

function requireGas(gas: string, table: object): void {
  if (Object.hasOwn(table, gas)) return
  throw new LitrebarError({
    code: 'input',
    argument: 'gas',
    value: gas,
    expected: `one of ${Object.keys(table).join(', ')}`,
    hint: 'Other gases in fresh water: henryConstant().',
  })
}
