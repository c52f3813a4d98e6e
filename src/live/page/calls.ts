import { allCards } from '../../course/cards/all-cards.ts'
import type { Calls } from '../../course/expression.ts'

/** Results kept for each function: those of one change, for the workings and the common errors ask for the same ones again. */
const keptResults = 100

/** The functions behind the formulas of the library, by the ids of their cards. The build leaves nothing else of the cards in the script. */
export const callsOf: ReadonlyMap<string, Calls> = new Map(
  allCards().flatMap(({ id, calls }) => (calls === undefined ? [] : [[id, remembered(calls)] as const])),
)

function remembered(calls: Calls): Calls {
  return Object.fromEntries(
    Object.entries(calls).map(([name, call]) => {
      const results = new Map<string, number>()
      const ask = (...parts: readonly number[]): number => {
        const key = parts.join(' ')
        const known = results.get(key)
        if (known !== undefined) return known
        if (results.size >= keptResults) results.clear()
        const result = call(...parts)
        results.set(key, result)
        return result
      }
      return [name, ask]
    }),
  )
}
