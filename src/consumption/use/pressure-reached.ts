import { requireKeys, requireWord } from '../../errors/index.ts'
import { type AbsolutePressure, type Accepted, bar, type Duration, requireWithin } from '../../units/index.ts'
import { amountIn, type GasOptions, requireGasOptions } from '../gas/vessel-gas.ts'
import { amountBreathed, type BreathedDive, requireDive, type Stretch, stretchesOf } from './breathed-dive.ts'
import { drawdownOf, keptAmount, shortened, splitAt } from './drawdown.ts'
import { firstCrossing } from './first-crossing.ts'
import { gasTemperatureOf, type SeriesOptions } from './pressure-series.ts'

const pressureRange: Accepted = { above: 0, atMost: 700, unit: bar, hint: 'Give an absolute pressure.' }

/**
 * Moment of a dive at which a cylinder first falls to a pressure: a turn pressure, a reserve. Exact also on ascents and descents,
 * and where the gas cools without being breathed.
 *
 * @param dive - as for `gasUsed`
 * @param reached - name of the cylinder; the pressure, absolute, Pa, above 0 and at most 700 bar
 * @param options - temperatures of the gas in the cylinders, as for `pressureSeries`; `gas: 'ideal'` to leave out compressibility
 * @returns time from the start of the dive, s; undefined if the pressure is not reached, or the cylinder is used up before
 * @throws LitrebarError as `pressureSeries`; `input` for a cylinder that there is not
 * @source litrebar-derivation; gerg-2008, density
 * @example
 * const contents = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   pressure: absolute(200, bar),
 *   temperature: temperatureOf(10, celsius),
 *   mixture: dryAir,
 * }
 * const dive = {
 *   profile: steadyProfile(absolute(3, bar), measure(40, minute)),
 *   breathing: [{ from: measure(0, minute), respiratoryMinuteVolume: measure(15, litrePerMinute), cylinder: 'back' }],
 *   cylinders: { back: { contents, residualPressure: { aboveAmbient: difference(10, bar) } } },
 *   breathingGasTemperature: temperatureOf(10, celsius),
 * }
 * const moment = pressureReached(dive, { cylinder: 'back', pressure: absolute(100, bar) })
 * moment === undefined ? 'not reached' : inUnit(moment, minute).toFixed(1) // => '25.2'
 */
export function pressureReached<Name extends string>(
  dive: BreathedDive<Name>,
  reached: { readonly cylinder: NoInfer<Name>; readonly pressure: AbsolutePressure },
  options: GasOptions & Pick<SeriesOptions<Name>, 'temperatures'> = {},
): Duration | undefined {
  requireDive(dive)
  requireKeys('reached', reached, { cylinder: true, pressure: true })
  requireGasOptions(options, { temperatures: false })
  const { cylinder, pressure } = reached
  requireWithin('reached.pressure', pressure, pressureRange)
  requireWord('reached.cylinder', cylinder, Object.keys(dive.cylinders) as Name[])
  const { contents } = dive.cylinders[cylinder]
  const temperature = gasTemperatureOf(cylinder, dive, options)
  const stretches = stretchesOf(dive)
  const end = drawdownOf(dive, cylinder, stretches, options, temperature).runsOut?.at ?? Infinity
  let left = amountIn(contents, options)
  for (const stretch of stretches.flatMap((whole) => splitAt(whole, temperature.breaks))) {
    const kept = keptAmount(contents, pressure, stretch, options, temperature)
    const breathed = (s: number): number =>
      stretch.cylinder === cylinder ? amountBreathed(options, dive, shortened<Stretch<Name>>(stretch, s)) : 0
    const found = firstCrossing((s) => left - breathed(s) - kept(s), stretch.duration, temperature.breaks.length === 0)
    if (found !== undefined) return stretch.start + found <= end ? ((stretch.start + found) as Duration) : undefined
    left -= breathed(stretch.duration)
  }
  return undefined
}
