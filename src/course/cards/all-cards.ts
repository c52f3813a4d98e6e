import type { Card } from '../card.ts'
import * as buoyancy from './buoyancy.ts'
import * as charging from './charging.ts'
import * as consumption from './consumption.ts'
import * as cylinder from './cylinder.ts'
import * as environment from './environment.ts'
import * as gasLaw from './gas-law.ts'
import * as gauges from './gauges.ts'
import * as regulatorPerformance from './regulator-performance.ts'
import * as units from './units.ts'

/**
 * Every card, for lists and generated pages. A page that explains one formula should import that card alone.
 *
 * @returns the cards, room by room
 * @example
 * allCards().find(({ id }) => id === 'boyle')?.documents // => 'boyle'
 */
export function allCards(): readonly Card[] {
  const files: readonly Readonly<Record<string, unknown>>[] = [
    units,
    environment,
    gasLaw,
    regulatorPerformance,
    consumption,
    cylinder,
    buoyancy,
    charging,
    gauges,
  ]
  return files.flatMap((cards) => Object.values(cards)) as readonly Card[]
}
