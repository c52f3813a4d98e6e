import { requireKeys } from '../../errors/index.ts'
import {
  amountOfGas,
  freeGasOfAmount,
  type GasModel,
  type Mixture,
  molarDensityBy,
  type ReferenceCondition,
} from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  type Duration,
  type FreeGas,
  type GaugePressure,
  type InternalVolume,
  litrePerMinute,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import { instrumentTemperature } from '../accepted.ts'
import { cylinderPressureBehind } from './case-pressure.ts'
import { type GaugeError, gaugeError, type PressureGauge } from './gauge-error.ts'

/** A cylinder that is read with one gauge, and who breathes from it. */
export interface ReadCylinder<Name extends string> {
  readonly gauge: PressureGauge
  readonly reading: GaugePressure
  /** Around the tube of the gauge: what was sealed in its case, or the water, absolute. */
  readonly casePressure: AbsolutePressure
  /** Of the element of the gauge. */
  readonly gaugeTemperature: Temperature
  readonly internalVolume: InternalVolume
  readonly mixture: Mixture
  readonly gasTemperature: Temperature
  /** Absolute pressure below which nothing is counted: a reserve, or what the regulator no longer delivers from. */
  readonly residualPressure: AbsolutePressure
  /** Condition that the free gas is stated at. */
  readonly reference: ReferenceCondition<Name>
  readonly respiratoryMinuteVolume: VolumeFlow
  /** Around the diver, absolute. */
  readonly ambientPressure: AbsolutePressure
}

/** Gas above the residual pressure, by one pressure that the cylinder may have. */
export interface GasAtPressure<Name extends string> {
  readonly pressure: AbsolutePressure
  readonly freeGas: FreeGas<Name>
  readonly duration: Duration
}

/** What one reading of a gauge supports. */
export interface CertainGas<Name extends string> {
  /** With the largest error against the diver: what may be counted on, as far as the gauge keeps its class. */
  readonly certain: GasAtPressure<Name>
  /** Taken at its word. */
  readonly shown: GasAtPressure<Name>
  /** With the largest error the other way. */
  readonly most: GasAtPressure<Name>
  readonly error: GaugeError
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const residual: Accepted = { atLeast: 0, atMost: 700, unit: bar, hint: 'Give the absolute pressure that stays.' }
const rate: Accepted = { above: 0, atMost: 500, unit: litrePerMinute, hint: 'Give the respiratory minute volume.' }
const ambient: Accepted = {
  atLeast: 0.2,
  atMost: 100,
  unit: bar,
  hint: 'Give the absolute pressure around the diver.',
}

/**
 * What of a reading is certain: the least that the cylinder holds by the class of the gauge and the temperature of its element,
 * in pressure, in free gas and in time. At 50 bar a 400 bar gauge of class 1.6 in cold water leaves 41 of them.
 * Where the residual pressure itself is not certain, none is: the gas and the time are 0.
 *
 * @param cylinder - gauge and reading; pressure in its case, absolute; temperatures of element and gas; internal volume; mixture;
 *   residual pressure, absolute, 0 to 700 bar; reference condition; rate, above 0 and at most 500 L/min; ambient pressure, absolute, 0.2 to 100 bar
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns the certain, the shown and the largest contents above the residual pressure, with the error behind them
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source en-837-1, accuracy classes and the allowance for temperature; gerg-2008, density
 * @example
 * const { certain } = certainGas({
 *   gauge: { span: difference(400, bar), accuracyClass: 0.016 },
 *   reading: gauge(50, bar),
 *   casePressure: absolute(1, bar),
 *   gaugeTemperature: temperatureOf(4, celsius),
 *   internalVolume: internalVolumeOf(12, litre),
 *   mixture: dryAir,
 *   gasTemperature: temperatureOf(4, celsius),
 *   residualPressure: absolute(10, bar),
 *   reference: isoStandard,
 *   respiratoryMinuteVolume: measure(20, litrePerMinute),
 *   ambientPressure: absolute(3, bar),
 * })
 * inUnit(certain.duration, minute).toFixed(1) // => '6.5'
 */
export function certainGas<Name extends string>(
  cylinder: ReadCylinder<Name>,
  options: { readonly gas?: GasModel } = {},
): CertainGas<Name> {
  requireKeys('cylinder', cylinder, {
    gauge: true,
    reading: true,
    casePressure: true,
    gaugeTemperature: true,
    internalVolume: true,
    mixture: true,
    gasTemperature: true,
    residualPressure: true,
    reference: true,
    respiratoryMinuteVolume: true,
    ambientPressure: true,
  })
  requireKeys('options', options, { gas: false })
  const { gauge, reading, casePressure, mixture, residualPressure, gasTemperature, ambientPressure } = cylinder
  requireWithin('cylinder.residualPressure', residualPressure, residual)
  requireWithin('cylinder.respiratoryMinuteVolume', cylinder.respiratoryMinuteVolume, rate)
  requireWithin('cylinder.ambientPressure', ambientPressure, ambient)
  requireWithin('cylinder.gasTemperature', gasTemperature, instrumentTemperature)
  requireWithin('cylinder.gaugeTemperature', cylinder.gaugeTemperature, instrumentTemperature)
  const error = gaugeError(gauge, cylinder.gaugeTemperature)
  const shown = cylinderPressureBehind({ reading, casePressure })
  const gas = options.gas ?? 'real'
  const breathed = molarDensityBy(gas, mixture, ambientPressure, gasTemperature) * cylinder.respiratoryMinuteVolume
  const amountAt = (pressure: number): number =>
    pressure > 0
      ? amountOfGas(
          {
            internalVolume: cylinder.internalVolume,
            pressure: pressure as AbsolutePressure,
            temperature: gasTemperature,
            mixture,
          },
          { gas },
        )
      : 0
  const left = amountAt(residualPressure)
  const at = (pressure: number): GasAtPressure<Name> => {
    const amount = Math.max(amountAt(pressure) - left, 0) as Amount
    return {
      pressure: Math.max(pressure, 0) as AbsolutePressure,
      freeGas: freeGasOfAmount(amount, { gas, mixture, reference: cylinder.reference }),
      duration: (amount / breathed) as Duration,
    }
  }
  return {
    certain: at(shown - error.largestError),
    shown: at(shown),
    most: at(shown + error.largestError),
    error,
    cautions: ['instrument', 'reserve'],
    sources: ['en-837-1'],
  }
}
