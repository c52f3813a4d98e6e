import { bar, type GaugePressure, inUnit, psi } from '../../units/index.ts'
import { oxygenThresholds } from '../filling/index.ts'
import { type ValveOutlet, valveOutlets } from '../valves/index.ts'
import { type FillingCondition, reason } from './filling-condition.ts'

const shown = (pressure: number): string => `${inUnit(pressure as GaugePressure, bar).toFixed(0)} bar`

// Ranges and marks are rounded: 3000 psi is 207 bar.
const rounding = 1.005

/** Whether outlet and marked rating of the valve reach as far as the marks of the cylinder. */
export const isValveStrongEnough: FillingCondition = ({ request: { valve }, limit }) => {
  if (valve === undefined) return { doubts: [reason('valve-unknown', 'the valve is not stated')] }
  const row: ValveOutlet | undefined = valve.outlet === undefined ? undefined : valveOutlets[valve.outlet]
  const range = row === undefined ? undefined : row.atMost.value * (row.atMost.unit === 'bar' ? bar : psi).factor
  const tooWeak = (most: number | undefined): most is number =>
    most !== undefined && limit !== undefined && limit > most * rounding
  return {
    against: [
      ...(row !== undefined && tooWeak(range)
        ? [
            reason(
              'outlet-range',
              `the outlet (${row.name}) is rated for ${shown(range)}, the cylinder for ${shown(limit ?? 0)}`,
              row.source,
            ),
          ]
        : []),
      ...(tooWeak(valve.ratedPressure)
        ? [
            reason(
              'valve-rating',
              `the valve is rated for ${shown(valve.ratedPressure)}, the cylinder for ${shown(limit ?? 0)}`,
            ),
          ]
        : []),
    ],
    doubts: [
      ...(row === undefined ? [reason('outlet-unknown', 'the outlet of the valve is not stated')] : []),
      ...(row?.source === 'memory'
        ? [reason('outlet-not-read', 'the pressure range of this outlet was not read from its standard')]
        : []),
      ...(valve.ratedPressure === undefined
        ? [reason('valve-rating-unknown', 'the working pressure marked on the valve is not stated')]
        : []),
    ],
  }
}

/** Whether the outlet is one for this gas and use. */
export const isOutletForGas: FillingCondition = ({ request: { valve, mixture, oxygen, rules } }) => {
  const row: ValveOutlet | undefined = valve?.outlet === undefined ? undefined : valveOutlets[valve.outlet]
  if (row === undefined) return {}
  const isRich = mixture.oxygen > oxygenThresholds['en-nitrox-connection'].above / 100
  const isWrongGas =
    (row.gas === 'inert' && mixture.oxygen > 0) ||
    (row.gas === 'air' && isRich && oxygen?.threshold === 'en-nitrox-connection')
  return {
    against: isWrongGas
      ? [reason('outlet-for-another-gas', `the outlet (${row.name}) is for ${row.gas}`, row.source)]
      : [],
    doubts:
      row.isForDiving || (rules.service !== undefined && rules.service !== 'diving')
        ? []
        : [reason('outlet-not-for-diving', `the outlet (${row.name}) is not a diving outlet`, row.source)],
  }
}

/** Whether the thread of the valve is that of the neck. Some pairs engage, hold for a while, and let go under pressure. */
export const isThreadMatched: FillingCondition = ({ stamp, request }) => {
  const neck = stamp.thread?.designation ?? request.neckThread
  const fitted = request.valve?.thread
  const stated = stamp.thread !== undefined && request.neckThread !== undefined
  if (stated && !isSameThread(stamp.thread.designation, request.neckThread)) {
    return { against: [mismatch(stamp.thread.designation, request.neckThread, 'the gauged neck')] }
  }
  if (neck === undefined || fitted === undefined) {
    const what = neck === undefined ? 'the neck' : 'the valve'
    return {
      doubts: [
        reason(
          'thread-unknown',
          `the thread of ${what} is not known: gauge it; similar threads engage and then let go`,
        ),
      ],
    }
  }
  return isSameThread(neck, fitted) ? {} : { against: [mismatch(neck, fitted, 'the valve')] }
}

function mismatch(neck: string, other: string, what: string): ReturnType<typeof reason> {
  return reason('thread-mismatch', `the neck has ${neck}, ${what} has ${other}: do not fill`)
}

/** Spellings of one thread: spaces, case and the sign of multiplication make no difference. */
function isSameThread(one: string, other: string): boolean {
  const plain = (designation: string): string =>
    designation.toUpperCase().replaceAll(/[\s×*]/g, (sign) => (sign.trim() === '' ? '' : 'X'))
  return plain(one) === plain(other)
}
