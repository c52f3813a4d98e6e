import {
  type AirAnalysis,
  assessAnalysis,
  assessCartridge,
  assessContaminantAtDepth,
  assessFilters,
  assessFrost,
  assessRunning,
  partialPressureLimits,
} from '../../../src/charging/index.ts'
import { roomCondition } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  fractionOf,
  freeGasFlowOf,
  gram,
  hour,
  kelvin,
  litrePerMinute,
  measure,
  milligramPerCubicMetre,
  partPerMillion,
  percent,
  temperatureOf,
} from '../../../src/units/index.ts'
import type { VerdictRow } from './row.ts'

const trace = (ppm: number, doubt: number) => ({
  fraction: fractionOf(ppm, partPerMillion),
  standardUncertainty: fractionOf(doubt, partPerMillion),
})
const clean: AirAnalysis = {
  sample: { from: 'compressor-outlet' },
  measured: {
    oxygen: { fraction: fractionOf(20.9, percent), standardUncertainty: fractionOf(0.1, percent) },
    carbonMonoxide: trace(1, 0.1),
    carbonDioxide: trace(430, 10),
    oil: {
      concentration: measure(0.1, milligramPerCubicMetre),
      standardUncertainty: measure(0.02, milligramPerCubicMetre),
    },
    hydrocarbons: trace(2, 0.2),
  },
  odour: 'none',
}
const analysis = (change: Partial<AirAnalysis>) =>
  assessAnalysis({ ...clean, ...change }, ['us-commercial-diving'], { reference: roomCondition })[0]?.verdict ??
  'undetermined'

const air = (degrees: number) => ({
  freeAir: freeGasFlowOf(100, litrePerMinute, roomCondition),
  separator: { pressure: absolute(200, bar), temperature: temperatureOf(degrees, celsius) },
})
const cartridge = (grams: number, basis: 'maker' | 'memory') =>
  assessCartridge(
    {
      capacity: { value: measure(grams, gram), standardUncertainty: measure(10, gram), basis },
      runs: [{ ...air(25), duration: measure(40, hour) }],
      next: air(25),
    },
    { reference: roomCondition },
  ).verdict

const monoxide = (ppm: number, doubt: number) =>
  assessContaminantAtDepth(
    { ...trace(ppm, doubt), pressure: absolute(6, bar), surfacePressure: absolute(1, bar) },
    partialPressureLimits.carbonMonoxide,
  ).verdict

const frost = (ppm: number, surface?: number) =>
  assessFrost({
    waterFraction: fractionOf(ppm, partPerMillion),
    relativeUncertainty: 0.05,
    supply: { pressure: absolute(100, bar), temperature: temperatureOf(20, celsius) },
    to: absolute(10, bar),
    ...(surface === undefined ? {} : { surfaceTemperature: temperatureOf(surface, celsius) }),
  }).verdict

const stages = (bars: readonly number[]) =>
  bars.map((p) => ({
    pressure: absolute(p, bar),
    inletTemperature: temperatureOf(25, celsius),
    dischargeTemperature: temperatureOf(150, celsius),
  }))
const running = (second: number, doubt = 0.2) =>
  assessRunning({
    expected: stages([5.7, 32.3, 226]),
    read: stages([5.7, second, 226]),
    intakePressure: absolute(1, bar),
    allowed: { pressureShare: 0.1, temperature: difference(10, kelvin) },
    uncertainty: { pressure: difference(doubt, bar), temperature: difference(1, kelvin) },
  }).verdict

/** Functions of this room. */
export const rows: Readonly<Record<string, VerdictRow>> = {
  assessAnalysis: {
    base: () => analysis({}),
    turnedBy: {
      'a trace above its limit': () => analysis({ measured: { ...clean.measured, carbonMonoxide: trace(40, 1) } }),
      'a trace near its limit': () => analysis({ measured: { ...clean.measured, carbonMonoxide: trace(19.9, 1) } }),
      'a trace that was not analysed': () =>
        analysis({ measured: { carbonMonoxide: trace(1, 0.1), carbonDioxide: trace(430, 10) } }),
      'an odour': () => analysis({ odour: 'objectionable' }),
      'an odour that was not recorded': () => {
        const { odour: _, ...rest } = clean
        return assessAnalysis(rest, ['us-commercial-diving'], { reference: roomCondition })[0]?.verdict ?? 'within'
      },
    },
  },
  assessCartridge: {
    base: () => cartridge(300, 'maker'),
    turnedBy: {
      'a capacity from memory': () => cartridge(300, 'memory'),
      'a capacity that is used up': () => cartridge(40, 'maker'),
    },
  },
  assessContaminantAtDepth: {
    base: () => monoxide(2, 0.1),
    turnedBy: {
      'a partial pressure above the limit': () => monoxide(20, 0.1),
      'a partial pressure near the limit': () => monoxide(8, 1),
    },
  },
  assessFilters: {
    base: () => assessFilters(['separator', 'molecular-sieve', 'activated-carbon'], ['water-vapour', 'odour']).verdict,
    turnedBy: {
      'a bed that meets liquid': () => assessFilters(['activated-carbon'], ['odour']).verdict,
      'an impurity that no stage takes': () =>
        assessFilters(['separator', 'activated-carbon'], ['carbon-monoxide']).verdict,
    },
  },
  assessFrost: {
    base: () => frost(1, 15),
    turnedBy: {
      'a surface that was not stated': () => frost(1),
      'moist gas on a cold surface': () => frost(2000, -30),
    },
  },
  assessRunning: {
    base: () => running(32.3),
    turnedBy: {
      'a stage that shows too much': () => running(41),
      'readings too unsure to tell': () => running(34.5, 2),
    },
  },
}
