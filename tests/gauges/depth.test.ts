import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type DepthConvention,
  densityOfConvention,
  depthConventions,
  pressureAtDepth,
  type WaterColumn,
} from '../../src/environment/index.ts'
import { rowCodes } from '../../src/errors/index.ts'
import {
  assessSurfaceCheck,
  capillaryReading,
  capillaryResolution,
  capillaryScale,
  capillaryServesTo,
  depthBeforePointerMoves,
  depthErrorOf,
  depthFromPressureInto,
  depthShown,
  pressureBehindDepth,
  remainingEvidence,
  sensorBudget,
  trueDepth,
} from '../../src/gauges/index.ts'
import {
  absolute,
  bar,
  celsius,
  centimetre,
  type Depth,
  day,
  depthOf,
  difference,
  hectopascal,
  inUnit,
  kelvin,
  kilogramPerCubicMetre,
  measure,
  metre,
  millimetre,
  pascal,
  temperatureOf,
} from '../../src/units/index.ts'

const convention: DepthConvention = depthConventions.depthGauge
const seaLevel = absolute(1013.25, hectopascal)
const water = (surface: number, density: number): WaterColumn => ({
  surfacePressure: absolute(surface, pascal),
  density: measure(density, kilogramPerCubicMetre),
})
const at = (metres: number, column: WaterColumn) => pressureAtDepth({ depth: depthOf(metres, metre), ...column })
const sealed = { zeroPressure: seaLevel, convention }

// engineering vectors I2-1 to I2-3 (own closed form, 1e-11)
test.each([
  { depth: 20, surface: 101_325, density: 1025, indicated: 20.1036325, zero: 0 },
  { depth: 20, surface: 80_000, density: 1000, indicated: 17.4808, zero: -2.1325 },
  { depth: 5, surface: 70_000, density: 1000, indicated: 1.770825, zero: -3.1325 },
])(
  'a sealed gauge shows $indicated m at $depth m under $surface Pa',
  ({ depth, surface, density, indicated, zero }) => {
    const column = water(surface, density)
    expect(depthShown(sealed, { pressure: at(depth, column) }).depth / indicated).toBeCloseTo(1, 11)
    const above = depthShown(sealed, { pressure: column.surfacePressure })
    expect(above.depth).toBeCloseTo(zero, 11)
    expect(above.belowZero).toBe(zero < 0)
  },
)

// engineering vectors I4-1, I4-2 (own closed form, 1e-12)
test.each([
  { density: 1000, indicated: 29.41995, error: -0.58005 },
  { density: 1025, indicated: 30.155448749999998, error: 0.15544874999999791 },
])('ten kilopascal for a metre shows $indicated m at 30 m of $density kg/m³', ({ density, indicated, error }) => {
  const column = water(101_325, density)
  const zeroed = { zeroPressure: column.surfacePressure, convention }
  expect(depthShown(zeroed, { pressure: at(30, column) }).depth / indicated).toBeCloseTo(1, 12)
  expect(depthErrorOf(zeroed, { depth: depthOf(30, metre), water: column })).toBeCloseTo(error, 11)
  expect(densityOfConvention(convention) / 1019.7162129779283).toBeCloseTo(1, 12)
})

// engineering vectors I3-2 to I3-4 (own closed form, 1e-11)
test.each([
  {
    depth: 10,
    surface: 80_000,
    density: 1000,
    gas: 0.04492703568610604,
    shown: 12.356707317073171,
    travel: 2.4742650330699583,
  },
  {
    depth: 20,
    surface: 80_000,
    density: 1000,
    gas: 0.0289715463200704,
    shown: 24.713414634146343,
    travel: 1.0289020679155276,
  },
  { depth: 40, surface: 101_325, density: 1025, gas: 0.020128222688365748, shown: 40, travel: 0.40191923006103325 },
])('a capillary shows $shown m at $depth m under $surface Pa', ({ depth, surface, density, gas, shown, travel }) => {
  const tube = { length: measure(10, centimetre), scale: water(101_325, 1025) }
  const reading = capillaryReading(tube, { depth: depthOf(depth, metre), water: water(surface, density) })
  expect(reading.gasLength / gas).toBeCloseTo(1, 11)
  expect(reading.depth / shown).toBeCloseTo(1, 11)
  expect((reading.travelPerMetre * 1000) / travel).toBeCloseTo(1, 11)
  const further = capillaryReading(tube, { depth: depthOf(depth + 1e-4, metre), water: water(surface, density) })
  expect(((reading.gasLength - further.gasLength) / 1e-4) * 1000).toBeCloseTo(travel, 3)
})

// vectors GS-01 to GS-04 (own closed form, 1e-6): three instruments at one true depth
test.each([
  { depth: 30, density: 1025, surface: 101_325, zeroed: 30.15545, sealedShown: 30.15545, capillary: 30.15545 },
  { depth: 20, density: 1000, surface: 84_555.99, zeroed: 19.6133, sealedShown: 17.9364, capillary: 23.50298 },
  { depth: 30, density: 1000, surface: 74_682.51, zeroed: 29.41995, sealedShown: 26.7557, capillary: 39.91532 },
  { depth: 15, density: 1000, surface: 61_640.21, zeroed: 14.70998, sealedShown: 10.7415, capillary: 24.18045 },
])('at $depth m under $surface Pa three instruments show three depths', ({ depth, density, surface, ...shown }) => {
  const column = water(surface, density)
  const pressure = at(depth, column)
  expect(
    depthShown({ zeroPressure: column.surfacePressure, convention }, { pressure }).depth / shown.zeroed,
  ).toBeCloseTo(1, 6)
  expect(depthShown(sealed, { pressure }).depth / shown.sealedShown).toBeCloseTo(1, 6)
  const scale = { surfacePressure: seaLevel, density: densityOfConvention(convention) }
  const tube = { length: measure(10, centimetre), scale }
  expect(capillaryReading(tube, { depth: depthOf(depth, metre), water: column }).depth / shown.capillary).toBeCloseTo(
    1,
    6,
  )
})

test('GS-06: air trapped at 20 °C and read at 4 °C shows 2.3 m too much at 30 m', () => {
  const scale = { surfacePressure: seaLevel, density: densityOfConvention(convention) }
  const tube = { length: measure(1, metre), scale }
  const temperatures = { filled: temperatureOf(293.15, kelvin), now: temperatureOf(277.15, kelvin) }
  const dive = { depth: depthOf(30, metre), water: water(101_325, 1025) }
  const cold = capillaryReading(tube, { ...dive, temperatures })
  expect(cold.gasLength / 0.23777514).toBeCloseTo(1, 6)
  expect(cold.depth / 32.48129).toBeCloseTo(1, 6)
  expect(cold.depth - capillaryReading(tube, dive).depth).toBeCloseTo(2.32584, 5)
})

test('GE-04: a sensor zeroed at 1030 hPa shows -0.45 m when the pressure has fallen to 985', () => {
  const sensor = { zeroPressure: absolute(1030, hectopascal), convention }
  const shown = depthShown(sensor, { pressure: absolute(985, hectopascal) })
  expect(shown.depth).toBeCloseTo(-0.45, 12)
  expect(shown.belowZero).toBe(true)
})

// vectors GE-01, GE-03 (own closed form, 1e-6)
test.each([
  {
    range: 30,
    bits: 16,
    accuracy: 0.001,
    perKelvin: 0.0001,
    drift: 0.001,
    years: 2,
    step: 45.776367,
    parts: [13.2145, 1732.0508, 3464.1016, 3464.1016],
    u: 5196.1692,
    depth: 0.519617,
  },
  {
    range: 450,
    bits: 12,
    accuracy: 0.005,
    perKelvin: 0.0002,
    drift: 0.002,
    years: 1,
    step: 10_986.328125,
    parts: [3171.4798, 129_903.8106, 103_923.0485, 51_961.5242],
    u: 174_313.1042,
    depth: 17.43131,
  },
])(
  'a sensor of $range bar and $bits bits has $u Pa',
  ({ range, bits, accuracy, perKelvin, drift, years, ...expected }) => {
    const budget = sensorBudget(
      { range: difference(range, bar), bits, accuracy, temperatureCoefficient: perKelvin, driftPerYear: drift },
      { temperatureDifference: difference(20, kelvin), age: measure(365.25 * years, day), convention },
    )
    expect(budget.step / expected.step).toBeCloseTo(1, 6)
    const parts = [budget.resolution, budget.accuracy, budget.temperature, budget.drift]
    for (const [i, part] of parts.entries()) expect(part / (expected.parts[i] as number)).toBeCloseTo(1, 5)
    expect(budget.standardUncertainty / expected.u).toBeCloseTo(1, 6)
    expect(budget.expandedUncertainty / budget.standardUncertainty).toBe(2)
    expect(budget.depthUncertainty / expected.depth).toBeCloseTo(1, 5)
  },
)

test('what a gauge shows leads back to the true depth, with gas sealed in its case too', () => {
  const metres = fc.double({ min: 0, max: 300, noNaN: true })
  const surface = fc.double({ min: 50_000, max: 108_000, noNaN: true })
  const degrees = fc.double({ min: -2, max: 35, noNaN: true })
  fc.assert(
    fc.property(metres, surface, degrees, (depth, p, t) => {
      const column = water(p, 1020)
      const temperature = temperatureOf(t, celsius)
      const gauge = { ...sealed, sealedAt: temperatureOf(20, celsius) }
      const shown = depthShown(gauge, { pressure: at(depth, column), temperature }).depth
      expect(pressureBehindDepth(gauge, { depth: shown, temperature }) - at(depth, column)).toBeCloseTo(0, 6)
      // the last bit may lie above the surface
      if (depth > 1e-6) expect(trueDepth(gauge, { depth: shown, temperature }, column)).toBeCloseTo(depth, 8)
    }),
  )
})

test('gas sealed in at 20 °C loses pressure in water of 4 °C: the gauge shows 0.55 m too much', () => {
  const gauge = { ...sealed, sealedAt: temperatureOf(20, celsius) }
  const shown = depthShown(gauge, { pressure: seaLevel, temperature: temperatureOf(4, celsius) }).depth
  expect(shown).toBeCloseTo((10.1325 * 16) / 293.15, 9)
  expect(() => depthShown(gauge, { pressure: seaLevel })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'temperature' }),
  )
})

test('the pointer of a gauge sealed at sea level sleeps for 2.17 m under 800 hPa, and not at all at sea level', () => {
  expect(depthBeforePointerMoves(sealed, water(80_000, 1000))).toBeCloseTo(21_325 / 9806.65, 9)
  expect(depthBeforePointerMoves(sealed, water(101_325, 1000))).toBe(0)
  expect(depthBeforePointerMoves(sealed, water(104_000, 1000))).toBe(0)
})

describe('a capillary scale', () => {
  const tube = { length: measure(10, centimetre), scale: water(101_325, 1025) }

  test('serves down to where a metre still moves the water by a millimetre', () => {
    const wanted = { readable: measure(1, millimetre), difference: measure(1, metre) }
    const deepest = capillaryServesTo(tube, wanted)
    expect(capillaryResolution(tube, { depth: deepest, readable: wanted.readable })).toBeCloseTo(1, 9)
    expect(capillaryServesTo(tube, { ...wanted, difference: measure(0.01, metre) })).toBe(0)
  })

  test('crowds with depth: every mark lies deeper in the tube, by less each time', () => {
    const depths = [0, 5, 10, 15, 20, 30, 40].map((m) => depthOf(m, metre))
    const positions = capillaryScale(tube, depths).map(({ position }) => inUnit(position, millimetre))
    expect(positions[0]).toBe(0)
    const steps = positions.slice(1, 5).map((position, i) => position - (positions[i] as number))
    expect(steps).toEqual([...steps].sort((a, b) => b - a))
    expect(positions.at(-1)).toBeCloseTo(79.87177731163425, 9)
  })

  test('a misspelt field, a metre of tube too long and a mark in the air are refused', () => {
    const dive = { depth: depthOf(10, metre), water: water(101_325, 1000) }
    // @ts-expect-error no such field
    expect(() => capillaryReading(tube, { ...dive, temperature: 280 })).toThrow(
      expect.objectContaining({ code: 'input' }),
    )
    expect(() => capillaryReading({ ...tube, length: measure(2, metre) }, dive)).toThrow(
      expect.objectContaining({ code: 'range', argument: 'gauge.length' }),
    )
    expect(() => capillaryScale(tube, [-1 as Depth])).toThrow(expect.objectContaining({ argument: 'depths[0]' }))
  })
})

test.each([
  { shown: 0.2, surface: 1013.25, hasStop: false, verdict: 'within', codes: [] },
  { shown: -0.6, surface: 1013.25, hasStop: false, verdict: 'beyond', codes: ['zero'] },
  { shown: -2.1325, surface: 800, hasStop: false, verdict: 'within', codes: [] },
  { shown: 0, surface: 800, hasStop: false, verdict: 'beyond', codes: ['zero'] },
  { shown: 0, surface: 800, hasStop: true, verdict: 'undetermined', codes: ['on-stop'] },
  { shown: 0.6, surface: 800, hasStop: true, verdict: 'beyond', codes: ['zero'] },
  { shown: 0, surface: 1030, hasStop: true, verdict: 'within', codes: [] },
])('$shown m at the surface under $surface hPa: $verdict $codes', ({ shown, surface, hasStop, verdict, codes }) => {
  const found = assessSurfaceCheck({
    gauge: sealed,
    shown: measure(shown, metre),
    surfacePressure: absolute(surface, hectopascal),
    allowed: measure(0.5, metre),
    hasStop,
  })
  expect(found.verdict).toBe(verdict)
  expect(found.because.map(({ code }) => code)).toEqual(codes)
})

describe('a column of depths', () => {
  const column = water(80_000, 1000)
  const options = { water: column, gauge: sealed }
  const empty = (rows: number) => ({
    trueDepthMetre: new Float64Array(rows),
    shownDepthMetre: new Float64Array(rows),
    code: new Uint8Array(rows),
  })

  test('agrees with the scalar form, and a bad row keeps its place', () => {
    const pressurePascal = Float64Array.of(80_000, at(20, column), Number.NaN, 79_999, Infinity, 2e8)
    const out = empty(6)
    depthFromPressureInto(out, { pressurePascal }, options)
    expect(out.trueDepthMetre[1]).toBeCloseTo(20, 12)
    expect(out.shownDepthMetre[1]).toBeCloseTo(17.4808, 12)
    const { good, missing, outOfRange } = rowCodes
    expect([...out.code]).toEqual([good, good, missing, outOfRange, outOfRange, outOfRange])
    expect([...out.trueDepthMetre.slice(2), ...out.shownDepthMetre.slice(2)].every(Number.isNaN)).toBe(true)
  })

  test('writes only the rows asked for, and refuses rows and options that are none', () => {
    const out = empty(3)
    const columns = { pressurePascal: Float64Array.of(9e4, 9e4, 9e4) }
    depthFromPressureInto(out, columns, options, 1, 2)
    expect([...out.trueDepthMetre].map((d) => d > 0)).toEqual([false, true, false])
    expect(() => depthFromPressureInto(out, columns, options, 2, 1)).toThrow(expect.objectContaining({ code: 'range' }))
    expect(() => depthFromPressureInto(empty(2), columns, options)).toThrow(expect.objectContaining({ code: 'input' }))
    const thin = { ...options, water: water(80_000, 1) }
    expect(() => depthFromPressureInto(out, columns, thin)).toThrow(expect.objectContaining({ argument: 'density' }))
  })
})

test('two sensors confirm each other, two displays of one sensor do not', () => {
  const working = { quantity: 'depth', sensor: 'a', works: true } as const
  const states = (displays: Parameters<typeof remainingEvidence>[0]) =>
    remainingEvidence(displays).remaining.map(({ evidence }) => evidence)
  expect(states([working, { ...working, sensor: 'b' }])).toEqual(['confirmed'])
  expect(states([working, working])).toEqual(['single'])
  expect(states([working, { ...working, sensor: 'b', works: false }])).toEqual(['single'])
  expect(states([{ ...working, works: false }])).toEqual(['lost'])
  expect(() => states([])).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => states([{ ...working, quantity: 'dept' as 'depth' }])).toThrow(
    expect.objectContaining({ code: 'input' }),
  )
  expect(remainingEvidence([working]).cautions).toContain('no-decompression-planning')
})
