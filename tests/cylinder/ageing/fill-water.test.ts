import { expect, test } from 'vitest'
import { fillWater } from '../../../src/cylinder/ageing/index.ts'
import { dryAir, molarDensity, pressureAtDensity, saturatedWaterFraction } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  fractionOf,
  internalVolumeOf,
  inUnit,
  litre,
  milligram,
  partPerMillion,
  temperatureOf,
} from '../../../src/units/index.ts'

const filled = {
  internalVolume: internalVolumeOf(12, litre),
  pressure: absolute(201, bar),
  temperature: temperatureOf(20, celsius),
}
const part = (name: string, t: number): { name: string; temperature: ReturnType<typeof temperatureOf> } => ({
  name,
  temperature: temperatureOf(t, celsius),
})

test('50 mg/m³ of delivered air leave about 116 mg in a 12 L cylinder at 200 bar, dry at 4 °C, frost on a colder valve', () => {
  // 67 ppm is 50 mg/m³ at 20 °C and 1 atm; 12 L at 201 bar hold 96 mol of air, 67e-6 × 18.015 g of water per mole of it.
  const fill = fillWater({
    ...filled,
    waterFraction: fractionOf(67, partPerMillion),
    parts: [part('wall', 4), part('valve', -5)],
  })
  const moles = filled.internalVolume * molarDensity(dryAir, filled.pressure, filled.temperature)
  expect(inUnit(fill.water, milligram)).toBeCloseTo(moles * 67e-6 * 18015.268, 6)
  expect(fill.sites.map(({ name, as }) => [name, as])).toEqual([['valve', 'ice']])
  expect(inUnit(fill.dewPoint.temperature, celsius)).toBeLessThan(4)
})

test('a site takes what is above saturation there, at the pressure that the cold gas has', () => {
  const waterFraction = fractionOf(400, partPerMillion)
  const fill = fillWater({ ...filled, waterFraction, parts: [part('wall', 6)] })
  const cold = temperatureOf(6, celsius)
  const density = molarDensity(dryAir, filled.pressure, filled.temperature)
  const there = pressureAtDensity(dryAir, { molarDensity: density, temperature: cold })
  const held = saturatedWaterFraction({ temperature: cold, pressure: there })
  const [site] = fill.sites
  expect(site?.as).toBe('water')
  // Per mole of gas: dry gas stays, so the water left is (1 - x) x_s / (1 - x_s).
  expect((site?.settled ?? 0) / fill.water).toBeCloseTo(
    1 - ((1 - waterFraction) * held) / (1 - held) / waterFraction,
    9,
  )
})

test('coldest first, and warm parts stay dry', () => {
  const waterFraction = fractionOf(1000, partPerMillion)
  const fill = fillWater({
    ...filled,
    waterFraction,
    parts: [part('wall', 10), part('neck', 3), part('foot', 60), part('valve', -10)],
  })
  expect(fill.sites.map(({ name }) => name)).toEqual(['valve', 'neck', 'wall'])
  const amounts = fill.sites.map(({ settled }) => settled)
  expect([...amounts].sort((a, b) => b - a)).toEqual(amounts)
})

test('a fraction given in parts per million is refused', () => {
  expect(() => fillWater({ ...filled, waterFraction: 67 as never })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'waterFraction' }),
  )
})
