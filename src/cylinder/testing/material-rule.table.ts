import type { SourceId } from '../../references/sources.ts'
import type { SpecificationName } from '../marking/index.ts'

/** One figure of a specification about metal, wall or size, as printed. */
export interface MaterialRule {
  readonly id: string
  readonly specifications: readonly SpecificationName[]
  readonly text: string
  readonly atLeast?: number
  readonly atMost?: number
  readonly unit: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

const threeAL = {
  specifications: ['3AL'],
  source: 'cfr-49-178-46',
  place: 'tables and scope',
  edition: '2005',
} as const
const threeAA = {
  specifications: ['3AA'],
  source: 'cfr-49-178-37',
  place: 'table of steels, 4130X',
  edition: '2003',
} as const
const recalled = { source: 'memory', edition: 'current' } as const

/** Stress caps, strengths, compositions and sizes of the specifications. */
export const materialRules: readonly MaterialRule[] = [
  { id: '3AL-ultimate', text: 'ultimate strength of 6061-T6', atLeast: 38_000, unit: 'psi', ...threeAL },
  { id: '3AL-yield', text: 'yield strength of 6061-T6', atLeast: 35_000, unit: 'psi', ...threeAL },
  {
    id: '3AL-elongation',
    text: 'elongation of 6061-T6 (10 % allowed for thin walls)',
    atLeast: 14,
    unit: '%',
    ...threeAL,
  },
  { id: '3AL-capacity', text: 'water capacity', atMost: 1000, unit: 'lb', ...threeAL },
  { id: '3AL-pressure', text: 'service pressure', atLeast: 150, unit: 'psi', ...threeAL },
  {
    id: '3A-capacity',
    specifications: ['3A', '3AA'],
    text: 'water capacity',
    atMost: 1000,
    unit: 'lb',
    source: 'cfr-49-178-36',
    place: 'scope',
    edition: '2007',
  },
  {
    id: '3A-pressure',
    specifications: ['3A', '3AA'],
    text: 'service pressure',
    atLeast: 150,
    unit: 'psi',
    source: 'cfr-49-178-36',
    place: 'scope',
    edition: '2007',
  },
  { id: '4130X-carbon', text: 'carbon in steel 4130X', atLeast: 0.25, atMost: 0.35, unit: '%', ...threeAA },
  { id: '4130X-manganese', text: 'manganese in steel 4130X', atLeast: 0.4, atMost: 0.9, unit: '%', ...threeAA },
  { id: '4130X-chromium', text: 'chromium in steel 4130X', atLeast: 0.8, atMost: 1.1, unit: '%', ...threeAA },
  { id: '4130X-molybdenum', text: 'molybdenum in steel 4130X', atLeast: 0.15, atMost: 0.25, unit: '%', ...threeAA },
  {
    id: '3AAX-combined-stress',
    specifications: ['3AAX'],
    text: 'twice the bending stress and the longitudinal stress together, of yield',
    atMost: 80,
    unit: '%',
    source: 'cfr-49-178-37',
    place: 'paragraph (a)(2)',
    edition: '2003',
  },
  {
    id: '3AA-stress',
    specifications: ['3AA'],
    text: 'wall stress at test pressure, service pressure 900 psi and over',
    atMost: 70_000,
    unit: 'psi',
    place: '49 CFR 178.37(f)',
    ...recalled,
  },
  {
    id: '3AA-stress-of-tensile',
    specifications: ['3AA'],
    text: 'wall stress at test pressure, of tensile strength',
    atMost: 67,
    unit: '%',
    place: '49 CFR 178.37(f)',
    ...recalled,
  },
  {
    id: '3AA-low-pressure-stress',
    specifications: ['3AA'],
    text: 'wall stress at test pressure, service pressure below 900 psi',
    atMost: 24_000,
    unit: 'psi',
    place: '49 CFR 178.37(f)',
    ...recalled,
  },
  {
    id: '3AA-wall',
    specifications: ['3AA'],
    text: 'wall, above 5 in diameter',
    atLeast: 0.1,
    unit: 'in',
    place: '49 CFR 178.37(f)',
    ...recalled,
  },
  {
    id: '3AL-stress-of-yield',
    specifications: ['3AL'],
    text: 'wall stress at test pressure, of minimum yield',
    atMost: 80,
    unit: '%',
    place: '49 CFR 178.46(f)',
    ...recalled,
  },
  {
    id: '3AL-stress-of-ultimate',
    specifications: ['3AL'],
    text: 'wall stress at test pressure, of minimum ultimate strength',
    atMost: 67,
    unit: '%',
    place: '49 CFR 178.46(f)',
    ...recalled,
  },
  {
    id: '3AL-wall',
    specifications: ['3AL'],
    text: 'wall, above 5 in diameter',
    atLeast: 0.125,
    unit: 'in',
    place: '49 CFR 178.46(f)',
    ...recalled,
  },
  {
    id: 'iso-7866-capacity',
    specifications: ['ISO 7866'],
    text: 'water capacity, aluminium alloy',
    atMost: 150,
    unit: 'L',
    source: 'iso-7866',
    place: 'scope',
    edition: '2012',
  },
  {
    id: 'iso-7866-temperature',
    specifications: ['ISO 7866'],
    text: 'temperature of use, normally',
    atMost: 65,
    unit: 'degC',
    source: 'iso-7866',
    place: 'scope',
    edition: '2012',
  },
  {
    id: 'iso-9809-3-capacity',
    specifications: ['ISO 9809-3'],
    text: 'water capacity, normalized steel',
    atLeast: 0.5,
    atMost: 150,
    unit: 'L',
    source: 'iso-9809-3',
    place: 'scope',
    edition: '2010',
  },
  {
    id: 'iso-9809-1-capacity',
    specifications: ['ISO 9809-1'],
    text: 'water capacity, quenched and tempered steel',
    atMost: 450,
    unit: 'L',
    source: 'iso-9809-1',
    place: 'scope',
    edition: '2019',
  },
  {
    id: 'iso-9809-1-tensile',
    specifications: ['ISO 9809-1'],
    text: 'tensile strength, below',
    atMost: 1100,
    unit: 'MPa',
    source: 'iso-9809-1',
    place: 'scope',
    edition: '2019',
  },
]
