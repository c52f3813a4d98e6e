export { type DiffusionPair, type DiffusionRow, diffusionTable, diffusivity } from './diffusion.ts'
export { type TransportUncertainty, transportUncertainty } from './mixture.table.ts'
export {
  airThermalConductivity,
  airViscosity,
  thermalConductivity,
  viscosity,
} from './viscosity-and-conductivity.ts'
