import { requireKeys, requireList } from '../../errors/index.ts'
import { leastSquares } from '../../uncertainty/least-squares.ts'
import { requireFields } from '../../units/accepted.ts'
import { type Accepted, type Angle, degree, requireWithin } from '../../units/index.ts'
import { finite } from '../accepted.ts'
import { wrapped } from './tilt.ts'

/** One heading of a swing. */
export interface SwingPoint {
  /** Shown by the compass. */
  readonly compassHeading: Angle
  /** Magnetic minus compass heading: east is positive. */
  readonly deviation: Angle
}

/** The five coefficients of deviation, by their letters. */
export interface DeviationCoefficients {
  /** Constant. */
  readonly a: Angle
  /** Of the sine of the heading. */
  readonly b: Angle
  /** Of its cosine. */
  readonly c: Angle
  /** Of the sine of twice the heading. */
  readonly d: Angle
  /** Of its cosine. */
  readonly e: Angle
}

/** Deviation fitted from a swing. */
export interface Deviation {
  readonly coefficients: DeviationCoefficients
  readonly standardUncertainties: DeviationCoefficients
  /** Covariance of the coefficients in the order a to e, rad². */
  readonly covariance: readonly (readonly number[])[]
  /** Standard deviation of the swing about the fit. */
  readonly scatter: Angle
  readonly degreesOfFreedom: number
}

const headingRange: Accepted = { atLeast: -360, atMost: 360, unit: degree, hint: 'Give a heading, 0 to 360°.' }
const deviationRange: Accepted = { atLeast: -90, atMost: 90, unit: degree, hint: 'East is positive.' }
const declinationRange: Accepted = {
  atLeast: -180,
  atMost: 180,
  unit: degree,
  hint: 'Take it from a chart, east positive.',
}

/**
 * Deviation of a compass beside steel, by the five coefficients that are fitted to a swing: A + B sin ζ + C cos ζ + D sin 2ζ + E cos 2ζ, with
 * ζ the heading by the compass. Least squares over all headings, where the handbook estimates from single ones.
 * It holds for the place and for the steel as it was: a cylinder turned round is a new swing.
 *
 * @param swing - six headings or more, spread over the circle
 * @returns coefficients with uncertainties, covariance and scatter
 * @throws LitrebarError `input` for fewer than six or headings that do not spread; `range`, naming the heading
 * @source nga-compass-adjustment, section 501
 * @example
 * const swing = [10.5, 20, 11.5, -1.2, -5.5, -8, -12.5, -6.8].map((deviation, i) => ({
 *   compassHeading: measure(45 * i, degree),
 *   deviation: measure(deviation, degree),
 * }))
 * const { coefficients } = compassDeviation(swing)
 * inUnit(coefficients.b, degree).toFixed(1) // => '11.9'
 */
export function compassDeviation(swing: readonly SwingPoint[]): Deviation {
  requireList('swing', swing, 6, 'Five coefficients need five headings, and one more to tell how well they fit.')
  swing.forEach((point: SwingPoint, i) => {
    requireKeys(`swing[${i}]`, point, { compassHeading: true, deviation: true })
    requireWithin(`swing[${i}].compassHeading`, point.compassHeading, headingRange)
    requireWithin(`swing[${i}].deviation`, point.deviation, deviationRange)
  })
  const fit = leastSquares(
    swing.map(({ compassHeading }: SwingPoint) => termsAt(compassHeading)),
    swing.map(({ deviation }: SwingPoint) => deviation),
    'swing',
  )
  const covariance = fit.inverse.map((row) => row.map((entry) => entry * fit.scatter * fit.scatter))
  return {
    coefficients: lettered(fit.coefficients),
    standardUncertainties: lettered(covariance.map((row, i) => Math.sqrt(row[i] ?? 0))),
    covariance,
    scatter: fit.scatter as Angle,
    degreesOfFreedom: fit.degreesOfFreedom,
  }
}

const coefficientRanges = {
  a: deviationRange,
  b: deviationRange,
  c: deviationRange,
  d: deviationRange,
  e: deviationRange,
}

/** Deviation on one heading. */
export interface DeviationAt {
  readonly deviation: Angle
  /** Of the fitted curve there. */
  readonly standardUncertainty: Angle
}

/**
 * Deviation on a heading by the compass, from the fitted coefficients.
 *
 * @param fitted - from `compassDeviation`
 * @param compassHeading - shown by the compass
 * @returns deviation, rad, east positive, with the standard uncertainty of the curve
 * @throws LitrebarError `range`
 * @source nga-compass-adjustment, section 501; gum-2008, 5.2.2
 * @example
 * const swing = [1, 3, 1, -1, -3, -1].map((deviation, i) => ({ compassHeading: measure(60 * i, degree), deviation: measure(deviation, degree) }))
 * inUnit(deviationAt(compassDeviation(swing), measure(60, degree)).deviation, degree).toFixed(1) // => '2.7'
 */
export function deviationAt(fitted: Deviation, compassHeading: Angle): DeviationAt {
  requireWithin('compassHeading', compassHeading, headingRange)
  requireKeys('fitted', fitted, {
    coefficients: true,
    standardUncertainties: false,
    covariance: true,
    scatter: false,
    degreesOfFreedom: false,
  })
  requireFields('fitted.coefficients', fitted.coefficients, coefficientRanges)
  requireCovariance(fitted.covariance)
  const terms = termsAt(compassHeading)
  const { a, b, c, d, e } = fitted.coefficients
  const deviation = [a, b, c, d, e].reduce((sum: number, each, i) => sum + each * (terms[i] ?? 0), 0)
  const variance = fitted.covariance.reduce(
    (sum, row, i) => sum + row.reduce((part, entry, j) => part + entry * (terms[i] ?? 0) * (terms[j] ?? 0), 0),
    0,
  )
  return { deviation: deviation as Angle, standardUncertainty: Math.sqrt(Math.max(0, variance)) as Angle }
}

/**
 * True heading from that of a compass: deviation and declination added, both east positive.
 *
 * @param reading - compass heading; deviation, 0 unless given; declination of the place
 * @returns true heading, rad, from 0 to 2π
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source nga-compass-adjustment, section 501
 * @example
 * const reading = { compassHeading: measure(358, degree), declination: measure(4, degree) }
 * inUnit(trueHeading(reading), degree).toFixed(0) // => '2'
 */
export function trueHeading(reading: {
  readonly compassHeading: Angle
  readonly deviation?: Angle
  readonly declination: Angle
}): Angle {
  requireKeys('reading', reading, { compassHeading: true, deviation: false, declination: true })
  const { compassHeading, deviation = 0 as Angle, declination } = reading
  requireWithin('reading.compassHeading', compassHeading, headingRange)
  requireWithin('reading.deviation', deviation, deviationRange)
  requireWithin('reading.declination', declination, declinationRange)
  const heading = wrapped(compassHeading + deviation + declination)
  return (heading < 0 ? heading + 2 * Math.PI : heading) as Angle
}

function requireCovariance(covariance: Deviation['covariance']): void {
  requireList('fitted.covariance', covariance, 0, 'Pass what compassDeviation gave.')
  covariance.forEach((row, i) => {
    requireList(`fitted.covariance[${i}]`, row, 0, 'Pass what compassDeviation gave.')
    row.forEach((entry, j) => {
      requireWithin(`fitted.covariance[${i}][${j}]`, entry, finite)
    })
  })
}

function termsAt(heading: number): readonly number[] {
  return [1, Math.sin(heading), Math.cos(heading), Math.sin(2 * heading), Math.cos(2 * heading)]
}

function lettered(values: readonly number[]): DeviationCoefficients {
  const [a, b, c, d, e] = values as readonly Angle[]
  return { a, b, c, d, e } as DeviationCoefficients
}
