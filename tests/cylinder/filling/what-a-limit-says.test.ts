import { describe, expect, test } from 'vitest'
import {
  assessFill,
  assessOxygenService,
  type FilledCylinder,
  type FillLimitInput,
  fillLimit,
  plusConditions,
  plusPermission,
} from '../../../src/cylinder/index.ts'
import { dryAir, mixture, nitrox, pureGas } from '../../../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  difference,
  fahrenheit,
  gauge,
  inUnit,
  psi,
  temperatureOf,
} from '../../../src/units/index.ts'

// What a limit and a judged fill carry beside their figure: reasons, doubts, cautions, sources, and both sides of each edge.

const around = { mixture: dryAir, ambientPressure: absolute(1, atmosphere) } as const
const us = { rule: 'us-specification', servicePressure: gauge(3000, psi), ...around } as const
const un = {
  rule: 'un-receptacle',
  testPressure: gauge(348, bar),
  workingPressure: gauge(232, bar),
  ...around,
} as const
const cool = temperatureOf(70, fahrenheit)
const everyCondition = Object.fromEntries(Object.keys(plusConditions).map((condition) => [condition, true]))

describe('a limit', () => {
  const said = (given: FillLimitInput) => {
    const { because, doubts, cautions, sources, settledPressure } = fillLimit(given)
    for (const { text } of because) expect(text.length).toBeGreaterThan(20)
    return {
      psi: Number(inUnit(settledPressure, psi).toFixed(1)),
      because: because.map(({ code, source = '-' }) => `${code} ${source}`),
      doubts: doubts.map(({ code, source = '-' }) => `${code} ${source}`),
      cautions,
      sources,
    }
  }

  test('of a US cylinder: the settled pressure, the hot one, and where they come from', () => {
    const limit = said(us)
    expect(limit).toMatchObject({ psi: 3000, doubts: [], cautions: ['fill-limit'] })
    expect(limit.because.map((each) => each.split(' ')[0])).toEqual(['us-settled', 'us-hot'])
    expect(limit.sources).toEqual(expect.arrayContaining(limit.because.map((each) => each.split(' ')[1])))
    expect(new Set(limit.sources).size).toBe(limit.sources.length)
  })

  test('with every condition of the plus it is eleven tenths, with its caution', () => {
    expect(said({ ...us, plus: everyCondition })).toMatchObject({ psi: 3300, cautions: ['fill-limit', 'plus-mark'] })
    expect(said({ ...us, plus: everyCondition, material: 'steel' })).toMatchObject({ psi: 3300, doubts: [] })
  })

  test('a plus on aluminium does not count, and is a doubt', () => {
    expect(said({ ...us, plus: everyCondition, material: 'aluminium' })).toMatchObject({
      psi: 3000,
      doubts: ['plus-on-aluminium cfr-49-173-302a-2015'],
      cautions: ['fill-limit'],
    })
    expect(said({ ...us, plus: { plusSign: true }, material: 'aluminium' }).doubts).toEqual([])
    expect(said({ ...un, material: 'aluminium' }).doubts).toEqual([])
  })

  test('marks of a UN receptacle that contradict each other are a doubt, two thirds exactly are none', () => {
    expect(said({ ...un, workingPressure: gauge(233, bar) }).doubts).toEqual(['marks-contradict cfr-49-173-302b'])
    expect(said(un).doubts).toEqual([])
    const { workingPressure: _, ...bare } = un
    expect(said(bare).doubts).toEqual([])
  })

  test('a rich gas carries its caution above 23.5 %, not at it', () => {
    expect(said({ ...us, mixture: nitrox(0.235), material: 'steel' }).cautions).toEqual(['fill-limit'])
    expect(said({ ...us, mixture: nitrox(0.236), material: 'steel' }).cautions).toEqual([
      'fill-limit',
      'oxygen-handling',
    ])
  })

  test('oxygen in aluminium ends at 3000 psi: of any US mark, and of a UN one in the US', () => {
    const strong = { ...us, servicePressure: gauge(3300, psi), mixture: nitrox(0.32) } as const
    expect(said({ ...strong, material: 'aluminium' }).psi).toBe(3000)
    expect(said({ ...strong, material: 'steel' }).psi).toBe(3300)
    expect(said({ ...strong, material: 'composite' }).psi).toBe(3300)
    expect(said(strong)).toMatchObject({ psi: 3300 })
    expect(said(strong).doubts.map((each) => each.split(' ')[0])).toEqual(['material-unknown'])
    expect(said({ ...strong, servicePressure: gauge(3000, psi) }).doubts).toEqual([])
    expect(fillLimit(strong).doubts[0]?.text).toContain('at most 3000 psi')
    const held = (country: string, material?: 'aluminium'): readonly string[] =>
      said({ ...un, mixture: nitrox(0.32), country, ...(material === undefined ? {} : { material }) }).because.map(
        (each) => each.split(' ')[0] ?? '',
      )
    expect(held('US', 'aluminium')).toContain('un-aluminium-oxygen')
    expect(held('CA', 'aluminium')).not.toContain('un-aluminium-oxygen')
    expect(held('CA')).not.toContain('material-unknown')
    expect(held('US')).toContain('material-unknown')
  })

  test.each<[Record<string, unknown>, string, string]>([
    [{ rule: 'us' }, 'rule', 'input'],
    [{ reading: 1 }, 'cylinder.reading', 'input'],
    [{ mixture: 0.21 }, 'mixture', 'input'],
    [{ material: 'titanium' }, 'material', 'input'],
    [{ country: 'USA' }, 'country', 'input'],
    [{ country: 'us' }, 'country', 'input'],
    [{ country: 'aUS' }, 'country', 'input'],
    [{ country: ['US'] }, 'country', 'input'],
    [{ plus: { colour: true } }, 'findings.colour', 'input'],
    [{ plus: { gas: 'yes' } }, 'findings.gas', 'input'],
  ])('%j is refused by name', (field, argument, code) => {
    const expected = field['mixture'] === undefined ? { argument, code } : { argument }
    expect(() => fillLimit({ ...us, ...field })).toThrow(expect.objectContaining(expected))
  })

  test.each(['steel', 'aluminium', 'composite'] as const)('%s is a material', (material) => {
    expect(() => fillLimit({ ...us, material })).not.toThrow()
  })
})

describe('a judged fill', () => {
  const filled = (pressure: number, more: Partial<FilledCylinder> = {}): FilledCylinder =>
    ({ ...us, reading: gauge(pressure, psi), gasTemperature: cool, ...more }) as FilledCylinder
  const codes = (given: FilledCylinder): readonly string[] => assessFill(given).because.map(({ code }) => code)

  test('at its limit has no margin, below it what is left, above it what is too much', () => {
    const margin = (pressure: number): number =>
      Math.round((assessFill(filled(pressure)).margin ?? Number.NaN) / 6894.757)
    expect([margin(3000), margin(2900), margin(3100)]).toEqual([0, 100, -100])
    expect(assessFill(filled(3000)).margin).toBe(0)
  })

  test('says where it settles, first where it decides', () => {
    expect(codes(filled(2900))).toEqual(['at-or-below-limit', 'us-settled', 'us-hot'])
    expect(codes(filled(3100))).toEqual(['above-limit', 'us-settled', 'us-hot'])
    expect(assessFill(filled(3100)).because[0]?.text).toBe('settles at 213.7 bar, limit 206.8 bar')
    expect(assessFill(filled(3100)).cautions).toEqual(['fill-limit', 'overfill'])
    expect(assessFill(filled(3000)).cautions).toEqual(['fill-limit'])
    expect(assessFill(filled(3000)).sources).toEqual(fillLimit(us).sources)
  })

  test('between the plain limit and that of the plus it is open while a condition is unknown', () => {
    const plus = { specification: true, plusSign: true } as const
    const between = filled(3200, { plus })
    expect(assessFill(between).verdict).toBe('undetermined')
    expect(codes(between)).toEqual(['plus-conditions-unknown', 'above-limit', 'us-settled', 'us-hot'])
    expect(assessFill(between).because[0]).toMatchObject({
      source: 'cfr-49-173-302a-2015',
      text: expect.stringContaining('reliefDevice'),
    })
    expect(assessFill(filled(3301, { plus })).verdict).toBe('beyond')
    expect(codes(filled(3301, { plus }))[0]).toBe('above-limit')
    expect(assessFill(filled(3000, { plus })).verdict).toBe('within')
    expect(codes(filled(3000, { plus }))).toEqual(['at-or-below-limit', 'us-settled', 'us-hot'])
    expect(assessFill(filled(3200, { plus: { ...plus, gas: false } })).verdict).toBe('beyond')
  })

  test('a doubt of the limit comes once, before what merely says what it is', () => {
    const contradicted = {
      ...un,
      workingPressure: gauge(240, bar),
      reading: gauge(200, bar),
      gasTemperature: temperatureOf(15, celsius),
    } as FilledCylinder
    expect(codes(contradicted).filter((code) => code === 'marks-contradict')).toHaveLength(1)
    expect(codes(contradicted)[0]).toBe('marks-contradict')
    expect(assessFill(contradicted).verdict).toBe('undetermined')
  })

  test('an unknown temperature leaves it open, with the caution of a hot fill', () => {
    const { gasTemperature: _, ...unknown } = filled(2900)
    const fill = assessFill(unknown)
    expect(fill).toMatchObject({
      verdict: 'undetermined',
      cautions: ['fill-limit', 'hot-fill'],
      sources: fillLimit(us).sources,
    })
    expect(fill.because.map(({ code }) => code)).toEqual(['gas-temperature-unknown', 'us-settled', 'us-hot'])
    expect(fill).not.toHaveProperty('margin')
  })

  test('an uncertainty of the margin comes from those of reading and temperature, and from neither', () => {
    const at = (more: Partial<FilledCylinder>): number | undefined => assessFill(filled(2900, more)).marginUncertainty
    const reading = difference(20, psi)
    expect(at({})).toBeUndefined()
    expect(at({ readingUncertainty: reading })).toBeCloseTo(reading, -3)
    const byTemperature = at({ temperatureUncertainty: difference(2, celsius) }) ?? 0
    expect(byTemperature).toBeGreaterThan(1e5)
    expect(at({ readingUncertainty: reading, temperatureUncertainty: difference(2, celsius) })).toBeCloseTo(
      Math.hypot(at({ readingUncertainty: reading }) ?? 0, byTemperature),
      3,
    )
    expect(assessFill(filled(2900))).not.toHaveProperty('marginUncertainty')
  })

  test.each<[Record<string, unknown>, string]>([
    [{ reading: undefined }, 'cylinder.reading'],
    [{ reading: gauge(501, bar) }, 'reading'],
    [{ gasTemperature: 0 }, 'gasTemperature'],
    [{ readingUncertainty: -1 }, 'readingUncertainty'],
    [{ temperatureUncertainty: Number.NaN }, 'temperatureUncertainty'],
    [{ hot: true }, 'cylinder.hot'],
  ])('%j is refused by name', (field, argument) => {
    const given = Object.fromEntries(
      Object.entries<unknown>({ ...filled(2900), ...field }).filter(([, value]) => value !== undefined),
    )
    expect(() => assessFill(given as never)).toThrow(expect.objectContaining({ argument }))
  })
})

describe('oxygen service', () => {
  test('at the threshold it is within, above it beyond, with the room left', () => {
    const at = (oxygen: number) =>
      assessOxygenService([mixture({ oxygen, nitrogen: 1 - oxygen })], 'us-transport-oxidizer')
    expect([at(0.235).verdict, at(0.2351).verdict, at(0.21).verdict]).toEqual(['within', 'beyond', 'within'])
    expect(at(0.21).margin).toBeCloseTo(0.025, 12)
    expect(at(0.25).margin).toBeCloseTo(-0.015, 12)
    expect(at(0.25)).toMatchObject({ cautions: ['oxygen-handling'] })
    expect(at(0.25).because[0]?.text).toContain('above 23.5 %')
    expect(at(0.25).sources).toEqual([at(0.25).because[0]?.source])
    expect(at(0.21).because.map(({ code }) => code)).toEqual(['us-transport-oxidizer'])
  })

  test('the richest of the gases decides', () => {
    expect(assessOxygenService([dryAir, pureGas('oxygen'), nitrox(0.32)], 'us-diving-equipment').value).toBe(1)
  })

  test.each<[unknown, unknown, string]>([
    [[dryAir], 'forty', 'threshold'],
    [[], 'us-diving-equipment', 'mixtures'],
    [[dryAir, 0.21], 'us-diving-equipment', 'mixtures[1]'],
  ])('%j above %j is refused by name', (mixtures, threshold, argument) => {
    expect(() => assessOxygenService(mixtures as never, threshold as never)).toThrow(
      expect.objectContaining({ argument }),
    )
  })
})

test('the plus permission names its cautions and sources', () => {
  expect(plusPermission({})).toMatchObject({
    outcome: 'undetermined',
    met: [],
    unmet: [],
    unknown: Object.keys(plusConditions),
    cautions: ['plus-mark', 'fill-limit'],
    sources: ['cfr-49-173-302a-2015'],
  })
  expect(plusPermission(everyCondition).outcome).toBe('possible')
  expect(() => plusPermission({ gas: 1 } as never)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'findings.gas' }),
  )
  expect(() => plusPermission(undefined as never)).toThrow(expect.objectContaining({ argument: 'findings' }))
})
