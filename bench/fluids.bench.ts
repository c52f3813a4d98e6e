// Water and moist air by the million rows: pressure at depth, density of sea water, vapour pressure; dew points and viscosity by the call.
import {
  practicalSalinityOf,
  pressureAtDepth,
  pressureAtDepthInto,
  seawaterDensity,
  seawaterDensityInto,
} from '../src/environment/index.ts'
import {
  dewPoint,
  enhancementFactor,
  saturationPressure,
  saturationPressureInto,
  trimix,
  viscosity,
} from '../src/gas-law/index.ts'
import {
  type AbsolutePressure,
  absolute,
  atmosphere,
  type Depth,
  fractionOf,
  kilogramPerCubicMetre,
  measure,
  type Temperature,
} from '../src/units/index.ts'

const rows = 1_000_000
const runs = 7
const calls = 20_000

let state = 12345
function random(): number {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0
  return state / 4294967296
}
const column = (low: number, high: number): Float64Array =>
  Float64Array.from({ length: rows }, () => low + random() * (high - low))

const depthMetre = column(0, 300)
const practicalSalinity = column(0, 42)
const temperatureKelvin = column(272, 313)
const pressurePascal = column(1e5, 3e6)
const frostKelvin = column(210, 330)
const out = {
  pressurePascal: new Float64Array(rows),
  densityKilogramPerCubicMetre: new Float64Array(rows),
  code: new Uint8Array(rows),
}
const water = { surfacePressure: absolute(1, atmosphere), density: measure(1025, kilogramPerCubicMetre) }
const salinity = practicalSalinityOf(35)
const gas = trimix({ oxygen: 0.18, helium: 0.45 })
const waterFraction = fractionOf(67e-6)

let sink = 0
const cases: Record<string, [count: number, run: () => void]> = {
  'bare multiply-add in a column': [
    rows,
    () => {
      for (let i = 0; i < rows; i++) out.pressurePascal[i] = 101_325 + 10_051.8 * (depthMetre[i] as number)
    },
  ],
  pressureAtDepthInto: [rows, () => pressureAtDepthInto(out, { depthMetre }, water)],
  seawaterDensityInto: [rows, () => seawaterDensityInto(out, { practicalSalinity, temperatureKelvin, pressurePascal })],
  saturationPressureInto: [rows, () => saturationPressureInto(out, { temperatureKelvin: frostKelvin })],
  'pressureAtDepth, by the call': [
    rows,
    () => {
      for (let i = 0; i < rows; i++) sink += pressureAtDepth({ depth: depthMetre[i] as Depth, ...water })
    },
  ],
  'seawaterDensity, by the call': [
    rows,
    () => {
      for (let i = 0; i < rows; i++)
        sink += seawaterDensity({
          salinity,
          temperature: temperatureKelvin[i] as Temperature,
          pressure: pressurePascal[i] as AbsolutePressure,
        })
    },
  ],
  'saturationPressure, by the call': [
    rows,
    () => {
      for (let i = 0; i < rows; i++) sink += saturationPressure(frostKelvin[i] as Temperature)
    },
  ],
  'enhancementFactor, by the call': [
    calls,
    () => {
      for (let i = 0; i < calls; i++)
        sink += enhancementFactor({
          temperature: temperatureKelvin[i] as Temperature,
          pressure: (10 * (pressurePascal[i] as number)) as AbsolutePressure,
        })
    },
  ],
  'dewPoint, by the call': [
    calls,
    () => {
      for (let i = 0; i < calls; i++)
        sink += dewPoint({
          waterFraction,
          pressure: (10 * (pressurePascal[i] as number)) as AbsolutePressure,
        }).temperature
    },
  ],
  'viscosity of trimix, by the call': [
    calls,
    () => {
      for (let i = 0; i < calls; i++)
        sink += viscosity(gas, {
          temperature: temperatureKelvin[i] as Temperature,
          pressure: pressurePascal[i] as AbsolutePressure,
        })
    },
  ],
}

for (const [name, [count, run]] of Object.entries(cases)) {
  run() // warm
  const times = Array.from({ length: runs }, () => {
    const began = performance.now()
    run()
    return ((performance.now() - began) * 1e6) / count
  }).sort((a, b) => a - b)
  console.log(
    `${name}: median ${times[runs >> 1]?.toFixed(1)} ns, from ${times[0]?.toFixed(1)} to ${times[runs - 1]?.toFixed(1)}`,
  )
}
console.log(Number.isFinite(sink) && out.code.every((code) => code === 0) ? '' : 'a row was bad')
