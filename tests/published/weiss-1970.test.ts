import { expect, test } from 'vitest'
import { practicalSalinityOf } from '../../src/environment/index.ts'
import { airSaturation } from '../../src/gas-law/index.ts'
import { celsius, temperatureOf } from '../../src/units/index.ts'
import fixture from '../fixtures/solubility.json' with { type: 'json' }

const names: Record<string, 'oxygen' | 'nitrogen' | 'argon'> = { O2: 'oxygen', N2: 'nitrogen', Ar: 'argon' }

test.each(fixture.items)('$place: $topic, $given: $printed $unit ($id)', ({ topic, given, printed, tolerance }) => {
  const gas = names[topic.split(' ')[2] ?? '']
  if (gas === undefined) throw new Error(`no gas in ${topic}`)
  const water = { temperature: temperatureOf(given.t_C, celsius), salinity: practicalSalinityOf(given.S) }
  expect(Math.abs(1000 * airSaturation(gas, water) - printed)).toBeLessThanOrEqual(tolerance)
})

test('all printed rows are there: 19', () => {
  expect(fixture.items).toHaveLength(19)
})
