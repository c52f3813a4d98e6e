import { LitrebarError, requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Fraction,
  millivolt,
  requireWithin,
  type Voltage,
} from '../../units/index.ts'

/** Output of a galvanic cell at a known partial pressure of oxygen. */
export interface CellPoint {
  readonly partialPressure: AbsolutePressure
  readonly voltage: Voltage
}

/**
 * A calibration. With one point the line goes through zero, as a cell without oxygen gives nearly no voltage; two points put the line
 * through both, and hide what is wrong with a cell as long as nobody looks at `cellLinearity`.
 */
export type CellCalibration = readonly [CellPoint] | readonly [CellPoint, CellPoint]

const voltage: Accepted = {
  above: 0,
  atMost: 1000,
  unit: millivolt,
  hint: 'Give the output of the cell, in millivolts.',
}
const output: Accepted = { ...voltage, above: -5, hint: 'Give the output of the cell, in millivolts.' }
const partial: Accepted = { above: 0, atMost: 10, unit: bar, hint: 'Give the partial pressure of oxygen, absolute.' }

/**
 * Partial pressure of oxygen behind the output of a cell. It is what the calibration makes of the voltage: a cell that is limited in current
 * shows too little, and no calibration tells.
 *
 * @param calibration - one point, or two at different partial pressures
 * @param shown - output of the cell, V
 * @returns partial pressure, Pa; below 0 where the output lies below the zero of the line
 * @throws LitrebarError `range`, naming the point; `input` for points that make no line, or an unknown key
 * @source litrebar-derivation, linear cell
 * @example
 * const calibration = [{ partialPressure: absolute(0.21, bar), voltage: measure(10, millivolt) }] as const
 * inUnit(oxygenShown(calibration, measure(16, millivolt)), bar).toFixed(3) // => '0.336'
 */
export function oxygenShown(calibration: CellCalibration, shown: Voltage): AbsolutePressure {
  const { zero, slope } = lineOf(calibration)
  requireWithin('shown', shown, output)
  return ((shown - zero) / slope) as AbsolutePressure
}

/**
 * Output that a sound cell gives at a partial pressure.
 *
 * @param calibration - one point, or two at different partial pressures
 * @param partialPressure - of oxygen, absolute, Pa, above 0 and at most 10 bar
 * @returns output, V
 * @throws LitrebarError `range`; `input` for points that make no line
 * @source litrebar-derivation, linear cell
 * @example
 * const calibration = [{ partialPressure: absolute(0.21, bar), voltage: measure(10, millivolt) }] as const
 * inUnit(expectedOutput(calibration, absolute(1.6, bar)), millivolt).toFixed(1) // => '76.2'
 */
export function expectedOutput(calibration: CellCalibration, partialPressure: AbsolutePressure): Voltage {
  const { zero, slope } = lineOf(calibration)
  requireWithin('partialPressure', partialPressure, partial)
  return (zero + slope * partialPressure) as Voltage
}

/**
 * Linearity of a cell: its output at a higher partial pressure over what the lower one foretells. Below 1 the cell falls behind.
 *
 * @param low - point in air
 * @param high - point at a higher partial pressure: oxygen at the surface or under pressure
 * @returns fraction; 0.95 is five per cent short
 * @throws LitrebarError `range`; `input` unless the second lies above the first
 * @source litrebar-derivation, linear cell
 * @example
 * const low = { partialPressure: absolute(0.2095, bar), voltage: measure(10, millivolt) }
 * const high = { partialPressure: absolute(1, bar), voltage: measure(43, millivolt) }
 * cellLinearity(low, high).toFixed(3) // => '0.901'
 */
export function cellLinearity(low: CellPoint, high: CellPoint): Fraction {
  requirePoint('low', low)
  requirePoint('high', high)
  if (!(high.partialPressure > low.partialPressure)) throw noLine('high.partialPressure', 'one above that of the other')
  return (high.voltage / expectedOutput([low], high.partialPressure)) as Fraction
}

/**
 * What a cell that is limited in current shows: its output stops rising at the limit, and so does the partial pressure that is shown.
 * The error is always to the low side, where it is dangerous.
 *
 * @param calibration - one point, or two at different partial pressures
 * @param at - true partial pressure, Pa; highest output that the cell can give, V
 * @returns output, V, and partial pressure shown, Pa
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, current-limited cell
 * @example
 * const calibration = [{ partialPressure: absolute(1, bar), voltage: measure(50, millivolt) }] as const
 * const { shown } = limitedCell(calibration, { partialPressure: absolute(1.6, bar), limit: measure(70, millivolt) })
 * inUnit(shown, bar).toFixed(2) // => '1.40'
 */
export function limitedCell(
  calibration: CellCalibration,
  at: { readonly partialPressure: AbsolutePressure; readonly limit: Voltage },
): { readonly voltage: Voltage; readonly shown: AbsolutePressure } {
  requireKeys('at', at, { partialPressure: true, limit: true })
  requireWithin('at.limit', at.limit, voltage)
  const given = Math.min(expectedOutput(calibration, at.partialPressure), at.limit) as Voltage
  return { voltage: given, shown: oxygenShown(calibration, given) }
}

interface Line {
  readonly zero: number
  readonly slope: number
}

function lineOf(calibration: CellCalibration): Line {
  if (!Array.isArray(calibration) || ![1, 2].includes((calibration as readonly CellPoint[]).length))
    throw noLine('calibration', 'one point or two')
  calibration.forEach((point: CellPoint, i) => {
    requirePoint(`calibration[${i}]`, point)
  })
  const [first, second] = calibration as unknown as readonly [CellPoint, CellPoint?]
  if (second === undefined) return { zero: 0, slope: first.voltage / first.partialPressure }
  const slope = (second.voltage - first.voltage) / (second.partialPressure - first.partialPressure)
  if (!(slope > 0 && slope < Infinity)) throw noLine('calibration', 'two points of which the richer gives more voltage')
  return { zero: first.voltage - slope * first.partialPressure, slope }
}

function requirePoint(argument: string, point: CellPoint): void {
  requireKeys(argument, point, { partialPressure: true, voltage: true })
  requireWithin(`${argument}.partialPressure`, point.partialPressure, partial)
  requireWithin(`${argument}.voltage`, point.voltage, voltage)
}

function noLine(argument: string, expected: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value: 'points that make no line',
    expected,
    hint: 'Measure in air, and in oxygen.',
  })
}
