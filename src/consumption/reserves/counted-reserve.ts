import { requireKeys } from '../../errors/index.ts'
import type { GasContents } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  celsius,
  type GaugePressure,
  type PressureDifference,
  type PressureVolume,
  requireWithin,
} from '../../units/index.ts'
import { type Residual, requireResidual, residualAt } from '../gas/residual.ts'
import { amountIn, type CylinderGas, type GasOptions } from '../gas/vessel-gas.ts'
import { pressureHolding } from '../gas/vessel-pressure.ts'
import { shortened } from '../use/drawdown.ts'
import { lowestOf } from '../use/first-crossing.ts'
import { type Ascent, type AscentLeg, amountOfLeg, ascentLegs, legsOf, requireAscent } from './ascent-gas.ts'

/** The cylinder that has to bring everybody up, and how it is read. */
export interface ReserveCylinder extends CylinderGas {
  /**
   * Pressure below which the regulator no longer delivers: absolute, at least the surface pressure, or `{ aboveAmbient }`, what the
   * stage needs above the pressure around the diver. It holds at every moment of the ascent, and at depth no pressure below ambient does.
   */
  readonly residualPressure: Residual
  /** Maximum permissible error of the gauge: `maximumPermissibleError` gives it from its class. */
  readonly maximumPermissibleError: PressureDifference
}

/** A part of the reserve, on top of the parts below it: together they are the pressure shown. */
export interface ReservePart {
  readonly cause: AscentLeg['cause'] | 'residual' | 'gauge error' | 'rounding'
  readonly pressureVolume?: PressureVolume
  /** On the gauge: the residual counts from the gauge's zero at the surface pressure. */
  readonly pressure: PressureDifference
}

/** Gas for an ascent, counted and not yet rounded. */
export interface CountedReserve {
  /** Gas for the ascent, without the residual. */
  readonly amount: Amount
  readonly pressureVolume: PressureVolume
  /** Absolute pressure in the cylinder when the ascent has to begin, unrounded. */
  readonly pressure: AbsolutePressure
  /** What the gauge must show at least, its error added, against the surface pressure. Unrounded. */
  readonly gaugePressure: GaugePressure
  readonly parts: readonly ReservePart[]
}

const gasRange: Accepted = { atLeast: -50, atMost: 100, unit: celsius, hint: 'Give the temperature of the gas.' }
const errorRange: Accepted = { atLeast: 0, atMost: 100, unit: bar, hint: 'Give the maximum permissible error.' }

/** Refuses a cylinder that no reserve can be counted for. */
export function requireReserveCylinder(cylinder: ReserveCylinder, ascent: Ascent): void {
  requireAscent(ascent)
  requireKeys('cylinder', cylinder, {
    internalVolume: true,
    temperature: true,
    mixture: true,
    residualPressure: true,
    maximumPermissibleError: true,
  })
  requireWithin('maximumPermissibleError', cylinder.maximumPermissibleError, errorRange)
  requireResidual('residualPressure', cylinder.residualPressure, ascent.water.surfacePressure)
  requireWithin('temperature', cylinder.temperature, gasRange)
}

/** The moment of an ascent that asks most of the cylinder: by the legs before it and the residual pressure then. */
interface Hardest {
  /** Amount breathed on each leg until the moment, mol; nothing on the legs after it. */
  readonly breathed: readonly number[]
  readonly residual: AbsolutePressure
}

/** Pressure at which an ascent has to begin, unchecked. */
export function pressureToBegin(ascent: Ascent, cylinder: ReserveCylinder, options: GasOptions): AbsolutePressure {
  const legs = legsOf(ascent)
  const amounts = legs.map((leg) => amountOfLeg(ascent, leg, options, cylinder.mixture, cylinder.temperature))
  const { breathed, residual } = hardestMoment(ascent, legs, amounts, cylinder, options)
  const contents = contentsAt(cylinder, residual)
  let amount = amountIn(contents, options)
  for (const part of breathed) amount += part
  return pressureHolding(amount, contents, options)
}

/** Gas for an ascent with its parts, from the residual upwards. */
export function countedReserve(ascent: Ascent, cylinder: ReserveCylinder, options: GasOptions): CountedReserve {
  const { maximumPermissibleError } = cylinder
  const surface = ascent.water.surfacePressure
  const legs = ascentLegs(ascent)
  const amounts = legs.map((leg) => amountOfLeg(ascent, leg, options, cylinder.mixture, cylinder.temperature))
  const { breathed, residual } = hardestMoment(ascent, legs, amounts, cylinder, options)
  const contents = contentsAt(cylinder, residual)
  const parts: ReservePart[] = [{ cause: 'residual', pressure: (residual - surface) as PressureDifference }]
  let amount = amountIn(contents, options)
  let pressure = residual
  // What is needed last lies lowest in the cylinder.
  for (let i = legs.length - 1; i >= 0; i--) {
    const { cause, pressureVolume } = legs[i] as AscentLeg
    const part = breathed[i] as number
    amount += part
    const next = part === 0 ? pressure : pressureHolding(amount, contents, options)
    parts.push({ cause, pressureVolume, pressure: (next - pressure) as PressureDifference })
    pressure = next
  }
  parts.push({ cause: 'gauge error', pressure: maximumPermissibleError })
  return {
    amount: sumOf(amounts) as Amount,
    pressureVolume: sumOf(legs.map((leg) => leg.pressureVolume)) as PressureVolume,
    pressure,
    gaugePressure: (pressure - surface + maximumPermissibleError) as GaugePressure,
    parts,
  }
}

/**
 * The moment that asks most: what has been breathed until then, and the residual pressure then, together. It is the end of the ascent
 * for a residual that no depth exceeds; for one that follows the depth it may be any moment of a fast ascent.
 */
function hardestMoment(
  ascent: Ascent,
  legs: readonly AscentLeg[],
  amounts: readonly number[],
  cylinder: ReserveCylinder,
  options: GasOptions,
): Hardest {
  const { residualPressure } = cylinder
  const end = (legs.at(-1) as AscentLeg).to
  const atEnd = { breathed: amounts, residual: residualAt(residualPressure, end) }
  if (typeof residualPressure === 'number' && residualPressure >= (legs[0] as AscentLeg).from) return atEnd
  const residualThen = (ambient: number): AbsolutePressure =>
    Math.max(residualAt(residualPressure, ambient), ambient) as AbsolutePressure
  const kept = (ambient: number): number => amountIn(contentsAt(cylinder, residualThen(ambient)), options)
  let most = kept(end) + sumOf(amounts)
  let hardest: Hardest = atEnd
  let before = 0
  legs.forEach((leg, i) => {
    const { from, to, duration } = leg
    const ambientAt = (s: number): number => (duration > 0 ? from + ((to - from) * s) / duration : from)
    const breathedBy = (s: number): number =>
      duration > 0
        ? amountOfLeg(ascent, shortened<AscentLeg>(leg, s), options, cylinder.mixture, cylinder.temperature)
        : 0
    const asked = (s: number): number => before + breathedBy(s) + kept(ambientAt(s))
    const moments = [0]
    // where the stated residual takes over from the pressure around the diver, what is asked has a corner: each side is looked at alone
    const corner =
      typeof residualPressure === 'number' && residualPressure < from && residualPressure > to
        ? (duration * (from - residualPressure)) / (from - to)
        : duration
    for (const [start, until] of [
      [0, corner],
      [corner, duration],
    ] as const) {
      if (!(until > start)) continue
      moments.push(start, start + lowestOf((s) => -asked(start + s), until - start, -asked(start), -asked(until)))
    }
    for (const s of moments) {
      if (!(asked(s) > most)) continue
      most = asked(s)
      const partial = amounts.map((amount, k) => (k < i ? amount : k === i ? breathedBy(s) : 0))
      hardest = { breathed: partial, residual: residualThen(ambientAt(s)) }
    }
    before += amounts[i] as number
  })
  return hardest
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, each) => sum + each, 0)
}

function contentsAt(cylinder: CylinderGas, pressure: AbsolutePressure): GasContents {
  const { internalVolume, temperature, mixture } = cylinder
  return { internalVolume, temperature, mixture, pressure }
}
