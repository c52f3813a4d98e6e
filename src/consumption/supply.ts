import { LitrebarError } from '../errors/index.ts'
import {
  amountOfGas,
  type GasContents,
  type GasModel,
  type GasModelOption,
  gasConstant,
  type Mixture,
  molarDensityBy,
  molarMass,
  pressureAt,
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
const keptPressure: Accepted = { atLeast: 0, atMost: 700, unit: bar, hint: 'Give an absolute pressure.' }

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

/**
 * An amount of gas in all measures.
 *
 * @param amount - mol
 * @param mixture - the gas
 * @param breathedAt - temperature and pressure where it is breathed
 * @param gas - how density is reckoned there
 */
export function gasQuantity(
  amount: number,
  mixture: Mixture,
  breathedAt: { readonly pressure: AbsolutePressure; readonly temperature: Temperature },
  gas: GasModel,
): GasQuantity {
  const { pressure, temperature } = breathedAt
  return {
    amount: amount as Amount,
    mass: (amount * molarMass(mixture)) as Mass,
    pressureVolume: ((amount / molarDensityBy(gas, mixture, pressure, temperature)) * pressure) as PressureVolume,
  }
}

/** Molar density of the gas as it is breathed, mol/m³. */
export function breathedDensity(gas: GasModel, mixture: Mixture, pressure: number, temperature: Temperature): number {
  return molarDensityBy(gas, mixture, pressure as AbsolutePressure, temperature)
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
 * @param options - gas model
 * @returns amount, mol
 * @throws LitrebarError `range` if the vessel holds less than that: says by how much
 */
export function amountAbove(
  argument: string,
  contents: GasContents,
  kept: AbsolutePressure,
  options: GasModelOption,
): number {
  requireWithin(argument, kept, keptPressure)
  const inside = pressureOf(contents)
  const amount = amountOfGas(contents, options)
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
  return amount - amountOfGas(atPressure(contents, kept), options)
}

// A vessel that stretches by half a per cent between empty and full gains two digits a step.
const mostSteps = 30
const lastChange = 1e-13

/**
 * Pressure at which a vessel holds an amount of gas.
 *
 * @param amount - mol, above 0
 * @param contents - vessel, mixture and temperature; its pressure plays no part
 * @param options - gas model
 * @returns absolute pressure, Pa
 * @throws LitrebarError `outside-validity` beyond the range of the equation of state; `not-converged`
 */
export function pressureHolding(amount: number, contents: GasContents, options: GasModelOption): AbsolutePressure {
  const { gas = 'real' } = options
  const { mixture, temperature } = contents
  let pressure = pressureAtDensity(gas, mixture, amount / contents.internalVolume, temperature)
  if (contents.gaugePressure === undefined || contents.elasticExpansion === undefined)
    return pressure as AbsolutePressure
  const { internalVolume, ambientPressure, elasticExpansion } = contents
  const stretch = elasticExpansion.volume / elasticExpansion.at
  for (let step = 0; step < mostSteps; step++) {
    const volume = internalVolume + stretch * (pressure - ambientPressure)
    const next = pressureAtDensity(gas, mixture, amount / volume, temperature)
    if (Math.abs(next - pressure) <= lastChange * next) return next as AbsolutePressure
    pressure = next
  }
  throw new LitrebarError({
    code: 'not-converged',
    argument: 'contents.elasticExpansion',
    value: `${String(elasticExpansion.volume)} m³ at ${String(elasticExpansion.at)} Pa`,
    expected: 'an expansion that is small beside the internal volume',
    hint: 'Check the unit of the expansion.',
  })
}

function pressureAtDensity(gas: GasModel, mixture: Mixture, density: number, temperature: Temperature): number {
  if (gas === 'ideal') return density * gasConstant * temperature
  return pressureAt(mixture, { molarDensity: density as MolarDensity, temperature })
}

/** A pressure in words, for an error. */
export function inBar(pascals: number): string {
  return `${String(Number((pascals / bar.factor).toPrecision(6)))} bar`
}

/** A product of pressure and volume in words, for an error. */
export function inBarLitres(pascalCubicMetres: number): string {
  return `${String(Number((pascalCubicMetres / barLitre.factor).toPrecision(6)))} bar·L`
}
