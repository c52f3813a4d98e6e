export {
  type CylinderBody,
  cylinderBuoyancy,
  type GasTaken,
  massOfGasTaken,
  type SubmergedCylinder,
} from './cylinder-buoyancy.ts'
