import { expect, test } from 'vitest'
import { differentiate } from '../../../src/gas-law/equation/density-derivatives.ts'
import { reducedDensityAt } from '../../../src/gas-law/equation/density-solve.ts'
import { logFugacityCoefficients } from '../../../src/gas-law/equation/fugacity.ts'
import { equationFor } from '../../../src/gas-law/equation/gas-equation.ts'
import { type Equation, equationOf } from '../../../src/gas-law/equation/gerg2008.ts'
import { expand } from '../../../src/gas-law/equation/residual-part.ts'
import { setTemperature } from '../../../src/gas-law/equation/set-temperature.ts'
import { isGas } from '../../../src/gas-law/equation/single-phase.ts'
import { type Gas, gerg2008GasConstant, type Mixture, mixture } from '../../../src/gas-law/index.ts'

// The judgement of phases against brute force: over a whole row of compositions of a second phase, at its lightest and
// its densest root, is there one in which the gases would have lower chemical potentials?

let seed = 11
function random(): number {
  seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0
  return seed / 2 ** 32
}

/** ln(x φ) of each gas present. */
function potentials(equation: Equation, delta: number): Map<Gas, number> {
  expand(equation, delta)
  const logs = logFugacityCoefficients(equation)
  return new Map(
    equation.present.map((gas, k) => [gas, (logs[k] as number) + Math.log(equation.fractions[k] as number)]),
  )
}

/** The densest root, by stepping down from beyond all liquids; NaN if the isotherm never crosses the pressure. */
function densestRoot(equation: Equation, target: number): number {
  const excess = (delta: number): number => {
    differentiate(equation, delta)
    return delta * (1 + (equation.derivative[0] as number)) - target
  }
  let high = 3.6
  for (let low = 3.58; low > 0; low -= 0.02) {
    if (excess(low) < 0) {
      for (let step = 0; step < 50; step++) {
        const middle = 0.5 * (low + high)
        if (excess(middle) < 0) low = middle
        else high = middle
      }
      return low
    }
    high = low
  }
  return Number.NaN
}

/** The lowest Σ w (ln w φ - potential of the feed) over trial compositions of a pair of gases. */
function lowestDistance(
  pair: readonly [Gas, Gas],
  feed: Map<Gas, number>,
  pressure: number,
  temperature: number,
): number {
  let lowest = 0
  for (let step = 1; step < 40; step++) {
    const w = Math.sin((Math.PI * step) / 80) ** 2 // close to both ends, where liquids are
    const trial = equationOf(mixture({ [pair[0]]: w, [pair[1]]: 1 - w }, { normalise: true }))
    setTemperature(trial, temperature)
    const dense = densestRoot(trial, pressure / (gerg2008GasConstant * temperature * trial.reducingDensity))
    for (const root of [dense, reducedDensityAt(trial, pressure, temperature)]) {
      if (!(root > 0)) continue
      let distance = 0
      for (const [gas, potential] of potentials(trial, root)) {
        distance += (gas === pair[0] ? w : 1 - w) * (potential - (feed.get(gas) as number))
      }
      lowest = Math.min(lowest, distance)
    }
  }
  return lowest
}

test.each([
  ['carbonDioxide', 'nitrogen', 217, 304],
  ['carbonDioxide', 'oxygen', 217, 304],
  ['carbonDioxide', 'argon', 217, 304],
  ['carbonDioxide', 'helium', 217, 360],
  ['carbonDioxide', 'hydrogen', 217, 320],
  ['oxygen', 'nitrogen', 95, 155],
  ['argon', 'nitrogen', 95, 150],
  ['oxygen', 'helium', 95, 155],
] as const)('%s and %s: what is accepted is stable, what is refused is not', (first, second, coldest, hottest) => {
  const wrong: unknown[] = []
  let accepted = 0
  let refused = 0
  for (let k = 0; k < 60; k++) {
    const gas: Mixture = mixture(
      { [first]: 0.05 + 0.9 * random(), [second]: 0.05 + 0.9 * random() },
      { normalise: true },
    )
    const temperature = coldest + (hottest - coldest) * random()
    const pressure = (1 + 600 * random() ** 3) * 1e5
    const equation = equationFor(gas)
    const delta = reducedDensityAt(equation, pressure, temperature)
    if (!(delta > 0)) continue
    const isAccepted = isGas(equation, pressure, temperature, delta)
    setTemperature(equation, temperature)
    const distance = lowestDistance([first, second], potentials(equation, delta), pressure, temperature)
    if (isAccepted) accepted++
    else refused++
    // distances never exceed 0, that of the feed itself
    if (isAccepted ? distance < -1e-6 : distance === 0) wrong.push({ gas, temperature, pressure, isAccepted, distance })
  }
  expect(wrong).toEqual([])
  expect(accepted).toBeGreaterThan(5)
  expect(refused).toBeGreaterThan(5)
})
