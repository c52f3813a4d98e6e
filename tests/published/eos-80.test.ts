import { expect, test } from 'vitest'
import {
  depthInStandardOcean,
  freezingPointOfWater,
  practicalSalinityOf,
  pressureInStandardOcean,
  seawaterDensity,
  speedOfSoundInWater,
} from '../../src/environment/index.ts'
import {
  absolute,
  atmosphere,
  celsius,
  decibar,
  degree,
  depthOf,
  difference,
  inUnit,
  measure,
  metre,
  offsetBy,
  temperatureOf,
} from '../../src/units/index.ts'
import fixture from '../fixtures/eos-80.json' with { type: 'json' }

// The tables are on the temperature scale of 1968 and count pressure from one atmosphere.
const state = (s: number, t68: number, p: number) => ({
  salinity: practicalSalinityOf(s),
  temperature: temperatureOf(t68 / 1.000_24, celsius),
  pressure: offsetBy(absolute(1, atmosphere), difference(p, decibar)),
})

type Given = { S: number; t68_C?: number; p_dbar: number }
const relations: Record<string, (given: Given) => number> = {
  'speed of sound in sea water': ({ S, t68_C = Number.NaN, p_dbar }) => speedOfSoundInWater(state(S, t68_C, p_dbar)),
  'freezing point of sea water': ({ S, p_dbar }) => freezing(S, p_dbar),
  'freezing point of sea water, check value': ({ S, p_dbar }) => freezing(S, p_dbar),
  'specific volume anomaly': ({ S, t68_C = Number.NaN, p_dbar }) =>
    1e8 * (1 / seawaterDensity(state(S, t68_C, p_dbar)) - 1 / seawaterDensity(state(35, 0, p_dbar))),
}

function freezing(s: number, p: number): number {
  const { salinity, pressure } = state(s, 0, p)
  return inUnit(freezingPointOfWater({ salinity, pressure }), celsius) * 1.000_24
}

test.each(fixture.items)('$place: $topic, $given: $printed $unit ($id)', ({ topic, given, printed, tolerance }) => {
  const relation = relations[topic]
  if (relation === undefined) throw new Error(`no relation for ${topic}`)
  expect(Math.abs(relation(given) - printed)).toBeLessThanOrEqual(tolerance)
})

test('all printed rows are there: 67', () => {
  expect(fixture.items).toHaveLength(67)
})

test.each(fixture.density.rows)('page 19: density at S %d, %d °C, %d dbar is %d kg/m³', (...row) => {
  const [s, t, p, printed] = row as [number, number, number, number]
  expect(Math.abs(seawaterDensity(state(s, t, p)) - printed)).toBeLessThanOrEqual(fixture.density.tolerance)
})

test('page 48: sound at S 40, 40 °C, 10 000 dbar runs at 1731.995 m/s', () => {
  const [s, t, p, printed] = fixture.sound.row as [number, number, number, number]
  expect(Math.abs(speedOfSoundInWater(state(s, t, p)) - printed)).toBeLessThanOrEqual(0.0005)
})

test('page 27: 10 000 dbar at 30° of latitude are 9712.653 m deep', () => {
  const [p, latitude, printed] = fixture.depth.check as [number, number, number]
  expect(Math.abs(oceanDepth(p, latitude) - printed)).toBeLessThanOrEqual(0.0005)
})

test('page 28: the rows of 500 and 1000 dbar come out at five latitudes', () => {
  for (const [p, ...depths] of fixture.depth.rows as [number, ...number[]][]) {
    fixture.depth.latitudes.forEach((latitude, i) => {
      expect(Math.abs(oceanDepth(p, latitude) - (depths[i] as number))).toBeLessThanOrEqual(0.005 + 1e-9)
    })
  }
})

test('pages 27 and 28: the printed depths have the printed pressures, by the inverse', () => {
  const [check, checkLatitude, checked] = fixture.depth.check as [number, number, number]
  expect(Math.abs(oceanPressure(checked, checkLatitude) - check)).toBeLessThanOrEqual(0.0006)
  for (const [p, ...depths] of fixture.depth.rows as [number, ...number[]][]) {
    fixture.depth.latitudes.forEach((latitude, i) => {
      // half the last printed place of the depth is 0.0051 dbar
      expect(Math.abs(oceanPressure(depths[i] as number, latitude) - p)).toBeLessThanOrEqual(0.0052)
    })
  }
})

test('pressure at a depth of the standard ocean and depth at its pressure undo each other, and are refused beyond the fit', () => {
  for (const metres of [0, 0.3, 12, 500, 4321, 9670]) {
    for (const latitude of [-90, 0, 45, 90]) {
      expect(oceanDepth(oceanPressure(metres, latitude), latitude)).toBeCloseTo(metres, 8)
    }
  }
  expect(() => oceanPressure(9726, 0)).toThrow(expect.objectContaining({ code: 'range', argument: 'depth' }))
  expect(() => oceanPressure(9720, 90)).toThrow(expect.objectContaining({ argument: 'pressure' }))
  expect(() => oceanPressure(-1, 0)).toThrow(expect.objectContaining({ code: 'range', argument: 'depth' }))
})

const oceanPressure = (metres: number, latitude: number): number => {
  const surfacePressure = absolute(1, atmosphere)
  const at = { depth: depthOf(metres, metre), surfacePressure, latitude: measure(latitude, degree) }
  return (pressureInStandardOcean(at) - surfacePressure) / 1e4
}

const oceanDepth = (p: number, latitude: number): number => {
  const surfacePressure = absolute(1, atmosphere)
  const pressure = offsetBy(surfacePressure, difference(p, decibar))
  return depthInStandardOcean({ pressure, surfacePressure, latitude: measure(latitude, degree) })
}

test('the equation refuses what it was not fitted to', () => {
  const sea = state(35, 10, 100)
  expect(() => seawaterDensity({ ...sea, temperature: temperatureOf(45, celsius) })).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'temperature' }),
  )
  expect(() => seawaterDensity({ ...sea, salinity: Number.NaN as typeof sea.salinity })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'salinity' }),
  )
  expect(() => speedOfSoundInWater({ ...sea, temperature: temperatureOf(-1, celsius) })).toThrow(
    expect.objectContaining({ code: 'outside-validity' }),
  )
  expect(() => practicalSalinityOf(350)).toThrow(expect.objectContaining({ code: 'range' }))
})
