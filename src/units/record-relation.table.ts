import type { SlipRole } from './slip-role.table.ts'

/** What a person or a file states together: numbers in SI by what they stand for. */
export type StatedRecord = { readonly [Name in SlipRole]?: number | undefined }

/** What holds between numbers of one record, wherever it was made. */
export interface RecordRelation {
  readonly id: string
  /** What is not so, when it fails. */
  readonly text: string
  readonly of: readonly SlipRole[]
  /** Of the numbers in the order of `of`. */
  readonly figure: (numbers: readonly number[], record: StatedRecord) => number
  readonly from: number
  readonly to: number
}

const atmosphere = 101_325
const heaviness = 1020 * 9.80665 // of water between fresh and salt, Pa/m

/** Of the standard atmosphere, up to 11 km. */
export function standardAtmosphereAt(altitude: number): number {
  return atmosphere * (1 - 2.25577e-5 * altitude) ** 5.25588
}

/** The pressure around a diver, as well as the record has it. */
function around(depth: number, { 'surface pressure': surface = atmosphere }: StatedRecord): number {
  return surface + heaviness * depth
}

function number(numbers: readonly number[], index: number): number {
  return numbers[index] as number
}

/**
 * Ours, wide on purpose, so that an unusual but real record passes: common practice, except where a law of physics is named.
 * A function, so that a bundle without slips does not carry the table.
 */
export const recordRelations = (): readonly RecordRelation[] => [
  {
    id: 'capacity-of-volume',
    text: 'the rated capacity is not what the volume holds at the service pressure', // Boyle, and 15 % for real gas and overfill
    of: ['rated capacity', 'internal volume', 'service pressure'],
    figure: (n) => (number(n, 0) * atmosphere) / (number(n, 1) * (number(n, 2) + atmosphere)),
    from: 0.76,
    to: 1.18,
  },
  {
    id: 'capacity-over-volume',
    text: 'the rated capacity is not a hundred to three hundred and sixty times the volume',
    of: ['rated capacity', 'internal volume'],
    figure: (n) => number(n, 0) / number(n, 1),
    from: 90,
    to: 360,
  },
  {
    id: 'test-over-service',
    text: 'the test pressure is not one and a quarter to two times the service pressure',
    of: ['test pressure', 'service pressure'],
    figure: (n) => number(n, 0) / number(n, 1),
    from: 1.2,
    to: 2.1,
  },
  ...(['cylinder gauge pressure', 'starting gauge pressure'] as const).map((role) => ({
    id: 'gauge-over-service',
    text: 'the pressure is far above the service pressure',
    of: [role, 'service pressure'] as const,
    figure: (n: readonly number[]) => number(n, 0) / number(n, 1),
    from: 0,
    to: 1.35,
  })),
  {
    id: 'start-over-service',
    text: 'a dive does not begin on so little of the service pressure',
    of: ['starting gauge pressure', 'service pressure'],
    figure: (n) => number(n, 0) / number(n, 1),
    from: 0.12,
    to: 1.35,
  },
  {
    id: 'start-over-end',
    text: 'the cylinder holds more at the end than at the start',
    of: ['starting gauge pressure', 'ending gauge pressure'],
    figure: (n) => number(n, 0) - number(n, 1),
    from: -5e5,
    to: 4e7,
  },
  {
    id: 'end-of-dive',
    text: 'next to nothing or next to everything is left',
    of: ['ending gauge pressure', 'starting gauge pressure'],
    figure: (n) => number(n, 0) / number(n, 1),
    from: 0.012,
    to: 1.05,
  },
  {
    id: 'absolute-over-gauge',
    text: 'absolute and gauge pressure of one cylinder are not an atmosphere apart',
    of: ['cylinder absolute pressure', 'cylinder gauge pressure'],
    figure: (n, { 'surface pressure': surface = 0.85 * atmosphere }) => number(n, 0) - number(n, 1) - surface,
    from: -0.4e5,
    to: 0.9e5, // gauges are read to a bar
  },
  {
    id: 'oxygen-at-depth',
    text: 'the partial pressure of oxygen at the depth is nothing that is breathed',
    of: ['oxygen fraction', 'depth'],
    figure: (n, record) => number(n, 0) * around(number(n, 1), record),
    from: 0.14e5,
    to: 1.7e5,
  },
  {
    id: 'oxygen-and-helium',
    text: 'oxygen and helium are more than the whole',
    of: ['oxygen fraction', 'helium fraction'],
    figure: (n) => number(n, 0) + number(n, 1),
    from: 0,
    to: 1.0001,
  },
  {
    id: 'mean-below-depth',
    text: 'the mean depth lies below the greatest',
    of: ['mean depth', 'depth'],
    figure: (n) => number(n, 0) / number(n, 1),
    from: 0.22,
    to: 1.0001,
  },
  {
    id: 'rate-at-mean-depth',
    text: 'nobody breathes so much or so little',
    of: ['starting gauge pressure', 'ending gauge pressure', 'internal volume', 'duration', 'mean depth'],
    figure: (n, record) =>
      ((number(n, 0) - number(n, 1)) * number(n, 2)) / (number(n, 3) * around(number(n, 4), record)),
    from: 7 / 6e4,
    to: 60 / 6e4,
  },
  {
    id: 'rate-at-depth',
    text: 'nobody breathes so much or so little, whatever the profile',
    of: ['starting gauge pressure', 'ending gauge pressure', 'internal volume', 'duration', 'depth'],
    figure: (n, record) =>
      ((number(n, 0) - number(n, 1)) * number(n, 2)) / (number(n, 3) * around(number(n, 4), record)),
    from: 4.5 / 6e4,
    to: 55 / 6e4,
  },
  {
    id: 'ambient-at-depth',
    text: 'the ambient pressure is not that of the depth',
    of: ['ambient pressure', 'depth'],
    // what water of any salinity and a surface of any usual height leave open
    figure: (n, record) =>
      (number(n, 0) - around(number(n, 1), record)) /
      (0.035 * heaviness * number(n, 1) + (record['surface pressure'] === undefined ? 0.3e5 : 0.06e5)),
    from: -1,
    to: 1,
  },
  {
    id: 'surface-at-altitude',
    text: 'the air is not so heavy at that altitude',
    of: ['surface pressure', 'altitude'],
    figure: (n) => number(n, 0) / standardAtmosphereAt(number(n, 1)),
    from: 0.955,
    to: 1.045,
  },
  {
    id: 'gas-in-water',
    text: 'a cylinder in water takes its temperature',
    of: ['gas temperature', 'water temperature'],
    figure: (n) => number(n, 0) - number(n, 1),
    from: -20,
    to: 25,
  },
  {
    id: 'gas-in-air',
    text: 'gas is not so much warmer or colder than the air around it',
    of: ['gas temperature', 'air temperature'],
    figure: (n) => number(n, 0) - number(n, 1),
    from: -20,
    to: 32,
  },
  {
    id: 'water-in-air',
    text: 'water is not so much warmer or colder than the air over it',
    of: ['water temperature', 'air temperature'],
    figure: (n) => number(n, 0) - number(n, 1),
    from: -28,
    to: 28,
  },
]
