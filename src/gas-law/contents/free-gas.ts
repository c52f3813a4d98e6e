import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { mole } from '../../units/amount.ts'
import { bar } from '../../units/pressure.ts'
import type { Amount, Fraction, FreeGas } from '../../units/quantity.ts'
import { litre } from '../../units/volume.ts'
import type { Mixture } from '../mixture/mixture.ts'
import { modelOf, molarDensityBy } from '../state/gas-model.ts'
import { amountOfGas, type GasContents, type GasModelOption } from './gas-contents.ts'
import type { ReferenceCondition } from './reference-condition.ts'

const amountRange: Accepted = { atLeast: 0, atMost: 1e9, unit: mole, hint: 'Check the unit of the amount.' }
const referencePressure: Accepted = { above: 0, unit: bar, hint: 'Name a reference condition, such as isoStandard.' }
const vapourRange: Accepted = { atLeast: 0, atMost: 1, unit: bar, hint: 'Give what the vapour takes of the pressure.' }
const referenceKeys = {
  name: true,
  pressure: true,
  temperature: true,
  moisture: false,
  waterVapourPressure: true,
  source: false,
  place: false,
}
const freeGasRange: Accepted = { atLeast: 0, atMost: 1e10, unit: litre, hint: 'Check the unit of the volume.' }

/**
 * Free gas: the volume that the contents of a vessel would fill at a reference condition.
 * Everything in the vessel counts, also what cannot be breathed from it.
 * At a saturated condition the volume includes the water vapour that the gas would take up.
 *
 * @param contents - as for `amountOfGas`
 * @param options - reference condition; `gas: 'ideal'` to leave out compressibility, inside and outside
 * @returns volume at the reference condition, m³
 * @throws LitrebarError as `amountOfGas`
 * @source common-practice, definition; gerg-2008, density
 * @example
 * const contents = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   gaugePressure: gauge(232, bar),
 *   ambientPressure: absolute(1, atmosphere),
 *   temperature: temperatureOf(15, celsius),
 *   mixture: dryAir,
 * }
 * const real = freeGas(contents, { reference: isoStandard })
 * const ideal = freeGas(contents, { reference: isoStandard, gas: 'ideal' })
 * inUnit(real, litre).toFixed(0) // => '2641'
 * inUnit(ideal, litre).toFixed(0) // => '2760'
 */
export function freeGas<Name extends string>(
  contents: GasContents,
  options: GasModelOption & { readonly reference: ReferenceCondition<Name> },
): FreeGas<Name> {
  requireKeys('contents', contents, {
    internalVolume: true,
    pressure: false,
    temperature: true,
    mixture: true,
    gaugePressure: false,
    ambientPressure: false,
    elasticExpansion: false,
  })
  requireKeys('options', options, { gas: false, reference: true })
  return freeGasOfAmount(amountOfGas(contents, { gas: modelOf(options) }), {
    ...options,
    mixture: contents.mixture,
  })
}

/**
 * Free gas of an amount of gas.
 *
 * @param amount - amount of the gas without water vapour, mol, 0 to 1e9
 * @param options - reference condition; mixture; `gas: 'ideal'` to leave out compressibility
 * @returns volume at the reference condition, m³
 * @throws LitrebarError `range` for an amount that is not finite or out of range; as `molarDensity`
 * @source common-practice, definition; gerg-2008, density
 * @example
 * const amount = measure(1, mole)
 * inUnit(freeGasOfAmount(amount, { reference: normalCondition, mixture: dryAir }), litre).toFixed(3) // => '22.401'
 */
export function freeGasOfAmount<Name extends string>(
  amount: Amount,
  options: GasModelOption & { readonly reference: ReferenceCondition<Name>; readonly mixture: Mixture },
): FreeGas<Name> {
  requireKeys('options', options, { gas: false, reference: true, mixture: true })
  requireWithin('amount', amount, amountRange)
  return (amount / amountPerFreeGas(options)) as FreeGas<Name>
}

/**
 * Amount of gas in a volume of free gas.
 *
 * @param freeGas - volume at the reference condition, m³, 0 to 1e10 L
 * @param options - the reference condition that it is stated at; mixture; `gas: 'ideal'` to leave out compressibility
 * @returns amount of the gas without water vapour, mol
 * @throws LitrebarError `range` for a volume that is not finite or out of range; as `molarDensity`
 * @source common-practice, definition; gerg-2008, density
 * @example
 * const freeGas = freeGasOf(1000, litre, isoStandard)
 * inUnit(amountOfFreeGas(freeGas, { reference: isoStandard, mixture: dryAir }), mole).toFixed(2) // => '42.31'
 */
export function amountOfFreeGas<Name extends string>(
  freeGas: FreeGas<Name>,
  options: GasModelOption & { readonly reference: ReferenceCondition<NoInfer<Name>>; readonly mixture: Mixture },
): Amount {
  requireKeys('options', options, { gas: false, reference: true, mixture: true })
  requireWithin('freeGas', freeGas, freeGasRange)
  return (freeGas * amountPerFreeGas(options)) as Amount
}

/**
 * Free gas stated at another reference condition. The gas stays the same; moisture is taken up or left behind.
 *
 * @param freeGas - volume at the condition `from`, m³, 0 to 1e10 L
 * @param options - reference conditions from which and to which; mixture; `gas: 'ideal'` to leave out compressibility
 * @returns volume at the condition `to`, m³
 * @throws LitrebarError `range` for a volume that is not finite or out of range; as `molarDensity`
 * @source common-practice, definition; gerg-2008, density
 * @example
 * const breathed = freeGasOf(10, litre, stpd)
 * inUnit(freeGasAt(breathed, { from: stpd, to: btps, mixture: dryAir }), litre).toFixed(2) // => '12.11'
 */
export function freeGasAt<From extends string, To extends string>(
  freeGas: FreeGas<From>,
  options: GasModelOption & {
    readonly from: ReferenceCondition<NoInfer<From>>
    readonly to: ReferenceCondition<To>
    readonly mixture: Mixture
  },
): FreeGas<To> {
  requireKeys('options', options, { gas: false, from: true, to: true, mixture: true })
  const { from, to, ...rest } = options
  return freeGasOfAmount(amountOfFreeGas(freeGas, { reference: from, ...rest }), { reference: to, ...rest })
}

/** Free gas by both models. */
export interface FreeGasByModel<Name extends string> {
  readonly real: FreeGas<Name>
  readonly ideal: FreeGas<Name>
  /** By how much the ideal law overstates: ideal over real, less one. Negative where it understates. */
  readonly overstatement: Fraction
}

/**
 * Free gas by the equation of state and by the ideal law, side by side.
 *
 * @param contents - as for `freeGas`
 * @param options - reference condition
 * @returns both volumes at the reference condition, m³, and by what fraction the ideal law overstates
 * @throws LitrebarError as `freeGas`
 * @source gerg-2008, density
 * @example
 * const contents = {
 *   internalVolume: internalVolumeOf(10, litre),
 *   pressure: absolute(300, bar),
 *   temperature: temperatureOf(20, celsius),
 *   mixture: dryAir,
 * }
 * inUnit(freeGasByModel(contents, { reference: roomCondition }).overstatement, percent).toFixed(1) // => '10.5'
 */
export function freeGasByModel<Name extends string>(
  contents: GasContents,
  options: { readonly reference: ReferenceCondition<Name> },
): FreeGasByModel<Name> {
  requireKeys('contents', contents, {
    internalVolume: true,
    pressure: false,
    temperature: true,
    mixture: true,
    gaugePressure: false,
    ambientPressure: false,
    elasticExpansion: false,
  })
  requireKeys('options', options, { reference: true })
  const real = freeGas(contents, { ...options, gas: 'real' })
  const ideal = freeGas(contents, { ...options, gas: 'ideal' })
  return { real, ideal, overstatement: (ideal / real - 1) as Fraction }
}

/** Amount of gas per volume at a reference condition, mol/m³: what its water vapour leaves room for. */
export function amountPerFreeGas(
  options: GasModelOption & { readonly reference: ReferenceCondition; readonly mixture: Mixture },
): number {
  requireKeys('options.reference', options.reference, referenceKeys)
  const { pressure, temperature, waterVapourPressure } = options.reference
  requireWithin('options.reference.pressure', pressure, referencePressure)
  requireWithin('options.reference.waterVapourPressure', waterVapourPressure, vapourRange)
  if (!(waterVapourPressure < pressure)) throw allVapour(waterVapourPressure, pressure)
  const density = molarDensityBy(modelOf(options), options.mixture, pressure, temperature)
  return density * (1 - waterVapourPressure / pressure)
}

function allVapour(waterVapourPressure: number, pressure: number): LitrebarError {
  return new LitrebarError({
    code: 'range',
    argument: 'options.reference.waterVapourPressure',
    value: `${waterVapourPressure} Pa`,
    expected: `below the pressure of the reference condition, ${pressure} Pa`,
    hint: 'Name a reference condition, such as isoStandard.',
  })
}
