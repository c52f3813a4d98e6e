import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  directExpansion,
  elasticExcessRules,
  expansionTest,
  guaranteedWall,
  materialRules,
  minimumWallForStress,
  wallStress,
  waterDensities,
} from '../../../src/cylinder/testing/index.ts'
import {
  bar,
  celsius,
  difference,
  gauge,
  inUnit,
  kilogram,
  measure,
  megapascal,
  millilitre,
  millimetre,
  psi,
  temperatureOf,
} from '../../../src/units/index.ts'

const cc = (n: number): ReturnType<typeof measure<'volume'>> => measure(n, millilitre)

test('an elastic expansion above the rejection value condemns 3HT, costs 3A and 3AA the plus, and is the permit’s matter else', () => {
  const readings = { totalExpansion: cc(70), permanentExpansion: cc(1) }
  const meaning = (specification: '3HT' | '3A' | '3AA' | '3AL' | 'special permit'): [string, string | undefined] => {
    const { elastic } = expansionTest(readings, {
      limit: 'us-ten-percent',
      specification,
      rejectionElasticExpansion: cc(66.3),
    })
    return [elastic.verdict, elastic.meaning]
  }
  expect(meaning('3HT')).toEqual(['beyond', 'condemn'])
  expect(meaning('3A')).toEqual(['beyond', 'no plus'])
  expect(meaning('3AA')).toEqual(['beyond', 'no plus'])
  expect(meaning('special permit')).toEqual(['beyond', 'permit decides'])
  expect(meaning('3AL')).toEqual(['undetermined', 'none'])
  expect(
    elasticExcessRules.filter((rule) => rule.meaning === 'condemn').flatMap((rule) => rule.specifications),
  ).toEqual(['3HT'])
})

test('without a rejection value or a specification the elastic part is undetermined and says why', () => {
  const { elastic } = expansionTest(
    { totalExpansion: cc(70), permanentExpansion: cc(1) },
    { limit: 'iso-five-percent' },
  )
  expect([elastic.verdict, elastic.because.map(({ code }) => code)]).toEqual([
    'undetermined',
    ['no-rejection-value', 'no-rule'],
  ])
})

test('a welded aluminium 4E may keep 12 %, others 10 %', () => {
  const readings = { totalExpansion: cc(100), permanentExpansion: cc(11) }
  expect(expansionTest(readings, { limit: 'us-4e' }).permanent.verdict).toBe('within')
  expect(expansionTest(readings, { limit: 'us-ten-percent' }).permanent.verdict).toBe('beyond')
})

test('the direct method finds the expansion that the water hides', () => {
  assert(
    property(
      double({ min: 20, max: 120, noNaN: true }),
      double({ min: 0, max: 5, noNaN: true }),
      (total, permanent) => {
        const densities = waterDensities({ temperature: temperatureOf(15, celsius), testPressure: gauge(348, bar) })
        const waterMass = measure(12.2, kilogram)
        const compression = waterMass * (1 / densities.atAmbient - 1 / densities.atTestPressure)
        const forced = compression + total * 1e-6
        const found = directExpansion({
          waterForcedIn: measure(forced * 1e6, millilitre),
          waterRecovered: measure((forced - permanent * 1e-6) * 1e6, millilitre),
          waterMass,
          densities,
        })
        expect(inUnit(found.totalExpansion, millilitre)).toBeCloseTo(total, 8)
        expect(inUnit(found.permanentExpansion, millilitre)).toBeCloseTo(permanent, 8)
      },
    ),
    { numRuns: 50 },
  )
})

test('a wall that reaches a stress limit and its stress are inverse to each other', () => {
  assert(
    property(
      double({ min: 100, max: 400, noNaN: true }),
      double({ min: 100, max: 450, noNaN: true }),
      (diameter, pressure) => {
        const outsideDiameter = measure(diameter, millimetre)
        const testPressure = gauge(pressure, bar)
        const stressLimit = difference(480, megapascal)
        const wall = minimumWallForStress({ outsideDiameter, testPressure, stressLimit })
        expect(wallStress({ outsideDiameter, wall }, testPressure) / stressLimit).toBeCloseTo(1, 10)
      },
    ),
    { numRuns: 100 },
  )
})

test('the two fifth-column limits of 3AL are its strengths times the shares of the rule', () => {
  const rule = (id: string): number => {
    const row = materialRules.find((each) => each.id === id)
    return row?.atLeast ?? row?.atMost ?? Number.NaN
  }
  expect((rule('3AL-yield') * rule('3AL-stress-of-yield')) / 100).toBe(28_000)
  expect((rule('3AL-ultimate') * rule('3AL-stress-of-ultimate')) / 100).toBe(25_460)
})

test('bad readings name the field and what to do', () => {
  expect(() =>
    expansionTest({ totalExpansion: cc(7), permanentExpansion: cc(70) }, { limit: 'us-ten-percent' }),
  ).toThrow(
    'permanentExpansion is 70 mL, expected at least 0 and at most 7 mL. Permanent expansion cannot exceed total expansion',
  )
  expect(() =>
    expansionTest({ totalExpansion: cc(0), permanentExpansion: cc(0) }, { limit: 'us-ten-percent' }),
  ).toThrow(expect.objectContaining({ code: 'range', argument: 'totalExpansion' }))
  const densities = waterDensities({ temperature: temperatureOf(15, celsius), testPressure: gauge(348, bar) })
  const direct = { waterForcedIn: cc(150), waterRecovered: cc(150), waterMass: measure(12.2, kilogram), densities }
  expect(() => directExpansion(direct)).toThrow(expect.objectContaining({ argument: 'waterForcedIn' }))
  const shell = { outsideDiameter: measure(171, millimetre), testPressure: gauge(4000, bar) }
  expect(() => minimumWallForStress({ ...shell, stressLimit: difference(70_000, psi) })).toThrow(
    expect.objectContaining({ argument: 'testPressure' }),
  )
  const tooMuch = {
    outsideDiameter: measure(171, millimetre),
    testPressure: gauge(400, bar),
    stressLimit: difference(500, bar),
  }
  expect(() => minimumWallForStress(tooMuch)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'stressLimit' }),
  )
  expect(() =>
    wallStress({ outsideDiameter: measure(10, millimetre), wall: measure(5, millimetre) }, gauge(300, bar)),
  ).toThrow(expect.objectContaining({ argument: 'shell.wall', expected: 'below 5 mm, half the outside diameter' }))
  const steel = {
    standard: 'ISO 9809-1',
    outsideDiameter: measure(171, millimetre),
    testPressure: gauge(348, bar),
  } as const
  const exchanged = {
    ...steel,
    yieldStrength: difference(900, megapascal),
    tensileStrength: difference(760, megapascal),
  }
  expect(() => guaranteedWall(exchanged)).toThrow(expect.objectContaining({ argument: 'yieldStrength' }))
})
