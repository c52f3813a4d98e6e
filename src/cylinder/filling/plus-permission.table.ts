import type { SourceId } from '../../references/index.ts'

interface PlusConditionRow {
  readonly text: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
  readonly evidence: 'primary'
}

const read = {
  source: 'cfr-49-173-302a-2015',
  place: 'paragraph (b)',
  edition: 'annual edition 2015',
  evidence: 'primary',
} as const

/** The conditions of the ten per cent permission. All of them must hold together. */
export const plusConditions = {
  specification: { text: 'specification 3A, 3AX, 3AA, 3AAX or 3T; not 3AL, not a special permit', ...read },
  gas: {
    text: 'the gas is not liquefied, dissolved, flammable (2.1) or poisonous (2.3); oxygen and nitrox are not excluded',
    ...read,
  },
  reliefDevice: {
    text: 'frangible-disc relief device without fusible backing, rated to burst at or below the minimum test pressure',
    ...read,
  },
  elasticExpansion: { text: 'elastic expansion measured by water jacket at the last test', ...read },
  wallStress: { text: 'average or maximum wall stress within the limit of the steel', ...read },
  visualExamination: {
    text: 'no excessive corrosion, pitting or dangerous defect, inside and out, at the test',
    ...read,
  },
  plusSign: { text: 'a plus sign follows the date of the last test', ...read },
} as const satisfies Record<string, PlusConditionRow>

/** The id of a condition. */
export type PlusCondition = keyof typeof plusConditions

/**
 * The conditions that a current plus sign shows by itself: the rule says that the sign is the proof of them. It shows neither
 * the gas nor the relief device, which stay to be checked at every fill.
 */
export const shownByPlusSign = {
  conditions: ['elasticExpansion', 'wallStress', 'visualExamination'],
  source: 'cfr-49-173-302a-2015',
  place: 'paragraph (b)(5)',
} as const satisfies {
  readonly conditions: readonly PlusCondition[]
  readonly source: SourceId
  readonly place: string
}

/** Wall-stress limits of the plus mark by steel, as printed, psi. Either the average or the maximum must be kept. */
export interface PlusWallStress {
  readonly steel: string
  /** psi */
  readonly average: number
  /** psi */
  readonly maximum: number
  readonly source: SourceId
  readonly place: string
}

const stresses = { source: 'cfr-49-173-302a-2015', place: 'paragraph (b)(3), table' } as const

/** Wall-stress limits of the plus mark. */
export const plusWallStresses: readonly PlusWallStress[] = [
  { steel: 'plain carbon above 0.35 %, and medium manganese', average: 53_000, maximum: 58_000, ...stresses },
  { steel: 'as specified for 3AA', average: 67_000, maximum: 73_000, ...stresses },
  { steel: 'as specified for 3T', average: 87_000, maximum: 94_000, ...stresses },
  { steel: 'plain carbon below 0.35 %, made before 1920', average: 45_000, maximum: 48_000, ...stresses },
]
