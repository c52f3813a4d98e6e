import { isLitrebarError, type LitrebarError, type RowCodeName, rowCodes } from '../../errors/index.ts'
import { type StateColumns, type TabulatedFunction, tabulatedInto } from '../../gas-law/index.ts'
import { type AbsolutePressure, litre, type Temperature } from '../../units/index.ts'
import { BlockState } from './block-state.ts'
import type { Calculation, StateProperty } from './calculation.table.ts'
import { type MetMixture, type MixtureGroup, mixtureGroups } from './mixture-groups.ts'
import type { ResultBlock, RowBlock } from './row-block.ts'
import type { RowInputName } from './row-input.table.ts'
import { inputColumn } from './row-inputs.ts'
import { type ReadyPlan, type RowPlan, readyPlan } from './row-plan.ts'
import { type PreparedProperty, preparedProperty } from './row-tables.ts'
import { Scratch } from './scratch.ts'

/** Computes rows by a plan, block after block. */
export interface RowComputer {
  /** Columns of the file that the plan reads, in the order in which it names them. */
  readonly columns: readonly string[]
  /** Name and unit of each result, in the order of the plan. */
  readonly results: readonly { readonly name: string; readonly unit: string }[]
  /** Significant figures of results that are written as text. */
  readonly figures: number
  /**
   * Computes one block. Bad rows come back in their place with NaN, a code and the words for it.
   *
   * @throws LitrebarError `input` for a column that the block does not have; `unit` for a first block whose sizes betray another unit
   */
  readonly compute: (block: RowBlock) => ResultBlock
}

/**
 * A computer of rows: the one piece that files, workers and engines on many machines share. It keeps tables of the mixtures that it
 * has met, and nothing that would let one row depend on another.
 *
 * @param plan - what is computed, and what the columns mean
 * @returns the computer
 * @throws LitrebarError `input`, `unit` or `mixture` for a plan that cannot be followed
 * @source gerg-2008; as the functions that the plan names
 */
export function rowComputer(plan: RowPlan): RowComputer {
  const ready = readyPlan(plan)
  const mixtures = new Map<string, MetMixture>()
  const scratch = new Scratch()
  let isFirst = true
  return {
    columns: columnsOf(ready),
    results: ready.results.map(({ name, unit }) => ({ name, unit: unit.symbol })),
    figures: ready.figures,
    compute: (block) => {
      const state = new BlockState(block)
      scratch.reset()
      const inputs = readInputs(ready, block, state, scratch, isFirst && !ready.allowUnusual)
      isFirst = false
      const values = ready.results.map(() => new Float64Array(block.count))
      const groups = mixtureGroups(ready, block, state, mixtures)
      for (const group of groups) computeGroup(group, ready, inputs, values, state, scratch)
      for (const row of state.errors.keys()) for (const column of values) column[row] = Number.NaN
      return {
        values: Object.fromEntries(ready.results.map(({ name }, place) => [name, values[place] as Float64Array])),
        code: state.code,
        errors: state.errors,
      }
    },
  }
}

function columnsOf(ready: ReadyPlan): readonly string[] {
  const named = ready.inputs.flatMap((input) => ('column' in input ? [input.column] : []))
  return 'column' in ready.mixture ? [...named, ready.mixture.column] : named
}

/** Inputs of a block in SI, the pressure absolute. */
interface BlockInputs {
  readonly pressurePascal: Float64Array
  readonly temperatureKelvin: Float64Array
  readonly internalVolumeCubicMetre: Float64Array | undefined
}

// As for the contents of a single cylinder.
const mostLitres = 1000
const most = mostLitres * litre.factor

function readInputs(
  ready: ReadyPlan,
  block: RowBlock,
  state: BlockState,
  scratch: Scratch,
  isChecked: boolean,
): BlockInputs {
  const read = new Map<RowInputName, Float64Array>()
  for (const input of ready.inputs) {
    const column = scratch.column(block.count)
    inputColumn(input, block, state, column, isChecked)
    read.set(input.name, column)
  }
  const gauge = read.get('gaugePressure')
  const ambient = read.get('ambientPressure')
  const pressure = gauge === undefined ? read.get('pressure') : gauge
  const temperature = read.get('temperature')
  const internalVolume = read.get('internalVolume')
  if (pressure === undefined || temperature === undefined) throw new Error('the plan has been checked')
  if (internalVolume !== undefined) {
    for (let row = 0; row < block.count; row++) {
      const value = internalVolume[row] as number
      if ((value > 0 && value <= most) || Number.isNaN(value)) continue
      const words = `internal volume is ${value / litre.factor} L, expected above 0 and at most ${mostLitres} L`
      state.fail(row, 'outOfRange', words)
    }
  }
  if (gauge !== undefined && ambient !== undefined) {
    for (let row = 0; row < block.count; row++) pressure[row] = (gauge[row] as number) + (ambient[row] as number)
  }
  return {
    pressurePascal: pressure,
    temperatureKelvin: temperature,
    internalVolumeCubicMetre: internalVolume,
  }
}

/** Computes every result for the rows of one mixture: gathered, computed in loops of their own, and put back into their places. */
function computeGroup(
  { met, rows }: MixtureGroup,
  ready: ReadyPlan,
  all: BlockInputs,
  values: readonly Float64Array[],
  state: BlockState,
  scratch: Scratch,
): void {
  const inputs = rows === undefined ? all : gatheredInputs(all, rows, scratch)
  const properties = new Map<StateProperty, Float64Array>()
  ready.results.forEach(({ calculation, unit }, place) => {
    const prepared = preparedFor(calculation, ready, met)
    let column = properties.get(calculation.property)
    if (column === undefined) {
      column = propertyColumn(prepared, inputs, rows, state, scratch)
      properties.set(calculation.property, column)
    }
    const out = values[place] as Float64Array
    const own = rows === undefined ? out : scratch.column(rows.length)
    scaleInto(own, column, factorFor(calculation, ready, met) / unit.factor)
    if (prepared.isPerPressure) multiply(own, inputs.pressurePascal)
    if (calculation.ofContents && inputs.internalVolumeCubicMetre !== undefined)
      multiply(own, inputs.internalVolumeCubicMetre)
    if (rows !== undefined) scatter(out, own, rows)
  })
}

function scaleInto(out: Float64Array, column: Float64Array, scale: number): void {
  for (let index = 0; index < column.length; index++) out[index] = (column[index] as number) * scale
}

function multiply(out: Float64Array, by: Float64Array): void {
  for (let index = 0; index < out.length; index++) out[index] = (out[index] as number) * (by[index] as number)
}

function scatter(out: Float64Array, own: Float64Array, rows: Int32Array): void {
  for (let index = 0; index < rows.length; index++) out[rows[index] as number] = own[index] as number
}

function gatheredInputs(inputs: BlockInputs, rows: Int32Array, scratch: Scratch): BlockInputs {
  const { pressurePascal, temperatureKelvin, internalVolumeCubicMetre: volume } = inputs
  return {
    pressurePascal: gathered(pressurePascal, rows, scratch),
    temperatureKelvin: gathered(temperatureKelvin, rows, scratch),
    internalVolumeCubicMetre: volume === undefined ? undefined : gathered(volume, rows, scratch),
  }
}

function gathered(column: Float64Array, rows: Int32Array, scratch: Scratch): Float64Array {
  const own = scratch.column(rows.length)
  for (let index = 0; index < rows.length; index++) own[index] = column[rows[index] as number] as number
  return own
}

/** A property of one mixture: from its tables where they hold the state, by the full equation elsewhere. */
function propertyColumn(
  prepared: PreparedProperty,
  inputs: StateColumns,
  rows: Int32Array | undefined,
  state: BlockState,
  scratch: Scratch,
): Float64Array {
  const { pressurePascal, temperatureKelvin } = inputs
  const count = pressurePascal.length
  const value = scratch.column(count).fill(Number.NaN)
  const code = new Uint8Array(count).fill(rowCodes.outOfRange)
  prepared.tables.forEach((table, place) => {
    if (place === 0) tabulatedInto({ value, code }, inputs, table)
    else tabulateRest({ value, code }, inputs, table, scratch)
  })
  for (let index = 0; index < count; index++) {
    if (code[index] === rowCodes.good) continue
    const row = rows === undefined ? index : (rows[index] as number)
    if (state.code[row] !== rowCodes.good) continue
    value[index] = exactValue(prepared, pressurePascal[index] as number, temperatureKelvin[index] as number, row, state)
  }
  return value
}

/** Tabulates the rows that no table before has held. */
function tabulateRest(
  out: { readonly value: Float64Array; readonly code: Uint8Array },
  inputs: StateColumns,
  table: TabulatedFunction,
  scratch: Scratch,
): void {
  const all = new Int32Array(out.code.length)
  let count = 0
  for (let row = 0; row < out.code.length; row++) if (out.code[row] !== rowCodes.good) all[count++] = row
  const rest = all.subarray(0, count)
  const own = {
    pressurePascal: gathered(inputs.pressurePascal, rest, scratch),
    temperatureKelvin: gathered(inputs.temperatureKelvin, rest, scratch),
  }
  const made = { value: scratch.column(count), code: new Uint8Array(count) }
  tabulatedInto(made, own, table)
  for (let index = 0; index < count; index++) {
    const row = rest[index] as number
    out.value[row] = made.value[index] as number
    out.code[row] = made.code[index] as number
  }
}

/** The full equation for a row that the table does not hold; a state without a value gets its code and its words. */
function exactValue(
  prepared: PreparedProperty,
  pressure: number,
  temperature: number,
  row: number,
  state: BlockState,
): number {
  try {
    return prepared.exactly(pressure as AbsolutePressure, temperature as Temperature)
  } catch (thrown) {
    if (!isLitrebarError(thrown)) throw thrown
    state.fail(row, codeOf(thrown), thrown.message)
    return Number.NaN
  }
}

function codeOf({ code, value }: LitrebarError): RowCodeName {
  if (code === 'not-converged') return 'notConverged'
  if (code === 'outside-validity')
    return /liquid|condens|two phases|no gas/.test(value) ? 'condensing' : 'outsideValidity'
  return code === 'range' ? 'outOfRange' : 'input'
}

function preparedFor(calculation: Calculation, { gas, tolerance }: ReadyPlan, met: MetMixture): PreparedProperty {
  const { property, errorOf } = calculation
  let prepared = met.prepared.get(property)
  if (prepared === undefined) {
    prepared = preparedProperty(property, met.mixture, { gas, tolerance, errorOf })
    met.prepared.set(property, prepared)
  }
  return prepared
}

function factorFor(calculation: Calculation, { reference, gas }: ReadyPlan, met: MetMixture): number {
  let factor = met.factors.get(calculation)
  if (factor === undefined) {
    factor = calculation.factor(met.mixture, { gas, ...(reference === undefined ? {} : { reference }) })
    met.factors.set(calculation, factor)
  }
  return factor
}
