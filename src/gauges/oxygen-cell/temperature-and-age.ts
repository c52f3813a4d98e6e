import { LitrebarError, requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Duration,
  type Fraction,
  hour,
  kelvin,
  percent,
  requireWithin,
  type TemperatureDifference,
} from '../../units/index.ts'

/** How a galvanic cell without compensation answers to temperature, as published: per cent per kelvin, from and to. */
export const cellTemperatureCoefficient = {
  percentPerKelvin: [2, 3],
  source: 'common-practice',
  place: 'articles on galvanic oxygen sensors',
} as const

const coefficientRange: Accepted = {
  atLeast: -20,
  atMost: 20,
  unit: percent,
  hint: 'Give 2.5 per cent per kelvin as 0.025.',
}
const lagRange: Accepted = {
  atLeast: -60,
  atMost: 60,
  unit: kelvin,
  hint: 'Give how much warmer the cell is than its thermistor.',
}
const rated: Accepted = { above: 0, atMost: 1e6, unit: hour, hint: 'Give the rated life.' }
const exposure: Accepted = { atLeast: 0, atMost: 1e6, unit: hour, hint: 'Give how long the cell was in that gas.' }
const partial: Accepted = { above: 0, atMost: 10, unit: bar, hint: 'Give the partial pressure of oxygen, absolute.' }

/**
 * By what a reading is multiplied when the thermistor that compensates a cell lags behind it: after a warm cell is put into cold gas, the
 * thermistor is colder than the membrane, and the reading stays high until both agree.
 *
 * @param lag - by how much the cell is warmer than its thermistor, K, of either sign
 * @param coefficientPerKelvin - of the cell without compensation, a fraction per kelvin: 0.02 to 0.03 are published
 * @returns factor on the reading
 * @throws LitrebarError `range`
 * @source litrebar-derivation; coefficient: common-practice
 * @example
 * thermistorLagFactor(difference(10, kelvin), 0.025).toFixed(3) // => '1.284'
 */
export function thermistorLagFactor(lag: TemperatureDifference, coefficientPerKelvin: number): Fraction {
  requireWithin('lag', lag, lagRange)
  requireWithin('coefficientPerKelvin', coefficientPerKelvin, coefficientRange)
  return Math.exp(coefficientPerKelvin * lag) as Fraction
}

/** Time that a cell spent in oxygen of one partial pressure. */
export interface CellExposure {
  readonly partialPressure: AbsolutePressure
  readonly duration: Duration
}

/** What is left of the life of a cell. */
export interface CellLife {
  /** Of its rated dose; above 1 it is past it. */
  readonly used: Fraction
  /** At the partial pressure asked for; 0 where the rated dose is used up. */
  readonly left: Duration
}

/**
 * Life of a galvanic cell by its dose of oxygen: partial pressure times time, storage in air included. A rating of 500 000 per cent hours
 * is 5000 hours at 1 bar. Dry-out and leakage end many cells earlier, so the calendar of the maker holds beside it.
 *
 * @param rating - rated life at a partial pressure
 * @param exposures - what the cell has had
 * @param at - partial pressure that the time left is asked for, absolute, Pa
 * @returns share of the rated dose used, and time left, s
 * @throws LitrebarError `range`, naming the exposure; `input` for an unknown key
 * @source memory (form of the rating)
 * @example
 * const rating = { partialPressure: absolute(1, bar), duration: measure(5000, hour) }
 * const stored = { partialPressure: absolute(0.21, bar), duration: measure(365, day) }
 * cellLife(rating, [stored], absolute(1.3, bar)).used.toFixed(2) // => '0.37'
 */
export function cellLife(rating: CellExposure, exposures: readonly CellExposure[], at: AbsolutePressure): CellLife {
  requireKeys('rating', rating, { partialPressure: true, duration: true })
  requireWithin('rating.partialPressure', rating.partialPressure, partial)
  requireWithin('rating.duration', rating.duration, rated)
  requireWithin('at', at, partial)
  if (!Array.isArray(exposures)) {
    throw new LitrebarError({
      code: 'input',
      argument: 'exposures',
      value: 'no list',
      expected: 'a list, empty for a new cell',
      hint: 'Give what the cell has had.',
    })
  }
  const whole = rating.partialPressure * rating.duration
  const dose = (exposures as readonly CellExposure[]).reduce((sum: number, each, i) => {
    requireKeys(`exposures[${i}]`, each, { partialPressure: true, duration: true })
    requireWithin(`exposures[${i}].partialPressure`, each.partialPressure, partial)
    requireWithin(`exposures[${i}].duration`, each.duration, exposure)
    return sum + each.partialPressure * each.duration
  }, 0)
  return { used: (dose / whole) as Fraction, left: (Math.max(0, whole - dose) / at) as Duration }
}
