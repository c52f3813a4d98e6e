import { isLitrebarError, rowCodes } from '../../errors/index.ts'
import { type StateColumns, type TabulatedFunction, tabulatedInto } from '../../gas-law/index.ts'
import { normalDeviates, seededRandom } from '../../uncertainty/random.ts'
import { type AbsolutePressure, litre, type Temperature, type Unit } from '../../units/index.ts'
import { BlockState, codeOf } from './block-state.ts'
import type { Calculation, StateProperty } from './calculation.table.ts'
import { type MetMixture, type MixtureGroup, mixtureGroups } from './mixture-groups.ts'
import { type InputColumns, type RecordResult, recordColumns } from './record-columns.ts'
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
  /** Name and unit of each result, in the order of the plan; whether it is words. */
  readonly results: readonly { readonly name: string; readonly unit: string; readonly isText?: boolean }[]
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
  return computerOf(plan, true)
}

/** As `rowComputer`, for who is done with a block before the next: its memory serves that one too, and the garbage collector rests. */
export function passingComputer(plan: RowPlan): RowComputer {
  return computerOf(plan, false)
}

function computerOf(plan: RowPlan, isKept: boolean): RowComputer {
  const ready = readyPlan(plan)
  const mixtures = new Map<string, MetMixture>()
  const scratch = new Scratch()
  const resultColumn = (length: number): Float64Array => (isKept ? new Float64Array(length) : scratch.column(length))
  let isFirst = true
  const numbers = ready.results.flatMap((result) => (result.unit === 'text' ? [] : [result.name]))
  const uncertain = ready.uncertainty.length === 0 ? [] : numbers
  return {
    columns: columnsOf(ready),
    results: [
      ...ready.results.map(({ name, unit }) =>
        unit === 'text' ? { name, unit: '', isText: true } : { name, unit: unit.symbol },
      ),
      ...uncertain.map((name) => ({ name: `u(${name})`, unit: differenceUnit(ready, name) })),
    ],
    figures: ready.figures,
    compute: (block) => {
      const state = new BlockState(block)
      scratch.reset()
      const inputs = readInputs(ready, block, state, scratch, isFirst && !ready.allowUnusual)
      isFirst = false
      const groups = mixtureGroups(ready, block, state, mixtures)
      const evaluated = (given: InputColumns): Evaluated =>
        evaluate(ready, block, given, groups, state, scratch, resultColumn)
      const { values, texts } = evaluated(inputs)
      if (uncertain.length > 0) {
        const uncertainties = ready.sampling === undefined ? standardUncertainties : sampledUncertainties
        const standard = uncertainties(ready, inputs, scratch, (given) => evaluated(given).values)
        for (const name of uncertain) values[`u(${name})`] = standard[name] as Float64Array
      }
      for (const row of state.errors.keys()) {
        for (const column of Object.values(values)) column[row] = Number.NaN
        for (const column of Object.values(texts)) column[row] = ''
      }
      return { values, texts, code: state.code, errors: state.errors }
    },
  }
}

/** The unit of a difference of two results: kelvin for degrees. */
function differenceUnit({ results }: ReadyPlan, name: string): string {
  const unit = results.find((result) => result.name === name)?.unit
  if (unit === undefined || unit === 'text') return ''
  return unit.quantity === 'temperature' && unit.factor === 1 ? 'K' : unit.symbol
}

function columnsOf(ready: ReadyPlan): readonly string[] {
  const named = ready.inputs.flatMap((input) => ('column' in input ? [input.column] : []))
  if (ready.stamp !== undefined) named.push(ready.stamp)
  if (ready.mixture !== undefined && 'column' in ready.mixture) named.push(ready.mixture.column)
  return [...new Set(named)]
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
): InputColumns {
  const read = new Map<RowInputName, Float64Array>()
  for (const input of ready.inputs) {
    const column = scratch.column(block.count)
    inputColumn(input, block, state, column, isChecked)
    read.set(input.name, column)
  }
  const internalVolume = read.get('internalVolume')
  if (internalVolume !== undefined) {
    for (let row = 0; row < block.count; row++) {
      const value = internalVolume[row] as number
      if ((value > 0 && value <= most) || Number.isNaN(value)) continue
      const words = `internal volume is ${value / litre.factor} L, expected above 0 and at most ${mostLitres} L`
      state.fail(row, 'outOfRange', words)
    }
  }
  const gauge = read.get('gaugePressure')
  const ambient = read.get('ambientPressure')
  if (gauge !== undefined && ambient !== undefined) {
    for (let row = 0; row < block.count; row++) gauge[row] = (gauge[row] as number) + (ambient[row] as number)
    read.set('pressure', gauge)
  }
  return read
}

/** Results by name, in their units. */
interface Evaluated {
  readonly values: Record<string, Float64Array>
  readonly texts: Record<string, string[]>
}

function evaluate(
  ready: ReadyPlan,
  block: RowBlock,
  inputs: InputColumns,
  groups: readonly MixtureGroup[],
  state: BlockState,
  scratch: Scratch,
  resultColumn: (length: number) => Float64Array,
): Evaluated {
  const values: Record<string, Float64Array> = {}
  const texts: Record<string, string[]> = {}
  const records: RecordResult[] = []
  for (const result of ready.results) {
    const { name, unit } = result
    if (unit === 'text') texts[name] = new Array<string>(block.count).fill('')
    else values[name] = resultColumn(block.count)
    if ('record' in result)
      records.push({ calculation: result.record, out: (unit === 'text' ? texts[name] : values[name]) as Float64Array })
  }
  if (records.length < ready.results.length)
    for (const group of groups) computeGroup(group, ready, inputs, values, state, scratch)
  if (records.length > 0) {
    recordColumns(ready, block, inputs, groups, records, state)
    for (const result of ready.results) {
      const { name, unit } = result
      if ('record' in result && unit !== 'text') convert(values[name] as Float64Array, unit)
    }
  }
  return { values, texts }
}

function convert(column: Float64Array, { factor, offset = 0 }: Unit): void {
  for (let row = 0; row < column.length; row++) column[row] = ((column[row] as number) - offset) / factor
}

/**
 * Standard uncertainties to first order: for each uncertain input half the difference of the results one standard uncertainty above and
 * below it, added as squares. A row for which a function has no value there fails.
 */
function standardUncertainties(
  { uncertainty }: ReadyPlan,
  inputs: InputColumns,
  scratch: Scratch,
  valuesAt: (inputs: InputColumns) => Readonly<Record<string, Float64Array>>,
): Readonly<Record<string, Float64Array>> {
  const sums: Record<string, Float64Array> = {}
  for (const { name, standard } of uncertainty) {
    const column = inputs.get(name)
    if (column === undefined) continue // stated for a plan that this file serves besides
    const shifted = (by: number): Readonly<Record<string, Float64Array>> => {
      const moved = scratch.column(column.length)
      for (let row = 0; row < column.length; row++) moved[row] = (column[row] as number) + by
      return valuesAt(new Map(inputs).set(name, moved))
    }
    const above = shifted(standard)
    const below = shifted(-standard)
    for (const [result, high] of Object.entries(above)) {
      const low = below[result] as Float64Array
      const sum = sums[result] ?? new Float64Array(high.length)
      for (let row = 0; row < high.length; row++)
        sum[row] = (sum[row] as number) + (((high[row] as number) - (low[row] as number)) / 2) ** 2
      sums[result] = sum
    }
  }
  for (const sum of Object.values(sums))
    for (let row = 0; row < sum.length; row++) sum[row] = Math.sqrt(sum[row] as number)
  return sums
}

/**
 * Standard uncertainties by sampling: the standard deviation of the results over normally distributed inputs. A row for which a function has
 * no value at one of them fails.
 */
function sampledUncertainties(
  { uncertainty, sampling }: ReadyPlan,
  inputs: InputColumns,
  scratch: Scratch,
  valuesAt: (inputs: InputColumns) => Readonly<Record<string, Float64Array>>,
): Readonly<Record<string, Float64Array>> {
  const { trials = 0, seed = 0 } = sampling ?? {}
  const draw = normalDeviates(seededRandom(seed))
  const means: Record<string, Float64Array> = {}
  const squares: Record<string, Float64Array> = {}
  const kept = scratch.used
  for (let trial = 1; trial <= trials; trial++) {
    scratch.reset(kept)
    const moved = new Map(inputs)
    for (const { name, standard } of uncertainty) {
      const column = moved.get(name)
      if (column === undefined) continue // stated for a plan that this file serves besides
      const drawn = scratch.column(column.length)
      const by = standard * draw()
      for (let row = 0; row < column.length; row++) drawn[row] = (column[row] as number) + by
      moved.set(name, drawn)
    }
    for (const [result, values] of Object.entries(valuesAt(moved))) {
      means[result] ??= new Float64Array(values.length)
      squares[result] ??= new Float64Array(values.length)
      addSample(means[result], squares[result], values, trial)
    }
  }
  for (const sum of Object.values(squares))
    for (let row = 0; row < sum.length; row++) sum[row] = Math.sqrt((sum[row] as number) / (trials - 1))
  return squares
}

/** Mean and sum of squared departures from it, kept up value by value: their difference would lose the digits. */
function addSample(mean: Float64Array, squares: Float64Array, values: Float64Array, count: number): void {
  for (let row = 0; row < values.length; row++) {
    const departure = (values[row] as number) - (mean[row] as number)
    mean[row] = (mean[row] as number) + departure / count
    squares[row] = (squares[row] as number) + departure * ((values[row] as number) - (mean[row] as number))
  }
}

/** Inputs of the properties of gas, SI. */
interface GasInputs extends StateColumns {
  readonly internalVolumeCubicMetre: Float64Array | undefined
}

/** Computes the properties for the rows of one mixture: gathered, computed in loops of their own, and put back into their places. */
function computeGroup(
  { met, rows }: MixtureGroup,
  ready: ReadyPlan,
  columns: InputColumns,
  values: Readonly<Record<string, Float64Array>>,
  state: BlockState,
  scratch: Scratch,
): void {
  const gatheredOf = (name: RowInputName): Float64Array | undefined => {
    const column = columns.get(name)
    return column === undefined || rows === undefined ? column : gathered(column, rows, scratch)
  }
  const inputs: GasInputs = {
    pressurePascal: gatheredOf('pressure') as Float64Array,
    temperatureKelvin: gatheredOf('temperature') as Float64Array,
    internalVolumeCubicMetre: gatheredOf('internalVolume'),
  }
  const properties = new Map<StateProperty, Float64Array>()
  for (const result of ready.results) {
    if ('record' in result) continue
    const { name, calculation, unit } = result
    const prepared = preparedFor(calculation, ready, met)
    let column = properties.get(calculation.property)
    if (column === undefined) {
      column = propertyColumn(prepared, inputs, rows, state, scratch)
      properties.set(calculation.property, column)
    }
    const out = values[name] as Float64Array
    const own = rows === undefined ? out : scratch.column(rows.length)
    scaleInto(own, column, factorFor(calculation, ready, met) / unit.factor)
    if (calculation.ofContents && inputs.internalVolumeCubicMetre !== undefined)
      multiply(own, inputs.internalVolumeCubicMetre)
    if (rows !== undefined) scatter(out, own, rows)
  }
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
  const value = scratch.column(count)
  const code = new Uint8Array(count)
  if (prepared.tables.length === 0) code.fill(rowCodes.outOfRange)
  prepared.tables.forEach((table, place) => {
    if (place === 0) tabulatedInto({ value, code }, inputs, table)
    else tabulateRest({ value, code }, inputs, table, scratch)
  })
  if (prepared.isPerPressure) multiply(value, pressurePascal)
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
