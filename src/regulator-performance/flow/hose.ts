import { requireKeys } from '../../errors/index.ts'
import { molarGasConstant } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Fraction,
  gramPerMole,
  kilogramPerSecond,
  type Length,
  type MassFlow,
  type MolarMass,
  metre,
  micropascalSecond,
  millimetre,
  one,
  type PressureDifference,
  requireWithin,
  type Temperature,
  type Viscosity,
} from '../../units/index.ts'

/** A hose and what is put in line with it. */
export interface Hose {
  readonly bore: Length
  readonly length: Length
  /** Height of the roughness of its wall; 0 for a smooth one. */
  readonly roughness?: Length
  /** Loss coefficients of fittings, added up: 0.5 to 1.5 for an elbow. */
  readonly fittings?: Fraction
}

/** The gas in a hose, which takes the temperature of its wall. */
export interface HoseGas {
  readonly molarMass: MolarMass
  readonly viscosity: Viscosity
  readonly temperature: Temperature
}

/** What arrives at the end of a hose, or the most that it can pass. */
export type HoseFlow =
  | {
      readonly kind: 'delivers'
      readonly downstreamPressure: AbsolutePressure
      readonly pressureDrop: PressureDifference
      readonly reynoldsNumber: Fraction
      /** Darcy's. */
      readonly frictionFactor: Fraction
    }
  | { readonly kind: 'chokes'; readonly maximumMassFlow: MassFlow }

const bore: Accepted = { above: 0, atMost: 50, unit: millimetre, hint: 'Give the inner diameter.' }
const length: Accepted = { above: 0, atMost: 500, unit: metre, hint: 'Check the unit of the length.' }
const roughness: Accepted = { atLeast: 0, atMost: 5, unit: millimetre, hint: 'Give 0 for a smooth wall.' }
const fittings: Accepted = { atLeast: 0, atMost: 1000, unit: one, hint: 'Add up the loss coefficients.' }
const molarMass: Accepted = { above: 0, atMost: 100, unit: gramPerMole, hint: '`molarMass` gives it.' }
const viscosity: Accepted = { above: 0, atMost: 1000, unit: micropascalSecond, hint: '`viscosity` gives it.' }
const temperature: Accepted = { atLeast: -100, atMost: 100, unit: celsius, hint: 'Check the temperature scale.' }
const pressure: Accepted = {
  above: 0,
  atMost: 60,
  unit: bar,
  hint: 'Give the absolute pressure; above 60 bar the ideal gas of this model fails.',
}
const flow: Accepted = { above: 0, atMost: 10, unit: kilogramPerSecond, hint: 'Check the unit of the flow.' }

/**
 * Isothermal flow of gas through a hose: the pressure that arrives, or the largest flow where the hose chokes.
 * Ideal gas, which at intermediate pressures is within a per cent.
 *
 * @param hose - bore, length, roughness, m; loss coefficients of fittings
 * @param gas - molar mass, kg/mol; viscosity, Pa·s; temperature, K
 * @param state - upstream pressure, absolute, Pa, up to 60 bar; mass flow, kg/s
 * @returns what arrives, or the largest mass flow
 * @throws LitrebarError `range` for a value out of range
 * @source litrebar-derivation, isothermal flow with friction; friction by Haaland (memory)
 * @example
 * const gas = { molarMass: molarMass(dryAir), viscosity: measure(18, micropascalSecond), temperature: temperatureOf(15, celsius) }
 * const long = { bore: measure(5, millimetre), length: measure(2.1, metre) }
 * const both = hoseFlow(long, gas, { upstreamPressure: absolute(16, bar), massFlow: measure(47.5, gramPerSecond) })
 * both.kind // => 'chokes'
 */
export function hoseFlow(
  hose: Hose,
  gas: HoseGas,
  state: { readonly upstreamPressure: AbsolutePressure; readonly massFlow: MassFlow },
): HoseFlow {
  requireHose(hose, gas)
  requireKeys('state', state, { upstreamPressure: true, massFlow: true })
  const { upstreamPressure, massFlow } = state
  requireWithin('state.upstreamPressure', upstreamPressure, pressure)
  requireWithin('state.massFlow', massFlow, flow)
  const line = lineOf(hose, gas)
  const flux = massFlow / line.area
  if (spare(line, upstreamPressure, flux, choking(line, flux)) < 0) {
    return { kind: 'chokes', maximumMassFlow: largestFlow(line, upstreamPressure) as MassFlow }
  }
  const downstream = falling(choking(line, flux), upstreamPressure, (p2) => spare(line, upstreamPressure, flux, p2))
  const { reynolds, friction } = frictionOf(line, flux)
  return {
    kind: 'delivers',
    downstreamPressure: downstream as AbsolutePressure,
    pressureDrop: (upstreamPressure - downstream) as PressureDifference,
    reynoldsNumber: reynolds as Fraction,
    frictionFactor: friction as Fraction,
  }
}

/** A hose with its gas, in the numbers of the equation. */
interface Line {
  readonly area: number
  readonly bore: number
  readonly lengthInBores: number
  readonly relativeRoughness: number
  readonly fittings: number
  readonly viscosity: number
  /** R T / M, m²/s². */
  readonly specificEnergy: number
}

function lineOf(hose: Hose, gas: HoseGas): Line {
  return {
    area: (Math.PI / 4) * hose.bore * hose.bore,
    bore: hose.bore,
    lengthInBores: hose.length / hose.bore,
    relativeRoughness: (hose.roughness ?? 0) / hose.bore,
    fittings: hose.fittings ?? 0,
    viscosity: gas.viscosity,
    specificEnergy: (molarGasConstant * gas.temperature) / gas.molarMass,
  }
}

/** Downstream pressure at which the gas is as fast as it can be without a change of temperature. */
function choking({ specificEnergy }: Line, flux: number): number {
  return flux * Math.sqrt(specificEnergy)
}

/** p1² − p2² less what friction and acceleration take: 0 where p2 fits the flow, below 0 where p2 is too high. */
function spare(line: Line, p1: number, flux: number, p2: number): number {
  const { friction } = frictionOf(line, flux)
  const losses = friction * line.lengthInBores + line.fittings + 2 * Math.log(p1 / p2)
  return p1 * p1 - p2 * p2 - flux * flux * line.specificEnergy * losses
}

/**
 * Friction: laminar, or turbulent by Haaland's form, whichever is more. Blasius' form would be too low: hoses reach a Reynolds number of half a million.
 */
function frictionOf(
  { bore: d, relativeRoughness, viscosity: mu }: Line,
  flux: number,
): { readonly reynolds: number; readonly friction: number } {
  const reynolds = (flux * d) / mu
  const turbulent = (-1.8 * Math.log10(6.9 / reynolds + (relativeRoughness / 3.7) ** 1.11)) ** -2
  return { reynolds, friction: reynolds < 6.9 ? 64 / reynolds : Math.max(64 / reynolds, turbulent) }
}

/** The flow at which the pressure at the end is just the choking one. */
function largestFlow(line: Line, p1: number): number {
  const free = p1 / Math.sqrt(line.specificEnergy) // no hose passes more than one without length
  return line.area * falling(free * 1e-9, free, (flux) => spare(line, p1, flux, choking(line, flux)))
}

/** Where a falling function passes zero, by halving to the last bit. */
function falling(from: number, to: number, f: (x: number) => number): number {
  let low = from
  let high = to
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) break
    if (f(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function requireHose(hose: Hose, gas: HoseGas): void {
  requireKeys('hose', hose, { bore: true, length: true, roughness: false, fittings: false })
  requireKeys('gas', gas, { molarMass: true, viscosity: true, temperature: true })
  requireWithin('hose.bore', hose.bore, bore)
  requireWithin('hose.length', hose.length, length)
  if (hose.roughness !== undefined) requireWithin('hose.roughness', hose.roughness, roughness)
  if (hose.fittings !== undefined) requireWithin('hose.fittings', hose.fittings, fittings)
  requireWithin('gas.molarMass', gas.molarMass, molarMass)
  requireWithin('gas.viscosity', gas.viscosity, viscosity)
  requireWithin('gas.temperature', gas.temperature, temperature)
}
