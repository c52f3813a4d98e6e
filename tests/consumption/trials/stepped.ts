// Gas counted step by step, in plain numbers of SI: nothing of it is taken from the room under test.
import { type Mixture, molarDensity } from '../../../src/gas-law/index.ts'
import { absolute, kelvin, pascal, temperatureOf } from '../../../src/units/index.ts'

/** Pressure around the diver at moments of rising time, s and Pa; straight between them. */
export type Path = readonly (readonly [time: number, value: number])[]

export interface SteppedCylinder {
  readonly volume: number
  /** Growth for each pascal above `gaugeZero`. */
  readonly stretch: number
  readonly gaugeZero: number
  readonly pressure: number
  readonly temperature: number
  readonly mixture: Mixture
  /** Absolute, or above the pressure around the diver, Pa. */
  readonly residual: { readonly absolute: number } | { readonly above: number }
  readonly temperatures?: Path
}

/** From a moment on, m³/s are breathed from a cylinder. */
export interface SteppedPeriod {
  readonly from: number
  readonly rate: number
  readonly cylinder: number
}

export type Law = 'ideal' | 'real'

const gasConstant = 8.314462618

/** mol/m³ */
export function densityBy(law: Law, gas: Mixture, pressure: number, kelvins: number): number {
  return law === 'ideal'
    ? pressure / (gasConstant * kelvins)
    : molarDensity(gas, absolute(pressure, pascal), temperatureOf(kelvins, kelvin))
}

/** mol in a cylinder at a pressure and a temperature. */
export function amountAt(law: Law, cylinder: SteppedCylinder, pressure: number, kelvins: number): number {
  const volume = cylinder.volume + cylinder.stretch * (pressure - cylinder.gaugeZero)
  return volume * densityBy(law, cylinder.mixture, pressure, kelvins)
}

export function valueAt(path: Path, time: number): number {
  let k = 1
  while (k < path.length - 1 && time > (path[k] as Path[number])[0]) k++
  const a = path[k - 1] as Path[number]
  const b = path[k] as Path[number]
  return a[1] + ((b[1] - a[1]) * (time - a[0])) / (b[0] - a[0])
}

export function residualPressure({ residual }: SteppedCylinder, ambient: number): number {
  return 'above' in residual ? ambient + residual.above : residual.absolute
}

export interface SteppedDive {
  readonly ambient: Path
  readonly periods: readonly SteppedPeriod[]
  readonly cylinders: readonly SteppedCylinder[]
  readonly breathedTemperature: number
}

/** What counting finds of one cylinder. */
export interface Counted {
  /** First moment at which the residual pressure is reached while it is breathed. */
  readonly runsOut: number | undefined
  /** mol left at a moment: of the dive, or of its running out. */
  readonly leftAt: (time: number) => number
  /** Ambient pressure times volume breathed until the end, or until it runs out, and after that. */
  readonly breathed: number
  readonly lacking: number
  /** The least that was above the residual pressure while it was breathed, mol. */
  readonly least: number
  /** First moment at which a pressure is reached, breathed or not. */
  readonly reached: (pressure: number) => number | undefined
}

const fine = 1000

/** The moments at which a dive is looked at, with the pressure around the diver then and half way to the next. */
interface Grid {
  readonly times: Float64Array
  readonly ambient: Float64Array
  readonly between: Float64Array
}

/** The cylinders of a dive second by second; where one comes near to its residual pressure, by the millisecond. */
export function countedBySeconds(law: Law, dive: SteppedDive): readonly Counted[] {
  const grid = gridOf(dive)
  return dive.cylinders.map((cylinder, index) => countedOn(grid, law, dive, cylinder, index))
}

function countedOn(
  { times, ambient, between }: Grid,
  law: Law,
  dive: SteppedDive,
  cylinder: SteppedCylinder,
  index: number,
): Counted {
  const { periods, breathedTemperature } = dive
  const { mixture, temperatures, temperature } = cylinder
  const heat = (t: number): number => (temperatures === undefined ? temperature : valueAt(temperatures, t))
  const keptAt = remembered((pressure: number, kelvins: number) => amountAt(law, cylinder, pressure, kelvins))
  const kept = (around: number, t: number): number => keptAt(residualPressure(cylinder, around), heat(t))
  const density = remembered((pressure: number, kelvins: number) => densityBy(law, mixture, pressure, kelvins))
  const lefts = new Float64Array(times.length)
  let left = amountAt(law, cylinder, cylinder.pressure, heat(times[0] as number))
  lefts[0] = left
  let [breathed, lacking, least] = [0, 0, Infinity]
  let runsOut: number | undefined
  let period = 0
  for (let k = 1; k < times.length; k++) {
    const [a, b, middle] = [times[k - 1] as number, times[k] as number, between[k - 1] as number]
    while ((periods[period + 1]?.from ?? Infinity) <= a) period++
    const { rate, cylinder: from } = periods[period] as SteppedPeriod
    if (from === index) {
      if (runsOut !== undefined) lacking += rate * middle * (b - a)
      else {
        const [around, later] = [ambient[k - 1] as number, ambient[k] as number]
        const taken = rate * density(middle, breathedTemperature) * (b - a)
        const [before, after] = [left - kept(around, a), left - taken - kept(later, b)]
        const most = 2 * taken + Math.abs(after - before)
        runsOut = before <= 0 ? a : Math.min(before, after) > most ? undefined : crossing(k, left, rate)
        const share = runsOut === undefined ? 1 : (runsOut - a) / (b - a)
        const part = around + ((later - around) * share) / 2
        breathed += rate * part * share * (b - a)
        lacking += rate * (middle - part * share) * (b - a)
        left -= runsOut === undefined ? taken : rate * density(part, breathedTemperature) * share * (b - a)
        least = Math.min(least, before, left - kept(around + (later - around) * share, a + share * (b - a)))
      }
    }
    lefts[k] = left
  }
  return { runsOut, leftAt, breathed, lacking, least, reached }

  function crossing(k: number, here: number, rate: number): number | undefined {
    const [a, around] = [times[k - 1] as number, ambient[k - 1] as number]
    const step = ((times[k] as number) - a) / fine
    const rise = ((ambient[k] as number) - around) / fine
    let now = here
    let before = here - kept(around, a)
    for (let i = 0; i < fine; i++) {
      now -= rate * density(around + rise * (i + 0.5), breathedTemperature) * step
      const after = now - kept(around + rise * (i + 1), a + (i + 1) * step)
      if (after <= 0) return a + i * step + (step * before) / (before - after)
      before = after
    }
    return undefined
  }

  function leftAt(time: number): number {
    const k = Math.max(
      1,
      times.findIndex((t) => t >= time),
    )
    return valueAt(
      [k - 1, k].map((i) => [times[i] as number, lefts[i] as number]),
      time,
    )
  }

  function reached(pressure: number): number | undefined {
    let above = (lefts[0] as number) - keptAt(pressure, heat(times[0] as number))
    if (above <= 0) return times[0]
    for (let k = 1; k < times.length; k++) {
      const [a, b] = [times[k - 1] as number, times[k] as number]
      const next = (lefts[k] as number) - keptAt(pressure, heat(b))
      // within a second what is left and what is kept are nearly straight lines
      if (next <= 0) return a + ((b - a) * above) / (above - next)
      above = next
    }
    return undefined
  }
}

function remembered(f: (a: number, b: number) => number): (a: number, b: number) => number {
  let [lastA, lastB, last] = [Number.NaN, Number.NaN, Number.NaN]
  return (a, b) => {
    if (a !== lastA || b !== lastB) [lastA, lastB, last] = [a, b, f(a, b)]
    return last
  }
}

/** Every second, and every moment at which a line bends or a period begins. */
function gridOf({ ambient, periods, cylinders }: SteppedDive): Grid {
  const start = ambient[0]?.[0] ?? 0
  const end = ambient.at(-1)?.[0] ?? 0
  const bends = [...ambient, ...cylinders.flatMap(({ temperatures = [] }) => temperatures)].map(([time]) => time)
  const moments = [...periods.map(({ from }) => from), ...bends]
  for (let t = start; t < end; t++) moments.push(t)
  const times = Float64Array.from(moments)
    .sort()
    .filter((t, k, all) => t !== all[k - 1])
  return {
    times,
    ambient: times.map((t) => valueAt(ambient, t)),
    between: times.map((t, k) => valueAt(ambient, (t + (times[k + 1] ?? t)) / 2)),
  }
}
