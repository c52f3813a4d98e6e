import { requireKeys } from '../../errors/index.ts'
import { partialPressure } from '../../gas-law/index.ts'
import { verdictFrom } from '../../references/assessment.ts'
import type { Assessment, Reason } from '../../references/index.ts'
import { type AbsolutePressure, type Accepted, bar, minute, requireWithin } from '../../units/index.ts'
import { type BreathedDive, requireDive, stretchesOf } from './breathed-dive.ts'
import { mixtureOf } from './drawdown.ts'

/** Limits of oxygen partial pressure that training or local rules state; nothing here has a default. */
export interface StatedOxygenLimits {
  readonly highest: AbsolutePressure
  readonly lowest: AbsolutePressure
}

const highest: Accepted = { above: 0, atMost: 3, unit: bar, hint: 'State the limit of your training or rules.' }
const lowest: Accepted = { above: 0, atMost: 1, unit: bar, hint: 'State the limit of your training or rules.' }

/**
 * Whether what is breathed on a dive stays within the stated limits of oxygen partial pressure, mixture by mixture:
 * a profile may go deeper than one of its mixtures allows, or start with one that is only for depth.
 *
 * @param dive - as for `gasUsed`
 * @param limits - highest and lowest oxygen partial pressure, absolute, Pa
 * @returns the highest oxygen partial pressure on the dive held against the limit, with every stretch beyond either limit as a reason
 * @throws LitrebarError `range` or `input`
 * @source us-navy-diving-manual, Dalton's law
 * @example
 * const stage = {
 *   internalVolume: internalVolumeOf(7, litre),
 *   pressure: absolute(200, bar),
 *   temperature: temperatureOf(10, celsius),
 *   mixture: nitrox(0.5),
 * }
 * const dive = {
 *   profile: steadyProfile(absolute(3.5, bar), measure(10, minute)),
 *   breathing: [{ from: measure(0, minute), respiratoryMinuteVolume: measure(15, litrePerMinute), cylinder: 'stage' }],
 *   cylinders: { stage: { contents: stage, residualPressure: absolute(30, bar) } },
 *   breathingGasTemperature: temperatureOf(10, celsius),
 * }
 * assessMixtures(dive, { highest: absolute(1.6, bar), lowest: absolute(0.18, bar) }).verdict // => 'beyond'
 */
export function assessMixtures(dive: BreathedDive, limits: StatedOxygenLimits): Assessment<AbsolutePressure> {
  requireDive(dive)
  requireKeys('limits', limits, { highest: true, lowest: true })
  requireWithin('limits.highest', limits.highest, highest)
  requireWithin('limits.lowest', limits.lowest, lowest)
  let greatest = 0
  const against: Reason[] = []
  for (const stretch of stretchesOf(dive)) {
    const { oxygen } = mixtureOf(dive, stretch.cylinder)
    const most = partialPressure(oxygen, Math.max(stretch.from, stretch.to) as AbsolutePressure)
    const least = partialPressure(oxygen, Math.min(stretch.from, stretch.to) as AbsolutePressure)
    greatest = Math.max(greatest, most)
    const where = `${stretch.cylinder}, from minute ${inMinutes(stretch.start)} to ${inMinutes(stretch.start + stretch.duration)}`
    if (most > limits.highest) {
      against.push({
        code: 'above-highest-oxygen',
        text: `${where}: oxygen up to ${inBars(most)} bar, the limit stated is ${inBars(limits.highest)} bar.`,
      })
    }
    if (least < limits.lowest) {
      against.push({
        code: 'below-lowest-oxygen',
        text: `${where}: oxygen down to ${inBars(least)} bar, the limit stated is ${inBars(limits.lowest)} bar.`,
      })
    }
  }
  return {
    value: greatest as AbsolutePressure,
    limit: limits.highest,
    margin: limits.highest - greatest,
    ...verdictFrom({
      against,
      doubts: [],
      notes:
        against.length === 0
          ? [{ code: 'within-stated-limits', text: 'Every stretch stays within the two limits stated.' }]
          : [],
    }),
    cautions: ['oxygen-limits', 'analyse-mixture', 'always'],
    sources: ['us-navy-diving-manual'],
  }
}

function inMinutes(seconds: number): string {
  return String(Number((seconds / minute.factor).toPrecision(4)))
}

function inBars(pascals: number): string {
  return String(Number((pascals / bar.factor).toPrecision(4)))
}
