import { requireKeys } from '../../errors/index.ts'
import { type Accepted, type Fraction, litrePerMinute, one, requireWithin, type VolumeFlow } from '../../units/index.ts'

/** Peak of what sinusoidal breathers draw together. */
export interface PeakDemand {
  /** At the pressure of the divers. */
  readonly peakFlow: VolumeFlow
  /** Over the peak of one breather. */
  readonly factor: Fraction
}

const ventilation: Accepted = { above: 0, atMost: 500, unit: litrePerMinute, hint: 'State litres per minute at depth.' }
const phase: Accepted = {
  atLeast: 0,
  atMost: 0.5,
  unit: one,
  hint: 'Give the shift as a share of the breath, 0 to 0.5.',
}

/**
 * Peak demand of one breather, or of two with their breaths shifted against each other. Two in step draw twice the peak of one; two in
 * opposition no more than one; at random the mean is 1.436 times. A supply is laid out for 2.
 *
 * @param respiratoryMinuteVolume - of each, m³/s at the pressure of the divers
 * @param second - left out for one breather; `shift` as a share of the breath, 0 to 0.5; or `'random'` for the mean over all shifts
 * @returns peak flow, m³/s, and its factor over one breather
 * @throws LitrebarError `range` for a ventilation or a shift out of range
 * @source litrebar-derivation, sum of two rectified sinusoids
 * @example
 * peakDemand(measure(62.5, litrePerMinute), { shift: 0.5 as Fraction }).factor // => 1
 */
export function peakDemand(
  respiratoryMinuteVolume: VolumeFlow,
  second?: { readonly shift: Fraction } | 'random',
): PeakDemand {
  requireWithin('respiratoryMinuteVolume', respiratoryMinuteVolume, ventilation)
  if (second !== undefined && second !== 'random') {
    requireKeys('second', second, { shift: true })
    requireWithin('second.shift', second.shift, phase)
  }
  const factor =
    second === undefined
      ? 1
      : second === 'random'
        ? (4 * Math.sin(Math.PI / 3) + Math.PI / 3) / Math.PI
        : Math.max(1, 2 * Math.cos(Math.PI * second.shift))
  return { peakFlow: (Math.PI * respiratoryMinuteVolume * factor) as VolumeFlow, factor: factor as Fraction }
}
