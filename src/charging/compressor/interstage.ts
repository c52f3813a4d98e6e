import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import { gasState, type Mixture, temperatureAtEntropy } from '../../gas-law/index.ts'
import { rootBetween } from '../../uncertainty/root-between.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Fraction,
  kelvin,
  one,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { dischargeTemperature, pressure, requireAbove, requireSome, temperature } from '../accepted.ts'

/** Stages whose interstage pressures are to be chosen. */
export interface StagesToShare {
  readonly from: AbsolutePressure
  readonly to: AbsolutePressure
  /** Temperature at the inlet of each stage: its length is the number of stages. */
  readonly inletTemperatures: readonly Temperature[]
}

/** By what the best pressures are sought. */
export type SharingModel =
  | { readonly gas: 'ideal'; readonly exponent: Fraction; readonly mixture?: never }
  | { readonly gas: 'real'; readonly mixture: Mixture; readonly exponent?: never }

const exponentRange: Accepted = {
  above: 1,
  atMost: 2,
  unit: one,
  hint: 'Give n of p vⁿ, above 1: with 1, every choice asks for the same work.',
}

/**
 * The interstage pressures that ask for the least work. With perfect coolers and an ideal gas all ratios are equal; with coolers that
 * leave the gas warm the discharge temperatures are equal instead, and a stage that draws warmer gas gets a smaller ratio. Real gas
 * moves the last ratios by a few per cent more.
 *
 * @param stages - pressures, absolute, Pa, up to 500 bar; temperature at the inlet of each stage, K, −60 to 150 °C
 * @param model - ideal gas along p vⁿ, exponent above 1 and at most 2; or real gas without heat, all stages of one isentropic efficiency
 * @returns pressure after each stage, the last being the final one
 * @throws LitrebarError `range`, naming the field; `input` for no stage or an unknown key; `not-converged` where a stage would have to expand
 * @source litrebar-derivation, zero slope of the work with each pressure
 * @example
 * const stages = {
 *   from: absolute(1, bar),
 *   to: absolute(16, bar),
 *   inletTemperatures: [temperatureOf(20, celsius), temperatureOf(40, celsius)],
 * }
 * const best = bestInterstagePressures(stages, { gas: 'ideal', exponent: measure(1.3, one) })
 * best.map((p) => inUnit(p, bar).toFixed(2)) // => ['4.61', '16.00']
 */
export function bestInterstagePressures(stages: StagesToShare, model: SharingModel): readonly AbsolutePressure[] {
  requireKeys('stages', stages, { from: true, to: true, inletTemperatures: true })
  requireWithin('stages.from', stages.from, pressure)
  requireAbove('stages.to', stages.to, stages.from)
  requireSome('stages.inletTemperatures', stages.inletTemperatures, 'Give the temperature at the inlet of each stage.')
  for (const [k, t] of stages.inletTemperatures.entries())
    requireWithin(`stages.inletTemperatures[${k}]`, t, temperature)
  requireKeys(
    'model',
    model,
    (model as { gas?: unknown } | null)?.gas === 'ideal' ? { gas: true, exponent: true } : { gas: true, mixture: true },
  )
  requireWord('model.gas', model.gas, ['ideal', 'real'])
  if (model.gas === 'real') return bestOfRealGas(stages, model.mixture)
  requireWithin('model.exponent', model.exponent, exponentRange)
  return bestOfIdealGas(stages, model.exponent)
}

/** T_i r_i^((n-1)/n) is the same for all stages. */
function bestOfIdealGas({ from, to, inletTemperatures }: StagesToShare, exponent: number): readonly AbsolutePressure[] {
  const power = 1 - 1 / exponent
  const logs = inletTemperatures.map((t) => Math.log(t))
  const logDischarge = (power * Math.log(to / from) + logs.reduce((sum, log) => sum + log, 0)) / logs.length
  let logPressure = Math.log(from)
  const after = logs.map((log) => {
    logPressure += (logDischarge - log) / power
    return Math.exp(logPressure)
  })
  requireRising(from, after)
  return [...after.slice(0, -1), to] as AbsolutePressure[]
}

/**
 * With h and s along isobars, the slope of the work with an interstage pressure is v of the gas that comes less v of the gas that is
 * drawn, less (T₂ - T₁)(∂v/∂T)ₚ of the latter, T₂ being where the next stage ends. So the first pressure fixes all others, and it is
 * sought so that the last is the wanted one.
 */
function bestOfRealGas({ from, to, inletTemperatures }: StagesToShare, mixture: Mixture): readonly AbsolutePressure[] {
  const count = inletTemperatures.length
  if (count === 1) return [to]
  const ideal = bestOfIdealGas({ from, to, inletTemperatures }, 1.4)
  const chain = (first: number): readonly number[] => {
    const after = [first]
    let below: number = from
    for (let k = 0; k + 1 < count; k++) {
      const here = after[k] as number
      const discharge = isentropicEnd(mixture, below, inletTemperatures[k] as number, here)
      const next = dischargeWanted(mixture, here, inletTemperatures[k + 1] as Temperature, discharge)
      after.push(pressureAtEnd(mixture, here, inletTemperatures[k + 1] as number, next, ideal[k + 1] as number))
      below = here
    }
    return after
  }
  const start = ideal[0] as number
  // real gas moves the first pressure by a few per cent; a span of a quarter holds it
  const logExcess = (logFirst: number): number => Math.log((chain(Math.exp(logFirst)).at(-1) as number) / to)
  const logFirst = rootBetween(
    logExcess,
    [Math.log(start / 1.25), Math.log(start * 1.25)],
    1e-14,
    'interstage pressure',
  )
  const after = chain(Math.exp(logFirst))
  requireRising(from, after)
  return [...after.slice(0, -1), to] as AbsolutePressure[]
}

function isentropicEnd(mixture: Mixture, below: number, inlet: number, above: number): number {
  const { molarEntropy } = gasState(mixture, { pressure: below as AbsolutePressure, temperature: inlet as Temperature })
  return temperatureAtEntropy(mixture, { molarEntropy, pressure: above as AbsolutePressure }, { extrapolate: true })
}

/** Where the next stage has to end for the work to be least. */
function dischargeWanted(mixture: Mixture, p: number, inlet: Temperature, discharge: number): number {
  const drawn = gasState(mixture, { pressure: p as AbsolutePressure, temperature: inlet })
  const comes = gasState(
    mixture,
    { pressure: p as AbsolutePressure, temperature: discharge as Temperature },
    { extrapolate: true },
  )
  const slope = drawn.pressureTemperatureDerivative / drawn.pressureDensityDerivative / drawn.molarDensity ** 2
  return inlet + (1 / comes.molarDensity - 1 / drawn.molarDensity) / slope
}

/** The pressure to which gas is compressed without heat until it has the temperature. */
function pressureAtEnd(mixture: Mixture, p: number, inlet: number, wanted: number, near: number): number {
  const excess = (log: number): number => isentropicEnd(mixture, p, inlet, Math.exp(log)) - wanted
  const highest = Math.log(699e5)
  let low = Math.min(Math.log(near), highest) - 0.3
  let high = Math.min(Math.log(near) + 0.3, highest)
  while (excess(low) > 0 && low > Math.log(p) - 2) low -= 0.5
  while (excess(high) < 0 && high < highest) high = Math.min(high + 0.5, highest)
  return Math.exp(rootBetween(excess, [low, high], 1e-15, 'interstage pressure'))
}

function requireRising(from: number, after: readonly number[]): void {
  const stuck = after.findIndex((p, k) => !(p > (k === 0 ? from : (after[k - 1] as number))))
  if (stuck < 0) return
  throw new LitrebarError({
    code: 'not-converged',
    argument: 'stages.inletTemperatures',
    value: `stage ${stuck + 1} would have to expand`,
    expected: 'stages that all compress',
    hint: 'Leave the stage out that draws so much warmer gas than the others, or cool it better.',
  })
}

const ratioRange: Accepted = { above: 1, atMost: 1e4, unit: one, hint: 'Give the final over the intake pressure.' }

/** What a stage may reach. */
export type StageBound =
  | { readonly pressureRatio: Fraction }
  | {
      readonly dischargeTemperature: Temperature
      readonly inletTemperature: Temperature
      /** Exponent n of p vⁿ, above 1. */
      readonly exponent: Fraction
    }

/**
 * How many equal stages keep each within a bound, with perfect coolers and an ideal gas: the count rounded up. Rounding to the nearest
 * count breaks the bound.
 *
 * @param ratio - final over intake pressure, above 1
 * @param bound - highest pressure ratio of a stage; or its highest discharge temperature with inlet temperature and exponent
 * @returns number of stages
 * @throws LitrebarError `range`, naming the field; `input` for an unknown or missing key
 * @source litrebar-derivation, logarithm of the whole ratio over that of a stage
 * @example
 * const bound = { dischargeTemperature: temperatureOf(150, celsius), inletTemperature: temperatureOf(27, celsius), exponent: measure(1.25, one) }
 * stagesNeeded(measure(180, one), bound) // => 4
 */
export function stagesNeeded(ratio: Fraction, bound: StageBound): number {
  requireWithin('ratio', ratio, ratioRange)
  requireKeys('bound', bound, {
    pressureRatio: false,
    dischargeTemperature: false,
    inletTemperature: false,
    exponent: false,
  })
  const logRatio = Math.log(ratio)
  if ('pressureRatio' in bound) {
    requireKeys('bound', bound, { pressureRatio: true })
    requireWithin('bound.pressureRatio', bound.pressureRatio, ratioRange)
    return roundedUp(logRatio / Math.log(bound.pressureRatio))
  }
  requireKeys('bound', bound, { dischargeTemperature: true, inletTemperature: true, exponent: true })
  requireWithin('bound.inletTemperature', bound.inletTemperature, temperature)
  requireWithin('bound.dischargeTemperature', bound.dischargeTemperature, dischargeTemperature)
  requireWithin('bound.dischargeTemperature', bound.dischargeTemperature, {
    above: bound.inletTemperature,
    unit: kelvin,
    hint: 'A stage ends hotter than it begins.',
  })
  requireWithin('bound.exponent', bound.exponent, exponentRange)
  const perStage = Math.log(bound.dischargeTemperature / bound.inletTemperature) / (1 - 1 / bound.exponent)
  return roundedUp(logRatio / perStage)
}

/** Up to the next whole number, unless it stands above one by rounding alone. */
function roundedUp(count: number): number {
  return Math.max(1, Math.ceil(count * (1 - 1e-12)))
}
