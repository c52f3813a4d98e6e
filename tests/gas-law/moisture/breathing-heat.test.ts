import { expect, test } from 'vitest'
import { breathingHeat, diffusionTable, diffusivity, dryAir, gasState, heliox } from '../../../src/gas-law/index.ts'
import { absolute, atmosphere, bar, celsius, litrePerMinute, measure, temperatureOf } from '../../../src/units/index.ts'

const ventilation = {
  mixture: dryAir,
  pressure: absolute(1, atmosphere),
  inspiredTemperature: temperatureOf(20, celsius),
  expiredTemperature: temperatureOf(34, celsius),
  respiratoryMinuteVolume: measure(30, litrePerMinute),
}

test('at the surface warming is flow times density times heat capacity times the difference', () => {
  const { density, isobaricHeatCapacity, molarDensity } = gasState(dryAir, {
    pressure: ventilation.pressure,
    temperature: ventilation.expiredTemperature,
  })
  const perKilogram = (isobaricHeatCapacity * molarDensity) / density
  // 5.3 % of the breath is vapour
  const byHand = (30e-3 / 60) * density * (1 - 0.0528) * perKilogram * 14
  expect(breathingHeat(ventilation).warming / byHand).toBeCloseTo(1, 2)
})

test('humidifying takes the steam table’s water: 37.6 g/m³ at 34 °C, 2.42 MJ/kg', () => {
  const byHand = (30e-3 / 60) * 0.0376 * 2.42e6
  expect(breathingHeat(ventilation).humidifying / byHand).toBeCloseTo(1, 2)
})

test('warming grows with depth, humidifying hardly', () => {
  const deep = breathingHeat({ ...ventilation, pressure: absolute(10, bar) })
  const shallow = breathingHeat(ventilation)
  expect(deep.warming / shallow.warming).toBeGreaterThan(9)
  expect(deep.humidifying / shallow.humidifying).toBeLessThan(1.05)
  expect(deep.total).toBe(deep.warming + deep.humidifying)
})

test('a litre of heliox carries less heat than a litre of air, and hot gas carries none away', () => {
  const heliumMix = breathingHeat({ ...ventilation, mixture: heliox(0.21) })
  expect(heliumMix.warming).toBeLessThan(breathingHeat(ventilation).warming)
  expect(breathingHeat({ ...ventilation, inspiredTemperature: temperatureOf(40, celsius) }).warming).toBeLessThan(0)
})

test('a minute volume in litres per second given as per minute is refused', () => {
  expect(() => breathingHeat({ ...ventilation, respiratoryMinuteVolume: measure(2400, litrePerMinute) })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'respiratoryMinuteVolume' }),
  )
})

// crc-handbook, diffusion in gases
test('diffusivities come out as printed at 0 and 20 °C, and fall in proportion to pressure', () => {
  for (const [pair, row] of Object.entries(diffusionTable)) {
    const name = pair as keyof typeof diffusionTable
    const at = (t: number, atmospheres: number): number =>
      diffusivity(name, { pressure: absolute(atmospheres, atmosphere), temperature: temperatureOf(t, celsius) })
    expect(at(20, 1) * 1e4).toBeCloseTo(row.at20Celsius, 12)
    if (row.at0Celsius !== undefined) expect(at(0, 1) * 1e4).toBeCloseTo(row.at0Celsius, 12)
    expect(at(20, 4)).toBeCloseTo(at(20, 1) / 4, 15)
  }
})
