import { describe, expect, test } from 'vitest'
import {
  type AirAnalysis,
  absolute,
  assessAnalysis,
  assessContaminantAtDepth,
  assessFilters,
  bar,
  contaminantAtDepth,
  type FilterStageId,
  fractionOf,
  gramPerMole,
  isoStandard,
  kelvin,
  type MeasuredTrace,
  measure,
  milligramPerCubicMetre,
  normalCondition,
  type PurityRuleId,
  partialPressureLimits,
  partPerMillion,
  pascal,
  percent,
  purityRules,
  roomCondition,
  temperatureOf,
  traceConcentration,
  traceFraction,
  traceMolarMasses,
} from '../../src/index.ts'
import vectors from '../fixtures/charging-vectors.json' with { type: 'json' }
import { off, refused } from './refused.ts'

const { engineering } = vectors

test.each(['H8-1', 'H8-2', 'H8-3'] as const)('%s: a contaminant at depth', (id) => {
  const { in: given, out } = engineering[id]
  const found = contaminantAtDepth({
    fraction: fractionOf(given.y, partPerMillion),
    pressure: absolute(101_325 + given.depth * 10_000, pascal),
    surfacePressure: absolute(101_325, pascal),
  })
  expect(off(found.partialPressure, out.p_partial)).toBeLessThan(1e-12)
  expect(off(found.surfaceEquivalent * 1e6, out.surface_equivalent)).toBeLessThan(1e-12)
})

test.each(['H9-1', 'H9-2', 'H9-3'] as const)('%s: ppm to mg/m³ at a stated reference, and back', (id) => {
  const { in: given, out } = engineering[id]
  const options = {
    molarMass: measure(given.M, gramPerMole),
    reference: { pressure: absolute(given.p, pascal), temperature: temperatureOf(given.T, kelvin) },
  }
  const found = traceConcentration(fractionOf(given.y, partPerMillion), options)
  // the vectors cut the gas constant after ten digits, which is 1.8e-11
  expect(off(found * 1e6, out.c)).toBeLessThan(2e-11)
  expect(off(traceFraction(found, options) * 1e6, given.y)).toBeLessThan(1e-12)
})

test('printed pairs of ppm and mg/m³ come out to their printed digits', () => {
  const at = (t: number) => ({ pressure: absolute(101_325, pascal), temperature: temperatureOf(t, kelvin) })
  const mg = (ppm: number, molarMass: typeof traceMolarMasses.carbonMonoxide, t: number) =>
    traceConcentration(fractionOf(ppm, partPerMillion), { molarMass, reference: at(t) }) * 1e6
  expect(mg(3, traceMolarMasses.carbonMonoxide, 293.15).toFixed(1)).toBe('3.5') // hse-dvis-9
  expect(Math.trunc(mg(10, traceMolarMasses.carbonMonoxide, 298.15))).toBe(11) // norway-limit-values, cut
})

const trace = (ppm: number, doubt = 0): MeasuredTrace => ({
  fraction: fractionOf(ppm, partPerMillion),
  standardUncertainty: fractionOf(doubt, partPerMillion),
})
const mass = (mg: number, doubt = 0): MeasuredTrace => ({
  concentration: measure(mg, milligramPerCubicMetre),
  standardUncertainty: measure(doubt, milligramPerCubicMetre),
})
const oxygen = (share: number): MeasuredTrace => ({
  fraction: fractionOf(share, percent),
  standardUncertainty: fractionOf(0.1, percent),
})
const good: AirAnalysis = {
  sample: { from: 'compressor-outlet' },
  measured: {
    oxygen: oxygen(20.9),
    carbonMonoxide: trace(1, 0.2),
    carbonDioxide: trace(420, 10),
    oil: mass(0.03, 0.01),
    water: mass(15, 2),
    hydrocarbons: trace(3, 0.5),
  },
  odour: 'none',
}
const options = { reference: roomCondition }
const verdict = (change: Partial<AirAnalysis>, rule: PurityRuleId = 'en-12021-2014', more: object = {}) =>
  assessAnalysis({ ...good, ...change }, [rule], { ...options, ...more })[0]
const with_ = (measured: AirAnalysis['measured']): Partial<AirAnalysis> => ({
  measured: { ...good.measured, ...measured },
})
const without = (name: keyof AirAnalysis['measured']): Partial<AirAnalysis> => {
  return { measured: Object.fromEntries(Object.entries(good.measured).filter(([key]) => key !== name)) }
}

describe('an analysis against one rule', () => {
  // every condition both ways: what is changed, verdict, first reason
  test.each([
    ['clean', {}, 'within', 'carbonMonoxide-within'],
    ['carbon monoxide above', with_({ carbonMonoxide: trace(5.2, 0.2) }), 'beyond', 'carbonMonoxide-beyond'],
    ['carbon monoxide above, only just', with_({ carbonMonoxide: trace(5.001, 2) }), 'beyond', 'carbonMonoxide-beyond'],
    [
      'carbon monoxide at the limit, exactly known',
      with_({ carbonMonoxide: trace(5, 0) }),
      'within',
      'carbonMonoxide-within',
    ],
    [
      'carbon monoxide near',
      with_({ carbonMonoxide: trace(4.8, 0.2) }),
      'undetermined',
      'carbonMonoxide-within-uncertainty-of-limit',
    ],
    [
      'carbon monoxide below by two uncertainties',
      with_({ carbonMonoxide: trace(4.5, 0.2) }),
      'within',
      'carbonMonoxide-within',
    ],
    ['carbon monoxide not analysed', without('carbonMonoxide'), 'undetermined', 'carbonMonoxide-not-analysed'],
    ['oxygen low', with_({ oxygen: oxygen(19.8) }), 'beyond', 'oxygen-beyond'],
    [
      'oxygen near its lower end',
      with_({ oxygen: oxygen(20.1) }),
      'undetermined',
      'oxygen-within-uncertainty-of-limit',
    ],
    ['oxygen high', with_({ oxygen: oxygen(22.3) }), 'beyond', 'oxygen-beyond'],
    [
      'oxygen near its upper end',
      with_({ oxygen: oxygen(21.9) }),
      'undetermined',
      'oxygen-within-uncertainty-of-limit',
    ],
    ['carbon dioxide above', with_({ carbonDioxide: trace(560, 10) }), 'beyond', 'carbonDioxide-beyond'],
    ['oil above', with_({ oil: mass(0.7, 0.05) }), 'beyond', 'oil-beyond'],
    ['oil as a fraction', with_({ oil: trace(0.1) }), 'undetermined', 'oil-not-comparable'],
    ['water above at the outlet', with_({ water: mass(30, 2) }), 'beyond', 'water-beyond'],
    [
      'the same water in a cylinder of 200 bar',
      { ...with_({ water: mass(30, 2) }), sample: { from: 'cylinder', pressure: absolute(200, bar) } },
      'within',
      '',
    ],
    [
      '40 mg in one of 300 bar',
      { ...with_({ water: mass(40, 1) }), sample: { from: 'cylinder', pressure: absolute(300, bar) } },
      'beyond',
      'water-beyond',
    ],
    [
      'a cylinder below the pressures of the rule',
      { sample: { from: 'cylinder', pressure: absolute(20, bar) } },
      'undetermined',
      'water-limit-not-known-here',
    ],
    ['odour slight', { odour: 'slight' }, 'beyond', 'odour-beyond'],
    ['odour objectionable', { odour: 'objectionable' }, 'beyond', 'odour-beyond'],
    ['one above and one not analysed', { ...without('water'), ...{ odour: 'slight' } }, 'beyond', 'odour-beyond'],
  ] as const)('%s: %s', (_, change, wanted, code) => {
    const found = verdict(change as Partial<AirAnalysis>)
    expect(found?.verdict).toBe(wanted)
    if (wanted !== 'within') expect(found?.because[0]?.code).toBe(code)
    else if (code !== '') expect(found?.because.map((reason) => reason.code)).toContain(code)
    expect(found?.cautions).toEqual(['breathing-air', 'carbon-monoxide'])
    for (const { text } of found?.because ?? []) expect(text).not.toMatch(/\bsafe/i)
  })

  test('odour not recorded is a doubt where the rule limits it, and none where it does not', () => {
    const { sample, measured } = good
    const unsmelt = { sample, measured }
    const at = (rule: PurityRuleId) => assessAnalysis(unsmelt, [rule], options)[0]
    expect(at('en-12021-2014')?.because[0]?.code).toBe('odour-not-checked')
    expect(at('csa-z180-1-1985')?.verdict).toBe('within')
  })

  test('a slight odour passes where the rule bears it', () => {
    expect(verdict({ odour: 'slight' }, 'us-grade-e-2011')?.verdict).toBe('within')
    expect(verdict({ odour: 'objectionable' }, 'us-grade-e-2011')?.verdict).toBe('beyond')
  })

  test('a rule made for shallow use says so, and lets nothing pass deeper', () => {
    expect(verdict({}, 'en-12021-1999')?.verdict).toBe('within')
    expect(verdict({}, 'en-12021-1999', { breathedAt: absolute(5, bar) })?.verdict).toBe('within')
    expect(verdict({}, 'en-12021-1999', { breathedAt: absolute(7, bar) })?.because[0]?.code).toBe(
      'beyond-scope-of-rule',
    )
    expect(verdict({}, 'en-12021-1999', { breathedAt: absolute(7, bar) })?.verdict).toBe('undetermined')
  })

  test('the same air passes some rules and not others: seven ppm of carbon monoxide', () => {
    const rules = Object.keys(purityRules) as PurityRuleId[]
    const change = {
      ...with_({ carbonMonoxide: trace(7, 0.1) }),
      sample: { from: 'cylinder', pressure: absolute(200, bar) },
    } as const
    const found = assessAnalysis({ ...good, ...change }, rules, options)
    expect(Object.fromEntries(found.map(({ rule, verdict: of }) => [rule, of]))).toEqual({
      'en-12021-2014': 'beyond',
      'en-12021-1999': 'undetermined', // water is limited at the outlet alone
      'uk-diving-regulator': 'beyond',
      'as-nzs-2299-1-2015': 'beyond',
      'norway-5-5': 'within',
      'us-grade-d': 'within',
      'us-grade-e-2011': 'within',
      'us-commercial-diving': 'within',
      'csa-z180-1-1985': 'beyond',
      'oxygen-compatible-trade': 'beyond',
    })
  })

  test('mass per volume is taken to the state that the rule names', () => {
    // 0.49 mg in a cubic metre at 0 °C and 1 atm are 0.457 at 15 °C and 1 bar
    const change = with_({ oil: mass(0.49, 0.01) })
    expect(verdict(change, 'as-nzs-2299-1-2015', { reference: normalCondition })?.verdict).toBe('within')
    expect(verdict(change, 'en-12021-2014', { reference: normalCondition })?.verdict).toBe('undetermined')
  })

  test('carbon monoxide may come as mass, and counts as the same fraction', () => {
    const as = (reference: typeof roomCondition | typeof isoStandard) =>
      traceConcentration(fractionOf(4, partPerMillion), { molarMass: traceMolarMasses.carbonMonoxide, reference }) * 1e6
    for (const reference of [roomCondition, isoStandard]) {
      const found = verdict(with_({ carbonMonoxide: mass(as(reference)) }), 'us-commercial-diving', { reference })
      expect(found?.because.find(({ code }) => code === 'carbonMonoxide-within')?.text).toMatch(
        /: 4 ± 0 ppm, limit 20 ppm/,
      )
    }
  })

  test('an oxygen-compatible verdict carries its caution, and fails air that passes a breathing rule', () => {
    const found = verdict(with_({ oil: mass(0.2, 0.01) }), 'oxygen-compatible-trade')
    expect(found?.verdict).toBe('beyond')
    expect(found?.cautions).toContain('oxygen-handling')
    expect(verdict(with_({ oil: mass(0.2, 0.01) }))?.verdict).toBe('within')
  })
})

test('rules and reference are asked for, and nothing unknown passes', () => {
  expect(refused(() => assessAnalysis(good, [], options))).toBe('input rules')
  expect(refused(() => assessAnalysis(good, ['constructor' as never], options))).toBe('input rules[0]')
  expect(refused(() => assessAnalysis(good, ['iso-8573-1' as never], options))).toBe('input rules[0]')
  expect(refused(() => assessAnalysis(good, ['norway-5-5'], {} as never))).toBe('input options.reference')
  expect(refused(() => verdict(with_({ carbonmonoxide: trace(1) } as never)))).toBe(
    'input analysis.measured.carbonmonoxide',
  )
  expect(refused(() => verdict(with_({ oil: { ...trace(1), ...mass(1) } as never })))).toBe(
    'input analysis.measured.oil',
  )
  expect(refused(() => verdict(with_({ oil: { fraction: fractionOf(0.1) } as never })))).toBe(
    'input analysis.measured.oil.standardUncertainty',
  )
  expect(refused(() => verdict(with_({ water: { concentration: Number.NaN, standardUncertainty: 0 } as never })))).toBe(
    'range analysis.measured.water.concentration',
  )
  expect(refused(() => verdict({ sample: { from: 'cylinder' } as never }))).toBe('input analysis.sample.pressure')
  expect(refused(() => verdict({ odour: 'bad' as never }))).toBe('input analysis.odour')
})

test.each([
  [8, 0.1, 'within'],
  [8, 0.5, 'undetermined'],
  [9, 0.1, 'beyond'],
  [8.34, 2, 'beyond'],
] as const)('%d ± %d ppm of carbon monoxide at 6 bar against 5 Pa: %s', (ppm, doubt, wanted) => {
  const gas = {
    fraction: fractionOf(ppm, partPerMillion),
    standardUncertainty: fractionOf(doubt, partPerMillion),
    pressure: absolute(6, bar),
    surfacePressure: absolute(1, bar),
  }
  expect(assessContaminantAtDepth(gas, partialPressureLimits.carbonMonoxide).verdict).toBe(wanted)
})

test.each([
  [['separator', 'molecular-sieve', 'catalyst', 'activated-carbon', 'dust-filter'], 'within', undefined],
  [['separator', 'molecular-sieve', 'activated-carbon', 'dust-filter'], 'beyond', 'carbon-monoxide-passes'],
  [['separator', 'catalyst', 'molecular-sieve', 'activated-carbon'], 'beyond', 'catalyst-not-dry'],
  [['separator', 'catalyst', 'activated-carbon'], 'beyond', 'water-vapour-passes'],
  [['molecular-sieve', 'separator', 'catalyst', 'activated-carbon'], 'beyond', 'bed-meets-liquid'],
] as const)('filters %j: %s', (stages, wanted, code) => {
  const found = assessFilters(stages as readonly FilterStageId[], ['carbon-monoxide', 'water-vapour', 'oil-vapour'])
  expect(found.verdict).toBe(wanted)
  if (code !== undefined) expect(found.because[0]?.code).toBe(code)
  expect(found.cautions).toContain('carbon-monoxide')
})

test('unknown filters are refused', () => {
  expect(refused(() => assessFilters(['charcoal' as never], ['odour']))).toBe('input stages[0]')
  expect(refused(() => assessFilters(['separator'], ['toString' as never]))).toBe('input against[0]')
})
