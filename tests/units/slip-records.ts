import {
  bar,
  celsius,
  cubicFoot,
  fahrenheit,
  foot,
  kilopascal,
  litre,
  metre,
  minute,
  one,
  percent,
  psi,
  type SlipRole,
  type StatedRecord,
  type Unit,
} from '../../src/units/index.ts'

/** A record as somebody could have made it, with the density of the water where it is known. */
export interface DrawnRecord {
  readonly record: StatedRecord
  readonly waterDensity?: number
}

const atmosphere = 101_325
const gravity = 9.80665

const round = (value: number, unit: Unit, step: number): number => {
  const number = Math.round((value - (unit.offset ?? 0)) / unit.factor / step) * step
  return Number(number.toPrecision(10)) * unit.factor + (unit.offset ?? 0)
}

/** Records of registers, fills, dives, gauge tests and stations, in units and to places in which such records are kept. */
export function drawRecord(uniform: () => number): DrawnRecord {
  const between = (low: number, high: number): number => low + (high - low) * uniform()
  const of = <Item>(items: readonly Item[]): Item => items[Math.floor(uniform() * items.length)] as Item
  const celsiusTo = (low: number, high: number, step: number): number =>
    round(between(low, high) + 273.15, celsius, step)

  const american = uniform() < 0.4
  const service = american
    ? of([1800, 2015, 2250, 2400, 2475, 2640, 3000, 3180, 3300, 3442, 3500]) * psi.factor
    : of([150, 200, 207, 230, 232, 300]) * bar.factor
  const volume = of([2, 3, 5.7, 7, 8, 10, 11.1, 12, 12.2, 15, 18, 20, 24, 40, 50]) / 1000
  const pressureUnit = american ? psi : bar
  const pressureStep = american ? of([10, 50, 100]) : of([1, 5, 10])
  // the real gas holds less than Boyle says at 300 bar and a little more at 150
  const realGas = 1.02 - 0.13 * (service / 3e7) ** 2 + between(-0.015, 0.015)

  function register(): StatedRecord {
    const capacity = (volume * (service + atmosphere) * realGas * (american ? of([1, 1.1]) : 1)) / atmosphere
    return {
      'internal volume': volume,
      'service pressure': service,
      'test pressure': american ? round((5 / 3) * service, psi, 1) : round(1.5 * service, bar, of([1, 5])),
      'rated capacity': american ? round(capacity, cubicFoot, of([0.1, 1])) : round(capacity, litre, of([1, 10, 50])),
    }
  }

  function fill(): StatedRecord {
    const surface = round(between(0.72, 1.04) * 1e5, bar, of([0.001, 0.01]))
    const shown = round(service * of([between(0, 0.3), between(0.8, 1.08)]), pressureUnit, pressureStep)
    const air = celsiusTo(-5, 36, of([1, 0.5]))
    return {
      'internal volume': volume,
      'service pressure': service,
      'cylinder gauge pressure': shown,
      'cylinder absolute pressure': shown + surface,
      'surface pressure': surface,
      'air temperature': air,
      'gas temperature': round(air + of([between(-2, 2), between(5, 28)]), celsius, 1),
      'oxygen fraction': round(between(0.1, 1), percent, of([0.1, 1])),
    }
  }

  function dive(): DrawnRecord {
    for (;;) {
      const depth = round(Math.min(95, 6 + 12 * -Math.log(1 - uniform())), american ? foot : metre, of([1, 0.1]))
      const mean = round(depth * between(0.4, 0.75), american ? foot : metre, 0.1)
      const surface = of([1.013, 1.0, 1.02, between(0.75, 1.03)]) * 1e5
      const around = (d: number): number => surface + 1020 * gravity * d
      const helium = depth > 50 ? round(between(0.2, 0.6), percent, 1) : 0
      const oxygen = round(
        Math.min(of([0.209, 0.21, 0.32, 0.36, between(0.15, 0.4)]), 1 - helium),
        percent,
        of([0.1, 1]),
      )
      if (oxygen * around(depth) > 1.6e5 || oxygen * around(depth) < 0.16e5) continue
      const duration = round(between(12, 75) * 60, minute, 1)
      const rate = between(10, 30) / 6e4
      const used = (rate * duration * around(mean)) / volume
      const start = round(service * between(0.75, 1.03), pressureUnit, pressureStep)
      const end = round(start - used, pressureUnit, pressureStep)
      if (end < 0.05 * start || start - end < 15e5) continue
      const water = celsiusTo(2, 30, of([1, 0.1]))
      return {
        record: {
          'internal volume': volume,
          'service pressure': service,
          'starting gauge pressure': start,
          'ending gauge pressure': end,
          duration,
          depth,
          'mean depth': mean,
          'oxygen fraction': oxygen,
          ...(helium > 0 ? { 'helium fraction': helium } : {}),
          'water temperature': water,
          'air temperature': round(water + between(-8, 14), celsius, 1),
        },
      }
    }
  }

  function gaugeTest(): DrawnRecord {
    const waterDensity = of([1000, 1025, 1027, Math.round(between(998, 1029) * 10) / 10])
    const depth = round(between(3, 130), metre, of([0.01, 0.1, 0.1, 1, 10]))
    const surface = round(between(0.7, 1.04) * 1e5, kilopascal, of([0.01, 0.1]))
    // a depth to the metre is a nominal one; a finer one was measured, with its rounding
    const measured = depth + (Number.isInteger(depth) ? 0 : between(-0.005, 0.005))
    const ambient = round(surface + waterDensity * gravity * measured, kilopascal, of([0.01, 0.1]))
    return { record: { depth, 'ambient pressure': ambient, 'surface pressure': surface }, waterDensity }
  }

  function station(): StatedRecord {
    const altitude = round(between(0, 3500), american ? foot : metre, of([1, 10]))
    const standard = atmosphere * (1 - 2.25577e-5 * altitude) ** 5.25588
    return {
      altitude,
      'surface pressure': round(standard * between(0.965, 1.03), kilopascal, 0.1),
      'intermediate pressure': round(between(7.5, 11) * 1e5, american ? psi : bar, american ? 1 : 0.1),
      'water temperature': celsiusTo(0, 30, 1),
      'respiratory minute volume': Math.round(between(12, 62.5)) / 6e4,
    }
  }

  return of<() => DrawnRecord>([
    () => ({ record: register() }),
    () => ({ record: fill() }),
    dive,
    gaugeTest,
    () => ({ record: station() }),
  ])()
}

/** One slip put into a record: which number, and its name in the tables. */
export interface Slipped extends DrawnRecord {
  readonly role: SlipRole
  readonly id: string
}

const stated = (value: number, meant: Unit, given: Unit): number =>
  ((value - (meant.offset ?? 0)) / meant.factor) * given.factor + (given.offset ?? 0)
const pressures: readonly SlipRole[] = [
  'service pressure',
  'test pressure',
  'cylinder gauge pressure',
  'starting gauge pressure',
  'ending gauge pressure',
  'intermediate pressure',
  'surface pressure',
]
const temperatures: readonly SlipRole[] = ['gas temperature', 'air temperature', 'water temperature']

/** The slips, with the numbers that they happen to. */
const slips: readonly {
  readonly id: string
  readonly roles: readonly SlipRole[]
  readonly of: (value: number, drawn: DrawnRecord) => number | undefined
}[] = [
  { id: 'psi-read-as-bar', roles: pressures.slice(0, 6), of: (value) => stated(value, psi, bar) },
  { id: 'kilopascal-read-as-bar', roles: pressures, of: (value) => stated(value, kilopascal, bar) },
  { id: 'feet-read-as-metres', roles: ['depth', 'altitude'], of: (value) => stated(value, foot, metre) },
  {
    id: 'internal-volume-read-as-free-gas',
    roles: ['rated capacity'],
    of: (_, { record }) => record['internal volume'],
  },
  {
    id: 'gauge-read-as-absolute',
    roles: ['cylinder absolute pressure', 'ambient pressure', 'surface pressure'],
    of: (value, { record }) => {
      if (record['cylinder absolute pressure'] === value) return record['cylinder gauge pressure']
      return value - (record['ambient pressure'] === value ? (record['surface pressure'] ?? atmosphere) : value)
    },
  },
  { id: 'fahrenheit-read-as-celsius', roles: temperatures, of: (value) => stated(value, fahrenheit, celsius) },
  {
    id: 'metres-of-sea-water-read-as-metres',
    roles: ['depth'],
    of: (value, { waterDensity }) =>
      waterDensity === undefined ? undefined : round((waterDensity * gravity * value) / 1e4, metre, 0.1),
  },
  {
    id: 'percent-read-as-fraction',
    roles: ['oxygen fraction', 'helium fraction'],
    of: (value) => stated(value, percent, one),
  },
]

/** A record with one slip, drawn evenly from the kinds; none where the slip would change nothing. */
export function drawSlip(uniform: () => number): Slipped {
  for (;;) {
    const slip = slips[Math.floor(uniform() * slips.length)] as (typeof slips)[number]
    const drawn = drawRecord(uniform)
    const roles = slip.roles.filter((role) => drawn.record[role] !== undefined)
    const role = roles[Math.floor(uniform() * roles.length)]
    if (role === undefined) continue
    const value = drawn.record[role] as number
    const wrong = slip.of(value, drawn)
    if (wrong === undefined || Math.abs(wrong - value) <= 1e-3 * Math.abs(value)) continue
    return { ...drawn, record: { ...drawn.record, [role]: wrong }, role, id: slip.id }
  }
}
