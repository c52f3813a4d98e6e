import { expect, test } from 'vitest'
import { type DissolvedGas, henryConstant } from '../../src/gas-law/index.ts'
import { celsius, kelvin, temperatureOf } from '../../src/units/index.ts'
import fixture from '../fixtures/iapws-g7-04.json' with { type: 'json' }

const names: Record<string, DissolvedGas> = {
  He: 'helium',
  Ne: 'neon',
  Ar: 'argon',
  Kr: 'krypton',
  Xe: 'xenon',
  H2: 'hydrogen',
  N2: 'nitrogen',
  O2: 'oxygen',
  CO: 'carbonMonoxide',
  CO2: 'carbonDioxide',
  H2S: 'hydrogenSulphide',
  CH4: 'methane',
  C2H6: 'ethane',
  SF6: 'sulphurHexafluoride',
}

function logarithm(symbol: string, temperature: number): number {
  const gas = names[symbol]
  if (gas === undefined) throw new Error(`no gas for ${symbol}`)
  return Math.log(henryConstant(gas, temperatureOf(temperature, kelvin)) / 1e9)
}

test.each(fixture.items)('$place: $topic at $given.T_K K, $printed ($id)', ({ topic, given, printed, tolerance }) => {
  const symbol = /^Henry constant of (\w+) in water$/.exec(topic)?.[1] ?? ''
  expect(Math.abs(logarithm(symbol, given.T_K) - printed)).toBeLessThanOrEqual(tolerance)
})

test.each(fixture.gases.rows)('table 6: %s at 300, 400 and 500 K: %d, %d, %d', (symbol, ...printed) => {
  printed.forEach((value, i) => {
    expect(Math.abs(logarithm(String(symbol), 300 + 100 * i) - Number(value))).toBeLessThanOrEqual(0.000_05 + 1e-12)
  })
})

test('all printed rows are there: 14 and six gases', () => {
  expect(fixture.items).toHaveLength(14)
  expect(fixture.gases.rows).toHaveLength(6)
})

test('a gas is refused outside its data, and one that is not in the table by name', () => {
  expect(() => henryConstant('nitrogen', temperatureOf(2, celsius))).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'temperature' }),
  )
  expect(() => henryConstant('air' as DissolvedGas, temperatureOf(20, celsius))).toThrow(
    expect.objectContaining({ code: 'input', argument: 'gas' }),
  )
})
