import type { SourceId } from '../../references/sources.ts'

/** What to do about something found on a cylinder. No row says that it may stay in use. */
export interface InspectionFindingRow {
  readonly observation: string
  readonly suggests: string
  /** `withdraw`: out of use, marked, and to an inspector. `inspector`: to an inspector before the next fill. */
  readonly action: 'withdraw' | 'inspector'
  readonly source: SourceId
  readonly place: string
}

const practice = { source: 'common-practice', place: 'none' } as const

/** Findings that a user can make, without any limit that only an inspector may apply. */
export const inspectionFindings = {
  'fog-at-valve': {
    observation: 'white fog when the valve is opened slowly',
    suggests: 'water inside: the gas leaves saturated',
    action: 'withdraw',
    ...practice,
  },
  'liquid-moving': {
    observation: 'something moves or rings dull when the cylinder is turned',
    suggests: 'water, oil or loose rust inside',
    action: 'withdraw',
    ...practice,
  },
  smell: {
    observation: 'the gas smells: damp, metallic, oily, foul',
    suggests: 'corrosion, oil or growth; an odourless gas may still lack oxygen or carry carbon monoxide',
    action: 'withdraw',
    ...practice,
  },
  'red-brown-inside': {
    observation: 'red or brown colour inside a steel cylinder, or on the filter of a regulator',
    suggests: 'rust: water and oxygen have worked; oxygen may be missing',
    action: 'withdraw',
    ...practice,
  },
  'black-inside': {
    observation: 'black, adhering layer inside a steel cylinder',
    suggests: 'magnetite, or burnt or carbonised oil; only an inspector tells them apart',
    action: 'inspector',
    ...practice,
  },
  'white-inside': {
    observation: 'white or grey powder inside an aluminium cylinder or on its filter',
    suggests: 'aluminium hydroxide: water inside',
    action: 'withdraw',
    ...practice,
  },
  'green-at-valve': {
    observation: 'green or blue-green deposit at valve or regulator inlet',
    suggests: 'corrosion of brass: salt water has come in',
    action: 'inspector',
    ...practice,
  },
  'pitting-outside': {
    observation: 'pits, blisters of paint, or a line of corrosion under a boot or band',
    suggests: 'loss of wall where water is kept',
    action: 'inspector',
    ...practice,
  },
  'dent-or-gouge': {
    observation: 'dent, gouge, bulge, bow or arc burn',
    suggests: 'a weakened or overstressed wall',
    action: 'withdraw',
    ...practice,
  },
  'heat-or-fire': {
    observation: 'scorched or blistered paint, molten parts, signs of fire or of a paint oven',
    suggests: 'overheating: the metal may have lost its strength',
    action: 'withdraw',
    source: 'cfr-49-180-203',
    place: 'definition of overheated',
  },
  'crack-at-neck': {
    observation: 'a line across threads or neck, or a leak past the valve thread',
    suggests: 'a crack; in 6351-T6 aluminium a sustained load crack',
    action: 'withdraw',
    source: 'cfr-49-180-appendix-c',
    place: 'visual and eddy-current examination',
  },
  'altered-stamp': {
    observation: 'marks filed, overstamped, illegible or contradicting each other',
    suggests: 'a cylinder whose history cannot be known',
    action: 'withdraw',
    source: 'cfr-49-180-213',
    place: 'paragraphs (a) and (b)',
  },
  'empty-and-open': {
    observation: 'no pressure left, or the valve was open',
    suggests: 'moist air or water may have come in',
    action: 'inspector',
    ...practice,
  },
  tumbled: {
    observation: 'the inside was tumbled to remove rust',
    suggests: 'metal is gone: the wall has to be measured and the cylinder dried before it is judged again',
    action: 'inspector',
    ...practice,
  },
} as const satisfies Record<string, InspectionFindingRow>

/** The id of a finding. */
export type InspectionFindingId = keyof typeof inspectionFindings

/** A limit of wear that an inspector applies, as remembered from the standard. */
export interface WearLimit {
  readonly text: string
  /** Depth over what it is compared with, per cent. */
  readonly percent: number
  readonly of: 'original wall' | 'outside diameter'
  readonly source: SourceId
  readonly place: string
}

/** Reject limits of steel cylinders. None was seen printed; limits of US pamphlets are left out until they are read. */
export const wearLimits = {
  'general-corrosion': {
    text: 'general corrosion deeper than',
    percent: 10,
    of: 'original wall',
    source: 'memory',
    place: 'ISO 18119 and ISO 6406, annex',
  },
  'local-corrosion': {
    text: 'local corrosion deeper than',
    percent: 20,
    of: 'original wall',
    source: 'memory',
    place: 'ISO 18119 and ISO 6406, annex',
  },
  dent: {
    text: 'dent deeper than',
    percent: 3,
    of: 'outside diameter',
    source: 'memory',
    place: 'ISO 18119 and ISO 6406, annex',
  },
} as const satisfies Record<string, WearLimit>

/** The id of a wear limit. */
export type WearLimitId = keyof typeof wearLimits
