import { LitrebarError, requireKeys, requireList, requireWord } from '../../errors/index.ts'
import { leastSquares } from '../../uncertainty/least-squares.ts'
import { requireFields } from '../../units/accepted.ts'
import { one, requireWithin } from '../../units/index.ts'
import { finite, uncertainty } from '../accepted.ts'

/** One row of a calibration: what the instrument showed, and how much was to be added to it. */
export interface CalibrationPoint {
  readonly reading: number
  /** Reference minus reading. */
  readonly correction: number
}

/** A straight line through the corrections of an instrument. */
export interface CalibrationLine {
  /** Mean of the readings: intercept and slope are independent about it. */
  readonly meanReading: number
  /** Correction there. */
  readonly correction: number
  /** Change of the correction per unit of reading. */
  readonly slope: number
  readonly correctionUncertainty: number
  readonly slopeUncertainty: number
  /** Standard deviation of the points about the line: what no line can remove. */
  readonly scatter: number
  readonly degreesOfFreedom: number
  /** Lowest and highest reading of the calibration. */
  readonly from: number
  readonly to: number
}

const lineRanges = {
  meanReading: finite,
  correction: finite,
  slope: finite,
  correctionUncertainty: uncertainty,
  slopeUncertainty: uncertainty,
  scatter: uncertainty,
  degreesOfFreedom: { atLeast: 1, unit: one, hint: 'Pass the line as calibrationLine gave it.' },
  from: finite,
  to: finite,
}

/** A reading put right. */
export interface CorrectedReading {
  readonly value: number
  /** Of the line at this reading. */
  readonly lineUncertainty: number
  /** Of this single corrected reading: the line with the scatter about it. That of the reference is the caller's to add. */
  readonly standardUncertainty: number
  readonly degreesOfFreedom: number
}

/**
 * Straight line through the calibration of an instrument, by least squares: correction against reading, with what it does not tell.
 *
 * @param points - at least three, at two different readings or more, all in one unit
 * @returns the line about the mean reading, its uncertainties and its scatter
 * @throws LitrebarError `input` for fewer points or readings that do not differ; `range` for a value that is not finite
 * @source gum-2008, annex H.3
 * @example
 * const points = [0, 100, 200, 300].map((reading, i) => ({ reading, correction: [0.5, 1.1, 1.4, 2][i] ?? 0 }))
 * calibrationLine(points).slope.toFixed(4) // => '0.0048'
 */
export function calibrationLine(points: readonly CalibrationPoint[]): CalibrationLine {
  requireList('points', points, 3, 'Two points fit a line without telling how well: measure at more.')
  points.forEach((point: CalibrationPoint, i) => {
    requireKeys(`points[${i}]`, point, { reading: true, correction: true })
    requireWithin(`points[${i}].reading`, point.reading, finite)
    requireWithin(`points[${i}].correction`, point.correction, finite)
  })
  const readings = points.map(({ reading }: CalibrationPoint) => reading)
  const meanReading = readings.reduce((sum, reading) => sum + reading, 0) / readings.length
  const corrections = points.map(({ correction }: CalibrationPoint) => correction)
  const meanCorrection = corrections.reduce((sum, each) => sum + each, 0) / corrections.length
  const rows = readings.map((reading) => [1, reading - meanReading])
  // corrections about their mean: the scatter is not lost beside a large offset
  const fit = leastSquares(
    rows,
    corrections.map((each) => each - meanCorrection),
    'points',
  )
  const [offset = 0, slope = 0] = fit.coefficients
  return {
    meanReading,
    correction: meanCorrection + offset,
    slope,
    correctionUncertainty: fit.scatter * Math.sqrt(fit.inverse[0]?.[0] ?? 0),
    slopeUncertainty: fit.scatter * Math.sqrt(fit.inverse[1]?.[1] ?? 0),
    scatter: fit.scatter,
    degreesOfFreedom: fit.degreesOfFreedom,
    from: Math.min(...readings),
    to: Math.max(...readings),
  }
}

/**
 * A reading put right by the calibration of its instrument. Beyond the calibrated readings a line is a guess, and is refused unless asked for.
 *
 * @param line - from `calibrationLine`
 * @param reading - what the instrument shows, in the unit of the calibration
 * @param options - `beyondRange: true` to follow the line beyond the calibrated readings
 * @returns the corrected value with its standard uncertainty
 * @throws LitrebarError `outside-validity` beyond the calibrated readings; `range` for a reading that is not finite
 * @source gum-2008, annex H.3
 * @example
 * const line = calibrationLine([0, 100, 200, 300].map((reading, i) => ({ reading, correction: [0.5, 1.1, 1.4, 2][i] ?? 0 })))
 * correctedReading(line, 50).value.toFixed(2) // => '50.77'
 */
export function correctedReading(
  line: CalibrationLine,
  reading: number,
  options: { readonly beyondRange?: boolean } = {},
): CorrectedReading {
  requireKeys('options', options, { beyondRange: false })
  if (options.beyondRange !== undefined) requireWord('options.beyondRange', options.beyondRange, [true, false])
  requireFields('line', line, lineRanges)
  requireWithin('reading', reading, finite)
  if (options.beyondRange !== true && !(reading >= line.from && reading <= line.to)) {
    throw new LitrebarError({
      code: 'outside-validity',
      argument: 'reading',
      value: String(reading),
      expected: `a calibrated reading, ${String(line.from)} to ${String(line.to)}`,
      hint: 'Calibrate over the range that is used, or ask for it with beyondRange.',
    })
  }
  const away = reading - line.meanReading
  const lineUncertainty = Math.hypot(line.correctionUncertainty, away * line.slopeUncertainty)
  return {
    value: reading + line.correction + line.slope * away,
    lineUncertainty,
    standardUncertainty: Math.hypot(lineUncertainty, line.scatter),
    degreesOfFreedom: line.degreesOfFreedom,
  }
}
