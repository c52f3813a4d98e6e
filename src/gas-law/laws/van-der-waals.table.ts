import type { SourceId } from '../../references/sources.ts'
import type { Gas } from '../mixture/gas.ts'

/** The two constants of a gas, as books print them. */
export interface VanDerWaalsConstants {
  /** Pull between molecules, L²·atm/mol². */
  readonly a: number
  /** Own volume of the molecules, L/mol. */
  readonly b: number
  readonly source: SourceId
  readonly place: string
}

/** Constants of van der Waals as printed. Argon and hydrogen are not in the source: give your own. */
export const vanDerWaalsConstants: Readonly<Record<Exclude<Gas, 'argon' | 'hydrogen'>, VanDerWaalsConstants>> = {
  nitrogen: { a: 1.39, b: 0.0391, source: 'openstax-chemistry-2e', place: 'table 9.3' },
  oxygen: { a: 1.36, b: 0.0318, source: 'openstax-chemistry-2e', place: 'table 9.3' },
  helium: { a: 0.0342, b: 0.0237, source: 'openstax-chemistry-2e', place: 'table 9.3' },
  carbonDioxide: { a: 3.59, b: 0.0427, source: 'openstax-chemistry-2e', place: 'table 9.3' },
  water: { a: 5.46, b: 0.0305, source: 'openstax-chemistry-2e', place: 'table 9.3' },
}
