import { isLitrebarError, requireKeys, requireRows, rowCodes } from '../../errors/index.ts'
import type { GasModelOption } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Duration,
  type PlainNumber,
  requireWithin,
  type Speed,
  type VolumeFlow,
} from '../../units/index.ts'
import { amountIn, requireGasOptions } from '../gas/vessel-gas.ts'
import { pressureHolding } from '../gas/vessel-pressure.ts'
import { breathingRate, densityTime } from '../use/breathed-dive.ts'
import { type Ascent, type AscentLeg, ascentLegs, ascentRanges } from './ascent-gas.ts'
import { pressureToBegin, type ReserveCylinder, requireReserveCylinder } from './counted-reserve.ts'
import { idealPressure, isothermOf } from './isotherm.ts'

/** What differs from one sample of an ascent to the next. What is left out is as in the ascent. */
export interface ReserveSample {
  /** Of all who breathe from the gas, together, at ease. */
  readonly respiratoryMinuteVolume?: VolumeFlow
  readonly stressFactor?: number
  readonly timeAtDepth?: Duration
  readonly ascentRate?: Speed
  readonly stopDuration?: Duration
}

/** Pressure at which a sampled ascent has to begin, absolute, Pa. */
export type CompiledReserve = (sample: ReserveSample) => AbsolutePressure

/** The same of plain numbers, in the order of the fields of a sample; unchecked. */
type Kernel = (rate: number, stress: number, wait: number, speed: number, stop: number) => number

/**
 * The pressure at which an ascent has to begin as a function of what is uncertain in it, with everything that stays the same worked out
 * once: for a million samples in half a second. Depth, water, stop depth and cylinder stay. A sample that is out of range is refused.
 *
 * Where the residual pressure is above that at depth all the way, a sample costs a few multiplications; one that follows the depth, or
 * lies below the pressure there, is searched for its hardest moment each time, which takes some microseconds.
 *
 * @param ascent - as for `ascentReserve`
 * @param cylinder - as for `ascentReserve`; the error of the gauge is not counted here
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns the function: absolute pressure, Pa, unrounded; of the equation of state within 1e-9
 * @throws LitrebarError as `ascentReserve`; the function `range` for a sample out of range, `input` for an unknown field
 * @source common-practice (form); gerg-2008, density; litrebar-derivation, series of the isotherm
 * @example
 * const reserve = compileReserve(
 *   {
 *     depth: depthOf(30, metre),
 *     water: { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) },
 *     breathers: [measure(20, litrePerMinute), measure(20, litrePerMinute)],
 *     stressFactor: 1.5,
 *     timeAtDepth: measure(2, minute),
 *     ascentRate: measure(9, metrePerMinute),
 *   },
 *   {
 *     internalVolume: internalVolumeOf(12, litre),
 *     temperature: temperatureOf(8, celsius),
 *     mixture: dryAir,
 *     residualPressure: absolute(20, bar),
 *     maximumPermissibleError: difference(5, bar),
 *   },
 * )
 * const inputs = {
 *   respiratoryMinuteVolume: normalDistribution(measure(40, litrePerMinute), measure(4, litrePerMinute)),
 *   timeAtDepth: rectangular(measure(2, minute), measure(1, minute)),
 * }
 * const sampled = propagateBySampling(reserve, inputs, { trials: 1e4, seed: 1 })
 * const high = coverageInterval(sampled, 0.95).high / bar.factor
 * high.toFixed(0) // => '129'
 */
export function compileReserve(
  ascent: Ascent,
  cylinder: ReserveCylinder,
  options: GasModelOption = {},
): CompiledReserve {
  requireGasOptions(options)
  const kernel = kernelOf(ascent, cylinder, options)
  const usual = usualOf(ascent)
  return (sample) => {
    for (const key in sample) if (!(key in usual)) requireKeys('sample', sample, fields)
    const {
      respiratoryMinuteVolume: rate = usual.respiratoryMinuteVolume,
      stressFactor: stress = usual.stressFactor,
      timeAtDepth: wait = usual.timeAtDepth,
      ascentRate: speed = usual.ascentRate,
      stopDuration: stop = usual.stopDuration,
    } = sample
    if (!areWithin(rate, stress, wait, speed, stop)) requireSample(rate, stress, wait, speed, stop)
    return kernel(rate, stress, wait, speed, stop) as AbsolutePressure
  }
}

/**
 * The pressure at which an ascent has to begin, row by row: what differs comes in columns, the rest is as stated.
 *
 * @param out - `pressurePascal` receives absolute pressures; `code` 0 for a good row, else one of `rowCodes`, and the pressure NaN
 * @param columns - rate of all who breathe, together, at ease, m³/s; stress factor; time at depth, s; accepted as by `ascentReserve`
 * @param options - `ascent` and `cylinder` as for `ascentReserve`, for what is no column; `gas: 'ideal'` to leave out compressibility
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError as `compileReserve`; `input` for columns that are too short or rows that there are not
 * @source common-practice (form); gerg-2008, density; litrebar-derivation, series of the isotherm
 */
export function reservePressureInto(
  out: { readonly pressurePascal: Float64Array; readonly code: Uint8Array },
  columns: {
    readonly respiratoryMinuteVolumeCubicMetrePerSecond: Float64Array
    readonly stressFactor: Float64Array
    readonly timeAtDepthSecond: Float64Array
  },
  options: GasModelOption & { readonly ascent: Ascent; readonly cylinder: ReserveCylinder },
  from: PlainNumber = 0,
  to?: PlainNumber,
): void {
  const end = requireRows([columns, columnNames], [out, ['pressurePascal', 'code']], from, to)
  requireGasOptions(options, { ascent: true, cylinder: true })
  const { ascent, cylinder, gas } = options
  const kernel = kernelOf(ascent, cylinder, gas === undefined ? {} : { gas })
  const { ascentRate, stopDuration } = usualOf(ascent)
  const {
    respiratoryMinuteVolumeCubicMetrePerSecond: rates,
    stressFactor: stresses,
    timeAtDepthSecond: waits,
  } = columns
  for (let row = from; row < end; row++) {
    const [rate, stress, wait] = [rates[row] as number, stresses[row] as number, waits[row] as number]
    let code: number = rowCodes.good
    let pressure = Number.NaN
    if (areWithin(rate, stress, wait, ascentRate, stopDuration)) {
      try {
        pressure = kernel(rate, stress, wait, ascentRate, stopDuration)
      } catch (thrown) {
        if (!isLitrebarError(thrown)) throw thrown
        code = rowCodes.outsideValidity
      }
    } else code = Number.isNaN(rate + stress + wait) ? rowCodes.missing : rowCodes.outOfRange
    out.pressurePascal[row] = pressure
    out.code[row] = code
  }
}

type Usual = Required<ReserveSample>

function usualOf({ breathers, stressFactor, timeAtDepth, ascentRate, stop }: Ascent): Usual {
  return {
    respiratoryMinuteVolume: breathers.reduce<number>((sum, each) => sum + each, 0) as VolumeFlow,
    stressFactor,
    timeAtDepth,
    ascentRate,
    stopDuration: stop?.duration ?? (0 as Duration),
  }
}

const columnNames = ['respiratoryMinuteVolumeCubicMetrePerSecond', 'stressFactor', 'timeAtDepthSecond'] as const

const fields = {
  respiratoryMinuteVolume: false,
  stressFactor: false,
  timeAtDepth: false,
  ascentRate: false,
  stopDuration: false,
} as const

const allTogether = {
  ...breathingRate,
  hint: 'Give the litres that all breathe each minute, together.',
} satisfies Accepted

// One look at each number: the rows of the ranges are read only to say what is wrong.
function areWithin(rate: number, stress: number, wait: number, speed: number, stop: number): boolean {
  const { stressFactor, timeAtDepth, ascentRate, stopDuration } = ascentRanges
  return (
    // null and true would count as numbers
    typeof rate === 'number' &&
    typeof stress === 'number' &&
    typeof wait === 'number' &&
    typeof speed === 'number' &&
    typeof stop === 'number' &&
    rate > 0 &&
    rate <= allTogether.atMost * allTogether.unit.factor &&
    stress >= stressFactor.atLeast &&
    stress <= stressFactor.atMost &&
    wait >= 0 &&
    wait <= timeAtDepth.atMost * timeAtDepth.unit.factor &&
    speed > 0 &&
    speed <= ascentRate.atMost * ascentRate.unit.factor &&
    stop >= 0 &&
    stop <= stopDuration.atMost * stopDuration.unit.factor
  )
}

function requireSample(rate: number, stress: number, wait: number, speed: number, stop: number): void {
  requireWithin('sample.respiratoryMinuteVolume', rate, allTogether)
  requireWithin('sample.stressFactor', stress, ascentRanges.stressFactor)
  requireWithin('sample.timeAtDepth', wait, ascentRanges.timeAtDepth)
  requireWithin('sample.ascentRate', speed, ascentRanges.ascentRate)
  requireWithin('sample.stopDuration', stop, ascentRanges.stopDuration)
}

function kernelOf(ascent: Ascent, cylinder: ReserveCylinder, options: GasModelOption): Kernel {
  const legs = ascentLegs(ascent)
  requireReserveCylinder(cylinder, ascent)
  const { residualPressure } = cylinder
  const isEndHardest = typeof residualPressure === 'number' && residualPressure >= (legs[0] as AscentLeg).from
  return isEndHardest
    ? straightKernel(ascent, legs, { ...cylinder, residualPressure }, options)
    : searchingKernel(ascent, cylinder, options)
}

/** The end of the ascent asks most, whatever the sample: amounts are sums of products. */
function straightKernel(
  { depth, stop }: Ascent,
  legs: readonly AscentLeg[],
  cylinder: ReserveCylinder & { readonly residualPressure: AbsolutePressure },
  options: GasModelOption,
): Kernel {
  const { mixture, temperature, internalVolume, residualPressure } = cylinder
  // refuses what is no cylinder, too
  const kept = amountIn({ internalVolume, temperature, mixture, pressure: residualPressure }, options) / internalVolume
  /** Mean density as breathed on a leg, mol/m³. */
  const densityOn = (cause: AscentLeg['cause']): number => {
    const leg = legs.find((each) => each.cause === cause)
    return leg === undefined ? 0 : densityTime(options, mixture, { ...leg, duration: 1 }, temperature)
  }
  const atDepth = densityOn('time at depth')
  const atStop = densityOn('stop')
  // amount for each cubic metre breathed on the way up, times the way
  const stopDepth = stop?.depth ?? 0
  const onWay = (depth - stopDepth) * densityOn('ascent to the stop') + stopDepth * densityOn('ascent to the surface')
  const up = stop === undefined ? depth * densityOn('ascent to the surface') : onWay
  const pressure = pressureOfDensity(cylinder, options)
  return (rate, stress, wait, speed, stopDuration) =>
    pressure(kept + (rate * stress * (atDepth * wait + up / speed + atStop * stopDuration)) / internalVolume)
}

function pressureOfDensity(
  cylinder: ReserveCylinder & { readonly residualPressure: AbsolutePressure },
  { gas }: GasModelOption,
): (density: number) => number {
  const { mixture, temperature, internalVolume, residualPressure } = cylinder
  if (gas === 'ideal') return (density) => idealPressure(density, temperature)
  const contents = { internalVolume, mixture, temperature, pressure: residualPressure }
  const exact = (density: number): number => pressureHolding(density * internalVolume, contents, {})
  const isotherm = usableIsotherm(cylinder)
  if (isotherm === undefined) return exact
  const { lowest, highest, pressure } = isotherm
  return (density) => (density >= lowest && density <= highest ? pressure(density) : exact(density))
}

const isothermError = 1e-9

/** The isotherm of the cylinder, where there is one that is close enough: not above 400 bar, and not of a mixture near condensing. */
function usableIsotherm(cylinder: ReserveCylinder & { readonly residualPressure: AbsolutePressure }) {
  const { mixture, temperature, residualPressure } = cylinder
  try {
    const isotherm = isothermOf(mixture, temperature, residualPressure)
    return isotherm.largestError <= isothermError && isotherm.highest > isotherm.lowest ? isotherm : undefined
  } catch (thrown) {
    if (!isLitrebarError(thrown)) throw thrown
    return undefined
  }
}

/** The hardest moment differs from sample to sample. */
function searchingKernel(ascent: Ascent, cylinder: ReserveCylinder, options: GasModelOption): Kernel {
  const { stop } = ascent
  pressureToBegin(ascent, cylinder, options) // refuses what is no cylinder
  return (rate, stress, wait, speed, stopDuration) =>
    pressureToBegin(
      {
        ...ascent,
        breathers: [rate as VolumeFlow],
        stressFactor: stress,
        timeAtDepth: wait as Duration,
        ascentRate: speed as Speed,
        ...(stop && { stop: { depth: stop.depth, duration: stopDuration as Duration } }),
      },
      cylinder,
      options,
    )
}
