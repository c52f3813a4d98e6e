export {
  type BurstDiscWindow,
  burstDiscWindow,
  type DiscOnCylinder,
  type ReliefDeviceRule,
  type ReliefDeviceRuleId,
  reliefDeviceRules,
} from './burst-disc.ts'
export { type Connection, connectionOf, valveOutletsFor } from './connection.ts'
export { endLoad } from './end-load.ts'
export { type KeptBack, type ReserveKept, type ReserveValve, reserveOf } from './reserve-valve.ts'
export {
  type ConnectionRow,
  type ConnectorId,
  connections,
  type NeckThreadRow,
  neckThreads,
  type ValveArrangement,
  type ValveOutlet,
  type ValveOutletId,
  type ValveStandard,
  valveArrangements,
  valveOutlets,
  valveStandards,
} from './valve-outlet.table.ts'
