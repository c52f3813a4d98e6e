import { requireKeys, requireList, requireWord } from '../../errors/index.ts'
import { amountPerFreeGas } from '../../gas-law/contents/free-gas.ts'
import { dryAir, type GasModelOption, type ReferenceCondition } from '../../gas-law/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import { type Accepted, type Duration, gram, hour, type Mass, requireWithin } from '../../units/index.ts'
import { requireReference } from '../compressor/delivery.ts'
import { type CartridgeAir, loadOf, massRange, requireAir } from './cartridge.ts'

/** A run of the compressor through the cartridge. */
export interface CartridgeRun<Name extends string> extends CartridgeAir<Name> {
  readonly duration: Duration
}

/** A cartridge and what has passed it. */
export interface CartridgeLog<Name extends string> {
  readonly capacity: {
    readonly value: Mass
    readonly standardUncertainty: Mass
    /** Where the capacity comes from. A remembered one lets no cartridge pass. */
    readonly basis: 'maker' | 'measured' | 'memory'
  }
  readonly runs: readonly CartridgeRun<Name>[]
  /** How it is run from now on. */
  readonly next: CartridgeAir<Name>
}

/** What is left of a cartridge. */
export interface CartridgeLeft extends Assessment<Mass> {
  /** Running time left under `next`; 0 where the capacity is used up. */
  readonly left: Duration
  /** With two standard uncertainties more water used and to come, and as much less capacity. */
  readonly shortest: Duration
}

const duration: Accepted = { above: 0, atMost: 1e5, unit: hour, hint: 'Give the running time.' }
const doubt: Accepted = {
  atLeast: 0,
  atMost: 1e5,
  unit: gram,
  hint: 'Give a standard uncertainty, 0 if there is none.',
}
const coverage = 2

/**
 * Hours left in a cartridge, from a log of its runs: water taken against capacity. It counts water alone: oil, age, standing open and
 * wetting by a separator that was drained late end a cartridge before its hours do.
 *
 * @param log - capacity, kg, with its uncertainty and basis; runs, each with time, s, flow and separator; conditions from now on
 * @param options - the reference condition of all flows, required; `gas: 'ideal'` leaves out compressibility and enhancement
 * @returns water taken against the capacity; `within` only where it is so with two standard uncertainties; time left, s
 * @throws LitrebarError `range` or `outside-validity`, naming the run and field; `input` for an unknown key or word
 * @source litrebar-derivation, balance of water with `enhancementFactor`
 * @example
 * const air = (degrees: number) => ({
 *   freeAir: freeGasFlowOf(100, litrePerMinute, roomCondition),
 *   separator: { pressure: absolute(200, bar), temperature: temperatureOf(degrees, celsius) },
 * })
 * const log = {
 *   capacity: { value: measure(300, gram), standardUncertainty: measure(10, gram), basis: 'maker' },
 *   runs: [{ ...air(25), duration: measure(40, hour) }, { ...air(38), duration: measure(40, hour) }],
 *   next: air(30),
 * } as const
 * const { verdict, left, shortest } = assessCartridge(log, { reference: roomCondition })
 * const shown = `${verdict}, ${inUnit(left, hour).toFixed(0)} h, at least ${inUnit(shortest, hour).toFixed(0)} h` // => 'within, 89 h, at least 67 h'
 */
export function assessCartridge<Name extends string>(
  log: CartridgeLog<Name>,
  options: GasModelOption & { readonly reference: ReferenceCondition<NoInfer<Name>> },
): CartridgeLeft {
  requireLog(log)
  const { gas = 'real' } = requireReference(options)
  const perFreeAir = amountPerFreeGas({ ...options, mixture: dryAir })
  const { value: capacity, standardUncertainty: capacityDoubt, basis } = log.capacity
  let used = 0
  let usedDoubt = 0 // of one enhancement factor: its errors go together, so they add
  for (const run of log.runs) {
    const load = loadOf(run, perFreeAir, gas)
    used += load.value * run.duration
    usedDoubt += load.standardUncertainty * run.duration
  }
  const next = loadOf(log.next, perFreeAir, gas)
  const spread = Math.hypot(usedDoubt, capacityDoubt)
  const shown = `${(used / gram.factor).toPrecision(3)} g of ${(capacity / gram.factor).toPrecision(3)} g`
  const against: Reason[] = used >= capacity ? [{ code: 'capacity-used', text: `Water taken: ${shown}.` }] : []
  const doubts: Reason[] = []
  if (used < capacity && used + coverage * spread >= capacity)
    doubts.push({ code: 'within-uncertainty-of-capacity', text: `Water taken, with its uncertainty: ${shown}.` })
  if (basis === 'memory') doubts.push({ code: 'capacity-from-memory', text: 'The capacity is given from memory.' })
  const room = (mass: number, load: number): Duration => (Math.max(0, mass) / load) as Duration
  return {
    value: used as Mass,
    limit: capacity,
    margin: capacity - used,
    marginUncertainty: spread,
    ...verdictFrom({
      against,
      doubts,
      notes: [{ code: 'water-alone', text: 'Oil, age and liquid water may have ended the cartridge before.' }],
    }),
    cautions: ['breathing-air', 'carbon-monoxide'],
    sources: ['litrebar-derivation'],
    left: room(capacity - used, next.value),
    shortest: room(capacity - used - coverage * spread, next.value + coverage * next.standardUncertainty),
  }
}

function requireLog<Name extends string>(log: CartridgeLog<Name>): void {
  requireKeys('log', log, { capacity: true, runs: true, next: true })
  requireKeys('log.capacity', log.capacity, { value: true, standardUncertainty: true, basis: true })
  requireWithin('log.capacity.value', log.capacity.value, massRange)
  requireWithin('log.capacity.standardUncertainty', log.capacity.standardUncertainty, doubt)
  requireWord('log.capacity.basis', log.capacity.basis, ['maker', 'measured', 'memory'])
  requireList('log.runs', log.runs)
  for (const [k, run] of log.runs.entries()) {
    requireAir(`log.runs[${k}]`, run, { duration: true })
    requireWithin(`log.runs[${k}].duration`, run.duration, duration)
  }
  requireAir('log.next', log.next)
}
