import { depthConventions } from '../../src/environment/index.ts'
import {
  assessCell,
  assessDisagreement,
  assessEquivalentGauges,
  assessGaugeTest,
  assessPortFit,
  assessSurfaceCheck,
  cellAgreement,
  type PortFit,
} from '../../src/gauges/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  gauge,
  hectopascal,
  measure,
  metre,
  millivolt,
  percent,
  temperatureOf,
} from '../../src/units/index.ts'
import type { Decision } from '../fixtures/decision.ts'

// A dial of 25 bar, class 1.6: 0.4 bar at 20 °C, and 0.1 bar more ten kelvin away.
const dial = { span: difference(25, bar), accuracyClass: 0.016 }
const points = (error: number, { count = 5, back = error, isBothWays = true } = {}) =>
  Array.from({ length: count }, (_, i) => ({
    reference: gauge(5 * i, bar),
    rising: gauge(5 * i + error, bar),
    ...(isBothWays ? { falling: gauge(5 * i + back, bar) } : {}),
  }))
const tested = (change: Partial<Parameters<typeof assessGaugeTest>[0]> = {}) =>
  assessGaugeTest({ gauge: dial, points: points(0.1), temperature: temperatureOf(20, celsius), ...change })
const tenCelsius = temperatureOf(10, celsius)
const [first, ...rest] = points(0.1)

const gaugeTest: readonly Decision[] = [
  ['every error inside the class', 'within', [], () => tested()],
  ['an error of the class itself', 'within', [], () => tested({ points: points(0.4) })],
  ['an error of the class itself, the other way', 'within', [], () => tested({ points: points(-0.4) })],
  ['an error above the class', 'beyond', ['error'], () => tested({ points: points(0.401) })],
  ['an error below the class', 'beyond', ['error'], () => tested({ points: points(-0.401) })],
  [
    'an error on the way down alone',
    'beyond',
    ['error', 'hysteresis'],
    () => tested({ points: points(0, { back: 0.41 }) }),
  ],
  [
    'an error that the temperature could explain',
    'undetermined',
    ['temperature'],
    () => tested({ points: points(0.45), temperature: tenCelsius }),
  ],
  [
    'an error of class and temperature together',
    'undetermined',
    ['temperature'],
    () => tested({ points: points(0.5), temperature: tenCelsius }),
  ],
  ['an error that it could not', 'beyond', ['error'], () => tested({ points: points(0.501), temperature: tenCelsius })],
  ['away from 20 °C inside the class', 'within', [], () => tested({ temperature: tenCelsius })],
  ['too few points', 'undetermined', ['few-points'], () => tested({ points: points(0.1, { count: 4 }) })],
  [
    'ten points for a fine class',
    'within',
    [],
    () => tested({ gauge: { ...dial, accuracyClass: 0.006 }, points: points(0.1, { count: 10 }) }),
  ],
  [
    'nine points for a fine class',
    'undetermined',
    ['few-points'],
    () => tested({ gauge: { ...dial, accuracyClass: 0.006 }, points: points(0.1, { count: 9 }) }),
  ],
  ['five points for the next class', 'within', [], () => tested({ gauge: { ...dial, accuracyClass: 0.01 } })],
  ['no way down', 'undetermined', ['one-way'], () => tested({ points: points(0.1, { isBothWays: false }) })],
  [
    'one point without its way down',
    'undetermined',
    ['one-way'],
    () => tested({ points: [...points(0.1, { isBothWays: false }).slice(0, 1), ...rest] }),
  ],
  ['hysteresis of the class', 'within', [], () => tested({ points: points(-0.2, { back: 0.2 }) })],
  ['more hysteresis', 'undetermined', ['hysteresis'], () => tested({ points: points(-0.21, { back: 0.2 }) })],
  [
    'a class that the standard does not have',
    'undetermined',
    ['class'],
    () => tested({ gauge: { ...dial, accuracyClass: 0.015 } }),
  ],
  ['the coarsest class', 'within', [], () => tested({ gauge: { ...dial, accuracyClass: 0.04 }, points: points(0.99) })],
  [
    'a coarser class than any, with enough points',
    'undetermined',
    ['class'],
    () => tested({ gauge: { ...dial, accuracyClass: 0.05 } }),
  ],
  [
    'a coarser class than any, with four',
    'undetermined',
    ['class', 'few-points'],
    () => tested({ gauge: { ...dial, accuracyClass: 0.05 }, points: points(0.1, { count: 4 }) }),
  ],
  [
    'one bad reading among good ones',
    'beyond',
    ['error', 'hysteresis'],
    () => tested({ points: [{ ...(first as (typeof rest)[number]), rising: gauge(0.6, bar) }, ...rest] }),
  ],
  [
    'everything at once',
    'beyond',
    ['error', 'class', 'few-points', 'one-way'],
    () => tested({ gauge: { ...dial, accuracyClass: 0.015 }, points: points(1, { count: 2, isBothWays: false }) }),
  ],
]

const pair = (apart: number, correlation = 0, u = 0.2) =>
  assessDisagreement({
    first: { value: 30, standardUncertainty: u },
    second: { value: 30 + apart, standardUncertainty: 0.2 },
    correlation,
  })
const shared = 'shared-error'
// Independent, 0.2 each: 0.5657 apart. Correlated by a half: 0.4.
const disagreement: readonly Decision[] = [
  ['two that show the same', 'within', [shared], () => pair(0)],
  ['as far apart as they may be', 'within', [shared], () => pair(0.565)],
  ['as far apart, the other way', 'within', [shared], () => pair(-0.565)],
  ['further apart', 'beyond', ['readings-apart', shared], () => pair(0.566)],
  ['further apart, the other way', 'beyond', ['readings-apart', shared], () => pair(-0.566)],
  ['less far, with errors that go together', 'beyond', ['readings-apart', shared], () => pair(0.401, 0.5)],
  ['nearer, with errors that go together', 'within', [shared], () => pair(0.399, 0.5)],
  ['errors that go against one another', 'within', [shared], () => pair(0.799, -1)],
  ['a better instrument', 'beyond', ['readings-apart', shared], () => pair(0.45, 0, 0.1)],
]

const equivalent = (second: number) => assessEquivalentGauges({ first: 30, second, fullScale: 60, allowed: 0.02 })
const equivalentGauges: readonly Decision[] = [
  ['two that show the same', 'within', [], () => equivalent(30)],
  ['2 % of the scale apart', 'within', [], () => equivalent(31.2)],
  ['2 % of the scale apart, below', 'within', [], () => equivalent(28.8)],
  ['further apart', 'beyond', ['difference'], () => equivalent(31.21)],
  ['further apart, below', 'beyond', ['difference'], () => equivalent(28.79)],
]

// Zeroed at 1013.25 hPa: at 800 hPa it ought to stand at -2.1 m.
const surface = (change: Partial<Parameters<typeof assessSurfaceCheck>[0]> = {}) =>
  assessSurfaceCheck({
    gauge: { zeroPressure: absolute(1013.25, hectopascal), convention: depthConventions.depthGauge },
    shown: measure(0, metre),
    surfacePressure: absolute(1013.25, hectopascal),
    allowed: measure(0.5, metre),
    hasStop: true,
    ...change,
  })
const high = { surfacePressure: absolute(800, hectopascal) }
const surfaceCheck: readonly Decision[] = [
  ['zero where it ought to be', 'within', [], () => surface()],
  ['off by what is allowed', 'within', [], () => surface({ shown: measure(0.5, metre) })],
  ['off by more', 'beyond', ['zero'], () => surface({ shown: measure(0.501, metre) })],
  [
    'below zero by more, without a stop',
    'beyond',
    ['zero'],
    () => surface({ shown: measure(-0.501, metre), hasStop: false }),
  ],
  ['on its stop where it ought to stand below', 'undetermined', ['on-stop'], () => surface(high)],
  ['zero there without a stop', 'beyond', ['zero'], () => surface({ ...high, hasStop: false })],
  ['below zero as it ought to', 'within', [], () => surface({ ...high, hasStop: false, shown: measure(-2.1, metre) })],
  [
    'off its stop where it ought to stand below',
    'beyond',
    ['zero'],
    () => surface({ ...high, shown: measure(0.1, metre) }),
  ],
  [
    'higher pressure than its zero, shown',
    'within',
    [],
    () => surface({ surfacePressure: absolute(1050, hectopascal), shown: measure(0.3, metre) }),
  ],
  [
    'a stop with the pointer at a zero that ought to be above',
    'within',
    [],
    () => surface({ surfacePressure: absolute(1050, hectopascal) }),
  ],
]

const point = (pressure: number, output: number) => ({
  partialPressure: absolute(pressure, bar),
  voltage: measure(output, millivolt),
})
// 10 mV in air at 0.21 bar: 76.19 mV at 1.6 bar in proportion.
const tried = (change: Partial<Parameters<typeof assessCell>[0]> = {}) =>
  assessCell({
    inAir: point(0.21, 10),
    richer: [point(1.6, 75)],
    highestUsed: absolute(1.6, bar),
    leastLinearity: measure(95, percent),
    leastInAir: measure(8, millivolt),
    ...change,
  })
const cell: readonly Decision[] = [
  ['straight as far as it is used', 'within', [], () => tried()],
  ['just straight enough', 'within', [], () => tried({ richer: [point(1.6, 72.39)] })],
  ['falling behind', 'beyond', ['linearity'], () => tried({ richer: [point(1.6, 72.37)] })],
  [
    'falling behind at one of two points',
    'beyond',
    ['linearity'],
    () => tried({ richer: [point(1, 44), point(1.6, 75)] }),
  ],
  ['just not above proportion', 'within', [], () => tried({ richer: [point(1.6, 79.9)] })],
  ['giving more than in proportion', 'undetermined', ['over-reads'], () => tried({ richer: [point(1.6, 80.1)] })],
  [
    'just enough in air',
    'within',
    [],
    () => tried({ inAir: point(0.21, 9.6), richer: [point(1.6, 72)], leastInAir: measure(9.6, millivolt) }),
  ],
  ['too little in air', 'beyond', ['output'], () => tried({ leastInAir: measure(10.1, millivolt) })],
  ['not tried as far as it is used', 'undetermined', ['untried'], () => tried({ highestUsed: absolute(1.61, bar) })],
  ['never tried above air', 'undetermined', ['untried'], () => tried({ richer: [] })],
  ['used in air alone', 'within', [], () => tried({ richer: [], highestUsed: absolute(0.21, bar) })],
  ['dead and untried', 'beyond', ['output', 'untried'], () => tried({ inAir: point(0.21, 4), richer: [] })],
]

const agreeing = (shown: readonly number[], triedTo?: readonly (number | undefined)[]) =>
  cellAgreement(
    shown.map((p, i) => {
      const highest = triedTo?.[i]
      return { shown: absolute(p, bar), ...(highest === undefined ? {} : { triedTo: absolute(highest, bar) }) }
    }),
    difference(0.1, bar),
  )
const alike = 'shared-fault'
const agreement: readonly Decision[] = [
  ['two that agree, tried further', 'within', [alike], () => agreeing([1.2, 1.25], [1.6, 1.6])],
  ['as far apart as allowed', 'within', [alike], () => agreeing([1, 1.0999], [1.6, 1.6])],
  ['further apart', 'beyond', ['cells-apart', alike], () => agreeing([1, 1.1001], [1.6, 1.6])],
  ['three, one of them apart', 'beyond', ['cells-apart', alike], () => agreeing([1.2, 1.2, 1.35], [1.6, 1.6, 1.6])],
  ['tried just as far', 'within', [alike], () => agreeing([1.2, 1.25], [1.25, 1.25])],
  ['one not tried this far', 'undetermined', ['untried', alike], () => agreeing([1.2, 1.25], [1.249, 1.6])],
  ['one never tried', 'undetermined', ['untried', alike], () => agreeing([1.2, 1.25], [1.6, undefined])],
  ['apart and untried', 'beyond', ['cells-apart', 'untried', alike], () => agreeing([1.2, 1.4])],
]

const fitting = (change: Partial<PortFit> = {}) =>
  assessPortFit({ port: 'low-3/8', hose: 'low-pressure', pressure: gauge(10, bar), rating: gauge(30, bar), ...change })
const portFit: readonly Decision[] = [
  ['a low-pressure hose in its port', 'within', [], () => fitting()],
  ['at the rating of the hose', 'within', [], () => fitting({ pressure: gauge(30, bar) })],
  ['above it', 'beyond', ['rating'], () => fitting({ pressure: gauge(30.1, bar) })],
  [
    'a rating that cannot be read',
    'undetermined',
    ['no-rating'],
    () => assessPortFit({ port: 'low-3/8', hose: 'low-pressure', pressure: gauge(10, bar) }),
  ],
  ['the wider hose in its port', 'within', [], () => fitting({ port: 'low-1/2', hose: 'low-pressure-1/2' })],
  ['another thread', 'beyond', ['thread'], () => fitting({ port: 'low-1/2' })],
  [
    'a high-pressure hose in its port',
    'within',
    [],
    () => fitting({ port: 'high-7/16', hose: 'high-pressure', pressure: gauge(232, bar), rating: gauge(300, bar) }),
  ],
  ['a high-pressure hose on the low side', 'beyond', ['thread', 'side'], () => fitting({ hose: 'high-pressure' })],
  ['the thread that engages at cylinder pressure', 'beyond', ['side', 'memory'], () => fitting({ port: 'high-3/8' })],
  [
    'the same with a pressure above the rating',
    'beyond',
    ['side', 'rating', 'memory'],
    () => fitting({ port: 'high-3/8', pressure: gauge(232, bar) }),
  ],
]

/** Decision tables of the room, by function. */
export const decisions: Readonly<Record<string, readonly Decision[]>> = {
  assessGaugeTest: gaugeTest,
  assessDisagreement: disagreement,
  assessEquivalentGauges: equivalentGauges,
  assessSurfaceCheck: surfaceCheck,
  assessCell: cell,
  cellAgreement: agreement,
  assessPortFit: portFit,
}
