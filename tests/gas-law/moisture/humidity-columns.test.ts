import { expect, test } from 'vitest'
import { rowCodes } from '../../../src/errors/index.ts'
import {
  dewPoint,
  dewPointInto,
  relativeHumidity,
  relativeHumidityInto,
  saturatedWaterFraction,
  saturatedWaterFractionInto,
  waterFractionFromHumidity,
  waterFractionFromHumidityInto,
} from '../../../src/gas-law/index.ts'
import type { AbsolutePressure, Fraction, MoleFraction, Temperature } from '../../../src/units/index.ts'

const rows = 60
const pressurePascal = Float64Array.from({ length: rows }, (_, row) => 1e5 + 3e7 * ((row * 0.618034) % 1))
const temperatureKelvin = Float64Array.from({ length: rows }, (_, row) => 235 + 80 * ((row * 0.414214) % 1))
const humidity = Float64Array.from({ length: rows }, (_, row) => 0.05 + 0.9 * ((row * 0.732051) % 1))
const waterFraction = Float64Array.from({ length: rows }, (_, row) => 2e-5 + 1e-4 * ((row * 0.236068) % 1))
const column = (): Float64Array => new Float64Array(rows)
const codes = (): Uint8Array => new Uint8Array(rows)
const stateAt = (row: number): { readonly pressure: AbsolutePressure; readonly temperature: Temperature } => ({
  pressure: pressurePascal[row] as AbsolutePressure,
  temperature: temperatureKelvin[row] as Temperature,
})
const each = <Value>(of: (row: number) => Value): Value[] => Array.from({ length: rows }, (_, row) => of(row))

test('every row has the bits of the function for one', () => {
  const saturated = { waterFraction: column(), code: codes() }
  saturatedWaterFractionInto(saturated, { pressurePascal, temperatureKelvin })
  expect([...saturated.waterFraction]).toEqual(each((row) => saturatedWaterFraction(stateAt(row))))

  const held = { waterFraction: column(), code: codes() }
  waterFractionFromHumidityInto(held, { relativeHumidity: humidity, pressurePascal, temperatureKelvin })
  expect([...held.waterFraction]).toEqual(
    each((row) => waterFractionFromHumidity({ ...stateAt(row), relativeHumidity: humidity[row] as Fraction })),
  )

  const relative = { relativeHumidity: column(), code: codes() }
  relativeHumidityInto(relative, { waterFraction, pressurePascal, temperatureKelvin })
  expect([...relative.relativeHumidity]).toEqual(
    each((row) => relativeHumidity({ ...stateAt(row), waterFraction: waterFraction[row] as MoleFraction })),
  )

  const dew = { dewPointKelvin: column(), code: codes() }
  dewPointInto(dew, { waterFraction, pressurePascal })
  expect([...dew.dewPointKelvin]).toEqual(
    each(
      (row) =>
        dewPoint({ waterFraction: waterFraction[row] as MoleFraction, pressure: stateAt(row).pressure }).temperature,
    ),
  )
  for (const { code } of [saturated, held, relative, dew]) expect(new Set(code)).toEqual(new Set([rowCodes.good]))
})

test('a row that the function refuses is NaN with the code of the refusal, and the next row is not', () => {
  const columns = {
    relativeHumidity: Float64Array.of(Number.NaN, 1.2, 0.5, 0.5, 0.5),
    pressurePascal: Float64Array.of(1e5, 1e5, 4e7, Number.POSITIVE_INFINITY, 1e5),
    temperatureKelvin: Float64Array.of(293, 293, 293, 293, 293),
  }
  const out = { waterFraction: new Float64Array(5), code: new Uint8Array(5) }
  waterFractionFromHumidityInto(out, columns)
  const { missing, outOfRange, outsideValidity, good } = rowCodes
  expect([...out.code]).toEqual([missing, outOfRange, outsideValidity, outOfRange, good])
  expect([...out.waterFraction].map(Number.isNaN)).toEqual([true, true, true, true, false])
})
