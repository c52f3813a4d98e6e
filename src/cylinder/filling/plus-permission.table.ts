import type { SourceId } from '../../references/index.ts'

interface PlusConditionRow {
  readonly text: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
  readonly evidence: 'primary' | 'secondary' | 'memory'
}

const seen = {
  source: 'cfr-49-173-302',
  place: 'paragraph (c), now 173.302a(b)',
  edition: 'before 2002 and 2003',
  evidence: 'secondary',
} as const

/** The conditions of the ten per cent permission. All of them must hold together. */
export const plusConditions = {
  specification: { text: 'specification 3A, 3AX, 3AA, 3AAX or 3T; not 3AL, not a special permit', ...seen },
  gas: { text: 'the gas is not liquefied, dissolved, poisonous or flammable', ...seen },
  reliefDevice: {
    text: 'frangible-disc relief device without fusible backing, rated to burst at or below the minimum test pressure',
    ...seen,
  },
  elasticExpansion: { text: 'elastic expansion found by water jacket at the last test', ...seen },
  wallStress: { text: 'average or maximum wall stress within the limit of the steel', ...seen },
  visualExamination: {
    text: 'no excessive corrosion, pitting or dangerous defect, inside and out, at the test',
    ...seen,
  },
  plusSign: { text: 'a plus sign follows the date of the last test', ...seen },
} as const satisfies Record<string, PlusConditionRow>

/** The id of a condition. */
export type PlusCondition = keyof typeof plusConditions

/** Wall-stress limits of the plus mark by steel, as printed, psi. Either the average or the maximum must be kept. */
export interface PlusWallStress {
  readonly steel: string
  /** psi */
  readonly average: number
  /** psi */
  readonly maximum: number
  readonly source: SourceId
  readonly evidence: 'secondary' | 'memory'
}

/** Wall-stress limits of the plus mark. Only the first row was seen printed. */
export const plusWallStresses: readonly PlusWallStress[] = [
  { steel: 'as specified for 3AA', average: 67_000, maximum: 73_000, source: 'cfr-49-173-302', evidence: 'secondary' },
  {
    steel: 'medium manganese, or carbon above 0.35 %',
    average: 53_000,
    maximum: 58_000,
    source: 'memory',
    evidence: 'memory',
  },
  { steel: 'as specified for 3T', average: 87_000, maximum: 94_000, source: 'memory', evidence: 'memory' },
  { steel: 'low carbon, made before 1920', average: 45_000, maximum: 48_000, source: 'memory', evidence: 'memory' },
]
