import type {
  AbsolutePressure,
  Depth,
  Duration,
  InternalVolume,
  PressureDifference,
  Speed,
  Temperature,
  VolumeFlow,
} from '../../units/index.ts'
import type { Residual } from '../gas/residual.ts'
import type { Ascent } from './ascent-gas.ts'
import type { ReserveCylinder } from './counted-reserve.ts'

/** Inputs of a reserve that may be changed one at a time. */
export type ReserveInput =
  | 'depth'
  | 'breathers'
  | 'stressFactor'
  | 'timeAtDepth'
  | 'ascentRate'
  | 'stop.duration'
  | 'internalVolume'
  | 'temperature'
  | 'residualPressure'
  | 'maximumPermissibleError'

/** How one input of a reserve is changed. */
export interface ReserveChange {
  readonly input: ReserveInput
  /** By how much the effects are asked, in SI or as a fraction, and in words. */
  readonly step: number
  readonly change: string
  readonly changed: (
    ascent: Ascent,
    cylinder: ReserveCylinder,
    by: number,
  ) => readonly [ascent: Ascent, cylinder: ReserveCylinder]
}

/**
 * Each input of a reserve a little larger: what to change, and how that is said. The steps are ours.
 *
 * @source litrebar-derivation
 */
export const reserveChanges: readonly ReserveChange[] = [
  {
    input: 'depth',
    step: 1,
    change: 'by 1 m',
    changed: (a, c, by) => [{ ...a, depth: (a.depth + by) as Depth }, c],
  },
  {
    input: 'breathers',
    step: 0.1,
    change: 'by 10 %',
    changed: (a, c, by) => [{ ...a, breathers: a.breathers.map((each) => ((1 + by) * each) as VolumeFlow) }, c],
  },
  {
    input: 'stressFactor',
    step: 0.1,
    change: 'by 10 %',
    changed: (a, c, by) => [{ ...a, stressFactor: (1 + by) * a.stressFactor }, c],
  },
  {
    input: 'timeAtDepth',
    step: 60,
    change: 'by 1 min',
    changed: (a, c, by) => [{ ...a, timeAtDepth: (a.timeAtDepth + by) as Duration }, c],
  },
  {
    input: 'ascentRate',
    step: 0.1,
    change: 'by 10 %',
    changed: (a, c, by) => [{ ...a, ascentRate: ((1 + by) * a.ascentRate) as Speed }, c],
  },
  {
    input: 'stop.duration',
    step: 60,
    change: 'by 1 min',
    changed: (a, c, by) => [
      a.stop === undefined ? a : { ...a, stop: { ...a.stop, duration: (a.stop.duration + by) as Duration } },
      c,
    ],
  },
  {
    input: 'internalVolume',
    step: 0.1,
    change: 'by 10 %',
    changed: (a, c, by) => [a, { ...c, internalVolume: ((1 + by) * c.internalVolume) as InternalVolume }],
  },
  {
    input: 'temperature',
    step: 5,
    change: 'by 5 K',
    changed: (a, c, by) => [a, { ...c, temperature: (c.temperature + by) as Temperature }],
  },
  {
    input: 'residualPressure',
    step: 1e5,
    change: 'by 1 bar',
    changed: (a, c, by) => [a, { ...c, residualPressure: raised(c.residualPressure, by) }],
  },
  {
    input: 'maximumPermissibleError',
    step: 1e5,
    change: 'by 1 bar',
    changed: (a, c, by) => [
      a,
      { ...c, maximumPermissibleError: (c.maximumPermissibleError + by) as PressureDifference },
    ],
  },
]

function raised(residual: Residual, by: number): Residual {
  if (typeof residual === 'number') return (residual + by) as AbsolutePressure
  return { aboveAmbient: (residual.aboveAmbient + by) as PressureDifference }
}
