import { requireKeys } from '../../errors/index.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { one } from '../../units/fraction.ts'
import { bar } from '../../units/pressure.ts'
import type { AbsolutePressure, Fraction, MoleFraction } from '../../units/quantity.ts'

const fractionRange: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Give 10 ppm as 10e-6, or name the unit.' }
const pressureRange: Accepted = {
  above: 0,
  atMost: 200,
  unit: bar,
  hint: 'Give the absolute pressure around the diver.',
}
const surfaceRange: Accepted = {
  atLeast: 0.2,
  atMost: 1.2,
  unit: bar,
  hint: 'Give the absolute pressure at the surface.',
}

/**
 * Surface equivalent of a contaminant: the fraction that would act at the surface as this one does at depth, by the same partial
 * pressure. Above 1 where no mixture at the surface could.
 *
 * It compares the gas breathed at one moment. Limits of exposure have their own durations.
 *
 * @param at - mole fraction in the gas breathed, 0 to 1; pressure around the diver, absolute, Pa, above 0 and at most 200 bar;
 *   surface pressure, absolute, Pa, above 0 and at most 1.2 bar
 * @returns fraction at the surface
 * @throws LitrebarError `range`, naming the field, if one is not finite or out of range
 * @source us-navy-diving-manual, surface equivalent value
 * @example
 * const at = { fraction: fractionOf(2, percent), pressure: absolute(4, atmosphere), surfacePressure: absolute(1, atmosphere) }
 * inUnit(surfaceEquivalentFraction(at), percent) // => 8
 */
export function surfaceEquivalentFraction(at: {
  readonly fraction: MoleFraction
  readonly pressure: AbsolutePressure
  readonly surfacePressure: AbsolutePressure
}): Fraction {
  requireKeys('at', at, { fraction: true, pressure: true, surfacePressure: true })
  requireWithin('fraction', at.fraction, fractionRange)
  requireWithin('pressure', at.pressure, pressureRange)
  requireWithin('surfacePressure', at.surfacePressure, surfaceRange)
  return ((at.fraction * at.pressure) / at.surfacePressure) as Fraction
}
