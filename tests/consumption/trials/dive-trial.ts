// One seeded dive, its reserve and its turn, each against gas counted step by step.
import {
  ascentReserve,
  endurance,
  furthestTurn,
  type GaugedCylinder,
  gasUsed,
  independentTurn,
  orderOfUse,
  pressureReached,
  pressureSeries,
  reservePressure,
  type TurnPressure,
  turnPressures,
} from '../../../src/consumption/index.ts'
import { seededRandom } from '../../../src/uncertainty/index.ts'
import {
  absolute,
  bar,
  cubicMetrePerSecond,
  depthOf,
  difference,
  kelvin,
  kilopascal,
  measure,
  metre,
  metrePerSecond,
  pascal,
  psi,
  second,
  temperatureOf,
} from '../../../src/units/index.ts'
import { between, breathedCylinder, drawCylinder, drawDive, drawWater, pick, type Random } from './drawn-dive.ts'
import {
  amountAt,
  type Counted,
  countedBySeconds,
  densityBy,
  type Law,
  type Path,
  residualPressure,
  type SteppedCylinder,
  valueAt,
} from './stepped.ts'

/** How far room and count may be apart, by what is compared and in which unit. Where a sign matters, above 0 is the unsafe side. */
export const allowed = {
  'run-out time, s': 1,
  'endurance, s': 1,
  // the count looks at whole seconds and draws lines between them
  'moment of a pressure, s': 1,
  'breathed below the residual pressure, Pa': 1e-3,
  'pressure times volume breathed, relative': 1e-5,
  'pressure times volume lacking, of what is breathed': 1e-5,
  'gas left, of what was there': 1e-5,
  'gas in a series, of what was there': 1e-3,
  'gauge pressure left, Pa': 1e-6,
  'reserve: below the residual pressure, Pa': 10,
  'reserve: more than needed, Pa': 100,
  'reserve as shown: below the residual pressure, Pa': 1e-3,
  'reserve as shown: steps above the pressure': 1e-9,
  'reserve: parts against what is shown, Pa': 1e-6,
  'turn as shown: below the pressure of the turn, Pa': 1e-3,
  'turn as shown: steps above the pressure': 1e-9,
  'use before the turn, relative': 1e-9,
  'back from the turn, litres short at depth': 1e-6,
  'back from the furthest turn, litres short at depth': 1e-6,
  'back from the furthest turn, litres left by who limits it': 1e-6,
  'shortfall of a fraction rule, litres at depth': 1e-6,
  'use before the loss, relative': 1e-9,
  'after the loss of a cylinder, litres short at depth': 1e-6,
  'after the loss of a cylinder, litres left over': 1e-6,
  'after the loss, turned as shown, litres short at depth': 1e-6,
  'shortfall of equal fractions, litres at depth': 1e-6,
  'order of use, from another pressure, Pa': 1e-6,
  'order of use, portion, litres at depth': 1e-6,
  'order of use, used, litres at depth': 1e-6,
  'order of use, shortfall, litres at depth': 1e-6,
} as const satisfies Readonly<Record<string, number>>

/** The worst of each. */
export type Apart = Partial<Record<keyof typeof allowed, number>>

const worst = (apart: Apart, what: keyof typeof allowed, value: number): void => {
  // NaN must not hide
  if (!(value <= (apart[what] ?? -Infinity))) apart[what] = Number.isNaN(value) ? Infinity : value
}

export function diveTrial(seed: number, index: number, law: Law): Apart {
  const random = seededRandom(seed, index)
  const apart: Apart = {}
  wholeDive(random, law, apart)
  reserve(random, law, apart)
  pick(random, [team, furthest, independent, inOrder])(random, law, apart)
  return apart
}

// What is left as a share of the start that rounding may leave unclear.
const unclear = 1e-9

/** The worst of many dives. */
export function diveTrials(dives: number, seed: number, law: Law): Required<Apart> {
  const all: Apart = {}
  for (let index = 0; index < dives; index++) {
    for (const [what, value] of Object.entries(diveTrial(seed, index, law))) worst(all, what as keyof Apart, value)
  }
  return all as Required<Apart>
}

function wholeDive(random: Random, law: Law, apart: Apart): void {
  const cooled = random() < 0.3
  const { stepped, dive, names, temperatures } = drawDive(random, cooled)
  const options = { gas: law }
  const [start, end] = [stepped.ambient[0]?.[0] ?? 0, stepped.ambient.at(-1)?.[0] ?? 0]
  const use = gasUsed(dive, options)
  const series = pressureSeries(dive, { ...options, every: measure((end - start) / 4, second), temperatures })
  const counts = countedBySeconds(law, stepped)
  const still = { ...stepped, cylinders: stepped.cylinders.map(({ temperatures: _, ...cylinder }) => cylinder) }
  const plains = Object.keys(temperatures).length === 0 ? counts : countedBySeconds(law, still)
  names.forEach((name, k) => {
    const cylinder = stepped.cylinders[k] as SteppedCylinder
    const heat = (t: number): number =>
      cylinder.temperatures === undefined ? cylinder.temperature : valueAt(cylinder.temperatures, t)
    const holds = (pressure: number, t: number): number => amountAt(law, cylinder, pressure, heat(t))
    const full = holds(cylinder.pressure, start)
    const inSeries = counts[k] as Counted
    const plain = plains[k] as Counted

    const found = use.cylinders[name] as (typeof use.cylinders)[string]
    runOutApart(found.runsOut?.at, plain, full, apart)
    runOutApart(series.runsOut[name]?.at, inSeries, full, apart)
    worst(apart, 'pressure times volume breathed, relative', relative(found.used.pressureVolume, plain.breathed))
    worst(
      apart,
      'pressure times volume lacking, of what is breathed',
      Math.abs((found.runsOut?.lacking ?? 0) - plain.lacking) / (plain.breathed + plain.lacking || 1),
    )
    const leftAt = plain.leftAt(end)
    worst(
      apart,
      'gas left, of what was there',
      Math.abs(amountAt(law, cylinder, found.pressureLeft, cylinder.temperature) - leftAt) / full,
    )
    const gauged = found.gaugePressureLeft
    if (cylinder.gaugeZero > 0)
      worst(
        apart,
        'gauge pressure left, Pa',
        Math.abs((gauged ?? Number.NaN) + cylinder.gaugeZero - found.pressureLeft),
      )

    for (const { time, pressures } of series.moments) {
      const pressure = pressures[name] as number
      // the count goes second by second past a moment of running out
      if (Math.abs(time - (series.runsOut[name]?.at ?? -9)) > 1)
        worst(
          apart,
          'gas in a series, of what was there',
          Math.abs(holds(pressure, time) - inSeries.leftAt(time)) / full,
        )
      const period = stepped.periods.findLast(({ from }) => from <= time)
      const isBreathed = period?.cylinder === k && time < (series.runsOut[name]?.at ?? Infinity)
      if (isBreathed)
        worst(
          apart,
          'breathed below the residual pressure, Pa',
          residualPressure(cylinder, valueAt(stepped.ambient, time)) - pressure,
        )
    }

    const asked = between(random, 0.3, 1) * cylinder.pressure
    const moment = pressureReached(
      dive,
      { cylinder: name, pressure: absolute(asked, pascal) },
      { ...options, temperatures },
    )
    const counter = inSeries.reached(asked)
    const isBefore = counter !== undefined && counter <= (inSeries.runsOut ?? Infinity)
    const isNear = counter !== undefined && Math.abs(counter - (inSeries.runsOut ?? -9)) < 1
    if (!isNear && !(moment === undefined && !isBefore))
      worst(apart, 'moment of a pressure, s', Math.abs((moment ?? Infinity) - (isBefore ? counter : Infinity)))
  })
  if (random() < 0.2) steady(random, law, stepped.cylinders, stepped.breathedTemperature, apart)
}

function runOutApart(found: number | undefined, count: Counted, full: number, apart: Apart): void {
  // a dip to nothing and back within a second may be found and not be counted; what is counted has to be found
  if (found !== undefined && count.runsOut === undefined && Math.abs(count.least) <= unclear * full) return
  if (found === undefined && count.runsOut === undefined) return
  worst(apart, 'run-out time, s', Math.abs((found ?? Infinity) - (count.runsOut ?? Infinity)))
}

function relative(found: number, expected: number): number {
  return found === expected ? 0 : Math.abs(found / expected - 1)
}

function steady(
  random: Random,
  law: Law,
  cylinders: readonly SteppedCylinder[],
  breathedTemperature: number,
  apart: Apart,
): void {
  const ambient = between(random, 0.8e5, 5e5)
  const own = cylinders.filter(({ residual }) => 'above' in residual)
  if (own.length === 0) return
  const rate = between(random, 20, 80) / 60_000
  const found = endurance(
    {
      cylinders: own.map(breathedCylinder),
      respiratoryMinuteVolume: measure(rate, cubicMetrePerSecond),
      ambientPressure: absolute(ambient, pascal),
      breathingGasTemperature: temperatureOf(breathedTemperature, kelvin),
    },
    { gas: law },
  )
  own.forEach(({ temperatures: _, ...cylinder }, k) => {
    const until = (found.cylinders[k]?.duration ?? Number.NaN) * 1.01 + 2
    const dive = {
      ambient: [
        [0, ambient],
        [until, ambient],
      ] as const,
      periods: [{ from: 0, rate, cylinder: 0 }],
      cylinders: [cylinder],
      breathedTemperature,
    }
    const counter = countedBySeconds(law, dive)[0]?.runsOut
    worst(apart, 'endurance, s', Math.abs((counter ?? Infinity) - (found.cylinders[k]?.duration ?? Number.NaN)))
  })
}

const stepsOfRamp = 800

const shownSteps = [
  { unit: bar, step: 1 },
  { unit: bar, step: 5 },
  { unit: bar, step: 10 },
  { unit: psi, step: 100 },
  { unit: kilopascal, step: 250 },
] as const

function reserve(random: Random, law: Law, apart: Apart): void {
  const water = drawWater(random)
  const depth = between(random, 3, 100)
  const drawn = drawCylinder(random, water.surface + water.perMetre * depth)
  // a stage of the reserve may stop anywhere between the surface pressure and well above that at depth
  const residual = 'above' in drawn.residual ? drawn.residual : { absolute: water.surface + between(random, 1, 40e5) }
  const rates = Array.from({ length: 1 + Math.floor(3 * random()) }, () => between(random, 8, 40) / 60_000)
  const stress = between(random, 1, 3)
  const wait = random() < 0.2 ? 0 : between(random, 1, 400)
  const speed = between(random, random() < 0.2 ? 1.5 : 0.05, random() < 0.2 ? 1.6 : 0.4)
  const stop =
    random() < 0.5 ? undefined : { depth: between(random, 0.1, 0.9) * depth, duration: between(random, 0, 900) }
  const error = random() < 0.5 ? 0 : between(random, 0, 10e5)
  // large enough for the ascent at 60 to 250 bar
  const rate = stress * sum(rates)
  const lasting = wait + depth / speed + (stop?.duration ?? 0)
  const volume = (rate * lasting * (water.surface + water.perMetre * depth)) / between(random, 60e5, 250e5)
  const cylinder: SteppedCylinder = { ...drawn, residual, volume, stretch: 0, gaugeZero: 0 }
  const ascent = {
    depth: depthOf(depth, metre),
    water: water.column,
    breathers: rates.map((rate) => measure(rate, cubicMetrePerSecond)),
    stressFactor: stress,
    timeAtDepth: measure(wait, second),
    ascentRate: measure(speed, metrePerSecond),
    ...(stop === undefined
      ? {}
      : { stop: { depth: depthOf(stop.depth, metre), duration: measure(stop.duration, second) } }),
  }
  const vesselOf = {
    internalVolume: breathedCylinder(cylinder).contents.internalVolume,
    temperature: temperatureOf(cylinder.temperature, kelvin),
    mixture: cylinder.mixture,
    residualPressure: breathedCylinder(cylinder).residualPressure,
    maximumPermissibleError: difference(error, pascal),
  }
  const show = pick(random, shownSteps)
  const pressure = reservePressure(ascent, vesselOf, { gas: law })
  const found = ascentReserve(ascent, vesselOf, { gas: law, show })
  const shown = found.shown.value * show.unit.factor
  const [exact, atShown] = [leastAbove(pressure), leastAbove(shown - error + water.surface)]
  worst(apart, 'reserve: below the residual pressure, Pa', -exact)
  worst(apart, 'reserve: more than needed, Pa', exact)
  worst(apart, 'reserve as shown: below the residual pressure, Pa', -atShown)
  worst(
    apart,
    'reserve as shown: steps above the pressure',
    (shown - found.gaugePressure) / (show.step * show.unit.factor) - 1,
  )
  const parts = sum(found.parts.map(({ pressure: part }) => part))
  worst(apart, 'reserve: parts against what is shown, Pa', Math.abs(parts - shown))

  function path(): Path {
    const points: [number, number][] = [[0, depth]]
    const go = (to: number, duration: number): void => {
      if (duration > 0) points.push([(points.at(-1)?.[0] ?? 0) + duration, to])
    }
    go(depth, wait)
    if (stop !== undefined) {
      go(stop.depth, (depth - stop.depth) / speed)
      go(stop.depth, stop.duration)
      go(0, stop.depth / speed)
    } else go(0, depth / speed)
    return points.map(([time, metres]) => [time, water.surface + water.perMetre * metres])
  }

  /** The least pressure above the residual on the ascent, and above ambient, Pa. */
  function leastAbove(begin: number): number {
    const line = path()
    let left = amountAt(law, cylinder, begin, cylinder.temperature)
    let least = Infinity
    const perMole = begin / left
    const judge = (ambient: number): void => {
      const limit = Math.max(ambient, residualPressure(cylinder, ambient))
      least = Math.min(least, (left - amountAt(law, cylinder, limit, cylinder.temperature)) * perMole)
    }
    line.forEach(([time, ambient], k) => {
      const [before, around] = line[k - 1] ?? [time, ambient]
      const steps = around === ambient ? 1 : stepsOfRamp
      for (let i = 0; i < steps && k > 0; i++) {
        const middle = around + ((ambient - around) * (i + 0.5)) / steps
        left -= (rate * densityBy(law, cylinder.mixture, middle, cylinder.temperature) * (time - before)) / steps
        judge(around + ((ambient - around) * (i + 1)) / steps)
      }
      judge(ambient)
    })
    return least
  }
}

interface Turning {
  readonly cylinders: readonly SteppedCylinder[]
  readonly gauged: readonly GaugedCylinder[]
  readonly errors: readonly number[]
  readonly ambient: number
  /** Way to the turn: shallower in parts than the ambient pressure that is stated. */
  readonly out: Path
  readonly breathedTemperature: number
  readonly zero: number
  readonly show: (typeof shownSteps)[number]
  readonly conditions: Parameters<typeof independentTurn>[1]
}

/** Cylinders that hold more than their residual pressure, and a way out. */
function drawTurning(random: Random, law: Law, least: number): Turning {
  const water = drawWater(random)
  const ambient = water.surface + water.perMetre * between(random, 3, 90)
  const cylinders = Array.from({ length: least + Math.floor(3 * random()) }, () => {
    const cylinder = drawCylinder(random, ambient)
    return { ...cylinder, pressure: residualPressure(cylinder, ambient) + between(random, 10e5, 200e5) }
  })
  const errors = cylinders.map(() => (random() < 0.5 ? 0 : between(random, 0, 5e5)))
  const breathedTemperature = between(random, 271, 310)
  const zero = random() < 0.5 ? water.surface : 1e5
  const show = pick(random, shownSteps)
  const shallow = between(random, 0.3, 1) * ambient
  return {
    cylinders,
    gauged: cylinders.map((cylinder, k) => ({
      ...breathedCylinder(cylinder),
      maximumPermissibleError: difference(errors[k] as number, pascal),
    })),
    errors,
    ambient,
    out: [
      [0, Math.min(water.surface, ambient)],
      [120, ambient],
      [600, Math.max(shallow, water.surface)],
      [700, ambient],
      [1e6, ambient],
    ],
    breathedTemperature,
    zero,
    show,
    conditions: {
      gas: law,
      ambientPressure: absolute(ambient, pascal),
      breathingGasTemperature: temperatureOf(breathedTemperature, kelvin),
      gaugeZero: absolute(zero, pascal),
      show,
    },
  }
}

/** What is in a cylinder, by what is shown with its gauge reading too much, above the residual pressure at the greatest depth: m³ breathed there. */
function worthAt(turning: Turning, law: Law, k: number, pressure: number): number {
  const cylinder = turning.cylinders[k] as SteppedCylinder
  const kept = amountAt(law, cylinder, residualPressure(cylinder, turning.ambient), cylinder.temperature)
  const density = densityBy(law, cylinder.mixture, turning.ambient, turning.breathedTemperature)
  return (amountAt(law, cylinder, pressure, cylinder.temperature) - kept) / density
}

/** The least pressure that a gauge may stand for when it shows the turn. */
function leastAtShown({ errors, zero, show }: Turning, k: number, turn: TurnPressure | undefined): number {
  return (turn?.shown.value ?? Number.NaN) * show.unit.factor - (errors[k] as number) + zero
}

function judgeTurn(turning: Turning, k: number, turn: TurnPressure | undefined, apart: Apart): void {
  const shown = leastAtShown(turning, k, turn)
  const pressure = turn?.pressure ?? Number.NaN
  worst(apart, 'turn as shown: below the pressure of the turn, Pa', pressure - shown)
  worst(
    apart,
    'turn as shown: steps above the pressure',
    (shown - pressure) / (turning.show.step * turning.show.unit.factor) - 1,
  )
}

/**
 * Out until a cylinder is at a pressure, and back the same way with more breathing from it: m³ at depth that are left above the residual,
 * counted second by second, and the seconds of the way out.
 */
function outAndBack(
  turning: Turning,
  law: Law,
  k: number,
  rate: number,
  turn: { readonly pressure: number } | { readonly time: number },
  backRate: number,
): { readonly least: number; readonly seconds: number } {
  const cylinder = turning.cylinders[k] as SteppedCylinder
  const { breathedTemperature, out } = turning
  const density = (ambient: number): number => densityBy(law, cylinder.mixture, ambient, breathedTemperature)
  const atDepth = density(turning.ambient)
  let left = amountAt(law, cylinder, cylinder.pressure, cylinder.temperature)
  const target = 'pressure' in turn ? amountAt(law, cylinder, turn.pressure, cylinder.temperature) : -Infinity
  const taken: (readonly [ambient: number, step: number, mole: number])[] = []
  const until = 'time' in turn ? turn.time : Infinity
  let seconds = 0
  while (left > target && seconds < until && seconds < 2e5) {
    const whole = Math.min(seconds < 800 ? 1 : 5, until - seconds)
    const ambient = valueAt(out, seconds + whole / 2)
    const most = rate * density(ambient) * whole
    // the last step ends where the turn is
    const step = left - most < target ? (whole * (left - target)) / most : whole
    const mole = (most * step) / whole
    left -= mole
    taken.push([ambient, step, mole])
    seconds += step
    if (step < whole) break
  }
  let least = Infinity
  const keptAt = (ambient: number): number =>
    amountAt(law, cylinder, Math.max(ambient, residualPressure(cylinder, ambient)), cylinder.temperature)
  for (const [ambient, , mole] of taken.reverse()) {
    left -= (mole * backRate) / rate
    least = Math.min(least, (left - keptAt(ambient)) / atDepth)
  }
  return { least, seconds }
}

const litre = 1000

function team(random: Random, law: Law, apart: Apart): void {
  const turning = drawTurning(random, law, 1)
  const fraction = pick(random, [1 / 3, 1 / 4, 1 / 6, 1 / 2])
  const { turns, useOfEach, limitedBy } = turnPressures(turning.gauged, { ...turning.conditions, fraction })
  const worths = turning.cylinders.map(({ pressure }, k) => worthAt(turning, law, k, pressure))
  const share = fraction * Math.min(...worths)
  worst(apart, 'use before the turn, relative', relative(useOfEach, share * turning.ambient))
  worst(apart, 'use before the turn, relative', relative(worths[limitedBy] as number, Math.min(...worths)))
  const rate = between(random, 10, 40) / 60_000
  turns.forEach((turn, k) => {
    judgeTurn(turning, k, turn, apart)
    const shown = Math.min(leastAtShown(turning, k, turn), turning.cylinders[k]?.pressure ?? 0)
    // by thirds two come back on one supply, by halves one
    const backRate = rate * Math.floor(1 / fraction - 1 + 1e-9)
    const { least } = outAndBack(turning, law, k, rate, { pressure: shown }, backRate)
    worst(apart, 'back from the turn, litres short at depth', -least * litre)
  })
}

function furthest(random: Random, law: Law, apart: Apart): void {
  const turning = drawTurning(random, law, 1)
  const rates = turning.cylinders.map(() => between(random, 8, 45) / 60_000)
  const fraction = pick(random, [1 / 3, 1 / 4, 1 / 2])
  const consumers = turning.gauged.map((cylinder, k) => ({
    ...cylinder,
    respiratoryMinuteVolume: measure(rates[k] as number, cubicMetrePerSecond),
  }))
  const found = furthestTurn(consumers, { ...turning.conditions, fraction })
  const level = {
    ...turning,
    out: [
      [0, turning.ambient],
      [1e6, turning.ambient],
    ] as Path,
  }
  const helped = (k: number): number => (rates[k] as number) + Math.max(0, ...rates.filter((_, other) => other !== k))
  found.turns.forEach((turn, k) => {
    judgeTurn(turning, k, turn, apart)
    const rate = rates[k] as number
    const time = { time: found.turnTime }
    const way = outAndBack(turning, law, k, rate, time, helped(k))
    worst(apart, 'back from the furthest turn, litres short at depth', -way.least * litre)
    const flat = outAndBack(level, law, k, rate, time, helped(k)).least
    worst(apart, 'back from the furthest turn, litres short at depth', -flat * litre)
    if (k === found.limitedBy) worst(apart, 'back from the furthest turn, litres left by who limits it', flat * litre)
    const ruled = outAndBack(level, law, k, rate, { time: found.fractionRule.turnTime }, helped(k)).least
    const short = found.fractionRule.shortfall[k] ?? Number.NaN
    worst(
      apart,
      'shortfall of a fraction rule, litres at depth',
      litre * Math.abs(short / turning.ambient - Math.max(0, -ruled)),
    )
  })
}

function independent(random: Random, law: Law, apart: Apart): void {
  const turning = drawTurning(random, law, 2)
  const found = independentTurn(turning.gauged, turning.conditions)
  const full = turning.cylinders.map(({ pressure }, k) => worthAt(turning, law, k, pressure))
  const used = found.used / turning.ambient
  const lossOf = (pressures: readonly number[]): number => {
    const left = pressures.map((pressure, k) => worthAt(turning, law, k, pressure))
    const out = sum(full) - sum(left)
    return out - (sum(left) - Math.max(...left))
  }
  const exact = lossOf(found.turns.map(({ pressure }) => pressure))
  worst(apart, 'after the loss of a cylinder, litres short at depth', exact * litre)
  worst(apart, 'after the loss of a cylinder, litres left over', -exact * litre)
  worst(
    apart,
    'use before the loss, relative',
    relative(sum(full) - sum(found.turns.map(({ pressure }, k) => worthAt(turning, law, k, pressure))), used),
  )
  if (full.length === 2) {
    const [a = 0, b = 0] = full
    worst(apart, 'use before the loss, relative', relative(used, Math.min((a + b) / 3, a, b)))
  }
  found.turns.forEach((turn, k) => {
    judgeTurn(turning, k, turn, apart)
  })
  const shown = found.turns.map((turn, k) =>
    Math.min(leastAtShown(turning, k, turn), turning.cylinders[k]?.pressure ?? 0),
  )
  worst(apart, 'after the loss, turned as shown, litres short at depth', lossOf(shown) * litre)
  const equal = full.map((volume) => volume * (1 - used / sum(full)))
  worst(
    apart,
    'shortfall of equal fractions, litres at depth',
    litre *
      Math.abs(
        found.equalFractions.shortfall / turning.ambient - Math.max(0, used - (sum(equal) - Math.max(...equal))),
      ),
  )
}

function inOrder(random: Random, law: Law, apart: Apart): void {
  const turning = drawTurning(random, law, 2)
  const fraction = pick(random, [1 / 3, 1 / 4, 1 / 2])
  const portions = 1 + Math.floor(4 * random())
  const found = orderOfUse(turning.gauged, { ...turning.conditions, fraction, portions })
  const now = turning.cylinders.map(({ pressure }) => pressure)
  const full = now.map((pressure, k) => worthAt(turning, law, k, pressure))
  for (const turn of found.turns) {
    const k = turn.cylinder
    worst(apart, 'order of use, from another pressure, Pa', Math.abs(turn.from - (now[k] as number)))
    const taken = worthAt(turning, law, k, now[k] as number) - worthAt(turning, law, k, turn.pressure)
    worst(
      apart,
      'order of use, portion, litres at depth',
      litre * Math.abs(taken - ((full[k] as number) * fraction) / portions),
    )
    judgeTurn(turning, k, turn, apart)
    now[k] = turn.pressure
  }
  const left = now.map((pressure, k) => worthAt(turning, law, k, pressure))
  const out = sum(full) - sum(left)
  worst(apart, 'order of use, used, litres at depth', litre * Math.abs(out - found.used / turning.ambient))
  const short = Math.max(0, out - (sum(left) - Math.max(...left)))
  worst(apart, 'order of use, shortfall, litres at depth', litre * Math.abs(short - found.shortfall / turning.ambient))
  worst(
    apart,
    'order of use, shortfall, litres at depth',
    litre * (Math.max(...left) - (left[found.worstLoss] as number)),
  )
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
