import { type BreathingLog, resistiveWork } from '../../src/regulator-performance/index.ts'
import type { FlowResistance, PressureDifference, QuadraticFlowResistance, VolumeFlow } from '../../src/units/index.ts'

/** A log of a simulated machine whose true work is known. SI throughout. */
export interface SyntheticSetting {
  readonly breaths: number
  readonly breathingFrequency: number
  readonly tidalVolume: number
  /** Cracking pressure, laminar and turbulent resistance of inhalation and exhalation. */
  readonly inhalation: readonly [number, number, number]
  readonly exhalation: readonly [number, number, number]
  readonly elastance: number
  readonly samplesPerBreath: number
  /** Largest departure of a step from the mean step, as a share of it. */
  readonly unevenness: number
  readonly pressureNoise: number
  readonly volumeNoise: number
  readonly pressureOffset: number
  /** Pa/s. */
  readonly pressureDrift: number
  /** Slow wander of the zero: Pa and s. */
  readonly wander: { readonly amplitude: number; readonly period: number }
  /** m³/s. */
  readonly volumeDrift: number
  readonly delay: number
  readonly timeConstant: number
  /** Measured over true pressure. */
  readonly gain: number
  /** Where in a breath the record starts. */
  readonly startPhase: number
}

export const calm: SyntheticSetting = {
  breaths: 40,
  breathingFrequency: 25 / 60,
  tidalVolume: 0.0025,
  inhalation: [400, 2e4, 3e7],
  exhalation: [150, 5e4, 6e7],
  elastance: 1e5,
  samplesPerBreath: 200,
  unevenness: 0,
  pressureNoise: 0,
  volumeNoise: 0,
  pressureOffset: 0,
  pressureDrift: 0,
  wander: { amplitude: 0, period: 100 },
  volumeDrift: 0,
  delay: 0,
  timeConstant: 0,
  gain: 1,
  startPhase: 0,
}

/** Work per litre of the setting, from the closed form. */
export function trueWork(setting: SyntheticSetting): number {
  const parts = ([cracking, laminar, turbulent]: readonly [number, number, number]) => ({
    crackingPressure: cracking as PressureDifference,
    laminarResistance: laminar as FlowResistance,
    turbulentResistance: turbulent as QuadraticFlowResistance,
  })
  const peakFlow = (Math.PI * setting.breathingFrequency * setting.tidalVolume) as VolumeFlow
  const both = { inhalation: parts(setting.inhalation), exhalation: parts(setting.exhalation) }
  return resistiveWork(both, peakFlow).workOfBreathingPerLitre
}

/** Pressure that the apparatus makes at a time, before any channel. */
export function truePressure(setting: SyntheticSetting, time: number): number {
  const angle = 2 * Math.PI * setting.breathingFrequency * time
  const flow = Math.PI * setting.breathingFrequency * setting.tidalVolume * Math.sin(angle)
  const [cracking, laminar, turbulent] = flow >= 0 ? setting.inhalation : setting.exhalation
  const resisting = cracking + laminar * Math.abs(flow) + turbulent * flow * flow
  return -Math.sign(flow) * resisting - setting.elastance * volumeAt(setting, time)
}

function volumeAt(setting: SyntheticSetting, time: number): number {
  return (setting.tidalVolume / 2) * (1 - Math.cos(2 * Math.PI * setting.breathingFrequency * time))
}

/** The log, with noise from the given sources of uniform and of normal numbers. */
export function syntheticLog(setting: SyntheticSetting, uniform: () => number, normal: () => number): BreathingLog {
  const period = 1 / setting.breathingFrequency
  const start = setting.startPhase * period
  const end = start + setting.breaths * period
  const step = period / setting.samplesPerBreath
  const lagged = laggedPressure(setting)
  const time: number[] = []
  const volume: number[] = []
  const pressure: number[] = []
  for (let t = start; t < end + 0.5 * step; t += step * (1 + setting.unevenness * (2 * uniform() - 1))) {
    const elapsed = t - start
    const wander = setting.wander.amplitude * Math.sin((2 * Math.PI * elapsed) / setting.wander.period)
    const zero = setting.pressureOffset + setting.pressureDrift * elapsed + wander
    time.push(elapsed)
    volume.push(volumeAt(setting, t) + setting.volumeDrift * elapsed + setting.volumeNoise * normal())
    pressure.push(setting.gain * lagged(t - setting.delay) + zero + setting.pressureNoise * normal())
  }
  return {
    time: Float64Array.from(time),
    volume: Float64Array.from(volume),
    pressure: Float64Array.from(pressure),
  }
}

/** The true pressure behind a first-order lag: stepped finely over three breaths, of which the last repeats itself. */
function laggedPressure(setting: SyntheticSetting): (time: number) => number {
  const { timeConstant } = setting
  if (timeConstant === 0) return (time) => truePressure(setting, time)
  const period = 1 / setting.breathingFrequency
  const steps = 4000
  const step = period / steps
  const values = new Float64Array(steps + 1)
  const keep = Math.exp(-step / timeConstant)
  let lagging = truePressure(setting, 0)
  for (let k = 0; k <= 3 * steps; k++) {
    if (k >= 2 * steps) values[k - 2 * steps] = lagging
    // exact for a pressure that stays at its value in the middle of the step
    lagging = lagging * keep + truePressure(setting, (k + 0.5) * step) * (1 - keep)
  }
  return (time) => {
    const turns = time / period
    const at = (turns - Math.floor(turns)) * steps
    const k = Math.min(Math.floor(at), steps - 1)
    return (values[k] ?? 0) * (k + 1 - at) + (values[k + 1] ?? 0) * (at - k)
  }
}
