import { assert, constantFrom, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { rowCodes } from '../../../src/errors/index.ts'
import {
  dryAir,
  gasState,
  mixture,
  molarDensity,
  molarMass,
  temperatureAtEntropy,
  trimix,
} from '../../../src/gas-law/index.ts'
import {
  compileSupply,
  type FlowElement,
  hoseFlow,
  idealOrificeFlow,
  minimumSupplyPressure,
  orificeFlow,
  peakDemand,
  realCriticalFlow,
  seriesFlow,
  supplyMap,
  supplyRatioInto,
} from '../../../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  type Fraction,
  gramPerMole,
  litrePerMinute,
  type MassFlow,
  measure,
  metre,
  micropascalSecond,
  millimetre,
  squareMillimetre,
  temperatureOf,
} from '../../../src/units/index.ts'

const opening = (area: number) => ({
  area: measure(area, squareMillimetre),
  dischargeCoefficient: 0.8 as Fraction,
})
const cold = temperatureOf(4, celsius)
const helium = mixture({ helium: 1 })
const gases = [dryAir, helium, trimix({ oxygen: 0.18, helium: 0.45 })]

// Properties of the flow through one orifice.

test('value and slope of the flow are continuous at the critical ratio, ideal and real', () => {
  for (const gas of ['ideal', 'real'] as const) {
    const upstream = { mixture: dryAir, upstreamPressure: absolute(150, bar), upstreamTemperature: cold }
    const at = (ratio: number) =>
      orificeFlow(opening(2), { ...upstream, downstreamPressure: absolute(150 * ratio, bar) }, { gas })
    const critical = at(0.3).criticalPressureRatio
    const choked = at(0.3).massFlow
    const share = (step: number) => 1 - at(critical + step).massFlow / choked
    expect(share(-1e-6)).toBe(0)
    // the flow leaves its maximum as a parabola: a tenth of the step, a hundredth of the loss
    expect(share(1e-3)).toBeGreaterThan(0)
    expect(share(1e-3)).toBeLessThan(1e-5)
    expect(share(1e-2) / share(1e-3)).toBeGreaterThan(80)
    expect(share(1e-2) / share(1e-3)).toBeLessThan(110)
  }
})

test('flow goes with the area and the coefficient, ideal flow with the pressures and the root of molar mass over temperature', () => {
  const state = {
    molarMass: measure(28.96, gramPerMole),
    heatCapacityRatio: 1.4 as Fraction,
    upstreamTemperature: temperatureOf(20, celsius),
    upstreamPressure: absolute(20, bar),
    downstreamPressure: absolute(16, bar),
  }
  const { massFlow } = idealOrificeFlow(opening(2), state)
  expect(idealOrificeFlow(opening(6), state).massFlow / massFlow).toBeCloseTo(3, 12)
  const denser = { ...state, upstreamPressure: absolute(40, bar), downstreamPressure: absolute(32, bar) }
  expect(idealOrificeFlow(opening(2), denser).massFlow / massFlow).toBeCloseTo(2, 12)
  const lighter = { ...state, molarMass: measure(7.24, gramPerMole) }
  expect(idealOrificeFlow(opening(2), lighter).massFlow / massFlow).toBeCloseTo(0.5, 12)
})

test('more pressure before, or less behind, never lowers the flow', () => {
  const pressure = double({ min: 1.1, max: 300, noNaN: true })
  const part = double({ min: 0.05, max: 0.999, noNaN: true })
  assert(
    property(constantFrom(...gases), pressure, part, part, (gas, upstream, one, other) => {
      const at = (before: number, ratio: number) =>
        orificeFlow(opening(2), {
          mixture: gas,
          upstreamPressure: absolute(before, bar),
          upstreamTemperature: cold,
          downstreamPressure: absolute(upstream * ratio, bar),
        }).massFlow
      const [low, high] = [Math.min(one, other), Math.max(one, other)]
      expect(at(upstream, low)).toBeGreaterThanOrEqual(at(upstream, high) * (1 - 1e-12))
      expect(at(upstream * 1.05, high)).toBeGreaterThanOrEqual(at(upstream, high) * (1 - 1e-9))
    }),
    { numRuns: 40 },
  )
})

test('argon, whose ratio of heat capacities is 5/3 only in the limit of no pressure, flows like any other gas', () => {
  const state = {
    mixture: mixture({ argon: 1 }),
    upstreamPressure: absolute(30, bar),
    upstreamTemperature: cold,
    downstreamPressure: absolute(5, bar),
  }
  const real = orificeFlow(opening(2), state).massFlow
  // 0.8 · 2 mm² · 30 bar · 0.7262 · √(M / (R T)), and a little more for the real gas
  const ideal = 0.8 * 2e-6 * 30e5 * 0.7261844 * Math.sqrt(0.039948 / (8.314472 * 277.15))
  expect(orificeFlow(opening(2), state, { gas: 'ideal' }).massFlow / ideal).toBeCloseTo(1, 5)
  expect(real / ideal).toBeGreaterThan(1)
  expect(real / ideal).toBeLessThan(1.03)
})

test('no pressure difference, no flow', () => {
  const state = {
    mixture: dryAir,
    upstreamPressure: absolute(10, bar),
    upstreamTemperature: cold,
    downstreamPressure: absolute(10, bar),
  }
  expect(orificeFlow(opening(2), state).massFlow).toBe(0)
})

test('where the real gas passes most, it moves with its own speed of sound', () => {
  // second route: the throat is found as the largest mass flux, and checked by its Mach number
  for (const gas of gases) {
    for (const before of [1, 50, 200, 300]) {
      const upstream = { pressure: absolute(before, bar), temperature: temperatureOf(20, celsius) }
      const { criticalPressureRatio } = realCriticalFlow(gas, upstream)
      const start = gasState(gas, upstream)
      const pressure = absolute(before * criticalPressureRatio, bar)
      const temperature = temperatureAtEntropy(gas, { molarEntropy: start.molarEntropy, pressure })
      const throat = gasState(gas, { pressure, temperature })
      const speed = Math.sqrt((2 * (start.molarEnthalpy - throat.molarEnthalpy)) / molarMass(gas))
      expect(speed / throat.speedOfSound).toBeCloseTo(1, 5)
    }
  }
})

test('the ideal formula is 7 per cent low for air of 200 bar and 2.5 per cent high for helium', () => {
  const over = (gas: typeof dryAir) => {
    const state = {
      mixture: gas,
      upstreamPressure: absolute(200, bar),
      upstreamTemperature: temperatureOf(20, celsius),
      downstreamPressure: absolute(10, bar),
    }
    return orificeFlow(opening(2), state).massFlow / orificeFlow(opening(2), state, { gas: 'ideal' }).massFlow
  }
  expect(over(dryAir)).toBeCloseTo(1.07, 2)
  expect(over(helium)).toBeCloseTo(0.975, 2)
})

// Elements in series.

const state = {
  mixture: dryAir,
  supplyPressure: absolute(50, bar),
  temperature: temperatureOf(10, celsius),
  downstreamPressure: absolute(6, bar),
}
const valve: FlowElement = { kind: 'orifice', name: 'cylinder valve', orifice: opening(12) }
const stage: FlowElement = {
  kind: 'regulated orifice',
  name: 'first stage',
  orifice: opening(1.8),
  outletPressure: absolute(15.5, bar),
}
const hose: FlowElement = {
  kind: 'hose',
  name: 'hose',
  hose: { bore: measure(6, millimetre), length: measure(0.7, metre) },
}
const mouth: FlowElement = { kind: 'orifice', name: 'second stage', orifice: opening(24) }

test('one orifice in series is that orifice', () => {
  const flow = seriesFlow([valve], state)
  const alone = orificeFlow(opening(12), {
    mixture: dryAir,
    upstreamPressure: state.supplyPressure,
    upstreamTemperature: state.temperature,
    downstreamPressure: state.downstreamPressure,
  })
  expect(flow.maximumMassFlow / alone.massFlow).toBeCloseTo(1, 9)
  expect(flow).toMatchObject({ limitedBy: 'cylinder valve', choked: true })
})

test('two equal orifices in series, ideal gas: the second one chokes, at the pressure that the first one leaves', () => {
  const pair: FlowElement[] = [valve, { ...valve, name: 'second' }]
  const flow = seriesFlow(pair, { ...state, downstreamPressure: absolute(1, bar) }, { gas: 'ideal' })
  expect(flow).toMatchObject({ limitedBy: 'second', choked: true })
  const [first, second] = flow.elements
  // both pass the same flow by the formula of one orifice
  const pass = (before: number, behind: number) =>
    orificeFlow(
      opening(12),
      {
        mixture: dryAir,
        upstreamPressure: before as never,
        upstreamTemperature: state.temperature,
        downstreamPressure: behind as never,
      },
      { gas: 'ideal' },
    ).massFlow
  expect(pass(first?.before as number, first?.behind as number) / flow.maximumMassFlow).toBeCloseTo(1, 8)
  expect(pass(second?.before as number, 1e5) / flow.maximumMassFlow).toBeCloseTo(1, 8)
})

test.each([
  ['first stage', [valve, stage, hose, mouth]],
  ['cylinder valve', [{ ...valve, orifice: opening(0.5) }, stage, hose, mouth]],
  [
    'hose',
    [
      valve,
      { ...stage, orifice: opening(9) },
      { ...hose, hose: { ...hose.hose, bore: measure(2, millimetre) } },
      mouth,
    ],
  ],
  ['second stage', [valve, { ...stage, orifice: opening(9) }, hose, { ...mouth, orifice: opening(3) }]],
] as [string, FlowElement[]][])('the %s limits where it is the narrowest', (name, elements) => {
  const found = seriesFlow(elements, state)
  expect(found.limitedBy).toBe(name)
  const alone = elements.filter((element) => element.name !== name)
  expect(seriesFlow(alone, { ...state, supplyPressure: absolute(40, bar) }).maximumMassFlow).toBeGreaterThan(
    found.maximumMassFlow,
  )
  for (const { before, behind } of found.elements) expect(behind).toBeLessThanOrEqual(before)
})

test('a series without elements, or one that ends above its supply, is refused', () => {
  expect(() => seriesFlow([], state)).toThrow(expect.objectContaining({ code: 'input', argument: 'elements' }))
  expect(() => seriesFlow([valve], { ...state, downstreamPressure: absolute(60, bar) })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'state.downstreamPressure' }),
  )
})

test('a hose is asked for what it cannot pass and answers with the most that it can, at which it delivers', () => {
  const gas = { molarMass: molarMass(dryAir), viscosity: measure(18, micropascalSecond), temperature: cold }
  const long = { bore: measure(5, millimetre), length: measure(2.1, metre) }
  const at = (massFlow: number) =>
    hoseFlow(long, gas, { upstreamPressure: absolute(16, bar), massFlow: massFlow as MassFlow })
  const choking = at(0.08)
  if (choking.kind !== 'chokes') throw new Error('it passes')
  expect(at(choking.maximumMassFlow * 1.0001).kind).toBe('chokes')
  expect(at(choking.maximumMassFlow * 0.9999).kind).toBe('delivers')
})

// What one first stage can feed.

const supply = {
  orifice: { area: measure(1.77, squareMillimetre), dischargeCoefficient: 0.7 as Fraction },
  mixture: dryAir,
  supplyTemperature: cold,
  breathingGasTemperature: cold,
  peakFlow: peakDemand(measure(40, litrePerMinute), { shift: 0 as Fraction }).peakFlow,
  intermediatePressure: difference(9.5, bar),
  regulatingMargin: difference(2, bar),
}

test('at the lowest supply pressure the flow is the demand, and the deeper the higher it lies', () => {
  let before = 0
  for (const ambient of [1, 3, 5, 7]) {
    const found = minimumSupplyPressure({ ...supply, ambientPressure: absolute(ambient, bar) })
    expect(found.supplyPressure).toBeGreaterThan(before)
    before = found.supplyPressure
    const needed = supply.peakFlow * molarDensity(dryAir, absolute(ambient, bar), cold) * molarMass(dryAir)
    expect(found.massFlow / needed).toBeCloseTo(1, 12)
    if (found.limitedBy !== 'orifice') continue
    const flow = orificeFlow(supply.orifice, {
      mixture: dryAir,
      upstreamPressure: found.supplyPressure,
      upstreamTemperature: cold,
      downstreamPressure: absolute(ambient + 9.5, bar),
    })
    // the place of a flat maximum is known to the root of what its value is
    expect(flow.massFlow / needed).toBeCloseTo(1, 7)
  }
})

test('one diver at rest is limited by what the stage needs to regulate, two at work by its orifice; helium asks for less', () => {
  const at = (ambient: number, gas = dryAir) =>
    minimumSupplyPressure({ ...supply, mixture: gas, ambientPressure: absolute(ambient, bar) })
  const { peakFlow } = peakDemand(measure(15, litrePerMinute))
  const rest = minimumSupplyPressure({ ...supply, peakFlow, ambientPressure: absolute(1, bar) })
  expect(rest).toMatchObject({ limitedBy: 'intermediate pressure', supplyPressure: absolute(12.5, bar) })
  expect(at(6).limitedBy).toBe('orifice')
  expect(at(6, trimix({ oxygen: 0.18, helium: 0.45 })).supplyPressure).toBeLessThan(at(6).supplyPressure)
})

test('a demand that 500 bar do not meet is refused, and the error states what they do meet', () => {
  const demand = { ...supply, peakFlow: measure(6000, litrePerMinute), ambientPressure: absolute(30, bar) }
  expect(() => minimumSupplyPressure(demand)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'demand.peakFlow' }),
  )
})

test('the compiled supply agrees with the direct real-gas flow within 2e-6 at random states', () => {
  const compiled = compileSupply(supply, { maximumPressure: absolute(300, bar) })
  const inside = double({ min: 30, max: 300, noNaN: true })
  assert(
    property(inside, double({ min: 1, max: 10, noNaN: true }), (before, ambient) => {
      const out = { ratio: new Float64Array(1), code: new Uint8Array(1) }
      const columns = {
        supplyPressurePascal: Float64Array.of(absolute(before, bar)),
        ambientPressurePascal: Float64Array.of(absolute(ambient, bar)),
      }
      supplyRatioInto(out, columns, compiled)
      const flow = orificeFlow(supply.orifice, {
        mixture: dryAir,
        upstreamPressure: absolute(before, bar),
        upstreamTemperature: cold,
        downstreamPressure: absolute(ambient + 9.5, bar),
      })
      const demand = supply.peakFlow * molarDensity(dryAir, absolute(ambient, bar), cold) * molarMass(dryAir)
      expect(Math.abs((out.ratio[0] as number) / (flow.massFlow / demand) - 1)).toBeLessThan(2e-6)
    }),
    { numRuns: 40 },
  )
})

test('the map rises with supply pressure and falls with depth, and its contour is the lowest supply pressure', () => {
  const compiled = compileSupply(supply, { maximumPressure: absolute(300, bar) })
  const grid = {
    ambientPressures: Float64Array.from({ length: 12 }, (_, index) => absolute(1 + index, bar)),
    supplyPressures: Float64Array.from({ length: 291 }, (_, index) => absolute(10 + index, bar)),
  }
  const map = supplyMap(compiled, grid)
  const at = (row: number, column: number) => map.ratio[row * 12 + column] as number
  for (let row = 1; row < 291; row++) {
    for (let column = 0; column < 12; column++) {
      expect(at(row, column)).toBeGreaterThanOrEqual(at(row - 1, column))
      if (column > 0) expect(at(row, column)).toBeLessThanOrEqual(at(row, column - 1))
    }
  }
  grid.ambientPressures.forEach((ambientPressure, column) => {
    const direct = minimumSupplyPressure({ ...supply, ambientPressure: ambientPressure as never }).supplyPressure
    // 1.3e-6 of the ratio, as compileSupply states
    expect(Math.abs((map.minimumSupplyPressure[column] as number) / direct - 1)).toBeLessThan(5e-6)
  })
  const coarse = (step: number) => {
    const supplyPressures = Float64Array.from({ length: Math.floor(290 / step) }, (_, k) =>
      absolute(10 + k * step, bar),
    )
    return supplyMap(compiled, { ...grid, supplyPressures }).minimumSupplyPressure
  }
  coarse(20).forEach((pressure, column) => {
    expect(pressure / (map.minimumSupplyPressure[column] as number)).toBeCloseTo(1, 8)
  })
})

test('bad rows of the map get a code, bad grids an error', () => {
  const compiled = compileSupply(supply, { maximumPressure: absolute(300, bar), gas: 'ideal' })
  const out = { ratio: new Float64Array(4), code: new Uint8Array(4) }
  const columns = {
    supplyPressurePascal: Float64Array.of(100e5, Number.NaN, 400e5, 100e5),
    ambientPressurePascal: Float64Array.of(6e5, 6e5, 6e5, -1),
  }
  supplyRatioInto(out, columns, compiled)
  expect([...out.code]).toEqual([rowCodes.good, rowCodes.missing, rowCodes.outOfRange, rowCodes.outOfRange])
  for (const [from, to] of [
    [0, 1e9],
    [Number.NaN, 2],
    [-1, 2],
    [0.5, 2],
  ] as const) {
    expect(() => supplyRatioInto(out, columns, compiled, from, to)).toThrow(expect.objectContaining({ code: 'range' }))
  }
  const short = { ...out, code: new Uint8Array(2) }
  expect(() => supplyRatioInto(short, columns, compiled)).toThrow(expect.objectContaining({ code: 'input' }))
  expect([...out.ratio].map(Number.isNaN)).toEqual([false, true, true, true])
  const falling = { ambientPressures: Float64Array.of(6e5), supplyPressures: Float64Array.of(100e5, 50e5) }
  expect(() => supplyMap(compiled, falling)).toThrow(expect.objectContaining({ code: 'input' }))
  const gauge = { ambientPressures: Float64Array.of(0), supplyPressures: Float64Array.of(100e5) }
  expect(() => supplyMap(compiled, gauge)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'grid.ambientPressures[0]' }),
  )
})

test('the mean peak of two breathers over all shifts is 1.436 times one', () => {
  // second route: the peak for each shift, averaged
  const shifts = Array.from({ length: 20_000 }, (_, index) => (index + 0.5) / 40_000)
  const factors = shifts.map((shift) => peakDemand(measure(20, litrePerMinute), { shift: shift as Fraction }).factor)
  const mean = factors.reduce<number>((sum, factor) => sum + factor, 0) / factors.length
  expect(mean).toBeCloseTo(peakDemand(measure(20, litrePerMinute), 'random').factor, 6)
})

test('a shift in degrees is refused', () => {
  expect(() => peakDemand(measure(20, litrePerMinute), { shift: 180 as Fraction })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'second.shift' }),
  )
})
