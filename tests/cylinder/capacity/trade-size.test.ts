import { expect, test } from 'vitest'
import { compareRatedCapacity, tradeSizeReadings } from '../../../src/cylinder/index.ts'
import { dryAir, roomCondition } from '../../../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  celsius,
  cubicFoot,
  freeGasOf,
  gauge,
  inUnit,
  litre,
  psi,
  temperatureOf,
} from '../../../src/units/index.ts'

const condition = {
  servicePressure: gauge(3000, psi),
  ambientPressure: absolute(1, atmosphere),
  temperature: temperatureOf(20, celsius),
  mixture: dryAir,
}
const reference = { reference: roomCondition }
const sized = (cubicFeet: number) =>
  tradeSizeReadings({ ...condition, ratedCapacity: freeGasOf(cubicFeet, cubicFoot, roomCondition) }, reference)

test('80 cubic feet at 3000 psi as volume times gauge pressure is 11.098 L of water, by hand', () => {
  // 80 ft³ = 2265.348 L; 3000 psi = 204.138 atm; 2265.348 / 204.138 = 11.0971
  const product = sized(80).find(({ countedBy }) => countedBy === 'volume times gauge pressure')
  expect(inUnit(product?.internalVolume ?? (0 as never), litre)).toBeCloseTo(11.097, 3)
})

test('80 cubic feet at 3000 psi by the ideal gas is 1/205.138 of its free gas, by hand', () => {
  // absolute pressure over reference pressure: 204.138 + 1
  const ideal = sized(80).find(({ countedBy }) => countedBy === 'ideal gas')
  expect(inUnit(ideal?.internalVolume ?? (0 as never), litre)).toBeCloseTo(2265.348 / 205.138, 3)
})

test('the largest volume is that of the real gas, and only it holds the trade size', () => {
  const readings = sized(80)
  expect(readings[0]?.countedBy).toBe('real gas')
  expect(readings.map(({ freeGas }) => inUnit(freeGas, cubicFoot) > 79.999)).toEqual([true, false, false])
  const volumes = readings.map(({ internalVolume }) => internalVolume)
  expect(volumes).toEqual([...volumes].sort((a, b) => b - a))
})

test('each way of counting is the one that a comparison finds again', () => {
  for (const { countedBy, internalVolume } of sized(80)) {
    const compared = compareRatedCapacity(
      {
        ...condition,
        internalVolume,
        stated: freeGasOf(80, cubicFoot, roomCondition),
        roundedTo: freeGasOf(0.01, cubicFoot, roomCondition),
      },
      reference,
    )
    expect(compared.countedBy).toContain(countedBy)
  }
})

test.each([0, -1, Number.NaN])('a trade size of %d is refused by name', (ratedCapacity) => {
  expect(() => tradeSizeReadings({ ...condition, ratedCapacity: ratedCapacity as never }, reference)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'ratedCapacity' }),
  )
})
