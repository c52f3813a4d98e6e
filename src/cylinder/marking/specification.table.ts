import type { SourceId } from '../../references/sources.ts'

/** What a cylinder is made of, as far as its specification says. */
export type CylinderMaterial = 'steel' | 'aluminium' | 'composite'

/** One specification or design standard, with what the rules hang on it. Figures as printed. */
export interface CylinderSpecification {
  readonly material: CylinderMaterial
  /** Test pressure over service pressure (US) or working pressure (ISO, UN, European). */
  readonly testRatio?: { readonly numerator: number; readonly denominator: number }
  /** Where a type has no ratio but a pressure: psi, gauge. */
  readonly fixedTestPressurePsi?: number
  /** Of the types that the ten per cent rule names. */
  readonly mayCarryPlus: boolean
  /** Of the types that the ten-year star names. */
  readonly mayCarryStar: boolean
  /** Guaranteed tensile strength so high that US requalification adds an ultrasonic examination. */
  readonly isHighStrength?: boolean
  /** Years of service from the first test, where the type has an end. */
  readonly serviceLifeYears?: number
  readonly source: SourceId
  readonly place: string
}

const fiveThirds = { numerator: 5, denominator: 3 } as const
const threeHalves = { numerator: 3, denominator: 2 } as const
const two = { numerator: 2, denominator: 1 } as const
const table1 = { source: 'cfr-49-180-209', place: 'paragraph (a), table 1' } as const
const welded = { material: 'steel', testRatio: two, mayCarryPlus: false, mayCarryStar: false, ...table1 } as const

/**
 * Types of the US rules (names as stamped, without the M of a Canadian mark).
 * Plus: the list of 173.302a(b) (STD-010). Star: 180.209(b).
 */
export const usSpecifications: Readonly<Record<UsSpecification, CylinderSpecification>> = {
  '3A': { material: 'steel', testRatio: fiveThirds, mayCarryPlus: true, mayCarryStar: true, ...table1 },
  '3AA': { material: 'steel', testRatio: fiveThirds, mayCarryPlus: true, mayCarryStar: true, ...table1 },
  '3AX': { material: 'steel', testRatio: fiveThirds, mayCarryPlus: true, mayCarryStar: false, ...table1 },
  '3AAX': { material: 'steel', testRatio: fiveThirds, mayCarryPlus: true, mayCarryStar: false, ...table1 },
  '3T': { material: 'steel', testRatio: fiveThirds, mayCarryPlus: true, mayCarryStar: false, ...table1 },
  '3AL': { material: 'aluminium', testRatio: fiveThirds, mayCarryPlus: false, mayCarryStar: false, ...table1 },
  '3HT': {
    material: 'steel',
    testRatio: fiveThirds,
    mayCarryPlus: false,
    mayCarryStar: false,
    serviceLifeYears: 24,
    source: 'cfr-49-173-302a',
    place: 'page 560 (service life); test ratio 180.209 table 1',
  },
  '3': {
    material: 'steel',
    fixedTestPressurePsi: 3000,
    mayCarryPlus: false,
    mayCarryStar: false,
    ...table1,
  },
  // 3E: no test required, so it has no ratio.
  '3E': {
    material: 'steel',
    mayCarryPlus: false,
    mayCarryStar: false,
    source: 'cfr-49-180-209',
    place: 'table 1: no test required',
  },
  '8': {
    material: 'steel',
    mayCarryPlus: false,
    mayCarryStar: false,
    source: 'cfr-49-173-301a',
    place: 'designated service pressure',
  },
  '8AL': { material: 'steel', mayCarryPlus: false, mayCarryStar: false, source: 'cfr-49-173-301', place: '(a)' },
  '39': { material: 'steel', mayCarryPlus: false, mayCarryStar: false, source: 'cfr-49-173-301', place: '(a)' },
  '3A480X': { material: 'steel', mayCarryPlus: false, mayCarryStar: false, source: 'cfr-49-173-301', place: '(a)' },
  '3B': welded,
  '3BN': welded,
  '4B': welded,
  '4BA': welded,
  '4BW': welded,
  '4B240ET': welded,
  '4AA480': welded,
  // 4L: no test required, so it has no ratio.
  '4L': {
    material: 'steel',
    mayCarryPlus: false,
    mayCarryStar: false,
    source: 'cfr-49-180-209',
    place: 'table 1: no test required',
  },
  '4D': welded,
  '4DA': welded,
  '4DS': welded,
  '4E': { ...welded, material: 'aluminium' },
}

/** A type of the US rules. */
export type UsSpecification =
  | '3A'
  | '3AA'
  | '3AX'
  | '3AAX'
  | '3T'
  | '3AL'
  | '3HT'
  | '3'
  | '3E'
  | '8'
  | '8AL'
  | '39'
  | '3A480X'
  | '3B'
  | '3BN'
  | '4B'
  | '4BA'
  | '4BW'
  | '4B240ET'
  | '4AA480'
  | '4L'
  | '4D'
  | '4DA'
  | '4DS'
  | '4E'

const steelStandard = { material: 'steel', testRatio: threeHalves, mayCarryPlus: false, mayCarryStar: false } as const
const aluminiumStandard = {
  material: 'aluminium',
  testRatio: threeHalves,
  mayCarryPlus: false,
  mayCarryStar: false,
} as const
const compositeStandard = {
  material: 'composite',
  testRatio: threeHalves,
  mayCarryPlus: false,
  mayCarryStar: false,
} as const

/** Design standards as they are stamped. The working pressure is at most two thirds of the test pressure (173.302b). */
export const designStandards: Readonly<Record<DesignStandard, CylinderSpecification>> = {
  'ISO 9809-1': { ...steelStandard, source: 'iso-9809-1', place: 'scope' },
  'ISO 9809-2': {
    ...steelStandard,
    isHighStrength: true,
    source: 'memory',
    place: 'tensile strength 1100 MPa and over',
  },
  'ISO 9809-3': { ...steelStandard, source: 'iso-9809-3', place: 'scope' },
  'ISO 7866': { ...aluminiumStandard, source: 'iso-7866', place: 'scope' },
  'ISO 11119-1': { ...compositeStandard, source: 'memory', place: 'title' },
  'ISO 11119-2': { ...compositeStandard, source: 'memory', place: 'title' },
  'ISO 11119-3': { ...compositeStandard, source: 'memory', place: 'title' },
  'EN 1964-1': { ...steelStandard, source: 'memory', place: 'title' },
  'EN 1964-2': { ...steelStandard, isHighStrength: true, source: 'memory', place: 'title' },
  'EN 1975': { ...aluminiumStandard, source: 'memory', place: 'title' },
  'EN 12245': { ...compositeStandard, source: 'memory', place: 'title' },
  'EN 12257': { ...compositeStandard, source: 'memory', place: 'title' },
  'EN 1964-3': { ...steelStandard, source: 'memory', place: 'title: seamless, of stainless steel' },
  'ISO 9809-4': { ...steelStandard, source: 'memory', place: 'title: seamless, of stainless steel' },
  'ISO 11119-4': { ...compositeStandard, source: 'memory', place: 'title' },
  'BS 5045-1': { ...steelStandard, source: 'memory', place: 'title' },
  'BS 5045-3': { ...aluminiumStandard, source: 'memory', place: 'title' },
}

/** A design standard as it is stamped. */
export type DesignStandard =
  | 'ISO 9809-1'
  | 'ISO 9809-2'
  | 'ISO 9809-3'
  | 'ISO 7866'
  | 'ISO 11119-1'
  | 'ISO 11119-2'
  | 'ISO 11119-3'
  | 'EN 1964-1'
  | 'EN 1964-2'
  | 'EN 1975'
  | 'EN 12245'
  | 'EN 12257'
  | 'EN 1964-3'
  | 'ISO 9809-4'
  | 'ISO 11119-4'
  | 'BS 5045-1'
  | 'BS 5045-3'

/** What a stamp can name: a US type, a special permit (`SP`, formerly exemption `E`; Canadian `SU`), or a design standard. */
export type SpecificationName = UsSpecification | DesignStandard | 'special permit'

/**
 * The row of a specification.
 *
 * @param name - as read from a stamp
 * @returns material, test ratio, what marks it may carry; nothing for a special permit, whose own text decides
 */
export function specificationOf(name: SpecificationName): CylinderSpecification | undefined {
  if (name === 'special permit') return undefined
  return name in usSpecifications ? usSpecifications[name as UsSpecification] : designStandards[name as DesignStandard]
}
