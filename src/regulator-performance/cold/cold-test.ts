import type { CautionId } from '../../references/index.ts'
import {
  type Accepted,
  celsius,
  requireWithin,
  type Temperature,
  type TemperatureDifference,
} from '../../units/index.ts'
import { siColumn } from '../log/column.ts'
import { type ColdTest, coldTests } from './cold-test.table.ts'

/** The published test nearest to a case, and how far off it is. */
export interface NearestColdTest {
  readonly test: ColdTest
  readonly testTemperature: Temperature
  /** Water of the case less water of the test: below 0 the case is colder than anything nearest to it that was tried. */
  readonly warmer: TemperatureDifference
  readonly cautions: readonly CautionId[]
}

/** Water below this is cold in the European sense: icing is thought possible (en-250-2014, as summarised by others). */
export const coldWater: Temperature = 283.15 as Temperature

const water: Accepted = { atLeast: -3, atMost: 45, unit: celsius, hint: 'Check the temperature scale.' }

/**
 * The published cold test whose water is nearest to that of a case. A regulator that passed it was tried there, at the conditions of the test,
 * once; another depth, ventilation, supply pressure or moisture is another case.
 *
 * @param waterTemperature - of the case, K, −3 to 45 °C
 * @returns the test, its temperature, and the difference
 * @throws LitrebarError `range` for a temperature out of range
 * @source en-250-2014 and naval-cold-water-notes, read at second hand
 * @example
 * nearestColdTest(temperatureOf(3.5, celsius)).test.id // => 'naval-survey-fresh'
 */
export function nearestColdTest(waterTemperature: Temperature): NearestColdTest {
  requireWithin('waterTemperature', waterTemperature, water)
  const tried = coldTests.flatMap((test) =>
    test.waterTemperature.map(({ printed, unit }) => ({
      test,
      testTemperature: siColumn({ values: [Number(printed)], unit })[0] as Temperature,
    })),
  )
  const away = (testTemperature: number): number => Math.abs(waterTemperature - testTemperature)
  const nearest = tried.reduce((best, one) => (away(one.testTemperature) < away(best.testTemperature) ? one : best))
  const warmer = (waterTemperature - nearest.testTemperature) as TemperatureDifference
  return { ...nearest, warmer, cautions: ['regulator-cold', 'regulator'] }
}
