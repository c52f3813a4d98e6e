import type { CautionId, SourceId } from '../../references/index.ts'
import { type AbsolutePressure, type PressureDifference, type Rounded, round } from '../../units/index.ts'
import { type GasOptions, requireGasOptions } from '../gas/vessel-gas.ts'
import type { Ascent } from './ascent-gas.ts'
import {
  type CountedReserve,
  countedReserve,
  pressureToBegin,
  type ReserveCylinder,
  requireReserveCylinder,
} from './counted-reserve.ts'
import { type ReserveUncertainties, type ReserveUncertainty, reserveUncertainty } from './reserve-uncertainty.ts'
import { type PressureStep, requireShow } from './usable-gas.ts'

/** Gas that is kept back for an ascent. */
export interface Reserve extends CountedReserve {
  /** The gauge pressure, rounded up to the step asked for: this is the figure to show. The parts add up to it. */
  readonly shown: Rounded
  /** Of the gauge pressure, where the inputs stated theirs. */
  readonly uncertainty?: ReserveUncertainty
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/**
 * Gas kept back for an ascent that several may have to make on one cylinder.
 * It counts gas for the ascent that the caller states, stop included, and plans none: no decompression is worked out.
 *
 * @param ascent - depth, water, who breathes how much, stress factor, time before the ascent, rate of ascent, stop
 * @param cylinder - internal volume, mixture, temperature (of the gas inside and as it is breathed); pressure below which the regulator
 *   no longer delivers: absolute, Pa, at least the surface pressure, or `{ aboveAmbient }`; maximum permissible error of the gauge
 * @param options - `show`: unit and step in which the pressure is shown, always rounded up; `standardUncertainties` of the inputs;
 *   `gas: 'ideal'` to leave out compressibility
 * @returns gas, pressure, what the gauge must show, its parts by cause, and its uncertainty
 * @throws LitrebarError `range` or `input`, naming the field
 * @source common-practice (form); gerg-2008, density
 * @example
 * const ascent = {
 *   depth: depthOf(30, metre),
 *   water: { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) },
 *   breathers: [measure(20, litrePerMinute), measure(20, litrePerMinute)],
 *   stressFactor: 1.5,
 *   timeAtDepth: measure(2, minute),
 *   ascentRate: measure(9, metrePerMinute),
 *   stop: { depth: depthOf(5, metre), duration: measure(3, minute) },
 * }
 * const cylinder = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   temperature: temperatureOf(8, celsius),
 *   mixture: dryAir,
 *   residualPressure: absolute(20, bar),
 *   maximumPermissibleError: difference(5, bar),
 * }
 * const reserve = ascentReserve(ascent, cylinder, {
 *   show: { unit: bar, step: 5 },
 *   standardUncertainties: { breathers: 0.1, timeAtDepth: 30 },
 * })
 * reserve.shown.text // => '130'
 * inUnit(reserve.uncertainty?.standardUncertainty ?? difference(0, bar), bar).toFixed(0) // => '15'
 */
export function ascentReserve(
  ascent: Ascent,
  cylinder: ReserveCylinder,
  options: GasOptions & { readonly show: PressureStep; readonly standardUncertainties?: ReserveUncertainties },
): Reserve {
  requireGasOptions(options, { show: true, standardUncertainties: false })
  const { show, standardUncertainties } = options
  requireShow(show)
  requireReserveCylinder(cylinder, ascent)
  const counted = countedReserve(ascent, cylinder, options)
  const shown = round(counted.gaugePressure, { ...show, toward: 'caution', use: 'reserve' })
  const rounding = (shown.value * show.unit.factor - counted.gaugePressure) as PressureDifference
  return {
    ...counted,
    parts: [...counted.parts, { cause: 'rounding', pressure: rounding }],
    shown,
    ...(standardUncertainties === undefined
      ? {}
      : { uncertainty: reserveUncertainty(ascent, cylinder, standardUncertainties, options) }),
    cautions: ['reserve', 'no-decompression-planning', 'always'],
    sources: ['common-practice', 'gerg-2008'],
  }
}

/**
 * Pressure at which an ascent has to begin, and nothing else: the number behind `ascentReserve`, for sampling and for loops.
 * Give a compiled mixture for a million of them in a second.
 *
 * @param ascent - as for `ascentReserve`
 * @param cylinder - as for `ascentReserve`; the error of the gauge is not counted here
 * @param options - `compiled`: a mixture compiled over all pressures, ambient ones too; `gas: 'ideal'` to leave out compressibility
 * @returns absolute pressure, Pa, unrounded
 * @throws LitrebarError as `ascentReserve`
 * @source common-practice (form); gerg-2008, density
 */
export function reservePressure(ascent: Ascent, cylinder: ReserveCylinder, options: GasOptions = {}): AbsolutePressure {
  requireGasOptions(options)
  requireReserveCylinder(cylinder, ascent)
  return pressureToBegin(ascent, cylinder, options)
}
