import { requireList } from '../../errors/index.ts'
import { type Gas, gases, type Mixture, mixture } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'

/** An amount of a gas mixture, mol. */
export interface GasPortion {
  readonly mixture: Mixture
  readonly amount: number
}

// Anything richer than air, as common practice has it: a caution errs on this side.
/** Mole fraction of oxygen above which a gas carries the caution of oxygen handling. */
export const richerThanAir = 0.2101

/** All portions together: amount, and the mixture they make. An amount of 0 in all has the mixture of the first. */
export function together(portions: readonly [GasPortion, ...GasPortion[]]): GasPortion {
  let amount = 0
  for (const portion of portions) amount += portion.amount
  const { mixture: first } = portions.find((portion) => portion.amount > 0) ?? portions[0]
  // one gas stays the same object, and keeps what was computed for it
  if (portions.every((portion) => portion.amount === 0 || sameMixture(portion.mixture, first))) {
    return { mixture: first, amount }
  }
  const fractions: { [Name in Gas]?: number } = {}
  for (const gas of gases) {
    let sum = 0
    for (const portion of portions) sum += portion.amount * portion.mixture[gas]
    fractions[gas] = sum / amount
  }
  return { mixture: mixture(fractions, { normalise: true }), amount }
}

/** Whether two mixtures are one by their fractions: a register read from JSON holds copies, not the same objects. */
export function sameMixture(one: Mixture, other: Mixture): boolean {
  return one === other || gases.every((gas) => one[gas] === other[gas])
}

/** Refuses a list that holds something that is no mixture, by its place. */
export function requireMixtures(argument: string, mixtures: readonly Mixture[], least = 0): void {
  requireList(argument, mixtures, least, 'List the gases.')
  for (const [k, each] of mixtures.entries()) requireMixture(`${argument}[${k}]`, each)
}
