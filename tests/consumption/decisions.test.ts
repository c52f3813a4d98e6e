import { describe, expect, test } from 'vitest'
import { assessMixtures, steadyProfile } from '../../src/consumption/index.ts'
import { nitrox } from '../../src/gas-law/index.ts'
import { absolute, bar, celsius, litrePerMinute, measure, minute, temperatureOf } from '../../src/units/index.ts'
import { decided } from '../fixtures/decision.ts'
import { decisions } from './decisions.ts'
import { cylinder } from './given.ts'

describe.each(Object.entries(decisions))('%s', (_, table) => {
  test.each(table)('%s: %s', (_when, verdict, codes, judged) => {
    expect(decided(judged())).toEqual([verdict, ...codes])
  })
})

test('oxygen at the very limit is within it, on either side', () => {
  const dive = {
    profile: steadyProfile(absolute(2, bar), measure(10, minute)),
    breathing: [{ from: measure(0, minute), respiratoryMinuteVolume: measure(15, litrePerMinute), cylinder: 'back' }],
    cylinders: {
      back: { contents: { ...cylinder(12, 200), mixture: nitrox(0.5) }, residualPressure: absolute(10, bar) },
    },
    breathingGasTemperature: temperatureOf(10, celsius),
  }
  const at = (highest: number, lowest: number) =>
    assessMixtures(dive, { highest: absolute(highest, bar), lowest: absolute(lowest, bar) })
  expect([at(1, 0.2).verdict, at(1.6, 1).verdict]).toEqual(['within', 'within'])
  expect(at(1, 0.2)).toMatchObject({
    value: 1e5,
    limit: 1e5,
    margin: 0,
    cautions: ['oxygen-limits', 'analyse-mixture', 'always'],
    sources: ['us-navy-diving-manual'],
  })
})
