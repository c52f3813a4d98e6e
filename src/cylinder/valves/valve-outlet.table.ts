import type { SourceId } from '../../references/sources.ts'

/** An outlet of a cylinder valve, with the pressures and gases that its standard gives it. Figures as printed. */
export interface ValveOutlet {
  readonly name: string
  readonly form: 'yoke' | 'threaded'
  readonly thread?: string
  readonly gas: 'air' | 'nitrox or oxygen' | 'oxygen' | 'inert' | 'oxygen and nitrogen'
  readonly isForDiving: boolean
  /** Working or service pressure, gauge. */
  readonly atMost: { readonly value: number; readonly unit: 'bar' | 'psi' }
  readonly above?: { readonly value: number; readonly unit: 'bar' | 'psi' }
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

const iso = { source: 'iso-12209', place: 'scope', edition: '2013 with amendment 1' } as const
const en = { source: 'en-144-2', place: 'scope and clause 4.2', edition: '2018', isForDiving: false } as const
const us = { source: 'memory', edition: 'current' } as const

/** Outlets by standard. The two yoke rows are one shape under two rules: the lower figure of the place of use holds. */
export const valveOutlets = {
  'yoke-iso': {
    name: 'yoke, ISO',
    form: 'yoke',
    gas: 'air',
    isForDiving: true,
    atMost: { value: 232, unit: 'bar' },
    ...iso,
  },
  'threaded-232': {
    name: 'threaded, 232 bar',
    form: 'threaded',
    thread: 'G 5/8, five turns',
    gas: 'air',
    isForDiving: true,
    atMost: { value: 232, unit: 'bar' },
    ...iso,
  },
  'threaded-300': {
    name: 'threaded, 300 bar',
    form: 'threaded',
    thread: 'G 5/8, seven turns',
    gas: 'air',
    isForDiving: true,
    atMost: { value: 300, unit: 'bar' },
    ...iso,
  },
  'threaded-500': {
    name: 'threaded, 500 bar',
    form: 'threaded',
    gas: 'air',
    isForDiving: true,
    atMost: { value: 500, unit: 'bar' },
    source: 'iso-12209',
    place: 'scope as amended; the scope of 2013 ends at 300 bar',
    edition: '2013 with amendment 1',
  },
  'threaded-nitrox': {
    name: 'threaded, nitrox and oxygen',
    form: 'threaded',
    thread: 'M26x2',
    gas: 'nitrox or oxygen',
    isForDiving: true,
    atMost: { value: 300, unit: 'bar' },
    source: 'en-144-3',
    place: 'above 22 % oxygen; thread as told in an article, pressure from memory',
    edition: '2003',
  },
  'en-a1': { name: 'EN 144-2 A1', form: 'threaded', gas: 'air', atMost: { value: 232, unit: 'bar' }, ...en },
  'en-a2': {
    name: 'EN 144-2 A2',
    form: 'threaded',
    gas: 'air',
    above: { value: 232, unit: 'bar' },
    atMost: { value: 300, unit: 'bar' },
    ...en,
  },
  'en-a3': {
    name: 'EN 144-2 A3',
    form: 'threaded',
    gas: 'air',
    above: { value: 300, unit: 'bar' },
    atMost: { value: 400, unit: 'bar' },
    ...en,
  },
  'cga-850': {
    name: 'CGA 850 yoke, US practice',
    form: 'yoke',
    gas: 'air',
    isForDiving: true,
    atMost: { value: 3000, unit: 'psi' },
    source: 'cga-v-1',
    place: 'as told by a trade article',
    edition: 'edition not seen',
  },
  'cga-346': {
    name: 'CGA 346',
    form: 'threaded',
    gas: 'air',
    isForDiving: false,
    atMost: { value: 3000, unit: 'psi' },
    place: 'CGA V-1',
    ...us,
  },
  'cga-347': {
    name: 'CGA 347',
    form: 'threaded',
    gas: 'air',
    isForDiving: false,
    above: { value: 3000, unit: 'psi' },
    atMost: { value: 5500, unit: 'psi' },
    place: 'CGA V-1',
    ...us,
  },
  'cga-540': {
    name: 'CGA 540',
    form: 'threaded',
    gas: 'oxygen',
    isForDiving: false,
    atMost: { value: 3000, unit: 'psi' },
    place: 'CGA V-1',
    ...us,
  },
  'cga-577': {
    name: 'CGA 577',
    form: 'threaded',
    gas: 'oxygen',
    isForDiving: false,
    atMost: { value: 4000, unit: 'psi' },
    place: 'CGA V-1',
    ...us,
  },
  'cga-701': {
    name: 'CGA 701',
    form: 'threaded',
    gas: 'oxygen',
    isForDiving: false,
    above: { value: 4000, unit: 'psi' },
    atMost: { value: 5500, unit: 'psi' },
    place: 'CGA V-1',
    ...us,
  },
  'cga-580': {
    name: 'CGA 580',
    form: 'threaded',
    gas: 'inert',
    isForDiving: false,
    atMost: { value: 3000, unit: 'psi' },
    place: 'CGA V-1',
    ...us,
  },
} as const satisfies Record<string, ValveOutlet>

/** The id of an outlet. */
export type ValveOutletId = keyof typeof valveOutlets

/** The end fitting of a regulator or filling hose. */
export type ConnectorId = 'yoke' | 'threaded-232' | 'threaded-300' | 'threaded-nitrox'

/** Whether a connector goes on an outlet, and up to which pressure both hold. */
export interface ConnectionRow {
  readonly outlet: ValveOutletId
  readonly connector: ConnectorId
  readonly fits: boolean
  readonly text: string
  /** Pressure of the weaker of the two, bar, gauge. */
  readonly atMostBar?: number
  /** A part needed in between. */
  readonly needs?: 'yoke adaptor'
  readonly source: SourceId
}

/** Pairs of diving outlets and connectors. What is not listed does not fit and must not be made to. */
export const connections: readonly ConnectionRow[] = [
  {
    outlet: 'yoke-iso',
    connector: 'yoke',
    fits: true,
    text: 'clamps over the outlet',
    atMostBar: 232,
    source: 'iso-12209',
  },
  {
    outlet: 'threaded-232',
    connector: 'threaded-232',
    fits: true,
    text: 'screws in by hand to the stop',
    atMostBar: 232,
    source: 'iso-12209',
  },
  {
    outlet: 'threaded-232',
    connector: 'threaded-300',
    fits: true,
    text: 'the longer thread reaches the seal of the shorter outlet; the outlet limits the pressure',
    atMostBar: 232,
    source: 'common-practice',
  },
  {
    outlet: 'threaded-232',
    connector: 'yoke',
    fits: true,
    text: 'only with a yoke insert made for this outlet',
    atMostBar: 232,
    needs: 'yoke adaptor',
    source: 'iso-12209',
  },
  {
    outlet: 'threaded-300',
    connector: 'threaded-300',
    fits: true,
    text: 'screws in by hand to the stop',
    atMostBar: 300,
    source: 'iso-12209',
  },
  {
    outlet: 'threaded-300',
    connector: 'threaded-232',
    fits: false,
    text: 'five turns do not reach the seal of a seven-turn outlet: it leaks by design; never force it',
    source: 'common-practice',
  },
  {
    outlet: 'threaded-300',
    connector: 'yoke',
    fits: false,
    text: 'no adaptor exists, by design: a yoke is rated for 232 bar',
    source: 'iso-12209',
  },
  {
    outlet: 'threaded-nitrox',
    connector: 'threaded-nitrox',
    fits: true,
    text: 'screws in by hand to the stop',
    atMostBar: 300,
    source: 'en-144-3',
  },
  {
    outlet: 'threaded-nitrox',
    connector: 'threaded-300',
    fits: false,
    text: 'the nitrox thread is larger, to keep air equipment away from oxygen-rich gas',
    source: 'en-144-3',
  },
  {
    outlet: 'threaded-nitrox',
    connector: 'threaded-232',
    fits: false,
    text: 'the nitrox thread is larger, to keep air equipment away from oxygen-rich gas',
    source: 'en-144-3',
  },
]

/** A thread between valve and cylinder. Similar ones are dangerous: some pairs engage, then let go under pressure. */
export interface NeckThreadRow {
  readonly designation: string
  readonly form: 'parallel' | 'taper'
  readonly use: string
  readonly source: SourceId
  readonly place: string
}

/** Neck threads of the trade. A valve goes only into the thread that is stamped and has been checked with a gauge. */
export const neckThreads: readonly NeckThreadRow[] = [
  {
    designation: 'M25x2',
    form: 'parallel',
    use: 'common European neck',
    source: 'din-477',
    place: 'part 6, forms 1 and 2, as told in an article',
  },
  {
    designation: 'M25x2',
    form: 'parallel',
    use: 'EN 144-1: chamfer and O-ring groove differ from DIN 477-6',
    source: 'din-477',
    place: 'as told in an article',
  },
  { designation: 'M18x1.5', form: 'parallel', use: 'small cylinders', source: 'memory', place: 'ISO 15245' },
  { designation: 'M30x2', form: 'parallel', use: 'wide necks', source: 'memory', place: 'ISO 15245' },
  { designation: '17E', form: 'taper', use: 'small taper neck', source: 'memory', place: 'ISO 11363-1' },
  { designation: '25E', form: 'taper', use: 'taper neck', source: 'memory', place: 'ISO 11363-1' },
  {
    designation: '3/4-14 NPSM',
    form: 'parallel',
    use: 'US aluminium, 3000 psi',
    source: 'common-practice',
    place: 'none',
  },
  {
    designation: '7/8-14 UNF',
    form: 'parallel',
    use: 'US high-pressure steel',
    source: 'common-practice',
    place: 'none',
  },
  { designation: '1/2-14 NPT', form: 'taper', use: 'older US steel', source: 'common-practice', place: 'none' },
  { designation: '3/4-14 NGT', form: 'taper', use: 'US steel', source: 'common-practice', place: 'none' },
]

/** How a valve is arranged, and what its user can shut off. */
export interface ValveArrangement {
  readonly text: string
  readonly outlets: 1 | 2
  /** What stays usable when one regulator has to be shut off. */
  readonly leftAfterShutting: 'nothing' | 'the other outlet'
  readonly source: SourceId
}

/** Arrangements of the trade. Two outlets on one neck share its bore, its thread and its disc. */
export const valveArrangements = {
  single: { text: 'one outlet, one stem', outlets: 1, leftAfterShutting: 'nothing', source: 'common-practice' },
  reserve: {
    text: 'one outlet, one stem, and a spring-loaded seat that closes early until a lever is pulled',
    outlets: 1,
    leftAfterShutting: 'nothing',
    source: 'common-practice',
  },
  dual: {
    text: 'two outlets, each with its own stem, on one neck: either regulator can be shut off, but not the neck or the disc',
    outlets: 2,
    leftAfterShutting: 'the other outlet',
    source: 'common-practice',
  },
  manifold: {
    text: 'two cylinders joined, each outlet with its own stem, with or without a valve between the cylinders',
    outlets: 2,
    leftAfterShutting: 'the other outlet',
    source: 'common-practice',
  },
} as const satisfies Record<string, ValveArrangement>

/** A standard beside those of the outlets. */
export interface ValveStandard {
  readonly name: string
  readonly covers: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

/** Standards that the scope of the outlet standard refers to. */
export const valveStandards: readonly ValveStandard[] = [
  { name: 'ISO 10297', covers: 'design of the valve', ...iso },
  { name: 'ISO 11114-1', covers: 'metals compatible with the gas', ...iso },
  { name: 'ISO 11114-2', covers: 'other materials compatible with the gas', ...iso },
]
