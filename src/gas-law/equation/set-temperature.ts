import { exponential, logarithm } from './exponential.ts'
import type { Equation } from './gerg2008.ts'

/**
 * Sets the temperature: one coefficient per slot. Nothing is done if it is the one already set.
 *
 * @param equation - changed in place
 * @param temperature - K
 */
export function setTemperature(equation: Equation, temperature: number): void {
  if (temperature === equation.temperature) return
  equation.temperature = temperature
  setPowers(equation, temperature)
  const { coefficient, slotStart, termCoefficient, termPlace, low, high } = equation
  const slotCount = coefficient.length
  let term = 0
  for (let slot = 0; slot < slotCount; slot++) {
    const end = slotStart[slot + 1] as number
    let sum = 0
    for (; term < end; term++) {
      const place = termPlace[term] as number
      sum += (termCoefficient[term] as number) * ((low[place & 15] as number) * (high[place >> 4] as number))
    }
    coefficient[slot] = sum
  }
}

/**
 * Sets the temperature, and the derivatives by it along with it: for states of which more is asked than the density.
 *
 * @param equation - changed in place
 * @param temperature - K
 */
export function setTemperatureAndDerivatives(equation: Equation, temperature: number): void {
  if (temperature === equation.temperatureOfDerivatives) {
    setTemperature(equation, temperature)
    return
  }
  if (temperature !== equation.temperature) setPowers(equation, temperature)
  equation.temperature = temperature
  equation.temperatureOfDerivatives = temperature
  const { coefficient, coefficientByTau, coefficientByTauTwice, slotStart } = equation
  const { termCoefficient, termExponent, termPlace, termPower, low, high } = equation
  const slotCount = coefficient.length
  let term = 0
  for (let slot = 0; slot < slotCount; slot++) {
    const end = slotStart[slot + 1] as number
    let sum = 0
    let byTau = 0
    let byTauTwice = 0
    for (; term < end; term++) {
      const place = termPlace[term] as number
      const t = termExponent[term] as number
      const power = (low[place & 15] as number) * (high[place >> 4] as number)
      termPower[term] = power
      const product = (termCoefficient[term] as number) * power
      const productByTau = t * product
      sum += product
      byTau += productByTau
      byTauTwice += t * productByTau
    }
    coefficient[slot] = sum
    coefficientByTau[slot] = byTau
    coefficientByTauTwice[slot] = byTauTwice
  }
}

function setPowers({ reducingTemperature, low, high, oddExponents }: Equation, temperature: number): void {
  const tau = reducingTemperature / temperature
  setAscending(low, Math.sqrt(Math.sqrt(Math.sqrt(tau))))
  setAscending(high, tau * tau)
  if (oddExponents.length === 0) return
  const logTau = logarithm(tau)
  for (let k = 0; k < oddExponents.length; k++) high[16 + k] = exponential((oddExponents[k] as number) * logTau)
}

/** The powers 0 to 15 of a number, by the shortest chains. */
function setAscending(powers: Float64Array, x: number): void {
  const x2 = x * x
  const x3 = x2 * x
  const x4 = x2 * x2
  const x5 = x4 * x
  const x6 = x3 * x3
  const x7 = x4 * x3
  const x8 = x4 * x4
  powers[0] = 1
  powers[1] = x
  powers[2] = x2
  powers[3] = x3
  powers[4] = x4
  powers[5] = x5
  powers[6] = x6
  powers[7] = x7
  powers[8] = x8
  powers[9] = x8 * x
  powers[10] = x8 * x2
  powers[11] = x8 * x3
  powers[12] = x8 * x4
  powers[13] = x8 * x5
  powers[14] = x8 * x6
  powers[15] = x8 * x7
}
