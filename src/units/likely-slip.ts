import { requireWord } from '../errors/index.ts'
import { requireNumber } from './check-unit.ts'
import { isUsual, reread, type SlipRole, slipRoles } from './slip-role.table.ts'

/** A reading of an unusual number that would make sense. */
export interface LikelySlip {
  readonly id: string
  readonly text: string
  /** What the value would be, SI. */
  readonly meant: number
}

/** Whether a number is of a usual size, and if not, what may have gone wrong. */
export interface Plausibility {
  readonly usual: boolean
  readonly slips: readonly LikelySlip[]
}

/**
 * Whether a stated number is of a size met in practice, and the slips that would explain it if not.
 * For input without types: what a person or a file states. An unusual number is not an error; the caller decides.
 * A number of a usual size may still not fit the others: `recordSlips` looks at them together.
 *
 * @param role - what the number stands for
 * @param value - the number, SI; pressures as their role says (a surface pressure is absolute)
 * @returns whether it is usual, and the slips whose reading would be
 * @throws LitrebarError `input` for a role that is not known or a value that is not a number; `range` for NaN and the infinities
 * @source common-practice
 * @example
 * likelySlips('service pressure', gauge(3000, bar)).slips[0]?.id // => 'psi-read-as-bar'
 */
export function likelySlips(role: SlipRole, value: number): Plausibility {
  const table = slipRoles()
  requireWord('role', role, Object.keys(table) as SlipRole[])
  requireNumber('value', value)
  if (isUsual(table[role], value)) return { usual: true, slips: [] }
  const slips = table[role].slips.flatMap((slip) => {
    const meant = 'usualOf' in slip ? value + slip.plus : reread(value, slip)
    return isUsual('usualOf' in slip ? table[slip.usualOf] : table[role], meant)
      ? [{ id: slip.id, text: slip.text, meant }]
      : []
  })
  return { usual: false, slips }
}
