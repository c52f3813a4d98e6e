import { isLitrebarError } from '../../src/errors/index.ts'
import { type BreathingAnalysis, type BreathingLog, breathingAnalysis } from '../../src/regulator-performance/index.ts'
import { seededRandom } from '../../src/uncertainty/index.ts'
import type { Duration } from '../../src/units/index.ts'

// Logs of machines and people as they come off real channels, with a known true work: clipped, stuck, held, quantised, spiked, coughed
// into; with pauses, rests, small breaths, trends, growing first breaths and uneven steps.

interface Breath {
  readonly tidalVolume: number
  readonly duration: number
  /** After exhalation. */
  readonly pause: number
  /** Breath held in the midst, with the glottis open: after this share of the breath, s. */
  readonly hold?: { readonly after: number; readonly lasting: number }
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
  /** Of the pressure behind the volume, s, and whether it is stated. */
  readonly lag?: (draw: Draw) => { readonly delay: number; readonly timeConstant: number; readonly stated: boolean }
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

const everyRow = (columns: Columns, keep: (row: number) => boolean): void => {
  const kept = columns.time.map((_, row) => keep(row))
  for (const name of ['time', 'volume', 'pressure'] as const)
    columns[name] = columns[name].filter((_, row) => kept[row])
}
/** What a slow recorder keeps of a column, drawn straight between the rows it kept. */
const resampled = (values: number[], time: number[], length: number): number[] =>
  values.map((_, row) => {
    const from = row - (row % length)
    const to = Math.min(from + length, values.length - 1)
    const [start, end, now] = [time[from] as number, time[to] as number, time[row] as number]
    const share = to > from ? (now - start) / (end - start) : 0
    return (values[from] as number) * (1 - share) + (values[to] as number) * share
  })
const added = (columns: Columns, name: 'volume' | 'pressure', extra: (time: number, row: number) => number): void => {
  columns[name] = columns[name].map((value, row) => value + extra(columns.time[row] as number, row))
}
const fromRow = (columns: Columns, { between }: Draw): number => Math.floor(columns.time.length * between(0.2, 0.8))
const lastOf = ({ time }: Columns): number => time.at(-1) ?? 0

/** Faults of recorders and of people that are not those of a channel at its end. */
export const moreFaults: Readonly<Record<string, Fault>> = {
  'lag stated': { lag: ({ between }) => ({ delay: between(0, 0.04), timeConstant: between(0, 0.03), stated: true }) },
  'lag not stated': {
    lag: ({ between }) => ({ delay: between(0, 0.06), timeConstant: between(0, 0.04), stated: false }),
  },
  'pressure clipped on exhalation': {
    columns: (c, { between }) => {
      c.pressure = clip(c.pressure, -Infinity, between(0.3, 0.95) * peaks(c.pressure).high)
    },
  },
  'pressure clipped late': {
    columns: (c, draw) => {
      const from = fromRow(c, draw)
      const clipped = clip(c.pressure, draw.between(0.4, 0.9) * peaks(c.pressure).low, Infinity)
      c.pressure = c.pressure.map((value, row) => (row < from ? value : (clipped[row] as number)))
    },
  },
  'pressure in another unit from a moment on': {
    columns: (c, draw) => {
      const factor = [0.01, 0.1, 10, 1 / 98.0665, 0.001][Math.floor(5 * draw.uniform())] as number
      const from = fromRow(c, draw)
      c.pressure = c.pressure.map((value, row) => (row < from ? value : factor * value))
    },
  },
  'volume in another unit from a moment on': {
    columns: (c, draw) => {
      const factor = [1000, 0.001, 28.3][Math.floor(3 * draw.uniform())] as number
      const from = fromRow(c, draw)
      c.volume = c.volume.map((value, row) => (row < from ? value : factor * value))
    },
  },
  'gain of the pressure changes': {
    columns: (c, draw) => {
      const factor = 1 + draw.between(0.05, 0.3) * (draw.uniform() < 0.5 ? 1 : -1)
      const from = fromRow(c, draw)
      c.pressure = c.pressure.map((value, row) => (row < from ? value : factor * value))
    },
  },
  'sign of the pressure changes': {
    columns: (c, draw) => {
      const from = fromRow(c, draw)
      c.pressure = c.pressure.map((value, row) => (row < from ? value : -value))
    },
  },
  'zero of the pressure steps': {
    columns: (c, draw) => {
      const from = fromRow(c, draw)
      const step = draw.between(0.1, 1) * swingOf(c.pressure)
      added(c, 'pressure', (_, row) => (row < from ? 0 : step))
    },
  },
  'zero of the volume steps': {
    columns: (c, draw) => {
      const from = fromRow(c, draw)
      const step = draw.between(-1, 1) * swingOf(c.volume)
      added(c, 'volume', (_, row) => (row < from ? 0 : step))
    },
  },
  'resampled from fewer rows': {
    columns: (c, { between }) => {
      const length = Math.round(between(2, 6))
      c.pressure = resampled(c.pressure, c.time, length)
      c.volume = resampled(c.volume, c.time, length)
    },
  },
  'pressure resampled': {
    columns: (c, { between }) => {
      c.pressure = resampled(c.pressure, c.time, Math.round(between(2, 8)))
    },
  },
  'rows dropped here and there': {
    columns: (c, { uniform, between }) => {
      const share = between(0.02, 0.4)
      const kept = c.time.map(() => uniform() > share)
      everyRow(c, (row) => kept[row] as boolean)
    },
  },
  'rows dropped in a lump': {
    columns: (c, draw, samples) => {
      const from = fromRow(c, draw)
      const length = Math.round(draw.between(0.05, 1.5) * samples)
      everyRow(c, (row) => row < from || row >= from + length)
    },
  },
  'values missing': {
    columns: (c, { uniform, between }) => {
      const share = between(0.01, 0.2)
      c.pressure = c.pressure.map((value) => (uniform() < share ? Number.NaN : value))
    },
  },
  'a lump lost and the clock stopped': {
    columns: (c, draw, samples) => {
      const from = fromRow(c, draw)
      const length = Math.round(draw.between(0.1, 0.9) * samples)
      const lost = (c.time[Math.min(from + length, c.time.length - 1)] as number) - (c.time[from] as number)
      everyRow(c, (row) => row < from || row >= from + length)
      c.time = c.time.map((time, row) => (row < from ? time : time - lost))
    },
  },
  'pressure lost to zero': {
    columns: (c, draw, samples) => {
      const from = fromRow(c, draw)
      c.pressure.fill(0, from, from + Math.round(draw.between(0.1, 2) * samples))
    },
  },
  'eight bits': {
    noise: noiseless,
    columns: (c) => {
      c.pressure = quantised(c.pressure, 8)
      c.volume = quantised(c.volume, 8)
    },
  },
  'six bits under noise': {
    columns: (c) => {
      c.pressure = quantised(c.pressure, 6)
      c.volume = quantised(c.volume, 6)
    },
  },
  'hum of 50 Hz': {
    columns: (c, { between }) => {
      const [size, phase] = [between(0.02, 0.3) * swingOf(c.pressure), between(0, 6)]
      added(c, 'pressure', (time) => size * Math.sin(2 * Math.PI * 50 * time + phase))
    },
  },
  'hum on the volume': {
    columns: (c, { between }) => {
      const [size, phase] = [between(0.005, 0.05) * swingOf(c.volume), between(0, 6)]
      added(c, 'volume', (time) => size * Math.sin(2 * Math.PI * 50 * time + phase))
    },
  },
  'drift that turns': {
    columns: (c, { between }) => {
      const [turn, slope] = [between(0.3, 0.7) * lastOf(c), between(3, 30)]
      added(c, 'pressure', (time) => slope * (turn - Math.abs(time - turn)))
    },
  },
  'zero that wanders': {
    columns: (c, { between }) => {
      const [size, period] = [between(20, 200), between(0.3, 3) * lastOf(c)]
      added(c, 'pressure', (time) => size * Math.sin((2 * Math.PI * time) / period))
    },
  },
  'volume drift that turns': {
    columns: (c, { between }) => {
      const [turn, slope] = [between(0.3, 0.7) * lastOf(c), between(5e-6, 5e-5)]
      added(c, 'volume', (time) => slope * (turn - Math.abs(time - turn)))
    },
  },
  'breath held': {
    breaths: (breaths, { uniform, between }) => {
      const after = between(0.1, 0.9)
      const held = Math.floor(uniform() * breaths.length)
      return breaths.map((breath, k) => (k === held ? { ...breath, hold: { after, lasting: between(1, 15) } } : breath))
    },
  },
  'each breath held a little': {
    breaths: (breaths, { between }) => {
      const after = between(0.3, 0.7)
      return breaths.map((breath) => ({ ...breath, hold: { after, lasting: between(0.2, 2) } }))
    },
  },
  'two rates': {
    breaths: (breaths, { between }) => {
      const [size, time] = [between(1.1, 1.8), between(0.5, 0.95)]
      return breaths.map((breath, k) =>
        k < breaths.length / 2
          ? breath
          : { ...breath, tidalVolume: breath.tidalVolume * size, duration: breath.duration * time },
      )
    },
  },
  'two rates of one size': {
    breaths: (breaths, { between }) => {
      const time = between(0.5, 0.9)
      return breaths.map((breath, k) =>
        k < breaths.length / 2 ? breath : { ...breath, duration: breath.duration * time },
      )
    },
  },
  'a sigh': {
    breaths: (breaths, { uniform, between }) => {
      const sigh = Math.floor(uniform() * breaths.length)
      const size = between(1.3, 2.5)
      return breaths.map((breath, k) =>
        k === sigh ? { ...breath, tidalVolume: breath.tidalVolume * size, duration: breath.duration * 1.3 } : breath,
      )
    },
  },
  'cough in the pressure alone': {
    columns: (c, { uniform, between }, samples) => {
      const from = Math.floor(uniform() * (c.pressure.length - samples))
      const length = Math.max(4, Math.round(samples / 8))
      const size = between(0.5, 3) * swingOf(c.pressure)
      added(c, 'pressure', (_, row) =>
        row < from || row > from + length ? 0 : size * Math.sin((Math.PI * (row - from)) / length),
      )
    },
  },
  'noise that hangs together': {
    columns: (c, { normal, between }) => {
      let [p, v] = [0, 0]
      const keeps = between(0.5, 0.95)
      const [pressure, volume] = [between(2, 20), between(2e-7, 3e-6)]
      added(c, 'pressure', () => (p = keeps * p + pressure * normal()))
      added(c, 'volume', () => (v = keeps * v + volume * normal()))
    },
  },
  'loud noise': { noise: [150, 1.5e-5] },
  'stamps that jitter': {
    columns: (c, { uniform, between }) => {
      const size = between(0.1, 0.45)
      const step = lastOf(c) / c.time.length
      c.time = c.time.map((time, row) => (row === 0 ? time : time + size * step * (2 * uniform() - 1)))
      // a stamp may not overtake another
      c.time.forEach((time, row) => {
        if (row > 0 && !(time > (c.time[row - 1] as number))) c.time[row] = (c.time[row - 1] as number) + 1e-6
      })
    },
  },
  'stamps of whole hundredths': {
    columns: (c) => {
      c.time = c.time.map((time) => Math.round(time * 100) / 100)
      everyRow(c, (row) => row === 0 || c.time[row] !== c.time[row - 1])
    },
  },
  'few samples': { columns: (c) => everyRow(c, (row) => row % 6 === 0) },
}

const explaining = ['delay-corrected', 'drift-removed', 'volume-drift-removed', 'drift-not-removed']

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

export function madeLogOf(seed: number, index: number, from: Readonly<Record<string, Fault>>) {
  const uniform = seededRandom(seed, index + 1)
  const draw: Draw = {
    uniform,
    between: (low, high) => low + (high - low) * uniform(),
    normal: () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform()),
  }
  const kinds = Object.keys(from)
  const kind = kinds[index % kinds.length] as string
  return { kind, ...madeLog(from[kind] as Fault, draw) }
}

export function faultTrial(seed: number, index: number, from = faults): FaultTrial {
  const { kind, log, work, frequency, lag } = madeLogOf(seed, index, from)
  const analysis = analysed(log, lag)
  // a log that is refused gives no figure to be wrong
  if (typeof analysis === 'string')
    return { kind, index, relativeError: 0, within: true, stated: 0, findings: [analysis], warned: true, rateError: 0 }
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

function analysed(log: BreathingLog, lag: MadeLog['lag']): BreathingAnalysis | string {
  const { delay, timeConstant, stated } = lag ?? { delay: 0, timeConstant: 0, stated: true }
  const options = { zero: 'as recorded', pressureGainUncertainty: 0 } as const
  try {
    return breathingAnalysis(
      log,
      stated ? { ...options, lag: { delay: delay as Duration, timeConstant: timeConstant as Duration } } : options,
    )
  } catch (error) {
    if (isLitrebarError(error)) return `refused: ${error.argument}`
    throw error
  }
}

interface MadeLog {
  readonly log: BreathingLog
  readonly work: number
  readonly frequency: number
  readonly lag: ReturnType<NonNullable<Fault['lag']>> | undefined
}

function madeLog(fault: Fault, draw: Draw): MadeLog {
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
  const end = before + breaths.reduce((sum, breath) => sum + lastingOf(breath), 0) + after
  const offset = between(-200, 200)
  const lag = fault.lag?.(draw)
  const { delay = 0, timeConstant = 0 } = lag ?? {}
  let followed: number | undefined
  let last = 0
  for (let t = 0; t <= end; t += step * (1 + (fault.unevenness ?? 0.1) * (2 * uniform() - 1))) {
    const { volume, flow } = stateAt(breaths, t - before)
    columns.time.push(t)
    columns.volume.push(volume + v * normal())
    const then = delay === 0 ? { volume, flow } : stateAt(breaths, t - before - delay)
    const made = pressureOf(apparatus, then.volume, then.flow)
    if (timeConstant === 0) followed = made
    // in steps short beside the time constant
    for (let k = 1; timeConstant > 0 && k <= 20; k++) {
      const at = stateAt(breaths, last + ((t - last) * k) / 20 - before - delay)
      const now = pressureOf(apparatus, at.volume, at.flow)
      followed = now + ((followed ?? now) - now) * Math.exp(-(t - last) / 20 / timeConstant)
    }
    last = t
    columns.pressure.push((followed as number) + offset + p * normal())
  }
  fault.columns?.(columns, draw, samples)
  const { time, volume, pressure } = columns
  const works = breaths.map((breath) => workOf(apparatus, breath))
  const lasting = breaths.reduce((sum, breath) => sum + lastingOf(breath), 0)
  return {
    log: { time, volume, pressure },
    work: works.reduce((sum, work) => sum + work, 0) / works.length,
    frequency: breaths.length / lasting,
    lag,
  }
}

function lastingOf({ duration, pause, hold }: Breath): number {
  return duration + pause + (hold?.lasting ?? 0)
}

function stateAt(breaths: readonly Breath[], time: number): { readonly volume: number; readonly flow: number } {
  let into = time
  for (const breath of breaths) {
    const { tidalVolume, duration, hold } = breath
    if (into < 0) break
    const held = hold === undefined ? Infinity : hold.after * duration
    if (hold !== undefined && into > held && into < held + hold.lasting)
      return { volume: (tidalVolume / 2) * (1 - Math.cos((2 * Math.PI * held) / duration)), flow: 0 }
    if (hold !== undefined && into < duration + hold.lasting && into > held) into -= hold.lasting
    if (into < duration) {
      const angle = (2 * Math.PI * into) / duration
      return {
        volume: (tidalVolume / 2) * (1 - Math.cos(angle)),
        flow: ((Math.PI * tidalVolume) / duration) * Math.sin(angle),
      }
    }
    into -= lastingOf(breath)
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
