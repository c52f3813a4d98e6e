import { requireKeys } from '../../errors/index.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { toAbsolute } from '../../units/convert.ts'
import { bar } from '../../units/pressure.ts'
import type {
  AbsolutePressure,
  Amount,
  GaugePressure,
  InternalVolume,
  Mass,
  Temperature,
  Volume,
} from '../../units/quantity.ts'
import { celsius } from '../../units/temperature.ts'
import { litre } from '../../units/volume.ts'
import { type Mixture, molarMass, requireMixture } from '../mixture/mixture.ts'
import { type GasModel, modelOf, molarDensityBy } from '../state/gas-model.ts'

/** Gas in a rigid vessel, its pressure absolute. */
export interface ContentsByAbsolutePressure {
  readonly internalVolume: InternalVolume
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
  readonly mixture: Mixture
  readonly gaugePressure?: never
}

/** Gas in a rigid vessel, its pressure read from a gauge. */
export interface ContentsByGaugePressure {
  readonly internalVolume: InternalVolume
  readonly gaugePressure: GaugePressure
  /** Pressure around the gauge, absolute. */
  readonly ambientPressure: AbsolutePressure
  readonly temperature: Temperature
  readonly mixture: Mixture
  readonly pressure?: never
  /** Elastic expansion of the vessel, where it shall be counted; left out, the vessel is rigid. */
  readonly elasticExpansion?: ElasticExpansion
}

/** How much a vessel grows under pressure, in proportion: the elastic expansion of a pressure test. */
export interface ElasticExpansion {
  readonly volume: Volume
  /** The gauge pressure at which the volume was measured. */
  readonly at: GaugePressure
}

/** Gas in a vessel: what there is to be counted. */
export type GasContents = ContentsByAbsolutePressure | ContentsByGaugePressure

/** How gas in a vessel is counted. */
export interface GasModelOption {
  /** Real unless `ideal` is asked for. */
  readonly gas?: GasModel
}

/** What is accepted of contents, also by the column form. */
export const acceptedContents = {
  internalVolume: {
    above: 0,
    atMost: 100_000,
    unit: litre,
    hint: 'Give the volume inside the vessel, not the free gas in it.',
  },
  pressure: { above: 0, atMost: 700, unit: bar, hint: 'Add the ambient pressure to a gauge pressure.' },
  temperature: { atLeast: -50, atMost: 100, unit: celsius, hint: 'Check the temperature scale.' },
} as const satisfies Record<string, Accepted>

const expansion: Accepted = { atLeast: 0, atMost: 1000, unit: litre, hint: 'Give the elastic part of the expansion.' }
const testPressure: Accepted = { above: 0, atMost: 2000, unit: bar, hint: 'Give the pressure of the test.' }

/**
 * Amount of gas in a vessel.
 *
 * @param contents - internal volume, m³, above 0 and at most 100 000 L; pressure, absolute, Pa, above 0 and at most 700 bar, or
 *   gauge pressure with the ambient pressure; temperature of the gas, K, -50 to 100 °C; mixture; elastic expansion if it counts
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns amount of substance, mol
 * @throws LitrebarError `range`, naming the field, if one is not finite or out of range; `mixture`; as `molarDensity`
 * @source gerg-2008, density
 * @example
 * const contents = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   pressure: absolute(200, bar),
 *   temperature: temperatureOf(15, celsius),
 *   mixture: dryAir,
 * }
 * inUnit(amountOfGas(contents), mole).toFixed(1) // => '98.0'
 */
export function amountOfGas(contents: GasContents, options: GasModelOption = {}): Amount {
  requireKeys('contents', contents, {
    internalVolume: true,
    pressure: false,
    temperature: true,
    mixture: true,
    gaugePressure: false,
    ambientPressure: false,
    elasticExpansion: false,
  })
  requireKeys('options', options, { gas: false })
  const { volume, pressure } = filling(contents)
  return (volume * molarDensityBy(modelOf(options), contents.mixture, pressure, contents.temperature)) as Amount
}

/**
 * Mass of gas in a vessel: by how much it is heavier than evacuated.
 *
 * @param contents - as for `amountOfGas`
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns mass, kg
 * @throws LitrebarError as `amountOfGas`
 * @source gerg-2008, density and molar masses
 * @example
 * const contents = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   pressure: absolute(200, bar),
 *   temperature: temperatureOf(15, celsius),
 *   mixture: dryAir,
 * }
 * inUnit(massOfGas(contents), kilogram).toFixed(2) // => '2.84'
 */
export function massOfGas(contents: GasContents, options: GasModelOption = {}): Mass {
  requireKeys('contents', contents, {
    internalVolume: true,
    pressure: false,
    temperature: true,
    mixture: true,
    gaugePressure: false,
    ambientPressure: false,
    elasticExpansion: false,
  })
  requireKeys('options', options, { gas: false })
  return (amountOfGas(contents, options) * molarMass(contents.mixture)) as Mass
}

/** Checked contents as the volume that the gas fills and its absolute pressure. */
function filling(contents: GasContents): { readonly volume: number; readonly pressure: AbsolutePressure } {
  requireWithin('contents.internalVolume', contents.internalVolume, acceptedContents.internalVolume)
  requireWithin('contents.temperature', contents.temperature, acceptedContents.temperature)
  requireMixture('contents.mixture', contents.mixture)
  if (contents.gaugePressure === undefined) {
    requireWithin('contents.pressure', contents.pressure, acceptedContents.pressure)
    return { volume: contents.internalVolume, pressure: contents.pressure }
  }
  const { gaugePressure, ambientPressure, elasticExpansion } = contents
  requireWithin('contents.ambientPressure', ambientPressure, acceptedContents.pressure)
  const inside = toAbsolute(gaugePressure, ambientPressure)
  requireWithin('contents.gaugePressure + contents.ambientPressure', inside, acceptedContents.pressure)
  let volume: number = contents.internalVolume
  if (elasticExpansion !== undefined) {
    requireWithin('contents.elasticExpansion.volume', elasticExpansion.volume, expansion)
    requireWithin('contents.elasticExpansion.at', elasticExpansion.at, testPressure)
    volume += (elasticExpansion.volume / elasticExpansion.at) * gaugePressure
  }
  return { volume, pressure: inside }
}
