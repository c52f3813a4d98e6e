import { LitrebarError, requireKeys, shown } from '../errors/index.ts'
import { type Accepted, requireWithin } from './accepted.ts'
import { kilogramPerCubicMetre } from './density.ts'
import type { LikelySlip } from './likely-slip.ts'
import {
  type RecordRelation,
  recordRelations,
  type StatedRecord,
  standardAtmosphereAt,
} from './record-relation.table.ts'
import { isUsual, type KindSlip, type Role, reread, type SlipRole, slipRoles } from './slip-role.table.ts'

/** A slip in one number of a record, after whose mending the whole record is usual. */
export interface RecordSlip extends LikelySlip {
  readonly role: SlipRole
  /** What about the record is unusual as it stands. */
  readonly because: string
}

/** Whether a record is of sizes that go together, and if not, which slip explains it. */
export interface RecordPlausibility {
  readonly usual: boolean
  /** What is unusual, in words; empty for a usual record. */
  readonly findings: readonly string[]
  /** The slips that explain all of it, the more common first. */
  readonly slips: readonly RecordSlip[]
}

const density: Accepted = {
  atLeast: 990,
  atMost: 1035,
  unit: kilogramPerCubicMetre,
  hint: 'State the density of the water, or leave it out.',
}

/**
 * Whether the numbers of a record are of sizes that go together, and the slips in one of them that would explain it if not: 12 L with a
 * service pressure of 3000 bar, 130 m on air, a capacity that is the water volume, an ambient pressure that is a gauge pressure.
 * For input without types: what a person or a file states. An unusual record is no error; the caller decides. A slip that leaves
 * a record usual goes unseen: 10 m given as 33 m, with nothing else stated, is a depth like any other.
 *
 * @param record - numbers in SI by what they stand for, as they were read with the stated units; pressures as their role says,
 *   temperatures in kelvin. What is not stated is left out
 * @param options - `waterDensity`, kg/m³, 990 to 1035: with it, and surface and ambient pressure to four digits, metres of sea water
 *   (10 kPa) are told from metres
 * @returns whether it is usual, what is not, and the slips that explain all of it
 * @throws LitrebarError `input` for an unknown role or a value that is no finite number; `range` for a density of no water
 * @source common-practice
 * @example
 * recordSlips({ depth: depthOf(130, metre), 'oxygen fraction': fractionOf(0.21) }).slips[0]?.id // => 'feet-read-as-metres'
 */
export function recordSlips(
  record: StatedRecord,
  options: { readonly waterDensity?: number } = {},
): RecordPlausibility {
  const roles = slipRoles()
  requireKeys('record', record, roleKeys(roles))
  requireKeys('options', options, { waterDensity: false })
  const stated = Object.entries(record).filter(([, value]) => value !== undefined) as [SlipRole, number][]
  for (const [role, value] of stated)
    if (typeof value !== 'number' || !Number.isFinite(value)) throw refusal(role, value)
  const { waterDensity } = options
  if (waterDensity !== undefined) requireWithin('options.waterDensity', waterDensity, density)
  const relations = recordRelations()
  const findings = unusualIn(record, roles, relations)
  if (findings.length === 0) {
    const metres = waterDensity === undefined ? undefined : metresOfSeaWater(record, waterDensity)
    return metres === undefined
      ? { usual: true, findings, slips: [] }
      : { usual: false, findings: [metres.because], slips: [metres] }
  }
  const because = findings[0] as string
  const slips = stated.flatMap(([role, value]) =>
    roles[role].slips.flatMap((slip): RecordSlip[] => {
      const readings = 'usualOf' in slip ? kindReadings(value, slip, record) : [reread(value, slip)]
      const meant = readings.find((reading) => {
        // what turns out to be another number of the record must come near it
        const own = 'usualOf' in slip ? slip.usualOf : role
        const other = own === role ? reading : (record[own] ?? reading)
        const mended = { ...record, [role]: undefined, [own]: other }
        return Math.abs(reading - other) <= 0.1 * other && unusualIn(mended, roles, relations).length === 0
      })
      return meant === undefined ? [] : [{ role, id: slip.id, text: slip.text, meant, because }]
    }),
  )
  return { usual: false, findings, slips }
}

function roleKeys(roles: Readonly<Record<SlipRole, Role>>): Record<SlipRole, false> {
  return Object.fromEntries(Object.keys(roles).map((role) => [role, false])) as Record<SlipRole, false>
}

function refusal(role: SlipRole, value: unknown): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: `record['${role}']`,
    value: shown(value),
    expected: 'a finite number in SI',
    hint: 'Leave out what is not known.',
  })
}

/** A gauge pressure lacks the pressure of the place, which the record states, or its altitude gives, or nobody knows. */
function kindReadings(value: number, { plus }: KindSlip, record: StatedRecord): readonly number[] {
  if (plus === 0) return [value]
  const { 'surface pressure': surface, altitude } = record
  const known = [
    ...(surface === undefined ? [] : [surface]),
    ...(altitude === undefined ? [] : [standardAtmosphereAt(altitude)]),
  ]
  return [...known, plus, ...heights.map(standardAtmosphereAt)].map((missing) => value + missing)
}

const heights = [500, 1000, 1500, 2000, 2500, 3000, 3500]

function unusualIn(
  record: StatedRecord,
  roles: Readonly<Record<SlipRole, Role>>,
  relations: readonly RecordRelation[],
): string[] {
  const sizes = (Object.entries(record) as [SlipRole, number | undefined][])
    .filter(([role, value]) => value !== undefined && !isUsual(roles[role], value))
    .map(([role]) => `the ${role} is of no usual size`)
  const failing = relations.flatMap(({ of, figure, from, to, text }) => {
    const numbers = of.map((role) => record[role])
    if (numbers.includes(undefined)) return []
    const found = figure(numbers as number[], record)
    return found >= from && found <= to ? [] : [text]
  })
  return [...sizes, ...failing]
}

/** Metres of sea water, by definition 10 kPa, given as metres: a difference that only good figures show. */
function metresOfSeaWater(record: StatedRecord, waterDensity: number): RecordSlip | undefined {
  const { depth, 'ambient pressure': ambient, 'surface pressure': surface } = record
  if (depth === undefined || ambient === undefined || surface === undefined) return undefined
  const perMetre = waterDensity * 9.80665
  // both are kept to one place; a nought at the end of one is no sign of a coarser reading
  const fineness = 2 * Math.min(halfOfLastPlace(ambient), halfOfLastPlace(surface))
  const depthFineness = Math.min(0.05, halfOfLastPlace(depth))
  const asMetres = ambient - surface - perMetre * depth
  const asSeaWater = ambient - surface - 1e4 * depth
  const isOff = Math.abs(asMetres) > 1.2 * perMetre * depthFineness + fineness
  const isExplained = Math.abs(asSeaWater) <= 1.05 * fineness + 1e4 * depthFineness * (Number.isInteger(depth) ? 0 : 1)
  return isOff && isExplained && Math.abs(asSeaWater) < Math.abs(asMetres) / 2
    ? {
        role: 'depth',
        id: 'metres-of-sea-water-read-as-metres',
        text: 'metres of sea water, 10 kPa each, were read as metres',
        meant: (1e4 * depth) / perMetre,
        because: 'the ambient pressure is not that of the depth',
      }
    : undefined
}

/** Half a unit of the last place that a number states, read off its digits. */
function halfOfLastPlace(value: number): number {
  const [digits = '', power = '0'] = Number(value.toPrecision(9)).toExponential().split('e')
  return 0.5 * 10 ** (Number(power) - (digits.split('.')[1]?.length ?? 0))
}
