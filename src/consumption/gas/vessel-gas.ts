import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import {
  amountOfGas,
  type CompiledMixture,
  compiledMolarDensity,
  type GasContents,
  type GasModelOption,
  type Mixture,
  molarDensityBy,
} from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  type InternalVolume,
  litre,
  type Mass,
  type PressureVolume,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'

const volumeRange: Accepted = { above: 0, atMost: 100_000, unit: litre, hint: 'Give the volume inside the vessel.' }

/** A cylinder without a pressure yet: what gas at some pressure in it amounts to. */
export interface CylinderGas {
  readonly internalVolume: InternalVolume
  /** Of the gas inside. */
  readonly temperature: Temperature
  readonly mixture: Mixture
}

/** An amount of gas, in the measures that the trade and the laboratory use. */
export interface GasQuantity {
  readonly amount: Amount
  readonly mass: Mass
  /**
   * Pressure times volume at the pressure where the gas is breathed: litres breathed times ambient pressure.
   * An ideal gas takes as many bar·litres from the cylinder; a real gas does not.
   */
  readonly pressureVolume: PressureVolume
}

/** How gas amounts are computed: by the equation of state, by the ideal law, or from a compiled table of the former. */
export interface GasOptions extends GasModelOption {
  /**
   * A compiled mixture, for loops over many states: it stands for the equation of state within its box and its error.
   * Every cylinder it is used for must hold that same mixture.
   */
  readonly compiled?: CompiledMixture
}

/** Molar density, mol/m³, as asked for. */
export function densityOf(
  { gas = 'real', compiled }: GasOptions,
  mixture: Mixture,
  pressure: number,
  temperature: Temperature,
): number {
  if (compiled === undefined || gas === 'ideal') {
    return molarDensityBy(gas, mixture, pressure as AbsolutePressure, temperature)
  }
  requireCompiledFrom(mixture, compiled)
  return compiledMolarDensity(compiled, pressure as AbsolutePressure, temperature)
}

/** Refuses a table that was compiled from another mixture. */
export function requireCompiledFrom(mixture: Mixture, compiled: CompiledMixture): void {
  if (compiled.mixture === mixture) return
  throw new LitrebarError({
    code: 'input',
    argument: 'options.compiled',
    value: 'compiled from another mixture',
    expected: 'a table of the mixture in the cylinder',
    hint: 'Compile the very mixture object that the cylinder holds.',
  })
}

/** Amount of gas in a vessel, mol. */
export function amountIn(contents: GasContents, reckoning: GasOptions): number {
  if (reckoning.compiled === undefined || Object(contents) !== contents)
    return amountOfGas(contents, { gas: reckoning.gas ?? 'real' })
  const pressure = pressureOf(contents)
  requireWithin('contents.internalVolume', contents.internalVolume, volumeRange)
  return volumeAt(contents, pressure) * densityOf(reckoning, contents.mixture, pressure, contents.temperature)
}

/** Internal volume at a pressure, stretched where the elastic expansion is stated. */
export function volumeAt(contents: GasContents, pressure: number): number {
  if (contents.gaugePressure === undefined || contents.elasticExpansion === undefined) return contents.internalVolume
  const { internalVolume, ambientPressure, elasticExpansion } = contents
  return internalVolume + (elasticExpansion.volume / elasticExpansion.at) * (pressure - ambientPressure)
}

/** Absolute pressure inside a vessel, however it was stated. */
export function pressureOf(contents: GasContents): AbsolutePressure {
  return contents.gaugePressure === undefined
    ? contents.pressure
    : ((contents.gaugePressure + contents.ambientPressure) as AbsolutePressure)
}

/** The same vessel at another absolute pressure. */
export function atPressure(contents: GasContents, pressure: AbsolutePressure): GasContents {
  if (contents.gaugePressure === undefined) return { ...contents, pressure }
  return { ...contents, gaugePressure: (pressure - contents.ambientPressure) as typeof contents.gaugePressure }
}

/** A pressure in words, for an error. */
export function inBar(pascals: number): string {
  return `${String(Number((pascals / bar.factor).toPrecision(6)))} bar`
}

const modelWords = ['real', 'ideal'] as const
const gasKeys = { gas: false, compiled: false } as const

/** Refuses options that no function of this room reads, and a model of gas that there is none of. */
export function requireGasOptions(options: GasOptions, others: Readonly<Record<string, boolean>> = {}): void {
  requireKeys('options', options, { ...gasKeys, ...others })
  if (options.gas !== undefined) requireWord('options.gas', options.gas, modelWords)
}
