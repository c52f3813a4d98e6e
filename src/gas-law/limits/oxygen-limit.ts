import { depthAtPressure, pressureAtDepth, type WaterColumn } from '../../environment/index.ts'
import { LitrebarError, requireKeys } from '../../errors/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { bar } from '../../units/pressure.ts'
import type { AbsolutePressure, Depth, MoleFraction } from '../../units/quantity.ts'
import { type Mixture, requireMixture } from '../mixture/mixture.ts'
import { partialPressure } from '../mixture/partial-pressures.ts'

/** A depth at which a mixture meets a limit of oxygen partial pressure. */
export interface OxygenDepthLimit {
  readonly depth: Depth
  /** Absolute pressure there. */
  readonly pressure: AbsolutePressure
  readonly oxygenPartialPressure: AbsolutePressure
  readonly cautions: readonly CautionId[]
}

/** The mixture richest in oxygen that a depth allows. */
export interface RichestMixture {
  readonly oxygenFraction: MoleFraction
  /** Below the limit where even pure oxygen does not reach it. */
  readonly oxygenPartialPressure: AbsolutePressure
  readonly cautions: readonly CautionId[]
}

const highest: Accepted = {
  above: 0,
  atMost: 3,
  unit: bar,
  hint: 'State the highest oxygen partial pressure that the training or the rule allows.',
}
const lowest: Accepted = {
  above: 0,
  atMost: 1,
  unit: bar,
  hint: 'State the lowest oxygen partial pressure that the training or the rule allows.',
}
const cautions: readonly CautionId[] = ['oxygen-limits', 'analyse-mixture']

/**
 * Maximum operating depth: the deepest at which the oxygen of a mixture stays within a limit. Round it downwards
 * only.
 *
 * @param at - mixture; highest oxygen partial pressure, absolute, Pa, above 0 and at most 3 bar, which has no default; the water:
 *   surface pressure, density, gravity as in `WaterColumn`
 * @returns depth, m, with the pressures there and the cautions that belong to it
 * @throws LitrebarError `range` if an input is out of range, or the limit is exceeded at the surface already; `mixture` if
 *   the mixture is none, or has no oxygen
 * @source us-navy-diving-manual, Dalton's law
 * @example
 * const sea = { surfacePressure: absolute(1.013, bar), density: measure(1025, kilogramPerCubicMetre) }
 * const { depth } = maximumOperatingDepth({ mixture: nitrox(0.32), maximumOxygenPartialPressure: absolute(1.4, bar), ...sea })
 * inUnit(depth, metre).toFixed(1) // => '33.4'
 */
export function maximumOperatingDepth(
  at: WaterColumn & { readonly mixture: Mixture; readonly maximumOxygenPartialPressure: AbsolutePressure },
): OxygenDepthLimit {
  requireKeys('at', at, {
    surfacePressure: true,
    density: true,
    gravity: false,
    mixture: true,
    maximumOxygenPartialPressure: true,
  })
  const { mixture, maximumOxygenPartialPressure: limit, ...water } = at
  requireWithin('maximumOxygenPartialPressure', limit, highest)
  requireOxygen(mixture)
  const atSurface = partialPressure(mixture.oxygen, water.surfacePressure)
  if (atSurface > limit) {
    throw new LitrebarError({
      code: 'range',
      argument: 'maximumOxygenPartialPressure',
      value: `${limit / bar.factor} bar`,
      expected: `at least ${atSurface / bar.factor} bar, as at the surface`,
      hint: 'No depth keeps this mixture within the limit.',
    })
  }
  return depthLimit(limit, mixture, water)
}

/**
 * Minimum operating depth: the shallowest at which a mixture holds enough oxygen. 0 if it does at the surface.
 *
 * @param at - mixture; lowest oxygen partial pressure, absolute, Pa, above 0 and at most 1 bar, which has no default; the water:
 *   surface pressure, density, gravity as in `WaterColumn`
 * @returns depth, m, with the pressures there and the cautions that belong to it
 * @throws LitrebarError `range` if an input is out of range; `mixture` if the mixture is none, or has no oxygen
 * @source us-navy-diving-manual, Dalton's law
 * @example
 * const sea = { surfacePressure: absolute(1.013, bar), density: measure(1025, kilogramPerCubicMetre) }
 * const mixture = trimix({ oxygen: 0.1, helium: 0.7 })
 * const { depth } = minimumOperatingDepth({ mixture, minimumOxygenPartialPressure: absolute(0.18, bar), ...sea })
 * inUnit(depth, metre).toFixed(1) // => '7.8'
 */
export function minimumOperatingDepth(
  at: WaterColumn & { readonly mixture: Mixture; readonly minimumOxygenPartialPressure: AbsolutePressure },
): OxygenDepthLimit {
  requireKeys('at', at, {
    surfacePressure: true,
    density: true,
    gravity: false,
    mixture: true,
    minimumOxygenPartialPressure: true,
  })
  const { mixture, minimumOxygenPartialPressure: limit, ...water } = at
  requireWithin('minimumOxygenPartialPressure', limit, lowest)
  requireOxygen(mixture)
  const atSurface = partialPressure(mixture.oxygen, water.surfacePressure)
  return depthLimit(Math.max(atSurface, limit) as AbsolutePressure, mixture, water)
}

/**
 * The richest mixture for a depth: the oxygen fraction that just meets a limit of its partial pressure, or 1 where pure oxygen
 * stays below it.
 *
 * @param at - depth, m; highest oxygen partial pressure, absolute, Pa, above 0 and at most 3 bar, which has no default; the water:
 *   surface pressure, density, gravity as in `WaterColumn`
 * @returns mole fraction of oxygen, its partial pressure, and the cautions that belong to it
 * @throws LitrebarError `range` if an input is out of range
 * @source us-navy-diving-manual, Dalton's law
 * @example
 * const sea = { surfacePressure: absolute(1.013, bar), density: measure(1025, kilogramPerCubicMetre) }
 * const { oxygenFraction } = richestMixture({
 *   depth: depthOf(30, metre),
 *   maximumOxygenPartialPressure: absolute(1.4, bar),
 *   ...sea,
 * })
 * oxygenFraction.toFixed(3) // => '0.348'
 */
export function richestMixture(
  at: WaterColumn & { readonly depth: Depth; readonly maximumOxygenPartialPressure: AbsolutePressure },
): RichestMixture {
  requireKeys('at', at, {
    surfacePressure: true,
    density: true,
    gravity: false,
    depth: true,
    maximumOxygenPartialPressure: true,
  })
  const { maximumOxygenPartialPressure: limit, ...place } = at
  requireWithin('maximumOxygenPartialPressure', limit, highest)
  const pressure = pressureAtDepth(place)
  return pressure > limit
    ? { oxygenFraction: (limit / pressure) as MoleFraction, oxygenPartialPressure: limit, cautions }
    : { oxygenFraction: 1 as MoleFraction, oxygenPartialPressure: pressure, cautions }
}

function requireOxygen(mixture: Mixture): void {
  requireMixture('mixture', mixture)
  if (mixture.oxygen > 0) return
  throw new LitrebarError({
    code: 'mixture',
    argument: 'mixture.oxygen',
    value: '0',
    expected: 'above 0',
    hint: 'A mixture without oxygen has no such depth.',
  })
}

function depthLimit(oxygenPartialPressure: AbsolutePressure, mixture: Mixture, water: WaterColumn): OxygenDepthLimit {
  // not below the surface pressure by the last bit, where the limit is met at the surface
  const pressure = Math.max(oxygenPartialPressure / mixture.oxygen, water.surfacePressure) as AbsolutePressure
  return { depth: depthAtPressure({ ...water, pressure }), pressure, oxygenPartialPressure, cautions }
}
