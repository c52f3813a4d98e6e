import { depthConventions } from '../../../src/environment/index.ts'
import {
  assessCell,
  assessDisagreement,
  assessEquivalentGauges,
  assessGaugeTest,
  assessPortFit,
  assessSurfaceCheck,
  cellAgreement,
} from '../../../src/gauges/index.ts'
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
} from '../../../src/units/index.ts'
import type { VerdictRow } from './row.ts'

const dial = { span: difference(25, bar), accuracyClass: 0.016 }
const points = (error: number, count = 5, isBothWays = true) =>
  Array.from({ length: count }, (_, i) => ({
    reference: gauge(5 * i, bar),
    rising: gauge(5 * i + error, bar),
    ...(isBothWays ? { falling: gauge(5 * i + error, bar) } : {}),
  }))
const gaugeTest = (change: Partial<Parameters<typeof assessGaugeTest>[0]> = {}) =>
  assessGaugeTest({ gauge: dial, points: points(0.1), temperature: temperatureOf(20, celsius), ...change }).verdict

const pair = {
  first: { value: 30, standardUncertainty: 0.2 },
  second: { value: 30.1, standardUncertainty: 0.2 },
  correlation: 0,
}
const equivalent = { first: 30, second: 30.1, fullScale: 60, allowed: 0.02 }

const surface = (change: Partial<Parameters<typeof assessSurfaceCheck>[0]> = {}) =>
  assessSurfaceCheck({
    gauge: { zeroPressure: absolute(1013.25, hectopascal), convention: depthConventions.depthGauge },
    shown: measure(0, metre),
    surfacePressure: absolute(1013.25, hectopascal),
    allowed: measure(0.5, metre),
    hasStop: true,
    ...change,
  }).verdict

const point = (pressure: number, output: number) => ({
  partialPressure: absolute(pressure, bar),
  voltage: measure(output, millivolt),
})
const cell = (change: Partial<Parameters<typeof assessCell>[0]> = {}) =>
  assessCell({
    inAir: point(0.21, 10),
    richer: [point(1.6, 75)],
    highestUsed: absolute(1.6, bar),
    leastLinearity: measure(95, percent),
    leastInAir: measure(8, millivolt),
    ...change,
  }).verdict
const agreement = (shown: readonly number[], triedTo?: number) =>
  cellAgreement(
    shown.map((p) => ({
      shown: absolute(p, bar),
      ...(triedTo === undefined ? {} : { triedTo: absolute(triedTo, bar) }),
    })),
    difference(0.1, bar),
  ).verdict

const port = (change: Partial<Parameters<typeof assessPortFit>[0]> = {}) =>
  assessPortFit({
    port: 'low-3/8',
    hose: 'low-pressure',
    pressure: gauge(10, bar),
    rating: gauge(30, bar),
    ...change,
  }).verdict

export const rows: Readonly<Record<string, VerdictRow>> = {
  assessCell: {
    base: () => cell(),
    turnedBy: {
      'not tried as far as it is used': () => cell({ highestUsed: absolute(1.7, bar) }),
      'never tried above air': () => cell({ richer: [] }),
      'falls behind': () => cell({ richer: [point(1.6, 70)] }),
      'gives too little in air': () => cell({ inAir: point(0.21, 7.9) }),
    },
  },
  assessDisagreement: {
    base: () => assessDisagreement(pair).verdict,
    turnedBy: {
      'further apart than their uncertainties': () =>
        assessDisagreement({ ...pair, second: { ...pair.second, value: 31 } }).verdict,
      'the same apart with an error that both share': () => assessDisagreement({ ...pair, correlation: 1 }).verdict,
    },
  },
  assessEquivalentGauges: {
    base: () => assessEquivalentGauges(equivalent).verdict,
    turnedBy: { 'too far apart': () => assessEquivalentGauges({ ...equivalent, second: 32 }).verdict },
  },
  assessGaugeTest: {
    base: () => gaugeTest(),
    turnedBy: {
      'an error above the class': () => gaugeTest({ points: points(0.5) }),
      'an error that only the temperature could explain': () =>
        gaugeTest({ points: points(0.45), temperature: temperatureOf(10, celsius) }),
      'too few points': () => gaugeTest({ points: points(0.1, 4) }),
      'no way down': () => gaugeTest({ points: points(0.1, 5, false) }),
      'a class that the standard does not have': () => gaugeTest({ gauge: { ...dial, accuracyClass: 0.015 } }),
    },
  },
  assessPortFit: {
    base: () => port(),
    turnedBy: {
      'another thread': () => port({ port: 'low-1/2' }),
      'the other side': () => port({ port: 'high-3/8' }),
      'more pressure than the rating': () => port({ pressure: gauge(40, bar) }),
      'a rating that cannot be read': () =>
        assessPortFit({ port: 'low-3/8', hose: 'low-pressure', pressure: gauge(10, bar) }).verdict,
    },
  },
  assessSurfaceCheck: {
    base: () => surface(),
    turnedBy: {
      'a zero that is off': () => surface({ shown: measure(0.6, metre) }),
      'a pointer on its stop': () => surface({ surfacePressure: absolute(800, hectopascal) }),
    },
  },
  cellAgreement: {
    base: () => agreement([1.2, 1.25], 1.6),
    turnedBy: {
      'cells apart': () => agreement([1.2, 1.4], 1.6),
      'cells that were not tried this far': () => agreement([1.2, 1.25], 1.1),
      'cells that were never tried': () => agreement([1.2, 1.25]),
    },
  },
}
