import * as z from 'zod'
import { type CalendarDate, type CalendarMonth, type RuleSetId, ruleSetIds } from '../../cylinder/index.ts'
import { LitrebarError, nearestOf } from '../../errors/index.ts'
import { type Mixture, mixtureFromText, type ReferenceCondition, referenceConditions } from '../../gas-law/index.ts'
import { allUnits, parseQuantity, type Unit } from '../../units/index.ts'
import { type Calculation, calculations, type PropertyCalculationName } from './calculation.table.ts'
import {
  type RecordCalculation,
  type RecordCalculationName,
  type RecordNeed,
  recordCalculations,
} from './record-calculation.table.ts'
import { type RowInputName, rowInputs } from './row-input.table.ts'

/** Name of something that rows can be asked for. */
export type CalculationName = PropertyCalculationName | RecordCalculationName

/** Where an input of the rows comes from: a column with the unit of its numbers, or one value for all rows. */
export type InputSource = { readonly column: string; readonly unit: string } | { readonly value: string }

/** What is computed from rows, and what their columns mean. Plain data, as it stands in a JSON file. */
export interface RowPlan {
  /** Names of calculations: `density`, `freeGas`, `viscosity`, … */
  readonly compute: readonly CalculationName[]
  /** Where pressure, temperature and internal volume come from. A gauge pressure goes with an ambient pressure. */
  readonly inputs: { readonly [Name in RowInputName]?: InputSource | undefined }
  /** The column that names the mixture of each row as people write it, or one mixture for all. */
  readonly mixture?: { readonly column: string } | { readonly value: string } | undefined
  /** The column that holds what is stamped on a cylinder. */
  readonly stamp?: { readonly column: string } | undefined
  /** The rules by which a requalification falls due. */
  readonly ruleSet?: RuleSetId | undefined
  /** The day or month for which that is asked: `2026-11-25`. */
  readonly asOf?: string | undefined
  /**
   * Standard uncertainties of inputs, each with its unit: `{ "pressure": "1 bar", "temperature": "0.5 K" }`. Every number then comes with
   * `u(…)`, its standard uncertainty: to first order, or by `sampling`. The inputs count as independent, and the equations as exact.
   */
  readonly uncertainty?: { readonly [Name in RowInputName]?: string | undefined } | undefined
  /**
   * Uncertainties from normally distributed draws in place of the first order: where a function bends within them. The same draws serve every
   * row, so that no row depends on where a file was cut.
   */
  readonly sampling?: { readonly trials: number; readonly seed: number } | undefined
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
  /** Take a column whose sizes betray another unit anyway. */
  readonly allowUnusual?: boolean | undefined
}

// Fewer leave the uncertainty itself uncertain by more than a tenth; more would only take time.
const leastTrials = 50
const mostTrials = 100_000

const columnSource = z.strictObject({
  column: z.string().meta({ description: 'name of the column' }),
  unit: z.string().meta({ description: 'unit of its numbers, as a symbol: bar, psi, °C, L' }),
})
const valueSource = z.strictObject({
  value: z.string().meta({ description: 'one value for all rows, with its unit: "1 atm"' }),
})
const inputSource = z.union([columnSource, valueSource])
const names = Object.keys({ ...calculations(), ...recordCalculations() }) as [CalculationName, ...CalculationName[]]
const inputNames = Object.keys(rowInputs) as [RowInputName, ...RowInputName[]]
const name = z.enum(names)

/** Schema of a plan of rows, as a file states it. */
export const rowPlanSchema: z.ZodType<RowPlan> = z.strictObject({
  compute: z.array(name).min(1).meta({ description: 'what is computed for every row' }),
  inputs: z.partialRecord(z.enum(inputNames), inputSource),
  mixture: z.union([z.strictObject({ column: z.string() }), z.strictObject({ value: z.string() })]).optional(),
  stamp: z.strictObject({ column: z.string() }).optional(),
  ruleSet: z.enum(ruleSetIds).optional().meta({ description: 'the rules by which a requalification falls due' }),
  asOf: z
    .string()
    .regex(/^\d{4}-\d\d(?:-\d\d)?$/)
    .optional()
    .meta({ description: 'the day or month for which that is asked' }),
  uncertainty: z
    .partialRecord(z.enum(inputNames), z.string())
    .optional()
    .meta({ description: 'standard uncertainties of inputs, each with its unit' }),
  sampling: z
    .strictObject({ trials: z.int().min(leastTrials).max(mostTrials), seed: z.int().min(0) })
    .optional()
    .meta({ description: 'uncertainties from so many normally distributed draws in place of the first order' }),
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

/** A result as the rows are computed for it. */
export type ReadyResult =
  | { readonly name: PropertyCalculationName; readonly calculation: Calculation; readonly unit: Unit }
  | { readonly name: RecordCalculationName; readonly record: RecordCalculation; readonly unit: Unit | 'text' }

/** A plan whose words have become units, conditions and functions. */
export interface ReadyPlan {
  readonly results: readonly ReadyResult[]
  readonly inputs: readonly ReadyInput[]
  readonly mixture: { readonly column: string } | { readonly constant: Mixture } | undefined
  /** The column of stamps, where one is read. */
  readonly stamp: string | undefined
  readonly ruleSet: RuleSetId | undefined
  readonly asOf: CalendarMonth | CalendarDate | undefined
  /** Standard uncertainties, SI, of inputs as they are computed with: a gauge and an ambient pressure make one pressure. */
  readonly uncertainty: readonly { readonly name: RowInputName; readonly standard: number }[]
  readonly sampling: { readonly trials: number; readonly seed: number } | undefined
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
  if (!checked.success) throw refused('plan', 'not a plan', problemsIn(checked.error), '')
  const { inputs, mixture, stamp, ruleSet, asOf, reference, gas = 'real' } = plan
  const { units = {}, tolerance = 1e-7, figures = 10, allowUnusual = false } = plan
  const results = withBrought(plan.compute).map((name) => readyResult(name, units[name]))
  for (const result of results) requireStated(plan, result)
  if (plan.sampling !== undefined && plan.uncertainty === undefined)
    throw refused('plan.uncertainty', 'missing', 'standard uncertainties of inputs', 'They are what is sampled.')
  return {
    results,
    inputs: readyInputs(inputs, new Set(results.flatMap(inputsOf))),
    mixture: mixture === undefined || 'column' in mixture ? mixture : { constant: mixtureFromText(mixture.value) },
    stamp: results.some(({ name }) => /^(?:stamp|requalification)/.test(name)) ? stamp?.column : undefined,
    ruleSet,
    asOf: asOf as CalendarDate | undefined,
    uncertainty: readyUncertainty(plan.uncertainty ?? {}, inputs),
    sampling: plan.sampling,
    reference: reference === undefined ? undefined : conditionOf(reference),
    gas,
    tolerance,
    figures,
    allowUnusual,
  }
}

/** The results asked for, and behind them those that nobody should do without. */
function withBrought(asked: readonly CalculationName[]): readonly CalculationName[] {
  const table: Readonly<Record<string, RecordCalculation | undefined>> = recordCalculations()
  const brought = asked.flatMap((name) => table[name]?.brings ?? [])
  const all = new Set([...asked, ...brought])
  // last, when everything that they belong to has been worked out
  const last: readonly CalculationName[] = all.delete('cautions') ? ['cautions'] : []
  return [...all, ...last]
}

function readyResult(name: CalculationName, symbol: string | undefined): ReadyResult {
  const properties: Readonly<Record<string, Calculation | undefined>> = calculations()
  const calculation = properties[name]
  if (calculation !== undefined)
    return {
      name: name as PropertyCalculationName,
      calculation,
      unit: unitOf(`plan.units.${name}`, symbol, calculation.unit),
    }
  const record = recordCalculations()[name as RecordCalculationName]
  if (record.unit !== 'text')
    return { name: name as RecordCalculationName, record, unit: unitOf(`plan.units.${name}`, symbol, record.unit) }
  if (symbol !== undefined) throw refused(`plan.units.${name}`, `'${symbol}'`, 'no unit', 'The result is words.')
  return { name: name as RecordCalculationName, record, unit: 'text' }
}

/** Refuses a plan that leaves out what a result rests on. */
function requireStated(plan: RowPlan, result: ReadyResult): void {
  const { name } = result
  if ('calculation' in result) {
    const { hasIdeal, atReference } = result.calculation
    if (plan.gas === 'ideal' && !hasIdeal)
      throw refused('plan.gas', `'ideal'`, `'real' for ${name}`, 'Leave it out, or compute it in a plan of its own.')
    if (atReference && plan.reference === undefined)
      throw refused('plan.reference', 'missing', oneOf(referenceConditions), `State the condition of ${name}.`)
  }
  const needs: readonly RecordNeed[] = 'calculation' in result ? ['mixture'] : (result.record.needs ?? [])
  for (const need of needs)
    if (plan[need] === undefined) throw refused(`plan.${need}`, 'missing', needWords[need], `${name} rests on it.`)
}

const needWords: Readonly<Record<RecordNeed, string>> = {
  mixture: 'a column, or a value for all rows',
  stamp: 'a column',
  ruleSet: `one of ${ruleSetIds.join(', ')}`,
  asOf: 'a day or a month',
}

function inputsOf(result: ReadyResult): readonly RowInputName[] {
  if ('record' in result) return result.record.inputs
  return ['pressure', 'temperature', ...(result.calculation.ofContents ? (['internalVolume'] as const) : [])]
}

function readyInputs(inputs: RowPlan['inputs'], asked: ReadonlySet<RowInputName>): readonly ReadyInput[] {
  const isGauge = inputs.gaugePressure !== undefined
  const needed = [...asked].flatMap((name): readonly RowInputName[] =>
    isGauge && name === 'pressure' ? ['gaugePressure', 'ambientPressure'] : [name],
  )
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

function readyUncertainty(
  stated: NonNullable<RowPlan['uncertainty']>,
  inputs: RowPlan['inputs'],
): ReadyPlan['uncertainty'] {
  return (Object.keys(stated) as RowInputName[]).flatMap((name) => {
    const text = stated[name]
    if (text === undefined) return []
    const argument = `plan.uncertainty.${name}`
    if (inputs[name] === undefined) throw refused(argument, 'given', 'an input that is stated', `There is no ${name}.`)
    const standard = parseQuantity(text, rowInputs[name].uncertaintyKind)
    if (!(standard > 0)) throw refused(argument, `'${text}'`, 'above 0', 'Leave out what is exact.')
    const isPart = name === 'gaugePressure' || name === 'ambientPressure'
    return [{ name: isPart ? 'pressure' : name, standard }]
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
    fitting.flatMap((unit) => (unit.symbol === '' ? [] : [unit.symbol])),
  )
  throw new LitrebarError({
    code: 'unit',
    argument,
    value: `'${symbol}'`,
    expected: `a unit of ${usual.quantity}: ${fitting.map((unit) => (unit.symbol === '' ? "'' for a plain number" : unit.symbol)).join(', ')}`,
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

/** What is wrong with the form of a plan, on one line. */
function problemsIn(error: z.ZodError): string {
  return z.prettifyError(error).replaceAll('\n', ' ').replaceAll('received undefined', 'received nothing')
}

function refused(argument: string, value: string, expected: string, hint: string): LitrebarError {
  return new LitrebarError({ code: 'input', argument, value, expected, hint })
}
