import { LitrebarError, requireKeys } from '../../errors/index.ts'
import type { GasModelOption } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Fraction,
  kelvin,
  type PressureDifference,
  percent,
  requireWithin,
  type Temperature,
  type TemperatureDifference,
} from '../../units/index.ts'
import { pressure, temperature } from '../accepted-contents.ts'
import { type GasInside, pressureInside } from '../contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'

/** A state of the gas in a closed cylinder, its pressure absolute or as a gauge shows it. */
export type ClosedCylinder = GasInside

/** How the inside of a cylinder grows. Leave out what is not known: the cylinder is then rigid in that respect. */
export interface VesselGrowth {
  /** Growth of the internal volume by `fraction` when the pressure rises by `per`; about 0.4 % at working pressure. */
  readonly elastic?: { readonly fraction: Fraction; readonly per: PressureDifference }
  /** Growth of the internal volume by `fraction` when the metal warms by `per`: three times the linear expansion. */
  readonly thermal?: { readonly fraction: Fraction; readonly per: TemperatureDifference }
}

export interface DevelopedPressureOptions extends GasModelOption {
  readonly growth?: VesselGrowth
}

const perPressure: Accepted = {
  above: 0,
  atMost: 2000,
  unit: bar,
  hint: 'Give the pressure at which the expansion was measured.',
}
const perDegree: Accepted = {
  above: 0,
  atMost: 1000,
  unit: kelvin,
  hint: 'Give the temperature rise at which the expansion was measured.',
}
const growth: Accepted = {
  atLeast: 0,
  atMost: 5,
  unit: percent,
  hint: 'A cylinder expands by about 0.4 % when filled.',
}
// The growth is a few thousandths, so each step gains two digits; the cap is for a defect.
const mostSteps = 40

/**
 * Developed pressure: what a closed cylinder shows at another temperature. With the reference temperature it is the settled pressure.
 * The amount stays, and the volume but for the growth that the options state. For air at 200 bar the change is about one and a half
 * times that of the ideal rule; for heliox the two agree.
 *
 * @param contents - mixture; absolute pressure, Pa, above 0 and at most 500 bar, or gauge pressure with the ambient pressure; at its
 *   temperature, K, −60 to 150 °C
 * @param at - temperature of the pressure that is asked for, K, −60 to 150 °C
 * @param options - growth of the vessel; `gas: 'ideal'` for the pressure in proportion to temperature
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range`, `mixture` or `input`, naming the field
 * @source litrebar-derivation, constant amount; density from gas-law
 * @example
 * const filled = { mixture: dryAir, pressure: absolute(201, bar), temperature: temperatureOf(15, celsius) }
 * const hot = developedPressure(filled, temperatureOf(65, celsius))
 * const ideal = developedPressure(filled, temperatureOf(65, celsius), { gas: 'ideal' })
 * const shown = [hot, ideal].map((p) => inUnit(p, bar).toFixed(1)) // => ['251.5', '235.9']
 */
export function developedPressure(
  contents: ClosedCylinder,
  at: Temperature,
  options: DevelopedPressureOptions = {},
): AbsolutePressure {
  const gas = gasModelOf(options, { growth: false })
  const held = pressureInside('contents', contents, pressure)
  requireWithin('at', at, temperature)
  const { growth: vessel = {} } = options
  requireKeys('options.growth', vessel, { elastic: false, thermal: false })
  const { mixture } = contents
  const density = densityBy(gas, mixture, held, contents.temperature)
  const { elastic, thermal } = vessel
  if (elastic) requireKeys('options.growth.elastic', elastic, { fraction: true, per: true })
  if (thermal) requireKeys('options.growth.thermal', thermal, { fraction: true, per: true })
  if (elastic) requireWithin('options.growth.elastic.per', elastic.per, perPressure)
  if (thermal) requireWithin('options.growth.thermal.per', thermal.per, perDegree)
  if (elastic) requireWithin('options.growth.elastic.fraction', elastic.fraction, growth)
  if (thermal) requireWithin('options.growth.thermal.fraction', thermal.fraction, growth)
  const warmed = thermal ? 1 + (thermal.fraction * (at - contents.temperature)) / thermal.per : 1
  const rigid = pressureBy(gas, mixture, density / warmed, at)
  if (elastic === undefined) return rigid as AbsolutePressure

  const perPascal = elastic.fraction / elastic.per
  let developed = rigid
  for (let step = 0; step < mostSteps; step++) {
    const stretched = (1 + perPascal * developed) / (1 + perPascal * held)
    const next = pressureBy(gas, mixture, density / warmed / stretched, at)
    if (Math.abs(next - developed) <= 1e-12 * next) return next as AbsolutePressure
    developed = next
  }
  throw new LitrebarError({
    code: 'not-converged',
    argument: 'options.growth.elastic',
    value: `${elastic.fraction} per ${elastic.per} Pa`,
    expected: 'an expansion small enough for the pressure to settle',
    hint: 'State the expansion of the internal volume at a pressure: about 0.4 % at working pressure.',
  })
}
