import type { CardTexts } from '../../course/index.ts'
import { buoyancyTexts } from './buoyancy.ts'
import { buoyancyChangesTexts } from './buoyancy-changes.ts'
import { chargingTexts } from './charging.ts'
import { chargingCompressorTexts } from './charging-compressor.ts'
import { consumptionTexts } from './consumption.ts'
import { consumptionCircuitsTexts } from './consumption-circuits.ts'
import { cylinderTexts } from './cylinder.ts'
import { cylinderTestingTexts } from './cylinder-testing.ts'
import { environmentTexts } from './environment.ts'
import { environmentConventionsTexts } from './environment-conventions.ts'
import { gasLawTexts } from './gas-law.ts'
import { gasLawAmountsTexts } from './gas-law-amounts.ts'
import { gasLawContentsTexts } from './gas-law-contents.ts'
import { gasLawMixturesTexts } from './gas-law-mixtures.ts'
import { gaugesTexts } from './gauges.ts'
import { gaugesCompassTexts } from './gauges-compass.ts'
import { gaugesOxygenTexts } from './gauges-oxygen.ts'
import { regulatorBenchTexts } from './regulator-bench.ts'
import { regulatorPerformanceTexts } from './regulator-performance.ts'
import { uncertaintyTexts } from './uncertainty.ts'
import { uncertaintyComparedTexts } from './uncertainty-compared.ts'
import { unitsTexts } from './units.ts'
import { unitsDifferencesTexts } from './units-differences.ts'

/** Every formula card in German, by its id. */
export const germanCards: Readonly<Record<string, CardTexts>> = {
  ...buoyancyChangesTexts,
  ...buoyancyTexts,
  ...chargingCompressorTexts,
  ...chargingTexts,
  ...consumptionCircuitsTexts,
  ...consumptionTexts,
  ...cylinderTestingTexts,
  ...cylinderTexts,
  ...environmentConventionsTexts,
  ...environmentTexts,
  ...gasLawAmountsTexts,
  ...gasLawContentsTexts,
  ...gasLawMixturesTexts,
  ...gasLawTexts,
  ...gaugesCompassTexts,
  ...gaugesOxygenTexts,
  ...gaugesTexts,
  ...regulatorBenchTexts,
  ...regulatorPerformanceTexts,
  ...uncertaintyComparedTexts,
  ...uncertaintyTexts,
  ...unitsDifferencesTexts,
  ...unitsTexts,
}
