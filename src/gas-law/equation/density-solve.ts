import { differentiate } from './density-derivatives.ts'
import { gerg2008GasConstant } from './gerg2008.parameters.ts'
import type { Equation } from './gerg2008.ts'
import { setTemperature } from './set-temperature.ts'

// From 30 000 times the density of free gas down to nothing, a few steps do. The cap is for a defect, not for a state.
const mostSteps = 50
// The step is of third order: one of 3e-6 leaves less than the last bit.
const lastStep = 3e-6
// Above this many times T_r no isotherm of these mixtures turns back: there is one root (tests scan many mixtures).
const oneRootAbove = 1.25
// Reduced densities of liquids end below this.
const densest = 4

/**
 * Reduced density δ of a gas at a pressure. Where the isotherm could turn back on itself, it is walked from nothing
 * upwards, so that the root is that of the gas and never that of a liquid. Whether the gas would condense is another
 * question: single-phase.ts.
 *
 * @param equation - its temperature is set here
 * @param pressure - Pa, above 0
 * @param temperature - K
 * @returns δ, or NaN if there is no gas at that pressure
 */
export function reducedDensityAt(equation: Equation, pressure: number, temperature: number): number {
  setTemperature(equation, temperature)
  const target = pressure / (gerg2008GasConstant * temperature * equation.reducingDensity)
  const root = solve(equation, target, virialStart(equation, target))
  return hasOneRoot(equation, temperature) ? root : walk(equation, target, root)
}

/**
 * Whether a reduced density is reached from nothing while the pressure rises all the way: that of a gas, not a liquid.
 *
 * @param equation - its temperature set
 * @param temperature - K
 * @param delta - reduced density
 * @returns whether it is
 */
export function isGasDensity(equation: Equation, temperature: number, delta: number): boolean {
  return hasOneRoot(equation, temperature) ? delta > 0 : walk(equation, Infinity, delta) === delta
}

function hasOneRoot(equation: Equation, temperature: number): boolean {
  return temperature >= oneRootAbove * equation.reducingTemperature
}

/**
 * δ (1 + θα) = π by Halley steps in δ.
 *
 * @param equation - with its temperature set
 * @param target - π, the reduced density that an ideal gas would have
 * @param start - first δ
 * @returns δ, or NaN if the steps end nowhere
 */
function solve(equation: Equation, target: number, start: number): number {
  const { derivative } = equation
  let delta = start
  for (let step = 0; step < mostSteps; step++) {
    differentiate(equation, delta)
    const first = derivative[0] as number
    const second = derivative[1] as number
    const third = derivative[2] as number
    // p/(ρ_r R T) less its target, and its derivatives by θ
    const excess = delta * (1 + first) - target
    const slope = delta * (1 + first + second)
    const curvature = delta * (1 + first + 2 * second + third)
    if (slope > 0) {
      const change = (-2 * excess * slope) / (2 * slope * slope - excess * (curvature - slope))
      if (change > -lastStep && change < lastStep) return delta * (1 + change)
      // a wild step, from a place where the isotherm is flat or bent, is cut to something sensible
      delta *= change > -0.5 && change < 1 ? 1 + change : excess > 0 ? 0.6 : 1.5
    } else {
      // between the spinodals: back towards the gas
      delta *= 0.6
    }
  }
  return Number.NaN
}

/** δ from π = δ + b δ² + c δ³, whose coefficients are those of the equation at low density. */
function virialStart({ coefficient: a }: Equation, target: number): number {
  const atOne = a[5] as number // d = 1, c = 1: its exponential adds to the next power
  const b = (a[0] as number) + atOne + (a[11] as number) + (a[15] as number) + (a[20] as number)
  const c = 2 * ((a[1] as number) + (a[6] as number) + (a[12] as number) + (a[16] as number) - atOne)
  let delta = target
  for (let step = 0; step < 3; step++) {
    const slope = 1 + delta * (2 * b + 3 * c * delta)
    if (!(slope > 0.2)) return target
    delta -= (delta * (1 + delta * (b + c * delta)) - target) / slope
    if (!(delta > 0.3 * target)) return target
  }
  return Math.min(delta, 3)
}

/** The first root on the way up: `candidate` if the isotherm rises all the way to it, else one before it, or NaN. */
function walk(equation: Equation, target: number, candidate: number): number {
  const { derivative } = equation
  let below = 0
  let at = 0.02
  while (at < densest) {
    const reachesCandidate = candidate > below && candidate <= at
    const place = reachesCandidate ? candidate : at
    differentiate(equation, place)
    const first = derivative[0] as number
    const slope = 1 + first + (derivative[1] as number)
    if (!(slope > 0)) return rootBetween(equation, target, below, place)
    if (reachesCandidate) return candidate
    if (place * (1 + first) >= target) return rootBetween(equation, target, below, place)
    below = place
    at += slope < 0.2 ? 0.01 : 0.04
  }
  return Number.NaN
}

/** The root between two densities, between which the isotherm rises, or rises and falls; NaN if it turns too soon. */
function rootBetween(equation: Equation, target: number, from: number, to: number): number {
  const { derivative } = equation
  let low = from
  let high = to
  for (let step = 0; step < 60; step++) {
    const middle = 0.5 * (low + high)
    differentiate(equation, middle)
    const first = derivative[0] as number
    const isReached = middle * (1 + first) >= target || !(1 + first + (derivative[1] as number) > 0)
    if (isReached) high = middle
    else low = middle
  }
  const root = low > 0 ? solve(equation, target, low) : Number.NaN
  return Math.abs(root - low) < 1e-6 * low ? root : Number.NaN
}
