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
  readonly offset: number
  /** Standard uncertainty of a reading as an amount. */
  readonly readingAmount: number
  readonly slopes: readonly number[]
}

interface Check {
  readonly code: TraceFinding['code']
  readonly text: string
  readonly isFound: (fitted: FittedTrace) => boolean
}

// The multiples are choices of ours: rare by chance on a sound log, small against what they would do to the rate.
const checks: readonly Check[] = [
  {
    code: 'small-drop',
    text: 'The pressure falls by less than twenty times the uncertainty of a reading: the readings alone leave several per cent of the rate open.',
    isFound: ({ trace, pressures }) => drop(pressures) < 20 * trace.uncertainty.reading,
  },
  {
    code: 'pressure-rises',
    text: 'The pressure rises by more than the readings scatter: gas came in, the cylinder warmed, or another one was logged.',
    isFound: ({ trace, pressures }) => steps(pressures).some((step) => step > 6 * trace.uncertainty.reading),
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
    text: 'The rate of one part of the log is more than half as much again as that of another: the mean stands for neither.',
    isFound: ({ slopes }) => Math.max(...slopes) > 1.5 * Math.max(Math.min(...slopes), 0),
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
