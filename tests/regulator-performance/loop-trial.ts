import { breathingAnalysis } from '../../src/regulator-performance/index.ts'
import { seededRandom } from '../../src/uncertainty/index.ts'
import type { Duration } from '../../src/units/index.ts'
import { type SyntheticSetting, syntheticLog, trueWork } from './synthetic-log.ts'

/** What one synthetic log came to, Pa. */
export interface Trial {
  readonly setting: SyntheticSetting
  readonly truth: number
  readonly error: number
  readonly standardUncertainty: number
  readonly expandedUncertainty: number
  readonly within: boolean
}

/**
 * One log of 40 breaths drawn at random: machine, apparatus, sampling, noise, drift, lag. The analyst is told the lag and the gain
 * with errors drawn from the uncertainties that he states.
 */
export function trial(seed: number, index: number, share: { readonly knownChannels?: boolean } = {}): Trial {
  const uniform = seededRandom(seed, index + 1)
  const between = (low: number, high: number): number => low + (high - low) * uniform()
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
  const delay = between(0, 0.04)
  const timeConstant = between(0, 0.02)
  const pressureGainUncertainty = share.knownChannels ? 0 : between(0.001, 0.01)
  const lagUncertainty = share.knownChannels ? 0 : between(0, 0.003)
  const half = (): readonly [number, number, number] => [between(0, 400), between(1e4, 1e5), between(1e7, 6e7)]
  const setting: SyntheticSetting = {
    breaths: 40,
    breathingFrequency: between(10, 30) / 60,
    tidalVolume: between(0.001, 0.003),
    inhalation: half(),
    exhalation: half(),
    elastance: between(0, 3e5),
    samplesPerBreath: Math.round(between(60, 400)),
    unevenness: between(0, 0.8),
    pressureNoise: between(2, 60),
    volumeNoise: between(2e-7, 4e-6),
    pressureOffset: between(-300, 300),
    pressureDrift: between(-10, 10),
    wander: { amplitude: between(0, 100), period: between(60, 300) },
    volumeDrift: between(-1e-5, 1e-5),
    delay,
    timeConstant,
    gain: 1 + pressureGainUncertainty * normal(),
    startPhase: uniform(),
  }
  const statedDelay = Math.max(0, delay + lagUncertainty * normal())
  const analysis = breathingAnalysis(syntheticLog(setting, uniform, normal), {
    zero: 'end exhalation',
    pressureGainUncertainty,
    lag: {
      delay: statedDelay as Duration,
      timeConstant: timeConstant as Duration,
      standardUncertainty: lagUncertainty as Duration,
    },
  })
  const { value, standardUncertainty, expandedUncertainty } = analysis.workOfBreathingPerLitre
  const truth = trueWork(setting)
  const error = value - truth
  return {
    setting,
    truth,
    error,
    standardUncertainty,
    expandedUncertainty,
    within: Math.abs(error) <= expandedUncertainty,
  }
}
