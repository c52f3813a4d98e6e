// Seeded dives, and the moment at which their gas ends found by counting seconds: nothing of it is taken from the code under test.
import { type BreathedDive, gasUsed, pressureSeries } from '../../../src/consumption/index.ts'
import { dryAir, molarDensity } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  type Duration,
  difference,
  internalVolumeOf,
  litre,
  litrePerMinute,
  measure,
  minute,
  pascal,
  temperatureOf,
} from '../../../src/units/index.ts'

/** A dive of up to seven legs and one or two cylinders, about as much gas as it needs. */
export function seededDive(random: () => number): BreathedDive<'back' | 'stage'> {
  const surface = 0.7 + 0.35 * random()
  let time = 0
  let depth = 0
  const profile = [{ time: 0 as Duration, ambientPressure: absolute(surface, bar) }]
  const legs = 2 + Math.floor(5 * random())
  for (let leg = 0; leg <= legs; leg++) {
    const next = leg === legs ? 0 : random() < 0.3 ? depth : 60 * random()
    // some ascents are far faster than any that should be made
    const rate = random() < 0.1 ? 120 : 3 + 25 * random()
    time += next === depth ? 1 + 15 * random() : Math.abs(next - depth) / rate + 0.01
    depth = next
    profile.push({ time: measure(time, minute), ambientPressure: absolute(surface + depth / 10, bar) })
  }
  const gas = { temperature: temperatureOf(12, celsius), mixture: dryAir }
  const cylinder = (litres: number, bars: number, deepest: number) => ({
    contents: { ...gas, internalVolume: internalVolumeOf(litres, litre), pressure: absolute(bars, bar) },
    residualPressure:
      random() < 0.5
        ? { aboveAmbient: difference(random() < 0.3 ? 0 : 15 * random(), bar) }
        : absolute(deepest + 40 * random(), bar),
  })
  const deepest = Math.max(...profile.map(({ ambientPressure }) => ambientPressure / 1e5))
  const breathing = [{ from: 0 as Duration, respiratoryMinuteVolume: rateOf(random), cylinder: 'back' }]
  if (random() < 0.5) {
    const from = measure(time * (0.2 + 0.6 * random()), minute)
    breathing.push({ from, respiratoryMinuteVolume: rateOf(random), cylinder: random() < 0.7 ? 'stage' : 'back' })
  }
  return {
    profile,
    breathing,
    cylinders: {
      back: cylinder(5 + 19 * random(), 40 + 200 * random(), deepest),
      stage: cylinder(1 + 10 * random(), 20 + 180 * random(), deepest),
    },
    breathingGasTemperature: gas.temperature,
  }
}

function rateOf(random: () => number) {
  return measure(8 + 50 * random(), litrePerMinute)
}

/**
 * What one dive shows against the count of seconds: seconds apart, and the least that is left above ambient, Pa by the ideal law.
 * What is counted is density times volume; by the ideal law pressure takes the place of density.
 */
export function againstSeconds(
  dive: BreathedDive<'back' | 'stage'>,
  gas: 'ideal' | 'real' = 'ideal',
): {
  apart: number
  least: number
  runsOut: boolean
} {
  const found = gasUsed(dive, { gas }).cylinders
  // all gas of a seeded dive has one temperature
  const density = (p: number): number =>
    gas === 'ideal' ? p : molarDensity(dryAir, absolute(p, pascal), dive.breathingGasTemperature)
  let apart = 0
  let least = Infinity
  let runsOut = false
  for (const name of ['back', 'stage'] as const) {
    const { contents, residualPressure } = dive.cylinders[name]
    const volume = contents.internalVolume
    let left = volume * density(contents.pressure ?? Number.NaN)
    const at = found[name].runsOut?.at
    if (at !== undefined) runsOut = true
    let counted: number | undefined
    let nearest = Infinity
    const end = dive.profile.at(-1)?.time ?? 0
    const grid = secondsOf(dive, end)
    const periods = [...dive.breathing].reverse()
    let after = ambientAt(dive, 0)
    for (let k = 1; k < grid.length; k++) {
      const [second, next] = [grid[k - 1] ?? 0, grid[k] ?? 0]
      const before = after
      after = ambientAt(dive, next)
      const step = periods.find(({ from }) => from <= (second + next) / 2)
      if (step?.cylinder !== name) continue
      const keptAt = (ambient: number): number =>
        volume *
        density(typeof residualPressure === 'number' ? residualPressure : ambient + residualPressure.aboveAmbient)
      if (counted === undefined && left <= keptAt(before)) counted = second
      left -= step.respiratoryMinuteVolume * density((before + after) / 2) * (next - second)
      if (counted === undefined && left <= keptAt(after)) counted = next
      if (at === undefined || next <= at) least = Math.min(least, left / volume - density(after))
      if (at !== undefined && Math.abs(next - at) <= 1) nearest = Math.min(nearest, (left - keptAt(after)) / volume)
    }
    // a dip of less than a second between two counts is no contradiction: what is left there must be next to nothing
    if (counted === undefined && at !== undefined && nearest < density(0.01e5)) continue
    apart = Math.max(apart, Math.abs((counted ?? Infinity) - (at ?? Infinity)) || 0)
  }
  return { apart, least, runsOut }
}

/** Every second, and the moments at which a leg or a period begins. */
function secondsOf({ profile, breathing }: BreathedDive, end: number): readonly number[] {
  const seconds = Array.from({ length: Math.ceil(end) }, (_, k) => k)
  const moments = [...profile.map(({ time }) => time), ...breathing.map(({ from }) => from)]
  return [...new Set<number>([...seconds, ...moments])].sort((a, b) => a - b)
}

function ambientAt({ profile }: BreathedDive, time: number): number {
  const after = profile.findIndex((point) => point.time >= time)
  const b = profile[Math.max(after, 1)] as (typeof profile)[number]
  const a = profile[Math.max(after, 1) - 1] as (typeof profile)[number]
  return a.ambientPressure + ((b.ambientPressure - a.ambientPressure) * (time - a.time)) / (b.time - a.time)
}

/** The least that any cylinder of a series holds above the pressure around the diver while it is breathed, real gas, Pa. */
export function leastAboveAmbient(dive: BreathedDive<'back' | 'stage'>): number {
  const { moments, runsOut } = pressureSeries(dive, { every: measure(0.5, minute) })
  let least = Infinity
  for (const { time, pressures } of moments) {
    const period = [...dive.breathing].reverse().find(({ from }) => from <= time)
    const name = period?.cylinder as 'back' | 'stage'
    if (time > (runsOut[name]?.at ?? Infinity)) continue
    const ambient = absolute(ambientAt(dive, time), pascal)
    // a cylinder that is below ambient before its first breath runs out at that moment
    if (time === runsOut[name]?.at) continue
    least = Math.min(least, pressures[name] - ambient)
  }
  return least
}
