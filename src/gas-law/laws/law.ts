import { LitrebarError } from '../../errors/index.ts'
import type { Accepted } from '../../units/accepted.ts'
import { bar } from '../../units/pressure.ts'
import { kelvin } from '../../units/temperature.ts'
import { litre } from '../../units/volume.ts'

/** The quantities of a law with exactly one left out: the one to be found. */
export type OneOmitted<Quantities> = {
  [Name in keyof Quantities]: Omit<Quantities, Name> & { readonly [Omitted in Name]?: never }
}[keyof Quantities]

/** What a law accepts of a quantity, and the power to which the quantity enters. */
export interface Factor extends Accepted {
  readonly above: 0
  readonly atMost: number
  readonly exponent: number
}

/** A law that is a product: the quantities, each raised to its exponent, multiply to a constant. */
export type Law<Quantities> = { readonly [Name in keyof Quantities]: Factor }

// Factors that laws share: a quantity before a change on one side, after it on the other.
// The upper limits are ours: they catch a wrong unit, not a failing law.
export const hint = 'Check the unit; pressures are absolute.'
export const initialPressure: Factor = { above: 0, atMost: 1e4, unit: bar, hint, exponent: 1 }
export const finalPressure: Factor = { above: 0, atMost: 1e4, unit: bar, hint, exponent: -1 }
export const initialVolume: Factor = { above: 0, atMost: 1e9, unit: litre, hint, exponent: 1 }
export const finalVolume: Factor = { above: 0, atMost: 1e9, unit: litre, hint, exponent: -1 }
export const initialTemperature: Factor = { above: 0, atMost: 1e4, unit: kelvin, hint, exponent: -1 }
export const finalTemperature: Factor = { above: 0, atMost: 1e4, unit: kelvin, hint, exponent: 1 }

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
  const all: Record<string, number> = { ...knowns }
  const omitted: (string & keyof Quantities)[] = []
  let rest = constant
  for (const name in law) {
    const value = all[name]
    if (value === undefined) omitted.push(name)
    else rest /= checked(name, value, law[name]) ** law[name].exponent
  }
  const unknown = Object.keys(all).filter((name) => !Object.hasOwn(law, name))
  if (omitted.length !== 1 || unknown.length > 0) {
    throw new LitrebarError({
      code: 'input',
      argument: 'knowns',
      value: `without ${omitted.join(', ') || 'a gap'}${unknown.map((name) => `, with ${name}`).join('')}`,
      expected: `all but one of ${Object.keys(law).join(', ')}`,
      hint: 'Leave out the one to be found.',
    })
  }
  const sought = omitted[0] as string & keyof Quantities
  all[sought] = checked(sought, rest ** (1 / law[sought].exponent), law[sought])
  return all as Quantities
}

// Says what `requireWithin` says, without the cases that no law has: the ideal laws together weigh less than 1 kB.
function checked(argument: string, value: number, { atMost, unit }: Factor): number {
  if (typeof value === 'number' && value > 0 && value <= atMost * unit.factor) return value // NaN fails both comparisons
  throw new LitrebarError({
    code: 'range',
    argument,
    value:
      typeof value === 'number'
        ? `${Number((value / unit.factor).toPrecision(12))} ${unit.symbol}`.trim()
        : typeof value,
    expected: `above 0 and at most ${atMost} ${unit.symbol}`.trim(),
    hint,
    accepted: { above: 0, atMost, unit: unit.symbol },
  })
}
