// Open textbooks of physics (their g is 9.80 m/s²), lecture slides on Archimedes' principle and an open encyclopedia.
import { expect, test } from 'vitest'
import { liftOf, netBuoyancy } from '../../src/buoyancy/index.ts'
import {
  cubicFoot,
  displacedVolumeOf,
  inUnit,
  kilogram,
  kilogramForce,
  kilogramPerCubicMetre,
  litre,
  measure,
  metrePerSecondSquared,
  pound,
  poundForce,
  poundPerCubicFoot,
} from '../../src/units/index.ts'

const gravity = measure(9.8, metrePerSecondSquared)

test('openstax-college-physics, buoyancy, exercise: 8.21 N keep a body of 85 kg and 1015 kg/m³ down in sea water', () => {
  const body = { mass: measure(85, kilogram), displacedVolume: displacedVolumeOf(85_000 / 1015, litre) }
  const force = netBuoyancy(body, { density: measure(1025, kilogramPerCubicMetre), gravity })
  expect(force.toFixed(2)).toBe('8.21')
})

test('openstax-college-physics, buoyancy, worked example: 97 % under fresh water floats a body of 970 kg/m³', () => {
  const floating = { mass: measure(97, kilogram), displacedVolume: displacedVolumeOf(97, litre) }
  expect(netBuoyancy(floating, { density: measure(1000, kilogramPerCubicMetre), gravity })).toBeCloseTo(0, 9)
})

test('openstax-university-physics, buoyancy, exercise: 96.9 % of a body of 995 kg/m³ is under sea water of 1027', () => {
  const floating = { mass: measure(99.5, kilogram), displacedVolume: displacedVolumeOf(96.9, litre) }
  const force = netBuoyancy(floating, { density: measure(1027, kilogramPerCubicMetre), gravity })
  // half of the last printed digit of 96.9 L
  expect(Math.abs(force)).toBeLessThan(0.05 * 1.027 * 9.8)
})

test('slides: an anchor of 100 lb and 0.22 ft³ weighs 86 lb in sea water of 64 lb/ft³', () => {
  const anchor = { mass: measure(100, pound), displacedVolume: displacedVolumeOf(0.22, cubicFoot) }
  expect(inUnit(netBuoyancy(anchor, { density: measure(64, poundPerCubicFoot) }), poundForce).toFixed(0)).toBe('-86')
})

test('slides: 3.1 ft³ of fresh water of 62.4 lb/ft³ weigh 193.4 lb', () => {
  const lift = liftOf(displacedVolumeOf(3.1, cubicFoot), { density: measure(62.4, poundPerCubicFoot) })
  expect(inUnit(lift, poundForce).toFixed(1)).toBe('193.4')
})

test('open-encyclopedia, lift bags: 50 kg that push aside 20 L weigh 29.4 kg in sea water of 1.03 kg/L', () => {
  const item = { mass: measure(50, kilogram), displacedVolume: displacedVolumeOf(20, litre) }
  const force = netBuoyancy(item, { density: measure(1030, kilogramPerCubicMetre) })
  expect(inUnit(force, kilogramForce).toFixed(1)).toBe('-29.4')
})
