import { requireKeys } from '../../errors/index.ts'
import {
  type ConcentrationReference,
  type DewPoint,
  dewPoint,
  dryAir,
  gasState,
  moistureConcentration,
  temperatureAtEnthalpy,
} from '../../gas-law/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import {
  type AbsolutePressure,
  type Accepted,
  celsius,
  type Density,
  type MoleFraction,
  one,
  partPerMillion,
  pascal,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { pressure as pressureRange, requireSome, temperature as temperatureRange } from '../accepted.ts'
import { enhancementDoubt } from './saturation.ts'

/** Dew or frost point at a pressure, with the span that the enhancement factor leaves open. */
export interface DewPointAt extends DewPoint {
  readonly pressure: AbsolutePressure
  /** Two standard uncertainties of the enhancement factor to either side. */
  readonly between: readonly [Temperature, Temperature]
}

/** Moisture of delivered air, in the ways that it is stated. */
export interface DeliveredMoisture {
  /** Mass of water per volume of free gas at the reference. */
  readonly concentration: Density
  readonly concentrationUncertainty: Density
  /** At each pressure asked for. */
  readonly dewPoints: readonly DewPointAt[]
}

const fractionRange: Accepted = {
  above: 0,
  atMost: 1e5,
  unit: partPerMillion,
  hint: 'Give the mole fraction of water: fractionOf(67, partPerMillion).',
}
const doubtRange: Accepted = {
  atLeast: 0,
  atMost: 1,
  unit: one,
  hint: 'Give a relative standard uncertainty: 5 per cent is 0.05.',
}

/**
 * Moisture of delivered air: mass per volume of free gas, and dew or frost point at each pressure that it is brought to. The water
 * stays the same: what is dry at the surface may be saturated in the cylinder.
 *
 * @param air - mole fraction of water, above 0, and its relative standard uncertainty, from `separatedWater`
 * @param options - state of the cubic metre, required; pressures, absolute, Pa, up to 350 bar
 * @returns concentration, kg/m³, and dew points, K, with what the enhancement factor leaves open
 * @throws LitrebarError `range` or `outside-validity`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const air = { waterFraction: fractionOf(46.73, partPerMillion), relativeUncertainty: 0 }
 * const moisture = deliveredMoisture(air, { reference: roomCondition, pressures: [absolute(300, bar), absolute(1, atmosphere)] })
 * inUnit(moisture.concentration, milligramPerCubicMetre).toFixed(1) // => '35.0'
 * moisture.dewPoints.map(({ temperature }) => inUnit(temperature, celsius).toFixed(0)) // => ['-4', '-49']
 */
export function deliveredMoisture(
  air: { readonly waterFraction: MoleFraction; readonly relativeUncertainty: number },
  options: { readonly reference: ConcentrationReference; readonly pressures: readonly AbsolutePressure[] },
): DeliveredMoisture {
  requireKeys('air', air, { waterFraction: true, relativeUncertainty: true })
  requireKeys('options', options, { reference: true, pressures: true })
  requireWithin('air.waterFraction', air.waterFraction, fractionRange)
  requireWithin('air.relativeUncertainty', air.relativeUncertainty, doubtRange)
  requireSome('options.pressures', options.pressures, 'List the pressures at which the dew point counts.')
  const concentration = moistureConcentration(air.waterFraction, options.reference)
  return {
    concentration,
    concentrationUncertainty: (concentration * air.relativeUncertainty) as Density,
    dewPoints: options.pressures.map((pressure, k) => {
      requireWithin(`options.pressures[${k}]`, pressure, pressureRange)
      return dewPointWithin(air.waterFraction, pressure, air.relativeUncertainty)
    }),
  }
}

function dewPointWithin(waterFraction: MoleFraction, pressure: AbsolutePressure, relative: number): DewPointAt {
  const doubt = 2 * (relative + enhancementDoubt(pressure))
  const at = (factor: number): DewPoint =>
    dewPoint({ waterFraction: (waterFraction * factor) as MoleFraction, pressure })
  return { ...at(1), pressure, between: [at(1 / (1 + doubt)).temperature, at(1 + doubt).temperature] }
}

/** Air from a cylinder that a regulator expands. */
export interface ExpandedAir {
  readonly waterFraction: MoleFraction
  readonly relativeUncertainty: number
  readonly supply: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  /** Pressure after the expansion: the intermediate pressure, absolute. */
  readonly to: AbsolutePressure
  /** Coldest surface that the expanded gas touches, where it is known. */
  readonly surfaceTemperature?: Temperature
}

/**
 * Whether frost can form where a regulator expands air: frost point of the expanded air against the temperature that throttling gives it,
 * or that of the coldest surface. Gas that is dry enough by a breathing rule still falls below its frost point where it is throttled
 * from a full cylinder in cold water.
 *
 * It looks at water from the gas alone. Water around the regulator freezes by rules of its own, and a real jet is colder than throttling.
 *
 * @param air - mole fraction of water and its relative standard uncertainty; supply, absolute Pa, up to 350 bar, K; pressure after, Pa;
 *   coldest surface, K
 * @returns the coldest temperature, K, against the frost point; `within` where it stays above also with the uncertainty
 * @throws LitrebarError `range` or `outside-validity`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, throttling by gerg-2008 and dew point with `enhancementFactor`
 * @example
 * const air = {
 *   waterFraction: fractionOf(47, partPerMillion),
 *   relativeUncertainty: 0.05,
 *   supply: { pressure: absolute(233, bar), temperature: temperatureOf(4, celsius) },
 *   to: absolute(10, bar),
 * }
 * const { verdict, value, limit } = assessFrost(air)
 * const shown = `${inUnit(value, celsius).toFixed(0)} °C, frost point ${inUnit(limit!, celsius).toFixed(0)} °C: ${verdict}` // => '-38 °C, frost point -28 °C: beyond'
 */
export function assessFrost(air: ExpandedAir): Assessment<Temperature> {
  requireKeys('air', air, {
    waterFraction: true,
    relativeUncertainty: true,
    supply: true,
    to: true,
    surfaceTemperature: false,
  })
  requireKeys('air.supply', air.supply, { pressure: true, temperature: true })
  requireWithin('air.waterFraction', air.waterFraction, fractionRange)
  requireWithin('air.relativeUncertainty', air.relativeUncertainty, doubtRange)
  requireWithin('air.supply.pressure', air.supply.pressure, pressureRange)
  requireWithin('air.supply.temperature', air.supply.temperature, temperatureRange)
  requireWithin('air.to', air.to, pressureRange)
  requireWithin('air.to', air.to, { atMost: air.supply.pressure, unit: pascal, hint: 'A regulator expands the gas.' })
  if (air.surfaceTemperature !== undefined)
    requireWithin('air.surfaceTemperature', air.surfaceTemperature, temperatureRange)
  const { molarEnthalpy } = gasState(dryAir, air.supply)
  const throttled = temperatureAtEnthalpy(dryAir, { molarEnthalpy, pressure: air.to })
  const coldest = Math.min(throttled, air.surfaceTemperature ?? throttled) as Temperature
  const frost = dewPointWithin(air.waterFraction, air.to, air.relativeUncertainty)
  const shown = (t: number): string => `${(t - (celsius.offset as number)).toFixed(1)} °C`
  const [low, high] = frost.between
  const text = `Coldest ${shown(coldest)}, ${frost.over === 'ice' ? 'frost' : 'dew'} point of the expanded air ${shown(low)} to ${shown(high)}.`
  const against: Reason[] = coldest < low ? [{ code: 'below-frost-point', text }] : []
  const isOpen = coldest >= low && coldest < high
  const doubts: Reason[] = isOpen ? [{ code: 'within-uncertainty-of-frost-point', text }] : []
  if (air.surfaceTemperature === undefined) {
    doubts.push({
      code: 'surface-not-stated',
      text: 'The coldest surface was not stated: a valve seat in a fast flow is colder than throttled gas.',
    })
  }
  return {
    value: coldest,
    limit: frost.temperature,
    margin: coldest - frost.temperature,
    marginUncertainty: (high - low) / 4,
    ...verdictFrom({
      against,
      doubts,
      notes: against.length + doubts.length > 0 ? [] : [{ code: 'above-frost-point', text }],
    }),
    cautions: ['regulator-cold', 'breathing-air'],
    sources: ['gerg-2008', 'litrebar-derivation'],
  }
}
