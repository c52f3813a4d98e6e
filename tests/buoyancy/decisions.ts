import { assessReliefValve, type ReliefValve } from '../../src/buoyancy/index.ts'
import {
  difference,
  kilogramPerCubicMetre,
  kilopascal,
  litrePerMinute,
  measure,
  metre,
  metrePerSecondSquared,
} from '../../src/units/index.ts'
import type { Decision } from '../fixtures/decision.ts'

const valve: ReliefValve = {
  opensAt: difference(14, kilopascal),
  height: measure(0.35, metre),
  ventFlow: measure(400, litrePerMinute),
}
const judged = (change: Partial<ReliefValve> = {}, inflator = 250, water: object = {}) =>
  assessReliefValve({ ...valve, ...change }, measure(inflator, litrePerMinute), {
    density: measure(1025, kilogramPerCubicMetre),
    ...water,
  })
const [vents, shut, loses, opens] = ['vents-inflator', 'shut-at-rest', 'inflator-wins', 'opens-at-rest']

// A metre of this water is 10.0518 kPa.
const reliefValve: readonly Decision[] = [
  ['it vents more than comes in and stays shut at rest', 'within', [vents, shut], () => judged()],
  ['it vents just what comes in', 'within', [vents, shut], () => judged({}, 400)],
  ['the inflator lets in more', 'beyond', [loses, shut], () => judged({}, 400.1)],
  ['the valve lets out less', 'beyond', [loses, shut], () => judged({ ventFlow: measure(249, litrePerMinute) })],
  ['a bubble just too low to open it', 'within', [vents, shut], () => judged({ height: measure(1.392, metre) })],
  ['a bubble that opens it', 'beyond', [opens, vents], () => judged({ height: measure(1.393, metre) })],
  ['a spring just strong enough', 'within', [vents, shut], () => judged({ opensAt: difference(3.519, kilopascal) })],
  ['a weaker spring', 'beyond', [opens, vents], () => judged({ opensAt: difference(3.518, kilopascal) })],
  ['a valve below the gas', 'within', [vents, shut], () => judged({ height: measure(-1, metre) })],
  [
    'lighter water that leaves it shut',
    'within',
    [vents, shut],
    () => judged({ height: measure(1.42, metre) }, 250, { density: measure(1000, kilogramPerCubicMetre) }),
  ],
  [
    'stronger gravity',
    'beyond',
    [opens, vents],
    () => judged({ height: measure(1.392, metre) }, 250, { gravity: measure(9.83, metrePerSecondSquared) }),
  ],
  ['neither', 'beyond', [loses, opens], () => judged({ height: measure(1.5, metre) }, 500)],
]

/** Decision tables of the room, by function. */
export const decisions: Readonly<Record<string, readonly Decision[]>> = { assessReliefValve: reliefValve }
