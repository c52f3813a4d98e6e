import { NormalEquations } from '../../uncertainty/least-squares.ts'
import type { Elastance, EnergyPerVolume, PressureDifference } from '../../units/index.ts'
import { crossingsOfSlices } from '../loop/loop-slices.ts'
import { meanOfSign } from '../loop/mean-of-sign.ts'
import { type FittedResistance, fitted } from '../prediction/resistance-fit.ts'
import { type LoopShape, loopShape } from '../prediction/resistance-model.ts'
import { addHalfToSlices, type BreathRows } from './breath-rows.ts'
import type { CleanLog } from './breathing-log.ts'

/** The mean of all breaths as a loop over volume, in columns of SI: the middle of each slice of the tidal volume. */
export interface AveragedLoop {
  readonly volumeCubicMetre: Float64Array
  readonly inhalationPressurePascal: Float64Array
  readonly exhalationPressurePascal: Float64Array
  /** Mean flow in each slice, positive in both halves. */
  readonly inhalationFlowCubicMetrePerSecond: Float64Array
  readonly exhalationFlowCubicMetrePerSecond: Float64Array
}

/** Work of one half on the averaged loop, per litre. */
export interface AveragedHalf {
  readonly workPerLitre: EnergyPerVolume
  /** Where pressure opposed flow. */
  readonly workOfDiverPerLitre: EnergyPerVolume
  /** Where pressure helped flow. */
  readonly workOfAssistPerLitre: EnergyPerVolume
  /** What shape the half has once its elastic part is taken off; undefined where it costs nothing. */
  readonly shape: LoopShape | undefined
  /**
   * Cracking, laminar and turbulent part, fitted to pressure against flow beside an elastic part that is 0 at end exhalation;
   * undefined where the slices do not tell them apart. A wrong zero goes into the cracking pressure.
   */
  readonly resistance: FittedResistance | undefined
}

const slices = 128

/** Averages breaths slice by slice of their own tidal volume. */
export function averagedLoop(log: CleanLog, breaths: readonly BreathRows[], tidalVolume: number): AveragedLoop {
  const inhalation = { work: new Float64Array(slices), time: new Float64Array(slices) }
  const exhalation = { work: new Float64Array(slices), time: new Float64Array(slices) }
  for (const { start, middle, end } of breaths) {
    const perVolume = slices / middle.volume
    addHalfToSlices(inhalation, log, { from: start, to: middle, perVolume })
    addHalfToSlices(exhalation, log, { from: middle, to: end, perVolume })
  }
  const flow = (time: Float64Array): Float64Array =>
    time.map((lasting) => (lasting > 0 ? (tidalVolume * breaths.length) / slices / lasting : 0))
  return {
    volumeCubicMetre: Float64Array.from({ length: slices }, (_, slice) => ((slice + 0.5) * tidalVolume) / slices),
    inhalationPressurePascal: inhalation.work.map((work) => -work / breaths.length),
    exhalationPressurePascal: exhalation.work.map((work) => work / breaths.length),
    inhalationFlowCubicMetrePerSecond: flow(inhalation.time),
    exhalationFlowCubicMetrePerSecond: flow(exhalation.time),
  }
}

/** The averaged loop with another pressure counted as zero. */
export function withZero(loop: AveragedLoop, zero: number): AveragedLoop {
  return {
    ...loop,
    inhalationPressurePascal: loop.inhalationPressurePascal.map((pressure) => pressure - zero),
    exhalationPressurePascal: loop.exhalationPressurePascal.map((pressure) => pressure - zero),
  }
}

/** Crossings of the averaged loop, and its gross work per litre. `noise`: standard deviation of the work per litre that noise makes. */
export function averagedCrossings(
  loop: AveragedLoop,
  noise: number,
): { readonly crossings: number; readonly grossWorkPerLitre: EnergyPerVolume } {
  const { inhalationPressurePascal: inhalation, exhalationPressurePascal: exhalation } = loop
  const net = exhalation.map((pressure, slice) => (pressure - (inhalation[slice] as number)) / slices)
  const { crossings, grossWork } = crossingsOfSlices(net, noise)
  return { crossings, grossWorkPerLitre: grossWork as EnergyPerVolume }
}

/**
 * The line half way between the halves: its pressure at the volume of end exhalation, and how it falls with volume.
 * What different resistances of the two halves add bends alike at both ends, so that it leaves the slope alone.
 */
export function middleLine(loop: AveragedLoop): {
  readonly middleLinePressure: PressureDifference
  readonly apparentElastance: Elastance
} {
  const { volumeCubicMetre: volume, inhalationPressurePascal: inhalation, exhalationPressurePascal: exhalation } = loop
  const normal = new NormalEquations(4)
  eachInnerSlice((slice) => {
    const share = (slice + 0.5) / slices
    const bend = share * (1 - share)
    const middle = ((inhalation[slice] as number) + (exhalation[slice] as number)) / 2
    normal.add([1, share, Math.sqrt(bend), bend], middle)
  })
  const [pressure = 0, slope = 0] = normal.solve('log.pressure').coefficients
  const tidalVolume = (volume[0] as number) + (volume[slices - 1] as number)
  return {
    middleLinePressure: pressure as PressureDifference,
    apparentElastance: (-slope / tidalVolume) as Elastance,
  }
}

/** Work, shape and resistance of one half of an averaged loop. */
export function averagedHalf(loop: AveragedLoop, half: 'inhalation' | 'exhalation', elastance: number): AveragedHalf {
  const opposing = half === 'inhalation' ? -1 : 1
  const pressure = loop[`${half}PressurePascal`]
  let work = 0
  let diver = 0
  for (const p of pressure) {
    work += (opposing * p) / slices
    diver += (opposing * meanOfSign(p, p, opposing)) / slices
  }
  return {
    workPerLitre: work as EnergyPerVolume,
    workOfDiverPerLitre: diver as EnergyPerVolume,
    workOfAssistPerLitre: (diver - work) as EnergyPerVolume,
    shape: shapeOf(loop, pressure, opposing, elastance),
    resistance: resistanceOf(loop, half, opposing),
  }
}

function shapeOf(
  loop: AveragedLoop,
  pressure: Float64Array,
  opposing: 1 | -1,
  elastance: number,
): LoopShape | undefined {
  let work = 0
  let peak = 0
  pressure.forEach((p, slice) => {
    const resistive = opposing * (p + elastance * (loop.volumeCubicMetre[slice] as number))
    work += resistive / slices
    if (resistive > peak) peak = resistive
  })
  if (!(work > 0 && peak > 0 && peak < 1e5)) return undefined
  return loopShape({ workPerLitre: work as EnergyPerVolume, peakPressure: peak as PressureDifference })
}

function resistanceOf(
  loop: AveragedLoop,
  half: 'inhalation' | 'exhalation',
  opposing: 1 | -1,
): FittedResistance | undefined {
  const pressure = loop[`${half}PressurePascal`]
  const flow = loop[`${half}FlowCubicMetrePerSecond`]
  const normal = new NormalEquations(4)
  eachInnerSlice((slice) => {
    const q = flow[slice] as number
    normal.add([1, q, q * q, (slice + 0.5) / slices], opposing * (pressure[slice] as number))
  })
  try {
    return fitted(normal.solve('log'))
  } catch {
    return undefined // a flow that hardly changes tells nothing apart
  }
}

// In the outermost slices the flow changes too fast for its mean to stand for it.
const outer = 4

function eachInnerSlice(use: (slice: number) => void): void {
  for (let slice = outer; slice < slices - outer; slice++) use(slice)
}
