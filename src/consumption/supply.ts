import { LitrebarError } from '../errors/index.ts'
import {
  amountOfGas,
  type CompiledMixture,
  compiledMolarDensity,
  type GasContents,
  type GasModelOption,
  gerg2008GasConstant,
  type Mixture,
  molarDensityBy,
  pressureAtDensity,
} from '../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  barLitre,
  type InternalVolume,
  type Mass,
  type MolarDensity,
  type PressureVolume,
  requireWithin,
  type Temperature,
} from '../units/index.ts'

// The limits are ours: they catch a wrong unit.
const retainedPressure: Accepted = { atLeast: 0, atMost: 700, unit: bar, hint: 'Give an absolute pressure.' }

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
   * From a cylinder an ideal gas takes as many bar·litres; a real one other ones.
   */
  readonly pressureVolume: PressureVolume
}

/** How gas is reckoned: by the equation of state, by the ideal law, or out of a table of the former. */
export interface GasOptions extends GasModelOption {
  /**
   * A compiled mixture, for loops over many states: it stands for the equation of state within its box and its error.
   * Everything reckoned with it must hold that same mixture.
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

function requireCompiledFrom(mixture: Mixture, compiled: CompiledMixture): void {
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
  if (reckoning.compiled === undefined) return amountOfGas(contents, reckoning)
  const pressure = pressureOf(contents)
  return volumeAt(contents, pressure) * densityOf(reckoning, contents.mixture, pressure, contents.temperature)
}

function volumeAt(contents: GasContents, pressure: number): number {
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

/**
 * Amount of gas in a vessel above a pressure that shall be left in it.
 *
 * @param argument - path of the pressure, for the error
 * @param contents - the vessel as it is
 * @param kept - absolute pressure that is left, at the temperature of the contents
 * @param reckoning - how gas is reckoned
 * @returns amount, mol
 * @throws LitrebarError `range` if the vessel holds less than that: says by how much
 */
export function amountAbove(
  argument: string,
  contents: GasContents,
  kept: AbsolutePressure,
  reckoning: GasOptions,
): number {
  requireWithin(argument, kept, retainedPressure)
  const inside = pressureOf(contents)
  const amount = amountIn(contents, reckoning)
  if (kept === 0) return amount
  if (kept > inside) {
    throw new LitrebarError({
      code: 'range',
      argument,
      value: inBar(kept),
      expected: `at most the ${inBar(inside)} in the cylinder`,
      hint: `There are ${inBar(kept - inside)} too few: fill the cylinder, or keep less.`,
    })
  }
  return amount - amountIn(atPressure(contents, kept), reckoning)
}

// A vessel that stretches by half a per cent between empty and full gains two digits a step, a secant on a table more.
const mostSteps = 30
const stretchChange = 1e-13

/**
 * Pressure at which a vessel holds an amount of gas.
 *
 * @param amount - mol, above 0
 * @param contents - vessel, mixture and temperature; its pressure plays no part
 * @param reckoning - how gas is reckoned
 * @returns absolute pressure, Pa
 * @throws LitrebarError `outside-validity` beyond the range of the equation of state or the table; `not-converged`
 */
export function pressureHolding(amount: number, contents: GasContents, reckoning: GasOptions): AbsolutePressure {
  let pressure = pressureOfDensity(amount / contents.internalVolume, contents, reckoning)
  if (contents.gaugePressure === undefined || contents.elasticExpansion === undefined) return pressure
  for (let step = 0; step < mostSteps; step++) {
    const next = pressureOfDensity(amount / volumeAt(contents, pressure), contents, reckoning)
    if (Math.abs(next - pressure) <= stretchChange * next) return next
    pressure = next
  }
  throw notConverged('contents.elasticExpansion', 'an expansion that is small beside the internal volume')
}

function pressureOfDensity(
  density: number,
  { mixture, temperature }: Pick<GasContents, 'mixture' | 'temperature'>,
  reckoning: GasOptions,
): AbsolutePressure {
  const { gas = 'real', compiled } = reckoning
  const ideal = density * gerg2008GasConstant * temperature
  if (gas === 'ideal') return ideal as AbsolutePressure
  if (compiled === undefined) return pressureAtDensity(mixture, { molarDensity: density as MolarDensity, temperature })
  requireCompiledFrom(mixture, compiled)
  return pressureFromTable(density, compiled, temperature, ideal)
}

/** Secant on the density of the table, which is nearly a straight line of pressure. */
function pressureFromTable(
  density: number,
  compiled: CompiledMixture,
  temperature: Temperature,
  ideal: number,
): AbsolutePressure {
  const { tolerance, pressure } = compiled
  const low = pressure[0]
  const high = pressure[1]
  const first = Math.min(Math.max(ideal, low), high)
  let lastMiss = compiledMolarDensity(compiled, first as AbsolutePressure, temperature) - density
  // at the edge of the box there is no second place to look at
  if (first === high && lastMiss < 0) throw outsideTable(compiled)
  if (first === low && lastMiss > 0) throw outsideTable(compiled)
  let next = Math.min(Math.max((first * density) / (density + lastMiss), low), high)
  let lastChange = next - first
  for (let step = 0; step < mostSteps; step++) {
    const miss = compiledMolarDensity(compiled, next as AbsolutePressure, temperature) - density
    const change = miss === lastMiss ? 0 : (-miss * lastChange) / (miss - lastMiss)
    lastMiss = miss
    next += change
    // what a step leaves is below the product of the last two, relative to the pressure: less than the table is off by
    if (Math.abs(change * lastChange) <= tolerance * next * next) {
      if (next >= low * (1 - tolerance) && next <= high * (1 + tolerance)) return next as AbsolutePressure
      throw outsideTable(compiled)
    }
    lastChange = change
  }
  throw notConverged('options.compiled', 'a table over pressures that include the result')
}

function outsideTable({ pressure: [low, high] }: CompiledMixture): LitrebarError {
  return new LitrebarError({
    code: 'outside-validity',
    argument: 'options.compiled',
    value: `a table from ${inBar(low)} to ${inBar(high)}`,
    expected: 'a table over pressures that include the result',
    hint: 'Compile a wider box, or leave the table out.',
  })
}

function notConverged(argument: string, expected: string): LitrebarError {
  return new LitrebarError({
    code: 'not-converged',
    argument,
    value: `a pressure that does not settle in ${mostSteps} steps`,
    expected,
    hint: 'Check the unit of the input.',
  })
}

/** A pressure in words, for an error. */
export function inBar(pascals: number): string {
  return `${String(Number((pascals / bar.factor).toPrecision(6)))} bar`
}

/** A product of pressure and volume in words, for an error. */
export function inBarLitres(pascalCubicMetres: number): string {
  return `${String(Number((pascalCubicMetres / barLitre.factor).toPrecision(6)))} bar·L`
}
