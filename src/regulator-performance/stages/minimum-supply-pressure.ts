import { requireKeys } from '../../errors/index.ts'
import { gerg2008GasConstant, type Mixture, molarDensity, molarMass } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  litrePerSecond,
  type MassFlow,
  type PressureDifference,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import { type Orifice, orificeFlow, requireGasModel } from '../flow/orifice.ts'

/** What a first stage has to deliver, and through what. */
export interface SupplyDemand {
  readonly orifice: Orifice
  readonly mixture: Mixture
  /** Of the gas before the orifice. */
  readonly supplyTemperature: Temperature
  /** Of the gas as it is breathed, to which the demand is stated. */
  readonly breathingGasTemperature: Temperature
  /** Around the divers, absolute. */
  readonly ambientPressure: AbsolutePressure
  /** Peak flow of all who breathe from the stage, at ambient pressure: `peakDemand` gives it. */
  readonly peakFlow: VolumeFlow
  /** Over ambient, that must still stand behind the stage at the peak. */
  readonly intermediatePressure: PressureDifference
  /** By how much the supply must lie above the intermediate pressure for the stage to regulate. */
  readonly regulatingMargin: PressureDifference
}

/** The lowest cylinder pressure that still delivers. */
export interface MinimumSupplyPressure {
  /** Absolute. */
  readonly supplyPressure: AbsolutePressure
  readonly massFlow: MassFlow
  /** What decides: the flow that the orifice passes, or the pressure that the stage needs to regulate. */
  readonly limitedBy: 'orifice' | 'intermediate pressure'
  /** Whether the orifice is choked there. */
  readonly choked: boolean
  readonly cautions: readonly CautionId[]
}

const ambient: Accepted = { above: 0, atMost: 100, unit: bar, hint: 'Give the absolute pressure around the divers.' }
const peak: Accepted = {
  above: 0,
  atMost: 100,
  unit: litrePerSecond,
  hint: 'Give the peak flow, π times the ventilation of one.',
}
const intermediate: Accepted = { above: 0, atMost: 50, unit: bar, hint: 'State it over ambient.' }
const margin: Accepted = {
  atLeast: 0,
  atMost: 50,
  unit: bar,
  hint: 'State the pressure that the stage needs above its outlet.',
}
const gasTemperature: Accepted = { atLeast: -150, atMost: 100, unit: celsius, hint: 'Check the temperature scale.' }
const highest = 500e5

/**
 * The lowest supply pressure at which a first stage still meets a peak demand. Below it the intermediate pressure falls at every breath,
 * and what was easy to breathe becomes hard. Falls with the root of the molar mass: helium helps.
 *
 * @param demand - orifice, mixture, temperatures, ambient pressure, peak flow, intermediate pressure and margin
 * @param options - `gas: 'ideal'` for ideal flow and ideal density
 * @returns the pressure, absolute, Pa, and what decides it
 * @throws LitrebarError `range` for a value out of range, or a demand that not even 500 bar meets
 * @source litrebar-derivation; gerg-2008, critical flow and density
 */
export function minimumSupplyPressure(
  demand: SupplyDemand,
  options: { readonly gas?: 'real' | 'ideal' } = {},
): MinimumSupplyPressure {
  requireDemand(demand)
  requireGasModel(options)
  const { orifice, mixture, supplyTemperature, ambientPressure } = demand
  const needed = demandedMassFlow(demand, options)
  const outlet = (ambientPressure + demand.intermediatePressure) as AbsolutePressure
  const regulating = outlet + demand.regulatingMargin
  const flowAt = (pressure: number) =>
    orificeFlow(
      orifice,
      {
        mixture,
        upstreamPressure: pressure as AbsolutePressure,
        upstreamTemperature: supplyTemperature,
        downstreamPressure: outlet,
      },
      options,
    )
  const enough = flowAt(highest)
  if (enough.massFlow < needed) {
    requireWithin('demand.peakFlow', demand.peakFlow, {
      ...peak,
      atMost: (demand.peakFlow * enough.massFlow) / needed / litrePerSecond.factor,
      hint: 'This orifice does not pass it at 500 bar: check its area and the number of breathers.',
    })
  }
  const lowest = flowAt(Math.max(regulating, outlet * (1 + 1e-9)))
  const pressure =
    lowest.massFlow >= needed ? regulating : meeting(regulating, highest, (p) => flowAt(p).massFlow - needed)
  return {
    supplyPressure: pressure as AbsolutePressure,
    massFlow: needed as MassFlow,
    limitedBy: pressure === regulating ? 'intermediate pressure' : 'orifice',
    choked: flowAt(pressure).choked,
    cautions: ['regulator', 'reserve'],
  }
}

/** Mass flow of a peak demand at ambient pressure, kg/s. */
export function demandedMassFlow(
  demand: Pick<SupplyDemand, 'mixture' | 'ambientPressure' | 'breathingGasTemperature' | 'peakFlow'>,
  { gas = 'real' }: { readonly gas?: 'real' | 'ideal' } = {},
): number {
  const { mixture, ambientPressure, breathingGasTemperature, peakFlow } = demand
  const density =
    gas === 'real'
      ? molarDensity(mixture, ambientPressure, breathingGasTemperature)
      : ambientPressure / (gerg2008GasConstant * breathingGasTemperature)
  return peakFlow * density * molarMass(mixture)
}

/** Refuses a demand whose numbers cannot be meant. */
export function requireDemand(demand: SupplyDemand): void {
  requireKeys('demand', demand, {
    orifice: true,
    mixture: true,
    supplyTemperature: true,
    breathingGasTemperature: true,
    ambientPressure: true,
    peakFlow: true,
    intermediatePressure: true,
    regulatingMargin: true,
  })
  requireWithin('demand.ambientPressure', demand.ambientPressure, ambient)
  requireWithin('demand.supplyTemperature', demand.supplyTemperature, gasTemperature)
  requireWithin('demand.breathingGasTemperature', demand.breathingGasTemperature, gasTemperature)
  requireWithin('demand.peakFlow', demand.peakFlow, peak)
  requireWithin('demand.intermediatePressure', demand.intermediatePressure, intermediate)
  requireWithin('demand.regulatingMargin', demand.regulatingMargin, margin)
}

/** Where a rising function passes zero, to one part in 10¹². */
function meeting(from: number, to: number, f: (x: number) => number): number {
  let low = from
  let high = to
  while (high - low > 1e-12 * high) {
    const middle = (low + high) / 2
    if (f(middle) < 0) low = middle
    else high = middle
  }
  return high
}
