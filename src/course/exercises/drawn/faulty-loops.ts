import type { Random } from '../../../uncertainty/index.ts'
import { wholeNumber } from '../shuffled.ts'
import type { DrawnWords } from './drawn-text.table.ts'

/** Ids of the faults that a loop can show. */
export type FaultId = keyof DrawnWords['faults']

/** Pressure at the mouth in mbar: what opens the valve, what flow costs, what comes late. */
export interface Loop {
  readonly cracking: number
  readonly inhalation: number
  readonly late: number
  readonly exhaust: number
}

/**
 * One regulator with each of the faults in turn.
 *
 * @param random - where chance comes from
 * @returns a loop for each fault
 * @source common-practice, what each fault does to a loop
 */
export function faultyLoops(random: Random): Readonly<Record<FaultId, Loop>> {
  const whole: Loop = {
    cracking: wholeNumber(2, 3, random),
    inhalation: wholeNumber(6, 9, random),
    late: 0,
    exhaust: wholeNumber(7, 10, random),
  }
  return {
    'stiff-valve': { ...whole, cracking: wholeNumber(14, 18, random) },
    'starved-valve': { ...whole, late: wholeNumber(18, 26, random) },
    'sticking-exhaust': { ...whole, exhaust: wholeNumber(22, 28, random) },
    'strong-assist': { ...whole, inhalation: -wholeNumber(8, 12, random) },
  }
}

/** Pressure at the mouth while inhaling, at a share of the time of inhalation; where the flow is greatest a starved valve falls short. */
export function inhaled({ cracking, inhalation, late }: Loop, share: number): number {
  const flow = Math.sin(Math.PI * share)
  return -(cracking + inhalation * flow + late * flow ** 4)
}

/** Pressure at the mouth while exhaling, at a share of the time of exhalation. */
export function exhaled({ exhaust }: Loop, share: number): number {
  return 1 + (exhaust - 1) * Math.sin(Math.PI * share)
}

/** Both halves as rows of whole mbar at five moments. */
export function loopInNumbers(loop: Loop): { readonly inhaled: string; readonly exhaled: string } {
  const row = (pressure: (loop: Loop, share: number) => number): string =>
    [0, 0.25, 0.5, 0.75, 1].map((share) => String(Math.round(pressure(loop, share)) + 0).replace('-', '−')).join(', ')
  return { inhaled: row(inhaled), exhaled: row(exhaled) }
}
