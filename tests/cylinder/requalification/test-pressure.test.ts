import { expect, test } from 'vitest'
import {
  type RuleSetId,
  ruleSetIds,
  testPressure,
  testPressureRules,
} from '../../../src/cylinder/requalification/index.ts'
import { bar, gauge, inUnit, psi } from '../../../src/units/index.ts'

type Marks = Parameters<typeof testPressure>[0]

const bars = (marks: Marks, ruleSet?: RuleSetId): [number | undefined, string] => {
  const { pressure, basis } = testPressure(marks, ruleSet === undefined ? {} : { ruleSet })
  return [pressure === undefined ? undefined : Number(inUnit(pressure, bar).toFixed(1)), basis]
}
const at = (system: NonNullable<Marks['system']>, working: number, tested?: number): Marks => ({
  system,
  workingPressure: gauge(working, bar),
  ...(tested === undefined ? {} : { testPressure: gauge(tested, bar) }),
})

// 49 CFR 180.209 table 1, foreign cylinder: 5/3 of the marked pressure at least. 5/3 of 200 bar is 333.3, of 232 386.7, by hand.
test.each<[string, Marks, RuleSetId | undefined, [number | undefined, string]]>([
  ['foreign, old, 200/300, US rule', at('METRIC-OLD', 200, 300), 'us-180.209', [333.3, 'rule set']],
  ['foreign, pi, 200/300, US rule', at('EU-pi', 200, 300), 'us-180.209', [333.3, 'rule set']],
  ['foreign, ADR, 232/348, US rule', at('ADR', 232, 348), 'us-180.209', [386.7, 'rule set']],
  ['foreign, no test pressure marked, US rule', at('METRIC-OLD', 200), 'us-180.209', [333.3, 'rule set']],
  ['foreign, marked just below, US rule', at('METRIC-OLD', 200, 332), 'us-180.209', [333.3, 'rule set']],
  ['foreign, marked at it, rounded, US rule', at('METRIC-OLD', 200, 333), 'us-180.209', [333, 'marked']],
  ['foreign, marked above, US rule', at('METRIC-OLD', 200, 350), 'us-180.209', [350, 'marked']],
  ['UN has its own table, US rule', at('UN', 200, 300), 'us-180.209', [300, 'marked']],
  ['UN, US rule for UN', at('UN', 200, 300), 'us-180.207', [300, 'marked']],
  ['foreign, no rule set', at('METRIC-OLD', 200, 300), undefined, [300, 'marked']],
  ['foreign, at home', at('METRIC-OLD', 200, 300), 'german-diving', [300, 'marked']],
  [
    'family unknown, US rule',
    { workingPressure: gauge(200, bar), testPressure: gauge(300, bar) },
    'us-180.209',
    [300, 'marked'],
  ],
  [
    'no pressure marked, US rule',
    { system: 'METRIC-OLD', testPressure: gauge(300, bar) },
    'us-180.209',
    [300, 'marked'],
  ],
  [
    'US type, US rule',
    { system: 'US', specification: '3AA', servicePressure: gauge(2400, psi) },
    'us-180.209',
    [275.8, 'derived'],
  ],
  ['New Zealand, UN 200/300', at('UN', 200, 300), 'new-zealand-diving', [333.3, 'rule set']],
  [
    'New Zealand, US 3AL: the same ratio',
    { system: 'US', specification: '3AL', servicePressure: gauge(3000, psi) },
    'new-zealand-diving',
    [344.7, 'derived'],
  ],
  [
    'a permit is not overruled',
    { system: 'US', specification: 'special permit', servicePressure: gauge(3442, psi) },
    'new-zealand-diving',
    [undefined, 'unknown'],
  ],
])('%s', (_name, marks, ruleSet, wanted) => {
  expect(bars(marks, ruleSet)).toEqual(wanted)
})

test('what the mark says is told beside what the rule set asks', () => {
  const { because, ratio, sources, cautions } = testPressure(at('METRIC-OLD', 200, 300), { ruleSet: 'us-180.209' })
  expect(because.map(({ code }) => code)).toEqual(['us-foreign-test-pressure', 'marked-below-derived'])
  expect(because[1]?.text).toBe('by the rule it would be 5/3: 333.3 bar, not the 300.0 bar marked')
  expect([ratio, sources, cautions]).toEqual(['5/3', ['cfr-49-180-209'], ['requalification']])
})

test('no rule set without a row of its own changes what the shoulder says', () => {
  const own = new Set(testPressureRules.map(({ ruleSet }) => ruleSet))
  for (const ruleSet of ruleSetIds)
    expect(bars(at('ADR', 200, 300), ruleSet)).toEqual(own.has(ruleSet) ? [333.3, 'rule set'] : [300, 'marked'])
})

test.each<[unknown, unknown, string]>([
  [null, {}, 'marks'],
  [{ workingPresure: 2e7 }, {}, 'marks.workingPresure'],
  [{ workingPressure: Number.NaN }, {}, 'marks.workingPressure'],
  [{ testPressure: -1 }, {}, 'marks.testPressure'],
  [{}, null, 'options'],
  [{}, { ratio: 1.5 }, 'options.ratio'],
  [{}, { ruleSet: 'constructor' }, 'options.ruleSet'],
  [{}, { permit: {} }, 'options.permit.ratio'],
  [{}, { permit: { ratio: Number.NaN } }, 'options.permit.ratio'],
  [{}, { permit: { ratio: 1 } }, 'options.permit.ratio'],
  [{}, { permit: { ratio: 1.5, designPressure: 0 } }, 'options.permit.designPressure'],
])('bad input %j, %j is refused by name', (marks, options, argument) => {
  expect(() => testPressure(marks as never, options as never)).toThrow(expect.objectContaining({ argument }))
})
