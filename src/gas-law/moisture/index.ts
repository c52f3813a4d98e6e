export { type BreathingHeat, breathingHeat, type Ventilation } from './breathing-heat.ts'
export {
  type ConcentrationReference,
  humidityRatio,
  moistureConcentration,
  waterFractionFromConcentration,
  waterFractionFromHumidityRatio,
} from './concentration.ts'
export { type Condensate, condensate } from './condensate.ts'
export {
  type DewPoint,
  dewPoint,
  dewPointAtPressure,
  type OverPhase,
  saturatedWaterFraction,
} from './dew-point.ts'
export {
  type EnhancementUncertainty,
  enhancementFactor,
  enhancementFactorInHelium,
  enhancementUncertainty,
} from './enhancement-factor.ts'
export {
  dewPointInto,
  relativeHumidityInto,
  saturatedWaterFractionInto,
  type WaterFractionColumns,
  waterFractionFromHumidityInto,
} from './humidity-columns.ts'
export { relativeHumidity, waterFractionFromHumidity } from './relative-humidity.ts'
export { type HumidAirVirials, humidAirVirials, waterFugacityInAir } from './virial.ts'
export { humidityRatioFromWetBulb } from './wet-bulb.ts'
