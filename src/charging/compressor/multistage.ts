import { type CaloricOptions, caloricOf } from '../../cylinder/caloric.ts'
import { requireKeys } from '../../errors/index.ts'
import { gasState, type Mixture, molarMass } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Fraction,
  joulePerMole,
  kilogramPerHour,
  type MassFlow,
  type MolarEnergy,
  type Power,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { efficiency as efficiencyRange, pressure, requireAbove, requireSome, temperature } from '../accepted.ts'
import { type Compression, type CompressionPath, compressed, requireModel, requirePath } from './compression.ts'

/** One stage of a compressor, with the cooler before it. */
export interface CompressorStage {
  /** Pressure that it delivers, absolute. */
  readonly to: AbsolutePressure
  /** Temperature of the gas drawn in. Left out, the first stage draws at the intake and a later one gets gas cooled to the intake. */
  readonly inletTemperature?: Temperature
  /** Pressure of the gas drawn in, absolute, where a cooler or filter took some of it. */
  readonly inletPressure?: AbsolutePressure
  /** How it compresses, where it differs from the machine. */
  readonly path?: CompressionPath
}

/** A compressor of one or more stages. */
export interface MultistageCompressor {
  readonly mixture: Mixture
  readonly intake: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  readonly stages: readonly CompressorStage[]
  readonly path: CompressionPath
  /** Temperature after the last cooler. Left out, that of the intake. */
  readonly deliveryTemperature?: Temperature
}

/** One stage at work. */
export interface StageAtWork extends Compression {
  readonly inletPressure: AbsolutePressure
  readonly inletTemperature: Temperature
  readonly dischargePressure: AbsolutePressure
  readonly pressureRatio: Fraction
  /** What the cooler after it takes, per mole that passes: from the discharge to what the next stage draws. */
  readonly molarCoolerHeat: MolarEnergy
}

/** A compressor at work. */
export interface CompressorAtWork {
  readonly stages: readonly StageAtWork[]
  /** All stages together, per mole of gas. */
  readonly molarWork: MolarEnergy
  /** Heat to walls and coolers, per mole. */
  readonly molarHeat: MolarEnergy
  /** From intake to the last pressure at the temperature of the intake: the least there is. */
  readonly isothermalMolarWork: MolarEnergy
  readonly isothermalEfficiency: Fraction
  readonly cautions: readonly CautionId[]
}

/**
 * A compressor of any number of stages, at any interstage pressures, with coolers that may leave the gas warm: what each stage does to
 * the gas, its discharge temperature, and the work of all. More heat is to be taken away than work is put in, once the gas is dense.
 *
 * A discharge temperature here is that of the gas. Oil, valves and filters bear what their maker states.
 *
 * @param machine - mixture; intake, absolute Pa and K; stages in their order; path of all stages
 * @param options - `gas: 'ideal'` for constant heat capacities, to show the difference
 * @returns stages, J/mol and K; work, heat and isothermal efficiency of the whole
 * @throws LitrebarError `range`, naming the stage and field; `input` for no stage, an unknown key or word; `outside-validity` as `compression`
 * @source gerg-2008; litrebar-derivation, steady flow through stages and coolers
 * @example
 * const machine = {
 *   mixture: dryAir,
 *   intake: { pressure: absolute(1, atmosphere), temperature: temperatureOf(25, celsius) },
 *   stages: [
 *     { to: absolute(5, bar) },
 *     { to: absolute(22, bar), inletTemperature: temperatureOf(45, celsius) },
 *     { to: absolute(85, bar), inletTemperature: temperatureOf(50, celsius) },
 *     { to: absolute(300, bar), inletTemperature: temperatureOf(50, celsius) },
 *   ],
 *   path: { process: 'isentropic', efficiency: measure(0.8, one) },
 * } as const
 * const { stages, isothermalEfficiency } = compressorWork(machine)
 * stages.map((stage) => inUnit(stage.dischargeTemperature, celsius).toFixed(0)) // => ['238', '252', '240', '226']
 * inUnit(isothermalEfficiency, percent).toFixed(1) // => '60.3'
 */
export function compressorWork(machine: MultistageCompressor, options: CaloricOptions = {}): CompressorAtWork {
  requireMachine(machine)
  requireModel(options)
  const { mixture, intake, deliveryTemperature = intake.temperature } = machine
  const enthalpy = (p: AbsolutePressure, t: Temperature): number =>
    options.gas === 'ideal'
      ? caloricOf(options).enthalpy(mixture, { pressure: p, temperature: t })
      : gasState(mixture, { pressure: p, temperature: t }, { extrapolate: true }).molarEnthalpy
  const inlets = inletsOf(machine)
  const stages = machine.stages.map(({ to, path = machine.path }, k): StageAtWork => {
    const from = inlets[k] as Inlet
    const done = compressed({ mixture, from, to }, path, options)
    const next = inlets[k + 1] ?? { pressure: to, temperature: deliveryTemperature }
    return {
      ...done,
      inletPressure: from.pressure,
      inletTemperature: from.temperature,
      dischargePressure: to,
      pressureRatio: (to / from.pressure) as Fraction,
      molarCoolerHeat: (enthalpy(to, done.dischargeTemperature) -
        enthalpy(next.pressure, next.temperature)) as MolarEnergy,
    }
  })
  const sum = (of: (stage: StageAtWork) => number): MolarEnergy =>
    stages.reduce((total, stage) => total + of(stage), 0) as MolarEnergy
  const { to: last } = machine.stages.at(-1) as CompressorStage
  const least = compressed({ mixture, from: intake, to: last }, { process: 'isothermal' }, options).molarWork
  const molarWork = sum((stage) => stage.molarWork)
  return {
    stages,
    molarWork,
    molarHeat: sum((stage) => stage.molarHeat + stage.molarCoolerHeat),
    isothermalMolarWork: least,
    isothermalEfficiency: (least / molarWork) as Fraction,
    cautions: ['breathing-air'],
  }
}

interface Inlet {
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
}

function inletsOf({ intake, stages }: MultistageCompressor): readonly Inlet[] {
  return stages.map(({ inletPressure, inletTemperature }, k) => ({
    pressure: inletPressure ?? (k === 0 ? intake.pressure : (stages[k - 1] as CompressorStage).to),
    temperature: inletTemperature ?? intake.temperature,
  }))
}

function requireMachine(machine: MultistageCompressor): void {
  requireKeys('machine', machine, { mixture: true, intake: true, stages: true, path: true, deliveryTemperature: false })
  requireKeys('machine.intake', machine.intake, { pressure: true, temperature: true })
  requireWithin('machine.intake.pressure', machine.intake.pressure, pressure)
  requireWithin('machine.intake.temperature', machine.intake.temperature, temperature)
  if (machine.deliveryTemperature !== undefined)
    requireWithin('machine.deliveryTemperature', machine.deliveryTemperature, temperature)
  requireSome('machine.stages', machine.stages, 'List the stages in the order in which the gas passes them.')
  requirePath('machine.path', machine.path)
  for (const [k, stage] of machine.stages.entries()) {
    const at = `machine.stages[${k}]`
    requireKeys(at, stage, { to: true, inletTemperature: false, inletPressure: false, path: false })
    if (stage.path !== undefined) requirePath(`${at}.path`, stage.path)
    if (stage.inletTemperature !== undefined)
      requireWithin(`${at}.inletTemperature`, stage.inletTemperature, temperature)
    if (stage.inletPressure !== undefined) requireWithin(`${at}.inletPressure`, stage.inletPressure, pressure)
  }
  for (const [k, inlet] of inletsOf(machine).entries()) {
    requireAbove(`machine.stages[${k}].to`, (machine.stages[k] as CompressorStage).to, inlet.pressure)
  }
}

const massFlowRange: Accepted = {
  above: 0,
  atMost: 1e5,
  unit: kilogramPerHour,
  hint: 'Give the mass of gas that passes for each time.',
}
const workRange: Accepted = { above: 0, atMost: 1e6, unit: joulePerMole, hint: 'Take it from compressorWork.' }

/**
 * Shaft power of a compressor: work of the gas for each time, over what bearings, rings and belt leave of the shaft’s work.
 *
 * @param drive - mixture; molar work, J/mol, from `compressorWork`; mass flow, kg/s; mechanical efficiency, above 0 and at most 1
 * @returns power, W
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, work for each time
 * @example
 * const intake = { pressure: absolute(1, atmosphere), temperature: temperatureOf(20, celsius) }
 * const { molarWork } = compressorWork({
 *   mixture: dryAir,
 *   intake,
 *   stages: [{ to: absolute(6, bar) }, { to: absolute(37, bar) }, { to: absolute(225, bar) }],
 *   path: { process: 'polytropic', exponent: measure(1.3, one) },
 * })
 * const massFlow = measure(7.2, kilogramPerHour) // 100 L/min
 * inUnit(shaftPower({ mixture: dryAir, molarWork, massFlow, mechanicalEfficiency: measure(0.75, one) }), kilowatt).toFixed(2) // => '1.50'
 */
export function shaftPower(drive: {
  readonly mixture: Mixture
  readonly molarWork: MolarEnergy
  readonly massFlow: MassFlow
  readonly mechanicalEfficiency: Fraction
}): Power {
  requireKeys('drive', drive, { mixture: true, molarWork: true, massFlow: true, mechanicalEfficiency: true })
  requireWithin('drive.massFlow', drive.massFlow, massFlowRange)
  requireWithin('drive.molarWork', drive.molarWork, workRange)
  requireWithin('drive.mechanicalEfficiency', drive.mechanicalEfficiency, efficiencyRange)
  return ((drive.massFlow / molarMass(drive.mixture)) * (drive.molarWork / drive.mechanicalEfficiency)) as Power
}
