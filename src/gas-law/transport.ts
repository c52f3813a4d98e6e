import { LitrebarError } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  kelvin,
  requireWithin,
  type Temperature,
  type ThermalConductivity,
  type Viscosity,
} from '../units/index.ts'
import { type Gas, gases, molarMasses } from './gas.ts'
import { dryAir, type Mixture } from './mixture.ts'
import { molarDensity } from './molar-density.ts'
import { lennardJones } from './transport-mixture.table.ts'
import { pureTransport } from './transport-pure.ts'

type CarriedGas = Exclude<Gas, 'water'>

const pressureRange: Accepted = {
  above: 0,
  atMost: 300,
  unit: bar,
  code: 'outside-validity',
  hint: 'Give the absolute pressure of the gas, up to 300 bar.',
}
const temperatureRange: Accepted = {
  atLeast: 220,
  atMost: 400,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'The mixture rules were compared from 220 to 400 K.',
}

/**
 * Viscosity of a gas mixture, to 300 bar. Dilute gas by kinetic theory of unlike spheres; what density adds, as each gas alone would
 * add it at the molar density of the mixture. How far to trust it: `transportUncertainty`; for dry air `airViscosity` is nearer.
 *
 * @param mixture - the gas, without water
 * @param state - pressure, absolute, Pa, above 0 and at most 300 bar; temperature, K, 220 to 400
 * @returns dynamic viscosity, Pa·s
 * @throws LitrebarError `outside-validity` outside that range; `mixture` with water in it
 * @source litrebar-derivation, first-order kinetic theory and excess at equal density; pure gases as named in `pureTransport`
 * @example
 * const state = { pressure: absolute(5, bar), temperature: temperatureOf(20, celsius) }
 * inUnit(viscosity(trimix({ oxygen: 0.18, helium: 0.45 }), state), micropascalSecond).toFixed(2) // => '19.80'
 */
export function viscosity(
  mixture: Mixture,
  state: { readonly pressure: AbsolutePressure; readonly temperature: Temperature },
): Viscosity {
  requireState(state)
  const present = carriedGases(mixture)
  const density = molarDensity(mixture, state.pressure, state.temperature)
  const { temperature } = state
  let excess = 0
  for (const gas of present) excess += mixture[gas] * pureTransport[gas].excessViscosity(temperature, density)
  return (diluteMixtureViscosity(mixture, present, temperature) + excess) as Viscosity
}

/**
 * Thermal conductivity of a gas mixture, to 300 bar: how fast it carries heat off a body or a cylinder wall. Helium mixtures carry four to
 * six times what air does. The rise near a critical point is left out, at most 2.2 % (argon at 250 K and 200 bar).
 *
 * @param mixture - the gas, without water
 * @param state - pressure, absolute, Pa, above 0 and at most 300 bar; temperature, K, 220 to 400
 * @returns thermal conductivity, W/(m·K); how far to trust it: `transportUncertainty`
 * @throws LitrebarError `outside-validity` outside that range; `mixture` with water in it
 * @source litrebar-derivation, rule of Wassiljewa with weights of Mason and Saxena, excess at equal density
 * @example
 * const state = { pressure: absolute(5, bar), temperature: temperatureOf(20, celsius) }
 * const ratio = thermalConductivity(heliox(0.21), state) / thermalConductivity(dryAir, state)
 * ratio.toFixed(1) // => '4.2'
 */
export function thermalConductivity(
  mixture: Mixture,
  state: { readonly pressure: AbsolutePressure; readonly temperature: Temperature },
): ThermalConductivity {
  requireState(state)
  const present = carriedGases(mixture)
  const density = molarDensity(mixture, state.pressure, state.temperature)
  const { temperature } = state
  const viscosities = present.map((gas) => pureTransport[gas].diluteViscosity(temperature))
  let sum = 0
  for (const [i, gas] of present.entries()) {
    let weight = 0
    for (const [j, other] of present.entries()) {
      const ratio = (viscosities[i] as number) / (viscosities[j] as number)
      weight += mixture[other] * hindrance(ratio, molarMasses[other] / molarMasses[gas])
    }
    const { diluteConductivity, excessConductivity } = pureTransport[gas]
    sum += mixture[gas] * (diluteConductivity(temperature) / weight + excessConductivity(temperature, density))
  }
  return sum as ThermalConductivity
}

/**
 * Viscosity of dry air by its own equation.
 *
 * @param state - pressure, absolute, Pa, above 0 and at most 300 bar; temperature, K, 220 to 400
 * @returns dynamic viscosity, Pa·s; 1 % dilute, 2 % dense
 * @throws LitrebarError `outside-validity` outside that range
 * @source lemmon-jacobsen-2004; density of gerg-2008
 * @example
 * const state = { pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) }
 * inUnit(airViscosity(state), micropascalSecond).toFixed(1) // => '23.6'
 */
export function airViscosity(state: {
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
}): Viscosity {
  requireState(state)
  const { temperature } = state
  const density = molarDensity(dryAir, state.pressure, temperature)
  const { diluteViscosity, excessViscosity } = pureTransport.air
  return (diluteViscosity(temperature) + excessViscosity(temperature, density)) as Viscosity
}

/**
 * Thermal conductivity of dry air by its own equation.
 *
 * @param state - pressure, absolute, Pa, above 0 and at most 300 bar; temperature, K, 220 to 400
 * @returns thermal conductivity, W/(m·K); 2 % dilute, 5 % dense
 * @throws LitrebarError `outside-validity` outside that range
 * @source lemmon-jacobsen-2004; density of gerg-2008
 * @example
 * airThermalConductivity({ pressure: absolute(1, bar), temperature: temperatureOf(20, celsius) }).toFixed(4) // => '0.0259'
 */
export function airThermalConductivity(state: {
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
}): ThermalConductivity {
  requireState(state)
  const { temperature } = state
  const density = molarDensity(dryAir, state.pressure, temperature)
  const { diluteConductivity, excessConductivity } = pureTransport.air
  return (diluteConductivity(temperature) + excessConductivity(temperature, density)) as ThermalConductivity
}

function requireState(state: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }): void {
  requireWithin('pressure', state.pressure, pressureRange)
  requireWithin('temperature', state.temperature, temperatureRange)
}

function carriedGases(mixture: Mixture): CarriedGas[] {
  if (mixture.water === 0) return gases.filter((gas): gas is CarriedGas => gas !== 'water' && mixture[gas] > 0)
  throw new LitrebarError({
    code: 'mixture',
    argument: 'mixture.water',
    value: String(mixture.water),
    expected: '0',
    hint: 'Leave the vapour out: there is no equation for it here, and 2 % of it change the viscosity by 1 %.',
  })
}

/** Viscosity of the dilute mixture, Pa·s: x·H⁻¹·x of the first approximation of kinetic theory. */
function diluteMixtureViscosity(mixture: Mixture, present: readonly CarriedGas[], temperature: number): number {
  const matrix = present.map((gas) => {
    const row = new Array<number>(present.length).fill(0)
    row[present.indexOf(gas)] = mixture[gas] ** 2 / pureTransport[gas].diluteViscosity(temperature)
    return row
  })
  for (const [i, a] of present.entries()) {
    for (let j = 0; j < i; j++) {
      const b = present[j] as CarriedGas
      const { viscosity, ratio, massFactor } = collision(a, b, temperature)
      const strength = (2 * mixture[a] * mixture[b] * massFactor) / viscosity
      const [ofA, ofB] = [matrix[i] as number[], matrix[j] as number[]]
      ofA[i] = (ofA[i] as number) + strength * (5 / (3 * ratio) + molarMasses[b] / molarMasses[a])
      ofB[j] = (ofB[j] as number) + strength * (5 / (3 * ratio) + molarMasses[a] / molarMasses[b])
      ofA[j] = ofB[i] = -strength * (5 / (3 * ratio) - 1)
    }
  }
  return quadraticForm(
    matrix,
    present.map((gas) => mixture[gas]),
  )
}

interface Collision {
  /** Viscosity of an imagined gas of such pairs, Pa·s. */
  readonly viscosity: number
  /** Ratio of the two collision integrals. */
  readonly ratio: number
  readonly massFactor: number
}

function collision(a: CarriedGas, b: CarriedGas, temperature: number): Collision {
  const size = (lennardJones[a].size + lennardJones[b].size) / 2
  const reduced = temperature / Math.sqrt(lennardJones[a].energy * lennardJones[b].energy)
  const ofViscosity = viscosityIntegral(reduced)
  const [ma, mb] = [molarMasses[a], molarMasses[b]]
  return {
    viscosity: (2.6693e-8 * Math.sqrt((2 * ma * mb * temperature) / (ma + mb))) / (size * size * ofViscosity),
    ratio: ofViscosity / diffusionIntegral(reduced),
    massFactor: (ma * mb) / (ma + mb) ** 2,
  }
}

/** Collision integral of viscosity, by the fit of Neufeld and others (from memory, met by the tables of mixtures). */
function viscosityIntegral(t: number): number {
  return 1.16145 * t ** -0.14874 + 0.52487 * Math.exp(-0.7732 * t) + 2.16178 * Math.exp(-2.43787 * t)
}

/** Collision integral of diffusion, likewise. */
function diffusionIntegral(t: number): number {
  return (
    1.06036 * t ** -0.1561 +
    0.193 * Math.exp(-0.47635 * t) +
    1.03587 * Math.exp(-1.52996 * t) +
    1.76474 * Math.exp(-3.89411 * t)
  )
}

/** How much a neighbour hinders a gas, from the ratio of their viscosities and of the neighbour's mass to its own: 1 for its own kind. */
function hindrance(viscosityRatio: number, massRatio: number): number {
  const root = 1 + Math.sqrt(viscosityRatio) * Math.sqrt(Math.sqrt(massRatio))
  return (root * root) / Math.sqrt(8 * (1 + 1 / massRatio))
}

/** x·M⁻¹·x by elimination. The matrix is symmetric with a dominant diagonal: no pivoting is needed. */
function quadraticForm(matrix: number[][], x: readonly number[]): number {
  const size = x.length
  const rows = matrix.map((row, i) => [...row, x[i] as number])
  for (let k = 0; k < size; k++) {
    const pivot = rows[k] as number[]
    for (let i = k + 1; i < size; i++) {
      const row = rows[i] as number[]
      const factor = (row[k] as number) / (pivot[k] as number)
      for (let j = k; j <= size; j++) row[j] = (row[j] as number) - factor * (pivot[j] as number)
    }
  }
  // After elimination xᵀM⁻¹x is the sum of squares of the reduced right side over the pivots.
  let sum = 0
  for (let k = 0; k < size; k++) {
    const row = rows[k] as number[]
    sum += (row[size] as number) ** 2 / (row[k] as number)
  }
  return sum
}
