import { isLitrebarError } from '../../errors/index.ts'
import { type Mixture, mixtureFromText } from '../../gas-law/index.ts'
import type { BlockState } from './block-state.ts'
import type { Calculation, StateProperty } from './calculation.table.ts'
import type { RowBlock } from './row-block.ts'
import { columnNamed } from './row-inputs.ts'
import type { ReadyPlan } from './row-plan.ts'
import type { PreparedProperty } from './row-tables.ts'
import { isTextColumn } from './text-column.ts'

/** A mixture that has been met, with what was prepared for it. */
export interface MetMixture {
  readonly mixture: Mixture
  readonly prepared: Map<StateProperty, PreparedProperty>
  readonly factors: Map<Calculation, number>
}

/** The rows of a block that have one mixture. */
export interface MixtureGroup {
  readonly met: MetMixture
  /** In rising order; undefined where one mixture serves all. */
  readonly rows: Int32Array | undefined
}

/**
 * The rows of a block by their mixture. A row whose mixture cannot be read has failed and is in no group.
 *
 * @param ready - says where the mixture comes from
 * @param block - the rows
 * @param state - receives the rows that fail
 * @param known - the mixtures that have been met, by their words; receives new ones
 * @returns a group for each mixture of the block; none for a plan without mixture
 */
export function mixtureGroups(
  ready: ReadyPlan,
  block: RowBlock,
  state: BlockState,
  known: Map<string, MetMixture>,
): readonly MixtureGroup[] {
  if (ready.mixture === undefined) return []
  if ('constant' in ready.mixture) {
    const met = known.get('') ?? meet(ready.mixture.constant)
    known.set('', met)
    return [{ met, rows: undefined }]
  }
  const given = columnNamed(ready.mixture.column, block)
  const places = new Map<string, number>()
  const met: MetMixture[] = []
  const placeOf = (text: string, row: number): number => {
    const place = places.get(text)
    if (place !== undefined) return place
    const found = metByText(text, known)
    if (typeof found === 'string') {
      if (text.trim() === '') state.fail(row, 'missing', 'the mixture is missing')
      else state.fail(row, 'input', found)
      return -1
    }
    const added = met.push(found) - 1
    places.set(text, added)
    return added
  }
  const of = isTextColumn(given)
    ? given.places(placeOf)
    : Int32Array.from(given, (field, row) => placeOf(String(field), row))
  return rowsByPlace(of, met.length).map((rows, place) => ({ met: met[place] as MetMixture, rows }))
}

/** Sorts rows by their place, keeping their order. */
function rowsByPlace(of: Int32Array, places: number): readonly Int32Array[] {
  const counts = new Int32Array(places)
  for (const place of of) if (place >= 0) counts[place] = (counts[place] as number) + 1
  const lists = Array.from(counts, (count) => new Int32Array(count))
  counts.fill(0)
  for (let row = 0; row < of.length; row++) {
    const place = of[row] as number
    if (place < 0) continue
    const list = lists[place] as Int32Array
    const at = counts[place] as number
    list[at] = row
    counts[place] = at + 1
  }
  return lists
}

function meet(mixture: Mixture): MetMixture {
  return { mixture, prepared: new Map(), factors: new Map() }
}

/** The mixture of a text, or why there is none. Texts that are none are not kept: a file may hold any number of them. */
function metByText(text: string, known: Map<string, MetMixture>): MetMixture | string {
  const found = known.get(text)
  if (found !== undefined) return found
  try {
    const met = meet(mixtureFromText(text))
    known.set(text, met)
    return met
  } catch (thrown) {
    if (!isLitrebarError(thrown)) throw thrown
    return thrown.message
  }
}
