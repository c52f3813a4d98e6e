export { gasConstant } from './gerg2008.parameters.ts'
