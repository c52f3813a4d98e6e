import { requireKeys } from '../../errors/index.ts'
import {
  freeGasOfAmount,
  type GasModelOption,
  gerg2008GasConstant,
  type Mixture,
  type ReferenceCondition,
} from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  type Duration,
  day,
  type FreeGas,
  type FreeGasFlow,
  type InternalVolume,
  inUnit,
  kelvin,
  type PressureDifference,
  type PressureVolume,
  requireWithin,
  type Temperature,
  type TemperatureDifference,
} from '../../units/index.ts'
import { internalVolume, pressure, temperature } from '../accepted-contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'

/** Two readings of a closed cylinder. */
export interface LeakTest {
  readonly internalVolume: InternalVolume
  readonly mixture: Mixture
  readonly first: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  readonly last: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  /** Time between the readings. */
  readonly duration: Duration
  /** Standard uncertainty of each reading of pressure. */
  readonly pressureUncertainty?: PressureDifference
  /** Standard uncertainty of each reading of the gas temperature. */
  readonly temperatureUncertainty?: TemperatureDifference
}

/** What a closed cylinder has lost. Negative where it seems to have gained: a sign of the uncertainty, or of a wrong temperature. */
export interface Leak<Reference extends string> {
  readonly lost: Amount
  readonly lostFreeGas: FreeGas<Reference>
  readonly rate: FreeGasFlow<Reference>
  /** As the bar·litre of the trade: amount times R T of the first reading. */
  readonly lostPressureVolume: PressureVolume
  /** What the gauge would show at the last temperature, had nothing been lost. */
  readonly tightPressure: AbsolutePressure
  /** The last reading against the tight one; `beyond` means less than a tight cylinder shows, by more than twice its uncertainty. */
  readonly assessment: Assessment<AbsolutePressure>
}

const duration: Accepted = { above: 0, atMost: 3650, unit: day, hint: 'Give the time between the readings.' }
const pressureUncertainty: Accepted = { atLeast: 0, atMost: 50, unit: bar, hint: 'Give one standard uncertainty.' }
const degreeUncertainty: Accepted = { atLeast: 0, atMost: 50, unit: kelvin, hint: 'Give one standard uncertainty.' }

/**
 * Leak of a closed cylinder from two readings of pressure and temperature.
 * A tight air cylinder at 200 bar falls by almost a bar per kelvin, half as much again as the ideal rule says: a drop that the ideal
 * gas calls a leak is often none.
 *
 * @param test - internal volume, m³; mixture; both readings, absolute, Pa, up to 500 bar, with gas temperatures, K; time between, s;
 *   standard uncertainties where known
 * @param options - reference condition of the loss; `gas: 'ideal'` to show the difference
 * @returns loss as amount, free gas, rate and bar·litre; the pressure of a tight cylinder; the last reading held against it
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation, balance of amounts
 * @example
 * const test = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   mixture: dryAir,
 *   first: { pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) },
 *   last: { pressure: absolute(195, bar), temperature: temperatureOf(15, celsius) },
 *   duration: measure(24, hour),
 *   pressureUncertainty: difference(0.5, bar),
 *   temperatureUncertainty: difference(1, celsius),
 * }
 * const real = leakTest(test, { reference: isoStandard })
 * const ideal = leakTest(test, { reference: isoStandard, gas: 'ideal' })
 * const shown = [real, ideal].map((leak) => inUnit(leak.lostFreeGas, litre).toFixed(1)) // => ['1.0', '18.8']
 * real.assessment.verdict // => 'within'
 */
export function leakTest<Reference extends string>(
  test: LeakTest,
  options: GasModelOption & { readonly reference: ReferenceCondition<Reference> },
): Leak<Reference> {
  const gas = gasModelOf(options, { reference: true })
  const { reference } = options
  requireTest(test)
  requireReference(reference)
  const { internalVolume: room, mixture, first, last } = test
  const before = densityBy(gas, mixture, first.pressure, first.temperature)
  const after = densityBy(gas, mixture, last.pressure, last.temperature)
  const lost = (room * (before - after)) as Amount
  const perMole = freeGasOfAmount(1 as Amount, { gas, reference, mixture })
  const tight = pressureBy(gas, mixture, before, last.temperature) as AbsolutePressure
  return {
    lost,
    lostFreeGas: (lost * perMole) as FreeGas<Reference>,
    rate: ((lost * perMole) / test.duration) as FreeGasFlow<Reference>,
    lostPressureVolume: (lost * gerg2008GasConstant * first.temperature) as PressureVolume,
    tightPressure: tight,
    assessment: assessed(test, tight, gas),
  }
}

/** Reading against the tight pressure, with the uncertainty that both readings bring. */
function assessed(
  { mixture, first, last, ...test }: LeakTest,
  tight: AbsolutePressure,
  gas: 'real' | 'ideal',
): Assessment<AbsolutePressure> {
  const margin = last.pressure - tight
  const expectedAt = (p: number, t: number, lastT: number): number =>
    pressureBy(gas, mixture, densityBy(gas, mixture, p, t), lastT)
  const slope = (at: (shift: number) => number, step: number): number => (at(step) - at(-step)) / (2 * step)
  const { pressure: p, temperature: t } = first
  const byPressure = slope((dp) => expectedAt(p + dp, t, last.temperature), 1e-4 * p)
  const byFirst = slope((dt) => expectedAt(p, t + dt, last.temperature), 0.1)
  const byLast = slope((dt) => expectedAt(p, t, last.temperature + dt), 0.1)
  const ofPressure = test.pressureUncertainty ?? 0
  const ofTemperature = test.temperatureUncertainty ?? 0
  const known = test.pressureUncertainty !== undefined && test.temperatureUncertainty !== undefined
  const uncertainty = Math.hypot(ofPressure, byPressure * ofPressure, byFirst * ofTemperature, byLast * ofTemperature)
  const shown = (pascals: number): string => `${inUnit(pascals as AbsolutePressure, bar).toFixed(2)} bar`
  const readings = `${shown(last.pressure)} read, ${shown(tight)} expected if tight`
  const difference = `${readings}, standard uncertainty of the difference ${shown(uncertainty)}`
  const isLess = known && margin < -2 * uncertainty
  const isMore = known && margin > 2 * uncertainty
  const doubts: readonly Reason[] = [
    ...(known
      ? []
      : [
          {
            code: 'uncertainty-unknown',
            text: `${readings}; without the uncertainty of pressure and temperature this shows nothing either way`,
          },
        ]),
    ...(isMore
      ? [
          {
            code: 'more-than-before',
            text: `${difference}: a closed cylinder gains no gas, so one of the readings is wrong`,
          },
        ]
      : []),
  ]
  return {
    value: last.pressure,
    limit: tight,
    margin,
    ...(known ? { marginUncertainty: uncertainty } : {}),
    ...verdictFrom({
      against: isLess ? [{ code: 'less-than-tight', text: difference }] : [],
      doubts,
      notes: known && !isLess && !isMore ? [{ code: 'as-tight', text: difference }] : [],
    }),
    cautions: ['inspection'],
    sources: ['litrebar-derivation'],
  }
}

function requireReference(reference: ReferenceCondition): void {
  requireKeys('options.reference', reference, {
    name: true,
    pressure: true,
    temperature: true,
    moisture: true,
    waterVapourPressure: true,
    source: false,
    place: false,
  })
  requireWithin('options.reference.pressure', reference.pressure, pressure)
  requireWithin('options.reference.temperature', reference.temperature, temperature)
}

function requireTest(test: LeakTest): void {
  requireKeys('test', test, {
    internalVolume: true,
    mixture: true,
    first: true,
    last: true,
    duration: true,
    pressureUncertainty: false,
    temperatureUncertainty: false,
  })
  requireMixture('mixture', test.mixture)
  requireWithin('internalVolume', test.internalVolume, internalVolume)
  for (const name of ['first', 'last'] as const) {
    requireKeys(name, test[name], { pressure: true, temperature: true })
    requireWithin(`${name}.pressure`, test[name].pressure, pressure)
    requireWithin(`${name}.temperature`, test[name].temperature, temperature)
  }
  requireWithin('duration', test.duration, duration)
  const { pressureUncertainty: ofPressure = 0, temperatureUncertainty: ofTemperature = 0 } = test
  requireWithin('pressureUncertainty', ofPressure, pressureUncertainty)
  requireWithin('temperatureUncertainty', ofTemperature, degreeUncertainty)
}
