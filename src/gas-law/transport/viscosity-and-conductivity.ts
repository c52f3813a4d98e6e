import { LitrebarError, requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  kelvin,
  requireWithin,
  type Temperature,
  type ThermalConductivity,
  type Viscosity,
} from '../../units/index.ts'
import { gases, molarMasses } from '../mixture/gas.ts'
import { dryAir, type Mixture, requireMixture } from '../mixture/mixture.ts'
import { molarDensity } from '../state/molar-density.ts'
import { type CarriedGas, diluteMixtureViscosity, hindrance } from './kinetic-theory.ts'
import { pureTransport } from './pure.ts'

const pressureRange: Accepted = {
  above: 0,
  atMost: 350,
  unit: bar,
  code: 'outside-validity',
  hint: 'Give the absolute pressure of the gas, up to 350 bar.',
}
const temperatureRange: Accepted = {
  atLeast: 220,
  atMost: 400,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'The mixture rules were compared from 220 to 400 K.',
}

/**
 * Viscosity of a gas mixture, to 350 bar. Dilute gas by kinetic theory of unlike spheres; what density adds, as each gas alone would
 * add it at the molar density of the mixture. How far to trust it: `transportUncertainty`; for dry air `airViscosity` is nearer.
 *
 * @param mixture - the gas, without water
 * @param state - pressure, absolute, Pa, above 0 and at most 350 bar; temperature, K, 220 to 400
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
  requireKeys('state', state, { pressure: true, temperature: true })
  requireState(state)
  const present = carriedGases(mixture)
  const density = molarDensity(mixture, state.pressure, state.temperature)
  const { temperature } = state
  let excess = 0
  for (const gas of present) excess += mixture[gas] * pureTransport[gas].excessViscosity(temperature, density)
  return (diluteMixtureViscosity(mixture, present, temperature) + excess) as Viscosity
}

/**
 * Thermal conductivity of a gas mixture, to 350 bar: how fast it carries heat off a body or a cylinder wall. Helium mixtures carry four to
 * six times what air does. The rise near a critical point is left out, at most 2.2 % (argon at 250 K and 200 bar).
 *
 * @param mixture - the gas, without water
 * @param state - pressure, absolute, Pa, above 0 and at most 350 bar; temperature, K, 220 to 400
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
  requireKeys('state', state, { pressure: true, temperature: true })
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
 * @param state - pressure, absolute, Pa, above 0 and at most 350 bar; temperature, K, 220 to 400
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
  requireKeys('state', state, { pressure: true, temperature: true })
  requireState(state)
  const { temperature } = state
  const density = molarDensity(dryAir, state.pressure, temperature)
  const { diluteViscosity, excessViscosity } = pureTransport.air
  return (diluteViscosity(temperature) + excessViscosity(temperature, density)) as Viscosity
}

/**
 * Thermal conductivity of dry air by its own equation.
 *
 * @param state - pressure, absolute, Pa, above 0 and at most 350 bar; temperature, K, 220 to 400
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
  requireKeys('state', state, { pressure: true, temperature: true })
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

/** Below this there is not one molecule in a room, and sums of squares underflow. */
const traceless = 1e-30

function carriedGases(mixture: Mixture): CarriedGas[] {
  requireMixture('mixture', mixture)
  if (mixture.water === 0) return gases.filter((gas): gas is CarriedGas => gas !== 'water' && mixture[gas] > traceless)
  throw new LitrebarError({
    code: 'mixture',
    argument: 'mixture.water',
    value: String(mixture.water),
    expected: '0',
    hint: 'Leave the vapour out: there is no equation for it here, and 2 % of it change the viscosity by 1 %.',
  })
}
