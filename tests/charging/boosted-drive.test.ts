import { expect, test } from 'vitest'
import { boostedDrive } from '../../src/charging/index.ts'
import { pureGas } from '../../src/gas-law/index.ts'
import { absolute, bar, celsius, internalVolumeOf, litre, measure, one, temperatureOf } from '../../src/units/index.ts'

const booster = {
  sweptVolume: measure(0.1, litre),
  clearance: { clearance: measure(1e-9, one), exponent: measure(1.2, one) },
  areaRatio: measure(40, one),
  drivePressure: absolute(7, bar),
}
const fill = {
  mixture: pureGas('oxygen'),
  temperature: temperatureOf(20, celsius),
  supply: { internalVolume: internalVolumeOf(50, litre), pressure: absolute(100, bar) },
  receiver: { internalVolume: internalVolumeOf(10, litre), pressure: absolute(50, bar) },
  to: absolute(200, bar),
}

test('without clearance the strokes are the logarithm of the draw-down', () => {
  const { strokes, start, supplyPressure, driveGas } = boostedDrive(booster, fill, { gas: 'ideal' })
  const shared = (50 * 100 + 10 * 50) / 60 // ideal gas, both open to each other
  expect(start.supply / 1e5).toBeCloseTo(shared, 9)
  expect(start.receiver / 1e5).toBeCloseTo(shared, 9)
  expect(supplyPressure / 1e5).toBeCloseTo(70, 9)
  // dN = dn/(V p/RT) with p falling by dn RT/V: a closed form, off by the clearance of 1e-9 times the ratio of about 2
  expect(Math.abs(strokes / ((50 / 0.1) * Math.log(shared / 70)) - 1)).toBeLessThan(1e-8)
  expect(driveGas / (strokes * 0.1e-3 * 40 * 7e5)).toBeCloseTo(1, 12)
})

test('clearance and real gas both change the strokes; what flows by itself takes none', () => {
  const wide = { ...booster, clearance: { clearance: measure(0.08, one), exponent: measure(1.2, one) } }
  const ideal = boostedDrive(booster, fill, { gas: 'ideal' }).strokes
  expect(boostedDrive(wide, fill, { gas: 'ideal' }).strokes).toBeGreaterThan(ideal * 1.05)
  expect(boostedDrive(booster, fill).strokes).not.toBeCloseTo(ideal, 0)
  expect(boostedDrive(booster, { ...fill, to: absolute(80, bar) }).strokes).toBe(0)
})

// Brute force: stroke after stroke, each at the pressures that the one before left; a stroke of 0.1 mL is too small to matter.
test('down to a tenth of the swept volume the strokes are those that are counted one by one', () => {
  const tiny = { ...booster, sweptVolume: measure(0.0005, litre) }
  for (const clearance of [0.3, 0.6, 0.63]) {
    const worn = { ...tiny, clearance: { clearance: measure(clearance, one), exponent: measure(1.2, one) } }
    let [supply, receiver] = [(50 * 100 + 10 * 50) / 60, (50 * 100 + 10 * 50) / 60]
    let counted = 0
    while (receiver < 200) {
      const share = 1 + clearance - clearance * (receiver / supply) ** (1 / 1.2)
      const drawn = 0.0005 * share * supply // bar·L
      const isLast = receiver + drawn / 10 > 200
      counted += isLast ? (200 - receiver) / (drawn / 10) : 1
      supply -= drawn / 50
      receiver += drawn / 10
    }
    const { strokes } = boostedDrive(worn, fill, { gas: 'ideal' })
    // a stroke moves 1e-5 of the gas: pressures are those at its start, so the count is off by less than a stroke in a thousand
    expect(Math.abs(strokes / counted - 1)).toBeLessThan(3e-5)
  }
})

test('a booster that stalls on the way is refused, by clearance and by drive', () => {
  const small = { ...fill, supply: { ...fill.supply, internalVolume: internalVolumeOf(18, litre) } }
  const wide = { ...booster, clearance: { clearance: measure(0.2, one), exponent: measure(1.2, one) } }
  expect(() => boostedDrive(wide, small, { gas: 'ideal' })).toThrow(/clearance/)
  const weak = { ...booster, drivePressure: absolute(4, bar) }
  expect(() => boostedDrive(weak, fill)).toThrow(/drive/)
})
