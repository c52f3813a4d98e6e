import { LitrebarError, requireKeys } from '../../errors/index.ts'
import {
  type Accepted,
  type Area,
  bar,
  type Force,
  type GaugePressure,
  kilonewton,
  type Length,
  metre,
  millimetre,
  type PressureDifference,
  requireWithin,
} from '../../units/index.ts'

/** Mechanical stress: force per area, of the dimension of a pressure. */
export type Stress = PressureDifference

/** A shell by its outside and its wall. */
export interface CylinderShell {
  readonly outsideDiameter: Length
  readonly wall: Length
}

const diameter: Accepted = { above: 0, atMost: 1000, unit: millimetre, hint: 'Give the outside diameter of the shell.' }
const wallRange: Accepted = { above: 0, atMost: 200, unit: millimetre, hint: 'Give the thickness of the wall.' }
const testPressureRange: Accepted = {
  above: 0,
  atMost: 2000,
  unit: bar,
  hint: 'Give the test pressure above ambient.',
}
const stressRange: Accepted = { above: 0, atMost: 20_000, unit: bar, hint: 'Steel allows some 5000 bar (500 MPa).' }

/**
 * Wall stress of a seamless closed cylinder at test pressure, as the US specifications 3A, 3AA, 3AX, 3AAX, 3AL and 3T compute it.
 * The largest stress is at the inside of the wall. Stress over pressure is a pure ratio, so any consistent units will do.
 *
 * @param shell - outside diameter and wall, m, up to 1 m; the wall thinner than half the diameter
 * @param testPressure - gauge, Pa, above 0 and at most 2000 bar
 * @returns stress, Pa
 * @throws LitrebarError `range`, naming the field
 * @source cfr-49-178-46, wall stress formula; cfr-49-178-45; cfr-49-173-302a-2015, paragraph (b)(3)(ii)
 * @example
 * const shell = { outsideDiameter: measure(6.9, inch), wall: measure(0.181, inch) }
 * differenceInUnit(wallStress(shell, gauge(4000, psi)), psi).toFixed(0) // => '64952'
 */
export function wallStress(shell: CylinderShell, testPressure: GaugePressure): Stress {
  const { outside, inside } = squares(shell)
  requireWithin('testPressure', testPressure, testPressureRange)
  return ((testPressure * (1.3 * outside + 0.4 * inside)) / (outside - inside)) as Stress
}

/**
 * Least wall that keeps the stress of `wallStress` at a limit: its inverse.
 *
 * @param wanted - outside diameter, m, up to 1 m; test pressure, gauge, Pa, above 0 and at most 2000 bar; stress limit, Pa, above 1.3 times
 *   the test pressure
 * @returns thickness, m
 * @throws LitrebarError `range`, naming the field; `input` where no wall is thick enough
 * @source litrebar-derivation, algebra on the formula of cfr-49-178-46
 * @example
 * const wall = minimumWallForStress({ outsideDiameter: measure(6.9, inch), testPressure: gauge(4000, psi), stressLimit: difference(70000, psi) })
 * inUnit(wall, inch).toFixed(4) // => '0.1679'
 */
export function minimumWallForStress(wanted: {
  readonly outsideDiameter: Length
  readonly testPressure: GaugePressure
  readonly stressLimit: Stress
}): Length {
  requireKeys('wanted', wanted, { outsideDiameter: true, testPressure: true, stressLimit: true })
  const { outsideDiameter, testPressure, stressLimit } = wanted
  requireWithin('outsideDiameter', outsideDiameter, diameter)
  requireWithin('testPressure', testPressure, testPressureRange)
  requireWithin('stressLimit', stressLimit, stressRange)
  const ratio = (stressLimit - 1.3 * testPressure) / (stressLimit + 0.4 * testPressure)
  if (ratio <= 0) throw noWallIsEnough('stressLimit', stressLimit, 1.3 * testPressure)
  return ((outsideDiameter * (1 - Math.sqrt(ratio))) / 2) as Length
}

/**
 * Longitudinal stress of a closed cylinder: the pressure on the inside cross-section, carried by the metal.
 *
 * @param shell - outside diameter and wall, m
 * @param testPressure - gauge, Pa, above 0 and at most 2000 bar
 * @returns stress, Pa
 * @throws LitrebarError `range`, naming the field
 * @source cfr-49-178-37, paragraph (a)(2)(iii)
 * @example
 * const shell = { outsideDiameter: measure(9, inch), wall: measure(0.25, inch) }
 * differenceInUnit(longitudinalStress(shell, gauge(3000, psi)), psi).toFixed(0) // => '24771'
 */
export function longitudinalStress(shell: CylinderShell, testPressure: GaugePressure): Stress {
  const { outside, inside } = squares(shell)
  requireWithin('testPressure', testPressure, testPressureRange)
  return ((testPressure * inside) / (outside - inside)) as Stress
}

// pi/64 as the rule prints it: 0.0490874 would not reproduce its figures.
const printedSixtyFourthOfPi = 0.04909

/**
 * Bending stress of a long cylinder that lies on supports at both ends, filled with water.
 *
 * @param shell - outside diameter and wall, m
 * @param load - weight of cylinder and water, N, spread over the length between the supports, m, up to 20 m
 * @returns stress at mid-length, Pa; for 3AAX, twice this and the longitudinal stress together stay within 80 % of yield
 * @throws LitrebarError `range`, naming the field
 * @source cfr-49-178-37, paragraph (a)(2)(ii), with its 0.04909 for π/64
 */
export function bendingStress(shell: CylinderShell, load: { readonly weight: Force; readonly length: Length }): Stress {
  const { outside, inside } = squares(shell)
  requireKeys('load', load, { weight: true, length: true })
  requireWithin('load.weight', load.weight, {
    above: 0,
    atMost: 1000,
    unit: kilonewton,
    hint: 'Give the filled weight.',
  })
  requireWithin('load.length', load.length, {
    above: 0,
    atMost: 20,
    unit: metre,
    hint: 'Give the length between supports.',
  })
  const moment = (load.weight * load.length) / 8
  const secondMoment = printedSixtyFourthOfPi * (outside * outside - inside * inside)
  return ((moment * Math.sqrt(outside)) / 2 / secondMoment) as Stress
}

/** Squares of the two diameters, checked. */
function squares(shell: CylinderShell): { readonly outside: Area; readonly inside: Area } {
  requireKeys('shell', shell, { outsideDiameter: true, wall: true })
  const { outsideDiameter, wall } = shell
  requireWithin('shell.outsideDiameter', outsideDiameter, diameter)
  requireWithin('shell.wall', wall, wallRange)
  const insideDiameter = outsideDiameter - 2 * wall
  if (insideDiameter <= 0) {
    throw new LitrebarError({
      code: 'range',
      argument: 'shell.wall',
      value: `${String(Number((wall * 1000).toPrecision(12)))} mm`,
      expected: `below ${String(Number((outsideDiameter * 500).toPrecision(12)))} mm, half the outside diameter`,
      hint: 'Give the wall of one side, in the unit of the diameter.',
    })
  }
  return {
    outside: (outsideDiameter * outsideDiameter) as Area,
    inside: (insideDiameter * insideDiameter) as Area,
  }
}

export function noWallIsEnough(argument: string, value: number, least: number): LitrebarError {
  const megapascals = (pascals: number): string => `${String(Number((pascals / 1e6).toPrecision(6)))} MPa`
  return new LitrebarError({
    code: 'input',
    argument,
    value: megapascals(value),
    expected: `above ${megapascals(least)}`,
    hint: 'No wall would be thick enough: lower the pressure or choose a stronger metal.',
  })
}
