import { LitrebarError, requireKeys } from '../../errors/index.ts'
import type { CautionId, Reason } from '../../references/index.ts'
import {
  type Accepted,
  bar,
  type EnergyPerVolume,
  type GaugePressure,
  joulePerLitre,
  type PressureDifference,
  requireWithin,
} from '../../units/index.ts'

/** Work measured at one supply pressure. */
export interface WorkAtSupply {
  readonly supplyPressure: GaugePressure
  readonly workOfBreathingPerLitre: EnergyPerVolume
  readonly standardUncertainty: EnergyPerVolume
}

/** Where the work passes a limit as the cylinder empties, or on which side of it everything lies. */
export type SupplyAtLimit = {
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
} & (
  | {
      readonly kind: 'passes'
      /** Below it the work lies beyond the limit: on the straight line between the two supplies measured. */
      readonly supplyPressure: GaugePressure
      readonly standardUncertainty: PressureDifference
      /** The supplies measured on both sides. */
      readonly between: { readonly beyondAt: GaugePressure; readonly withinAt: GaugePressure }
      readonly parts: {
        /** Of the two works. */
        readonly work: PressureDifference
        /** That the work does not follow a straight line: it may stay level and then rise at once. */
        readonly interpolation: PressureDifference
      }
    }
  | { readonly kind: 'within throughout'; readonly lowestMeasured: GaugePressure }
  | { readonly kind: 'beyond at the highest'; readonly highestMeasured: GaugePressure }
)

const supply: Accepted = { atLeast: 0, atMost: 500, unit: bar, hint: 'Give the reading of the gauge.' }
const work: Accepted = { unit: joulePerLitre, hint: 'State the work of the loop.' }
const uncertainty: Accepted = { atLeast: 0, unit: joulePerLitre, hint: 'State a standard deviation.' }
const bound: Accepted = { above: 0, unit: joulePerLitre, hint: '`acceptanceLimitAt` gives it.' }

/**
 * Supply pressure below which a regulator exceeds a limit of work, from loops measured at two or more supplies with everything else
 * unchanged. Read from the full cylinder down: the first crossing counts, whatever a lower supply shows.
 *
 * Between two supplies nothing was measured. The work is level until the stage no longer regulates and then rises at once, so the
 * interpolation counts with as much uncertainty as reaches the further of the two supplies: measure close to the limit.
 *
 * @param measurements - supply, gauge, Pa; work per litre with its standard uncertainty, Pa; two or more, in any order
 * @param limit - the most that the work may be, Pa
 * @returns the supply pressure, gauge, Pa, with its uncertainty, or on which side all measurements lie
 * @throws LitrebarError `range`; `input` for fewer than two measurements, two at one supply, or an unknown key
 * @source litrebar-derivation
 * @example
 * const at = (supply: number, work: number) => ({ supplyPressure: gauge(supply, bar), workOfBreathingPerLitre: difference(work, joulePerLitre), standardUncertainty: difference(0.05, joulePerLitre) })
 * const found = supplyAtLimit([at(200, 1.4), at(50, 1.6), at(40, 2.1), at(30, 4)], difference(3, joulePerLitre))
 * const supply = found.kind === 'passes' ? inUnit(found.supplyPressure, bar).toFixed(1) : '' // => '35.3'
 */
export function supplyAtLimit(measurements: readonly WorkAtSupply[], limit: EnergyPerVolume): SupplyAtLimit {
  requireWithin('limit', limit, bound)
  const falling = requireMeasurements(measurements)
  const because = reasonsOf(falling, limit)
  const cautions = ['always', 'regulator', 'reserve'] as const
  const at = falling.findIndex((one) => one.workOfBreathingPerLitre > limit)
  const [highest, lowest] = [falling[0] as WorkAtSupply, falling.at(-1) as WorkAtSupply]
  if (at < 0) return { kind: 'within throughout', lowestMeasured: lowest.supplyPressure, because, cautions }
  if (at === 0) return { kind: 'beyond at the highest', highestMeasured: highest.supplyPressure, because, cautions }
  return { ...crossing(falling[at] as WorkAtSupply, falling[at - 1] as WorkAtSupply, limit), because, cautions }
}

function crossing(beyond: WorkAtSupply, within: WorkAtSupply, limit: number) {
  const apart = within.supplyPressure - beyond.supplyPressure
  const rise = beyond.workOfBreathingPerLitre - within.workOfBreathingPerLitre
  const share = (beyond.workOfBreathingPerLitre - limit) / rise
  const supplyPressure = beyond.supplyPressure + share * apart
  const perWork = apart / rise
  const ofWork = perWork * Math.hypot((1 - share) * beyond.standardUncertainty, share * within.standardUncertainty)
  // rectangular, as wide on both sides as the further supply is away
  const ofInterpolation = (Math.max(share, 1 - share) * apart) / Math.sqrt(3)
  return {
    kind: 'passes',
    supplyPressure: supplyPressure as GaugePressure,
    standardUncertainty: Math.hypot(ofWork, ofInterpolation) as PressureDifference,
    between: { beyondAt: beyond.supplyPressure, withinAt: within.supplyPressure },
    parts: { work: ofWork as PressureDifference, interpolation: ofInterpolation as PressureDifference },
  } as const
}

/** What keeps the answer from being certain, in the order of supply. */
function reasonsOf(falling: readonly WorkAtSupply[], limit: number): readonly Reason[] {
  const reasons: Reason[] = []
  const near = falling.filter((one) => Math.abs(one.workOfBreathingPerLitre - limit) < 2 * one.standardUncertainty)
  if (near.length > 0) {
    reasons.push({
      code: 'within-uncertainty',
      text: `the work at ${listed(near)} lies within its expanded uncertainty of the limit: another measurement may fall on the other side`,
    })
  }
  const first = falling.findIndex((one) => one.workOfBreathingPerLitre > limit)
  const again = first < 0 ? [] : falling.slice(first).filter((one) => one.workOfBreathingPerLitre <= limit)
  if (again.length > 0) {
    reasons.push({
      code: 'passes-more-than-once',
      text: `the work is back within the limit at ${listed(again)}: it does not rise steadily as the supply falls`,
    })
  }
  return reasons
}

function listed(measurements: readonly WorkAtSupply[]): string {
  return measurements.map((one) => `${Number((one.supplyPressure / bar.factor).toPrecision(4))} bar`).join(' and ')
}

/** The measurements from the highest supply down. */
function requireMeasurements(measurements: readonly WorkAtSupply[]): readonly WorkAtSupply[] {
  if (!Array.isArray(measurements) || measurements.length < 2) {
    throw new LitrebarError({
      code: 'input',
      argument: 'measurements',
      value: Array.isArray(measurements) ? `${measurements.length} measurements` : 'no list',
      expected: 'at least 2',
      hint: 'Measure at one supply on each side of the limit.',
    })
  }
  measurements.forEach((one: WorkAtSupply, index) => {
    const path = `measurements[${index}]`
    requireKeys(path, one, { supplyPressure: true, workOfBreathingPerLitre: true, standardUncertainty: true })
    requireWithin(`${path}.supplyPressure`, one.supplyPressure, supply)
    requireWithin(`${path}.workOfBreathingPerLitre`, one.workOfBreathingPerLitre, work)
    requireWithin(`${path}.standardUncertainty`, one.standardUncertainty, uncertainty)
  })
  const falling = [...(measurements as readonly WorkAtSupply[])].sort((a, b) => b.supplyPressure - a.supplyPressure)
  const twice = falling.find((one, index) => one.supplyPressure === falling[index + 1]?.supplyPressure)
  if (twice !== undefined) {
    throw new LitrebarError({
      code: 'input',
      argument: 'measurements',
      value: `two measurements at ${listed([twice])}`,
      expected: 'supply pressures that differ',
      hint: 'Give the mean of repeated measurements.',
    })
  }
  return falling
}
