import type { SourceId } from '../../references/sources.ts'
import type { AbsolutePressure, Temperature } from '../../units/quantity.ts'

/** The state at which a volume of free gas is stated. Its name goes into the type, so that only equal ones add. */
export interface ReferenceCondition<Name extends string = string> {
  readonly name: Name
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
  /** Whether the stated volume holds water vapour beside the gas. */
  readonly moisture: 'dry' | 'saturated'
  /** What the water vapour takes of the pressure; 0 for dry gas. */
  readonly waterVapourPressure: AbsolutePressure
  readonly source: SourceId
  readonly place: string
}
