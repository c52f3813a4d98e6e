import { requireKeys, requireText } from '../../errors/index.ts'
import { surfaceEquivalentFraction } from '../../gas-law/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import { isUnitOf, notOfQuantity } from '../../units/check-unit.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Fraction,
  hectopascal,
  type MoleFraction,
  one,
  pascal,
  requireWithin,
  type Unit,
} from '../../units/index.ts'

/** A contaminant in gas that is breathed under pressure. */
export interface BreathedContaminant {
  readonly fraction: MoleFraction
  /** Absolute pressure around the diver. */
  readonly pressure: AbsolutePressure
  readonly surfacePressure: AbsolutePressure
}

/** What it amounts to. */
export interface ContaminantAtDepth {
  readonly partialPressure: AbsolutePressure
  /** Fraction that would act so at the surface. */
  readonly surfaceEquivalent: Fraction
  readonly cautions: readonly CautionId[]
}

/**
 * A contaminant at depth: its partial pressure, and the fraction that would act alike at the surface. A few parts per million that pass
 * at the surface act like many at depth.
 *
 * @param gas - mole fraction, 0 to 1; pressure around the diver, absolute, Pa, up to 200 bar; surface pressure, Pa, up to 1.2 bar
 * @returns partial pressure, Pa, and surface equivalent
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source us-navy-diving-manual, surface equivalent value
 * @example
 * const gas = { fraction: fractionOf(5, partPerMillion), pressure: absolute(5.01325, bar), surfacePressure: absolute(1, atmosphere) }
 * inUnit(contaminantAtDepth(gas).surfaceEquivalent, partPerMillion).toFixed(1) // => '24.7'
 */
export function contaminantAtDepth(gas: BreathedContaminant): ContaminantAtDepth {
  requireKeys('gas', gas, { fraction: true, pressure: true, surfacePressure: true })
  const surfaceEquivalent = surfaceEquivalentFraction(gas)
  return {
    partialPressure: (gas.fraction * gas.pressure) as AbsolutePressure,
    surfaceEquivalent,
    cautions: ['breathing-air', 'carbon-monoxide'],
  }
}

/** A limit of a partial pressure, as printed. */
export interface PartialPressureLimit {
  readonly atMost: number
  readonly unit: Unit<'pressure'>
  readonly source: SourceId
  readonly place: string
}

/** Limits during work under pressure. Whether the article is still in force was not checked. */
export const partialPressureLimits = {
  carbonMonoxide: { atMost: 5, unit: pascal, source: 'french-code-r238', place: 'article R238-6-6' },
  carbonDioxide: { atMost: 10, unit: hectopascal, source: 'french-code-r238', place: 'article R238-6-6' },
  oilVapourAsMethane: { atMost: 0.5, unit: hectopascal, source: 'french-code-r238', place: 'article R238-6-6' },
} as const satisfies Readonly<Record<string, PartialPressureLimit>>

const doubtRange: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Give a standard uncertainty as mole fraction.' }

/**
 * A contaminant at depth held against a limit of its partial pressure.
 *
 * @param gas - as for `contaminantAtDepth`, with the standard uncertainty of the fraction
 * @param limit - a row of `partialPressureLimits`, or your own
 * @returns partial pressure against the limit, Pa
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, guarded comparison; the limit names its own
 * @example
 * const gas = {
 *   fraction: fractionOf(8, partPerMillion),
 *   standardUncertainty: fractionOf(0.5, partPerMillion),
 *   pressure: absolute(6, bar),
 *   surfacePressure: absolute(1, bar),
 * }
 * assessContaminantAtDepth(gas, partialPressureLimits.carbonMonoxide).verdict // => 'undetermined'
 */
export function assessContaminantAtDepth(
  gas: BreathedContaminant & { readonly standardUncertainty: MoleFraction },
  limit: PartialPressureLimit,
): Assessment<AbsolutePressure> {
  requireKeys('gas', gas, { fraction: true, pressure: true, surfacePressure: true, standardUncertainty: true })
  requireWithin('gas.standardUncertainty', gas.standardUncertainty, doubtRange)
  requireKeys('limit', limit, { atMost: true, unit: true, source: true, place: true })
  if (!isUnitOf(limit.unit, 'pressure')) throw notOfQuantity('limit.unit', limit.unit, 'pressure')
  requireText('limit.source', limit.source, 'Name the source of the limit.')
  requireWithin('limit.atMost', limit.atMost, { above: 0, unit: one, hint: 'Give a number above 0.' })
  requireWithin('limit.atMost', limit.atMost * limit.unit.factor, {
    above: 0,
    unit: pascal,
    hint: 'Give a pressure above 0.',
  })
  const { fraction, pressure, surfacePressure, standardUncertainty } = gas
  const { partialPressure, cautions } = contaminantAtDepth({ fraction, pressure, surfacePressure })
  const most = (limit.atMost * limit.unit.factor) as AbsolutePressure
  const doubt = standardUncertainty * pressure
  const inUnit = (p: number): string => String(Number((p / limit.unit.factor).toPrecision(3)))
  const text = `${inUnit(partialPressure)} ± ${inUnit(2 * doubt)} ${limit.unit.symbol}, limit ${String(limit.atMost)} ${limit.unit.symbol}.`
  const isBeyond = partialPressure > most
  const isOpen = !isBeyond && partialPressure + 2 * doubt > most
  const reason = (code: string): readonly Reason[] => [{ code, text, source: limit.source }]
  return {
    value: partialPressure,
    limit: most,
    margin: most - partialPressure,
    marginUncertainty: doubt,
    ...verdictFrom({
      against: isBeyond ? reason('partial-pressure-beyond') : [],
      doubts: isOpen ? reason('within-uncertainty-of-limit') : [],
      notes: isBeyond || isOpen ? [] : reason('partial-pressure-within'),
    }),
    cautions,
    sources: [limit.source],
  }
}
