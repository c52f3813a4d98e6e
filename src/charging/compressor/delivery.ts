import { requireKeys, requireWord } from '../../errors/index.ts'
import { amountPerFreeGas } from '../../gas-law/contents/free-gas.ts'
import {
  type GasModelOption,
  type Mixture,
  molarDensityBy,
  molarMass,
  type ReferenceCondition,
} from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Fraction,
  type FreeGasFlow,
  type MassFlow,
  one,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import { ambientPressure, flow, pressure, requireAbove, share, temperature } from '../accepted.ts'
import { type ClearanceSpace, volumetricEfficiency } from './volumetric-efficiency.ts'

/** The first stage, which decides how much a compressor takes. */
export interface IntakeStage {
  readonly mixture: Mixture
  /** Air around the compressor. */
  readonly ambient: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  /** Volume that the piston sweeps for each time: bore area × stroke × speed. */
  readonly sweptFlow: VolumeFlow
  readonly clearance: ClearanceSpace
  /** First interstage pressure, absolute. */
  readonly to: AbsolutePressure
  /** Gas in the cylinder at the end of the suction stroke, throttled by filter and valve and warmed by the wall. Left out, as around. */
  readonly drawn?: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  /** Share of the drawn gas that rings, valves and drains lose. Left out, none. */
  readonly leakage?: Fraction
  /** Mole fraction of water in the air drawn, which does not reach the cylinder. Left out, dry. */
  readonly waterFraction?: Fraction
}

/** What a compressor delivers. */
export interface Delivery<Name extends string> {
  /** By the clearance alone, at the state in the cylinder. */
  readonly volumetricEfficiency: Fraction
  /** Delivered gas at the ambient state over the swept volume: throttling, warming, leakage and water included. */
  readonly overallVolumetricEfficiency: Fraction
  /** Dry gas. */
  readonly massFlow: MassFlow
  readonly freeAir: FreeGasFlow<Name>
}

/**
 * Free air that a compressor delivers, from its first stage: swept volume, less what clearance, throttling, warm walls, leaks and
 * water take. At altitude and in heat the swept volume stays and the mass falls.
 *
 * @param stage - mixture; ambient state, absolute Pa, 0.3 to 1.2 bar, and K; swept flow, m³/s; clearance; first interstage pressure,
 *   absolute, Pa; state drawn; leakage and water fraction, 0 to below 1
 * @param options - reference condition of the free air, required; `gas: 'ideal'` to show the difference
 * @returns volumetric efficiencies, mass flow, kg/s, flow of free air, m³/s
 * @throws LitrebarError `range`, naming the field, also where the clearance leaves nothing to deliver; `input` for an unknown key
 * @source litrebar-derivation, volumetric efficiency and density at the inlet
 * @example
 * const stage = {
 *   mixture: dryAir,
 *   ambient: { pressure: absolute(0.8, bar), temperature: temperatureOf(35, celsius) },
 *   sweptFlow: measure(200, litrePerMinute),
 *   clearance: { clearance: measure(0.05, one), exponent: measure(1.3, one) },
 *   to: absolute(5, bar),
 *   leakage: measure(0.03, one),
 * }
 * inUnit(compressorDelivery(stage, { reference: isoStandard }).freeAir, litrePerMinute).toFixed(0) // => '121'
 */
export function compressorDelivery<Name extends string>(
  stage: IntakeStage,
  options: GasModelOption & { readonly reference: ReferenceCondition<Name> },
): Delivery<Name> {
  const { mixture, ambient, drawn = ambient, leakage = 0, waterFraction = 0 } = requireStage(stage)
  const { gas = 'real' } = requireReference(options)
  const fresh = volumetricEfficiency(stage.clearance, (stage.to / drawn.pressure) as Fraction)
  requireWithin('stage.to', fresh, {
    above: 0,
    unit: one,
    hint: 'The clearance gas fills the whole stroke: the stage delivers nothing at that pressure.',
  })
  const kept = fresh * (1 - leakage) * (1 - waterFraction)
  const amount = stage.sweptFlow * kept * molarDensityBy(gas, mixture, drawn.pressure, drawn.temperature) // mol/s
  const around = molarDensityBy(gas, mixture, ambient.pressure, ambient.temperature)
  return {
    volumetricEfficiency: fresh,
    overallVolumetricEfficiency: (amount / around / stage.sweptFlow) as Fraction,
    massFlow: (amount * molarMass(mixture)) as MassFlow,
    freeAir: (amount / amountPerFreeGas({ ...options, mixture })) as FreeGasFlow<Name>,
  }
}

function requireStage(stage: IntakeStage): IntakeStage {
  requireKeys('stage', stage, {
    mixture: true,
    ambient: true,
    sweptFlow: true,
    clearance: true,
    to: true,
    drawn: false,
    leakage: false,
    waterFraction: false,
  })
  requireKeys('stage.ambient', stage.ambient, { pressure: true, temperature: true })
  requireWithin('stage.ambient.pressure', stage.ambient.pressure, ambientPressure)
  requireWithin('stage.ambient.temperature', stage.ambient.temperature, temperature)
  requireWithin('stage.sweptFlow', stage.sweptFlow, flow)
  if (stage.drawn !== undefined) {
    requireKeys('stage.drawn', stage.drawn, { pressure: true, temperature: true })
    requireWithin('stage.drawn.pressure', stage.drawn.pressure, pressure)
    requireWithin('stage.drawn.temperature', stage.drawn.temperature, temperature)
  }
  requireAbove('stage.to', stage.to, (stage.drawn ?? stage.ambient).pressure)
  if (stage.leakage !== undefined) requireWithin('stage.leakage', stage.leakage, share)
  if (stage.waterFraction !== undefined) requireWithin('stage.waterFraction', stage.waterFraction, share)
  return stage
}

/** Refuses options without a reference condition. Shared by the ratings. */
export function requireReference<Options extends GasModelOption & { readonly reference: ReferenceCondition }>(
  options: Options,
): Options {
  requireKeys('options', options, { reference: true, gas: false })
  requireWord('options.gas', options.gas ?? 'real', ['real', 'ideal'])
  return options
}
