import type { LogColumn } from '../log/column.ts'

/** How often the volume rises from its lowest to its highest quarter, going round the end of the record. */
export function breathsIn(volume: LogColumn, lowest: number, range: number): number {
  const low = lowest + range / 4
  const high = lowest + (3 * range) / 4
  let wasHigh: boolean | undefined
  let startedHigh: boolean | undefined
  let rises = 0
  for (const v of volume) {
    const isHigh: boolean | undefined = v > high ? true : v < low ? false : wasHigh
    if (isHigh === true && wasHigh === false) rises++
    startedHigh ??= isHigh
    wasHigh = isHigh
  }
  return startedHigh === true && wasHigh === false ? rises + 1 : rises
}
