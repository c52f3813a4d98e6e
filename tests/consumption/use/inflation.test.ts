import { expect, test } from 'vitest'
import { inflationLegs, inflationUse, type Profile } from '../../../src/consumption/index.ts'
import { dryAir, pureGas } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  barLitre,
  celsius,
  gasVolumeOf,
  inUnit,
  litre,
  measure,
  minute,
  temperatureOf,
} from '../../../src/units/index.ts'
import { atDepth, cylinder } from '../given.ts'

function profile(...metres: readonly number[]): Profile {
  return metres.map((each, i) => ({ time: measure(i, minute), ambientPressure: atDepth(each) }))
}

function space(litres: number) {
  return { volume: gasVolumeOf(litres, litre), temperature: temperatureOf(15, celsius) }
}

function total(legs: ReturnType<typeof inflationLegs>): number {
  return legs.reduce((sum, { pressureVolume }) => sum + inUnit(pressureVolume, barLitre), 0)
}

// engineering vectors C9-2, C9-3
test.each([
  { litres: 8, from: 30, to: 40, gas: 8 },
  { litres: 12, from: 0, to: 60, gas: 72.00000000000001 },
])('C9: $litres L from $from to $to m take $gas bar·L', ({ litres, from, to, gas }) => {
  const used = total(inflationLegs(profile(from, to), space(litres), dryAir))
  expect(used / gas).toBeCloseTo(1, 12)
  expect(used / (to - from)).toBeCloseTo(0.1 * litres, 12)
})

test('every up and down pays again, and the way up gives nothing back', () => {
  const once = total(inflationLegs(profile(0, 20), space(10), dryAir))
  expect(total(inflationLegs(profile(0, 20, 5, 20), space(10), dryAir))).toBeCloseTo(once + 15, 9)
  const up = inflationLegs(profile(20, 5), space(10), dryAir)
  expect(up[0]?.amount).toBe(0)
})

test('a volume that grows on the way takes gas also at one depth', () => {
  const growing = { ...space(0), volume: [gasVolumeOf(2, litre), gasVolumeOf(5, litre)] }
  const [leg] = inflationLegs(profile(10, 10), growing, dryAir)
  expect(inUnit(leg?.pressureVolume ?? measure(0, barLitre), barLitre)).toBeCloseTo(3 * 2.01325, 9)
})

test('an argon bottle pays for suit and device together, and refuses when it is too small', () => {
  const argon = { ...cylinder(0.85, 150), mixture: pureGas('argon') }
  const bottle = { contents: argon, residualPressure: absolute(15, bar) }
  const sink = profile(0, 40)
  const suit = inflationUse(sink, [space(8)], bottle)
  const both = inflationUse(sink, [space(8), space(4)], bottle)
  expect(both.used.amount / suit.used.amount).toBeCloseTo(1.5, 9)
  expect(both.pressureLeft).toBeLessThan(suit.pressureLeft)
  expect(() => inflationUse(profile(0, 60, 0, 60), [space(12)], bottle)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'bottle.contents' }),
  )
})

test('ideal gas leaves what bar·litres say', () => {
  const bottle = { contents: cylinder(2, 100), residualPressure: absolute(10, bar) }
  const { pressureLeft } = inflationUse(profile(0, 40), [space(10)], bottle, { gas: 'ideal' })
  expect(inUnit(pressureLeft, bar)).toBeCloseTo(80, 9)
})

test('a volume missing for a point is refused', () => {
  const short = { ...space(0), volume: [gasVolumeOf(2, litre)] }
  expect(() => inflationLegs(profile(0, 10), short, dryAir)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'space.volume' }),
  )
})
