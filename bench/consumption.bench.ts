// Speed of consumption on one thread: a record of a million rows, real-gas endurances in a column, and the sampling of a reserve.
// The median of seven runs after one to warm up, the slowest, and the median time of the processor, which a busy machine changes less.
import {
  type Ascent,
  compileReserve,
  endurance,
  enduranceInto,
  pressureVolumeBreathed,
  pressureVolumeBreathedInto,
  profileInWater,
  type ReserveCylinder,
  reservePressure,
} from '../src/consumption/index.ts'
import { compileMixture, dryAir } from '../src/gas-law/index.ts'
import {
  coverageInterval,
  normalDistribution,
  propagateBySampling,
  rectangular,
  seededRandom,
} from '../src/uncertainty/index.ts'
import {
  absolute,
  bar,
  celsius,
  type Depth,
  type Duration,
  depthOf,
  difference,
  internalVolumeOf,
  inUnit,
  litre,
  litrePerMinute,
  measure,
  metre,
  metrePerMinute,
  minute,
  pascal,
  temperatureOf,
} from '../src/units/index.ts'

const runs = 7
const million = 1_000_000
const water = {
  surfacePressure: absolute(101_325, pascal),
  density: measure(1025, { symbol: 'kg/m³', quantity: 'density', factor: 1 }),
}

function timed(name: string, work: () => number): void {
  let sink = work()
  const walls: number[] = []
  const processors: number[] = []
  for (let run = 0; run < runs; run++) {
    const began = performance.now()
    const before = process.cpuUsage()
    sink += work()
    walls.push(performance.now() - began)
    processors.push(process.cpuUsage(before).user / 1000)
  }
  const [wall, processor] = [walls, processors].map((times) => times.sort((a, b) => a - b)) as [number[], number[]]
  const figures = [`median ${wall[runs >> 1]?.toFixed(1)} ms`, `slowest ${wall.at(-1)?.toFixed(1)} ms`]
  console.log(`${name}: ${figures.join(', ')}, processor ${processor[runs >> 1]?.toFixed(1)} ms`)
  if (sink === 0) console.log('nothing was done')
}

const random = seededRandom(1)
const filled = (length: number, low: number, high: number): Float64Array =>
  Float64Array.from({ length }, () => low + (high - low) * random())

// 1. a record of a million rows
const record = {
  timeSecond: Float64Array.from({ length: million }, (_, row) => row),
  depthMetre: filled(million, 0, 40),
  respiratoryMinuteVolumeCubicMetrePerSecond: filled(million, 2e-4, 5e-4),
}
const used = { pressureVolumePascalCubicMetre: new Float64Array(million), code: new Uint8Array(million) }
timed('use over a record of 1 M segments, column form', () => {
  pressureVolumeBreathedInto(used, record, { water })
  return used.pressureVolumePascalCubicMetre[17] ?? 0
})
const short = 100_000
const points = Array.from({ length: short }, (_, row) => ({
  time: (record.timeSecond[row] ?? 0) as Duration,
  depth: (record.depthMetre[row] ?? 0) as Depth,
}))
timed('the same, 100,000 segments, scalar form with its checks', () =>
  pressureVolumeBreathed(profileInWater(points, water), measure(20, litrePerMinute)),
)

// 2. a million endurances
const states = {
  internalVolumeCubicMetre: filled(million, 0.003, 0.024),
  pressurePascal: filled(million, 60e5, 300e5),
  residualPressurePascal: filled(million, 10e5, 50e5),
  ambientPressurePascal: filled(million, 1e5, 7e5),
  temperatureKelvin: filled(million, 275, 300),
  breathedTemperatureKelvin: filled(million, 275, 300),
  respiratoryMinuteVolumeCubicMetrePerSecond: filled(million, 1e-4, 6e-4),
}
const compiled = compileMixture(dryAir, {
  temperature: [temperatureOf(0, celsius), temperatureOf(40, celsius)],
  pressure: [absolute(0.5, bar), absolute(310, bar)],
  tolerance: 5e-9,
})
const lasting = { enduranceSecond: new Float64Array(million), code: new Uint8Array(million) }
timed('1 M real-gas endurances, column form, compiled mixture', () => {
  enduranceInto(lasting, states, { compiled })
  return lasting.enduranceSecond[17] ?? 0
})
timed('1 M ideal endurances, column form', () => {
  enduranceInto(lasting, states, { gas: 'ideal' })
  return lasting.enduranceSecond[17] ?? 0
})
timed('100,000 real-gas endurances, column form, full equation', () => {
  enduranceInto(lasting, states, { mixture: dryAir }, 0, 100_000)
  return lasting.enduranceSecond[17] ?? 0
})
const supply = {
  cylinders: [
    {
      contents: {
        internalVolume: internalVolumeOf(12, litre),
        pressure: absolute(200, bar),
        temperature: temperatureOf(10, celsius),
        mixture: dryAir,
      },
      residualPressure: absolute(50, bar),
    },
  ],
  respiratoryMinuteVolume: measure(20, litrePerMinute),
  ambientPressure: absolute(3, bar),
  breathingGasTemperature: temperatureOf(10, celsius),
}
timed('100,000 real-gas endurances, scalar form, full equation', () => {
  let sum = 0
  for (let k = 0; k < 100_000; k++) sum += endurance(supply).duration
  return sum
})

// 3. a million samples of a reserve
const stop = { depth: depthOf(5, metre), duration: measure(3, minute) }
const ascent: Ascent = {
  depth: depthOf(30, metre),
  water,
  breathers: [measure(20, litrePerMinute), measure(20, litrePerMinute)],
  stressFactor: 1.5,
  timeAtDepth: measure(2, minute),
  ascentRate: measure(9, metrePerMinute),
  stop,
}
const cylinder: ReserveCylinder = {
  internalVolume: internalVolumeOf(12, litre),
  temperature: temperatureOf(8, celsius),
  mixture: dryAir,
  residualPressure: absolute(20, bar),
  maximumPermissibleError: difference(5, bar),
}
const inputs = {
  respiratoryMinuteVolume: normalDistribution(measure(40, litrePerMinute), measure(4, litrePerMinute)),
  stressFactor: rectangular(1.6, 0.4),
  timeAtDepth: rectangular(measure(2, minute), measure(1, minute)),
}
timed(
  'drawing and sorting of 1 M samples alone',
  () => propagateBySampling(({ stressFactor }) => stressFactor, inputs, { trials: million, seed: 1 }).mean,
)
for (const gas of ['real', 'ideal'] as const) {
  timed(`1 M samples of a reserve, ${gas} gas, drawing and sorting included`, () => {
    const trials = propagateBySampling(compileReserve(ascent, cylinder, { gas }), inputs, { trials: million, seed: 1 })
    return inUnit(coverageInterval(trials, 0.95).high, bar)
  })
}
timed('100,000 reserves, ideal gas, scalar form with its checks', () => {
  let sum = 0
  for (let k = 0; k < short; k++) sum += reservePressure(ascent, cylinder, { gas: 'ideal' })
  return sum
})
