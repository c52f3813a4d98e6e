import { requireKeys } from '../../errors/index.ts'
import {
  dewPoint,
  gasState,
  type Mixture,
  molarDensity,
  molarMass,
  temperatureAtEnthalpy,
} from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  joulePerKilogramKelvin,
  kilogramPerSecond,
  litrePerMinute,
  type MassFlow,
  type MoleFraction,
  type Power,
  type PressureDifference,
  requireWithin,
  type SpecificHeatCapacity,
  type Temperature,
  type TemperatureDifference,
  type ThermalConductance,
  type VolumeFlow,
  watt,
  wattPerKelvin,
} from '../../units/index.ts'

const supply: Accepted = { above: 0, atMost: 500, unit: bar, hint: 'Give the absolute pressure.' }
const intermediate: Accepted = { above: 0, atMost: 50, unit: bar, hint: 'State it over ambient.' }
const water: Accepted = { atLeast: -3, atMost: 45, unit: celsius, hint: 'Check the temperature scale.' }
const ventilation: Accepted = { above: 0, atMost: 500, unit: litrePerMinute, hint: 'State litres per minute at depth.' }
const conductance: Accepted = { above: 0, atMost: 10_000, unit: wattPerKelvin, hint: 'State heat flow per kelvin.' }
const gasTemperature: Accepted = { atLeast: -150, atMost: 100, unit: celsius, hint: 'Check the temperature scale.' }
const heat: Accepted = {
  atLeast: -10_000,
  atMost: 10_000,
  unit: watt,
  hint: 'Give watts, negative where the gas warms the stage.',
}
const specificHeat: Accepted = {
  above: 0,
  atMost: 20_000,
  unit: joulePerKilogramKelvin,
  hint: 'Per kilogram, not per mole.',
}
const flow: Accepted = { above: 0, atMost: 10, unit: kilogramPerSecond, hint: 'Check the unit of the flow.' }

/**
 * Temperature behind a throttle: the gas keeps its enthalpy, takes up no heat and does no work. Air and oxygen cool, helium warms.
 *
 * @param mixture - the gas
 * @param before - pressure, absolute, Pa, and temperature, K
 * @param after - pressure behind, absolute, Pa, at most that before
 * @returns temperature, K
 * @throws LitrebarError `range` for a pressure behind above that before; as `gasState`; `outside-validity` where the gas would condense
 * @source gerg-2008, enthalpy; litrebar-derivation, constant enthalpy
 * @example
 * const behind = throttledTemperature(dryAir, { pressure: absolute(200, bar), temperature: temperatureOf(4, celsius) }, absolute(16, bar))
 * inUnit(behind, celsius).toFixed(0) // => '-32'
 */
export function throttledTemperature(
  mixture: Mixture,
  before: { readonly pressure: AbsolutePressure; readonly temperature: Temperature },
  after: AbsolutePressure,
): Temperature {
  requireKeys('before', before, { pressure: true, temperature: true })
  requireWithin('before.pressure', before.pressure, supply)
  requireWithin('after', after, {
    above: 0,
    atMost: before.pressure / bar.factor,
    unit: bar,
    hint: 'Gas flows towards the lower pressure.',
  })
  const { molarEnthalpy } = gasState(mixture, { pressure: before.pressure, temperature: before.temperature })
  return temperatureAtEnthalpy(mixture, { molarEnthalpy, pressure: after })
}

// Of the breath that a machine spends inhaling.
const inhalationShare = 0.5

/** A regulator in cold water. */
export interface ColdCase {
  readonly mixture: Mixture
  /** In the cylinder, absolute; the gas there has the temperature of the water. */
  readonly supplyPressure: AbsolutePressure
  readonly waterTemperature: Temperature
  readonly ambientPressure: AbsolutePressure
  /** Over ambient. */
  readonly intermediatePressure: PressureDifference
  /** At the pressure and the water temperature of the diver. */
  readonly respiratoryMinuteVolume: VolumeFlow
  /** Freezing point of the water outside: of fresh water 0 °C, of sea water `freezingPointOfWater`. */
  readonly freezingPoint: Temperature
  /** Mole fraction of water in the gas, where it is known: from the moisture of the fill. */
  readonly waterFraction?: MoleFraction
  /** Of the body between the gas and the water, where it is known. */
  readonly exchanger?: ThermalConductance
}

/** Temperatures and margins of a regulator in cold water. Margins are differences and promise nothing. */
export interface AssessedCold {
  /** Mean over the breath. */
  readonly massFlow: MassFlow
  /** Mean while inhaling: twice that of the whole breath where both halves last alike. The gas is coldest then, and is judged then. */
  readonly inhalationMassFlow: MassFlow
  /** Behind the first stage, without any heat from the water: the coldest bound. */
  readonly behindFirstStage: Temperature
  /** Behind the second stage, likewise. */
  readonly behindSecondStage: Temperature
  /** Heat that brings the gas back to water temperature, mean over the breath; twice that while inhaling. */
  readonly requiredHeat: Power
  /** Conductance between gas and water that keeps the gas behind the first stage at or above 0 °C while inhaling; absent where the water is no warmer. */
  readonly conductanceToStayAboveZero?: ThermalConductance
  /** The same at the mean flow over the whole breath: half of it, and not enough while inhaling. */
  readonly conductanceAtMeanFlow?: ThermalConductance
  /** Behind the first stage with the exchanger that was stated, at the mean flow while inhaling. */
  readonly behindExchanger?: Temperature
  /** The same at the mean flow of the whole breath: warmer than what is breathed. */
  readonly behindExchangerAtMeanFlow?: Temperature
  /** The same at the peak of a sinusoidal breath, π times the mean: what the body would settle to if the peak lasted. */
  readonly behindExchangerAtPeakFlow?: Temperature
  /** Frost point, or dew point, of the gas at intermediate pressure, with the enhancement factor. */
  readonly frostPoint?: Temperature
  /** Coldest gas behind the first stage less the freezing point of the water. */
  readonly marginToFreezing: TemperatureDifference
  /** Coldest gas behind the first stage less the frost point inside: below 0 the moisture of the gas itself can make ice. */
  readonly marginToFrost?: TemperatureDifference
  readonly cautions: readonly CautionId[]
}

/**
 * A regulator in cold water: how cold the gas gets behind each stage, how much heat the body must supply, and how far that is from ice.
 * The gas of a full cylinder cools most; the second stage adds little.
 *
 * @param at - mixture, pressures, Pa, temperatures, K, ventilation, m³/s; moisture and exchanger where known
 * @returns temperatures, K, heat, W, and margins, K; never a promise that nothing freezes
 * @throws LitrebarError `range` for a value out of range; as `gasState`
 * @source gerg-2008; litrebar-derivation; humidity as `dewPoint`
 * @example
 * const cold = assessCold({
 *   mixture: dryAir,
 *   supplyPressure: absolute(200, bar),
 *   waterTemperature: temperatureOf(4, celsius),
 *   ambientPressure: absolute(6, bar),
 *   intermediatePressure: difference(9.5, bar),
 *   respiratoryMinuteVolume: measure(62.5, litrePerMinute),
 *   freezingPoint: temperatureOf(0, celsius),
 * })
 * inUnit(cold.behindFirstStage, celsius).toFixed(0) // => '-32'
 * inUnit(cold.requiredHeat, watt).toFixed(0) // => '296'
 */
export function assessCold(at: ColdCase): AssessedCold {
  requireCold(at)
  const { mixture, supplyPressure, waterTemperature, ambientPressure, exchanger } = at
  const between = (ambientPressure + at.intermediatePressure) as AbsolutePressure
  const before = { pressure: supplyPressure, temperature: waterTemperature }
  const behindFirstStage = throttledTemperature(mixture, before, between)
  const behindSecondStage = throttledTemperature(mixture, before, ambientPressure)
  const mass = molarMass(mixture)
  const massFlow = at.respiratoryMinuteVolume * molarDensity(mixture, ambientPressure, waterTemperature) * mass
  const warmed = gasState(mixture, { pressure: between, temperature: waterTemperature })
  const requiredHeat =
    (massFlow *
      (warmed.molarEnthalpy -
        gasState(mixture, { pressure: before.pressure, temperature: before.temperature }).molarEnthalpy)) /
    mass
  const specificHeat = warmed.isobaricHeatCapacity / mass
  const inhalationMassFlow = massFlow / inhalationShare
  const zero = 273.15 as Temperature
  const needed =
    behindFirstStage >= zero || waterTemperature <= zero
      ? undefined
      : inhalationMassFlow * specificHeat * Math.log((waterTemperature - behindFirstStage) / (waterTemperature - zero))
  const exchangedAt = (flowOfGas: number): Temperature | undefined =>
    exchanger === undefined
      ? undefined
      : warmedGas({
          temperature: behindFirstStage,
          wallTemperature: waterTemperature,
          conductance: exchanger,
          massFlow: flowOfGas as MassFlow,
          specificHeatCapacity: specificHeat as SpecificHeatCapacity,
        })
  const exchanged = exchangedAt(inhalationMassFlow)
  const atMeanFlow = exchangedAt(massFlow)
  const atPeakFlow = exchangedAt(Math.PI * massFlow)
  const frostPoint =
    at.waterFraction === undefined
      ? undefined
      : dewPoint({ waterFraction: at.waterFraction, pressure: between }).temperature
  const coldest = exchanged ?? behindFirstStage
  return {
    massFlow: massFlow as MassFlow,
    inhalationMassFlow: inhalationMassFlow as MassFlow,
    behindFirstStage,
    behindSecondStage,
    requiredHeat: requiredHeat as Power,
    ...(needed !== undefined && {
      conductanceToStayAboveZero: needed as ThermalConductance,
      conductanceAtMeanFlow: (needed * inhalationShare) as ThermalConductance,
    }),
    ...(exchanged !== undefined && { behindExchanger: exchanged }),
    ...(atMeanFlow !== undefined && { behindExchangerAtMeanFlow: atMeanFlow }),
    ...(atPeakFlow !== undefined && { behindExchangerAtPeakFlow: atPeakFlow }),
    ...(frostPoint !== undefined && { frostPoint, marginToFrost: (coldest - frostPoint) as TemperatureDifference }),
    marginToFreezing: (coldest - at.freezingPoint) as TemperatureDifference,
    cautions: ['regulator-cold', 'regulator'],
  }
}

function requireCold(at: ColdCase): void {
  requireKeys('at', at, {
    mixture: true,
    supplyPressure: true,
    waterTemperature: true,
    ambientPressure: true,
    intermediatePressure: true,
    respiratoryMinuteVolume: true,
    freezingPoint: true,
    waterFraction: false,
    exchanger: false,
  })
  requireWithin('at.supplyPressure', at.supplyPressure, supply)
  requireWithin('at.waterTemperature', at.waterTemperature, water)
  requireWithin('at.freezingPoint', at.freezingPoint, water)
  requireWithin('at.intermediatePressure', at.intermediatePressure, intermediate)
  requireWithin('at.respiratoryMinuteVolume', at.respiratoryMinuteVolume, ventilation)
  requireWithin('at.ambientPressure', at.ambientPressure, {
    above: 0,
    below: (at.supplyPressure - at.intermediatePressure) / bar.factor,
    unit: bar,
    hint: 'The supply must lie above ambient and intermediate pressure together.',
  })
  if (at.exchanger !== undefined) requireWithin('at.exchanger', at.exchanger, conductance)
}

/** Gas along a wall that has the temperature of the water. */
export interface WarmedGas {
  readonly temperature: Temperature
  readonly wallTemperature: Temperature
  readonly conductance: ThermalConductance
  readonly massFlow: MassFlow
  readonly specificHeatCapacity: SpecificHeatCapacity
}

/**
 * Temperature of gas that has passed an exchanger whose wall is as warm as the water: the most warming there can be.
 *
 * @param gas - temperatures, K; conductance, W/K; mass flow, kg/s; specific heat capacity, J/(kg·K)
 * @returns temperature of the gas behind it, K
 * @throws LitrebarError `range` for a value out of range
 * @source litrebar-derivation, one stream against a wall of one temperature
 */
export function warmedGas(gas: WarmedGas): Temperature {
  requireKeys('gas', gas, {
    temperature: true,
    wallTemperature: true,
    conductance: true,
    massFlow: true,
    specificHeatCapacity: true,
  })
  const { temperature, wallTemperature, massFlow, specificHeatCapacity } = gas
  requireWithin('gas.temperature', temperature, gasTemperature)
  requireWithin('gas.wallTemperature', wallTemperature, gasTemperature)
  requireWithin('gas.conductance', gas.conductance, conductance)
  requireWithin('gas.massFlow', massFlow, flow)
  requireWithin('gas.specificHeatCapacity', specificHeatCapacity, specificHeat)
  const transferUnits = gas.conductance / (massFlow * specificHeatCapacity)
  return (wallTemperature - (wallTemperature - temperature) * Math.exp(-transferUnits)) as Temperature
}

/**
 * Temperature of the outside of a first stage while it takes up heat from the water: below the freezing point ice grows on it.
 *
 * @param stage - heat taken up, W; conductance between surface and water, W/K: 200 to 1000 W/(m²·K) times its area in still water (memory); water temperature, K
 * @returns temperature of the surface, K
 * @throws LitrebarError `range` for a value out of range
 * @source litrebar-derivation
 */
export function firstStageSurfaceTemperature(stage: {
  readonly heatFlow: Power
  readonly conductance: ThermalConductance
  readonly waterTemperature: Temperature
}): Temperature {
  requireKeys('stage', stage, { heatFlow: true, conductance: true, waterTemperature: true })
  requireWithin('stage.heatFlow', stage.heatFlow, heat)
  requireWithin('stage.conductance', stage.conductance, conductance)
  requireWithin('stage.waterTemperature', stage.waterTemperature, water)
  return (stage.waterTemperature - stage.heatFlow / stage.conductance) as Temperature
}
