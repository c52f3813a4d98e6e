// Work of breathing: the area of loops, the full reading of one loop, and the full analysis of logs with noise, drift and lag.
import { breathingAnalysis, loopWork, workOfBreathing } from '../src/regulator-performance/index.ts'
import { normalQuantile, seededRandom } from '../src/uncertainty/index.ts'
import { measure, millisecond } from '../src/units/index.ts'
import { calm, syntheticLog } from '../tests/regulator-performance/synthetic-log.ts'

const uniform = seededRandom(1)
const normal = (): number => normalQuantile(uniform())
const rough = {
  ...calm,
  samplesPerBreath: 250,
  unevenness: 0.5,
  pressureNoise: 20,
  volumeNoise: 1e-6,
  pressureDrift: 5,
}

function columns(breaths: number): { time: Float64Array; volume: Float64Array; pressure: Float64Array } {
  const { time, volume, pressure } = syntheticLog({ ...rough, breaths }, uniform, normal)
  return {
    time: Float64Array.from(time),
    volume: Float64Array.from(volume ?? []),
    pressure: Float64Array.from(pressure),
  }
}

const short = columns(40)
const long = columns(4000)
const phase = (k: number): number => (2 * Math.PI * k) / 10_000
const loop = {
  volume: Float64Array.from({ length: 10_000 }, (_, k) => 0.00125 * (1 - Math.cos(phase(k)))),
  pressure: Float64Array.from({ length: 10_000 }, (_, k) => -1000 * Math.sin(phase(k)) + 20 * normal()),
}
const options = {
  zero: 'as recorded',
  pressureGainUncertainty: 0.005,
  lag: { delay: measure(20, millisecond), timeConstant: measure(10, millisecond) },
} as const

let sink = 0
report(`area of a loop of ${loop.volume.length} points`, 500, () => loopWork(loop.volume, loop.pressure))
report(`full reading of a loop of ${loop.volume.length} points`, 200, () => workOfBreathing(loop).grossWork)
report(`full analysis of a log of ${short.time.length} rows`, 100, () => workOf(short))
report(`area of ${long.time.length} samples`, 20, () => loopWork(long.volume, long.pressure))
report(`full analysis of a log of ${long.time.length} rows`, 10, () => workOf(long))
console.log(sink === 0 ? 'nothing was measured' : '')

function workOf(log: typeof short): number {
  return breathingAnalysis(log, options).workOfBreathingPerLitre.value
}

function report(name: string, runs: number, run: () => number): void {
  for (let k = 0; k < Math.min(runs, 20); k++) sink += run()
  const times = Array.from({ length: runs }, () => {
    const began = performance.now()
    sink += run()
    return performance.now() - began
  }).sort((a, b) => a - b)
  const [median = 0, slowest = 0] = [times[runs >> 1], times[runs - 1]]
  console.log(`${name}: median ${text(median)}, slowest ${text(slowest)}`)
}

function text(milliseconds: number): string {
  return milliseconds < 1 ? `${(1000 * milliseconds).toFixed(1)} µs` : `${milliseconds.toFixed(2)} ms`
}
