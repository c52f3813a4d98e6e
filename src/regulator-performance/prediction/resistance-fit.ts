import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import { type Fit, leastSquares } from '../../uncertainty/least-squares.ts'
import {
  type EnergyPerVolume,
  type FlowResistance,
  joulePerLitre,
  litrePerSecond,
  type PressureDifference,
  type QuadraticFlowResistance,
  requireWithin,
  type VolumeFlow,
} from '../../units/index.ts'
import type { ResistanceParts } from './resistance-model.ts'

/** Work per litre measured at one setting of the machine. */
export interface ResistanceMeasurement {
  /** Peak flow of the sinusoid, m³/s: π times the ventilation. */
  readonly peakFlow: VolumeFlow
  readonly workPerLitre: EnergyPerVolume
}

/** Parts of a resistance, with the standard uncertainty of each where there are measurements to spare. */
export interface FittedResistance extends ResistanceParts {
  readonly standardUncertainty?: ResistanceParts
  /** Standard deviation of the measurements about the fit, Pa; 0 for as many measurements as parts. */
  readonly scatter: EnergyPerVolume
  /** Parts that came out negative: an assist, or a resistance of another shape. */
  readonly negative: readonly (keyof ResistanceParts)[]
}

/**
 * Cracking, laminar and turbulent part of a resistance, from the work per litre at three or more ventilations of a sinusoidal machine.
 *
 * @param measurements - at least three, at peak flows above 0 that differ
 * @param of - whether the work is of one `half`, or of the whole `breath`: then the parts are the mean of both halves
 * @returns the three parts, SI, with standard uncertainties from four measurements on
 * @throws LitrebarError `input` for fewer than three measurements or flows that do not differ; `range`
 * @source litrebar-derivation
 * @example
 * const at = (ventilation: number, work: number) => ({ peakFlow: peakInhalationFlow(measure(ventilation, litrePerMinute), { shape: 'sinusoid' }), workPerLitre: difference(work, joulePerLitre) })
 * const fit = resistanceFit([at(22.5, 0.618), at(40, 0.863), at(62.5, 1.404)], 'breath')
 * inUnit(fit.crackingPressure, millibar).toFixed(1) // => '2.6'
 */
export function resistanceFit(measurements: readonly ResistanceMeasurement[], of: 'half' | 'breath'): FittedResistance {
  requireEnough(measurements)
  requireWord('of', of, ['half', 'breath'])
  const halves = of === 'breath' ? 2 : 1
  const rows = measurements.map((one, index) => {
    requireKeys(`measurements[${index}]`, one, { peakFlow: true, workPerLitre: true })
    const { peakFlow: q, workPerLitre } = one
    requireWithin(`measurements[${index}].workPerLitre`, workPerLitre, {
      unit: joulePerLitre,
      hint: 'State a measured work per litre.',
    })
    requireWithin(`measurements[${index}].peakFlow`, q, {
      above: 0,
      unit: litrePerSecond,
      hint: 'State π times the ventilation.',
    })
    return [halves, (halves * Math.PI * q) / 4, (halves * 2 * q * q) / 3]
  })
  const works = measurements.map(({ workPerLitre }) => workPerLitre)
  return fitted(leastSquares(rows, works, 'measurements'))
}

/** The parts of a fit whose first three coefficients they are. */
export function fitted({ coefficients, inverse, scatter, degreesOfFreedom }: Fit): FittedResistance {
  const parts = partsOf(coefficients)
  const names = ['crackingPressure', 'laminarResistance', 'turbulentResistance'] as const
  return {
    ...parts,
    ...(degreesOfFreedom > 0
      ? { standardUncertainty: partsOf(inverse.map((row, i) => scatter * Math.sqrt(row[i] as number))) }
      : {}),
    scatter: scatter as EnergyPerVolume,
    negative: names.filter((name) => parts[name] < 0),
  }
}

function partsOf([cracking = 0, laminar = 0, turbulent = 0]: readonly number[]): ResistanceParts {
  return {
    crackingPressure: cracking as PressureDifference,
    laminarResistance: laminar as FlowResistance,
    turbulentResistance: turbulent as QuadraticFlowResistance,
  }
}

function requireEnough(measurements: readonly ResistanceMeasurement[]): void {
  if (Array.isArray(measurements) && measurements.length >= 3) return
  throw new LitrebarError({
    code: 'input',
    argument: 'measurements',
    value: Array.isArray(measurements) ? `${measurements.length} measurements` : 'no list',
    expected: 'at least 3',
    hint: 'Three parts need three ventilations; more give their uncertainty.',
  })
}
