import { requireKeys, requireWord } from '../../errors/index.ts'
import { molarDensity, molarMass } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type Accepted,
  type Density,
  type EnergyPerVolume,
  type Fraction,
  joulePerLitre,
  one,
  requireWithin,
} from '../../units/index.ts'
import type { LoopFinding } from '../loop/loop-finding.ts'
import { requireBreathedGas, requireReach, type WorkInGas, workAtDensity } from './density-scaling.ts'

/** Work of two measurements in two gases, compared as if both had been breathed in the gas of the first. */
export interface WorkInTwoGases {
  /** Work of the second at the density of the first. */
  readonly correctedWork: EnergyPerVolume
  /** The corrected second less the first: below 0 the second costs less. */
  readonly change: EnergyPerVolume
  readonly standardUncertainty: EnergyPerVolume
  /** Twice the standard uncertainty. */
  readonly expandedUncertainty: EnergyPerVolume
  readonly parts: {
    readonly first: EnergyPerVolume
    /** Of the second, as it is carried to the other density. */
    readonly second: EnergyPerVolume
    /** That the share which density leaves alone is known only within its range. */
    readonly constantShare: EnergyPerVolume
  }
  readonly meaning: 'less work' | 'more work' | 'no change shown'
  /** Of the first over that of the second. */
  readonly densityRatio: Fraction
  readonly densities: { readonly first: Density; readonly second: Density }
  readonly findings: readonly LoopFinding[]
  readonly cautions: readonly CautionId[]
}

const share: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Give three tenths as 0.3.' }
const work: Accepted = { unit: joulePerLitre, hint: 'State a measured work per litre.' }
const uncertainty: Accepted = { atLeast: 0, unit: joulePerLitre, hint: 'State a standard uncertainty.' }

/** A measurement whose uncertainty is stated. */
export type MeasuredInGas = WorkInGas & Required<Pick<WorkInGas, 'standardUncertainty'>>

/**
 * Two regulators, or one before and after, whose work was measured in two gases or at two depths: the second carried to the density of
 * the first, and then compared. Without the correction the denser gas alone makes a regulator look worse.
 *
 * How much of the work density leaves alone is not seen in one measurement: state the range it lies in, from several densities
 * (`predictedWork`) or ventilations (`resistanceFit`), or `unknown` for anything from 0 to 1. Both have to be of one ventilation, away from
 * the flow limit.
 *
 * @param first - work per litre with its standard uncertainty, Pa, and the gas
 * @param second - the same of the other
 * @param options - `constantShare`: lowest and highest share of the second's work that density leaves alone; `extrapolate` for densities
 *   further apart than a factor of two
 * @returns the corrected work, the change with its uncertainty, and what it means
 * @throws LitrebarError `range`; `input` for an unknown or missing key; `outside-validity` for densities further apart than twice; as `molarDensity`
 * @source litrebar-derivation; gum-2008, 4.3.7 and 5.1.2
 * @example
 * const temperature = temperatureOf(20, celsius)
 * const standardUncertainty = difference(0.03, joulePerLitre)
 * const inAir = { gas: { mixture: dryAir, pressure: absolute(4, bar), temperature }, workOfBreathingPerLitre: difference(1.2, joulePerLitre), standardUncertainty }
 * const inTrimix = { gas: { mixture: trimix({ oxygen: 0.18, helium: 0.45 }), pressure: absolute(6, bar), temperature }, workOfBreathingPerLitre: difference(1.3, joulePerLitre), standardUncertainty }
 * const { correctedWork, meaning } = workInTwoGases(inAir, inTrimix, { constantShare: { from: 0.1, to: 0.4 } })
 * inUnit(correctedWork, joulePerLitre).toFixed(2) // => '1.38'
 * const shown = meaning // => 'more work'
 */
export function workInTwoGases(
  first: MeasuredInGas,
  second: MeasuredInGas,
  options: {
    readonly constantShare: { readonly from: number; readonly to: number } | 'unknown'
    readonly extrapolate?: boolean
  },
): WorkInTwoGases {
  requireKeys('options', options, { constantShare: true, extrapolate: false })
  requireWord('options.extrapolate', options.extrapolate ?? false, [true, false])
  const { from, to } = requireShare(options.constantShare)
  requireMeasured('first', first)
  requireMeasured('second', second)
  const densities = { first: densityOf(first), second: densityOf(second) }
  const ratio = densities.first / densities.second
  requireReach(ratio, densities.first, options.extrapolate ?? false)
  const at = (constantShare: number, of: EnergyPerVolume) =>
    workAtDensity({ workOfBreathingPerLitre: of, density: densities.second, constantShare }, densities.first)
  const middle = (from + to) / 2
  const corrected = at(middle, second.workOfBreathingPerLitre)
  const parts = {
    first: first.standardUncertainty,
    second: at(middle, second.standardUncertainty),
    // a rectangular distribution between the two ends
    constantShare: (Math.abs(at(to, second.workOfBreathingPerLitre) - at(from, second.workOfBreathingPerLitre)) /
      Math.sqrt(12)) as EnergyPerVolume,
  }
  const change = corrected - first.workOfBreathingPerLitre
  const combined = Math.hypot(parts.first, parts.second, parts.constantShare)
  const expanded = 2 * combined
  return {
    correctedWork: corrected,
    change: change as EnergyPerVolume,
    standardUncertainty: combined as EnergyPerVolume,
    expandedUncertainty: expanded as EnergyPerVolume,
    parts,
    meaning: Math.abs(change) <= expanded ? 'no change shown' : change < 0 ? 'less work' : 'more work',
    densityRatio: ratio as Fraction,
    densities,
    findings: findingsOf(ratio),
    cautions: ['always', 'regulator'],
  }
}

function densityOf({ gas: { mixture, pressure, temperature } }: WorkInGas): Density {
  return (molarDensity(mixture, pressure, temperature) * molarMass(mixture)) as Density
}

function findingsOf(ratio: number): readonly LoopFinding[] {
  if (ratio <= 2 && ratio >= 0.5) return []
  return [
    {
      code: 'extrapolated',
      text: `The densities lie ${ratio.toFixed(2)} to one apart: a regulator near its flow limit departs from the correction.`,
    },
  ]
}

function requireShare(given: { readonly from: number; readonly to: number } | 'unknown') {
  if (given === 'unknown') return { from: 0, to: 1 }
  requireKeys('options.constantShare', given, { from: true, to: true })
  requireWithin('options.constantShare.from', given.from, share)
  requireWithin('options.constantShare.to', given.to, { ...share, atLeast: given.from })
  return given
}

function requireMeasured(path: string, measured: MeasuredInGas): void {
  requireKeys(path, measured, { gas: true, workOfBreathingPerLitre: true, standardUncertainty: true })
  requireBreathedGas(`${path}.gas`, measured.gas)
  requireWithin(`${path}.workOfBreathingPerLitre`, measured.workOfBreathingPerLitre, work)
  requireWithin(`${path}.standardUncertainty`, measured.standardUncertainty, uncertainty)
}
