import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import { type GasModelOption, type Mixture, molarDensityBy, molarMass } from '../../gas-law/index.ts'
import { rootBetween } from '../../uncertainty/root-between.ts'
import {
  type AbsolutePressure,
  bar,
  type Fraction,
  type MassFlow,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import { flow, pressure, requireAbove, requireSome, share, temperature } from '../accepted.ts'
import { type ClearanceSpace, requireClearance } from './volumetric-efficiency.ts'

/** A stage as it is built. */
export interface BuiltStage {
  /** Bore area × stroke × speed. */
  readonly sweptFlow: VolumeFlow
  readonly clearance: ClearanceSpace
  /** Gas at its inlet, after the cooler before it. */
  readonly inletTemperature: Temperature
  /** Share of what it draws that slips back past rings and valves. Left out, none. */
  readonly slip?: Fraction
}

/** A compressor as it is built and run. */
export interface RunningCompressor {
  readonly mixture: Mixture
  readonly intakePressure: AbsolutePressure
  readonly finalPressure: AbsolutePressure
  readonly stages: readonly BuiltStage[]
}

/** What its gauges should show. */
export interface RunningPressures {
  /** After each stage; the last is the final pressure. */
  readonly pressures: readonly AbsolutePressure[]
  readonly massFlow: MassFlow
}

/**
 * Interstage pressures that a compressor settles at: those at which every stage passes what the one before it delivers. A stage that
 * slips raises the pressure before it and lowers those after; a warm cooler raises the pressure before the stage it feeds.
 *
 * @param machine - mixture; intake and final pressure, absolute, Pa, up to 500 bar; of each stage swept flow, m³/s, clearance, inlet
 *   temperature, K, and slip, 0 to below 1
 * @param options - `gas: 'ideal'` to show the difference
 * @returns pressure after each stage, absolute, Pa; mass flow, kg/s
 * @throws LitrebarError `range`, naming the stage and field; `input` for no stage, an unknown key, or stages that cannot reach the
 *   final pressure
 * @source litrebar-derivation, one flow through all stages
 * @example
 * const stage = (litres: number, degrees: number) => ({
 *   sweptFlow: measure(litres, litrePerMinute),
 *   clearance: { clearance: measure(0.04, one), exponent: measure(1.3, one) },
 *   inletTemperature: temperatureOf(degrees, celsius),
 * })
 * const machine = {
 *   mixture: dryAir,
 *   intakePressure: absolute(1, bar),
 *   finalPressure: absolute(226, bar),
 *   stages: [stage(120, 20), stage(22, 35), stage(4, 35)],
 * }
 * runningPressures(machine).pressures.map((p) => inUnit(p, bar).toFixed(1)) // => ['5.7', '32.3', '226.0']
 */
export function runningPressures(machine: RunningCompressor, options: GasModelOption = {}): RunningPressures {
  requireRunning(machine)
  requireKeys('options', options, { gas: false })
  const { gas = 'real' } = options
  requireWord('options.gas', gas, ['real', 'ideal'])
  const { mixture, intakePressure, finalPressure, stages } = machine
  const highest = pressure.atMost as number
  // the pressures that a molar flow leads to, each stage in closed form; above the range of pressures there is no need to go on
  const chain = (amount: number): readonly number[] => {
    const after: number[] = []
    let below: number = intakePressure
    for (const { sweptFlow, clearance: space, inletTemperature, slip = 0 } of stages) {
      const drawn = molarDensityBy(gas, mixture, below as AbsolutePressure, inletTemperature)
      const fresh = amount / (sweptFlow * (1 - slip) * drawn)
      const ratio = fresh > 1 ? 1 : (1 + (1 - fresh) / space.clearance) ** space.exponent
      below = Math.min(below * ratio, highest * bar.factor)
      after.push(below)
    }
    return after
  }
  const first = stages[0] as BuiltStage
  const most =
    first.sweptFlow * (1 - (first.slip ?? 0)) * molarDensityBy(gas, mixture, intakePressure, first.inletTemperature)
  const excess = (share: number): number => Math.log((chain(most * share).at(-1) as number) / finalPressure)
  if (!(excess(1e-9) > 0)) throw notReached(finalPressure)
  const amount = most * rootBetween(excess, [1e-9, 1], 1e-15, 'interstage pressures')
  return {
    pressures: [...chain(amount).slice(0, -1), finalPressure] as AbsolutePressure[],
    massFlow: (amount * molarMass(mixture)) as MassFlow,
  }
}

function notReached(finalPressure: number): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'machine.finalPressure',
    value: `${String(Number((finalPressure / bar.factor).toPrecision(6)))} bar`,
    expected: 'a pressure that the stages reach before their clearance leaves nothing to deliver',
    hint: 'Check clearances and swept volumes, or add a stage.',
  })
}

function requireRunning(machine: RunningCompressor): void {
  requireKeys('machine', machine, { mixture: true, intakePressure: true, finalPressure: true, stages: true })
  requireWithin('machine.intakePressure', machine.intakePressure, pressure)
  requireAbove('machine.finalPressure', machine.finalPressure, machine.intakePressure)
  requireSome('machine.stages', machine.stages, 'List the stages in the order in which the gas passes them.')
  for (const [k, stage] of machine.stages.entries()) {
    const at = `machine.stages[${k}]`
    requireKeys(at, stage, { sweptFlow: true, clearance: true, inletTemperature: true, slip: false })
    requireWithin(`${at}.sweptFlow`, stage.sweptFlow, flow)
    requireClearance(`${at}.clearance`, stage.clearance)
    requireWithin(`${at}.inletTemperature`, stage.inletTemperature, temperature)
    if (stage.slip !== undefined) requireWithin(`${at}.slip`, stage.slip, share)
  }
}
