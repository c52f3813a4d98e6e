import { expect, test } from 'vitest'
import {
  dryAir,
  enrichedAir,
  gases,
  heliox,
  mixture,
  modelUncertainty,
  nitrox,
  pureGas,
  trimix,
  uncertaintyClasses,
} from '../../../src/gas-law/index.ts'
import { sources } from '../../../src/references/index.ts'
import published from '../../fixtures/gas-published.json' with { type: 'json' }

test.each([
  ['air', dryAir, 0.001],
  ['nitrox 32', nitrox(0.32), 0.001],
  ['enriched air 40', enrichedAir(0.4), 0.001],
  ['oxygen', pureGas('oxygen'), 0.003],
  ['trimix 18/45', trimix({ oxygen: 0.18, helium: 0.45 }), 0.007],
  ['trimix 10/70', trimix({ oxygen: 0.1, helium: 0.7 }), 0.007],
  ['heliox 21/79', heliox(0.21), 0.01],
  ['helium', pureGas('helium'), 0.002],
  ['helium and argon', mixture({ helium: 0.8, argon: 0.2 }), 0.06],
  ['hydrogen and oxygen', mixture({ hydrogen: 0.96, oxygen: 0.04 }), 0.06],
] as const)('%s is known within the figure of its class', (_, gas, expanded) => {
  const uncertainty = modelUncertainty(gas)
  expect(uncertainty.expanded).toBe(expanded)
  expect(uncertainty.standard).toBe(expanded / 2)
})

test('the eight pairs without measurements are named, and no other', () => {
  const all = mixture(Object.fromEntries(gases.map((gas) => [gas, 1])), { normalise: true })
  const { fittedPairs, unfittedPairs } = modelUncertainty(all)
  expect(fittedPairs).toHaveLength(13)
  expect(unfittedPairs.map(({ gases: pair }) => pair.toSorted().join('–')).toSorted()).toEqual([
    'argon–helium',
    'argon–hydrogen',
    'carbonDioxide–oxygen',
    'helium–hydrogen',
    'helium–oxygen',
    'helium–water',
    'hydrogen–oxygen',
    'hydrogen–water',
  ])
})

test('the weightiest pair comes first', () => {
  const { fittedPairs } = modelUncertainty(dryAir)
  expect(fittedPairs[0]?.gases).toEqual(['nitrogen', 'oxygen'])
  expect(fittedPairs[0]?.weight).toBeCloseTo(2 * 0.7808 * 0.2095, 14)
})

test('every class has a figure, a reason and a source of the registry; the last holds anything', () => {
  for (const { expanded, basis, sources: ids } of uncertaintyClasses) {
    expect(expanded).toBeGreaterThan(0)
    expect(basis).not.toBe('')
    for (const id of ids) expect(sources).toHaveProperty(id)
  }
  expect(uncertaintyClasses.at(-1)).not.toHaveProperty('atMost')
})

// The figures are no smaller than what the comparison with reference equations shows, up to 300 bar
test('the reference equations of pure gases and air lie within the stated uncertainty', () => {
  const rows = published.referenceEquations.filter(({ gas, p }) => p <= 30_000 && !gas.includes('/'))
  expect(rows.length).toBeGreaterThan(20)
  for (const { x, gas, p, T, rhoRef, rhoGERG } of rows) {
    const stated: number = modelUncertainty(mixture(x)).expanded
    expect(Math.abs(rhoGERG / rhoRef - 1), `${gas} ${T} K ${p} kPa`).toBeLessThan(stated)
  }
})
