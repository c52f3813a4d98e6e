import { LitrebarError, requireKeys } from '../../errors/index.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type Accepted,
  type Duration,
  type EnergyPerVolume,
  type FlowResistance,
  type Fraction,
  kilopascalSecondPerLitre,
  type PressureDifference,
  requireWithin,
  second as secondUnit,
  type VolumeFlow,
} from '../../units/index.ts'
import type { BreathingLoop } from '../loop/breathing-loop.ts'
import { workOfBreathing } from '../loop/work-of-breathing.ts'

/** One breath of a diver on a stage that another one shares, as measured with that diver alone. */
export interface SharingBreather {
  /** One closed breath, evenly sampled in time. Volume at the pressure of the divers. */
  readonly loop: BreathingLoop
  /** How long the breath takes. */
  readonly duration: Duration
}

/** What the other's breathing does to one of two. */
export interface SharedBreath {
  /** Of the loop as measured alone. */
  readonly aloneWorkPerLitre: EnergyPerVolume
  /** Over every phase of the two breaths; what two rates that differ come to in the long run. */
  readonly meanWorkPerLitre: EnergyPerVolume
  /** At the phase that costs most. */
  readonly worstWorkPerLitre: EnergyPerVolume
  /** That phase: by how much of the other's breath the other has gone ahead, 0 to 1, when this inhalation starts. */
  readonly worstPhase: Fraction
  /** Lowest mouth pressure at any phase. */
  readonly worstInhalationPressure: PressureDifference
}

/** Two breathers on one first stage. */
export interface TwoBreathers {
  readonly first: SharedBreath
  readonly second: SharedBreath
  /** Peak flow that both draw, m³/s: over every phase, and at the worst of them. */
  readonly peakFlow: { readonly mean: VolumeFlow; readonly worst: VolumeFlow }
  readonly cautions: readonly CautionId[]
}

const durationRange: Accepted = { above: 0, atMost: 120, unit: secondUnit, hint: 'Give the time of one breath.' }
const couplingRange: Accepted = {
  atLeast: 0,
  atMost: 10,
  unit: kilopascalSecondPerLitre,
  hint: 'State how much mouth suction grows per flow that the other draws.',
}
const fewestPoints = 16
const phases = 360

/**
 * Two breathers on one first stage, from the loop of each measured alone: what it costs either that the other draws at the same time, at
 * the worst phase of their breaths and over all of them. Two breathing rates that differ pass through every phase.
 *
 * One figure carries the stage: by how much the suction at the mouth of one grows per flow of the other. A bench measures it with a steady
 * flow at one outlet. It grows without limit once the stage no longer regulates, so hold the peak flow against
 * `minimumSupplyPressure` as well.
 *
 * @param first - one breath, evenly sampled in time, and its duration, s
 * @param second - of the other
 * @param coupling - mouth suction per flow of the other, Pa·s/m³
 * @returns works per litre, Pa, alone, in the mean and at worst; lowest mouth pressures, Pa; peak flows, m³/s
 * @throws LitrebarError `range`; `input` for an unknown key or fewer than 16 points; as `workOfBreathing`
 * @source litrebar-derivation, linear coupling of two loops
 * @example
 * const angle = Array.from({ length: 64 }, (_, row) => (2 * Math.PI * row) / 64)
 * const loop = { volume: angle.map((a) => 0.00125 * (1 - Math.cos(a))), pressure: angle.map((a) => -1000 * Math.sin(a)) }
 * const breather = { loop, duration: measure(2.4, second) }
 * const { first } = twoBreathers(breather, breather, measure(0.1, kilopascalSecondPerLitre))
 * inUnit(first.aloneWorkPerLitre, joulePerLitre).toFixed(2) // => '1.57'
 * inUnit(first.meanWorkPerLitre, joulePerLitre).toFixed(2) // => '1.67'
 * inUnit(first.worstWorkPerLitre, joulePerLitre).toFixed(2) // => '1.83'
 */
export function twoBreathers(first: SharingBreather, second: SharingBreather, coupling: FlowResistance): TwoBreathers {
  requireWithin('coupling', coupling, couplingRange)
  const one = breathOf('first', first)
  const other = breathOf('second', second)
  let sum = 0
  for (let phase = 0; phase < phases; phase++) sum += alongBreath(one, other, phase / phases, 0).peakFlow
  return {
    first: sharedBreath(one, other, coupling),
    second: sharedBreath(other, one, coupling),
    peakFlow: { mean: (sum / phases) as VolumeFlow, worst: (one.peakFlow + other.peakFlow) as VolumeFlow },
    cautions: ['always', 'regulator'],
  }
}

/** A breath cut into even steps of time, SI. */
interface Breath {
  readonly duration: number
  readonly workPerLitre: number
  readonly tidalVolume: number
  /** Flow in, 0 while exhaling, and mouth pressure, each in the middle of its step. */
  readonly flows: Float64Array
  readonly pressures: Float64Array
  readonly peakFlow: number
}

function breathOf(path: string, breather: SharingBreather): Breath {
  requireKeys(path, breather, { loop: true, duration: true })
  const { loop, duration } = breather
  requireWithin(`${path}.duration`, duration, durationRange)
  const { workOfBreathingPerLitre, tidalVolume } = workOfBreathing(loop)
  const { volume, pressure } = loop
  const points = volume.length
  if (points < fewestPoints) {
    throw new LitrebarError({
      code: 'input',
      argument: `${path}.loop`,
      value: `${points} points`,
      expected: `at least ${fewestPoints} points`,
      hint: 'Fewer do not show the peak of the flow: take `averagedLoop` of an analysis, or a breath as it was sampled.',
    })
  }
  const after = (row: number) => (row + 1 === points ? 0 : row + 1)
  const flows = Float64Array.from({ length: points }, (_, row) =>
    Math.max(0, ((volume[after(row)] as number) - (volume[row] as number)) * (points / duration)),
  )
  const pressures = Float64Array.from(
    { length: points },
    (_, row) => ((pressure[row] as number) + (pressure[after(row)] as number)) / 2,
  )
  const peakFlow = flows.reduce((most, flow) => Math.max(most, flow), 0)
  return { duration, workPerLitre: workOfBreathingPerLitre, tidalVolume, flows, pressures, peakFlow }
}

function sharedBreath(one: Breath, other: Breath, coupling: number): SharedBreath {
  let sum = 0
  let worst = { phase: 0, work: 0 }
  let lowestPressure = Infinity
  for (let step = 0; step < phases; step++) {
    const phase = step / phases
    const added = alongBreath(one, other, phase, coupling)
    sum += added.work
    if (added.work > worst.work) worst = { phase, work: added.work }
    lowestPressure = Math.min(lowestPressure, added.lowestPressure)
  }
  const alone = one.workPerLitre
  return {
    aloneWorkPerLitre: alone as EnergyPerVolume,
    meanWorkPerLitre: (alone + sum / phases / one.tidalVolume) as EnergyPerVolume,
    worstWorkPerLitre: (alone + worst.work / one.tidalVolume) as EnergyPerVolume,
    worstPhase: worst.phase as Fraction,
    worstInhalationPressure: lowestPressure as PressureDifference,
  }
}

/** What one breath costs more, and how low its pressure and how high the sum of the flows gets, where the other is a phase ahead. */
function alongBreath(
  one: Breath,
  other: Breath,
  phase: number,
  coupling: number,
): { readonly work: number; readonly lowestPressure: number; readonly peakFlow: number } {
  const points = one.flows.length
  const step = one.duration / points
  let work = 0
  let lowestPressure = Infinity
  let peakFlow = 0
  for (let row = 0; row < points; row++) {
    const flow = one.flows[row] as number
    const drawn = flowAt(other, phase + ((row + 0.5) * step) / other.duration)
    peakFlow = Math.max(peakFlow, flow + drawn)
    if (flow === 0) continue // the valve is shut, and the other goes unfelt
    work += coupling * drawn * flow * step
    lowestPressure = Math.min(lowestPressure, (one.pressures[row] as number) - coupling * drawn)
  }
  return { work, lowestPressure, peakFlow }
}

/** Flow at a place in the breath, 1 being its end, between the middles of its steps. */
function flowAt({ flows }: Breath, place: number): number {
  const at = (place - Math.floor(place)) * flows.length - 0.5
  const before = Math.floor(at)
  const share = at - before
  const wrapped = (row: number) => flows[(row + flows.length) % flows.length] as number
  return wrapped(before) * (1 - share) + wrapped(before + 1) * share
}
