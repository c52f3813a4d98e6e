import { DictionaryColumn } from './dictionary-column.ts'
import { FieldColumn } from './field-column.ts'

/** A column of text that is decoded only where its words are needed. */
export type TextColumn = FieldColumn | DictionaryColumn

/** Whether a column is text that has not been decoded. */
export function isTextColumn(column: unknown): column is TextColumn {
  return column instanceof FieldColumn || column instanceof DictionaryColumn
}
