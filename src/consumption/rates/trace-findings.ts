import type { PressureTrace } from './pressure-trace.ts'

/** Something that a log does not carry, and what it does to the rate. */
export interface TraceFinding {
  readonly code:
    | 'small-drop'
    | 'pressure-rises'
    | 'gap'
    | 'stuck'
    | 'outlier'
    | 'rate-changes'
    | 'temperature-dominates'
    | 'near-ambient'
  readonly text: string
}

/** A log with what the fit made of it. Plain numbers in SI. */
export interface FittedTrace {
  readonly trace: PressureTrace
  readonly times: readonly number[]
  readonly pressures: readonly number[]
  readonly breathed: readonly number[]
  readonly used: readonly number[]
  readonly temperatures: readonly number[]
  readonly rate: number
  /** Standard uncertainty of a reading as an amount. */
  readonly readingAmount: number
  /** Standard uncertainty of the rate by the readings alone. */
  readonly readingsPart: number
  /** Rate of each sixth of the log, with its standard uncertainty by the readings. */
  readonly parts: readonly { readonly rate: number; readonly uncertainty: number }[]
}

interface Check {
  readonly code: TraceFinding['code']
  readonly text: string
  readonly isFound: (fitted: FittedTrace) => boolean
}

// The multiples are choices of ours, tried on sound logs of 18 to 600 readings with normal noise: none is named but for a small drop.
const checks: readonly Check[] = [
  {
    code: 'small-drop',
    text: 'The pressure falls by little beside the uncertainty of a reading: twice what the readings alone leave open is more than 4 % of the rate.',
    isFound: ({ rate, readingsPart }) => readingsPart > 0.02 * rate,
  },
  {
    code: 'pressure-rises',
    text: 'The pressure rises at once, or the gas in the cylinder grows in time, by more than the readings scatter: gas came in, the cylinder warmed otherwise than stated, or another one was logged.',
    isFound: ({ trace, pressures, used, readingAmount }) => {
      let most = -Infinity
      return (
        steps(pressures).some((step) => step > 8 * trace.uncertainty.reading) ||
        used.some((value) => {
          most = Math.max(most, value)
          return most - value > 8 * readingAmount
        })
      )
    },
  },
  {
    code: 'gap',
    text: 'The log has a hole longer than a tenth of it: what was breathed then is taken as even.',
    isFound: ({ times }) => Math.max(...steps(times)) > 0.1 * ((times.at(-1) as number) - (times[0] as number)),
  },
  {
    code: 'stuck',
    text: 'The pressure stands still while gas worth eight times the uncertainty of a reading should have gone: the sender held its value.',
    isFound: ({ pressures, breathed, rate, readingAmount }) => {
      let from = 0
      return pressures.some((pressure, i) => {
        if (pressure !== pressures[from]) from = i
        return rate * ((breathed[i] as number) - (breathed[from] as number)) > 8 * readingAmount
      })
    },
  },
  {
    code: 'outlier',
    text: 'A single reading lies apart from both its neighbours by more than they scatter: leave it out if it is false.',
    isFound: ({ used, readingAmount }) =>
      used.some((value, i) => {
        const before = used[i - 1]
        const after = used[i + 1]
        if (before === undefined || after === undefined) return false
        const high = Math.max(before, after)
        const low = Math.min(before, after)
        return value > high + 8 * readingAmount || value < low - 8 * readingAmount
      }),
  },
  {
    code: 'rate-changes',
    text: 'The rate of one part of the log is more than half as much again as that of another, by more than the readings scatter: the mean stands for neither.',
    isFound: ({ parts }) => {
      const sorted = parts.toSorted((a, b) => a.rate - b.rate)
      const [low, high] = [sorted[0] as (typeof parts)[number], sorted.at(-1) as (typeof parts)[number]]
      const apart = 4 * Math.hypot(low.uncertainty, high.uncertainty)
      return high.rate > 1.5 * Math.max(low.rate, 0) && high.rate - low.rate > apart
    },
  },
  {
    code: 'temperature-dominates',
    text: 'A quarter or more of the drop in pressure came from cooling: the rate rests on the stated temperatures and time constant.',
    isFound: ({ pressures, temperatures }) => {
      const change = 1 - (temperatures.at(-1) as number) / (temperatures[0] as number)
      return Math.abs(change) * (pressures[0] as number) > 0.25 * drop(pressures)
    },
  },
  {
    code: 'near-ambient',
    text: 'The cylinder was emptied to less than 5 bar over the greatest pressure around the diver: a stage may have given less than was asked.',
    isFound: ({ trace, pressures }) =>
      Math.min(...pressures) < Math.max(...trace.profile.map(({ ambientPressure }) => ambientPressure)) + 5e5,
  },
]

/** What this log does not carry. */
export function traceFindings(fitted: FittedTrace): readonly TraceFinding[] {
  return checks.filter(({ isFound }) => isFound(fitted)).map(({ code, text }) => ({ code, text }))
}

function steps(values: readonly number[]): number[] {
  return values.slice(1).map((value, i) => value - (values[i] as number))
}

function drop(values: readonly number[]): number {
  return (values[0] as number) - (values.at(-1) as number)
}
