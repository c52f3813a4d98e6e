import { readdirSync, readFileSync } from 'node:fs'
import { Decimal as DecimalDefault } from 'decimal.js'
import { expect, test } from 'vitest'
import { exactDefinition, toExact } from '../../src/units/exact.ts'
import * as units from '../../src/units/index.ts'
import {
  allUnits,
  bar,
  dimensions,
  type MeasuredDimension,
  type ParsedKind,
  parseQuantity,
  psi,
  type Unit,
} from '../../src/units/index.ts'

// exact: a double has at most 53 binary digits, and its decimal expansion needs fewer than 100 digits here
const Decimal = DecimalDefault.clone({ precision: 120, defaults: true })
const exactly = (double: number): DecimalDefault => new Decimal(double.toPrecision(100))

const kindOf: Partial<Record<string, ParsedKind>> = {
  pressure: 'pressure difference',
  temperature: 'temperature',
}

function ulp(x: number): number {
  const bits = new BigInt64Array(new Float64Array([Math.abs(x)]).buffer)
  bits[0] = (bits[0] ?? 0n) + 1n
  return (new Float64Array(bits.buffer)[0] ?? 0) - Math.abs(x)
}

test.each(allUnits.map((unit) => [`${unit.symbol} (${unit.quantity})`, unit] as const))(
  '%s: the factor is the double nearest to its definition',
  (_, unit) => {
    const { factor, offset } = exactDefinition(unit)
    expect(exactly(unit.factor).minus(factor.toString()).abs().toNumber()).toBeLessThanOrEqual(0.5 * ulp(unit.factor))
    expect(
      exactly(unit.offset ?? 0)
        .minus(offset.toString())
        .abs()
        .toNumber(),
    ).toBeLessThanOrEqual(0.5 * ulp(unit.offset ?? 0))
    expect(Object.keys(dimensions)).toContain(unit.quantity)
  },
)

test('symbol and every spelling read back as their own unit', () => {
  for (const unit of allUnits) {
    for (const spelling of [unit.symbol, ...(unit.spellings ?? [])]) {
      const kind = kindOf[unit.quantity] ?? (unit.quantity as MeasuredDimension)
      const expected = unit.factor + (unit.offset ?? 0)
      expect(parseQuantity(`1 ${spelling}`, kind), `1 ${spelling}`).toBe(expected)
    }
  }
})

test('no spelling is claimed twice within a dimension', () => {
  const claims = allUnits.flatMap((unit) =>
    [unit.symbol, ...(unit.spellings ?? [])].map((spelling) => `${unit.quantity}: ${spelling}`),
  )
  expect(claims.filter((claim, at) => claims.indexOf(claim) !== at)).toEqual([])
})

test('every unit row of the room is in the list of all units, and is public', () => {
  const folder = new URL('../../src/units/', import.meta.url)
  const named = readdirSync(folder)
    .flatMap((file) => [...readFileSync(new URL(file, folder), 'utf8').matchAll(/^export const (\w+): Unit</gm)])
    .map(([, name = '']) => name)
  expect(named.length).toBeGreaterThan(100)
  const exported = units as unknown as Record<string, Unit | undefined>
  for (const name of named) expect(allUnits, name).toContain(exported[name])
  expect(named).toHaveLength(allUnits.length)
})

test('converts decimal text exactly, and says so where a unit has no definition', () => {
  // 1 lb = 0.45359237 kg, 1 in = 0.0254 m, standard gravity 9.80665 m/s² (nist-sp-811, appendix B)
  expect(toExact('3000', psi, bar).toFixed(30)).toBe('206.842718795050840101680203360407')
  expect(() => toExact('3000', { symbol: 'own', quantity: 'pressure', factor: 3 }, bar)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'unit' }),
  )
  expect(() => toExact('three', psi, bar)).toThrow(expect.objectContaining({ code: 'input', argument: 'n' }))
})
