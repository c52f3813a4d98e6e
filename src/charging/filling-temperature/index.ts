export { type ChargedCylinder, type ChargedEnd, chargeCylinder, fastestFill } from './charge-cylinder.ts'
