export { gerg2008GasConstant } from './gerg2008.parameters.ts'
