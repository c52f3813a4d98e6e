import { exponential, logarithm } from './exponential.ts'

/**
 * Vapour pressure over water from 273.16 K up to its critical temperature, over ice below.
 *
 * @param temperature - K
 * @returns Pa
 * @source iapws-sr1-86, equation 1; iapws-r14-08, equation 6
 */
export function waterVapourPressure(temperature: number): number {
  if (temperature < 273.16) {
    const theta = temperature / 273.16
    const log = logarithm(theta)
    const sum =
      -21.2144006 * exponential(0.00333333333 * log) +
      27.3203819 * exponential(1.20666667 * log) -
      6.1059813 * exponential(1.70333333 * log)
    return 611.657 * exponential(Math.max(sum / theta, -39))
  }
  const theta = Math.max(1 - temperature / 647.096, 0)
  const root = Math.sqrt(theta)
  const cube = theta * theta * theta
  const sum =
    theta * (-7.85951783 + 1.84408259 * root + theta * theta * (-11.7866497 + 22.6807411 * root - 15.9618719 * theta)) +
    1.80122502 * cube * cube * theta * root
  return 22.064e6 * exponential((647.096 / temperature) * sum)
}
