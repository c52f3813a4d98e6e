import { gasConstant } from './gerg2008.parameters.ts'
import { differentiate, type Equation, setTemperature } from './gerg2008.ts'

// From 30 000 times the density of free gas down to nothing, a few steps do. The cap is for a defect, not for a state.
const mostSteps = 50
// The step is of third order: one of 3e-6 leaves less than the last bit.
const lastStep = 3e-6

/**
 * Reduced density δ at a pressure, sought from the gas side: the start is the virial equation, and steps that leave
 * the stable branch are shortened. Where the isotherm has one root, it is that root.
 *
 * @param equation - its temperature is set here
 * @param pressure - Pa, above 0
 * @param temperature - K
 * @returns δ, or NaN if no stable root was found
 */
export function reducedDensityAt(equation: Equation, pressure: number, temperature: number): number {
  setTemperature(equation, temperature)
  const target = pressure / (gasConstant * temperature * equation.reducingDensity)
  return solve(equation, target, virialStart(equation, target))
}

/**
 * δ (1 + θα) = π by Halley steps in δ.
 *
 * @param equation - with its temperature set
 * @param target - π, the reduced density that an ideal gas would have
 * @param start - first δ
 * @returns δ, or NaN if the steps end nowhere
 */
export function solve(equation: Equation, target: number, start: number): number {
  const { derivative } = equation
  let delta = start
  for (let step = 0; step < mostSteps; step++) {
    differentiate(equation, delta)
    const first = derivative[0] as number
    const second = derivative[1] as number
    const third = derivative[2] as number
    // q = p/(ρ_r R T) and its derivatives by θ
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
  return delta < 3 ? delta : 3
}
