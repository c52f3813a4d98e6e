import type { SourceId } from '../../references/sources.ts'

/** What to do about a finding on a cylinder. No row says that it may stay in use. */
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
    observation: 'something moves inside or sounds dull when the cylinder is turned',
    suggests: 'water, oil or loose rust inside',
    action: 'withdraw',
    ...practice,
  },
  smell: {
    observation: 'the gas smells: damp, metallic, oily, foul',
    suggests: 'corrosion, oil or microbial growth; an odourless gas may still lack oxygen or contain carbon monoxide',
    action: 'withdraw',
    ...practice,
  },
  'red-brown-inside': {
    observation: 'red or brown colour inside a steel cylinder, or on the filter of a regulator',
    suggests: 'rust: water and oxygen have reacted with the steel; the gas may be short of oxygen',
    action: 'withdraw',
    ...practice,
  },
  'black-inside': {
    observation: 'firmly adhering black layer inside a steel cylinder',
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
    suggests: 'corroding brass: salt water has got in',
    action: 'inspector',
    ...practice,
  },
  'pitting-outside': {
    observation: 'pitting, blistered paint, or a line of corrosion under a boot or band',
    suggests: 'wall loss where water is trapped',
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
    suggests: 'a crack; in alloy 6351-T6 a sustained load crack',
    action: 'withdraw',
    source: 'cfr-49-180-appendix-c',
    place: 'visual and eddy-current examination',
  },
  'altered-stamp': {
    observation: 'marks filed, overstamped, illegible or contradicting each other',
    suggests: 'a cylinder of unknown history',
    action: 'withdraw',
    source: 'cfr-49-180-213',
    place: 'paragraphs (a) and (b)',
  },
  'empty-and-open': {
    observation: 'no pressure left, or the valve was open',
    suggests: 'moist air or water may have got in',
    action: 'inspector',
    ...practice,
  },
  tumbled: {
    observation: 'the cylinder was tumbled to remove rust',
    suggests: 'metal has been lost: the wall must be measured and the cylinder dried before it is judged again',
    action: 'inspector',
    ...practice,
  },
} as const satisfies Record<string, InspectionFindingRow>

/** The id of a finding. */
export type InspectionFindingId = keyof typeof inspectionFindings

/** A limit of wear that an inspector applies. */
export interface WearLimit {
  readonly text: string
  readonly material: 'steel' | 'aluminium'
  /** The greatest depth: a share, per cent, of what it is compared with, or a figure in millimetres. */
  readonly atMost: { readonly value: number; readonly unit: 'percent' | 'millimetre' }
  readonly of: 'original wall' | 'outside diameter' | 'nothing'
  readonly source: SourceId
  readonly place: string
  /** None was read printed: each row stands until it is, and no result rests on it alone. */
  readonly evidence: 'memory' | 'secondary'
}

const iso = {
  material: 'steel',
  source: 'memory',
  place: 'ISO 18119 and ISO 6406, annex',
  evidence: 'memory',
} as const
const guide = {
  material: 'aluminium',
  of: 'nothing',
  source: 'common-practice',
  place: 'guide of a maker for its own cylinders, as quoted by others; not the pamphlet C-6.1',
  evidence: 'secondary',
} as const

/** Reject limits of metal cylinders. None was seen printed, none is known for composites; an inspector applies the rule itself. */
export const wearLimits = {
  'general-corrosion': {
    text: 'general corrosion deeper than',
    atMost: { value: 10, unit: 'percent' },
    of: 'original wall',
    ...iso,
  },
  'local-corrosion': {
    text: 'local corrosion deeper than',
    atMost: { value: 20, unit: 'percent' },
    of: 'original wall',
    ...iso,
  },
  dent: { text: 'dent deeper than', atMost: { value: 3, unit: 'percent' }, of: 'outside diameter', ...iso },
  'aluminium-pit': { text: 'pit deeper than', atMost: { value: 1.53, unit: 'millimetre' }, ...guide },
  'aluminium-line-corrosion': {
    text: 'line or broad corrosion deeper than',
    atMost: { value: 0.76, unit: 'millimetre' },
    ...guide,
  },
} as const satisfies Record<string, WearLimit>

/** The id of a wear limit. */
export type WearLimitId = keyof typeof wearLimits
