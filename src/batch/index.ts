export type { ColumnFunctionName } from './columns/column-function.table.ts'
export {
  type ColumnCalculation,
  type ColumnWorkers,
  type ColumnWorkersOptions,
  columnWorkers,
  type SharedColumns,
  sharedCodes,
  sharedColumn,
} from './columns/column-workers.ts'
export type { RowFormatName } from './formats/format.table.ts'
export type { PropertyCalculationName } from './rows/calculation.table.ts'
export type { DictionaryColumn } from './rows/dictionary-column.ts'
export type { FieldColumn } from './rows/field-column.ts'
export type { RecordCalculationName } from './rows/record-calculation.table.ts'
export type { BlockColumn, ResultBlock, RowBlock } from './rows/row-block.ts'
export { type RowComputer, rowComputer } from './rows/row-computer.ts'
export type { RowInputName } from './rows/row-input.table.ts'
export {
  type CalculationName,
  type InputSource,
  type RowPlan,
  rowPlanJsonSchema,
  rowPlanSchema,
} from './rows/row-plan.ts'
export { type RunOptions, type RunProgress, type RunSummary, runRows } from './run/run-rows.ts'
