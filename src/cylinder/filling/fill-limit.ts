import { LitrebarError, requireKeys, requireWord, shown } from '../../errors/index.ts'
import type { GasModel, GasModelOption } from '../../gas-law/index.ts'
import { type Mixture, requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId, Reason, SourceId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  bar,
  celsius,
  fahrenheit,
  type GaugePressure,
  inUnit,
  psi,
  requireWithin,
  type Temperature,
  temperatureOf,
  toAbsolute,
  toGauge,
} from '../../units/index.ts'
import { ambientPressure, gaugePressure } from '../accepted-contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'
import type { CylinderMaterial } from '../marking/index.ts'
import { type FillLimitRow, fillLimitRows } from './fill-limit.table.ts'
import { oxygenThresholds } from './oxygen-service.table.ts'
import { type PlusFindings, plusPermission } from './plus-permission.ts'

/** A cylinder as marked under the US specifications: with a service pressure. */
export interface UsMarking {
  readonly rule: 'us-specification'
  readonly servicePressure: GaugePressure
  /** What is known of the conditions of the ten per cent permission. Leave out to do without it. */
  readonly plus?: PlusFindings
}

/** A cylinder as marked under the UN and ISO rules: with a test pressure and, as a rule, a working pressure. */
export interface UnMarking {
  readonly rule: 'un-receptacle'
  readonly testPressure: GaugePressure
  readonly workingPressure?: GaugePressure
}

/** What a filling limit hangs on: the marking, the gas, and the pressure around the gauge. */
export type FillLimitInput = (UsMarking | UnMarking) & {
  readonly mixture: Mixture
  readonly ambientPressure: AbsolutePressure
  /** What the cylinder is made of: rich mixtures in aluminium have a limit of their own in the US. */
  readonly material?: CylinderMaterial
  /** Country of filling, as two letters, where a limit depends on it. */
  readonly country?: string
}

/** One limit of the rule, and what it comes to once the gas has settled. */
export interface FillLimitPart {
  readonly row: FillLimitRow
  /** The gauge pressure that the rule allows at its own temperature. */
  readonly allowed: GaugePressure
  readonly at: Temperature
  /** The settled pressure at the reference temperature from which the gas would just reach it. */
  readonly settledPressure: GaugePressure
}

/** The filling limit of a cylinder for a gas. */
export interface FillLimit {
  /** The lowest of the limits, as settled gauge pressure at `temperature`. */
  readonly settledPressure: GaugePressure
  /** The reference temperature of the rule: 70 °F in the US, 15 °C under UN and ISO. */
  readonly temperature: Temperature
  readonly governing: FillLimitPart
  readonly parts: readonly FillLimitPart[]
  /** What leaves the limit open: marks that contradict each other, a material that a lower limit hangs on. */
  readonly doubts: readonly Reason[]
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/**
 * Filling limit: the highest settled pressure that the marking allows a gas, and the rule behind it.
 * Every limit of the rule set is brought to the reference temperature by the real gas, and the lowest governs.
 * With the conditions of the plus mark stated as all met, the ten per cent excess counts as possible; otherwise it does not count.
 * It knows the marking alone: whether this cylinder may be filled today is for `assessFilling`.
 *
 * @param cylinder - rule set with its marks (gauge, Pa, up to 500 bar), mixture, ambient pressure (absolute, Pa); material and country
 *   of filling, where they are known
 * @param options - `gas: 'ideal'` to show the difference
 * @returns limit at the reference temperature with every part, what leaves it open, reasons that name the edition, cautions
 * @throws LitrebarError `range`, naming the field; `input` for an unknown rule, key or word
 * @source cfr-49-173-301a, cfr-49-173-302-2015, cfr-49-173-302a-2015, cfr-49-173-302b
 * @example
 * const limit = fillLimit({
 *   rule: 'us-specification',
 *   servicePressure: gauge(3000, psi),
 *   mixture: dryAir,
 *   ambientPressure: absolute(1, atmosphere),
 * })
 * const shown = [limit.governing.row.id, inUnit(limit.settledPressure, psi).toFixed(0)] // => ['us-settled', '3000']
 */
export function fillLimit(cylinder: FillLimitInput, options: GasModelOption = {}): FillLimit {
  requireMarking(cylinder, {})
  return limitOf(cylinder, gasModelOf(options))
}

const common = { rule: true, mixture: true, ambientPressure: true, material: false, country: false }
const marks = {
  'us-specification': { servicePressure: true, plus: false },
  'un-receptacle': { testPressure: true, workingPressure: false },
}

/** Refuses a marking that is none, and a key that neither the limit nor the function around it reads. */
export function requireMarking(cylinder: FillLimitInput, others: Readonly<Record<string, boolean>>): void {
  const { rule } = (cylinder as FillLimitInput | undefined) ?? {}
  requireWord('rule', rule, ['us-specification', 'un-receptacle'])
  requireKeys('cylinder', cylinder, { ...common, ...marks[rule], ...others })
  requireMixture('mixture', cylinder.mixture)
  if (cylinder.material !== undefined) requireWord('material', cylinder.material, ['steel', 'aluminium', 'composite'])
  if (cylinder.country !== undefined) requireCountry('country', cylinder.country)
}

/** Refuses what is no two-letter code of a country: a name or lower-case letters would match no rule, in silence. */
export function requireCountry(argument: string, country: string): void {
  if (typeof country === 'string' && /^[A-Z]{2}$/.test(country)) return
  throw new LitrebarError({
    code: 'input',
    argument,
    value: shown(country),
    expected: 'two capital letters, such as US or DE',
    hint: 'Give the ISO 3166 code of the country where the cylinder is filled.',
  })
}

/** The limit of a marking that has been checked. */
export function limitOf(cylinder: FillLimitInput, gas: GasModel): FillLimit {
  requireWithin('ambientPressure', cylinder.ambientPressure, ambientPressure)
  const permission = cylinder.rule === 'us-specification' && cylinder.plus ? plusPermission(cylinder.plus) : undefined
  const isPlus = permission?.outcome === 'possible' && cylinder.material !== 'aluminium'
  const rows = fillLimitRows.filter(
    (row) => row.rule === (isPlus ? 'us-specification-plus' : cylinder.rule) && speaksOf(row, cylinder),
  )
  const reference = temperatureAt(rows[0] as FillLimitRow)
  const parts = rows.flatMap((row) => {
    const mark = markOf(cylinder, row)
    if (mark === undefined) return []
    requireWithin(row.mark, mark, gaugePressure)
    const allowed = ((mark * row.numerator) / row.denominator) as GaugePressure
    const at = temperatureAt(row)
    return [{ row, allowed, at, settledPressure: settled(cylinder, allowed, at, reference, gas) }]
  })
  const governing = parts.reduce((lowest, part) => (part.settledPressure < lowest.settledPressure ? part : lowest))
  const doubts = [...contradictions(cylinder), ...materialUnknown(cylinder, governing.settledPressure)]
  const isRich = cylinder.mixture.oxygen > oxygenThresholds['us-transport-oxidizer'].above / 100
  return {
    settledPressure: governing.settledPressure,
    temperature: reference,
    governing,
    parts,
    doubts,
    because: [...parts.map(reasonOf), ...doubts],
    cautions: [
      'fill-limit',
      ...(isPlus ? (['plus-mark'] as const) : []),
      ...(isRich ? (['oxygen-handling'] as const) : []),
    ],
    sources: [...new Set(parts.map(({ row }) => row.source))],
  }
}

/** A limit that is confined to a material holds where that material, a gas so rich, and the country are stated. */
function speaksOf({ only }: FillLimitRow, { material, mixture, country }: FillLimitInput): boolean {
  if (only === undefined) return true
  return (
    material === only.material &&
    mixture.oxygen > only.oxygenAbove / 100 &&
    (only.country === undefined || country === only.country)
  )
}

function temperatureAt({ at }: FillLimitRow): Temperature {
  return temperatureOf(at.value, at.unit === 'celsius' ? celsius : fahrenheit)
}

function markOf(cylinder: FillLimitInput, { mark }: FillLimitRow): GaugePressure | undefined {
  if (mark === 'psi') return psi.factor as GaugePressure
  if (cylinder.rule === 'us-specification') return cylinder.servicePressure
  return mark === 'testPressure' ? cylinder.testPressure : cylinder.workingPressure
}

function settled(
  { mixture, ambientPressure: ambient }: FillLimitInput,
  allowed: GaugePressure,
  at: Temperature,
  reference: Temperature,
  gas: GasModel,
): GaugePressure {
  if (at === reference) return allowed
  const density = densityBy(gas, mixture, toAbsolute(allowed, ambient), at)
  return toGauge(pressureBy(gas, mixture, density, reference) as AbsolutePressure, ambient)
}

function reasonOf({ row, allowed }: FillLimitPart): Reason {
  return {
    code: row.id,
    text: `${row.text}: ${inUnit(allowed, bar).toFixed(1)} bar (${row.source}, edition ${row.edition})`,
    source: row.source,
  }
}

/** A working pressure above two thirds of the test pressure, or a plus on aluminium: one of the two is misread. */
function contradictions(cylinder: FillLimitInput): readonly Reason[] {
  if (cylinder.rule === 'us-specification') {
    if (cylinder.material !== 'aluminium' || cylinder.plus?.specification !== true) return []
    return [
      {
        code: 'plus-on-aluminium',
        text: 'Only steel types carry a valid plus mark, and this cylinder is stated to be aluminium: the plus has no effect.',
        source: 'cfr-49-173-302a-2015',
      },
    ]
  }
  if (cylinder.workingPressure === undefined) return []
  if (cylinder.workingPressure <= (cylinder.testPressure * 2 * (1 + 1e-9)) / 3) return []
  return [
    {
      code: 'marks-contradict',
      text: 'The working pressure is more than two thirds of the test pressure. Either a mark was misread or the limit is one for the gas: ask an inspector. The lower limit is used here.',
      source: 'cfr-49-173-302b',
    },
  ]
}

/** A rich gas in a cylinder of unstated material, where aluminium would have a lower limit. */
function materialUnknown(cylinder: FillLimitInput, limit: GaugePressure): readonly Reason[] {
  if (cylinder.material !== undefined) return []
  const lower = fillLimitRows.find(
    (row) =>
      row.rule === cylinder.rule &&
      row.only !== undefined &&
      speaksOf(row, { ...cylinder, material: row.only.material }),
  )
  if (lower === undefined || limit <= lower.numerator * psi.factor) return []
  return [
    {
      code: 'material-unknown',
      text: `If the cylinder is aluminium, a lower limit applies (${lower.text}). State its material.`,
      source: lower.source,
    },
  ]
}
