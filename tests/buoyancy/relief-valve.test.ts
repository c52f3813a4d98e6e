import { expect, test } from 'vitest'
import { assessReliefValve, bubbleHead } from '../../src/buoyancy/index.ts'
import {
  difference,
  kilogramPerCubicMetre,
  kilopascal,
  litrePerMinute,
  measure,
  metre,
  pascal,
} from '../../src/units/index.ts'

const sea = { density: measure(1025, kilogramPerCubicMetre) }

// engineering vector B4-1
test('B4-1: a bubble 0.35 m below the valve presses 3518 Pa on it, 10 482 Pa short of opening', () => {
  const head = bubbleHead(measure(0.35, metre), sea)
  expect(head / 3518.1356874999997).toBeCloseTo(1, 12)
  expect((difference(14_000, pascal) - head) / 10_481.8643125).toBeCloseTo(1, 12)
})

const valve = {
  opensAt: difference(14, kilopascal),
  height: measure(0.35, metre),
  ventFlow: measure(400, litrePerMinute),
}

test('a valve that lets out less than the inflator lets in is beyond, whatever its setting', () => {
  const weak = assessReliefValve(valve, measure(500, litrePerMinute), sea)
  expect(weak.verdict).toBe('beyond')
  expect(weak.because.map(({ code }) => code)).toEqual(['inflator-wins', 'shut-at-rest'])
  expect(assessReliefValve(valve, measure(400, litrePerMinute), sea).verdict).toBe('within')
})

test('a valve that the height of the bubble alone opens is beyond', () => {
  const soft = { ...valve, opensAt: difference(3, kilopascal) }
  const { verdict, because, cautions } = assessReliefValve(soft, measure(100, litrePerMinute), sea)
  expect(verdict).toBe('beyond')
  expect(because.map(({ code }) => code)).toEqual(['opens-at-rest', 'vents-inflator'])
  expect(cautions).toContain('buoyancy')
})

// Both conditions, both ways, and each at its limit.
test.each([
  { vents: 300, inflator: 250, opens: 4, verdict: 'within' },
  { vents: 250, inflator: 250, opens: 4, verdict: 'within' },
  { vents: 249.9, inflator: 250, opens: 4, verdict: 'beyond' },
  { vents: 300, inflator: 250, opens: 3, verdict: 'beyond' },
  { vents: 200, inflator: 250, opens: 3, verdict: 'beyond' },
] as const)('vents $vents of $inflator L/min, opens at $opens kPa under 0.35 m: $verdict', (given) => {
  const valve = {
    opensAt: difference(given.opens, kilopascal),
    height: measure(0.35, metre),
    ventFlow: measure(given.vents, litrePerMinute),
  }
  const sea = { density: measure(1025, kilogramPerCubicMetre) }
  const found = assessReliefValve(valve, measure(given.inflator, litrePerMinute), sea)
  expect(found.verdict).toBe(given.verdict)
  expect(found.cautions).toEqual(['buoyancy', 'always'])
})
