import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { verdictFrom } from '../../references/assessment.ts'
import type { Assessment, Reason } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Fraction,
  type FreeGasFlow,
  litrePerMinute,
  one,
  requireWithin,
} from '../../units/index.ts'
import type { StatedOxygenLimits } from '../use/mixture-limits.ts'

/** Gas fed into a loop at a constant mass flow: the same amount each minute at every depth. */
export interface ConstantMassFlow {
  readonly flow: FreeGasFlow<'STPD'>
  /** Oxygen in the gas supplied. */
  readonly oxygen: Fraction
}

/** A semi-closed loop over a dive. */
export interface SemiClosedLoop {
  readonly supply: ConstantMassFlow
  /** Oxygen taken up at rest and at the hardest work. */
  readonly uptake: { readonly lowest: FreeGasFlow<'STPD'>; readonly highest: FreeGasFlow<'STPD'> }
  /** Around the diver, absolute, at the shallowest and at the deepest point at which the loop is breathed. */
  readonly ambientPressure: { readonly shallowest: AbsolutePressure; readonly deepest: AbsolutePressure }
}

const flowRange: Accepted = { above: 0, atMost: 100, unit: litrePerMinute, hint: 'Give the flow at STPD.' }
const uptakeRange: Accepted = {
  above: 0,
  atMost: 10,
  unit: litrePerMinute,
  hint: 'Give the oxygen taken up each minute, at STPD: 0.3 at rest, about 4 at the utmost.',
}
const oxygenRange: Accepted = { above: 0, atMost: 1, unit: one, hint: 'Give 40 per cent as 0.4.' }
const lowestRange: Accepted = { atLeast: 0, below: 1, unit: one, hint: 'Give 21 per cent as 0.21.' }
const ambient: Accepted = { atLeast: 0.2, atMost: 100, unit: bar, hint: 'Give the pressure around the diver.' }

/**
 * Steady oxygen fraction of a loop with constant mass flow: what is supplied less what is taken up, over all gas that leaves again.
 * It does not depend on depth. It falls with work, to nothing where the uptake meets the oxygen supplied; a loop that was not flushed, or
 * whose work has just changed, has not reached it yet.
 *
 * @param supply - flow at STPD, m³/s, above 0 and at most 100 L/min; its oxygen fraction
 * @param uptake - oxygen, STPD, m³/s, above 0 and at most 10 L/min
 * @returns oxygen fraction of the dry loop; show it with the cautions `breathing-loop` and `oxygen-limits`
 * @throws LitrebarError `range`, also where no more oxygen is supplied than is taken up
 * @source semi-closed-balance, equation
 * @example
 * const supply = { flow: freeGasFlowOf(7.3, litrePerMinute, stpd), oxygen: measure(0.5, one) }
 * semiClosedOxygen(supply, freeGasFlowOf(0.9, litrePerMinute, stpd)).toFixed(3) // => '0.430'
 */
export function semiClosedOxygen(supply: ConstantMassFlow, uptake: FreeGasFlow<'STPD'>): Fraction {
  requireSupply(supply)
  requireWithin('uptake', uptake, uptakeRange)
  const fraction = steadyFraction(supply, uptake)
  if (fraction > 0) return fraction
  throw new LitrebarError({
    code: 'range',
    argument: 'uptake',
    value: `${inLitres(uptake)} L/min`,
    expected: `less than the ${inLitres(supply.flow * supply.oxygen)} L/min of oxygen supplied`,
    hint: 'No oxygen would be left in the loop: supply more, or a richer gas.',
  })
}

/**
 * The hypoxic end of a loop with constant mass flow: the uptake at which its steady oxygen fraction has fallen to a stated one.
 *
 * @param supply - flow at STPD, m³/s; its oxygen fraction
 * @param fraction - the lowest oxygen fraction allowed, below that of the supply; none is chosen here
 * @returns uptake, STPD, m³/s
 * @throws LitrebarError `range`
 * @source litrebar-derivation, from `semiClosedOxygen`
 * @example
 * const supply = { flow: freeGasFlowOf(7.3, litrePerMinute, stpd), oxygen: measure(0.5, one) }
 * inUnit(semiClosedUptake(supply, measure(0.2, one)), litrePerMinute).toFixed(2) // => '2.74'
 */
export function semiClosedUptake(supply: ConstantMassFlow, fraction: Fraction): FreeGasFlow<'STPD'> {
  requireSupply(supply)
  requireWithin('fraction', fraction, { ...lowestRange, below: supply.oxygen })
  return ((supply.flow * (supply.oxygen - fraction)) / (1 - fraction)) as FreeGasFlow<'STPD'>
}

/**
 * Flow of a supply that keeps the steady oxygen fraction of a loop at a stated one.
 *
 * @param supply - oxygen fraction of the gas supplied
 * @param options - `uptake`, STPD, m³/s; `fraction` of oxygen in the loop, below that of the supply
 * @returns flow, STPD, m³/s
 * @throws LitrebarError `range`
 * @source litrebar-derivation, from `semiClosedOxygen`
 * @example
 * const uptake = freeGasFlowOf(2.74, litrePerMinute, stpd)
 * const flow = semiClosedFlow({ oxygen: measure(0.5, one) }, { uptake, fraction: measure(0.2, one) })
 * inUnit(flow, litrePerMinute).toFixed(1) // => '7.3'
 */
export function semiClosedFlow(
  supply: Pick<ConstantMassFlow, 'oxygen'>,
  options: { readonly uptake: FreeGasFlow<'STPD'>; readonly fraction: Fraction },
): FreeGasFlow<'STPD'> {
  requireKeys('supply', supply, { oxygen: true })
  requireKeys('options', options, { uptake: true, fraction: true })
  const { uptake, fraction } = options
  requireWithin('supply.oxygen', supply.oxygen, oxygenRange)
  requireWithin('options.uptake', uptake, uptakeRange)
  requireWithin('options.fraction', fraction, { ...lowestRange, below: supply.oxygen })
  return ((uptake * (1 - fraction)) / (supply.oxygen - fraction)) as FreeGasFlow<'STPD'>
}

/** Oxygen of a loop held against stated limits, with its swing. */
export interface SemiClosedAssessment extends Assessment<AbsolutePressure> {
  /** Steady oxygen fraction at the hardest work and at rest; 0 where the uptake meets the supply. */
  readonly swing: { readonly lowest: Fraction; readonly highest: Fraction }
}

/**
 * Oxygen of a semi-closed loop held against limits that the caller states: the lowest at the hardest work and the shallowest point, the
 * highest with the gas of the supply itself at the deepest. It covers every steady state between them, and nothing else: not a loop
 * that was never flushed, a blocked orifice, or a supply too low in pressure to hold its flow.
 *
 * @param loop - supply; uptake at rest and at the hardest work; ambient pressures, absolute, Pa, 0.2 to 100 bar
 * @param limits - highest and lowest oxygen partial pressure, absolute, Pa; no default
 * @returns the lowest oxygen partial pressure against its limit, and the swing of the fraction
 * @throws LitrebarError `range`; `input` for a lowest uptake or pressure above the highest
 * @source semi-closed-balance, equation
 * @example
 * const loop = {
 *   supply: { flow: freeGasFlowOf(7.3, litrePerMinute, stpd), oxygen: measure(0.5, one) },
 *   uptake: { lowest: freeGasFlowOf(0.3, litrePerMinute, stpd), highest: freeGasFlowOf(2.5, litrePerMinute, stpd) },
 *   ambientPressure: { shallowest: absolute(1, bar), deepest: absolute(2.8, bar) },
 * }
 * const { verdict, swing } = assessSemiClosed(loop, { highest: absolute(1.4, bar), lowest: absolute(0.2, bar) })
 * verdict // => 'within'
 * const shown = `${swing.lowest.toFixed(2)} to ${swing.highest.toFixed(2)}` // => '0.24 to 0.48'
 */
export function assessSemiClosed(loop: SemiClosedLoop, limits: StatedOxygenLimits): SemiClosedAssessment {
  requireKeys('loop', loop, { supply: true, uptake: true, ambientPressure: true })
  requireKeys('limits', limits, { highest: true, lowest: true })
  const { supply, uptake, ambientPressure } = loop
  requireKeys('loop.uptake', uptake, { lowest: true, highest: true })
  requireKeys('loop.ambientPressure', ambientPressure, { shallowest: true, deepest: true })
  requireSupply(supply)
  requireWithin('loop.uptake.highest', uptake.highest, uptakeRange)
  requireWithin('loop.uptake.lowest', uptake.lowest, uptakeRange)
  requireWithin('loop.ambientPressure.deepest', ambientPressure.deepest, ambient)
  requireWithin('loop.ambientPressure.shallowest', ambientPressure.shallowest, ambient)
  requireWithin('limits.highest', limits.highest, { above: 0, atMost: 3, unit: bar, hint: statedHint })
  requireWithin('limits.lowest', limits.lowest, { above: 0, atMost: 1, unit: bar, hint: statedHint })
  requireOrder('loop.uptake.lowest', uptake.lowest, uptake.highest)
  requireOrder('loop.ambientPressure.shallowest', ambientPressure.shallowest, ambientPressure.deepest)
  const swing = { lowest: steadyFraction(supply, uptake.highest), highest: steadyFraction(supply, uptake.lowest) }
  const least = swing.lowest * ambientPressure.shallowest
  // before the first breath, and after a flush, the loop holds the gas of the supply
  const most = supply.oxygen * ambientPressure.deepest
  const against: Reason[] = []
  if (swing.lowest === 0) {
    against.push({
      code: 'uptake-meets-supply',
      text: `At ${inLitres(uptake.highest)} L/min no oxygen is left of the ${inLitres(supply.flow * supply.oxygen)} L/min supplied.`,
    })
  }
  if (least < limits.lowest) {
    against.push({
      code: 'below-lowest-oxygen',
      text: `Oxygen down to ${inBars(least)} bar at the hardest work; the limit stated is ${inBars(limits.lowest)} bar.`,
    })
  }
  if (most > limits.highest) {
    against.push({
      code: 'above-highest-oxygen',
      text: `Oxygen up to ${inBars(most)} bar with the gas of the supply; the limit stated is ${inBars(limits.highest)} bar.`,
    })
  }
  const notes: readonly Reason[] = [
    {
      code: 'steady-states-only',
      text: 'Steady states of a flushed loop at the flow stated; nothing else is covered.',
    },
  ]
  return {
    value: least as AbsolutePressure,
    limit: limits.lowest,
    margin: least - limits.lowest,
    ...verdictFrom({ against, doubts: [], notes }),
    swing,
    cautions: ['breathing-loop', 'oxygen-limits', 'analyse-mixture', 'always'],
    sources: ['semi-closed-balance'],
  }
}

const statedHint = 'State the limit of your training or rules.'

/** Steady fraction, 0 where no more oxygen is supplied than is taken up. */
function steadyFraction({ flow, oxygen }: ConstantMassFlow, uptake: number): Fraction {
  return (uptake < flow * oxygen ? (flow * oxygen - uptake) / (flow - uptake) : 0) as Fraction
}

/** Refuses a supply that makes no sense. */
export function requireSupply(supply: ConstantMassFlow): void {
  requireKeys('supply', supply, { flow: true, oxygen: true })
  requireWithin('supply.flow', supply.flow, flowRange)
  requireWithin('supply.oxygen', supply.oxygen, oxygenRange)
}

function requireOrder(argument: string, low: number, high: number): void {
  if (low <= high) return
  throw new LitrebarError({
    code: 'input',
    argument,
    value: String(low),
    expected: `at most ${high}`,
    hint: 'The two are exchanged.',
  })
}

function inLitres(flow: number): string {
  return String(Number((flow / litrePerMinute.factor).toPrecision(3)))
}

function inBars(pascals: number): string {
  return String(Number((pascals / bar.factor).toPrecision(4)))
}
