import { LitrebarError, requireKeys } from '../../errors/index.ts'
import {
  type CompiledMixture,
  compiledMolarDensity,
  type GasContents,
  gerg2008GasConstant,
  pressureAtDensity,
} from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  celsius,
  litre,
  type MolarDensity,
  mole,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import {
  type CylinderGas,
  type GasOptions,
  inBar,
  requireCompiledFrom,
  requireGasOptions,
  volumeAt,
} from './vessel-gas.ts'

const amountRange: Accepted = { above: 0, atMost: 1e7, unit: mole, hint: 'Give the amount of gas in the vessel.' }
const gasRange: Accepted = { atLeast: -50, atMost: 100, unit: celsius, hint: 'Give the temperature of the gas.' }
const volumeRange: Accepted = { above: 0, atMost: 100_000, unit: litre, hint: 'Give the internal volume.' }

/**
 * Pressure in a vessel from the amount of gas in it: the inverse of `amountOfGas`.
 *
 * @param amount - mol, above 0
 * @param vessel - internal volume, m³, above 0 and at most 100 000 L; temperature of the gas, K; mixture
 * @param options - `gas: 'ideal'` to leave out compressibility; `compiled`: a table of the mixture
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range`; `outside-validity` beyond the range of the equation of state or the table
 * @source gerg-2008, density
 * @example
 * const vessel = { internalVolume: internalVolumeOf(12, litre), temperature: temperatureOf(15, celsius), mixture: dryAir }
 * const amount = amountOfGas({ ...vessel, pressure: absolute(200, bar) })
 * inUnit(pressureOfAmount(amount, vessel), bar).toFixed(6) // => '200.000000'
 */
export function pressureOfAmount(amount: Amount, vessel: CylinderGas, options: GasOptions = {}): AbsolutePressure {
  requireKeys('vessel', vessel, { internalVolume: true, temperature: true, mixture: true })
  requireGasOptions(options)
  requireWithin('amount', amount, amountRange)
  requireWithin('vessel.internalVolume', vessel.internalVolume, volumeRange)
  requireWithin('vessel.temperature', vessel.temperature, gasRange)
  const { internalVolume, temperature, mixture } = vessel
  return pressureHolding(amount, { internalVolume, temperature, mixture, pressure: 1 as AbsolutePressure }, options)
}

// A vessel that stretches by half a per cent between empty and full gains two digits a step, a secant on a table more.
const mostSteps = 30
const stretchChange = 1e-13

/**
 * Pressure at which a vessel holds an amount of gas.
 *
 * @param amount - mol, above 0
 * @param contents - vessel, mixture and temperature; its pressure plays no part
 * @param reckoning - how gas amounts are computed
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
