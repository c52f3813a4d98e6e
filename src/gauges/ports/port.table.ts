import type { SourceId } from '../../references/sources.ts'

/** A unified inch thread by its designation. */
export interface UnifiedThread {
  readonly designation: string
  /** Nominal diameter, inches. */
  readonly diameterInch: number
  readonly perInch: number
}

/** Which pressure a port or hose carries: that of the cylinder, or that behind the first stage. */
export type PressureSide = 'high' | 'low'

/** A port of a first stage. */
export interface Port extends UnifiedThread {
  readonly side: PressureSide
  readonly use: string
  readonly source: SourceId
  readonly place: string
}

/** Ports of first stages, as the trade has them. */
export const ports = {
  'high-7/16': {
    designation: '7/16-20 UNF',
    diameterInch: 7 / 16,
    perInch: 20,
    side: 'high',
    use: 'pressure gauge or transmitter',
    source: 'common-practice',
    place: 'articles on regulators; number of threads by the designation',
  },
  'low-3/8': {
    designation: '3/8-24 UNF',
    diameterInch: 3 / 8,
    perInch: 24,
    side: 'low',
    use: 'second stage, inflator, dry suit',
    source: 'common-practice',
    place: 'articles on regulators, measured threads',
  },
  'low-1/2': {
    designation: '1/2-20 UNF',
    diameterInch: 1 / 2,
    perInch: 20,
    side: 'low',
    use: 'primary second stage on a few first stages',
    source: 'common-practice',
    place: 'articles on regulators; number of threads by the designation',
  },
  'high-3/8': {
    designation: '3/8-24 UNF',
    diameterInch: 3 / 8,
    perInch: 24,
    side: 'high',
    use: 'pressure gauge on old first stages',
    source: 'memory',
    place: 'old first stages',
  },
} as const satisfies Readonly<Record<string, Port>>

/** Id of a port. */
export type PortId = keyof typeof ports

/** A hose by what it carries and how it ends at the first stage. */
export interface RegulatorHose extends UnifiedThread {
  readonly side: PressureSide
  /** What is at its other end. */
  readonly farEnd: string
  /** Of a common hose, millimetres; a restriction in the end of a high-pressure hose is far narrower. */
  readonly boreMillimetre: readonly [number, number]
  readonly source: SourceId
  readonly place: string
}

/** Hoses, as the trade has them. Their bore is from memory; their rating is the maker’s, and stands on the hose. */
export const hoses = {
  'high-pressure': {
    designation: '7/16-20 UNF',
    diameterInch: 7 / 16,
    perInch: 20,
    side: 'high',
    farEnd: 'swivel of a pressure gauge',
    boreMillimetre: [2, 5],
    source: 'memory',
    place: 'trade; a restriction of some tenths of a millimetre sits in the end at the first stage',
  },
  'low-pressure': {
    designation: '3/8-24 UNF',
    diameterInch: 3 / 8,
    perInch: 24,
    side: 'low',
    farEnd: '9/16-18 UNF nut of a second stage, or a quick connector of an inflator',
    boreMillimetre: [5, 8],
    source: 'memory',
    place: 'trade',
  },
  'low-pressure-1/2': {
    designation: '1/2-20 UNF',
    diameterInch: 1 / 2,
    perInch: 20,
    side: 'low',
    farEnd: '9/16-18 UNF nut of a second stage',
    boreMillimetre: [5, 8],
    source: 'memory',
    place: 'trade',
  },
} as const satisfies Readonly<Record<string, RegulatorHose>>

/** Id of a hose. */
export type HoseId = keyof typeof hoses
