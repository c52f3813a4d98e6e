import { expect, test } from 'vitest'
import { dryAir } from '../../../src/gas-law/index.ts'
import { cautions } from '../../../src/references/cautions.ts'
import {
  assessIntermediatePressure,
  benchFindings,
  findBenchFindings,
  oRingFit,
  orificeFlow,
  preload,
  reliefArea,
  seatLeak,
} from '../../../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  type Fraction,
  internalVolumeOf,
  inUnit,
  litre,
  litrePerMinute,
  measure,
  millimetre,
  minute,
  newton,
  newtonMetre,
  psi,
  squareMillimetre,
  temperatureOf,
} from '../../../src/units/index.ts'

test('ids of findings are unique, each points somewhere and ends with the technician', () => {
  expect(new Set(benchFindings.map(({ id }) => id)).size).toBe(benchFindings.length)
  for (const { id, pointsTo, action, cautions: ids } of benchFindings) {
    expect(pointsTo.length, id).toBeGreaterThan(0)
    expect(action, id).toMatch(/maker’s instructions/)
    expect(ids, id).toContain('regulator')
    for (const caution of ids) expect(cautions[caution], id).toBeDefined()
  }
})

test('a finding is found by words of what is seen, and by none that are not there', () => {
  const named = [
    ['filter red', 'filter-red-brown'],
    ['filter green', 'filter-green'],
    ['sand', 'second-stage-sand'],
    ['climbs', 'intermediate-creep'],
    ['bubbles', 'bubbles-first-stage'],
    ['year', 'service-due'],
  ] as const
  for (const [words, id] of named) expect(findBenchFindings(words).map((row) => row.id)).toContain(id)
  expect(findBenchFindings('no such thing')).toEqual([])
  expect(findBenchFindings('  ')).toEqual([])
})

test.each([
  [5.9, 'beyond', 'intermediate-low'],
  [6, 'within', undefined],
  [10, 'within', undefined],
  [10.2, 'within', undefined], // 148 psi
  [10.34, 'within', undefined],
  [10.35, 'beyond', 'intermediate-high'],
])('%d bar is %s the usual 6 to 10 bar, 90 to 150 psi', (pressure, verdict, code) => {
  const found = assessIntermediatePressure(difference(pressure, bar))
  expect(found.verdict).toBe(verdict)
  expect(found.because[0]?.code).toBe(code)
  expect((found.margin as number) >= 0).toBe(verdict === 'within')
})

test('the range of the maker comes before the usual one', () => {
  const range = { lowest: difference(130, psi), highest: difference(140, psi) }
  expect(assessIntermediatePressure(difference(9.4, bar), range).verdict).toBe('within')
  expect(assessIntermediatePressure(difference(8, bar), range).verdict).toBe('beyond')
  const upsideDown = { lowest: range.highest, highest: range.lowest }
  expect(() => assessIntermediatePressure(difference(9.4, bar), upsideDown)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'range.highest' }),
  )
})

test('an O-ring stretched or squeezed beyond the bands says which', () => {
  const length = (n: number) => measure(n, millimetre)
  const ring = {
    sectionDiameter: length(2.62),
    insideDiameter: length(12),
    grooveDiameter: length(12.4),
    grooveWidth: length(3.6),
    glandDepth: length(2.1),
  }
  expect(oRingFit(ring).judged.verdict).toBe('within')
  const codes = (change: Partial<typeof ring>) =>
    oRingFit({ ...ring, ...change }).judged.because.map(({ code }) => code)
  expect(codes({ insideDiameter: length(11) })).toEqual(['stretch'])
  expect(codes({ glandDepth: length(2.5) })).toEqual(['squeeze'])
  expect(codes({ grooveWidth: length(2.6) })).toEqual(['fill'])
  expect(() => oRingFit({ ...ring, glandDepth: 0 as never })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'ring.glandDepth' }),
  )
})

test('the cord of a ring keeps its volume when it is stretched', () => {
  const length = (n: number) => measure(n, millimetre)
  const { sectionDiameter, stretch } = oRingFit({
    sectionDiameter: length(3),
    insideDiameter: length(20),
    grooveDiameter: length(21),
    grooveWidth: length(4),
    glandDepth: length(2.4),
  })
  expect(sectionDiameter ** 2 * (1 + stretch)).toBeCloseTo(length(3) ** 2, 15)
})

test('a first stage of 2 mm at 200 bar wants 7.3 mm of relief at 15 bar', () => {
  const { area, cautions: ids } = reliefArea({
    orificeArea: measure(Math.PI, squareMillimetre),
    supplyPressure: absolute(200, bar),
    reliefPressure: absolute(15, bar),
  })
  expect(Math.sqrt((4 * inUnit(area, squareMillimetre)) / Math.PI)).toBeCloseTo(7.3, 1)
  expect(ids).toContain('regulator')
  // second route: both orifices choked by the ideal formula pass one flow
  const flow = (mm2: number, before: number) =>
    orificeFlow(
      { area: measure(mm2, squareMillimetre), dischargeCoefficient: 0.8 as Fraction },
      {
        mixture: dryAir,
        upstreamPressure: absolute(before, bar),
        upstreamTemperature: temperatureOf(20, celsius),
        downstreamPressure: absolute(1, bar),
      },
      { gas: 'ideal' },
    ).massFlow
  expect(flow(Math.PI, 200) / flow(inUnit(area, squareMillimetre), 15)).toBeCloseTo(1, 10)
})

test('creep of a bar a minute in 60 mL is a leak of 59 mL a minute', () => {
  const creep = {
    volume: internalVolumeOf(0.06, litre),
    rise: difference(1, bar),
    during: measure(1, minute),
    statedAt: absolute(1.01325, bar),
  }
  expect(inUnit(seatLeak(creep), litrePerMinute) * 1000).toBeCloseTo(59.2, 1)
  for (const [argument, wrong] of [
    ['creep.rise', { rise: Number.NaN as never }],
    ['creep.during', { during: 0 as never }],
    ['creep.volume', { volume: internalVolumeOf(12, litre) }],
  ] as const) {
    expect(() => seatLeak({ ...creep, ...wrong })).toThrow(expect.objectContaining({ code: 'range', argument }))
  }
})

test('a preload comes with its thirty per cent', () => {
  const found = preload({
    torque: measure(40, newtonMetre),
    diameter: measure(25, millimetre),
    nutFactor: 0.2 as Fraction,
  })
  expect([found.lowest, found.force, found.highest].map((f) => Math.round(inUnit(f, newton)))).toEqual([
    5600, 8000, 10400,
  ])
})
