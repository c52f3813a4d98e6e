import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { leastSquares } from '../../uncertainty/least-squares.ts'
import {
  type Accepted,
  type FlowResistance,
  millibar,
  type PressureDifference,
  type QuadraticFlowResistance,
  requireWithin,
  type VolumeFlow,
} from '../../units/index.ts'
import { type LogColumn, requireColumns } from '../log/column.ts'

/**
 * What inhaling through a demand valve felt like, as three figures: mouth pressure = −(cracking pressure + stiffness · flow) + assist · flow².
 */
export interface FittedAssist {
  /** Suction that opens the valve, Pa. */
  readonly crackingPressure: PressureDifference
  /** Suction more per flow, Pa·s/m³. */
  readonly stiffness: FlowResistance
  /** Pressure given back per flow squared, Pa·s²/m⁶: the jet of the valve draws on its diaphragm. */
  readonly assist: QuadraticFlowResistance
  /** From here on more flow asks for less suction: the valve opens itself further. Absent without assist. */
  readonly turningFlow?: VolumeFlow
  /** From here on the mouth pressure is above ambient. Absent without assist. */
  readonly positiveFrom?: VolumeFlow
  /** Whether the flows that were measured reach that far; beyond them the figures are drawn on, and prove nothing. */
  readonly measuredTo: VolumeFlow
  /** Standard deviation of the pressures about the fit, Pa. */
  readonly scatter: PressureDifference
}

const cracking: Accepted = {
  atLeast: 0,
  atMost: 100,
  unit: millibar,
  hint: 'State the suction as a positive difference.',
}

/**
 * Assist of a demand valve, fitted to an inhalation: how stiff it is, and how much its own jet helps. A description of what was measured at
 * one depth and one setting, no prediction: out of the water, where neither water nor back pressure damps it, free flow starts earlier.
 *
 * @param inhalation - flow, m³/s, above 0 and mouth pressure, Pa, in columns of one length
 * @param options - cracking pressure, Pa, where a bench has measured it; fitted along with the others where it is left out
 * @returns the figures, and where the valve starts to help itself
 * @throws LitrebarError `input` for fewer points than figures to find, a flow that is not above 0, or flows that do not differ; `range` for a cracking
 *   pressure that is not 0 to 100 mbar
 * @source litrebar-derivation, model without a source
 * @example
 * const flow = [0.5, 1, 2, 3, 4].map((litres) => litres / 1000)
 * const pressure = flow.map((q) => -300 - 60e3 * q + 20e6 * q * q)
 * const { positiveFrom } = fittedAssist({ flow, pressure })
 * inUnit(positiveFrom ?? measure(0, litrePerSecond), litrePerSecond).toFixed(2) // => '5.65'
 */
export function fittedAssist(
  inhalation: { readonly flow: LogColumn; readonly pressure: LogColumn },
  options: { readonly crackingPressure?: PressureDifference } = {},
): FittedAssist {
  requireKeys('inhalation', inhalation, { flow: true, pressure: true })
  requireKeys('options', options, { crackingPressure: false })
  const { flow, pressure } = inhalation
  const { crackingPressure: known } = options
  requireColumns({ flow, pressure }, 'inhalation')
  const unknowns = known === undefined ? 3 : 2
  if (flow.length < unknowns) throw tooFew(flow.length, unknowns)
  if (known !== undefined) requireWithin('options.crackingPressure', known, cracking)
  const flows = Array.from(flow)
  const still = flows.findIndex((q) => !(q > 0))
  if (still >= 0) throw noFlow(still, flows[still] as number)
  const rows = flows.map((q) => (known === undefined ? [-1, -q, q * q] : [-q, q * q]))
  const fit = leastSquares(
    rows,
    Array.from(pressure, (p) => p + (known ?? 0)),
    'inhalation',
  )
  const [stiffness, assist] = fit.coefficients.slice(-2) as [number, number]
  const crackingPressure = known ?? (fit.coefficients[0] as number)
  const helps = assist > 0
  return {
    crackingPressure: crackingPressure as PressureDifference,
    stiffness: stiffness as FlowResistance,
    assist: assist as QuadraticFlowResistance,
    ...(helps && {
      turningFlow: Math.max(0, stiffness / (2 * assist)) as VolumeFlow,
      positiveFrom: positiveFrom(crackingPressure, stiffness, assist) as VolumeFlow,
    }),
    measuredTo: flows.reduce((most, q) => Math.max(most, q), 0) as VolumeFlow,
    scatter: fit.scatter as PressureDifference,
  }
}

/** Where assist · q² − stiffness · q − cracking pressure passes zero for good. */
function positiveFrom(crackingPressure: number, stiffness: number, assist: number): number {
  const under = stiffness * stiffness + 4 * assist * crackingPressure
  return under < 0 ? 0 : Math.max(0, (stiffness + Math.sqrt(under)) / (2 * assist))
}

function tooFew(points: number, unknowns: number): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'inhalation',
    value: `${points} points`,
    expected: `at least ${unknowns}, as many as there are figures to find`,
    hint: 'Give the whole inhalation.',
  })
}

function noFlow(index: number, value: number): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: `inhalation.flow[${index}]`,
    value: `${value} m³/s`,
    expected: 'above 0',
    hint: 'Give the inhalation only, without its ends.',
  })
}
