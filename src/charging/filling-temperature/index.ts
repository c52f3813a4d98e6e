export {
  type ChargedCylinder,
  type ChargedEnd,
  type ChargeOptions,
  chargeCylinder,
  fastestFill,
} from './charge-cylinder.ts'
export { type CompiledCaloric, compileCaloric } from './compiled-caloric.ts'
