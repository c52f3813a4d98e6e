import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import { type BreathedGas, molarDensity, molarMass, viscosity } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import { coverageFactor, effectiveDegreesOfFreedom } from '../../uncertainty/index.ts'
import { type Fit, leastSquares } from '../../uncertainty/least-squares.ts'
import {
  type Accepted,
  type Density,
  type EnergyPerVolume,
  gramPerLitre,
  joulePerLitre,
  one,
  requireWithin,
  type Viscosity,
} from '../../units/index.ts'
import type { LoopFinding } from '../loop/loop-finding.ts'

const density: Accepted = {
  above: 0,
  atMost: 50,
  unit: gramPerLitre,
  hint: 'State the density of the gas at its depth.',
}
const share: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Give three tenths as 0.3.' }
const anyWork: Accepted = { unit: joulePerLitre, hint: 'State a measured work per litre.' }
const positiveWork: Accepted = { above: 0, unit: joulePerLitre, hint: 'State a standard uncertainty, or leave it out.' }

/**
 * Work of breathing per litre at another gas density, when a stated share of it does not depend on density: cracking, assist, laminar flow.
 * Not for a regulator near its flow limit, where intermediate pressure falls and the work rises faster.
 *
 * @param measured - work per litre, Pa, at a density, kg/m³, and the share from 0 to 1 that density leaves alone
 * @param atDensity - the other density, kg/m³, above 0 and at most 50 g/L
 * @returns work per litre, Pa
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * const measured = { workOfBreathingPerLitre: difference(1, joulePerLitre), density: measure(1.2, gramPerLitre), constantShare: 0.3 }
 * inUnit(workAtDensity(measured, measure(6, gramPerLitre)), joulePerLitre).toFixed(3) // => '3.800'
 */
export function workAtDensity(
  measured: {
    readonly workOfBreathingPerLitre: EnergyPerVolume
    readonly density: Density
    readonly constantShare: number
  },
  atDensity: Density,
): EnergyPerVolume {
  requireKeys('measured', measured, { workOfBreathingPerLitre: true, density: true, constantShare: true })
  const { workOfBreathingPerLitre: work, constantShare } = measured
  requireWithin('measured.workOfBreathingPerLitre', work, anyWork)
  requireWithin('measured.density', measured.density, density)
  requireWithin('measured.constantShare', constantShare, share)
  requireWithin('atDensity', atDensity, density)
  return (work * (constantShare + (1 - constantShare) * (atDensity / measured.density))) as EnergyPerVolume
}

/** Work per litre measured with a gas at a depth. */
export interface WorkInGas {
  readonly gas: BreathedGas
  readonly workOfBreathingPerLitre: EnergyPerVolume
  /** Standard uncertainty; used if every measurement states one. Otherwise the scatter about the fit stands in. */
  readonly standardUncertainty?: EnergyPerVolume
}

/** How a prediction is made. */
export interface PredictionOptions {
  /**
   * Share of the part that density leaves alone which is laminar, and so follows viscosity; the rest is cracking pressure and assist.
   * `unknown`: anything from 0 to 1, which widens the interval where the viscosity changes.
   */
  readonly laminarShare: number | 'unknown'
  /** Allows a density beyond twice the largest or below half the smallest that was measured. */
  readonly extrapolate?: boolean
}

/** Work per litre expected with another gas or at another depth. */
export interface WorkPrediction {
  readonly workOfBreathingPerLitre: EnergyPerVolume
  /** Of a measurement there. */
  readonly standardUncertainty: EnergyPerVolume
  /** Ends of the interval that a measurement there falls into with 95 %. */
  readonly low: EnergyPerVolume
  readonly high: EnergyPerVolume
  readonly degreesOfFreedom: number
  /** Standard uncertainties that make it up. */
  readonly parts: {
    readonly fit: EnergyPerVolume
    readonly scatter: EnergyPerVolume
    readonly laminarShare: EnergyPerVolume
  }
  /** What density leaves alone, and what grows with it, at the target. */
  readonly constantPart: EnergyPerVolume
  readonly densityPart: EnergyPerVolume
  readonly density: Density
  readonly viscosity: Viscosity
  readonly findings: readonly LoopFinding[]
  readonly cautions: readonly CautionId[]
}

/**
 * Work of breathing per litre predicted for another depth or mixture, from measurements at three or more densities: one part stays, or
 * follows viscosity, and one grows with density. Densities and viscosities by the real gas at the temperatures stated.
 *
 * Holds for one regulator at one ventilation and supply pressure, away from its flow limit: there the work rises faster than any fit.
 *
 * @param measurements - at least three, at densities that differ
 * @param target - mixture, pressure around the diver, temperature of the gas
 * @param options - share of the constant part that is laminar
 * @returns expected work with the interval of a measurement, its parts, findings
 * @throws LitrebarError `input` for fewer than three measurements or equal densities; `outside-validity` for a density beyond twice
 *   the range measured; `range`; as `viscosity`
 * @source litrebar-derivation
 * @example
 * const temperature = temperatureOf(20, celsius)
 * const at = (ambient: number, work: number) => ({ gas: { mixture: dryAir, pressure: absolute(ambient, bar), temperature }, workOfBreathingPerLitre: difference(work, joulePerLitre), standardUncertainty: difference(0.02, joulePerLitre) })
 * const target = { mixture: trimix({ oxygen: 0.18, helium: 0.45 }), pressure: absolute(7, bar), temperature }
 * const { workOfBreathingPerLitre, low, high } = predictedWork([at(1, 0.6), at(3, 1.02), at(5, 1.47)], target, { laminarShare: 'unknown' })
 * inUnit(workOfBreathingPerLitre, joulePerLitre).toFixed(2) // => '1.33'
 * const interval = [low, high].map((work) => inUnit(work, joulePerLitre).toFixed(2)) // => ['1.28', '1.39']
 */
export function predictedWork(
  measurements: readonly WorkInGas[],
  target: BreathedGas,
  options: PredictionOptions,
): WorkPrediction {
  requireMeasurements(measurements)
  requireBreathedGas('target', target)
  requireKeys('options', options, { laminarShare: true, extrapolate: false })
  requireWord('options.extrapolate', options.extrapolate ?? false, [true, false])
  const measured = measurements.map(({ gas }) => propertiesOf(gas))
  const aim = propertiesOf(target)
  const reach = reachOf(
    measured.map((one) => one.density),
    aim.density,
  )
  requireReach(reach, aim.density, options.extrapolate ?? false)
  const { laminarShare } = options
  if (laminarShare !== 'unknown') requireWithin('options.laminarShare', laminarShare, share)
  const at = (laminar: number): Prediction => predictionAt(measurements, measured, aim, laminar)
  const middle = at(laminarShare === 'unknown' ? 0.5 : laminarShare)
  // a rectangular distribution between the two ends
  const laminar = laminarShare === 'unknown' ? Math.abs(at(1).value - at(0).value) / Math.sqrt(12) : 0
  const combined = Math.hypot(middle.fit, middle.scatter, laminar)
  const ofFit = {
    standardUncertainty: Math.hypot(middle.fit, middle.scatter),
    degreesOfFreedom: middle.degreesOfFreedom,
  }
  const degreesOfFreedom = combined > 0 ? effectiveDegreesOfFreedom(combined, [ofFit]) : Infinity
  const half = coverageFactor({ probability: coverage, degreesOfFreedom, sides: 'two' }) * combined
  return {
    workOfBreathingPerLitre: middle.value as EnergyPerVolume,
    standardUncertainty: combined as EnergyPerVolume,
    low: (middle.value - half) as EnergyPerVolume,
    high: (middle.value + half) as EnergyPerVolume,
    degreesOfFreedom,
    parts: {
      fit: middle.fit as EnergyPerVolume,
      scatter: middle.scatter as EnergyPerVolume,
      laminarShare: laminar as EnergyPerVolume,
    },
    constantPart: middle.constantPart as EnergyPerVolume,
    densityPart: middle.densityPart as EnergyPerVolume,
    ...aim,
    findings: findingsOf(middle, reach, combined > 0 ? laminar / combined : 0),
    cautions: ['always', 'regulator'],
  }
}

// Two standard uncertainties of a normal distribution: the usual reading of "95 %".
const coverage = 0.9545

interface GasProperties {
  readonly density: Density
  readonly viscosity: Viscosity
}

function propertiesOf(gas: BreathedGas): GasProperties {
  const { mixture, pressure, temperature } = gas
  return {
    density: (molarDensity(mixture, pressure, temperature) * molarMass(mixture)) as Density,
    viscosity: viscosity(mixture, { pressure, temperature }),
  }
}

interface Prediction {
  readonly value: number
  readonly fit: number
  readonly scatter: number
  readonly degreesOfFreedom: number
  readonly constantPart: number
  readonly densityPart: number
}

function predictionAt(
  measurements: readonly WorkInGas[],
  measured: readonly GasProperties[],
  aim: GasProperties,
  laminarShare: number,
): Prediction {
  const usual = measured.reduce((sum, one) => sum + one.viscosity, 0) / measured.length
  const row = (gas: GasProperties): readonly [number, number] => [
    1 + laminarShare * (gas.viscosity / usual - 1),
    gas.density,
  ]
  const spreads = statedSpreads(measurements)
  const rows = measured.map((gas, index) => row(gas).map((entry) => entry / (spreads?.[index] ?? 1)))
  const works = measurements.map(({ workOfBreathingPerLitre: work }, index) => work / (spreads?.[index] ?? 1))
  const fit = leastSquares(rows, works, 'measurements')
  const [constant = 0, perDensity = 0] = fit.coefficients
  const [a, b] = row(aim)
  const unit = unitSpread(fit, spreads)
  return {
    value: constant * a + perDensity * b,
    fit: unit.spread * Math.sqrt(quadratic(fit.inverse, [a, b])),
    scatter: spreads === undefined ? unit.spread : unit.spread * Math.max(...spreads),
    degreesOfFreedom: unit.degreesOfFreedom,
    constantPart: constant * a,
    densityPart: perDensity * b,
  }
}

/** Stated uncertainties, where every measurement has one. */
function statedSpreads(measurements: readonly WorkInGas[]): readonly number[] | undefined {
  const stated = measurements.flatMap(({ standardUncertainty: u }) => (u === undefined ? [] : [u as number]))
  return stated.length === measurements.length ? stated : undefined
}

/** Spread of a value of unit weight: 1 for stated uncertainties, or more where the scatter denies them. */
function unitSpread(fit: Fit, spreads: readonly number[] | undefined): { spread: number; degreesOfFreedom: number } {
  if (spreads === undefined) return { spread: fit.scatter, degreesOfFreedom: fit.degreesOfFreedom }
  return { spread: Math.max(1, fit.scatter), degreesOfFreedom: Infinity }
}

function quadratic(matrix: readonly (readonly number[])[], vector: readonly number[]): number {
  return matrix.reduce(
    (sum, row, i) => sum + row.reduce((inner, entry, j) => inner + entry * (vector[j] ?? 0), 0) * (vector[i] ?? 0),
    0,
  )
}

/** Target density over the nearest measured one: 1 inside the range. */
function reachOf(densities: readonly number[], target: number): number {
  const largest = Math.max(...densities)
  const smallest = Math.min(...densities)
  return target > largest ? target / largest : target < smallest ? target / smallest : 1
}

function findingsOf(prediction: Prediction, reach: number, shareOfLaminar: number): readonly LoopFinding[] {
  const findings: LoopFinding[] = []
  if (reach !== 1) {
    findings.push({
      code: 'extrapolated',
      text: `The density is ${reach.toFixed(2)} times the ${reach > 1 ? 'largest' : 'smallest'} measured: the fit is stretched, and a regulator near its flow limit departs from it.`,
    })
  }
  if (prediction.constantPart < 0 || prediction.densityPart < 0) {
    findings.push({
      code: 'negative-part',
      text: 'A part of the fit is negative: the work does not follow density as the model has it, or an assist grows with depth.',
    })
  }
  if (shareOfLaminar > 0.5) {
    findings.push({
      code: 'laminar-share-unknown',
      text: 'Most of the interval comes from not knowing which part of the work is laminar and follows viscosity: fit the parts from several ventilations.',
    })
  }
  return findings
}

/** Refuses a gas with a key too many or too few. */
export function requireBreathedGas(path: string, gas: BreathedGas): void {
  requireKeys(path, gas, { mixture: true, pressure: true, temperature: true })
}

function requireMeasurements(measurements: readonly WorkInGas[]): void {
  const isList: boolean = Array.isArray(measurements)
  if (!isList || measurements.length < 3) {
    throw new LitrebarError({
      code: 'input',
      argument: 'measurements',
      value: isList ? `${measurements.length} measurements` : 'no list',
      expected: 'at least 3',
      hint: 'Two densities fix the line and leave nothing to judge it by: measure at a third.',
    })
  }
  measurements.forEach((one, index) => {
    requireKeys(`measurements[${index}]`, one, {
      gas: true,
      workOfBreathingPerLitre: true,
      standardUncertainty: false,
    })
    requireBreathedGas(`measurements[${index}].gas`, one.gas)
    const { workOfBreathingPerLitre, standardUncertainty } = one
    requireWithin(`measurements[${index}].workOfBreathingPerLitre`, workOfBreathingPerLitre, anyWork)
    if (standardUncertainty !== undefined) {
      requireWithin(`measurements[${index}].standardUncertainty`, standardUncertainty, positiveWork)
    }
  })
}

/** Refuses a density too far from the measured ones. */
export function requireReach(reach: number, target: number, extrapolate: boolean): void {
  if (extrapolate || (reach <= 2 && reach >= 0.5)) return
  throw new LitrebarError({
    code: 'outside-validity',
    argument: 'target',
    value: `${target.toPrecision(3)} g/L, ${reach.toFixed(2)} times the nearest measured density`,
    expected: 'within a factor of 2 of the densities measured',
    hint: 'Measure nearer to it, or set `extrapolate` and say so beside the result.',
  })
}
