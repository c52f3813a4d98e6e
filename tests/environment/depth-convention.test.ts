import { expect, test } from 'vitest'
import {
  type DepthConvention,
  densityOfConvention,
  depthConventions,
  indicatedDepth,
  pressureAtDepth,
  pressureAtShownDepth,
} from '../../src/environment/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  type Depth,
  depthOf,
  foot,
  inUnit,
  kilogramPerCubicMetre,
  kilopascal,
  measure,
  metre,
} from '../../src/units/index.ts'

const surfacePressure = absolute(1, atmosphere)
const above = (depth: Depth, convention: DepthConvention): number =>
  (pressureAtShownDepth({ depth, surfacePressure, convention }) - surfacePressure) / kilopascal.factor

// Pressure of feet of sea water in kPa, as printed by secondary reports of the naval manual: 3.0643 kPa, 1/33 and 1/33.08 atm
test.each([
  [10, 30.643, 30.704_55, 30.630_29],
  [30, 91.929, 92.113_64, 91.890_87],
  [99, 303.3657, 303.975, 303.2399],
  [132, 404.4876, 405.3, 404.3198],
  [198, 606.7314, 607.95, 606.4797],
])('%d feet of sea water are %d, %d or %d kPa by three conventions', (feet, pounds, thirtyThree, laboratory) => {
  const depth = depthOf(feet, foot)
  const { footOfSeaWaterSixtyFourPound: sixtyFour, footOfSeaWaterThirtyThree: arithmetic } = depthConventions
  // 3.0643 is itself rounded from 3.0643366: 1.2e-5
  expect(above(depth, sixtyFour) / pounds).toBeCloseTo(1, 4)
  expect(Math.abs(above(depth, arithmetic) - thirtyThree)).toBeLessThanOrEqual(5.1e-6)
  expect(
    Math.abs(above(depth, depthConventions.footOfSeaWaterThirtyThreePointZeroEight) - laboratory),
  ).toBeLessThanOrEqual(5.1e-5)
})

test.each([
  [10, 100, 32.633_88],
  [40, 400, 130.5355],
  [60, 600, 195.8033],
])('%d metres of sea water are %d kPa and %d feet of sea water', (metres, pressure, feet) => {
  const depth = depthOf(metres, metre)
  const convention = depthConventions.metreOfSeaWater
  expect(above(depth, convention)).toBeCloseTo(pressure, 9)
  const inFeet = indicatedDepth({
    pressure: pressureAtShownDepth({ depth, surfacePressure, convention }),
    surfacePressure,
    convention: depthConventions.footOfSeaWaterSixtyFourPound,
  })
  expect(inUnit(inFeet, foot) / feet).toBeCloseTo(1, 4) // 3.0643 rounded, as above
})

// I4: depth display of 10 kPa per metre in real water, worked out by another program
test.each([
  [30, 1000, 29.419_95],
  [30, 1025, 30.155_448_75],
])('a display of 10 m for each bar at %d m of %d kg/m³ shows %d m', (depth, density, shown) => {
  const pressure = pressureAtDepth({
    depth: depthOf(depth, metre),
    surfacePressure,
    density: measure(density, kilogramPerCubicMetre),
  })
  const found = indicatedDepth({ pressure, surfacePressure, convention: depthConventions.depthGauge })
  expect(Math.abs(found / shown - 1)).toBeLessThan(1e-12)
})

test('the display convention stands for water of 1019.716 kg/m³, the foot of 64 pounds for 1025.18', () => {
  expect(densityOfConvention(depthConventions.depthGauge) / 1019.716_212_977_928_3).toBeCloseTo(1, 12)
  // 64 lb/ft³ by definition of pound and foot
  expect(densityOfConvention(depthConventions.footOfSeaWaterSixtyFourPound)).toBeCloseTo(
    (64 * 0.453_592_37) / 0.3048 ** 3,
    9,
  )
  expect(densityOfConvention(depthConventions.footOfFreshWater)).toBeCloseTo(1000, 9)
})

test('what a convention shows leads back to the same pressure, whatever the convention', () => {
  const pressure = absolute(7.3, bar)
  for (const convention of Object.values(depthConventions)) {
    const depth = indicatedDepth({ pressure, surfacePressure, convention })
    expect(pressureAtShownDepth({ depth, surfacePressure, convention }) / pressure).toBeCloseTo(1, 14)
  }
})

test('a pressure above the surface shows no depth', () => {
  const convention = depthConventions.metreOfSeaWater
  expect(() => indicatedDepth({ pressure: absolute(0.8, bar), surfacePressure, convention })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'pressure' }),
  )
  expect(() => indicatedDepth({ pressure: Number.NaN as typeof surfacePressure, surfacePressure, convention })).toThrow(
    expect.objectContaining({ code: 'range' }),
  )
})
