import { inputError, LitrebarError, requireKeys, shown } from '../../errors/index.ts'
import type { Accepted } from '../../units/accepted.ts'
import { bar } from '../../units/pressure.ts'
import { kelvin } from '../../units/temperature.ts'
import { litre } from '../../units/volume.ts'

/** The quantities of a law with exactly one left out: the one to be found. */
export type OneOmitted<Quantities> = {
  [Name in keyof Quantities]: Omit<Quantities, Name> & { readonly [Omitted in Name]?: never }
}[keyof Quantities]

/** What a law accepts of a quantity. */
interface Quantity extends Accepted {
  readonly above: 0
  readonly atMost: number
}

/** The power to which a quantity enters a law, and what the law accepts of it. */
export type Factor = readonly [exponent: number, accepted: Quantity]

/** A law that is a product: the quantities, each raised to its exponent, multiply to a constant. */
export type Law<Quantities> = { readonly [Name in keyof Quantities]: Factor }

// The upper limits are ours: they catch a wrong unit, not a failing law.
const pressure: Quantity = { above: 0, atMost: 1e4, unit: bar, hint: 'Check the unit; pressures are absolute.' }
const volume: Quantity = { above: 0, atMost: 1e9, unit: litre, hint: 'Check the unit.' }
const temperature: Quantity = { above: 0, atMost: 1e4, unit: kelvin, hint: 'Check the temperature scale.' }

// Factors that laws share: a quantity before a change on one side, after it on the other.
export const initialPressure: Factor = [1, pressure]
export const finalPressure: Factor = [-1, pressure]
export const initialVolume: Factor = [1, volume]
export const finalVolume: Factor = [-1, volume]
export const initialTemperature: Factor = [-1, temperature]
export const finalTemperature: Factor = [1, temperature]

/**
 * Solves a law for the quantity that is left out, and holds the answer to the same range as a given one.
 *
 * @param law - the factors by name
 * @param knowns - all quantities but one, SI
 * @param constant - what the product comes to
 * @returns all quantities, the one left out filled in
 * @throws LitrebarError `range` for a quantity out of range; `input` unless exactly one is left out
 *   (the compiler holds typed callers to that, this holds the others)
 */
export function solveForOmitted<Quantities>(
  law: Law<Quantities>,
  knowns: OneOmitted<Quantities>,
  constant = 1,
): Quantities {
  requireKeys('knowns', knowns, law)
  const all: Record<string, number> = { ...knowns }
  const omitted: (string & keyof Quantities)[] = []
  let rest = constant
  for (const name in law) {
    const { [name]: value } = all
    const [exponent, accepted] = law[name]
    if (value === undefined) omitted.push(name)
    else rest /= checked(name, value, accepted) ** exponent
  }
  const [sought] = omitted
  if (sought === undefined || omitted.length > 1) {
    throw inputError(
      'knowns',
      `without ${omitted.join(', ') || 'a gap'}`,
      `all but one of ${Object.keys(law).join(', ')}`,
      'Leave out the one to be found.',
    )
  }
  const [exponent, accepted] = law[sought]
  all[sought] = checked(sought, rest ** (1 / exponent), accepted)
  return all as Quantities
}

// Says what `requireWithin` says, without the cases that no law has: a third less to load.
function checked(argument: string, value: number, { atMost, unit, hint }: Quantity): number {
  const isNumber = typeof value === 'number'
  if (isNumber && value > 0 && value <= atMost * unit.factor) return value // NaN fails both comparisons
  throw new LitrebarError({
    code: isNumber ? 'range' : 'input',
    argument,
    value: isNumber ? `${Number((value / unit.factor).toPrecision(12))} ${unit.symbol}`.trim() : shown(value),
    expected: `above 0 and at most ${atMost} ${unit.symbol}`.trim(),
    hint,
    accepted: { above: 0, atMost, unit: unit.symbol },
  })
}
