import { beforeAll, expect, test } from 'vitest'
import {
  type ChargedCylinder,
  type CompiledCaloric,
  chargeCylinder,
  compileCaloric,
  fastestFill,
} from '../../src/charging/index.ts'
import { dryAir, gasState, nitrox, trimix } from '../../src/gas-law/index.ts'
import { seededRandom } from '../../src/uncertainty/index.ts'
import {
  absolute,
  bar,
  celsius,
  gramPerSecond,
  internalVolumeOf,
  joulePerKelvin,
  litre,
  measure,
  temperatureOf,
  wattPerKelvin,
} from '../../src/units/index.ts'
import { refused } from './refused.ts'

const degrees = (n: number) => temperatureOf(n, celsius)
const at = (bars: number, n: number) => ({ pressure: absolute(bars, bar), temperature: degrees(n) })
const fill: ChargedCylinder = {
  internalVolume: internalVolumeOf(12, litre),
  mixture: dryAir,
  start: at(50, 15),
  supply: at(300, 15),
  flow: measure(8, gramPerSecond),
  settled: at(201, 15),
  wall: {
    temperature: degrees(15),
    heatCapacity: measure(6000, joulePerKelvin),
    innerConductance: measure(10, wattPerKelvin),
    outerConductance: measure(3, wattPerKelvin),
  },
  surroundings: degrees(15),
}
const box = {
  temperature: [degrees(-20), degrees(150)],
  pressure: [absolute(1, bar), absolute(400, bar)],
  tolerance: 1e-8,
} as const
const deep = trimix({ oxygen: 0.18, helium: 0.45 })
let tables: readonly CompiledCaloric[] = []
beforeAll(() => {
  tables = [compileCaloric(dryAir, box), compileCaloric(deep, box)]
})

test('a table is made to its tolerance', () => {
  for (const { largestError, tolerance } of tables) expect(largestError).toBeLessThan(tolerance)
})

test('fills by the table are those by the equation of state, within the tolerance of the table', () => {
  const random = seededRandom(12)
  for (const compiled of tables) {
    for (let k = 0; k < 12; k++) {
      const drawn: ChargedCylinder = {
        ...fill,
        mixture: compiled.mixture,
        start: at(2 + 120 * random(), 5 + 25 * random()),
        supply: at(250 + 80 * random(), 5 + 30 * random()),
        flow: measure(0.5 + 20 * random(), gramPerSecond),
      }
      const full = chargeCylinder(drawn)
      const quick = chargeCylinder(drawn, { compiled })
      expect(Math.abs(quick.gasTemperature - full.gasTemperature)).toBeLessThan(1e-6)
      expect(quick.stopPressure / full.stopPressure).toBeCloseTo(1, 8)
      expect(quick.wallTemperature).toBeCloseTo(full.wallTemperature, 6)
      expect(quick.heatToSurroundings / full.heatToSurroundings).toBeCloseTo(1, 6)
      expect([quick.amount, quick.duration, quick.supplySuffices]).toEqual([
        full.amount,
        full.duration,
        full.supplySuffices,
      ])
    }
  }
})

test('energy is kept to 1e-9 over the run by the table as well', () => {
  for (const compiled of tables) {
    const { mixture } = compiled
    const end = chargeCylinder({ ...fill, mixture }, { compiled })
    const energy = (state: { pressure: number; temperature: number }) =>
      gasState(mixture, state as ReturnType<typeof at>).molarInternalEnergy
    const brought = end.added * gasState(mixture, fill.supply).molarEnthalpy
    const before = (end.amount - end.added) * energy(fill.start) + brought
    const now = end.amount * energy({ pressure: end.stopPressure, temperature: end.gasTemperature })
    expect(Math.abs((now + end.heatToWall) / before - 1)).toBeLessThan(1e-9)
  }
})

test('the fastest fill takes a table, too', () => {
  const { flow: _, ...rest } = fill
  const [compiled] = tables
  const limit = degrees(50)
  const quick = fastestFill(rest, limit, { compiled: compiled as CompiledCaloric })
  expect(quick.flow / fastestFill(rest, limit).flow).toBeCloseTo(1, 6)
})

test('a gas that leaves the box, another mixture and a table beside the ideal gas are refused', () => {
  const narrow = compileCaloric(dryAir, { ...box, temperature: [degrees(-20), degrees(40)], tolerance: 1e-6 })
  expect(refused(() => chargeCylinder(fill, { compiled: narrow }))).toBe('outside-validity options.compiled')
  const low = compileCaloric(dryAir, { ...box, pressure: [absolute(120, bar), absolute(400, bar)], tolerance: 1e-6 })
  expect(refused(() => chargeCylinder(fill, { compiled: low }))).toBe('outside-validity options.compiled')
  const compiled = tables[0] as CompiledCaloric
  expect(refused(() => chargeCylinder({ ...fill, mixture: nitrox(0.32) }, { compiled }))).toBe('input options.compiled')
  expect(refused(() => chargeCylinder(fill, { gas: 'ideal', compiled }))).toBe('input options.compiled')
  expect(refused(() => chargeCylinder(fill, { compiled: {} as CompiledCaloric }))).toBe(
    'input options.compiled.mixture',
  )
  expect(refused(() => compileCaloric(dryAir, { ...box, tolerance: 0 }))).toBe('range options.tolerance')
  expect(refused(() => compileCaloric(dryAir, { ...box, temperature: [degrees(20), degrees(20)] }))).toBe(
    'range options.temperature',
  )
})
