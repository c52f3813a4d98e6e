export { saturatedVapourDensity, saturatedWaterDensity } from './saturated-density.ts'
export {
  saturationPressure,
  saturationPressureInto,
  saturationPressureOverIce,
  saturationPressureOverWater,
  saturationTemperature,
  type WaterPhase,
} from './saturation.ts'
