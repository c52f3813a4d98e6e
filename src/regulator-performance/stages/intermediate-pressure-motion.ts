import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { molarGasConstant } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type Accepted,
  bar,
  celsius,
  type Duration,
  type Fraction,
  gramPerMole,
  gramPerSecond,
  type InternalVolume,
  litre,
  type MassFlow,
  type MolarMass,
  one,
  type PressureDifference,
  requireWithin,
  second,
  type Temperature,
} from '../../units/index.ts'
import { type LogColumn, requireColumn } from '../log/column.ts'

// One volume of gas between a valve and what draws from it. The valve opens in proportion to the droop until it is wide open, without delay:
// capacity · dp/dt = inflow − demand, solved exactly while the demand is steady. Pressures over ambient.

/** A first stage with its hose, as one volume that a valve feeds. */
export interface StageInMotion {
  /** At rest, the valve just shut, over ambient. */
  readonly lockUpPressure: PressureDifference
  /** One steady reading of the bench: by how much the pressure lies lower at a flow. */
  readonly steady: { readonly massFlow: MassFlow; readonly droop: PressureDifference }
  /** Through the valve wide open at this supply: `orificeFlow` gives it. */
  readonly largestMassFlow: MassFlow
  /** Of the gas between valve and second stage: chamber and hoses. A hose that stretches buffers more. */
  readonly volume: InternalVolume
  readonly molarMass: MolarMass
  readonly temperature: Temperature
  /** 1 where the walls keep the gas at its temperature, as over seconds and in creep; up to the ratio of heat capacities in an instant. */
  readonly polytropicExponent: Fraction
  /** Through the shut seat: 0 where it is tight. `seatLeak` measures it, as a volume flow. */
  readonly leak: MassFlow
}

/** The intermediate pressure while gas is drawn. */
export interface IntermediatePressureMotion {
  /** Over ambient, at the start of every interval and at the end of the last. */
  readonly intermediatePressurePascal: Float64Array
  readonly lowest: PressureDifference
  /** Lock-up less the lowest. */
  readonly droop: PressureDifference
  /** From the start to the lowest. */
  readonly lowestAfter: Duration
  /** From the end of the record, with nothing drawn, until nine tenths of the droop left there are made up; 0 where none is left. */
  readonly recovery: Duration
  readonly cautions: readonly CautionId[]
}

const pressure: Accepted = { above: 0, atMost: 50, unit: bar, hint: 'State it over ambient.' }
const flow: Accepted = { above: 0, atMost: 1000, unit: gramPerSecond, hint: 'Check the unit of the flow.' }
const drawn: Accepted = { atLeast: 0, atMost: 1000, unit: gramPerSecond, hint: 'State what is drawn as positive.' }
const volumeRange: Accepted = {
  above: 0,
  atMost: 10,
  unit: litre,
  hint: 'State the gas between the valve and the second stage.',
}
const molarMassRange: Accepted = { above: 0, atMost: 100, unit: gramPerMole, hint: '`molarMass` gives it.' }
const temperatureRange: Accepted = { atLeast: -100, atMost: 100, unit: celsius, hint: 'Check the temperature scale.' }
const exponent: Accepted = {
  atLeast: 1,
  atMost: 1.67,
  unit: one,
  hint: '1 for constant temperature, 1.4 for air in an instant.',
}
const intervalRange: Accepted = {
  above: 0,
  atMost: 3600,
  unit: second,
  hint: 'State the time from one row to the next.',
}
const madeUp = 0.9

/**
 * Intermediate pressure while divers breathe: how far it falls, when, and how soon it is back. The gas in chamber and hose buffers the start of
 * a breath; then the valve has to open, and from its largest flow on the pressure falls as long as more is drawn.
 *
 * The valve follows at once and the gas is ideal: a stage that hunts or sticks is not in it. For one breath, give its mass flow row by row.
 *
 * @param stage - lock-up, steady droop, largest flow, volume, gas, leak, SI
 * @param demand - mass flow drawn, kg/s, held over even intervals, s
 * @returns the pressure over ambient, Pa, its lowest and its recovery
 * @throws LitrebarError `range`; `input` for an unknown key, no rows, or a droop of the reading that is not below lock-up;
 *   `outside-validity` where the pressure falls to ambient: the stage does not deliver the demand
 * @source litrebar-derivation, one volume with a proportional valve
 * @example
 * const stage = { lockUpPressure: difference(9.5, bar), steady: { massFlow: measure(10, gramPerSecond), droop: difference(1, bar) }, largestMassFlow: measure(60, gramPerSecond), volume: internalVolumeOf(50, millilitre), molarMass: molarMass(dryAir), temperature: temperatureOf(10, celsius), polytropicExponent: 1 as Fraction, leak: measure(0, gramPerSecond) }
 * const massFlow = Float64Array.from({ length: 100 }, (_, row) => 0.025 * Math.sin((Math.PI * (row + 0.5)) / 100))
 * const { droop } = intermediatePressureMotion(stage, { massFlow, interval: measure(0.012, second) })
 * inUnit(droop, bar).toFixed(2) // => '2.50'
 */
export function intermediatePressureMotion(
  stage: StageInMotion,
  demand: { readonly massFlow: LogColumn; readonly interval: Duration },
): IntermediatePressureMotion {
  const valve = valveOf(stage)
  requireKeys('demand', demand, { massFlow: true, interval: true })
  const { massFlow, interval } = demand
  requireWithin('demand.interval', interval, intervalRange)
  requireRowsOf(massFlow)
  const pressures = new Float64Array(massFlow.length + 1)
  let at = stage.lockUpPressure as number
  let lowestRow = 0
  pressures[0] = at
  for (let row = 0; row < massFlow.length; row++) {
    at = advanced(valve, at, massFlow[row] as number, interval)
    if (!(at > 0)) throw starved(row, interval)
    pressures[row + 1] = at
    if (at < (pressures[lowestRow] as number)) lowestRow = row + 1
  }
  const lowest = pressures[lowestRow] as number
  const target = at + madeUp * (valve.lockUp - at)
  return {
    intermediatePressurePascal: pressures,
    lowest: lowest as PressureDifference,
    droop: (valve.lockUp - lowest) as PressureDifference,
    lowestAfter: (lowestRow * interval) as Duration,
    recovery: (at < valve.lockUp ? riseTime(valve, at, target) : 0) as Duration,
    cautions: ['regulator'],
  }
}

/**
 * How long the intermediate pressure takes to rise from one pressure to another while nothing is drawn: recovery below lock-up, and above
 * it the creep of a seat that leaks, over minutes. Where a second stage, or its relief, opens before, it goes no further.
 *
 * @param stage - as `intermediatePressureMotion`
 * @param from - over ambient, Pa
 * @param to - over ambient, Pa, above `from`
 * @returns the duration, s; `never` where the seat is tight and lock-up lies below
 * @throws LitrebarError `range`; `input` for an unknown key
 * @source litrebar-derivation, one volume with a proportional valve
 * @example
 * const stage = { lockUpPressure: difference(9.5, bar), steady: { massFlow: measure(10, gramPerSecond), droop: difference(1, bar) }, largestMassFlow: measure(60, gramPerSecond), volume: internalVolumeOf(50, millilitre), molarMass: molarMass(dryAir), temperature: temperatureOf(10, celsius), polytropicExponent: 1 as Fraction, leak: measure(0.0005, gramPerSecond) }
 * const creep = intermediatePressureRise(stage, difference(9.5, bar), difference(11, bar))
 * const shown = creep === 'never' ? creep : inUnit(creep, minute).toFixed(1) // => '3.1'
 */
export function intermediatePressureRise(
  stage: StageInMotion,
  from: PressureDifference,
  to: PressureDifference,
): Duration | 'never' {
  const valve = valveOf(stage)
  requireWithin('from', from, pressure)
  requireWithin('to', to, { ...pressure, atLeast: from / bar.factor, hint: 'Give the higher pressure second.' })
  const time = riseTime(valve, from, to)
  return time === Infinity ? 'never' : (time as Duration)
}

/** SI: lock-up and the pressure from which on down the valve is wide open; flows; kilograms for each pascal. */
interface Valve {
  readonly lockUp: number
  readonly wideOpen: number
  readonly perDroop: number
  readonly largest: number
  readonly leak: number
  readonly capacity: number
}

function valveOf(stage: StageInMotion): Valve {
  requireStage(stage)
  const { lockUpPressure: lockUp, steady, largestMassFlow: largest, leak } = stage
  const perDroop = steady.massFlow / steady.droop
  return {
    lockUp,
    wideOpen: lockUp - largest / perDroop,
    perDroop,
    largest,
    leak,
    capacity: (stage.volume * stage.molarMass) / (stage.polytropicExponent * molarGasConstant * stage.temperature),
  }
}

/** How the pressure moves from where it is: in a straight line, or towards an end; and where that stops to hold. */
type Course =
  | { readonly slope: number; readonly until: number }
  | { readonly end: number; readonly rate: number; readonly until: number }

function courseAt(valve: Valve, at: number, demand: number): Course {
  const { lockUp, wideOpen, perDroop, largest, leak, capacity } = valve
  const surplus = leak - demand
  if (at > lockUp || (at === lockUp && surplus >= 0)) {
    const slope = surplus / capacity
    return { slope, until: slope < 0 ? lockUp : Infinity }
  }
  if (at < wideOpen || (at === wideOpen && surplus + largest < 0)) {
    const slope = (surplus + largest) / capacity
    return { slope, until: slope > 0 ? wideOpen : -Infinity }
  }
  const end = lockUp + surplus / perDroop
  return { end, rate: perDroop / capacity, until: end > at ? lockUp : wideOpen }
}

/** Time until a course reaches a pressure: infinite where it does not. */
function timeTo(course: Course, at: number, to: number): number {
  if (at === to) return 0
  if ('slope' in course) {
    const time = (to - at) / course.slope
    return time > 0 ? time : Infinity
  }
  const left = (course.end - to) / (course.end - at)
  return left > 0 && left < 1 ? -Math.log(left) / course.rate : Infinity
}

/** The pressure after a time of steady demand. */
function advanced(valve: Valve, from: number, demand: number, lasting: number): number {
  let at = from
  let left = lasting
  for (;;) {
    const course = courseAt(valve, at, demand)
    const held = timeTo(course, at, course.until)
    if (held >= left || held === 0) {
      if ('slope' in course) return at + course.slope * left
      return course.end + (at - course.end) * Math.exp(-course.rate * left)
    }
    at = course.until
    left -= held
  }
}

/** Time to rise to a pressure while nothing is drawn. */
function riseTime(valve: Valve, from: number, to: number): number {
  let at = from
  let time = 0
  while (at < to) {
    const course = courseAt(valve, at, 0)
    const next = Math.min(to, course.until)
    time += timeTo(course, at, next)
    if (time === Infinity) return time
    at = next
  }
  return time
}

function requireStage(stage: StageInMotion): void {
  requireKeys('stage', stage, {
    lockUpPressure: true,
    steady: true,
    largestMassFlow: true,
    volume: true,
    molarMass: true,
    temperature: true,
    polytropicExponent: true,
    leak: true,
  })
  requireKeys('stage.steady', stage.steady, { massFlow: true, droop: true })
  requireWithin('stage.lockUpPressure', stage.lockUpPressure, pressure)
  requireWithin('stage.steady.massFlow', stage.steady.massFlow, flow)
  requireWithin('stage.steady.droop', stage.steady.droop, {
    above: 0,
    below: stage.lockUpPressure / bar.factor,
    unit: bar,
    hint: 'State by how much the pressure falls at the flow.',
  })
  requireWithin('stage.largestMassFlow', stage.largestMassFlow, flow)
  requireWithin('stage.volume', stage.volume, volumeRange)
  requireWithin('stage.molarMass', stage.molarMass, molarMassRange)
  requireWithin('stage.temperature', stage.temperature, temperatureRange)
  requireWithin('stage.polytropicExponent', stage.polytropicExponent, exponent)
  requireWithin('stage.leak', stage.leak, drawn)
}

function requireRowsOf(massFlow: LogColumn): void {
  requireColumn('demand.massFlow', massFlow)
  if (massFlow.length === 0) {
    throw new LitrebarError({
      code: 'input',
      argument: 'demand.massFlow',
      value: 'no rows',
      expected: 'at least one row',
      hint: 'Give the mass flow of each interval.',
    })
  }
  for (let row = 0; row < massFlow.length; row++) {
    const value = massFlow[row] as number
    if (!(typeof value === 'number' && value >= 0 && value <= 1)) requireWithin(`demand.massFlow[${row}]`, value, drawn)
  }
}

function starved(row: number, interval: number): LitrebarError {
  return new LitrebarError({
    code: 'outside-validity',
    argument: 'demand.massFlow',
    value: `more than the stage delivers after ${Number(((row + 1) * interval).toPrecision(3))} s`,
    expected: 'a demand that leaves pressure over ambient',
    hint: 'There the second stage passes less than is asked for: lower the demand or raise the supply.',
  })
}
