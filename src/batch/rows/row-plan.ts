import * as z from 'zod'
import { LitrebarError, nearestOf } from '../../errors/index.ts'
import { type Mixture, mixtureFromText, type ReferenceCondition, referenceConditions } from '../../gas-law/index.ts'
import { allUnits, parseQuantity, type Unit } from '../../units/index.ts'
import { type Calculation, type CalculationName, calculations } from './calculation.table.ts'
import { type RowInputName, rowInputs } from './row-input.table.ts'

/** Where an input of the rows comes from: a column with the unit of its numbers, or one value for all rows. */
export type InputSource = { readonly column: string; readonly unit: string } | { readonly value: string }

/** What is computed from rows, and what their columns mean. Plain data, as it stands in a JSON file. */
export interface RowPlan {
  /** Names of calculations: `density`, `freeGas`, `viscosity`, … */
  readonly compute: readonly CalculationName[]
  /** Where pressure, temperature and internal volume come from. A gauge pressure goes with an ambient pressure. */
  readonly inputs: { readonly [Name in RowInputName]?: InputSource | undefined }
  /** The column that names the mixture of each row as people write it, or one mixture for all. */
  readonly mixture: { readonly column: string } | { readonly value: string }
  /** Name of the reference condition of free gas. */
  readonly reference?: string | undefined
  /** `ideal` leaves compressibility out. */
  readonly gas?: 'real' | 'ideal' | undefined
  /** Units of results, by calculation, in place of the usual ones. */
  readonly units?: { readonly [Name in CalculationName]?: string | undefined } | undefined
  /** Largest error of the tables that stand for the full equations, relative; 1e-7 unless given. 0 uses no tables. */
  readonly tolerance?: number | undefined
  /** Significant figures of results in text, 1 to 17; 10 unless given, a thousand times finer than the tables. 17 keeps every bit. */
  readonly figures?: number | undefined
  /** Take a column whose sizes betray another unit all the same. */
  readonly allowUnusual?: boolean | undefined
}

const columnSource = z.strictObject({
  column: z.string().meta({ description: 'name of the column' }),
  unit: z.string().meta({ description: 'unit of its numbers, as a symbol: bar, psi, °C, L' }),
})
const valueSource = z.strictObject({
  value: z.string().meta({ description: 'one value for all rows, with its unit: "1 atm"' }),
})
const inputSource = z.union([columnSource, valueSource])
const names = Object.keys(calculations()) as [CalculationName, ...CalculationName[]]
const name = z.enum(names)

/** Schema of a plan of rows, as a file states it. */
export const rowPlanSchema: z.ZodType<RowPlan> = z.strictObject({
  compute: z.array(name).min(1).meta({ description: 'what is computed for every row' }),
  inputs: z.strictObject({
    pressure: inputSource.optional(),
    gaugePressure: inputSource.optional(),
    ambientPressure: inputSource.optional(),
    temperature: inputSource.optional(),
    internalVolume: inputSource.optional(),
  }),
  mixture: z.union([z.strictObject({ column: z.string() }), z.strictObject({ value: z.string() })]),
  reference: z.string().optional().meta({ description: 'name of the reference condition of free gas' }),
  gas: z.enum(['real', 'ideal']).optional(),
  units: z.partialRecord(name, z.string()).optional(),
  tolerance: z.number().min(0).max(0.01).optional(),
  figures: z.int().min(1).max(17).optional().meta({ description: 'significant figures of results in text' }),
  allowUnusual: z.boolean().optional(),
})

/**
 * The JSON Schema (2020-12) of a plan, for editors and for programs in other languages.
 *
 * @returns plain data
 * @throws never
 * @source common-practice
 * @example
 * rowPlanJsonSchema()['type'] // => 'object'
 */
export function rowPlanJsonSchema(): Readonly<Record<string, unknown>> {
  return z.toJSONSchema(rowPlanSchema)
}

/** An input as the rows are read by it. */
export type ReadyInput =
  | { readonly name: RowInputName; readonly column: string; readonly unit: Unit }
  | { readonly name: RowInputName; readonly constant: number }

/** A plan whose words have become units, conditions and functions. */
export interface ReadyPlan {
  readonly results: readonly {
    readonly name: CalculationName
    readonly calculation: Calculation
    readonly unit: Unit
  }[]
  readonly inputs: readonly ReadyInput[]
  readonly mixture: { readonly column: string } | { readonly constant: Mixture }
  readonly reference: ReferenceCondition | undefined
  readonly gas: 'real' | 'ideal'
  readonly tolerance: number
  readonly figures: number
  readonly allowUnusual: boolean
}

/**
 * A plan made ready: every word looked up, what is missing or too much named.
 *
 * @param plan - as a file or a program states it
 * @returns units, conditions and calculations
 * @throws LitrebarError `input` for a plan that is none, with every problem of its form; `unit` for an unknown unit or one of another
 *   quantity; `mixture`
 * @source common-practice
 */
export function readyPlan(plan: RowPlan): ReadyPlan {
  const checked = rowPlanSchema.safeParse(plan)
  if (!checked.success) throw refused('plan', 'not a plan', z.prettifyError(checked.error).replaceAll('\n', ' '), '')
  const {
    compute,
    inputs,
    mixture,
    reference,
    gas = 'real',
    units = {},
    tolerance = 1e-7,
    figures = 10,
    allowUnusual = false,
  } = plan
  const table: Readonly<Record<CalculationName, Calculation>> = calculations()
  const results = [...new Set(compute)].map((name) => {
    const calculation = table[name]
    return { name, calculation, unit: unitOf(`plan.units.${name}`, units[name], calculation.unit) }
  })
  for (const { name, calculation } of results) {
    if (gas === 'ideal' && !calculation.hasIdeal)
      throw refused('plan.gas', `'ideal'`, `'real' for ${name}`, 'Leave it out, or compute it in a plan of its own.')
    if (calculation.atReference && reference === undefined)
      throw refused('plan.reference', 'missing', oneOf(referenceConditions), `State the condition of ${name}.`)
  }
  return {
    results,
    inputs: readyInputs(
      inputs,
      results.some(({ calculation }) => calculation.ofContents),
    ),
    mixture: 'column' in mixture ? mixture : { constant: mixtureFromText(mixture.value) },
    reference: reference === undefined ? undefined : conditionOf(reference),
    gas,
    tolerance,
    figures,
    allowUnusual,
  }
}

function readyInputs(inputs: RowPlan['inputs'], ofContents: boolean): readonly ReadyInput[] {
  const isGauge = inputs.gaugePressure !== undefined
  const needed: readonly RowInputName[] = [
    ...(isGauge ? (['gaugePressure', 'ambientPressure'] as const) : (['pressure'] as const)),
    'temperature',
    ...(ofContents ? (['internalVolume'] as const) : []),
  ]
  for (const name of Object.keys(inputs) as RowInputName[]) {
    if (inputs[name] === undefined || needed.includes(name)) continue
    if (name === 'internalVolume') continue // stated and not used: the file may serve several plans
    throw refused(
      `plan.inputs.${name}`,
      'given',
      needed.join(', '),
      'A gauge pressure goes with an ambient pressure; an absolute one stands alone.',
    )
  }
  return needed.map((name) => {
    const source = inputs[name]
    if (source === undefined)
      throw refused(`plan.inputs.${name}`, 'missing', 'a column with its unit, or a value', `State ${name}.`)
    if ('value' in source) return { name, constant: parseQuantity(source.value, rowInputs[name].kind) }
    return { name, column: source.column, unit: unitOf(`plan.inputs.${name}.unit`, source.unit, siUnit(name)) }
  })
}

function siUnit(name: RowInputName): Unit {
  const dimension = rowInputs[name].dimension
  const unit = allUnits.find((each) => each.quantity === dimension)
  if (unit === undefined) throw new Error(`no unit of ${dimension}`)
  return unit
}

/** The unit of a symbol or spelling, of the quantity of the usual one. */
function unitOf(argument: string, symbol: string | undefined, usual: Unit): Unit {
  if (symbol === undefined) return usual
  const fitting = allUnits.filter((unit) => unit.quantity === usual.quantity)
  const found = fitting.find((unit) => unit.symbol === symbol || (unit.spellings ?? []).includes(symbol))
  if (found !== undefined) return found
  const near = nearestOf(
    symbol,
    fitting.map((unit) => unit.symbol),
  )
  throw new LitrebarError({
    code: 'unit',
    argument,
    value: `'${symbol}'`,
    expected: `a unit of ${usual.quantity}: ${fitting.map((unit) => unit.symbol).join(', ')}`,
    hint: near === undefined ? 'Choose one of these.' : `Did you mean ${near}?`,
  })
}

function conditionOf(name: string): ReferenceCondition {
  const found = referenceConditions.find((condition) => condition.name === name)
  if (found !== undefined) return found
  const near = nearestOf(
    name,
    referenceConditions.map((condition) => condition.name),
  )
  throw refused(
    'plan.reference',
    `'${name}'`,
    oneOf(referenceConditions),
    near === undefined ? 'Choose one of these.' : `Did you mean '${near}'?`,
  )
}

function oneOf(conditions: readonly ReferenceCondition[]): string {
  return conditions.map(({ name }) => `'${name}'`).join(', ')
}

function refused(argument: string, value: string, expected: string, hint: string): LitrebarError {
  return new LitrebarError({ code: 'input', argument, value, expected, hint })
}
