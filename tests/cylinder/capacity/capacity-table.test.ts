import { expect, test } from 'vitest'
import { capacityColumns, capacityTable, ratedCapacity, tradeSizes } from '../../../src/cylinder/index.ts'
import { dryAir, roomCondition } from '../../../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  celsius,
  cubicFoot,
  inUnit,
  kilogram,
  litre,
  psi,
  temperatureOf,
} from '../../../src/units/index.ts'

const condition = {
  mixture: dryAir,
  temperature: temperatureOf(20, celsius),
  ambientPressure: absolute(1, atmosphere),
}
const rows = capacityTable(tradeSizes(), { ...condition, reference: roomCondition })

test('every row of the table is the rated capacity of its cylinder', () => {
  expect(rows).toHaveLength(tradeSizes().length)
  for (const { internalVolume, servicePressure, ...row } of rows) {
    const cylinder = { ...condition, internalVolume, servicePressure }
    expect(row.freeGas).toBe(ratedCapacity(cylinder, { reference: roomCondition }))
    expect(row.idealFreeGas).toBe(ratedCapacity(cylinder, { reference: roomCondition, gas: 'ideal' }))
    expect(row.idealExcess).toBeCloseTo(row.idealFreeGas / row.freeGas - 1, 12)
  }
})

// 1.204 kg/m³: air at 20 °C and 1 atm (ISO 2533 gives 1.225 at 15 °C).
test('the mass of the gas is its free volume times the density of air', () => {
  for (const { freeGas, gasMass } of rows) expect(gasMass / freeGas).toBeCloseTo(1.2046, 3)
})

test('both systems show the same row', () => {
  const twelve = rows.find(({ name }) => name === '12 L, 232 bar')
  if (twelve === undefined) throw new Error('no such row')
  const shown = Object.fromEntries(
    capacityColumns.map(({ key, metric, imperial }) => [
      key,
      [twelve[key] / metric.factor, twelve[key] / imperial.factor],
    ]),
  )
  expect(shown['freeGas']?.[0]).toBeCloseTo(inUnit(twelve.freeGas, litre), 12)
  expect(shown['freeGas']?.[1]).toBeCloseTo(inUnit(twelve.freeGas, cubicFoot), 12)
  expect(shown['servicePressure']?.[1]).toBeCloseTo(inUnit(twelve.servicePressure, psi), 9)
  expect(shown['gasMass']?.[0]).toBeCloseTo(inUnit(twelve.gasMass, kilogram), 12)
})
