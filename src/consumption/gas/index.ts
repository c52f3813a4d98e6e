export type { BreathedCylinder, Residual } from './residual.ts'
export type { CylinderGas, GasOptions, GasQuantity } from './vessel-gas.ts'
export { pressureOfAmount } from './vessel-pressure.ts'
