import { expect, test } from 'vitest'
import { allUnits } from '../../src/index.ts'
import {
  columnIdentities,
  columns,
  type Identity,
  oneNumberIdentities,
  pairIdentities,
  pairs,
  plainNumbers,
  stateIdentities,
  states,
  unitIdentities,
} from './identities.ts'

let checks = 0

/** The case that is furthest from the identity, over what is allowed. */
function worst<Case>({ gap, allowed }: Identity<Case>, cases: readonly Case[]): { gap: number; of: Case | undefined } {
  let largest = -1
  let of: Case | undefined
  for (const each of cases) {
    const found = gap(each)
    checks++
    if (found <= largest) continue // NaN is never below
    largest = Number.isNaN(found) ? Infinity : found
    of = each
  }
  return { gap: largest, of: largest > allowed ? of : undefined }
}

function holds<Case>(identities: readonly Identity<Case>[], cases: readonly Case[]): void {
  test.each(identities)('$name', (identity) => {
    const { gap, of } = worst(identity, cases)
    expect(of, `off by ${gap}, ${identity.allowed} is allowed, at ${JSON.stringify(of)}`).toBeUndefined()
  })
}

holds(stateIdentities, states)
holds(columnIdentities, columns)
holds(pairIdentities, pairs)
holds(
  unitIdentities,
  allUnits.flatMap((unit) => plainNumbers.map((n) => ({ unit, n }))),
)
holds(
  oneNumberIdentities,
  Array.from({ length: 400 }, (_, k) => (k + 0.5) / 400),
)

test('these were 60 000 checks and more', () => {
  expect(checks).toBeGreaterThan(60_000)
})
