export {
  type CompressedFoam,
  type FoamCells,
  type FoamSheet,
  foamConductivity,
  foamInsulation,
  wornFoamShare,
} from './foam-insulation.ts'
export { type GasLayer, gasLayerInsulation } from './gas-layer.ts'
export { type HeatLoss, heatLoss, type InsulatedDiver } from './heat-loss.ts'
