import { describe, expect, test } from 'vitest'
import { isLitrebarError } from '../../src/errors/index.ts'
import { dryAir } from '../../src/gas-law/index.ts'
import * as room from '../../src/regulator-performance/index.ts'

// One good call of each function. What is wrong in it, anywhere, has to be refused by a typed error: a number that is none, a key too
// many, a key too few, a word that is none.

const orifice = { area: 3e-6, dischargeCoefficient: 0.8 }
const ideal = { molarMass: 0.029, heatCapacityRatio: 1.4, upstreamTemperature: 290 }
const temperature = 290
const parts = { crackingPressure: 200, laminarResistance: 2e4, turbulentResistance: 6e7 }
const inAir = (pressure: number, work: number) => ({
  gas: { mixture: dryAir, pressure, temperature },
  workOfBreathingPerLitre: work,
  standardUncertainty: 20,
})
const sinusoid = { shape: 'sinusoid' }
const trapezoid = { shape: 'trapezoid', inhalationShare: 0.5, rampShare: 0.2 }
const setting = { tidalVolume: 0.0025, breathingFrequency: 0.4, waveform: trapezoid }
const demand = {
  orifice,
  mixture: dryAir,
  supplyTemperature: temperature,
  breathingGasTemperature: temperature,
  ambientPressure: 6e5,
  peakFlow: 0.003,
  intermediatePressure: 9e5,
  regulatingMargin: 1e5,
}
const hose = { bore: 0.006, length: 0.7, roughness: 1e-6, fittings: 1 }
const series = [
  { kind: 'orifice', name: 'valve', orifice },
  { kind: 'regulated orifice', name: 'stage', orifice, outletPressure: 15e5 },
  { kind: 'hose', name: 'hose', hose },
]
const seriesState = { mixture: dryAir, supplyPressure: 50e5, temperature, downstreamPressure: 6e5 }
const resistances = [0.001, 0.002, 0.003, 0.004].map((peakFlow, row) => ({ peakFlow, workPerLitre: 500 + 300 * row }))
const load = { resistance: 5e5, elastance: 3e5, inertance: 2e4 }
const valve = {
  seat: 'downstream',
  springForce: 8,
  orificeArea: 2e-5,
  balancedShare: 0.5,
  leverRatio: 4,
  diaphragmArea: 2e-3,
}
const ring = {
  sectionDiameter: 0.00262,
  insideDiameter: 0.0188,
  grooveDiameter: 0.0192,
  grooveWidth: 0.0036,
  glandDepth: 0.002,
}

/** Function, arguments, and the keys that may be left out. */
const calls: Readonly<Record<string, readonly [unknown[], string[]?]>> = {
  workAtDensity: [[{ workOfBreathingPerLitre: 1000, density: 1.2, constantShare: 0.3 }, 6]],
  predictedWork: [
    [
      [inAir(1e5, 600), inAir(3e5, 1020), inAir(5e5, 1470)],
      { mixture: dryAir, pressure: 4e5, temperature },
      { laminarShare: 0.5, extrapolate: false },
    ],
    ['standardUncertainty', 'extrapolate'],
  ],
  resistanceFit: [[resistances, 'half']],
  powerLawWorkPerLitre: [[1000, 1.75]],
  resistiveWork: [[{ inhalation: parts, exhalation: parts }, 0.003]],
  loopShape: [[{ workPerLitre: 667, peakPressure: 1000 }]],
  peakDemand: [[0.001, { shift: 0.2 }]],
  peakInhalationFlow: [[0.001, trapezoid]],
  simulatedBreathing: [[{ ...setting, waveform: sinusoid }]],
  breathingSeries: [[setting, { breaths: 2, samplesPerBreath: 20 }]],
  orificeFlow: [
    [
      orifice,
      { mixture: dryAir, upstreamPressure: 200e5, upstreamTemperature: 290, downstreamPressure: 1e6 },
      { gas: 'ideal' },
    ],
    ['gas'],
  ],
  idealOrificeFlow: [[orifice, { ...ideal, upstreamPressure: 2e7, downstreamPressure: 1e6 }]],
  chokedMassFlow: [[orifice, { ...ideal, upstreamPressure: 2e7 }]],
  chokedSupplyPressure: [[orifice, { ...ideal, massFlow: 0.1 }]],
  criticalFlow: [[1.4]],
  realCriticalFlow: [[dryAir, { pressure: 2e7, temperature }]],
  conductedFlow: [
    [
      { sonicConductance: 1e-8, criticalPressureRatio: 0.4 },
      { upstreamPressure: 1e6, downstreamPressure: 9e5, upstreamTemperature: 290, referenceTemperature: 293 },
    ],
  ],
  conductanceOfOrifice: [[orifice, { density: 1.2, temperature: 293, molarMass: 0.029, heatCapacityRatio: 1.4 }]],
  hoseFlow: [
    [hose, { molarMass: 0.029, viscosity: 1.8e-5, temperature }, { upstreamPressure: 1.5e6, massFlow: 0.01 }],
    ['roughness', 'fittings'],
  ],
  seriesFlow: [
    [series, seriesState, { gas: 'ideal' }],
    ['gas', 'roughness', 'fittings'],
  ],
  driftError: [[{ change: 100, during: 60 }, 0.4]],
  lagError: [
    [{ resistivePressure: 1000, elasticPressure: 100, delay: 0.01, timeConstant: 0.01, breathingFrequency: 0.4 }],
    ['delay', 'timeConstant'],
  ],
  samplingLoss: [[100]],
  workUncertainty: [
    [
      {
        workOfBreathingPerLitre: 1000,
        pressureGain: 0.01,
        pressureNoise: 10,
        samplesPerBreath: 100,
        breaths: { spread: 20, count: 10 },
      },
    ],
    ['breaths'],
  ],
  loadedBreath: [[load, { tidalVolume: 0.003, breathingFrequency: 0.5 }]],
  elastanceAndInertance: [
    [
      [
        { breathingFrequency: 0.25, apparentElastance: 2.5e5 },
        { breathingFrequency: 0.5, apparentElastance: 1e5 },
      ],
    ],
  ],
  fittedAssist: [
    [{ flow: [0.001, 0.002, 0.003, 0.004], pressure: [-300, -350, -320, -200] }, { crackingPressure: 200 }],
    ['crackingPressure'],
  ],
  hydrostaticImbalance: [[{ height: 0.1, waterDensity: 1025, gravity: 9.80665 }]],
  exhaustPressure: [[{ openingPressure: 100, area: 3e-4, dischargeCoefficient: 0.7, flow: 0.003, gasDensity: 7 }]],
  crackingPressure: [[valve, 9e5]],
  pilotOpening: [[{ pilotCrackingPressure: 200, areaRatio: 4, intermediatePressure: 9e5 }]],
  attitudeEffect: [
    [
      {
        diaphragmBelowExhaust: 0.05,
        waterDensity: 1025,
        gravity: 9.80665,
        crackingPressure: 200,
        exhaustPressure: 100,
      },
    ],
  ],
  minimumSupplyPressure: [[demand, { gas: 'ideal' }], ['gas']],
  compileSupply: [
    [(({ ambientPressure: _, ...supply }) => supply)(demand), { maximumPressure: 200e5, gas: 'ideal' }],
    ['gas'],
  ],
  throttledTemperature: [[dryAir, { pressure: 2e7, temperature }, 1e6]],
  warmedGas: [
    [{ temperature: 250, wallTemperature: 277, conductance: 10, massFlow: 0.005, specificHeatCapacity: 1005 }],
  ],
  firstStageSurfaceTemperature: [[{ heatFlow: 100, conductance: 20, waterTemperature: 277 }]],
  oRingFit: [[ring]],
  seatLeak: [[{ volume: 5e-5, rise: 1e5, during: 60, statedAt: 1e5 }]],
  reliefArea: [[{ orificeArea: 3e-6, supplyPressure: 2e7, reliefPressure: 1.5e6 }]],
  preload: [[{ torque: 10, diameter: 0.01, nutFactor: 0.2 }]],
}

type Path = readonly (string | number)[]
interface Fault {
  readonly what: string
  readonly args: unknown[]
}

/** Every way in which one place of the arguments can be wrong. */
function* faultsOf(args: unknown[], optional: readonly string[]): Generator<Fault> {
  for (const { path, value } of placesOf(args, [])) {
    const at = path.join('.')
    const name = path.at(-1)
    if (typeof value === 'number') {
      for (const bad of [Number.NaN, Number.POSITIVE_INFINITY])
        yield { what: `${at}: ${bad}`, args: put(args, path, bad) }
    }
    if (typeof value === 'string' && name !== 'name') {
      for (const bad of ['constructor', 'Half']) yield { what: `${at}: '${bad}'`, args: put(args, path, bad) }
    }
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
      yield { what: `${at}.unheard`, args: put(args, path, { ...value, unheard: 1 }) }
      yield { what: `${at}: null`, args: put(args, path, null) }
      for (const key of Object.keys(value)) {
        if (optional.includes(key)) continue
        const { [key]: _, ...rest } = value as Record<string, unknown>
        yield { what: `${at} without ${key}`, args: put(args, path, rest) }
      }
    }
    if (Array.isArray(value)) yield { what: `${at}: no list`, args: put(args, path, undefined) }
  }
}

function* placesOf(value: unknown, path: Path): Generator<{ path: Path; value: unknown }> {
  if (path.length > 0) yield { path, value }
  if (typeof value !== 'object' || value === null || value === dryAir) return
  for (const [key, inner] of Object.entries(value)) {
    if (inner !== dryAir) yield* placesOf(inner, [...path, Array.isArray(value) ? Number(key) : key])
  }
}

function put(root: unknown, [first, ...rest]: Path, value: unknown): never {
  if (first === undefined) return value as never
  const copy = (Array.isArray(root) ? [...root] : { ...(root as object) }) as Record<string | number, unknown>
  copy[first] = put(copy[first], rest, value)
  return copy as never
}

describe('bad input is a typed error, wherever it stands', () => {
  for (const [name, [args, optional = []]] of Object.entries(calls)) {
    const given = (room as unknown as Record<string, (...args: unknown[]) => unknown>)[name] as (
      ...args: unknown[]
    ) => unknown
    test(name, () => {
      expect(() => given(...args)).not.toThrow()
      const passed: string[] = []
      for (const { what, args: bad } of faultsOf(args, optional)) {
        try {
          given(...bad)
          passed.push(`${what} passes`)
        } catch (error) {
          if (!isLitrebarError(error)) passed.push(`${what}: ${String(error)}`)
        }
      }
      expect(passed).toEqual([])
    })
  }
})
