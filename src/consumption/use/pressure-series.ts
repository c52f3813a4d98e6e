import { LitrebarError, requireKeys, requireList } from '../../errors/index.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  celsius,
  type Duration,
  type GaugePressure,
  requireWithin,
  second,
  type Temperature,
} from '../../units/index.ts'
import { amountIn, type GasOptions, requireGasOptions } from '../gas/vessel-gas.ts'
import { pressureHolding } from '../gas/vessel-pressure.ts'
import { amountBreathed, type BreathedDive, requireDive, stretchesOf } from './breathed-dive.ts'
import { constantTemperature, drawdownOf, type GasTemperature, type RunOut } from './drawdown.ts'
import { durationOf, first, last, moment } from './profile.ts'

/** Temperature of the gas in a cylinder at a moment. Between two of them it changes evenly. */
export interface TemperaturePoint {
  readonly time: Duration
  readonly temperature: Temperature
}

/** A moment of the dive with the pressure in every cylinder. */
export interface PressureMoment<Name extends string> {
  readonly time: Duration
  readonly pressures: Readonly<Record<Name, AbsolutePressure>>
  /** The same on the gauge, of the cylinders whose contents were stated by gauge pressure. */
  readonly gaugePressures: Partial<Readonly<Record<Name, GaugePressure>>>
}

/** Pressures against time, and the first cylinder to be used up. */
export interface PressureSeries<Name extends string> {
  /** The moments asked for, and the moment at which a cylinder is used up. After it the cylinder is breathed no more. */
  readonly moments: readonly PressureMoment<Name>[]
  /** When each cylinder is used up that does not last. */
  readonly runsOut: Partial<Readonly<Record<Name, RunOut>>>
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/** Moments and temperatures of a series. */
export interface SeriesOptions<Name extends string> extends GasOptions {
  /** From one moment of the series to the next; the end of the dive is always in it. */
  readonly every: Duration
  /** Of the gas in a cylinder over the whole dive. A cylinder that is not named keeps the temperature of its contents. */
  readonly temperatures?: Partial<Readonly<Record<Name, readonly TemperaturePoint[]>>>
}

const interval: Accepted = { above: 0, unit: second, hint: 'Give the time from one moment of the series to the next.' }
const gasTemperature: Accepted = { atLeast: -60, atMost: 100, unit: celsius, hint: 'Check the temperature scale.' }

/**
 * Pressure in every cylinder against time, for a chart or a check against a gauge on the way.
 * With a temperature that falls the gauge falls too, without a breath: a filling warm from the compressor loses some 10 bar.
 *
 * @param dive - as for `gasUsed`; the contents state pressure and temperature at the start
 * @param options - `every`, s, above 0; temperatures of the gas in the cylinders; `gas: 'ideal'` to leave out compressibility
 * @returns moments in order, the first at the start and the last at the end; when a cylinder is used up
 * @throws LitrebarError as `gasUsed`; `input` for temperatures that do not span the dive
 * @source litrebar-derivation; gerg-2008, density
 * @example
 * const contents = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   pressure: absolute(200, bar),
 *   temperature: temperatureOf(20, celsius),
 *   mixture: dryAir,
 * }
 * const dive = {
 *   profile: steadyProfile(absolute(3, bar), measure(20, minute)),
 *   breathing: [{ from: measure(0, minute), respiratoryMinuteVolume: measure(15, litrePerMinute), cylinder: 'back' }],
 *   cylinders: { back: { contents, residualPressure: { aboveAmbient: difference(10, bar) } } },
 *   breathingGasTemperature: temperatureOf(10, celsius),
 * }
 * const { moments } = pressureSeries(dive, { every: measure(10, minute) })
 * moments.map(({ pressures }) => inUnit(pressures.back, bar).toFixed(0)) // => ['200', '157', '116']
 */
export function pressureSeries<Name extends string>(
  dive: BreathedDive<Name>,
  options: SeriesOptions<Name>,
): PressureSeries<Name> {
  requireDive(dive)
  requireGasOptions(options, { every: true, temperatures: false })
  requireWithin('options.every', options.every, interval)
  const names = Object.keys(dive.cylinders) as Name[]
  const temperatures = new Map(names.map((name) => [name, gasTemperatureOf(name, dive, options)]))
  const stretches = stretchesOf(dive)
  const runsOut = new Map<Name, RunOut>()
  for (const name of names) {
    const drawn = drawdownOf(dive, name, stretches, options, temperatures.get(name) as GasTemperature)
    if (drawn.runsOut !== undefined) runsOut.set(name, drawn.runsOut)
  }
  const left = new Map(names.map((name) => [name, amountIn(dive.cylinders[name].contents, options)]))
  const times = momentsOf(dive, options.every, [...runsOut.values()])
  const moments = [momentAt(times[0] as number)]
  for (let k = 1; k < times.length; k++) {
    const from = times[k - 1] as number
    for (const stretch of stretchesOf(dive, from as Duration, times[k] as Duration)) {
      if (from >= (runsOut.get(stretch.cylinder)?.at ?? Infinity)) continue
      const before = left.get(stretch.cylinder) ?? 0
      left.set(stretch.cylinder, before - amountBreathed(options, dive, stretch))
    }
    moments.push(momentAt(times[k] as number))
  }
  return {
    moments,
    runsOut: Object.fromEntries(runsOut) as Partial<Record<Name, RunOut>>,
    cautions: ['reserve', 'always'],
    sources: ['litrebar-derivation', 'gerg-2008'],
  }

  function momentAt(time: number): PressureMoment<Name> {
    const pressures: Partial<Record<Name, AbsolutePressure>> = {}
    const gaugePressures: Partial<Record<Name, GaugePressure>> = {}
    for (const name of names) {
      const { contents } = dive.cylinders[name]
      const temperature = (temperatures.get(name) as GasTemperature).at(time)
      const pressure = pressureHolding(left.get(name) ?? 0, { ...contents, temperature }, options)
      pressures[name] = pressure
      if (contents.gaugePressure !== undefined) {
        gaugePressures[name] = (pressure - contents.ambientPressure) as GaugePressure
      }
    }
    return { time: time as Duration, pressures: pressures as Record<Name, AbsolutePressure>, gaugePressures }
  }
}

function momentsOf({ profile }: BreathedDive, every: number, runOuts: readonly RunOut[]): readonly number[] {
  const start = first(profile).time
  const steps = Math.ceil(durationOf(profile) / every - 1e-9)
  const even = Array.from({ length: steps + 1 }, (_, k) => (k === steps ? last(profile).time : start + k * every))
  return [...new Set([...even, ...runOuts.map(({ at }) => at)])].sort((a, b) => a - b)
}

/** Temperature of the gas in a cylinder over the dive: as stated, or that of its contents. */
export function gasTemperatureOf<Name extends string>(
  name: Name,
  dive: BreathedDive<Name>,
  options: Pick<SeriesOptions<Name>, 'temperatures'>,
): GasTemperature {
  const points = temperaturesOf(name, dive, options)
  if (points === undefined) return constantTemperature(dive.cylinders[name].contents.temperature)
  return { at: (time) => interpolated(points, time), breaks: points.map(({ time }) => time) }
}

function temperaturesOf<Name extends string>(
  name: Name,
  { profile, cylinders }: BreathedDive<Name>,
  { temperatures }: Pick<SeriesOptions<Name>, 'temperatures'>,
): readonly TemperaturePoint[] | undefined {
  if (temperatures === undefined) return undefined
  requireKeys('options.temperatures', temperatures, cylinders)
  const { [name]: given } = temperatures
  if (given === undefined) return undefined
  const argument = `options.temperatures.${name}`
  requireList(argument, given)
  given.forEach((point: TemperaturePoint, i) => {
    requireKeys(`${argument}[${i}]`, point, { time: true, temperature: true })
    const { time, temperature } = point
    requireWithin(`${argument}[${i}].time`, time, moment)
    requireWithin(`${argument}[${i}].temperature`, temperature, gasTemperature)
    const before = given[i - 1]?.time ?? -Infinity
    if (!(time > before)) throw outOfPlace(`${argument}[${i}].time`, `${time} s`, `later than ${before} s`)
  })
  const from = given[0]?.time ?? Infinity
  const to = given.at(-1)?.time ?? -Infinity
  if (from > first(profile).time || to < last(profile).time) {
    throw outOfPlace(argument, `from ${from} to ${to} s`, `from ${first(profile).time} to ${last(profile).time} s`)
  }
  return given
}

function outOfPlace(argument: string, value: string, expected: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value,
    expected,
    hint: 'Give temperatures in order of time, over the whole dive.',
  })
}

function interpolated(points: readonly TemperaturePoint[], time: number): Temperature {
  const after = points.findIndex((point) => point.time >= time)
  const b = points[after < 0 ? points.length - 1 : after] as TemperaturePoint
  const a = points[after - 1]
  if (a === undefined) return b.temperature
  return (a.temperature + ((b.temperature - a.temperature) * (time - a.time)) / (b.time - a.time)) as Temperature
}
