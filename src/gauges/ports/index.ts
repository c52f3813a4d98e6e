export {
  type HoseId,
  hoses,
  type Port,
  type PortId,
  type PressureSide,
  ports,
  type RegulatorHose,
  type UnifiedThread,
} from './port.table.ts'
export { assessPortFit, type PortFit, type ThreadSize, threadSize } from './port-fit.ts'
