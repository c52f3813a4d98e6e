import { type BreathingLog, breathingAnalysis } from '../../src/regulator-performance/index.ts'
import { seededRandom } from '../../src/uncertainty/index.ts'
import type { Duration } from '../../src/units/index.ts'

// Logs of machines and people as they come off real channels, with a known true work: clipped, stuck, held, quantised, spiked, coughed
// into; with pauses, rests, small breaths, trends, growing first breaths and uneven steps.

interface Breath {
  readonly tidalVolume: number
  readonly duration: number
  /** After exhalation. */
  readonly pause: number
}

interface Apparatus {
  readonly inhalation: readonly [number, number, number]
  readonly exhalation: readonly [number, number, number]
  readonly elastance: number
}

interface Columns {
  time: number[]
  volume: number[]
  pressure: number[]
}

interface Draw {
  readonly uniform: () => number
  readonly between: (low: number, high: number) => number
  readonly normal: () => number
}

/** What is changed of an ordinary log: the breaths before it is written, or the columns after. */
interface Fault {
  readonly breaths?: (breaths: Breath[], draw: Draw) => Breath[]
  /** Rest before the first and after the last breath, s. */
  readonly rest?: (draw: Draw) => readonly [number, number]
  readonly columns?: (columns: Columns, draw: Draw, samplesPerBreath: number) => void
  readonly noise?: readonly [number, number]
  readonly unevenness?: number
}

const swingOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values)
const clip = (values: number[], low: number, high: number): number[] =>
  values.map((value) => Math.min(high, Math.max(low, value)))
const held = (values: number[], length: number): number[] =>
  values.map((_, row) => values[row - (row % length)] as number)
const quantised = (values: number[], bits: number): number[] => {
  const low = Math.min(...values)
  const step = (swingOf(values) * 1.3) / 2 ** bits
  return values.map((value) => low + step * Math.round((value - low) / step))
}
const peaks = (values: readonly number[]) => ({ low: Math.min(...values), high: Math.max(...values) })
const noiseless: readonly [number, number] = [0, 0]

export const faults: Readonly<Record<string, Fault>> = {
  whole: {},
  'whole, without noise': { noise: noiseless },
  'uneven steps': { unevenness: 0.8 },
  'pressure clipped': {
    columns: (c, { between }) => {
      const { low, high } = peaks(c.pressure)
      const share = between(0.4, 0.9)
      c.pressure = clip(c.pressure, share * low, share * high)
    },
  },
  'pressure clipped on inhalation': {
    columns: (c, { between }) => {
      const { low } = peaks(c.pressure)
      c.pressure = clip(c.pressure, between(0.4, 0.9) * low, Infinity)
    },
  },
  'volume clipped high': {
    columns: (c, { between }) => {
      const { low, high } = peaks(c.volume)
      c.volume = clip(c.volume, -Infinity, low + between(0.6, 0.95) * (high - low))
    },
  },
  'volume clipped low': {
    columns: (c, { between }) => {
      const { low, high } = peaks(c.volume)
      c.volume = clip(c.volume, low + between(0.05, 0.4) * (high - low), Infinity)
    },
  },
  'small breaths': {
    breaths: (breaths, { uniform, between }) =>
      breaths.map((breath, k) =>
        k === 4 || uniform() < 0.2
          ? { ...breath, tidalVolume: breath.tidalVolume * between(0.2, 0.5), duration: breath.duration * 0.7 }
          : breath,
      ),
  },
  'unlike breaths': {
    breaths: (breaths, { between }) =>
      breaths.map((breath) => ({
        ...breath,
        tidalVolume: breath.tidalVolume * between(0.7, 1.3),
        duration: breath.duration * between(0.85, 1.15),
      })),
  },
  pauses: {
    breaths: (breaths, { between }) => {
      const pause = between(0.2, 1.5)
      return breaths.map((breath) => ({ ...breath, pause }))
    },
  },
  'pauses of unlike length': {
    breaths: (breaths, { between }) => breaths.map((breath) => ({ ...breath, pause: between(0.2, 1.5) })),
  },
  'rest before and after': { rest: ({ between }) => [between(2, 20), between(0, 10)] },
  'rest and pauses': {
    rest: ({ between }) => [between(3, 20), between(0, 5)],
    breaths: (breaths) => breaths.map((breath) => ({ ...breath, pause: 0.5 })),
  },
  'volume spikes': {
    columns: ({ volume }, { uniform, between }) => {
      for (let k = 0; k < 5; k++) {
        const row = 5 + Math.floor(uniform() * (volume.length - 10))
        volume[row] = (volume[row] as number) + between(0.5, 1.5) * swingOf(volume) * (uniform() < 0.5 ? -1 : 1)
      }
    },
  },
  'pressure spikes': {
    columns: ({ pressure }, { uniform, between }) => {
      for (let k = 0; k < 4; k++) {
        const row = 5 + Math.floor(uniform() * (pressure.length - 10))
        pressure[row] = (pressure[row] as number) + between(1, 4) * swingOf(pressure) * (uniform() < 0.5 ? -1 : 1)
      }
    },
  },
  cough: {
    columns: ({ pressure, volume }, { uniform }, samples) => {
      const start = Math.floor(uniform() * (pressure.length - samples))
      const length = Math.max(4, Math.round(samples / 8))
      const [p, v] = [swingOf(pressure), swingOf(volume)]
      for (let k = 0; k < length && start + k < pressure.length; k++) {
        const shape = Math.sin((Math.PI * k) / length)
        pressure[start + k] = (pressure[start + k] as number) + 3 * p * shape
        volume[start + k] = (volume[start + k] as number) - 0.2 * v * shape
      }
    },
  },
  'pressure stuck': {
    columns: ({ pressure }, { uniform, between }, samples) => {
      for (let k = 0; k < 3; k++) {
        const from = Math.floor(uniform() * (pressure.length - 2 * samples))
        pressure.fill(pressure[from] as number, from, from + Math.round(between(0.3, 1.5) * samples))
      }
    },
  },
  'volume stuck': {
    columns: ({ volume }, { uniform, between }, samples) => {
      for (let k = 0; k < 2; k++) {
        const from = Math.floor(uniform() * (volume.length - 2 * samples))
        volume.fill(volume[from] as number, from, from + Math.round(between(0.3, 1.5) * samples))
      }
    },
  },
  'pressure held': {
    columns: (c, { between }) => {
      c.pressure = held(c.pressure, Math.round(between(2, 6)))
    },
  },
  'volume held': {
    columns: (c, { between }) => {
      c.volume = held(c.volume, Math.round(between(2, 6)))
    },
  },
  'twelve bits': {
    noise: noiseless,
    columns: (c) => {
      c.pressure = quantised(c.pressure, 12)
      c.volume = quantised(c.volume, 12)
    },
  },
  'twelve bits under noise': {
    columns: (c) => {
      c.pressure = quantised(c.pressure, 12)
      c.volume = quantised(c.volume, 12)
    },
  },
  'ten bits': {
    noise: noiseless,
    columns: (c) => {
      c.pressure = quantised(c.pressure, 10)
      c.volume = quantised(c.volume, 10)
    },
  },
  'growing breaths': {
    breaths: (breaths, { between }) => {
      const growth = between(0.1, 0.5)
      return breaths.map((breath, k) => ({
        ...breath,
        tidalVolume: breath.tidalVolume * (1 + (growth * k) / breaths.length),
      }))
    },
  },
  'quickening breaths': {
    breaths: (breaths) =>
      breaths.map((breath, k) => ({ ...breath, duration: breath.duration * (1.2 - (0.4 * k) / breaths.length) })),
  },
  'start-up': {
    breaths: (breaths) =>
      breaths.map((breath, k) => ({ ...breath, tidalVolume: breath.tidalVolume * (1 - 0.6 * Math.exp(-k / 1.5)) })),
  },
  'drifting zero': {
    columns: ({ time, pressure }, { between }) => {
      const slope = between(3, 10)
      for (let row = 0; row < time.length; row++)
        pressure[row] = (pressure[row] as number) + slope * (time[row] as number)
    },
  },
  'drifting volume': {
    columns: ({ time, volume }, { between }) => {
      const slope = between(-2e-5, 2e-5)
      for (let row = 0; row < time.length; row++) volume[row] = (volume[row] as number) + slope * (time[row] as number)
    },
  },
}

const explaining = ['delay-not-stated', 'delay-corrected', 'drift-removed', 'volume-drift-removed', 'drift-not-removed']

/** What one faulty log came to. */
export interface FaultTrial {
  readonly kind: string
  readonly index: number
  readonly relativeError: number
  readonly within: boolean
  readonly stated: number
  readonly findings: readonly string[]
  /** Findings that warn of the figure, without those that only say what was done. */
  readonly warned: boolean
  readonly rateError: number
}

function madeLogOf(seed: number, index: number) {
  const uniform = seededRandom(seed, index + 1)
  const draw: Draw = {
    uniform,
    between: (low, high) => low + (high - low) * uniform(),
    normal: () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform()),
  }
  const kinds = Object.keys(faults)
  const kind = kinds[index % kinds.length] as string
  return { kind, ...madeLog(faults[kind] as Fault, draw) }
}

export function faultTrial(seed: number, index: number): FaultTrial {
  const { kind, log, work, frequency } = madeLogOf(seed, index)
  const analysis = breathingAnalysis(log, {
    zero: 'as recorded',
    pressureGainUncertainty: 0,
    lag: { delay: 0 as Duration },
  })
  const { value, expandedUncertainty } = analysis.workOfBreathingPerLitre
  const findings = analysis.findings.map(({ code }) => code)
  return {
    kind,
    index,
    relativeError: value / work - 1,
    within: Math.abs(value - work) <= expandedUncertainty,
    stated: expandedUncertainty / work,
    findings,
    warned: findings.some((code) => !explaining.includes(code)),
    rateError: analysis.breathingFrequency / frequency - 1,
  }
}

function madeLog(fault: Fault, draw: Draw): { log: BreathingLog; work: number; frequency: number } {
  const { between, uniform, normal } = draw
  const half = (): readonly [number, number, number] => [between(0, 400), between(2e4, 1e5), between(1e7, 6e7)]
  const apparatus = { inhalation: half(), exhalation: half(), elastance: between(0, 2e5) }
  const base: Breath = { tidalVolume: between(0.001, 0.003), duration: between(2, 5), pause: 0 }
  const count = Math.round(between(8, 30))
  const plain = Array.from({ length: count }, () => base)
  const breaths = fault.breaths?.(plain, draw) ?? plain
  const samples = Math.round(between(80, 300))
  const [before, after] = fault.rest?.(draw) ?? [0, 0]
  const [p, v] = fault.noise ?? [between(1, 30), between(2e-7, 3e-6)]
  const columns: Columns = { time: [], volume: [], pressure: [] }
  const step = base.duration / samples
  const end = before + breaths.reduce((sum, { duration, pause }) => sum + duration + pause, 0) + after
  const offset = between(-200, 200)
  for (let t = 0; t <= end; t += step * (1 + (fault.unevenness ?? 0.1) * (2 * uniform() - 1))) {
    const { volume, flow } = stateAt(breaths, t - before)
    columns.time.push(t)
    columns.volume.push(volume + v * normal())
    columns.pressure.push(pressureOf(apparatus, volume, flow) + offset + p * normal())
  }
  fault.columns?.(columns, draw, samples)
  const { time, volume, pressure } = columns
  const works = breaths.map((breath) => workOf(apparatus, breath))
  const lasting = breaths.reduce((sum, { duration, pause }) => sum + duration + pause, 0)
  return {
    log: { time, volume, pressure },
    work: works.reduce((sum, work) => sum + work, 0) / works.length,
    frequency: breaths.length / lasting,
  }
}

function stateAt(breaths: readonly Breath[], time: number): { readonly volume: number; readonly flow: number } {
  let into = time
  for (const { tidalVolume, duration, pause } of breaths) {
    if (into < 0) break
    if (into < duration) {
      const angle = (2 * Math.PI * into) / duration
      return {
        volume: (tidalVolume / 2) * (1 - Math.cos(angle)),
        flow: ((Math.PI * tidalVolume) / duration) * Math.sin(angle),
      }
    }
    into -= duration + pause
    if (into < 0) break
  }
  return { volume: 0, flow: 0 }
}

function pressureOf({ inhalation, exhalation, elastance }: Apparatus, volume: number, flow: number): number {
  const [cracking, laminar, turbulent] = flow > 0 ? inhalation : exhalation
  const resisting = flow === 0 ? 0 : cracking + laminar * Math.abs(flow) + turbulent * flow * flow
  return -Math.sign(flow) * resisting - elastance * volume
}

/** Closed form for a sinusoid: cracking pressure, π/4 of the laminar and 2/3 of the turbulent peak, in each half. */
function workOf({ inhalation, exhalation }: Apparatus, { tidalVolume, duration }: Breath): number {
  const peak = (Math.PI * tidalVolume) / duration
  return [inhalation, exhalation].reduce(
    (sum, [cracking, laminar, turbulent]) =>
      sum + cracking + (Math.PI / 4) * laminar * peak + (2 / 3) * turbulent * peak * peak,
    0,
  )
}
