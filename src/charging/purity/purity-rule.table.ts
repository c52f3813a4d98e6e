import type { SourceId } from '../../references/sources.ts'
import { milligramPerCubicMetre, partPerMillion, percent, type Unit } from '../../units/index.ts'

/** What an analysis of breathing air looks for. */
export type PurityQuantity = 'oxygen' | 'carbonMonoxide' | 'carbonDioxide' | 'oil' | 'water' | 'hydrocarbons'

/** How a limit came to be known: read in the rule, reported by others, or remembered. */
export type LimitEvidence = 'read' | 'reported' | 'memory'

/** One published limit, as printed. */
export interface PurityLimit {
  readonly quantity: PurityQuantity
  readonly atLeast?: number
  readonly atMost?: number
  readonly unit: Unit<'fraction'> | Unit<'density'>
  /** Where it holds, if not everywhere: at the outlet of the compressor, or in a cylinder of a pressure, bar absolute. */
  readonly where?: 'compressor-outlet' | { readonly above: number; readonly upTo: number }
  readonly evidence: LimitEvidence
  readonly source: SourceId
  readonly place: string
  /** What is contradictory or incomplete about it. */
  readonly doubt?: string
}

/** Smell that a rule bears. */
export type OdourLimit = 'none' | 'slight'

/** A rule on breathing air, of one edition. */
export interface PurityRule {
  readonly name: string
  readonly limits: readonly PurityLimit[]
  readonly odour?: OdourLimit
  /** State of its cubic metre, where one was found: K and Pa. */
  readonly reference?: { readonly temperature: number; readonly pressure: number }
  /** It was made for breathing up to this pressure, Pa absolute. */
  readonly breathedUpTo?: number
  /** What a reader should know. */
  readonly notes: readonly string[]
  readonly evidence: LimitEvidence
  readonly source: SourceId
}

const ppm = partPerMillion
const mg = milligramPerCubicMetre
const highest = 1000 // bar: no upper end

/**
 * Rules on breathing air by edition. They differ by a factor of seven in carbon monoxide and of fifty in oil: none of them is a default,
 * and limits of two are never mixed. What was not found is left out, not filled in.
 */
export const purityRules = {
  'en-12021-2014': {
    name: 'EN 12021:2014, breathing air',
    limits: [
      {
        quantity: 'oxygen',
        atLeast: 20,
        atMost: 22,
        unit: percent,
        evidence: 'reported',
        source: 'en-12021-2014',
        place: 'as listed by test houses',
        doubt: 'One lexicon prints 21 ± 2 % for the same standard; the narrower band is taken.',
      },
      {
        quantity: 'carbonMonoxide',
        atMost: 5,
        unit: ppm,
        evidence: 'reported',
        source: 'en-12021-2014',
        place: 'as listed by test houses',
      },
      {
        quantity: 'carbonDioxide',
        atMost: 500,
        unit: ppm,
        evidence: 'reported',
        source: 'en-12021-2014',
        place: 'as listed by test houses',
      },
      {
        quantity: 'oil',
        atMost: 0.5,
        unit: mg,
        evidence: 'reported',
        source: 'en-12021-2014',
        place: 'as listed by test houses',
      },
      {
        quantity: 'water',
        atMost: 25,
        unit: mg,
        where: 'compressor-outlet',
        evidence: 'reported',
        source: 'en-12021-2014',
        place: 'as listed by test houses',
      },
      {
        quantity: 'water',
        atMost: 50,
        unit: mg,
        where: { above: 40, upTo: 200 },
        evidence: 'reported',
        source: 'en-12021-2014',
        place: 'as listed by test houses',
      },
      {
        quantity: 'water',
        atMost: 35,
        unit: mg,
        where: { above: 200, upTo: highest },
        evidence: 'reported',
        source: 'en-12021-2014',
        place: 'as listed by test houses',
      },
    ],
    odour: 'none',
    notes: [
      'Other toxic parts are to stay below national exposure limits; the share is from memory.',
      'Whether it still leaves out apparatus beyond 6 bar, as the edition of 1999 does, was not read.',
    ],
    evidence: 'reported',
    source: 'en-12021-2014',
  },
  'en-12021-1999': {
    name: 'EN 12021:1999, air for breathing apparatus',
    limits: [
      {
        quantity: 'oxygen',
        atLeast: 20,
        atMost: 22,
        unit: percent,
        evidence: 'reported',
        source: 'en-12021-1999',
        place: 'as listed by a test house',
      },
      {
        quantity: 'carbonMonoxide',
        atMost: 15,
        unit: ppm,
        evidence: 'reported',
        source: 'en-12021-1999',
        place: 'as listed by a test house',
      },
      {
        quantity: 'carbonDioxide',
        atMost: 500,
        unit: ppm,
        evidence: 'reported',
        source: 'en-12021-1999',
        place: 'as listed by a test house',
      },
      { quantity: 'oil', atMost: 0.5, unit: mg, evidence: 'read', source: 'en-12021-1999', place: 'clause 6.2.2' },
      {
        quantity: 'water',
        atMost: 25,
        unit: mg,
        where: 'compressor-outlet',
        evidence: 'reported',
        source: 'en-12021-1999',
        place: 'as listed by a test house',
      },
    ],
    breathedUpTo: 6e5,
    notes: ['Values are calculated at normal atmospheric pressure (clause 1); the temperature is not named.'],
    evidence: 'reported',
    source: 'en-12021-1999',
  },
  'uk-diving-regulator': {
    name: 'HSE diving information sheet 9, revision 1, with the limits of EN 12021:1999',
    limits: [
      {
        quantity: 'oxygen',
        atLeast: 20,
        atMost: 22,
        unit: percent,
        evidence: 'read',
        source: 'hse-dvis-9',
        place: 'text copy',
      },
      {
        quantity: 'carbonMonoxide',
        atMost: 3,
        unit: ppm,
        evidence: 'read',
        source: 'hse-dvis-9',
        place: 'text copy, printed also as 3.5 mg/m³',
      },
      { quantity: 'carbonDioxide', atMost: 500, unit: ppm, evidence: 'read', source: 'hse-dvis-9', place: 'text copy' },
      { quantity: 'oil', atMost: 0.5, unit: mg, evidence: 'read', source: 'hse-dvis-9', place: 'text copy' },
      {
        quantity: 'water',
        atMost: 25,
        unit: mg,
        where: 'compressor-outlet',
        evidence: 'read',
        source: 'hse-dvis-9',
        place: 'text copy',
      },
      {
        quantity: 'water',
        atMost: 50,
        unit: mg,
        where: { above: 40, upTo: 200 },
        evidence: 'read',
        source: 'hse-dvis-9',
        place: 'text copy',
      },
    ],
    notes: [
      'The limit of water above 200 bar was cut in the copy.',
      'Carbon monoxide: a tenth of the national limit of 8 hours. Measured at atmospheric pressure.',
    ],
    evidence: 'read',
    source: 'hse-dvis-9',
  },
  'as-nzs-2299-1-2015': {
    name: 'AS/NZS 2299.1:2015, breathing air',
    limits: [
      {
        quantity: 'oxygen',
        atLeast: 20,
        atMost: 22,
        unit: percent,
        evidence: 'reported',
        source: 'as-nzs-2299-1',
        place: 'list restated by a training firm',
      },
      {
        quantity: 'carbonMonoxide',
        atMost: 5,
        unit: ppm,
        evidence: 'reported',
        source: 'as-nzs-2299-1',
        place: 'list restated by a training firm',
      },
      {
        quantity: 'carbonDioxide',
        atMost: 600,
        unit: ppm,
        evidence: 'reported',
        source: 'as-nzs-2299-1',
        place: 'list restated by a training firm',
      },
      {
        quantity: 'oil',
        atMost: 0.5,
        unit: mg,
        evidence: 'reported',
        source: 'as-nzs-2299-1',
        place: 'list restated by a training firm',
      },
    ],
    odour: 'slight',
    reference: { temperature: 288.15, pressure: 100_000 },
    notes: [
      'A sample of a high-pressure source is taken at 12 MPa at least.',
      'No limit of water was found; another Australian standard recommends one.',
    ],
    evidence: 'reported',
    source: 'as-nzs-2299-1',
  },
  'norway-5-5': {
    name: 'Norway, regulations on action and limit values, section 5-5',
    limits: [
      {
        quantity: 'carbonMonoxide',
        atMost: 10,
        unit: ppm,
        evidence: 'read',
        source: 'norway-limit-values',
        place: 'section 5-5',
      },
      {
        quantity: 'carbonDioxide',
        atMost: 500,
        unit: ppm,
        evidence: 'read',
        source: 'norway-limit-values',
        place: 'section 5-5',
      },
      { quantity: 'oil', atMost: 1, unit: mg, evidence: 'read', source: 'norway-limit-values', place: 'section 5-5' },
      {
        quantity: 'water',
        atMost: 50,
        unit: mg,
        where: { above: 0, upTo: 201.5 },
        evidence: 'read',
        source: 'norway-limit-values',
        place: 'section 5-5, at 200 bar',
      },
      {
        quantity: 'water',
        atMost: 30,
        unit: mg,
        where: { above: 201.5, upTo: 301.5 },
        evidence: 'read',
        source: 'norway-limit-values',
        place: 'section 5-5, at 300 bar',
      },
    ],
    notes: [
      'Water is stated at 200 and at 300 bar; in between the stricter one is taken.',
      'Its own pairs of ppm and mg/m³ fit 25 °C, cut.',
    ],
    evidence: 'read',
    source: 'norway-limit-values',
  },
  'us-grade-d': {
    name: 'Grade D, as 29 CFR 1910.134(i) requires it of respirators',
    limits: [
      {
        quantity: 'oxygen',
        atLeast: 19.5,
        atMost: 23.5,
        unit: percent,
        evidence: 'read',
        source: 'cfr-29-1910-134',
        place: '(i), as copied by WAC 296-842-20005',
      },
      {
        quantity: 'carbonMonoxide',
        atMost: 10,
        unit: ppm,
        evidence: 'read',
        source: 'cfr-29-1910-134',
        place: '(i), as copied by WAC 296-842-20005',
      },
      {
        quantity: 'carbonDioxide',
        atMost: 1000,
        unit: ppm,
        evidence: 'read',
        source: 'cfr-29-1910-134',
        place: '(i), as copied by WAC 296-842-20005',
      },
      {
        quantity: 'oil',
        atMost: 5,
        unit: mg,
        evidence: 'read',
        source: 'cfr-29-1910-134',
        place: '(i), as copied by WAC 296-842-20005',
      },
    ],
    odour: 'none',
    notes: [
      'A rule for respirators, not for diving.',
      'Water is limited by dew point: −50 °F at 1 atm in cylinders, 10 °F below the temperature of use from a compressor.',
    ],
    evidence: 'read',
    source: 'cfr-29-1910-134',
  },
  'us-grade-e-2011': {
    name: 'CGA G-7.1-2011, grade E',
    limits: [
      {
        quantity: 'oxygen',
        atLeast: 20,
        atMost: 22,
        unit: percent,
        evidence: 'reported',
        source: 'cga-g-7-1',
        place: 'table reposted from a laboratory',
      },
      {
        quantity: 'carbonMonoxide',
        atMost: 10,
        unit: ppm,
        evidence: 'reported',
        source: 'cga-g-7-1',
        place: 'table reposted from a laboratory',
      },
      {
        quantity: 'carbonDioxide',
        atMost: 1000,
        unit: ppm,
        evidence: 'reported',
        source: 'cga-g-7-1',
        place: 'table reposted from a laboratory',
        doubt: 'Before 1997 the limit was 500 ppm.',
      },
      {
        quantity: 'oil',
        atMost: 5,
        unit: mg,
        evidence: 'reported',
        source: 'cga-g-7-1',
        place: 'table reposted from a laboratory',
      },
      {
        quantity: 'hydrocarbons',
        atMost: 25,
        unit: ppm,
        evidence: 'reported',
        source: 'cga-g-7-1',
        place: 'table reposted from a laboratory',
      },
    ],
    odour: 'slight',
    notes: ['Water: 24 ppm in one variant of the grade, no limit in another; the third was cut in the copy.'],
    evidence: 'reported',
    source: 'cga-g-7-1',
  },
  'us-commercial-diving': {
    name: '29 CFR 1910.430(b)(3), commercial diving',
    limits: [
      {
        quantity: 'carbonMonoxide',
        atMost: 20,
        unit: ppm,
        evidence: 'read',
        source: 'cfr-29-1910-430',
        place: '(b)(3)',
      },
      {
        quantity: 'carbonDioxide',
        atMost: 1000,
        unit: ppm,
        evidence: 'read',
        source: 'cfr-29-1910-430',
        place: '(b)(3)',
      },
      { quantity: 'oil', atMost: 5, unit: mg, evidence: 'read', source: 'cfr-29-1910-430', place: '(b)(3), oil mist' },
    ],
    odour: 'none',
    notes: ['Tested every 6 months; no test of oil mist for machines without oil.'],
    evidence: 'read',
    source: 'cfr-29-1910-430',
  },
  'csa-z180-1-1985': {
    name: 'CAN3-Z180.1-M85, respirator air',
    limits: [
      {
        quantity: 'carbonMonoxide',
        atMost: 5,
        unit: ppm,
        evidence: 'reported',
        source: 'csa-z180-1-m85',
        place: 'table of a fire-safety page',
      },
      {
        quantity: 'carbonDioxide',
        atMost: 500,
        unit: ppm,
        evidence: 'reported',
        source: 'csa-z180-1-m85',
        place: 'table of a fire-safety page',
      },
      {
        quantity: 'oil',
        atMost: 1,
        unit: mg,
        evidence: 'reported',
        source: 'csa-z180-1-m85',
        place: 'table of a fire-safety page, with particulates',
      },
    ],
    notes: [
      'An old edition for respirators. The Canadian diving standard was not found.',
      'It also limits nitrogen oxides and the dew point, −63 °F.',
    ],
    evidence: 'reported',
    source: 'csa-z180-1-m85',
  },
  'oxygen-compatible-trade': {
    name: 'oxygen-compatible air, criterion of the trade',
    limits: [
      {
        quantity: 'oil',
        atMost: 0.1,
        unit: mg,
        evidence: 'reported',
        source: 'air-specification-bulletin',
        place: 'diving table, condensed hydrocarbons',
      },
      {
        quantity: 'carbonMonoxide',
        atMost: 2,
        unit: ppm,
        evidence: 'reported',
        source: 'air-specification-bulletin',
        place: 'diving table',
        doubt: 'One of its three columns prints 10 ppm; the heads of the columns were lost.',
      },
      {
        quantity: 'carbonDioxide',
        atMost: 500,
        unit: ppm,
        evidence: 'reported',
        source: 'air-specification-bulletin',
        place: 'diving table',
        doubt: 'Another column prints 1000 ppm.',
      },
      {
        quantity: 'hydrocarbons',
        atMost: 25,
        unit: ppm,
        evidence: 'reported',
        source: 'air-specification-bulletin',
        place: 'diving table',
      },
    ],
    notes: [
      'A standard covers such air by name, BS 8478:2011; its numbers were not read.',
      'It judges air that is to meet oxygen-rich gas, beside the rule for breathing air.',
    ],
    evidence: 'reported',
    source: 'air-specification-bulletin',
  },
} as const satisfies Readonly<Record<string, PurityRule>>

/** Id of a rule on breathing air. */
export type PurityRuleId = keyof typeof purityRules

/** A class of compressed air by ISO 8573-1. It says nothing about carbon monoxide, carbon dioxide or odour, so it is no rule of breathing air. */
export interface CompressedAirClass {
  /** Largest count of particles per m³, by size in µm; undefined where none is stated. */
  readonly particles: { readonly from01to05?: number; readonly from05to1?: number; readonly from1to5?: number }
  /** °C, at working pressure, 7 bar unless stated. */
  readonly pressureDewPointCelsius: number
  /** Total oil, mg/m³ at 20 °C, 1 bar, dry. */
  readonly oilMilligramPerCubicMetre?: number
}

/**
 * Classes 1 to 5 of compressed air. For reading a data sheet, never for a verdict on breathing.
 *
 * @source iso-8573-1, table as reproduced by makers
 */
export const compressedAirClasses: Readonly<Record<1 | 2 | 3 | 4 | 5, CompressedAirClass>> = {
  1: {
    particles: { from01to05: 20_000, from05to1: 400, from1to5: 10 },
    pressureDewPointCelsius: -70,
    oilMilligramPerCubicMetre: 0.01,
  },
  2: {
    particles: { from01to05: 400_000, from05to1: 6000, from1to5: 100 },
    pressureDewPointCelsius: -40,
    oilMilligramPerCubicMetre: 0.1,
  },
  3: { particles: { from05to1: 90_000, from1to5: 1000 }, pressureDewPointCelsius: -20, oilMilligramPerCubicMetre: 1 },
  4: { particles: { from1to5: 10_000 }, pressureDewPointCelsius: 3, oilMilligramPerCubicMetre: 5 },
  5: { particles: { from1to5: 100_000 }, pressureDewPointCelsius: 7 },
}
