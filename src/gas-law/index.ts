export { type BoyleStates, boyle } from './boyle.ts'
export { type GasDensityLimit, gasDensityLimits } from './breathing-gas-density.table.ts'
export { type BreathedGas, gasDensityAssessment, pressureAtGasDensity } from './breathing-gas-density.ts'
export { type BreathingHeat, breathingHeat, type Ventilation } from './breathing-heat.ts'
export { type CharlesStates, charles } from './charles.ts'
export { type CombinedGasStates, combinedGasLaw } from './combined-gas-law.ts'
export {
  type CompiledMixture,
  type CompileOptions,
  compiledCompressibilityFactor,
  compiledMolarDensity,
  compileMixture,
} from './compiled-mixture.ts'
export {
  mixtureOfPartialPressures,
  type PartialPressures,
  partialPressure,
  partialPressures,
  totalPressure,
} from './dalton.ts'
export {
  amountOfFreeGas,
  type FreeGasByModel,
  freeGas,
  freeGasAt,
  freeGasByModel,
  freeGasOfAmount,
} from './free-gas.ts'
export { type ContentsColumns, freeGasInto } from './free-gas-columns.ts'
export { type Gas, gases } from './gas.ts'
export {
  amountOfGas,
  type ContentsByAbsolutePressure,
  type ContentsByGaugePressure,
  type ElasticExpansion,
  type GasContents,
  type GasModelOption,
  massOfGas,
} from './gas-contents.ts'
export { type GasModel, molarDensityBy } from './gas-model.ts'
export { type GasState, gasState, type PressureTemperature } from './gas-state.ts'
export { type GayLussacStates, gayLussac } from './gay-lussac.ts'
export { gasConstant } from './gerg2008.parameters.ts'
export { type GrahamQuantities, graham } from './graham.ts'
export { type HenryStates, henry } from './henry.ts'
export {
  type ConcentrationReference,
  humidityRatio,
  moistureConcentration,
  waterFractionOfConcentration,
  waterFractionOfHumidityRatio,
} from './humidity-concentration.ts'
export { type Condensate, condensate } from './humidity-condensate.ts'
export {
  type DewPoint,
  dewPoint,
  dewPointAtPressure,
  type OverPhase,
  saturatedWaterFraction,
} from './humidity-dew-point.ts'
export {
  type EnhancementUncertainty,
  enhancementFactor,
  enhancementFactorInHelium,
  enhancementUncertainty,
} from './humidity-enhancement.ts'
export { relativeHumidity, waterFractionAtHumidity } from './humidity-relative.ts'
export {
  saturationPressure,
  saturationPressureInto,
  saturationPressureOverIce,
  saturationPressureOverWater,
  saturationTemperature,
  type WaterPhase,
} from './humidity-saturation.ts'
export { type HumidAirVirials, humidAirVirials, waterFugacityInAir } from './humidity-virial.ts'
export { saturatedVapourDensity, saturatedWaterDensity } from './humidity-water-density.ts'
export { humidityRatioFromWetBulb } from './humidity-wet-bulb.ts'
export { type IdealGasDensity, idealGasDensity } from './ideal-gas-density.ts'
export { type IdealGasState, idealGasLaw, molarGasConstant } from './ideal-gas-law.ts'
export {
  temperatureAtDensity,
  temperatureAtEnthalpy,
  temperatureAtEntropy,
  temperatureAtInternalEnergy,
} from './inverse-states.ts'
export type { OneOmitted } from './law.ts'
export { atpd, atps, btpsAt, type MeasuredState } from './measured-condition.ts'
export {
  dryAir,
  enrichedAir,
  heliox,
  type Mixture,
  type MixtureOptions,
  type MoleFractions,
  mixture,
  molarMass,
  nitrox,
  pureGas,
  trimix,
} from './mixture.ts'
export { modelRanges, type UncertaintyClass, uncertaintyClasses } from './model-uncertainty.table.ts'
export { type GasPair, type ModelUncertainty, modelUncertainty } from './model-uncertainty.ts'
export { molarDensity } from './molar-density.ts'
export {
  maximumOperatingDepth,
  minimumOperatingDepth,
  type OxygenDepthLimit,
  type RichestMixture,
  richestMixture,
} from './oxygen-limit.ts'
export { pressureAt } from './pressure-at.ts'
export { pressureChange, pressureVolume } from './pressure-volume.ts'
export {
  btps,
  btpsConventional,
  isoStandard,
  iupacStandard,
  normalCondition,
  referenceConditions,
  roomCondition,
  stpd,
  usStandard,
} from './reference-condition.table.ts'
export type { ReferenceCondition } from './reference-condition.ts'
export {
  type DissolvedGas,
  type HenryCoefficients,
  type HenryConstant,
  henryCoefficients,
  henryConstant,
} from './solubility-henry.ts'
export type { SeaDissolvedGas } from './solubility-weiss.table.ts'
export {
  airSaturation,
  bunsenCoefficient,
  type DissolvingWater,
  dissolvedConcentration,
} from './solubility-weiss.ts'
export { type ColumnGas, compressibilityFactorInto, molarDensityInto, type StateColumns } from './state-columns.ts'
export { surfaceEquivalent } from './surface-equivalent.ts'
export { airThermalConductivity, airViscosity, thermalConductivity, viscosity } from './transport.ts'
export { type DiffusionPair, type DiffusionRow, diffusionTable, diffusivity } from './transport-diffusion.ts'
export { type TransportUncertainty, transportUncertainty } from './transport-mixture.table.ts'
export { type VanDerWaalsConstants, vanDerWaalsConstants } from './van-der-waals.table.ts'
export { vanDerWaalsMolarDensity, vanDerWaalsPressure } from './van-der-waals.ts'
