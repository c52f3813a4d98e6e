import { requireKeys, requireWord } from '../../errors/index.ts'
import type { Reason } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import { type Accepted, bar, type GaugePressure, gauge, psi, requireWithin } from '../../units/index.ts'
import {
  type ConnectorId,
  connections,
  type ValveOutlet,
  type ValveOutletId,
  valveOutlets,
} from './valve-outlet.table.ts'

/** Whether a connector belongs on an outlet at a pressure. */
export interface Connection {
  /** `fits` says that the pair is made for each other and for the pressure; never that it may be forced. */
  readonly outcome: 'fits' | 'does not fit' | 'fits, but not at this pressure'
  /** Pressure of the weaker of the two, gauge. */
  readonly atMost?: GaugePressure
  readonly needs?: 'yoke adaptor'
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const pressure: Accepted = { atLeast: 0, atMost: 700, unit: bar, hint: 'Give the working pressure of the cylinder.' }

/**
 * Whether a connector goes on the outlet of a valve, for the working pressure of the cylinder. A pair that is not in the
 * table does not fit. Low-pressure connectors are deliberately too short for high-pressure outlets.
 *
 * @param pair - outlet and connector by id; working pressure of the cylinder, gauge, Pa, up to 700 bar
 * @returns the outcome with the pressure of the weaker part, and why
 * @throws LitrebarError `range` for the pressure; `input` for an unknown outlet, connector or key
 * @source iso-12209, scope; en-144-3; engagement of the threads: common-practice
 * @example
 * connectionOf({ outlet: 'threaded-300', connector: 'threaded-232', workingPressure: gauge(200, bar) }).outcome // => 'does not fit'
 */
export function connectionOf(pair: {
  readonly outlet: ValveOutletId
  readonly connector: ConnectorId
  readonly workingPressure: GaugePressure
}): Connection {
  requireKeys('pair', pair, { outlet: true, connector: true, workingPressure: true })
  const { outlet, connector, workingPressure } = pair
  requireWithin('workingPressure', workingPressure, pressure)
  requireWord('outlet', outlet, Object.keys(valveOutlets) as ValveOutletId[])
  requireWord('connector', connector, ['yoke', 'threaded-232', 'threaded-300', 'threaded-nitrox'])
  const row = connections.find((each) => each.outlet === outlet && each.connector === connector)
  const cautions: readonly CautionId[] = ['valve-connection']
  if (row?.atMostBar === undefined) {
    const text = row?.text ?? 'no standard pairs these two'
    const because = [row === undefined ? { code: 'no-pair', text } : { code: 'no-fit', text, source: row.source }]
    return { outcome: 'does not fit', because, cautions, sources: row === undefined ? [] : [row.source] }
  }
  const atMost = gauge(row.atMostBar, bar)
  const isHeld = workingPressure <= atMost
  const limit = {
    code: 'pressure',
    text: `the weaker of the two is rated for ${String(row.atMostBar)} bar`,
    source: row.source,
  }
  return {
    outcome: isHeld ? 'fits' : 'fits, but not at this pressure',
    atMost,
    ...(row.needs === undefined ? {} : { needs: row.needs }),
    because: [{ code: 'pair', text: row.text, source: row.source }, limit],
    cautions,
    sources: [row.source],
  }
}

/**
 * Outlets that a standard makes for a gas and a working pressure.
 *
 * @param wanted - gas; working pressure of the cylinder, gauge, Pa, up to 700 bar; whether it is for diving
 * @returns ids of the table, in its order; none where no standard is known to cover it
 * @throws LitrebarError `range`
 * @source iso-12209, en-144-2, en-144-3, and as each row says
 * @example
 * valveOutletsFor({ gas: 'air', workingPressure: gauge(300, bar), isForDiving: true }) // => ['threaded-300', 'threaded-500']
 */
export function valveOutletsFor(wanted: {
  readonly gas: ValveOutlet['gas']
  readonly workingPressure: GaugePressure
  readonly isForDiving: boolean
}): readonly ValveOutletId[] {
  requireKeys('wanted', wanted, { gas: true, workingPressure: true, isForDiving: true })
  const { gas, workingPressure, isForDiving } = wanted
  requireWord('gas', gas, [...new Set(Object.values(valveOutlets).map((row: ValveOutlet) => row.gas))])
  requireWord('isForDiving', isForDiving, [true, false] as never)
  requireWithin('workingPressure', workingPressure, pressure)
  return (Object.keys(valveOutlets) as ValveOutletId[]).filter((id) => {
    const row: ValveOutlet = valveOutlets[id]
    const isAbove = row.above === undefined || workingPressure > inPascal(row.above)
    return row.gas === gas && row.isForDiving === isForDiving && isAbove && workingPressure <= inPascal(row.atMost)
  })
}

function inPascal({ value, unit }: ValveOutlet['atMost']): number {
  return value * (unit === 'bar' ? bar : psi).factor
}
