import { requireKeys, requireWord } from '../../errors/index.ts'
import { maximumPermissibleError } from '../../uncertainty/index.ts'
import { celsius, type PressureDifference, requireWithin, type Temperature, temperatureOf } from '../../units/index.ts'
import { accuracyClass, instrumentTemperature, span } from '../accepted.ts'
import { type GaugeElementId, gaugeElements } from './gauge-kind.table.ts'

/** A mechanical pressure gauge, by what its dial says. */
export interface PressureGauge {
  /** Scale from end to end: a scale from -1 to 5 bar spans 6. */
  readonly span: PressureDifference
  /** The class on the dial, a fraction of the span: 1.6 is 0.016. */
  readonly accuracyClass: number
  /** A Bourdon tube unless given. */
  readonly element?: GaugeElementId
}

/** What may be wrong with a reading. */
export interface GaugeError {
  /** What the class allows at 20 °C. */
  readonly classError: PressureDifference
  /** What the temperature of the element adds. */
  readonly temperatureError: PressureDifference
  /** Both at once: no reading within class and temperature allowance is off by more. */
  readonly largestError: PressureDifference
  /** Both taken as rectangular and independent. */
  readonly standardUncertainty: PressureDifference
}

/**
 * Error of a gauge reading by its class and the temperature of its element. The same everywhere on the scale: small beside a full
 * cylinder, large beside a low one. It counts a gauge that still keeps its class: a knock or a leak shows in a test only.
 *
 * @param gauge - span, above 0; class, a fraction of the span; element, a Bourdon tube unless given
 * @param temperature - of the element, K, -40 to 80 °C
 * @returns class error, temperature error, their sum, and the standard uncertainty, Pa
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key or element
 * @source en-837-1, accuracy classes and the allowance for temperature; gum-2008, 4.3.7
 * @example
 * const dial = { span: difference(400, bar), accuracyClass: 0.016 }
 * inUnit(gaugeError(dial, temperatureOf(4, celsius)).largestError, bar).toFixed(2) // => '8.96'
 */
export function gaugeError(gauge: PressureGauge, temperature: Temperature): GaugeError {
  requireGauge('gauge', gauge)
  requireWithin('temperature', temperature, instrumentTemperature)
  const { percentOfSpanPerKelvin } = gaugeElements[gauge.element ?? 'bourdon']
  const classError = maximumPermissibleError(gauge)
  const away = Math.abs(temperature - temperatureOf(20, celsius))
  const temperatureError = ((percentOfSpanPerKelvin / 100) * gauge.span * away) as PressureDifference
  return {
    classError,
    temperatureError,
    largestError: (classError + temperatureError) as PressureDifference,
    standardUncertainty: (Math.hypot(classError, temperatureError) / Math.sqrt(3)) as PressureDifference,
  }
}

/** Refuses what is not a gauge. */
export function requireGauge(argument: string, gauge: PressureGauge): void {
  requireKeys(argument, gauge, { span: true, accuracyClass: true, element: false })
  requireWithin(`${argument}.span`, gauge.span, span)
  requireWithin(`${argument}.accuracyClass`, gauge.accuracyClass, accuracyClass)
  if (gauge.element !== undefined)
    requireWord(`${argument}.element`, gauge.element, Object.keys(gaugeElements) as GaugeElementId[])
}
