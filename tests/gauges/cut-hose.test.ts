import { expect, test } from 'vitest'
import { chokedMassFlow } from '../../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  celsius,
  type Fraction,
  type MolarMass,
  measure,
  squareMillimetre,
  temperatureOf,
} from '../../src/units/index.ts'

// Closed form of choked ideal flow, γ 1.4, 287.05 J/(kg K), computed apart from this code; printed to eight digits.
test.each([
  { millimetres: 0.2, bars: 300, kilogramPerSecond: 0.00177974, freeLitres: 88.6829, minutes: 26.7088 },
  { millimetres: 4, bars: 200, kilogramPerSecond: 0.47459854, freeLitres: 23648.7663, minutes: 0.1002 },
])(
  'a cut hose behind a $millimetres mm bore loses what the bore passes',
  ({ millimetres, bars, kilogramPerSecond, freeLitres, minutes }) => {
    const orifice = {
      area: measure((Math.PI / 4) * millimetres ** 2, squareMillimetre),
      dischargeCoefficient: 0.8 as Fraction,
    }
    const flow = chokedMassFlow(orifice, {
      molarMass: (8.31446261815324 / 287.05) as MolarMass,
      heatCapacityRatio: 1.4 as Fraction,
      upstreamTemperature: temperatureOf(20, celsius),
      upstreamPressure: absolute(bars, bar),
    })
    expect(Math.abs(flow / kilogramPerSecond - 1)).toBeLessThan(3e-6)
    // free air at 101 325 Pa and 20 °C; a cylinder of 12 L at 200 bar, at the rate of its first moment
    const free = flow / (101_325 / (287.05 * 293.15))
    expect(Math.abs((free * 60_000) / freeLitres - 1)).toBeLessThan(3e-6)
    expect(Math.abs((12 * 200) / 1.01325 / (free * 60_000) / minutes - 1)).toBeLessThan(minutes < 1 ? 5e-4 : 3e-6)
  },
)
