import type { Card } from '../card.ts'
import * as buoyancy from './buoyancy.ts'
import * as buoyancyChanges from './buoyancy-changes.ts'
import * as charging from './charging.ts'
import * as chargingCompressor from './charging-compressor.ts'
import * as consumption from './consumption.ts'
import * as consumptionCircuits from './consumption-circuits.ts'
import * as cylinder from './cylinder.ts'
import * as cylinderTesting from './cylinder-testing.ts'
import * as environment from './environment.ts'
import * as environmentConventions from './environment-conventions.ts'
import * as gasLaw from './gas-law.ts'
import * as gasLawAmounts from './gas-law-amounts.ts'
import * as gasLawContents from './gas-law-contents.ts'
import * as gasLawMixtures from './gas-law-mixtures.ts'
import * as gauges from './gauges.ts'
import * as gaugesCompass from './gauges-compass.ts'
import * as gaugesOxygen from './gauges-oxygen.ts'
import * as regulatorBench from './regulator-bench.ts'
import * as regulatorPerformance from './regulator-performance.ts'
import * as uncertainty from './uncertainty.ts'
import * as uncertaintyCompared from './uncertainty-compared.ts'
import * as units from './units.ts'
import * as unitsDifferences from './units-differences.ts'

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
    gasLawAmounts,
    regulatorPerformance,
    consumption,
    cylinder,
    buoyancy,
    charging,
    chargingCompressor,
    gauges,
    gaugesCompass,
    gaugesOxygen,
    unitsDifferences,
    uncertainty,
    uncertaintyCompared,
    regulatorBench,
    gasLawMixtures,
    gasLawContents,
    environmentConventions,
    cylinderTesting,
    consumptionCircuits,
    buoyancyChanges,
  ]
  return files.flatMap((cards) => Object.values(cards)) as readonly Card[]
}
