import { requireKeys } from '../../errors/index.ts'
import { molarGasConstant } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Density,
  type Fraction,
  gramPerMole,
  kelvin,
  kilogramPerCubicMetre,
  litrePerSecondBar,
  type MolarMass,
  one,
  requireWithin,
  type SonicConductance,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import { type CriticalFlow, criticalFlow } from './critical-flow.ts'
import { type Orifice, requireOrifice } from './orifice.ts'

/** A valve or fitting by the two figures that a flow bench gives. */
export interface ValveFlow {
  /** Flow of reference gas over upstream pressure while choked, m³/(s·Pa). */
  readonly sonicConductance: SonicConductance
  /** Pressure ratio below which it is choked: about 0.5 for a short orifice, 0.2 to 0.45 for a valve. */
  readonly criticalPressureRatio: Fraction
}

const ratio: Accepted = { atLeast: 0, below: 1, unit: one, hint: '0.2 to 0.53 is usual.' }
const conductance: Accepted = {
  above: 0,
  atMost: 1e6,
  unit: litrePerSecondBar,
  hint: 'Give flow at the reference condition over upstream pressure.',
}
const pressure: Accepted = { above: 0, atMost: 500, unit: bar, hint: 'Give an absolute pressure.' }
const temperature: Accepted = { above: 0, atMost: 1000, unit: kelvin, hint: 'Check the temperature scale.' }
const molarMass: Accepted = { above: 0, atMost: 200, unit: gramPerMole, hint: '`molarMass` gives it.' }
const density: Accepted = {
  above: 0,
  atMost: 10,
  unit: kilogramPerCubicMetre,
  hint: 'Give the density at the reference.',
}

/**
 * Flow through a valve by its sonic conductance, as gas at the reference condition of the conductance.
 *
 * @param valve - sonic conductance, m³/(s·Pa); critical pressure ratio, 0 up to 1
 * @param state - pressures, absolute, Pa, downstream at most upstream; upstream temperature and that of the reference, K
 * @returns volume flow at the reference condition, m³/s
 * @throws LitrebarError `range` for a value out of range, or a downstream pressure above the upstream one
 * @source iso-6358, form of the law (memory)
 */
export function conductedFlow(
  valve: ValveFlow,
  state: {
    readonly upstreamPressure: AbsolutePressure
    readonly downstreamPressure: AbsolutePressure
    readonly upstreamTemperature: Temperature
    readonly referenceTemperature: Temperature
  },
): VolumeFlow {
  requireKeys('valve', valve, { sonicConductance: true, criticalPressureRatio: true })
  requireKeys('state', state, {
    upstreamPressure: true,
    downstreamPressure: true,
    upstreamTemperature: true,
    referenceTemperature: true,
  })
  const { upstreamPressure, downstreamPressure, upstreamTemperature, referenceTemperature } = state
  requireWithin('valve.sonicConductance', valve.sonicConductance, conductance)
  requireWithin('valve.criticalPressureRatio', valve.criticalPressureRatio, ratio)
  requireWithin('state.upstreamPressure', upstreamPressure, pressure)
  requireWithin('state.downstreamPressure', downstreamPressure, {
    atLeast: 0,
    atMost: upstreamPressure / bar.factor,
    unit: bar,
    hint: 'Gas flows towards the lower pressure: exchange the two.',
  })
  requireWithin('state.upstreamTemperature', upstreamTemperature, temperature)
  requireWithin('state.referenceTemperature', referenceTemperature, temperature)
  const b = valve.criticalPressureRatio
  const r = downstreamPressure / upstreamPressure
  const choked = valve.sonicConductance * upstreamPressure * Math.sqrt(referenceTemperature / upstreamTemperature)
  return (choked * (r <= b ? 1 : Math.sqrt(1 - ((r - b) / (1 - b)) ** 2))) as VolumeFlow
}

/**
 * Sonic conductance of an orifice, ideal gas.
 *
 * @param orifice - area, m²; discharge coefficient
 * @param reference - of the conductance: density, kg/m³, and temperature, K, of the reference gas; its molar mass, kg/mol; ratio of heat capacities
 * @returns sonic conductance, m³/(s·Pa), and the ideal critical pressure ratio
 * @throws LitrebarError `range` for a value out of range
 * @source iso-6358, definition (memory); litrebar-derivation
 */
export function conductanceOfOrifice(
  orifice: Orifice,
  reference: {
    readonly density: Density
    readonly temperature: Temperature
    readonly molarMass: MolarMass
    readonly heatCapacityRatio: Fraction
  },
): ValveFlow {
  requireOrifice(orifice)
  requireKeys('reference', reference, { density: true, temperature: true, molarMass: true, heatCapacityRatio: true })
  requireWithin('reference.density', reference.density, density)
  requireWithin('reference.temperature', reference.temperature, temperature)
  requireWithin('reference.molarMass', reference.molarMass, molarMass)
  const critical: CriticalFlow = criticalFlow(reference.heatCapacityRatio)
  const specificEnergy = (molarGasConstant * reference.temperature) / reference.molarMass
  return {
    sonicConductance: ((orifice.dischargeCoefficient * orifice.area * critical.criticalFlowFactor) /
      (reference.density * Math.sqrt(specificEnergy))) as SonicConductance,
    criticalPressureRatio: critical.criticalPressureRatio,
  }
}
