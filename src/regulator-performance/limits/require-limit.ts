import { inputError, requireKeys, requireList, requireText, requireWord, shown } from '../../errors/index.ts'
import { isUnit } from '../../units/check-unit.ts'
import { type Accepted, one, requireWithin } from '../../units/index.ts'
import type { AcceptanceLimit, ConditionName, LimitCondition, LimitedQuantity } from './acceptance-limit.table.ts'

const limitKeys: Readonly<Record<keyof AcceptanceLimit, boolean>> = {
  id: true,
  quantity: true,
  atLeast: false,
  atMost: false,
  conditions: true,
  source: true,
  place: true,
  evidence: true,
  alternativeOf: false,
  note: false,
}

const conditionKeys: Readonly<Record<keyof LimitCondition, boolean>> = {
  of: true,
  unit: false,
  settings: false,
  word: false,
  upTo: false,
  orRatedWorkingPressure: false,
  allOf: false,
  source: false,
}

const quantities: readonly LimitedQuantity[] = [
  'workOfBreathingPerLitre',
  'inhalationPressure',
  'exhalationPressure',
  'assistPressureOnInhalation',
  'assistWorkOnInhalation',
  'elastance',
  'hydrostaticImbalance',
]

const names: readonly ConditionName[] = [
  'ambient pressure',
  'depth',
  'gas',
  'waveform',
  'tidal volume',
  'breathing frequency',
  'respiratory minute volume',
  'water temperature',
  'supply pressure',
  'attitude',
]

const anyFigure: Accepted = { unit: one, hint: 'Write it as the source prints it.' }
const figure: Accepted = { atLeast: 0, unit: one, hint: 'Write it as the source prints it.' }

/**
 * Refuses a row of limits that no value can be held against.
 *
 * @param argument - the parameter with its path
 * @param limit - a row of `acceptanceLimits`, or one of the caller's own
 * @throws LitrebarError `input` for what is missing, misspelt or of another kind; `range` for a figure that is not finite
 */
export function requireLimit(argument: string, limit: AcceptanceLimit): void {
  requireKeys(argument, limit, limitKeys)
  const { id, quantity, atLeast, atMost, conditions, place, evidence, source, alternativeOf, note } = limit
  for (const [name, text] of Object.entries({ id, place, source, alternativeOf, note }))
    if (text !== undefined) requireText(`${argument}.${name}`, text)
  requireWord(`${argument}.quantity`, quantity, quantities)
  requireWord(`${argument}.evidence`, evidence, ['primary', 'secondary', 'memory'])
  requireList(`${argument}.conditions`, conditions, 0, 'List the conditions; an empty list if there are none.')
  conditions.forEach((condition, k) => {
    requireCondition(`${argument}.conditions[${k}]`, condition)
  })
  if (atLeast !== undefined) requirePrinted(`${argument}.atLeast`, atLeast)
  if (atMost === undefined) return
  if (Object.hasOwn(Object(atMost) as object, 'printed')) requirePrinted(`${argument}.atMost`, atMost)
  else requireLine(`${argument}.atMost`, atMost)
}

function requirePrinted(argument: string, bound: unknown): void {
  requireKeys(argument, bound, { printed: true, unit: true })
  const { printed, unit } = bound as Readonly<Record<'printed' | 'unit', unknown>>
  requireText(`${argument}.printed`, printed)
  if (!/^-?\d+(?:\.\d+)?$/u.test(printed))
    throw inputError(`${argument}.printed`, shown(printed), 'a figure as printed, such as 2.49', 'Write a point.')
  requireUnit(`${argument}.unit`, unit)
}

function requireLine(argument: string, line: unknown): void {
  requireKeys(argument, line, { intercept: true, slope: true, depthUnit: true, deepest: true })
  const { intercept, slope, depthUnit, deepest } = line as Readonly<Record<string, unknown>>
  requirePrinted(`${argument}.intercept`, intercept)
  requireWithin(`${argument}.slope`, slope as number, anyFigure)
  requireWithin(`${argument}.deepest`, deepest as number, figure)
  requireUnit(`${argument}.depthUnit`, depthUnit)
}

function requireCondition(argument: string, condition: LimitCondition): void {
  requireKeys(argument, condition, conditionKeys)
  const { of, unit, settings, word, upTo, orRatedWorkingPressure, allOf, source } = condition
  requireWord(`${argument}.of`, of, names)
  if (unit !== undefined) requireUnit(`${argument}.unit`, unit)
  if (word !== undefined) requireWord(`${argument}.word`, word, ['vertical', 'horizontal', 'sinusoid', 'air'])
  if (upTo !== undefined) requireWithin(`${argument}.upTo`, upTo, figure)
  if (source !== undefined) requireText(`${argument}.source`, source)
  for (const [name, truth] of Object.entries({ orRatedWorkingPressure, allOf }))
    if (truth !== undefined) requireWord(`${argument}.${name}`, truth, [true])
  if (settings === undefined) return
  requireList(`${argument}.settings`, settings)
  settings.forEach((setting, k) => {
    requireKeys(`${argument}.settings[${k}]`, setting, { at: true, give: true })
    requireWithin(`${argument}.settings[${k}].at`, setting.at, anyFigure)
    requireWithin(`${argument}.settings[${k}].give`, setting.give, figure)
  })
}

function requireUnit(argument: string, unit: unknown): void {
  if (!isUnit(unit as Parameters<typeof isUnit>[0]))
    throw inputError(argument, shown(unit), 'a unit', 'Hand in the unit row itself, such as kilopascal.')
}
