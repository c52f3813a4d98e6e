import { requireKeys } from '../../errors/index.ts'
import {
  type GasModel,
  type GasModelOption,
  gases,
  type Mixture,
  mixture,
  modelUncertainty,
} from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import { type Inputs, normalDistribution, type Propagated, propagate } from '../../uncertainty/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Fraction,
  kelvin,
  type MoleFraction,
  type PressureDifference,
  percent,
  requireWithin,
  type Temperature,
  type TemperatureDifference,
} from '../../units/index.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'
import { type FilledStep, type FillStep, fillInSteps, type StepwiseFill } from './fill-in-steps.ts'

/** A fill in steps with the standard uncertainties of what was read. One left out is taken as none. */
export interface UncertainFill {
  readonly fill: StepwiseFill
  /** Of each reading of the pressure gauge, on its own. */
  readonly reading?: PressureDifference
  /** Of the scale of the gauge, as a fraction, the same for all its readings. */
  readonly scale?: Fraction
  /** Of the gas temperature at each reading, on its own. */
  readonly temperature?: TemperatureDifference
  /** Of the analyser, for the fractions of oxygen and helium in the cylinder at the start. */
  readonly analyser?: Fraction
}

/** How well the mixture of a fill is known before it is analysed. */
export interface BlendUncertainty {
  readonly oxygen: Propagated<MoleFraction>
  readonly helium: Propagated<MoleFraction>
  readonly cautions: readonly CautionId[]
}

const readingRange: Accepted = { atLeast: 0, atMost: 20, unit: bar, hint: 'Give one standard uncertainty.' }
const scaleRange: Accepted = { atLeast: 0, atMost: 10, unit: percent, hint: 'Give one standard uncertainty.' }
const temperatureRange: Accepted = { atLeast: 0, atMost: 30, unit: kelvin, hint: 'Give one standard uncertainty.' }
const analyserRange: Accepted = { atLeast: 0, atMost: 10, unit: percent, hint: 'Give one standard uncertainty.' }

/**
 * Uncertainty of the mixture that a fill in steps makes, to first order, from gauge, temperature, analyser and the equation of state
 * itself, with the share that each has in it. The equation counts by the class of what is inside at each reading: the same error for
 * the same class, and no part for the ideal gas. What it says of the plan is no analysis of the gas.
 *
 * @param uncertain - the fill; standard uncertainties of each reading, Pa, up to 20 bar; of the scale of the gauge, as a fraction,
 *   up to 10 %; of the gas temperature at each reading, K, up to 30 K; of the fractions at the start, up to 10 %
 * @param options - `gas: 'ideal'` to show the difference
 * @returns fractions of oxygen and helium with standard uncertainty and budget
 * @throws LitrebarError as `fillInSteps` and `propagate`; `range` for an uncertainty
 * @source gum-2008, 5.1.2; litrebar-derivation
 * @example
 * const fill = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   start: { mixture: dryAir, pressure: absolute(30, bar) },
 *   steps: [
 *     { mixture: pureGas('oxygen'), pressure: absolute(58, bar) },
 *     { mixture: dryAir, pressure: absolute(201, bar) },
 *   ],
 *   temperature: temperatureOf(20, celsius),
 * }
 * const { oxygen } = blendUncertainty({ fill, reading: difference(1, bar), temperature: difference(2, celsius) })
 * const shown = [oxygen.value, oxygen.standardUncertainty].map((x) => (100 * x).toFixed(1)) // => ['32.6', '0.6']
 */
export function blendUncertainty(uncertain: UncertainFill, options: GasModelOption = {}): BlendUncertainty {
  requireKeys('uncertain', uncertain, { fill: true, reading: false, scale: false, temperature: false, analyser: false })
  const gas = gasModelOf(options)
  const { reading = 0, scale = 0, temperature = 0, analyser = 0, fill } = uncertain
  requireWithin('reading', reading, readingRange)
  requireWithin('scale', scale, scaleRange)
  requireWithin('temperature', temperature, temperatureRange)
  requireWithin('analyser', analyser, analyserRange)
  const filled = fillInSteps(fill, options) // refuses what is no fill, by its own names
  const { start, steps } = fill
  const isEmpty = start.pressure === 0
  const equation = equationErrors(fill, filled, gas)
  const inputs: Inputs = {
    scale: normalDistribution(1, scale),
    ...equation.inputs,
    ...(isEmpty
      ? {}
      : {
          'start pressure': normalDistribution<number>(start.pressure, reading),
          'start temperature': normalDistribution<number>(fill.temperature, temperature),
          'start oxygen': normalDistribution<number>(start.mixture.oxygen, analyser),
          ...(start.mixture.helium > 0
            ? { 'start helium': normalDistribution<number>(start.mixture.helium, analyser) }
            : {}),
        }),
    ...Object.fromEntries(
      steps.flatMap((step, k) => [
        [`pressure of step ${k + 1}`, normalDistribution<number>(step.pressure, reading)],
        [`temperature of step ${k + 1}`, normalDistribution<number>(step.temperature ?? fill.temperature, temperature)],
      ]),
    ),
  }
  const made = (values: Readonly<Record<string, number>>): Mixture => {
    const read = (name: string): number => values[name] ?? Number.NaN
    const gauge = read('scale')
    const asRead: StepwiseFill = {
      ...fill,
      ...(isEmpty ? {} : startOf(fill, read, equation.startFactor(read))),
      steps: steps.map(
        (step, k): FillStep => ({
          ...step,
          pressure: (gauge * equation.stepFactor(k, read) * read(`pressure of step ${k + 1}`)) as AbsolutePressure,
          temperature: read(`temperature of step ${k + 1}`) as Temperature,
        }),
      ),
    }
    return fillInSteps(asRead, options).at(-1)?.mixture ?? start.mixture
  }
  return {
    oxygen: propagate((values) => made(values).oxygen, inputs),
    helium: propagate((values) => made(values).helium, inputs),
    cautions: ['analyse-mixture'],
  }
}

/** The start as a reading of it may have been: pressure, temperature, and fractions with the rest in proportion. */
function startOf(
  { start }: StepwiseFill,
  read: (name: string) => number,
  factor: number,
): Pick<StepwiseFill, 'start' | 'temperature'> {
  const oxygen = read('start oxygen')
  const helium = start.mixture.helium > 0 ? read('start helium') : 0
  const others = 1 - start.mixture.oxygen - start.mixture.helium
  // heliox and pure gases have no rest to give way
  const rest = others > 1e-9 ? (1 - oxygen - helium) / others : 0
  const fractions = Object.fromEntries(gases.map((gas) => [gas, start.mixture[gas] * rest]))
  return {
    start: {
      mixture: mixture({ ...fractions, oxygen, helium }, { normalise: true }),
      pressure: (read('scale') * factor * read('start pressure')) as AbsolutePressure,
    },
    temperature: read('start temperature') as Temperature,
  }
}

/** What the equation of state adds: one input for each class of mixture met, and what an error of it does to a reading. */
interface EquationErrors {
  readonly inputs: Inputs
  startFactor(read: (name: string) => number): number
  stepFactor(step: number, read: (name: string) => number): number
}

/** An error of density is one of the pressure that the same amount would show, in the ratio of the two slopes. */
function equationErrors(
  { start, steps, temperature }: StepwiseFill,
  filled: readonly FilledStep[],
  gas: GasModel,
): EquationErrors {
  if (gas === 'ideal') return { inputs: {}, startFactor: () => 1, stepFactor: () => 1 }
  const errorOf = (
    inside: Mixture,
    pressure: number,
    at: number,
  ): { name: string; standard: number; slope: number } => {
    const { mixtureClass, standard } = modelUncertainty(inside)
    return { name: `equation for ${mixtureClass}`, standard, slope: stiffness(inside, pressure, at) }
  }
  const atStart = start.pressure > 0 ? errorOf(start.mixture, start.pressure, temperature) : undefined
  const atSteps = filled.map(({ mixture: inside, pressure }, k) =>
    pressure > 0 ? errorOf(inside, pressure, steps[k]?.temperature ?? temperature) : undefined,
  )
  const met = [atStart, ...atSteps].flatMap((error) => error ?? [])
  const factor = (error: (typeof met)[number] | undefined, read: (name: string) => number): number =>
    error === undefined ? 1 : 1 + error.slope * read(error.name)
  return {
    inputs: Object.fromEntries(met.map(({ name, standard }) => [name, normalDistribution<number>(0, standard)])),
    startFactor: (read) => factor(atStart, read),
    stepFactor: (step, read) => factor(atSteps[step], read),
  }
}

/** How pressure follows density at constant temperature, both relative. */
function stiffness(inside: Mixture, pressure: number, at: number): number {
  const density = densityBy('real', inside, pressure, at)
  const step = 1e-4
  return (
    (pressureBy('real', inside, density * (1 + step), at) - pressureBy('real', inside, density * (1 - step), at)) /
    (2 * step * pressure)
  )
}
