import { expect, test } from 'vitest'
import { peakDemand, type SharingBreather, twoBreathers } from '../../../src/regulator-performance/index.ts'
import {
  type Duration,
  type FlowResistance,
  type Fraction,
  kilopascalSecondPerLitre,
  measure,
  second,
  type VolumeFlow,
} from '../../../src/units/index.ts'

const sinusoid = (litres: number, seconds: number, points = 720, peak = 1000): SharingBreather => {
  const angle = Array.from({ length: points }, (_, row) => (2 * Math.PI * row) / points)
  return {
    loop: {
      volume: angle.map((a) => (litres / 2000) * (1 - Math.cos(a))),
      pressure: angle.map((a) => -peak * Math.sin(a)),
    },
    duration: measure(seconds, second),
  }
}
const coupling = measure(0.1, kilopascalSecondPerLitre)

test('equal sinusoids cost π²/4 of the ventilation more in step, and the ventilation itself in the mean', () => {
  const breather = sinusoid(2.5, 2.4)
  const ventilation = 0.0025 / 2.4
  const { first, second: other, peakFlow } = twoBreathers(breather, breather, coupling)
  const added = (work: number) => (work - first.aloneWorkPerLitre) / (coupling * ventilation)
  expect(first.aloneWorkPerLitre / 1000).toBeCloseTo(Math.PI / 2, 4)
  expect(added(first.meanWorkPerLitre)).toBeCloseTo(1, 4)
  expect(added(first.worstWorkPerLitre)).toBeCloseTo((Math.PI * Math.PI) / 4, 4)
  expect(first.worstPhase).toBe(0)
  expect(first.worstInhalationPressure).toBeCloseTo(-1000 - coupling * Math.PI * ventilation, 0)
  expect(other).toEqual(first)
  // the sum of two rectified sinusoids, as `peakDemand` has it in closed form
  const closed = peakDemand(ventilation as VolumeFlow, 'random')
  expect(peakFlow.mean).toBeCloseTo(closed.peakFlow, 6)
  expect(peakFlow.worst).toBeCloseTo(peakDemand(ventilation as VolumeFlow, { shift: 0 as Fraction }).peakFlow, 6)
})

test('rates that differ: the mean is the ventilation of the other, and a breath half as long drawn at its fullest is the worst', () => {
  const slow = sinusoid(3, 4)
  const fast = sinusoid(1, 2)
  const { first, second: quick } = twoBreathers(slow, fast, coupling)
  expect(first.meanWorkPerLitre - first.aloneWorkPerLitre).toBeCloseTo(coupling * 0.0005, 1)
  expect(quick.meanWorkPerLitre - quick.aloneWorkPerLitre).toBeCloseTo(coupling * 0.00075, 1)
  // the fast inhalation falls on the middle of the slow one: ∫ sin(x) sin(x/2 + π/4) dx from 0 to π, with both peaks
  const peaks = Math.PI * 0.0005 * (Math.PI * 0.00075)
  const overlap = (1 / Math.PI) * integral((x) => Math.sin(x) * Math.sin(x / 2 + Math.PI / 4), 0, Math.PI)
  expect(quick.worstWorkPerLitre - quick.aloneWorkPerLitre).toBeCloseTo((coupling * peaks * overlap) / 0.001, 0)
  expect(quick.worstPhase).toBeCloseTo(1 / 8, 1)
})

function integral(f: (x: number) => number, from: number, to: number): number {
  const steps = 10_000
  const h = (to - from) / steps
  let sum = 0
  for (let step = 0; step < steps; step++) sum += f(from + (step + 0.5) * h) * h
  return sum
}

test('the worst is never below the mean, nor the mean below alone; without coupling nothing changes', () => {
  const { first, second: other } = twoBreathers(sinusoid(2, 3, 100), sinusoid(3, 5.3, 77), coupling)
  for (const breath of [first, other]) {
    expect(breath.worstWorkPerLitre).toBeGreaterThan(breath.meanWorkPerLitre)
    expect(breath.meanWorkPerLitre).toBeGreaterThan(breath.aloneWorkPerLitre)
  }
  const free = twoBreathers(sinusoid(2, 3), sinusoid(3, 5), 0 as FlowResistance)
  expect(free.first.worstWorkPerLitre).toBe(free.first.aloneWorkPerLitre)
})

test('bad input is refused by name', () => {
  const breather = sinusoid(2, 3)
  expect(() => twoBreathers(breather, { ...breather, duration: 0 as Duration }, coupling)).toThrow(/second.duration/)
  expect(() => twoBreathers({ ...breather, time: 1 } as SharingBreather, breather, coupling)).toThrow(/first.time/)
  expect(() => twoBreathers(sinusoid(2, 3, 12), breather, coupling)).toThrow(/first.loop is 12 points/)
  expect(() => twoBreathers(breather, breather, Number.NaN as FlowResistance)).toThrow(/coupling/)
  expect(() => twoBreathers(undefined as never, breather, coupling)).toThrow(/first/)
})
