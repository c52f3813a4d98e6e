// Seeded dives in plain numbers, and the same as the room takes them.
import type { BreathedCylinder, BreathedDive, TemperaturePoint } from '../../../src/consumption/index.ts'
import { profileInWater } from '../../../src/consumption/index.ts'
import type { WaterColumn } from '../../../src/environment/index.ts'
import { dryAir, type GasContents, mixture, nitrox, trimix } from '../../../src/gas-law/index.ts'
import {
  absolute,
  cubicMetre,
  cubicMetrePerSecond,
  depthOf,
  difference,
  gauge,
  internalVolumeOf,
  kelvin,
  kilogramPerCubicMetre,
  measure,
  metre,
  metrePerSecondSquared,
  pascal,
  second,
  temperatureOf,
} from '../../../src/units/index.ts'
import type { Path, SteppedCylinder, SteppedDive } from './stepped.ts'

export type Random = () => number

const mixtures = [
  dryAir,
  nitrox(0.32),
  nitrox(0.5),
  trimix({ oxygen: 0.18, helium: 0.45 }),
  mixture({ helium: 0.8, oxygen: 0.2 }),
]

export const pick = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)] as T
export const between = (random: Random, low: number, high: number): number => low + (high - low) * random()

/** Water: fresh, brackish or salt, from 0.55 to 1.05 bar at its surface. */
export interface Water {
  readonly surface: number
  readonly perMetre: number
  readonly column: WaterColumn
}

export function drawWater(random: Random): Water {
  const surface = random() < 0.5 ? 101_325 : between(random, 0.55e5, 1.05e5)
  const density = pick(random, [998, 1000, 1012, 1025, 1030])
  const gravity = random() < 0.5 ? 9.80665 : between(random, 9.78, 9.83)
  return {
    surface,
    perMetre: density * gravity,
    column: {
      surfacePressure: absolute(surface, pascal),
      density: measure(density, kilogramPerCubicMetre),
      gravity: measure(gravity, metrePerSecondSquared),
    },
  }
}

/** Depths against time, m and s: legs at one depth, slow and fast ramps up and down. */
function drawDepths(random: Random, deepest: number): Path {
  const legs = 2 + Math.floor(6 * random())
  let time = random() < 0.3 ? between(random, 1, 500) : 0
  let depth = 0
  const path: [number, number][] = [[time, depth]]
  for (let leg = 0; leg <= legs; leg++) {
    const next = leg === legs ? 0 : random() < 0.3 ? depth : deepest * random()
    // some ramps are far faster than any that should be made
    const rate = random() < 0.15 ? between(random, 60, 150) : between(random, 2, 25)
    time += next === depth ? between(random, 20, 1200) : (60 * Math.abs(next - depth)) / rate + 0.5
    depth = next
    path.push([time, depth])
  }
  return path
}

/** A cylinder of any size, between nearly empty and full; breathed down to a stated pressure or to what a stage needs. */
export function drawCylinder(random: Random, deepest: number): SteppedCylinder {
  const volume = between(random, 1, random() < 0.5 ? 12 : 40) / 1000
  const gaugeZero = random() < 0.5 ? 0 : between(random, 0.6e5, 1.05e5)
  const stretch = gaugeZero > 0 && random() < 0.4 ? (volume * between(random, 0, 0.008)) / 300e5 : 0
  return {
    volume,
    stretch,
    gaugeZero,
    pressure: between(random, random() < 0.1 ? 1e5 : 30e5, 300e5),
    temperature: between(random, 272, 310),
    mixture: pick(random, mixtures),
    residual:
      random() < 0.5
        ? { above: random() < 0.3 ? 0 : between(random, 0, 20e5) }
        : { absolute: deepest + (random() < 0.2 ? 1 : between(random, 1, 50e5)) },
  }
}

export function contentsOf({ gaugeZero, stretch, ...cylinder }: SteppedCylinder): GasContents {
  const shared = {
    internalVolume: internalVolumeOf(cylinder.volume, cubicMetre),
    temperature: temperatureOf(cylinder.temperature, kelvin),
    mixture: cylinder.mixture,
  }
  if (gaugeZero === 0) return { ...shared, pressure: absolute(cylinder.pressure, pascal) }
  return {
    ...shared,
    gaugePressure: gauge(cylinder.pressure - gaugeZero, pascal),
    ambientPressure: absolute(gaugeZero, pascal),
    ...(stretch === 0
      ? {}
      : { elasticExpansion: { volume: measure(stretch * 300e5, cubicMetre), at: gauge(300e5, pascal) } }),
  }
}

export function breathedCylinder(cylinder: SteppedCylinder): BreathedCylinder {
  const { residual } = cylinder
  return {
    contents: contentsOf(cylinder),
    residualPressure:
      'above' in residual ? { aboveAmbient: difference(residual.above, pascal) } : absolute(residual.absolute, pascal),
  }
}

export interface DrawnDive {
  readonly stepped: SteppedDive
  readonly dive: BreathedDive
  readonly names: readonly string[]
  /** Temperatures of the gas in some cylinders, for the series. */
  readonly temperatures: Readonly<Record<string, readonly TemperaturePoint[]>>
}

/** One to four cylinders, changed over at any moment; at times several divers breathe from one. */
export function drawDive(random: Random, cooled: boolean): DrawnDive {
  const water = drawWater(random)
  const depths = drawDepths(random, pick(random, [8, 30, 60, 120]))
  const ambient = depths.map(([time, depth]) => [time, water.surface + water.perMetre * depth] as const)
  const [start, end] = [depths[0]?.[0] ?? 0, depths.at(-1)?.[0] ?? 0]
  const deepest = Math.max(...ambient.map(([, pressure]) => pressure))
  const count = 1 + Math.floor(4 * random())
  const moments = [start]
  for (let k = Math.floor(4 * random()); k > 0; k--) moments.push(between(random, start + 1, end - 1))
  moments.sort((a, b) => a - b)
  const cylinders = Array.from({ length: count }, () => drawCylinder(random, deepest)).map((cylinder) =>
    cooled && random() < 0.7 ? { ...cylinder, temperatures: drawTemperatures(random, cylinder, start, end) } : cylinder,
  )
  const periods = moments.map((from) => ({
    from,
    rate: (between(random, 6, 60) * pick(random, [1, 1, 1, 2, 3])) / 60_000,
    cylinder: Math.floor(count * random()),
  }))
  const stepped = { ambient, periods, cylinders, breathedTemperature: between(random, 271, 310) }
  const names = cylinders.map((_, k) => `cylinder ${k}`)
  return {
    stepped,
    names,
    dive: {
      profile: profileInWater(
        depths.map(([time, depth]) => ({ time: measure(time, second), depth: depthOf(depth, metre) })),
        water.column,
      ),
      breathing: periods.map(({ from, rate, cylinder }) => ({
        from: measure(from, second),
        respiratoryMinuteVolume: measure(rate, cubicMetrePerSecond),
        cylinder: names[cylinder] as string,
      })),
      cylinders: Object.fromEntries(cylinders.map((cylinder, k) => [names[k] as string, breathedCylinder(cylinder)])),
      breathingGasTemperature: temperatureOf(stepped.breathedTemperature, kelvin),
    },
    temperatures: Object.fromEntries(
      cylinders.flatMap(({ temperatures }, k) =>
        temperatures === undefined
          ? []
          : [
              [
                names[k] as string,
                temperatures.map(([time, kelvins]) => ({
                  time: measure(time, second),
                  temperature: temperatureOf(kelvins, kelvin),
                })),
              ],
            ],
      ),
    ),
  }
}

/** From the temperature of the contents on, up or down. */
function drawTemperatures(random: Random, { temperature }: SteppedCylinder, start: number, end: number): Path {
  const moments = Array.from({ length: Math.floor(4 * random()) }, () => between(random, start + 1, end - 1))
  return [start, ...moments.sort((a, b) => a - b), end].map((time, k) => [
    time,
    k === 0 ? temperature : between(random, 268, 318),
  ])
}
