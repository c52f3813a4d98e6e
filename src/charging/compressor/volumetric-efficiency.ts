import { requireKeys } from '../../errors/index.ts'
import { type Accepted, type Fraction, one, requireWithin } from '../../units/index.ts'

/** Gas that is left in a cylinder when the piston turns, and how it expands again. */
export interface ClearanceSpace {
  /** Volume left over the swept volume. */
  readonly clearance: Fraction
  /** Exponent n of p vⁿ while it expands. */
  readonly exponent: Fraction
}

const clearanceRange: Accepted = {
  above: 0,
  atMost: 1,
  unit: one,
  hint: 'Give the clearance as a share of the swept volume: 5 per cent is 0.05.',
}
const exponentRange: Accepted = { atLeast: 1, atMost: 2, unit: one, hint: 'Give n of p vⁿ: about 1.2 to 1.35 for air.' }
const ratioRange: Accepted = {
  atLeast: 1,
  atMost: 1e4,
  unit: one,
  hint: 'Give discharge over inlet pressure of one stage, both absolute.',
}

/**
 * Volumetric efficiency of a stage by its clearance: the share of the swept volume that draws in fresh gas. The gas left over expands
 * first. Below 0 the stage delivers nothing: the figure is left as it is, to say by how much.
 *
 * @param space - clearance over swept volume, above 0 and at most 1; exponent of the expansion, 1 to 2
 * @param ratio - discharge over inlet pressure, 1 to 10 000
 * @returns share of the swept volume, at the state of the gas at the inlet
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, expansion of the clearance gas
 * @example
 * const space = { clearance: measure(0.05, one), exponent: measure(1.3, one) }
 * volumetricEfficiency(space, measure(6, one)).toFixed(4) // => '0.8516'
 */
export function volumetricEfficiency(space: ClearanceSpace, ratio: Fraction): Fraction {
  requireClearance('space', space)
  requireWithin('ratio', ratio, ratioRange)
  return (1 - space.clearance * Math.expm1(Math.log(ratio) / space.exponent)) as Fraction
}

/**
 * Pressure ratio at which a stage stops delivering, because the clearance gas fills the whole stroke when it expands.
 *
 * @param space - as for `volumetricEfficiency`
 * @returns discharge over inlet pressure
 * @throws LitrebarError as `volumetricEfficiency`
 * @source litrebar-derivation, volumetric efficiency 0
 * @example
 * stallRatio({ clearance: measure(0.05, one), exponent: measure(1.3, one) }).toFixed(1) // => '52.3'
 */
export function stallRatio(space: ClearanceSpace): Fraction {
  requireClearance('space', space)
  return ((1 + 1 / space.clearance) ** space.exponent) as Fraction
}

/**
 * Clearance of a stage from the pressure ratio at which it stops delivering: how to measure it on a machine.
 *
 * @param stall - discharge over inlet pressure with the outlet closed, above 1; exponent of the expansion, 1 to 2
 * @returns clearance over swept volume
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, volumetric efficiency 0
 * @example
 * clearanceFromStall({ ratio: measure(15, one), exponent: measure(1.3, one) }).toFixed(3) // => '0.142'
 */
export function clearanceFromStall(stall: { readonly ratio: Fraction; readonly exponent: Fraction }): Fraction {
  requireKeys('stall', stall, { ratio: true, exponent: true })
  requireWithin('stall.ratio', stall.ratio, { ...ratioRange, atLeast: 1.001 })
  requireWithin('stall.exponent', stall.exponent, exponentRange)
  return (1 / Math.expm1(Math.log(stall.ratio) / stall.exponent)) as Fraction
}

/** Refuses a clearance space with a value missing or out of range. */
export function requireClearance(argument: string, space: ClearanceSpace): void {
  requireKeys(argument, space, { clearance: true, exponent: true })
  requireWithin(`${argument}.clearance`, space.clearance, clearanceRange)
  requireWithin(`${argument}.exponent`, space.exponent, exponentRange)
}
