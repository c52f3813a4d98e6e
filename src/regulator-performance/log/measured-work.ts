import { coverageFactor, effectiveDegreesOfFreedom, observationsOf } from '../../uncertainty/index.ts'
import type { Duration, EnergyPerVolume } from '../../units/index.ts'
import type { MeasuredBreath } from './breath-table.ts'
import { mean } from './mean.ts'

/** The mean work per litre with its uncertainty. */
export interface MeasuredWork {
  readonly value: EnergyPerVolume
  readonly standardUncertainty: EnergyPerVolume
  /** Half the two-sided interval that covers 95 %: twice the standard uncertainty, more where few breaths stand behind it. */
  readonly expandedUncertainty: EnergyPerVolume
  readonly coverageFactor: number
  readonly degreesOfFreedom: number
  /** Standard uncertainties that make it up, Pa. */
  readonly parts: {
    /** Spread of the breaths over √n; of a single breath, its noise. */
    readonly breaths: EnergyPerVolume
    readonly pressureGain: EnergyPerVolume
    readonly lag: EnergyPerVolume
    /** What noise of the volume leaves in the turns. */
    readonly tidalVolume: EnergyPerVolume
    readonly sampling: EnergyPerVolume
    /** What the steps of the numbers leave, of a converter or of printed decimals. */
    readonly resolution: EnergyPerVolume
  }
}

/** What the analyst states of the pressure channel. */
interface StatedChannel {
  readonly pressureGainUncertainty: number
  readonly lag?: { readonly standardUncertainty?: Duration }
}

// The correction for curvature is exact to the fourth order of the step for a smooth breath; steps in pressure leave an error of its
// own size. Half of it as a standard uncertainty covers both.
const shareOfCurvature = 0.5
// A turn is looked for about the outermost of noisy samples, which can leave up to one standard deviation of the noise in the tidal
// volume whatever the number of breaths: a rectangular distribution of that half width.
const shareOfVolumeNoise = 1 / Math.sqrt(3)

// Standard deviation of a rectangular distribution one step wide.
const rectangular = 1 / Math.sqrt(12)

// What two standard uncertainties of a normal distribution cover: the usual reading of "95 %".
const coverage = 0.9545

/** Mean work per litre of the breaths, with what makes it uncertain. */
export function measuredWork(
  measured: readonly MeasuredBreath[],
  { pressureGainUncertainty, lag }: StatedChannel,
  noise: { readonly pressure: number; readonly volume: number },
  {
    samplesPerBreath,
    pressureStep,
    volumeStep,
  }: { readonly samplesPerBreath: number; readonly pressureStep: number; readonly volumeStep: number },
): MeasuredWork {
  const works = measured.map((one) => one.inhalationPerLitre + one.exhalationPerLitre)
  const value = mean(works)
  const breaths =
    works.length > 1
      ? {
          standardUncertainty: observationsOf(works).standardUncertaintyOfMean,
          degreesOfFreedom: works.length - 1,
        }
      : {
          standardUncertainty: (noise.pressure * Math.PI) / Math.sqrt(2 * samplesPerBreath),
          degreesOfFreedom: samplesPerBreath,
        }
  const tidalVolume = mean(measured.map((one) => one.tidalVolume))
  // A machine repeats its breaths, so that the mean of many does not average the steps away: as much as a single breath leaves.
  const resolution = Math.hypot(
    (rectangular * pressureStep * Math.PI) / Math.sqrt(2 * samplesPerBreath),
    (Math.abs(value) * rectangular * volumeStep) / tidalVolume,
  )
  const parts = {
    breaths: breaths.standardUncertainty,
    pressureGain: Math.abs(value) * pressureGainUncertainty,
    lag: Math.abs(mean(measured.map((one) => one.perDelay))) * (lag?.standardUncertainty ?? 0),
    tidalVolume: (Math.abs(value) * shareOfVolumeNoise * noise.volume) / tidalVolume,
    sampling: shareOfCurvature * Math.abs(mean(measured.map((one) => one.curvaturePerLitre))),
    resolution,
  }
  const combined = Math.hypot(...Object.values(parts))
  const degreesOfFreedom = combined > 0 ? effectiveDegreesOfFreedom(combined, [breaths]) : Infinity
  const factor = coverageFactor({ probability: coverage, degreesOfFreedom, sides: 'two' })
  return {
    value: value as EnergyPerVolume,
    standardUncertainty: combined as EnergyPerVolume,
    expandedUncertainty: (factor * combined) as EnergyPerVolume,
    coverageFactor: factor,
    degreesOfFreedom,
    parts: parts as MeasuredWork['parts'],
  }
}
