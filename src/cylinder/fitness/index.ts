export { assessFilling, type FillingAssessment } from './assess-filling.ts'
export type { FillingRequest, FittedValve, OxygenPolicy } from './filling-request.ts'
