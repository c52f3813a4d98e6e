import { assessReliefValve, type ReliefValve } from '../../../src/buoyancy/index.ts'
import {
  difference,
  kilogramPerCubicMetre,
  kilopascal,
  litrePerMinute,
  measure,
  metre,
} from '../../../src/units/index.ts'
import type { VerdictRow } from './row.ts'

const valve: ReliefValve = {
  opensAt: difference(14, kilopascal),
  height: measure(0.35, metre),
  ventFlow: measure(400, litrePerMinute),
}
const judged = (change: Partial<ReliefValve> = {}, inflator = 250) =>
  assessReliefValve({ ...valve, ...change }, measure(inflator, litrePerMinute), {
    density: measure(1025, kilogramPerCubicMetre),
  }).verdict

/** Functions of this room. */
export const rows: Readonly<Record<string, VerdictRow>> = {
  assessReliefValve: {
    base: () => judged(),
    turnedBy: {
      'an inflator that lets in more': () => judged({}, 401),
      'a valve that lets out less': () => judged({ ventFlow: measure(249, litrePerMinute) }),
      // 1.4 m of water are 14.07 kPa
      'a bubble that opens it at rest': () => judged({ height: measure(1.4, metre) }),
      'a weaker spring': () => judged({ opensAt: difference(3.5, kilopascal) }),
    },
  },
}
