import { requireKeys, requireWord } from '../errors/index.ts'
import type { PressureDifference } from '../units/index.ts'
import {
  type Accepted,
  type Dimension,
  one,
  percent,
  type Quantity,
  requireWithin,
  type TemperatureDifference,
} from '../units/index.ts'
import { anyValue, spread } from './accepted.ts'
import { requireDegreesOfFreedom } from './quantile.ts'

/** How the possible values of a quantity lie about the stated one. */
export type DistributionShape = 'normal' | 'student' | 'rectangular' | 'triangular' | 'arcsine'

/** What the spread of a quantity is: of a pressure or temperature a difference, of an amount an amount of its dimension. */
export type Spread<Q extends number> =
  Q extends Quantity<infer D extends Dimension, string>
    ? D extends 'pressure'
      ? PressureDifference
      : D extends 'temperature'
        ? TemperatureDifference
        : Quantity<D, string>
    : number

/** A plain number stays a number, not the literal that was typed. */
export type Stated<Q extends number> = Q extends Quantity ? Q : Q extends Quantity<Dimension, string> ? Q : number

/** A quantity that is known with an uncertainty. Plain data: it survives JSON but for infinite degrees of freedom, which become `null`. */
export interface Distribution<Q extends number = number> {
  readonly shape: DistributionShape
  /** The stated value: mean of the distribution. */
  readonly value: Q
  /** Standard deviation of the distribution; for `student`, the standard uncertainty that has the degrees of freedom. */
  readonly standardUncertainty: Spread<Q>
  /** How well the standard uncertainty itself is known; `Infinity` when it is stated, not observed. */
  readonly degreesOfFreedom: number
}

const classPercent: Accepted = {
  above: 0,
  atMost: 100,
  unit: percent,
  hint: 'A class of 1.6 is 1.6 per cent of the span.',
}

/**
 * Normal distribution: a value with a standard uncertainty, as a certificate states it.
 *
 * @param value - the stated value
 * @param standardUncertainty - one standard deviation; half of an expanded uncertainty that was stated with k = 2
 * @param degreesOfFreedom - if the certificate states them; then the distribution is Student's t of that width
 * @returns the distribution
 * @throws LitrebarError `range` if a value is not finite or the uncertainty is negative
 * @source gum-2008, 4.3.3 and gum-s1-2008, 6.4
 * @example
 * normalDistribution(12, 0.06).standardUncertainty // => 0.06
 */
export function normalDistribution<Q extends number>(
  value: Q,
  standardUncertainty: Spread<Stated<Q>>,
  degreesOfFreedom = Infinity,
): Distribution<Stated<Q>> {
  requireDegreesOfFreedom('degreesOfFreedom', degreesOfFreedom)
  const shape = degreesOfFreedom === Infinity ? 'normal' : 'student'
  return distribution(shape, value, standardUncertainty, degreesOfFreedom)
}

/**
 * Rectangular distribution: every value within ± half a width is as likely as any other, none lies beyond.
 * What a tolerance without further knowledge means.
 *
 * @param value - the middle
 * @param halfWidth - from the middle to either end
 * @returns the distribution, standard uncertainty half width over √3
 * @throws LitrebarError `range`
 * @source gum-2008, 4.3.7
 * @example
 * rectangular(200, 3).standardUncertainty.toFixed(4) // => '1.7321'
 */
export function rectangular<Q extends number>(value: Q, halfWidth: Spread<Stated<Q>>): Distribution<Stated<Q>> {
  return bounded('rectangular', value, halfWidth, Math.sqrt(3))
}

/**
 * Triangular distribution: values near the middle are likelier, none lies beyond ± half a width.
 *
 * @param value - the middle
 * @param halfWidth - from the middle to either end
 * @returns the distribution, standard uncertainty half width over √6
 * @throws LitrebarError `range`
 * @source gum-2008, 4.3.9
 */
export function triangular<Q extends number>(value: Q, halfWidth: Spread<Stated<Q>>): Distribution<Stated<Q>> {
  return bounded('triangular', value, halfWidth, Math.sqrt(6))
}

/**
 * Arcsine distribution: a quantity that swings as a sine between two ends, read at an unknown moment
 * (room temperature under a thermostat).
 *
 * @param value - the middle
 * @param halfWidth - amplitude of the swing
 * @returns the distribution, standard uncertainty amplitude over √2
 * @throws LitrebarError `range`
 * @source gum-s1-2008, 6.4.6
 */
export function arcsine<Q extends number>(value: Q, halfWidth: Spread<Stated<Q>>): Distribution<Stated<Q>> {
  return bounded('arcsine', value, halfWidth, Math.SQRT2)
}

/**
 * The distribution of a reading that is shown in steps: rectangular within half a step.
 *
 * @param reading - as shown
 * @param step - the last digit of a display, one bit of a converter, the finest mark that is read
 * @returns the distribution, standard uncertainty step over √12
 * @throws LitrebarError `range`
 * @source gum-2008, F.2.2.1
 * @example
 * fromResolution(30.4, 0.1).standardUncertainty.toFixed(4) // => '0.0289'
 */
export function fromResolution<Q extends number>(reading: Q, step: Spread<Stated<Q>>): Distribution<Stated<Q>> {
  requireWithin('reading', reading, anyValue)
  requireWithin('step', step, spread)
  return rectangular(reading, (step / 2) as Spread<Stated<Q>>)
}

/** What the dial of a gauge says about its error. */
export interface GaugeClass<Q extends number> {
  /** Upper end of the scale, counted from its zero. */
  readonly span: Spread<Stated<Q>>
  /** The class on the dial: largest error as a fraction of the span. 1.6 per cent is 0.016. */
  readonly accuracyClass: number
}

/**
 * The largest error that the class of a gauge allows, anywhere on its scale. Small beside a full reading, large beside a low one.
 *
 * @param gaugeClass - span of the scale, and class as a fraction of it, above 0 and at most 1
 * @returns the error, in the unit of the span
 * @throws LitrebarError `range`
 * @source en-837-1, accuracy classes (memory of the clause)
 * @example
 * inUnit(maximumPermissibleError({ span: difference(400, bar), accuracyClass: 0.016 }), bar) // => 6.4
 */
export function maximumPermissibleError<S extends number>(gaugeClass: {
  readonly span: S
  readonly accuracyClass: number
}): S {
  requireKeys('gaugeClass', gaugeClass, { span: true, accuracyClass: true, element: false })
  requireWithin('gaugeClass.span', gaugeClass.span, spread)
  requireWithin('gaugeClass.accuracyClass', gaugeClass.accuracyClass, classPercent)
  return (gaugeClass.accuracyClass * gaugeClass.span) as S
}

/**
 * The distribution of a gauge reading by the class on its dial: rectangular within the largest error.
 *
 * @param reading - what the gauge shows
 * @param gaugeClass - span and class of the gauge
 * @returns the distribution, standard uncertainty largest error over √3
 * @throws LitrebarError `range`
 * @source en-837-1, accuracy classes (memory of the clause); gum-2008, 4.3.7
 * @example
 * const reading = fromGaugeClass(gauge(50, bar), { span: difference(400, bar), accuracyClass: 0.016 })
 * inUnit(reading.standardUncertainty, bar).toFixed(3) // => '3.695'
 */
export function fromGaugeClass<Q extends number>(reading: Q, gaugeClass: GaugeClass<Q>): Distribution<Stated<Q>> {
  requireWithin('reading', reading, anyValue)
  requireKeys('gaugeClass', gaugeClass, { span: true, accuracyClass: true, element: false })
  return rectangular(reading, maximumPermissibleError(gaugeClass))
}

/**
 * The step of a reading that a converter turns into a whole number.
 *
 * @param range - what the converter spans
 * @param bits - of the converter, a whole number from 1 to 64
 * @returns one step
 * @throws LitrebarError `range`
 * @source common-practice
 * @example
 * quantizationStep(difference(30, bar), 12) // => 732.421875
 */
export function quantizationStep<S extends number>(range: S, bits: number): S {
  requireWithin('range', range, spread)
  requireWithin('bits', bits, { atLeast: 1, atMost: 64, unit: one, hint: 'Count the bits of the converter.' })
  return (range / 2 ** bits) as S
}

function bounded<Q extends number>(
  shape: DistributionShape,
  value: Q,
  halfWidth: number,
  divisor: number,
): Distribution<Stated<Q>> {
  requireWithin('halfWidth', halfWidth, spread)
  return distribution(shape, value, halfWidth / divisor, Infinity)
}

function distribution<Q extends number>(
  shape: DistributionShape,
  value: Q,
  standardUncertainty: number,
  degreesOfFreedom: number,
): Distribution<Stated<Q>> {
  requireWithin('value', value, anyValue)
  requireWithin('standardUncertainty', standardUncertainty, spread)
  return { shape, value, standardUncertainty, degreesOfFreedom } as unknown as Distribution<Stated<Q>>
}

/**
 * Refuses what is not a distribution, for input that the compiler has not seen.
 *
 * @param argument - the parameter with its path
 * @param candidate - what is said to be a distribution
 * @throws LitrebarError `input` for an unknown shape, `range` for a value
 */
export function requireDistribution(argument: string, candidate: Distribution): void {
  requireKeys(argument, candidate, { shape: true, value: true, standardUncertainty: true, degreesOfFreedom: true })
  requireWord(`${argument}.shape`, candidate.shape, shapes)
  requireWithin(`${argument}.value`, candidate.value, anyValue)
  requireWithin(`${argument}.standardUncertainty`, candidate.standardUncertainty, spread)
  requireDegreesOfFreedom(`${argument}.degreesOfFreedom`, candidate.degreesOfFreedom)
}

const shapes: readonly DistributionShape[] = ['normal', 'student', 'rectangular', 'triangular', 'arcsine']
