import { isLitrebarError, LitrebarError } from '../../errors/index.ts'
import { parseQuantity } from '../../units/index.ts'
import type { BlockState } from './block-state.ts'
import type { BlockColumn, RowBlock } from './row-block.ts'
import { rowInputs } from './row-input.table.ts'
import type { ReadyInput } from './row-plan.ts'
import { isTextColumn } from './text-column.ts'
import { requireUsualSizes } from './unit-slip.ts'

/**
 * An input of a block in SI. A field may carry a unit of its own. What cannot be read is NaN, and the row has failed.
 *
 * @param input - where it comes from
 * @param block - the rows
 * @param state - receives the rows that fail
 * @param si - receives the values
 * @param isChecked - whether a column whose sizes betray another unit is refused
 * @throws LitrebarError `input` for a column that is not there; `unit` for unusual sizes
 */
export function inputColumn(
  input: ReadyInput,
  block: RowBlock,
  state: BlockState,
  si: Float64Array,
  isChecked: boolean,
): void {
  if (!('column' in input)) {
    si.fill(input.constant)
    return
  }
  const given = columnNamed(input.column, block)
  const { factor } = input.unit
  const offset = input.unit.offset ?? 0
  if (given instanceof Float64Array) {
    for (let row = 0; row < block.count; row++) {
      const number = given[row] as number
      si[row] = number * factor + offset
      if (Number.isNaN(number)) state.fail(row, 'missing', `${input.column} is missing`)
    }
  } else if (isTextColumn(given)) {
    for (let row = 0; row < block.count; row++) {
      const number = given.number(row)
      si[row] = Number.isNaN(number) ? readField(given.text(row), input, row, state) : number * factor + offset
    }
  } else {
    for (let row = 0; row < block.count; row++) {
      const field = given[row] ?? ''
      const number = field === '' ? Number.NaN : Number(field)
      si[row] = Number.isNaN(number)
        ? readField(Number.isNaN(field) ? '' : String(field), input, row, state)
        : number * factor + offset
    }
  }
  if (isChecked) requireUsualSizes(`plan.inputs.${input.name}`, si, input.unit, rowInputs[input.name].usual)
}

/** A field that is no plain number: nothing, or a number with a unit of its own. */
function readField(
  text: string,
  input: Extract<ReadyInput, { column: string }>,
  row: number,
  state: BlockState,
): number {
  if (text.trim() === '') {
    state.fail(row, 'missing', `${input.column} is missing`)
    return Number.NaN
  }
  try {
    return parseQuantity(text, rowInputs[input.name].kind)
  } catch (thrown) {
    if (!isLitrebarError(thrown)) throw thrown
    state.fail(
      row,
      'input',
      `${input.column} is ${JSON.stringify(text.slice(0, 40))}, expected a number in ${input.unit.symbol}`,
    )
    return Number.NaN
  }
}

/** A column of a block by its name. */
export function columnNamed(name: string, block: RowBlock): BlockColumn {
  const column = Object.hasOwn(block.columns, name) ? block.columns[name] : undefined
  if (column !== undefined) return column
  throw new LitrebarError({
    code: 'input',
    argument: 'plan',
    value: `column '${name}'`,
    expected: `one of ${Object.keys(block.columns).join(', ')}`,
    hint: 'The file has no such column.',
  })
}
