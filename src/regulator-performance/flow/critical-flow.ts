import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { gasState, gerg2008GasConstant, type Mixture, molarMass, temperatureAtEntropy } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Fraction,
  one,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'

/** The throat of a nozzle that flows as fast as it can. */
export interface CriticalFlow {
  /** Mass flow = factor × area × pressure / √(R T / M). */
  readonly criticalFlowFactor: Fraction
  /** Throat over upstream pressure: below it the flow does not feel what is downstream. */
  readonly criticalPressureRatio: Fraction
}

const heatCapacityRatioRange: Accepted = {
  above: 1,
  atMost: 5 / 3 + 1e-9,
  unit: one,
  hint: '1.4 for air, 5/3 for helium and argon.',
}

/**
 * Critical flow of an ideal gas.
 *
 * @param heatCapacityRatio - above 1 and at most 5/3
 * @returns factor and pressure ratio
 * @throws LitrebarError `range` for a ratio out of range
 * @source iso-6358, ideal-gas forms (memory); litrebar-derivation
 * @example
 * criticalFlow(1.4 as Fraction).criticalPressureRatio.toFixed(4) // => '0.5283'
 */
export function criticalFlow(heatCapacityRatio: Fraction): CriticalFlow {
  requireWithin('heatCapacityRatio', heatCapacityRatio, heatCapacityRatioRange)
  const k = heatCapacityRatio
  const half = 2 / (k + 1)
  return {
    criticalFlowFactor: (Math.sqrt(k) * half ** ((k + 1) / (2 * (k - 1)))) as Fraction,
    criticalPressureRatio: (half ** (k / (k - 1))) as Fraction,
  }
}

// The golden section needs no derivative, and the mass flux has one maximum along an isentrope.
const golden = (Math.sqrt(5) - 1) / 2
const fineness = 1e-7
const mostSteps = 60
// 0.36 for oxygen of 500 bar at −10 °C, 0.53 for air at 1 bar, 0.55 for carbon dioxide
const ratios = { lowest: 0.2, highest: 0.75 } as const

/**
 * Critical flow of the real gas: the largest mass flux along the isentrope from the upstream state. At cylinder pressure the ideal formula is low
 * for air, 7 per cent at 200 bar, and high for helium.
 *
 * @param mixture - the gas
 * @param upstream - pressure, absolute, Pa, and temperature, K, before the nozzle
 * @returns factor and pressure ratio
 * @throws LitrebarError as `gasState`; `outside-validity` where the gas would condense in the throat; `not-converged` where no largest flow is found
 * @source gerg-2008; litrebar-derivation, isentropic flow to the largest mass flux
 * @example
 * const upstream = { pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) }
 * realCriticalFlow(dryAir, upstream).criticalFlowFactor.toFixed(3) // => '0.733'
 */
export function realCriticalFlow(
  mixture: Mixture,
  upstream: { readonly pressure: AbsolutePressure; readonly temperature: Temperature },
): CriticalFlow {
  requireKeys('upstream', upstream, { pressure: true, temperature: true })
  const mass = molarMass(mixture)
  const start = gasState(mixture, { pressure: upstream.pressure, temperature: upstream.temperature })
  const massFlux = (ratio: number): number => {
    const pressure = (upstream.pressure * ratio) as AbsolutePressure
    const temperature = temperatureAtEntropy(mixture, { molarEntropy: start.molarEntropy, pressure })
    const { density, molarEnthalpy } = gasState(mixture, { pressure, temperature })
    return density * Math.sqrt((2 * Math.max(0, start.molarEnthalpy - molarEnthalpy)) / mass)
  }
  const ratio = maximumWithin(massFlux, ratios.lowest, ratios.highest)
  const scale = upstream.pressure / Math.sqrt((gerg2008GasConstant * upstream.temperature) / mass)
  return {
    criticalFlowFactor: (massFlux(ratio) / scale) as Fraction,
    criticalPressureRatio: ratio as Fraction,
  }
}

/** Where a function with one maximum has it. */
function maximumWithin(f: (x: number) => number, from: number, to: number): number {
  let low = from
  let high = to
  let left = high - golden * (high - low)
  let right = low + golden * (high - low)
  let atLeft = f(left)
  let atRight = f(right)
  for (let step = 0; step < mostSteps && high - low > fineness; step++) {
    if (atLeft > atRight) {
      high = right
      right = left
      atRight = atLeft
      left = high - golden * (high - low)
      atLeft = f(left)
    } else {
      low = left
      left = right
      atLeft = atRight
      right = low + golden * (high - low)
      atRight = f(right)
    }
  }
  if (low > from && high < to && high - low <= fineness) return (low + high) / 2
  throw new LitrebarError({
    code: 'not-converged',
    argument: 'upstream',
    value: `a flow that grows up to a pressure ratio of ${((low + high) / 2).toFixed(3)}`,
    expected: `a largest flow between ${from} and ${to}`,
    hint: 'The gas is too cold and dense for this model.',
  })
}
