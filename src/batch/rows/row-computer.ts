import { isLitrebarError, LitrebarError, type RowCodeName, rowCodes } from '../../errors/index.ts'
import { type Mixture, mixtureFromText, tabulatedInto } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  isWithin,
  litre,
  parseQuantity,
  type Temperature,
} from '../../units/index.ts'
import type { Calculation, StateProperty } from './calculation.table.ts'
import { FieldColumn } from './field-column.ts'
import type { BlockColumn, ResultBlock, RowBlock } from './row-block.ts'
import { rowInputs } from './row-input.table.ts'
import { type ReadyInput, type ReadyPlan, type RowPlan, readyPlan } from './row-plan.ts'
import { type PreparedProperty, preparedProperty } from './row-tables.ts'
import { requireUsualSizes } from './unit-slip.ts'

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
  let isFirst = true
  return {
    columns: columnsOf(ready),
    results: ready.results.map(({ name, unit }) => ({ name, unit: unit.symbol })),
    figures: ready.figures,
    compute: (block) => {
      const state = new BlockState(block)
      const inputs = readInputs(ready, block, state, isFirst && !ready.allowUnusual)
      isFirst = false
      const groups = groupByMixture(ready, block, state, mixtures)
      const values: Record<string, Float64Array> = {}
      const properties = new Map<StateProperty, Float64Array>()
      for (const { name, calculation, unit } of ready.results) {
        let column = properties.get(calculation.property)
        if (column === undefined) {
          column = propertyColumn(calculation, ready, inputs, groups, state)
          properties.set(calculation.property, column)
        }
        values[name] = finished(column, calculation, ready, inputs, groups, unit)
      }
      for (const column of Object.values(values)) {
        for (const row of state.errors.keys()) column[row] = Number.NaN
      }
      return { values, code: state.code, errors: state.errors }
    },
  }
}

/** Codes and words of a block while it is computed: the first fault of a row counts. */
class BlockState {
  readonly code: Uint8Array
  readonly errors = new Map<number, string>()

  constructor(block: RowBlock) {
    this.code = new Uint8Array(block.count)
    for (const [row, text] of block.faults) this.fail(row, 'input', text)
  }

  fail(row: number, code: RowCodeName, text: string): void {
    if (this.code[row] !== rowCodes.good) return
    this.code[row] = rowCodes[code]
    this.errors.set(row, text)
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
const volumeRange: Accepted = { above: 0, atMost: 1000, unit: litre, hint: 'Give the internal volume.' }

function readInputs(ready: ReadyPlan, block: RowBlock, state: BlockState, isChecked: boolean): BlockInputs {
  const read = new Map(ready.inputs.map((input) => [input.name, inputColumn(input, block, state, isChecked)]))
  const gauge = read.get('gaugePressure')
  const ambient = read.get('ambientPressure')
  const pressure = gauge === undefined ? read.get('pressure') : gauge
  const temperature = read.get('temperature')
  const internalVolume = read.get('internalVolume')
  internalVolume?.forEach((value, row) => {
    if (isWithin(value, volumeRange) || Number.isNaN(value)) return
    state.fail(row, 'outOfRange', `internal volume is ${value * 1000} L, expected above 0 and at most 1000 L`)
  })
  if (pressure === undefined || temperature === undefined) throw new Error('the plan has been checked')
  if (gauge !== undefined && ambient !== undefined) {
    for (let row = 0; row < block.count; row++) pressure[row] = (gauge[row] as number) + (ambient[row] as number)
  }
  return {
    pressurePascal: pressure,
    temperatureKelvin: temperature,
    internalVolumeCubicMetre: internalVolume,
  }
}

function inputColumn(input: ReadyInput, block: RowBlock, state: BlockState, isChecked: boolean): Float64Array {
  if (!('column' in input)) return new Float64Array(block.count).fill(input.constant)
  const given = columnNamed(input.column, block)
  const si = new Float64Array(block.count)
  const { factor } = input.unit
  const offset = input.unit.offset ?? 0
  if (given instanceof FieldColumn) {
    for (let row = 0; row < block.count; row++) {
      const number = given.number(row)
      si[row] = Number.isNaN(number) ? readField(given.text(row), input, row, state) : number * factor + offset
    }
  } else {
    for (let row = 0; row < block.count; row++) {
      const field = given[row] ?? ''
      if (typeof field === 'number') {
        si[row] = field * factor + offset
        if (Number.isNaN(field)) state.fail(row, 'missing', `${input.column} is missing`)
        continue
      }
      const number = field === '' ? Number.NaN : Number(field)
      si[row] = Number.isNaN(number) ? readField(field, input, row, state) : number * factor + offset
    }
  }
  if (isChecked) requireUsualSizes(`plan.inputs.${input.name}`, si, input.unit, rowInputs[input.name].usual)
  return si
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

function columnNamed(name: string, block: RowBlock): BlockColumn {
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

/** A mixture that has been met, with what was prepared for it. */
interface MetMixture {
  readonly mixture: Mixture
  readonly prepared: Map<StateProperty, PreparedProperty>
  readonly factors: Map<Calculation, number>
}

/** The mixtures of a block, and which row has which. */
interface MixtureGroups {
  readonly met: readonly MetMixture[]
  /** Place in `met` by row; undefined where one mixture serves all. */
  readonly of: Int32Array | undefined
}

function meet(mixture: Mixture): MetMixture {
  return { mixture, prepared: new Map(), factors: new Map() }
}

function groupByMixture(
  ready: ReadyPlan,
  block: RowBlock,
  state: BlockState,
  known: Map<string, MetMixture>,
): MixtureGroups {
  if ('constant' in ready.mixture) {
    const met = known.get('') ?? meet(ready.mixture.constant)
    known.set('', met)
    return { met: [met], of: undefined }
  }
  const given = columnNamed(ready.mixture.column, block)
  const places = new Map<string, number>()
  const met: MetMixture[] = []
  const placeOf = (text: string, row: number): number => {
    const place = places.get(text)
    if (place !== undefined) return place
    const found = metByText(text, known)
    if (typeof found === 'string') {
      if (text.trim() === '') state.fail(row, 'missing', 'the mixture is missing')
      else state.fail(row, 'input', found)
      return -1
    }
    const added = met.push(found) - 1
    places.set(text, added)
    return added
  }
  const of =
    given instanceof FieldColumn
      ? given.places(placeOf)
      : Int32Array.from(given, (field, row) => placeOf(String(field), row))
  return { met, of }
}

/** The mixture of a text, or why there is none. Texts that are none are not kept: a file may hold any number of them. */
function metByText(text: string, known: Map<string, MetMixture>): MetMixture | string {
  const found = known.get(text)
  if (found !== undefined) return found
  try {
    const met = meet(mixtureFromText(text))
    known.set(text, met)
    return met
  } catch (thrown) {
    if (!isLitrebarError(thrown)) throw thrown
    return thrown.message
  }
}

function propertyColumn(
  calculation: Calculation,
  ready: ReadyPlan,
  inputs: BlockInputs,
  groups: MixtureGroups,
  state: BlockState,
): Float64Array {
  const rows = state.code.length
  const value = new Float64Array(rows)
  const code = new Uint8Array(rows)
  groups.met.forEach((met, place) => {
    const prepared = preparedFor(calculation, ready, met)
    if (prepared.table === undefined) {
      for (let row = 0; row < rows; row++)
        if (groups.of === undefined || groups.of[row] === place) code[row] = rowCodes.outOfRange
    } else if (groups.of === undefined) {
      tabulatedInto({ value, code }, inputs, prepared.table)
    } else {
      tabulateGroup({ value, code }, inputs, prepared.table, groups.of, place)
    }
    for (let row = 0; row < rows; row++) {
      if (code[row] === rowCodes.good) {
        if (prepared.isPerPressure && (groups.of === undefined || groups.of[row] === place))
          value[row] = (value[row] as number) * (inputs.pressurePascal[row] as number)
        continue
      }
      if (state.code[row] !== rowCodes.good) continue
      if (groups.of !== undefined && groups.of[row] !== place) continue
      value[row] = exactValue(prepared, inputs, row, state)
    }
  })
  return value
}

/** Tabulates the rows of one mixture: gathered, computed in one loop, and put back into their places. */
function tabulateGroup(
  out: { readonly value: Float64Array; readonly code: Uint8Array },
  inputs: BlockInputs,
  table: NonNullable<PreparedProperty['table']>,
  of: Int32Array,
  place: number,
): void {
  const rows = of.length
  const pressurePascal = new Float64Array(rows)
  const temperatureKelvin = new Float64Array(rows)
  const places = new Int32Array(rows)
  let count = 0
  for (let row = 0; row < rows; row++) {
    if (of[row] !== place) continue
    pressurePascal[count] = inputs.pressurePascal[row] as number
    temperatureKelvin[count] = inputs.temperatureKelvin[row] as number
    places[count++] = row
  }
  const value = new Float64Array(count)
  const code = new Uint8Array(count)
  tabulatedInto({ value, code }, { pressurePascal, temperatureKelvin }, table, 0, count)
  for (let index = 0; index < count; index++) {
    const row = places[index] as number
    out.value[row] = value[index] as number
    out.code[row] = code[index] as number
  }
}

/** The full equation for a row that the table does not hold; a state without a value gets its code and its words. */
function exactValue(prepared: PreparedProperty, inputs: BlockInputs, row: number, state: BlockState): number {
  try {
    return prepared.exactly(
      inputs.pressurePascal[row] as AbsolutePressure,
      inputs.temperatureKelvin[row] as Temperature,
    )
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

/** From the property to the result in its unit: factor of the mixture, and the volume of the vessel where it counts. */
function finished(
  column: Float64Array,
  calculation: Calculation,
  { reference, gas }: ReadyPlan,
  { internalVolumeCubicMetre }: BlockInputs,
  groups: MixtureGroups,
  unit: ReadyPlan['results'][number]['unit'],
): Float64Array {
  const settings = { gas, ...(reference === undefined ? {} : { reference }) }
  const factors = groups.met.map((met) => {
    const factor = met.factors.get(calculation) ?? calculation.factor(met.mixture, settings)
    met.factors.set(calculation, factor)
    return factor
  })
  const out = new Float64Array(column.length)
  const perUnit = 1 / unit.factor
  for (let row = 0; row < column.length; row++) {
    const factor = factors[groups.of === undefined ? 0 : (groups.of[row] as number)] ?? Number.NaN
    const volume = calculation.ofContents ? (internalVolumeCubicMetre?.[row] ?? Number.NaN) : 1
    out[row] = (column[row] as number) * factor * volume * perUnit
  }
  return out
}
