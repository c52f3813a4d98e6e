import { expect, test } from 'vitest'
import {
  absolute,
  bar,
  celsius,
  dryAir,
  fillsFromBank,
  internalVolumeOf,
  inUnit,
  litre,
  molarDensity,
  plannedFills,
  temperatureOf,
} from '../../src/index.ts'

const warm = temperatureOf(20, celsius)
const of = (litres: number, bars: number) => ({
  internalVolume: internalVolumeOf(litres, litre),
  mixture: dryAir,
  pressure: absolute(bars, bar),
  temperature: warm,
})
const bank = [of(50, 230), of(50, 250)]
const small = { receiver: of(12, 50), target: absolute(200, bar) }
const large = { receiver: of(20, 30), target: absolute(232, bar) }

test('equal fills are counted as fillsFromBank counts them', () => {
  const { filled } = fillsFromBank({ bank, ...small })
  const fills = Array.from({ length: filled + 2 }, () => small)
  for (const order of ['low-to-high', 'best'] as const) {
    const counted = fillsFromBank({ bank, ...small }, { order })
    const plan = plannedFills({ bank, fills: fills.slice(0, counted.filled + 1) }, { order })
    expect([plan.filled, plan.fallsShort]).toEqual([counted.filled, counted.filled])
    expect(plan.fills.at(-1)?.reaches).toBeCloseTo(counted.nextReaches, 6)
    expect(plan.fills.at(-1)?.lacks).toBeCloseTo(counted.nextLacks, 9)
  }
})

test('a bank that will do has no fill that falls short, and lacks nothing', () => {
  const plan = plannedFills({ bank, fills: [small, small] })
  expect([plan.filled, plan.fallsShort, plan.lacks]).toEqual([2, undefined, 0])
  expect(plan.fills.map(({ isFilled, reaches }) => [isFilled, inUnit(reaches, bar)])).toEqual([
    [true, 200],
    [true, 200],
  ])
  expect(plan.cautions).toEqual(['fill-limit', 'hot-fill'])
})

test('one that falls short keeps what it got, and the next one may still be filled', () => {
  const plan = plannedFills({ bank, fills: [large, small] })
  expect([plan.fallsShort, plan.filled]).toEqual([0, 1])
  expect(plan.fills[0]?.lacks).toBeGreaterThan(0)
  expect(plan.lacks).toBe(plan.fills[0]?.lacks)
})

test('no gas is made or lost', () => {
  const plan = plannedFills({ bank, fills: [small, large, small] })
  const density = (pressure: number): number => molarDensity(dryAir, pressure as never, warm)
  const given = bank.reduce(
    (sum, cylinder, k) =>
      sum + cylinder.internalVolume * (density(cylinder.pressure) - density(plan.bankPressures[k] as number)),
    0,
  )
  const taken = [small, large, small].reduce(
    (sum, { receiver }, k) =>
      sum + receiver.internalVolume * (density(plan.fills[k]?.reaches as number) - density(receiver.pressure)),
    0,
  )
  expect(given / taken).toBeCloseTo(1, 9)
})

test('the bank cylinders are opened from low to high, and one that gives nothing is not opened', () => {
  const plan = plannedFills({ bank: [of(50, 250), of(50, 40), of(50, 150)], fills: [small] })
  expect(plan.fills[0]?.order).toEqual([2, 0])
})

test.each([
  [{ bank: [], fills: [small] }, 'plan.bank'],
  [{ bank, fills: [] }, 'plan.fills'],
  [{ bank, fills: [small, { ...small, target: absolute(50, bar) }] }, 'plan.fills[1].target'],
  [{ bank, fills: [{ ...small, target: absolute(501, bar) }] }, 'plan.fills[0].target'],
  [
    { bank, fills: [{ ...small, receiver: { ...small.receiver, pressure: Number.NaN } }] },
    'plan.fills[0].receiver.pressure',
  ],
  [{ bank, fills: [small], targets: 1 }, 'plan.targets'],
])('%# is refused by name', (plan, argument) => {
  expect(() => plannedFills(plan as never)).toThrow(expect.objectContaining({ argument }))
})
