import { LitrebarError } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  celsius,
  type Duration,
  requireWithin,
  second,
  type Temperature,
} from '../units/index.ts'
import { durationOf, first, last } from './profile.ts'
import { amountIn, type GasOptions, pressureHolding } from './supply.ts'
import { amountBreathed, type BreathedDive, requireDive, runsOut, stretchesOf } from './use.ts'

/** Temperature of the gas in a cylinder at a moment. Between two of them it changes evenly. */
export interface TemperaturePoint {
  readonly time: Duration
  readonly temperature: Temperature
}

/** A moment of the dive with the pressure in every cylinder. */
export interface PressureMoment<Name extends string> {
  readonly time: Duration
  readonly pressures: Readonly<Record<Name, AbsolutePressure>>
}

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
 * @returns moments in order, the first at the start and the last at the end
 * @throws LitrebarError as `gasUsed`; `input` for temperatures that do not span the dive
 * @source litrebar-derivation; gerg-2008, density
 * @example
 * const back = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   pressure: absolute(200, bar),
 *   temperature: temperatureOf(20, celsius),
 *   mixture: dryAir,
 * }
 * const dive = {
 *   profile: steadyProfile(absolute(3, bar), measure(20, minute)),
 *   breathing: [{ from: measure(0, minute), respiratoryMinuteVolume: measure(15, litrePerMinute), cylinder: 'back' }],
 *   cylinders: { back },
 *   breathingGasTemperature: temperatureOf(10, celsius),
 * }
 * const series = pressureSeries(dive, { every: measure(10, minute) })
 * series.map(({ pressures }) => inUnit(pressures.back, bar).toFixed(0)) // => ['200', '157', '116']
 */
export function pressureSeries<Name extends string>(
  dive: BreathedDive<Name>,
  options: SeriesOptions<Name>,
): readonly PressureMoment<Name>[] {
  requireDive(dive)
  requireWithin('options.every', options.every, interval)
  const names = Object.keys(dive.cylinders) as Name[]
  const temperatures = new Map(names.map((name) => [name, temperaturesOf(name, dive, options)]))
  const left = new Map(names.map((name) => [name, amountIn(dive.cylinders[name], options)]))
  const moments = momentsOf(dive, options.every)
  const series = [momentAt(moments[0] as number)]
  for (let k = 1; k < moments.length; k++) {
    for (const stretch of stretchesOf(dive, moments[k - 1] as Duration, moments[k] as Duration)) {
      const before = left.get(stretch.cylinder) ?? 0
      left.set(stretch.cylinder, before - amountBreathed(options, dive, stretch))
    }
    series.push(momentAt(moments[k] as number))
  }
  return series

  function momentAt(time: number): PressureMoment<Name> {
    const pressures = names.map((name) => {
      const amount = left.get(name) ?? 0
      if (!(amount > 0)) throw runsOut(dive, name, options)
      const temperature = interpolated(temperatures.get(name) ?? [], time)
      return [name, pressureHolding(amount, { ...dive.cylinders[name], temperature }, options)]
    })
    return { time: time as Duration, pressures: Object.fromEntries(pressures) as Record<Name, AbsolutePressure> }
  }
}

function momentsOf({ profile }: BreathedDive, every: number): readonly number[] {
  const start = first(profile).time
  const steps = Math.ceil(durationOf(profile) / every - 1e-9)
  return Array.from({ length: steps + 1 }, (_, k) => (k === steps ? last(profile).time : start + k * every))
}

function temperaturesOf<Name extends string>(
  name: Name,
  { profile, cylinders }: BreathedDive<Name>,
  { temperatures }: SeriesOptions<Name>,
): readonly TemperaturePoint[] {
  const given = temperatures?.[name]
  if (given === undefined) return [{ time: first(profile).time, temperature: cylinders[name].temperature }]
  const argument = `options.temperatures.${name}`
  given.forEach(({ time, temperature }, i) => {
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
