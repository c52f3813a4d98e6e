import { expect, test } from 'vitest'
import type { Misprint, PublishedItem } from '../fixtures/published-item.ts'

/** How litrebar comes to the printed answers: from what is given, in the unit of the answer. */
export type Computations<Items> = {
  readonly [Id in keyof Items]?: (given: Items[Id] extends { readonly given: infer Given } ? Given : never) => number
}

/** What litrebar does not compute: the reason, and the items that it holds for. */
export type Left<Items> = Readonly<Record<string, readonly (keyof Items)[]>>

/**
 * Proves the items of a source one by one, each to half its last printed place, and that none is passed over in silence.
 *
 * @param items - the fixture
 * @param computed - the computations by id
 * @param left - the ids left, by reason
 */
export function provePublished<Items extends Readonly<Record<string, PublishedItem>>>(
  items: Items,
  computed: Computations<Items>,
  left: Left<Items> = {},
): void {
  noneInSilence(items, computed, left)

  test.each(rows(items, computed))('$id, $place: $topic is $printed $unit, $evidence', (item) => {
    const found = item.compute(item.given)
    // a part in 1e9 for halves of a last place that are no binary numbers
    const halfLastPlace = (item.lastPlace / 2) * (1 + 1e-9)
    expect(Math.abs(found - item.value), `found ${String(found)}`).toBeLessThanOrEqual(halfLastPlace)
  })
}

/**
 * Proves that printed answers which are wrong do not come out, and that what is right does.
 *
 * @param items - the fixture
 * @param computed - the computations by id
 * @param left - the ids left, by reason
 */
export function proveMisprints<Items extends Readonly<Record<string, Misprint>>>(
  items: Items,
  computed: Computations<Items>,
  left: Left<Items>,
): void {
  noneInSilence(items, computed, left)

  test.each(rows(items, computed))('$id, $place: $topic is not $printed $unit but $worked: $because', (item) => {
    const found = item.compute(item.given)
    expect(found / item.worked, `found ${String(found)}`).toBeCloseTo(1, 6) // they were worked out to seven figures
    expect(Math.abs(found - item.value)).toBeGreaterThan(item.lastPlace / 2)
  })
}

function noneInSilence<Items extends object>(items: Items, computed: Computations<Items>, left: Left<Items>): void {
  test('every item is computed or left with a reason, and none is both', () => {
    const listed = [...Object.keys(computed), ...Object.values(left).flat()].map(String)
    expect(listed.toSorted()).toEqual(Object.keys(items).toSorted())
  })
}

function rows<Item extends PublishedItem>(
  items: Readonly<Record<string, Item>>,
  computed: Readonly<Record<string, unknown>>,
): (Item & { id: string; evidence: string; compute: (given: object) => number })[] {
  return Object.entries(items).flatMap(([id, item]) => {
    const compute = computed[id] as ((given: object) => number) | undefined
    const evidence = item.seen === false ? 'worked out by hand' : 'as printed'
    return compute === undefined ? [] : [{ ...item, id, evidence, compute }]
  })
}
