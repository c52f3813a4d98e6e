import type { Mixture } from '../../gas-law/index.ts'
import type { Duration, PressureVolume, Temperature } from '../../units/index.ts'
import { type Residual, requireResidual, residualAt } from '../gas/residual.ts'
import { amountIn, atPressure, type GasOptions } from '../gas/vessel-gas.ts'
import { amountBreathed, type BreathedDive, pressureTime, type Stretch } from './breathed-dive.ts'
import { firstCrossing } from './first-crossing.ts'

/** The moment at which a cylinder is used up, and what the dive would have taken from it after that. */
export interface RunOut {
  readonly at: Duration
  /** Pressure times volume that is breathed after the moment on the dive as planned, and that the cylinder does not hold. */
  readonly lacking: PressureVolume
}

/** What a dive takes from one cylinder, down to the residual pressure and no further. */
export interface Drawdown {
  readonly amount: number
  readonly pressureVolume: number
  readonly runsOut?: RunOut
}

/** Temperature of the gas in a cylinder over a dive: constant, or of moments with even changes between them. */
export interface GasTemperature {
  readonly at: (time: number) => Temperature
  /** Moments at which its slope changes; none if it is constant. */
  readonly breaks: readonly number[]
}

/** The temperature that the contents state, all dive long. */
export function constantTemperature(temperature: Temperature): GasTemperature {
  return { at: () => temperature, breaks: [] }
}

/** How a cylinder is drawn down by a dive: stretch after stretch, to the first moment at which its residual pressure is reached. */
export function drawdownOf<Name extends string>(
  dive: BreathedDive<Name>,
  name: Name,
  stretches: readonly Stretch<Name>[],
  reckoning: GasOptions,
  temperature: GasTemperature,
): Drawdown {
  const own = stretches.filter(({ cylinder }) => cylinder === name)
  const { contents, residualPressure } = dive.cylinders[name]
  const deepest = own.reduce((most, { from, to }) => Math.max(most, from, to), 0)
  requireResidual(`cylinders.${name}.residualPressure`, residualPressure, deepest)
  const start = amountIn(contents, reckoning)
  let amount = 0
  let pressureVolume = 0
  let at: number | undefined
  let lacking = 0
  for (const stretch of own) {
    const parts = temperature.breaks.length === 0 ? [stretch] : splitAt(stretch, temperature.breaks)
    for (const part of parts) {
      if (at !== undefined) {
        lacking += part.rate * pressureTime(part)
        continue
      }
      const kept = keptAmount(dive.cylinders[name].contents, residualPressure, part, reckoning, temperature)
      const above = (s: number): number =>
        start - amount - amountBreathed(reckoning, dive, shortened(part, s)) - kept(s)
      const end = firstCrossing(above, part.duration, isEven(residualPressure, temperature, part))
      const breathed = end === undefined ? part : shortened(part, end)
      amount += amountBreathed(reckoning, dive, breathed)
      pressureVolume += part.rate * pressureTime(breathed)
      if (end === undefined) continue
      at = part.start + end
      lacking += part.rate * (pressureTime(part) - pressureTime(breathed))
    }
  }
  const runsOut = at === undefined ? undefined : { at: at as Duration, lacking: lacking as PressureVolume }
  return runsOut === undefined ? { amount, pressureVolume } : { amount, pressureVolume, runsOut }
}

/** Amount that lies below the residual pressure, by the time since the start of a stretch, mol. */
export function keptAmount(
  contents: BreathedDive['cylinders'][string]['contents'],
  residual: Residual,
  { from, to, start, duration }: Pick<Stretch<string>, 'from' | 'to' | 'start' | 'duration'>,
  reckoning: GasOptions,
  temperature: GasTemperature,
): (s: number) => number {
  const at = (s: number): number =>
    amountIn(
      {
        ...atPressure(contents, residualAt(residual, from + ((to - from) * s) / duration)),
        temperature: temperature.at(start + s),
      },
      reckoning,
    )
  if (temperature.breaks.length > 0 || (typeof residual !== 'number' && from !== to)) return at
  const constant = at(0)
  return () => constant
}

/** Whether what is left above the residual can only fall on a stretch. */
function isEven(residual: Residual, { breaks }: GasTemperature, { from, to }: { from: number; to: number }): boolean {
  return breaks.length === 0 && (typeof residual === 'number' || to >= from)
}

/** The first part of a stretch. */
export function shortened<Part extends { from: number; to: number; duration: number }>(stretch: Part, s: number): Part {
  if (s === stretch.duration) return stretch
  const { from, to, duration } = stretch
  return { ...stretch, to: from + ((to - from) * s) / duration, duration: s }
}

/** A stretch cut at the moments that fall inside it. */
export function splitAt<Part extends { from: number; to: number; start: number; duration: number }>(
  stretch: Part,
  moments: readonly number[],
): readonly Part[] {
  const parts: Part[] = []
  let rest = stretch
  for (const moment of moments) {
    const s = moment - rest.start
    if (!(s > 0 && s < rest.duration)) continue
    const head = shortened(rest, s)
    parts.push(head)
    rest = { ...rest, from: head.to, start: moment, duration: rest.duration - s }
  }
  return [...parts, rest]
}

/** The mixture of a cylinder of a dive. */
export function mixtureOf<Name extends string>(dive: BreathedDive<Name>, name: Name): Mixture {
  return dive.cylinders[name].contents.mixture
}
