import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { amountOfGas, type GasContents } from '../../gas-law/index.ts'
import { type AbsolutePressure, type Accepted, bar, type PressureDifference, requireWithin } from '../../units/index.ts'
import { amountIn, atPressure, type GasOptions, inBar, pressureOf } from './vessel-gas.ts'

/**
 * The pressure at which a cylinder is taken as used up: an absolute pressure, or what the first stage needs above the pressure
 * around the diver, which then follows the depth. No gas flows out of a cylinder below the pressure around it, so 0 above ambient
 * is the physical end; a stage stops delivering some bar earlier.
 */
export type Residual = AbsolutePressure | { readonly aboveAmbient: PressureDifference }

/** A cylinder that is breathed from, and the pressure at which it is taken as used up. */
export interface BreathedCylinder {
  readonly contents: GasContents
  readonly residualPressure: Residual
}

// The limits are ours: they catch a wrong unit.
const residualRange: Accepted = { above: 0, atMost: 700, unit: bar, hint: 'Give an absolute pressure.' }
const needRange: Accepted = {
  atLeast: 0,
  atMost: 100,
  unit: bar,
  hint: 'Give what the stage needs above ambient: its intermediate pressure at least.',
}

/** Residual pressure where this pressure is around the diver, Pa. */
export function residualAt(residual: Residual, ambient: number): AbsolutePressure {
  return typeof residual === 'number' ? residual : ((ambient + residual.aboveAmbient) as AbsolutePressure)
}

/**
 * Residual pressure at an ambient pressure, checked.
 *
 * @param argument - path of the residual, for the error
 * @param residual - as stated
 * @param ambient - absolute, Pa; for a dive the highest at which the cylinder is breathed
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range` for a residual below the pressure around the diver
 */
export function requireResidual(argument: string, residual: Residual, ambient: number): AbsolutePressure {
  requireResidualAnywhere(argument, residual)
  if (typeof residual !== 'number') return residualAt(residual, ambient)
  if (residual >= ambient) return residual
  throw new LitrebarError({
    code: 'range',
    argument,
    value: inBar(residual),
    expected: `at least the ${inBar(ambient)} around the diver`,
    hint: 'Gas below the surrounding pressure does not leave the cylinder: give a higher residual, or { aboveAmbient }.',
  })
}

function requireResidualAnywhere(argument: string, residual: Residual): void {
  if (typeof residual === 'object') {
    requireKeys(argument, residual, { aboveAmbient: true })
    requireWithin(`${argument}.aboveAmbient`, residual.aboveAmbient, needRange)
  } else {
    requireWithin(argument, residual, residualRange)
  }
}

/** Refuses a cylinder without its contents or its residual, or with some out of range, also where nobody breathes from it. */
export function requireFilledCylinder(argument: string, cylinder: BreathedCylinder): void {
  requireBreathedCylinder(argument, cylinder)
  requireResidualAnywhere(`${argument}.residualPressure`, cylinder.residualPressure)
  amountOfGas(cylinder.contents, { gas: 'ideal' }) // refuses contents that are out of range
}

/** Refuses what is not a cylinder with its residual. */
export function requireBreathedCylinder(argument: string, cylinder: BreathedCylinder): void {
  requireKeys(argument, cylinder, { contents: true, residualPressure: true })
}

/**
 * Amount of gas in a vessel above a pressure that shall be left in it.
 *
 * @param argument - path of the pressure, for the error
 * @param contents - the vessel as it is
 * @param kept - absolute pressure that is left, at the temperature of the contents
 * @param reckoning - how gas amounts are computed
 * @returns amount, mol
 * @throws LitrebarError `range` if the vessel holds less than that: says by how much
 */
export function amountAbove(
  argument: string,
  contents: GasContents,
  kept: AbsolutePressure,
  reckoning: GasOptions,
): number {
  requireWithin(argument, kept, residualRange)
  const amount = amountIn(contents, reckoning) // refuses contents that are missing
  const inside = pressureOf(contents)
  if (kept > inside) {
    throw new LitrebarError({
      code: 'range',
      argument,
      value: inBar(kept),
      expected: `at most the ${inBar(inside)} in the cylinder`,
      hint: `The cylinder is ${inBar(kept - inside)} short: fill it, or keep less.`,
    })
  }
  return amount - amountIn(atPressure(contents, kept), reckoning)
}
