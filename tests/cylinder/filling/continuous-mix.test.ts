import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  assessOxygenService,
  continuousMix,
  type OxygenThresholdId,
  oxygenThresholds,
} from '../../../src/cylinder/index.ts'
import { dryAir, nitrox, pureGas } from '../../../src/gas-law/index.ts'
import { sourceOf } from '../../../src/references/index.ts'
import { fractionOf, freeGasFlowOf, inUnit, litrePerMinute } from '../../../src/units/index.ts'
import fixture from '../../fixtures/filling-vectors.json' with { type: 'json' }

const intake = { name: 'intake' }
const flow = (n: number) => freeGasFlowOf(n, litrePerMinute, intake)

test.each(fixture.vectors.filter(({ id }) => id.startsWith('H19')))('$id: $title', ({ in: given, out }) => {
  const { q_total: total, f, f_air: air } = given as { q_total: number; f: number; f_air: number }
  const expected = out as { q_O2: number; q_air: number; df_dq: number }
  const mix = continuousMix({
    totalFlow: flow(total),
    target: { oxygen: fractionOf(f) },
    intake: nitrox(air),
    added: [pureGas('oxygen')],
  })
  expect(inUnit(mix.addedFlows[0] ?? flow(0), litrePerMinute) / expected.q_O2).toBeCloseTo(1, 11)
  expect(inUnit(mix.intakeFlow, litrePerMinute) / expected.q_air).toBeCloseTo(1, 11)
  expect(((mix.oxygenPerFlow[0] ?? 0) * litrePerMinute.factor) / expected.df_dq).toBeCloseTo(1, 11)
})

test('the flows add up and carry the fractions that are wanted', () => {
  assert(
    property(double({ min: 0.1, max: 0.3, noNaN: true }), double({ min: 0.05, max: 0.5, noNaN: true }), (o, share) => {
      const helium = share
      const oxygen = (1 - helium) * 0.2095 + o * 0.1
      const gases = [pureGas('helium'), pureGas('oxygen')]
      const mix = continuousMix({
        totalFlow: flow(250),
        target: { oxygen: fractionOf(oxygen), helium: fractionOf(helium) },
        intake: dryAir,
        added: gases,
      })
      const flows = [...mix.addedFlows, mix.intakeFlow]
      const sum = (of: (k: number) => number): number => flows.reduce((total, q, k) => total + q * of(k), 0) / flow(250)
      const all = [...gases, dryAir]
      expect(sum(() => 1)).toBeCloseTo(1, 12)
      expect(sum((k) => all[k]?.oxygen ?? 0)).toBeCloseTo(oxygen, 12)
      expect(sum((k) => all[k]?.helium ?? 0)).toBeCloseTo(helium, 12)
    }),
  )
})

test('a target leaner than the intake cannot be made by adding oxygen', () => {
  const mixing = {
    totalFlow: flow(200),
    target: { oxygen: fractionOf(0.18) },
    intake: dryAir,
    added: [pureGas('oxygen')],
  }
  expect(() => continuousMix(mixing)).toThrow('would have to be removed')
  expect(() => continuousMix({ ...mixing, added: [] })).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => continuousMix({ ...mixing, totalFlow: flow(0) })).toThrow('totalFlow is 0 L/min')
})

test('one mixture lies within one published threshold of oxygen service and beyond another', () => {
  expect(assessOxygenService([nitrox(0.32)], 'us-diving-equipment').verdict).toBe('within')
  expect(assessOxygenService([nitrox(0.32)], 'us-transport-oxidizer').verdict).toBe('beyond')
  expect(assessOxygenService([nitrox(0.32), pureGas('oxygen')], 'us-diving-equipment').verdict).toBe('beyond')
  // exactly at a threshold is not above it
  expect(assessOxygenService([nitrox(0.4)], 'us-diving-equipment').verdict).toBe('within')
})

test('every threshold names a source and its edition, and is used as printed', () => {
  for (const [id, row] of Object.entries(oxygenThresholds)) {
    const judged = assessOxygenService([dryAir], id as OxygenThresholdId)
    expect(100 * (judged.limit ?? 0)).toBeCloseTo(row.above, 12)
    expect(judged.sources).toEqual([row.source])
    expect(sourceOf(row.source).edition).toBe(row.edition)
  }
})
