import type { GasModelOption, Mixture } from '../../gas-law/index.ts'
import type { CautionId, Reason, SourceId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  bar,
  celsius,
  fahrenheit,
  type GaugePressure,
  inUnit,
  requireWithin,
  type Temperature,
  temperatureOf,
  toAbsolute,
  toGauge,
} from '../../units/index.ts'
import { ambientPressure, gaugePressure } from '../accepted-contents.ts'
import { developedPressure } from './developed-pressure.ts'
import { type FillLimitRow, fillLimitRows } from './fill-limit.table.ts'
import { type PlusFindings, plusPermission } from './plus-permission.ts'

/** A cylinder as marked under the US specifications: it bears a service pressure. */
export interface UsMarking {
  readonly rule: 'us-specification'
  readonly servicePressure: GaugePressure
  /** What is known of the conditions of the ten per cent permission. Leave out to do without it. */
  readonly plus?: PlusFindings
}

/** A cylinder as marked under the UN and ISO rules: it bears a test pressure and, as a rule, a working pressure. */
export interface UnMarking {
  readonly rule: 'un-receptacle'
  readonly testPressure: GaugePressure
  readonly workingPressure?: GaugePressure
}

/** What a filling limit hangs on: the marking, the gas, and the pressure around the gauge. */
export type FillLimitInput = (UsMarking | UnMarking) & {
  readonly mixture: Mixture
  readonly ambientPressure: AbsolutePressure
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
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/**
 * Filling limit: the highest settled pressure that the marking allows a gas, and the rule behind it.
 * Every limit of the rule set is brought to the reference temperature by the real gas, and the lowest governs.
 * With the conditions of the plus mark stated as all met, the ten per cent excess counts as possible; otherwise it does not count.
 *
 * @param cylinder - rule set with its marks (gauge, Pa, up to 500 bar), mixture, ambient pressure (absolute, Pa)
 * @param options - `gas: 'ideal'` to show the difference
 * @returns limit at the reference temperature with every part, reasons that name the edition, cautions
 * @throws LitrebarError `range`, naming the field
 * @source cfr-49-173-301a, cfr-49-173-302, cfr-49-173-302b
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
  requireWithin('ambientPressure', cylinder.ambientPressure, ambientPressure)
  const permission = cylinder.rule === 'us-specification' && cylinder.plus ? plusPermission(cylinder.plus) : undefined
  const isPlus = permission?.outcome === 'possible'
  const rows = fillLimitRows.filter((row) => row.rule === (isPlus ? 'us-specification-plus' : cylinder.rule))
  const reference = temperatureAt(rows[0] as FillLimitRow)
  const parts = rows.flatMap((row) => {
    const mark = markOf(cylinder, row)
    if (mark === undefined) return []
    requireWithin(row.mark, mark, gaugePressure)
    const allowed = ((mark * row.numerator) / row.denominator) as GaugePressure
    const at = temperatureAt(row)
    return [{ row, allowed, at, settledPressure: settled(cylinder, allowed, at, reference, options) }]
  })
  const governing = parts.reduce((lowest, part) => (part.settledPressure < lowest.settledPressure ? part : lowest))
  return {
    settledPressure: governing.settledPressure,
    temperature: reference,
    governing,
    parts,
    because: [...parts.map(reasonOf), ...contradictions(cylinder)],
    cautions: isPlus ? ['fill-limit', 'plus-mark'] : ['fill-limit'],
    sources: [...new Set(parts.map(({ row }) => row.source))],
  }
}

function temperatureAt({ at }: FillLimitRow): Temperature {
  return temperatureOf(at.value, at.unit === 'celsius' ? celsius : fahrenheit)
}

function markOf(cylinder: FillLimitInput, { mark }: FillLimitRow): GaugePressure | undefined {
  if (cylinder.rule === 'us-specification') return cylinder.servicePressure
  return mark === 'testPressure' ? cylinder.testPressure : cylinder.workingPressure
}

function settled(
  { mixture, ambientPressure: ambient }: FillLimitInput,
  allowed: GaugePressure,
  at: Temperature,
  reference: Temperature,
  options: GasModelOption,
): GaugePressure {
  if (at === reference) return allowed
  const contents = { mixture, pressure: toAbsolute(allowed, ambient), temperature: at }
  return toGauge(developedPressure(contents, reference, options), ambient)
}

function reasonOf({ row, allowed }: FillLimitPart): Reason {
  return {
    code: row.id,
    text: `${row.text}: ${inUnit(allowed, bar).toFixed(1)} bar (${row.source}, edition ${row.edition})`,
    source: row.source,
  }
}

/** A working pressure above two thirds of the test pressure: one of the two is misread. */
function contradictions(cylinder: FillLimitInput): readonly Reason[] {
  if (cylinder.rule !== 'un-receptacle' || cylinder.workingPressure === undefined) return []
  if (cylinder.workingPressure <= (cylinder.testPressure * 2 * (1 + 1e-9)) / 3) return []
  return [
    {
      code: 'marks-contradict',
      text: 'The working pressure is more than two thirds of the test pressure. One of the marks is misread, or a limit for the gas is meant: ask an inspector. The lower limit is used here.',
      source: 'cfr-49-173-302b',
    },
  ]
}
