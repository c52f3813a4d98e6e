import { describe, expect, test } from 'vitest'
import {
  absolute,
  bar,
  barLitre,
  boosterDrawDown,
  boosterStroke,
  type ChargedCylinder,
  celsius,
  chargeCylinder,
  compressorStart,
  dryAir,
  fastestFill,
  fillsFromBank,
  fillTemperature,
  gasState,
  gramPerSecond,
  hour,
  internalVolumeOf,
  inUnit,
  joulePerKelvin,
  kelvin,
  litre,
  measure,
  molarDensity,
  mole,
  one,
  pureGas,
  temperatureOf,
  wattPerKelvin,
} from '../../src/index.ts'
import vectors from '../fixtures/charging-vectors.json' with { type: 'json' }
import { off, refused } from './refused.ts'

const { engineering } = vectors

describe('booster', () => {
  test.each(['H20-1', 'H20-2'] as const)('%s: gas of a stroke and lowest supply', (id) => {
    const { in: given, out } = engineering[id]
    const booster = {
      sweptVolume: measure(given.V_s, litre),
      clearance: { clearance: measure(given.c, one), exponent: measure(given.n, one) },
      areaRatio: measure(40, one),
      drivePressure: absolute(7, bar),
    }
    const found = boosterStroke(booster, { supply: absolute(given.p_in, bar), delivery: absolute(given.p_out, bar) })
    expect(off(found.volumetricEfficiency, out.eta_v)).toBeLessThan(1e-11)
    expect(off(inUnit(found.gas, barLitre), out.free_gas)).toBeLessThan(1e-11)
    expect(off(inUnit(found.lowestSupply, bar), out.p_in_min)).toBeLessThan(1e-11)
    const at = (supply: number, delivery: number) =>
      boosterStroke(booster, { supply: absolute(supply, bar), delivery: absolute(delivery, bar) })
    expect([at(20, 200).stalls, at(8.7, 200).stalls, at(100, 281).stalls]).toEqual(['no', 'by-clearance', 'by-drive'])
    expect([at(8.7, 200).gas, at(100, 281).gas]).toEqual([0, 0])
  })

  test('H20-3: the supply is drawn down', () => {
    const { in: given, out } = engineering['H20-3']
    const fill = {
      mixture: pureGas('oxygen'),
      temperature: temperatureOf(20, celsius),
      supply: { internalVolume: internalVolumeOf(given.V_supply, litre), pressure: absolute(given.p_supply, bar) },
      receiver: { internalVolume: internalVolumeOf(given.V_target, litre), pressure: absolute(given.p_target, bar) },
      to: absolute(given.p_goal, bar),
    }
    expect(off(inUnit(boosterDrawDown(fill, { gas: 'ideal' }).supplyPressure, bar), out.p_supply_after)).toBeLessThan(
      1e-12,
    )
    const density = (p: number) => molarDensity(fill.mixture, absolute(p, bar), fill.temperature)
    const real = boosterDrawDown(fill)
    const left = molarDensity(fill.mixture, real.supplyPressure, fill.temperature)
    expect(off(0.05 * (density(100) - left), 0.01 * (density(200) - density(50)))).toBeLessThan(1e-12)
    expect(refused(() => boosterDrawDown({ ...fill, supply: { ...fill.supply, pressure: absolute(20, bar) } }))).toBe(
      'input fill.supply',
    )
  })
})

describe('bank', () => {
  const of = (litres: number, bars: number) => ({
    internalVolume: internalVolumeOf(litres, litre),
    mixture: dryAir,
    pressure: absolute(bars, bar),
    temperature: temperatureOf(20, celsius),
  })
  const run = { bank: [of(50, 300), of(50, 200), of(50, 120)], receiver: of(12, 50), target: absolute(200, bar) }

  test('low to high fills no fewer cylinders than the best order at each fill, and gas is conserved', () => {
    const [plain, best] = [fillsFromBank(run), fillsFromBank(run, { order: 'best' })]
    expect(plain.filled).toBeGreaterThanOrEqual(best.filled)
    expect(plain.nextReaches).toBeLessThan(run.target)
    expect(plain.nextLacks).toBeGreaterThan(0)
    const density = (p: number) => molarDensity(dryAir, absolute(p, bar), temperatureOf(20, celsius))
    const before = 0.05 * (density(300) + density(200) + density(120))
    const after = plain.bankPressures.reduce(
      (sum, p) => sum + 0.05 * molarDensity(dryAir, p, temperatureOf(20, celsius)),
      0,
    )
    expect(off(before - after, plain.filled * 0.012 * (density(200) - density(50)))).toBeLessThan(1e-10)
  })

  test('the compressor starts for the fill that presses most, in closed form', () => {
    const fills = [
      { at: measure(1, hour), lacks: measure(0, mole) },
      { at: measure(2, hour), lacks: measure(36, mole) },
      { at: measure(2.5, hour), lacks: measure(72, mole) },
    ]
    const found = compressorStart(fills, 0.02)
    expect(found.decides).toBe(2)
    expect(found.latest).toBeCloseTo(2.5 * 3600 - 108 / 0.02, 9)
    expect(compressorStart(fills.slice(0, 1), 0.02).latest).toBe(Number.POSITIVE_INFINITY)
  })

  test('bad input is refused by its name', () => {
    expect(refused(() => fillsFromBank({ ...run, bank: [] }))).toBe('input run.bank')
    expect(refused(() => fillsFromBank({ ...run, target: absolute(40, bar) }))).toBe('range run.target')
    expect(refused(() => fillsFromBank(run, { order: 'Best' as never }))).toBe('input options.order')
    expect(refused(() => compressorStart([], 1))).toBe('input fills')
    expect(refused(() => compressorStart([{ at: measure(1, hour), lacks: Number.NaN as never }], 1))).toBe(
      'range fills[0].lacks',
    )
  })
})

describe('a cylinder while it is charged', () => {
  const at = (bars: number, degrees: number) => ({
    pressure: absolute(bars, bar),
    temperature: temperatureOf(degrees, celsius),
  })
  const fill: ChargedCylinder = {
    internalVolume: internalVolumeOf(12, litre),
    mixture: dryAir,
    start: at(50, 15),
    supply: at(300, 15),
    flow: measure(8, gramPerSecond),
    settled: at(201, 15),
    wall: {
      temperature: temperatureOf(15, celsius),
      heatCapacity: measure(6000, joulePerKelvin),
      innerConductance: measure(10, wattPerKelvin),
      outerConductance: measure(3, wattPerKelvin),
    },
    surroundings: temperatureOf(15, celsius),
  }

  test.each([
    ['real', {}],
    ['ideal', { gas: 'ideal', heatCapacityRatio: 1.4 }],
  ] as const)('energy is kept to 1e-9 over the run, %s gas', (gas, options) => {
    const end = chargeCylinder(fill, options)
    const energy = (p: number, t: number) =>
      gas === 'ideal'
        ? 2.5 * 8.314472 * t
        : gasState(dryAir, { pressure: p as never, temperature: t as never }).molarInternalEnergy
    const enthalpy = gas === 'ideal' ? 3.5 * 8.314472 * 288.15 : gasState(dryAir, fill.supply).molarEnthalpy
    const held = end.amount - end.added
    const before = held * energy(fill.start.pressure, fill.start.temperature) + end.added * enthalpy
    const after = end.amount * energy(end.stopPressure, end.gasTemperature) + end.heatToWall
    expect(off(after, before)).toBeLessThan(1e-9)
    const inWall = 6000 * (end.wallTemperature - 288.15)
    expect(off(inWall + end.heatToSurroundings, end.heatToWall)).toBeLessThan(1e-9)
  })

  test('it lies between the two bounds that a fill has', () => {
    const { gasTemperature, stopPressure } = chargeCylinder(fill)
    const bound = {
      internalVolume: fill.internalVolume,
      mixture: dryAir,
      start: fill.start,
      supply: fill.supply,
      pressure: stopPressure,
      settledTemperature: fill.settled.temperature,
    }
    expect(gasTemperature).toBeLessThan(fillTemperature(bound).temperature)
    const lower = fillTemperature({ ...bound, wallHeatCapacity: fill.wall.heatCapacity }).temperature
    const quick = chargeCylinder({ ...fill, wall: { ...fill.wall, outerConductance: measure(0, wattPerKelvin) } })
    expect(quick.gasTemperature).toBeGreaterThan(lower)
  })

  test('without conductance it is the adiabatic bound', () => {
    const end = chargeCylinder({ ...fill, wall: { ...fill.wall, innerConductance: measure(0, wattPerKelvin) } })
    const bound = fillTemperature({
      internalVolume: fill.internalVolume,
      mixture: dryAir,
      start: fill.start,
      supply: fill.supply,
      pressure: end.stopPressure,
      settledTemperature: fill.settled.temperature,
    })
    expect(end.gasTemperature).toBeCloseTo(bound.temperature, 6)
    expect(off(bound.settledPressure, fill.settled.pressure)).toBeLessThan(1e-9)
    expect(end.wallTemperature).toBe(fill.wall.temperature)
  })

  test('slower is cooler, and the fastest fill just reaches its limit', () => {
    const slow = chargeCylinder({ ...fill, flow: measure(2, gramPerSecond) })
    expect(slow.gasTemperature).toBeLessThan(chargeCylinder(fill).gasTemperature)
    const { flow: _, ...rest } = { ...fill, flow: undefined }
    expect(_).toBeUndefined()
    const { end } = fastestFill(rest, temperatureOf(45, celsius), { gas: 'ideal' })
    expect(end.gasTemperature).toBeCloseTo(318.15, 5)
    expect(refused(() => fastestFill(rest, temperatureOf(0, celsius), { gas: 'ideal' }))).toBe('not-converged flow')
  })

  test('a supply below the pressure to stop at is told', () => {
    expect(chargeCylinder(fill).supplySuffices).toBe(true)
    expect(chargeCylinder({ ...fill, supply: at(210, 15) }).supplySuffices).toBe(false)
  })

  test('bad input is refused by its name', () => {
    expect(refused(() => chargeCylinder({ ...fill, settled: at(40, 15) }))).toBe('input fill.settled')
    expect(
      refused(() => chargeCylinder({ ...fill, wall: { ...fill.wall, heatCapacity: measure(0, joulePerKelvin) } })),
    ).toBe('range fill.wall.heatCapacity')
    expect(refused(() => chargeCylinder({ ...fill, surroundings: Number.NaN as never }))).toBe(
      'range fill.surroundings',
    )
    expect(
      refused(() => chargeCylinder({ ...fill, start: { ...fill.start, temp: temperatureOf(1, kelvin) } as never })),
    ).toBe('input fill.start.temp')
  })

  // a step is as short as the quickest exchange of heat: without lower bounds a tiny wall or flow would ask for steps without end
  test.each([5e-324, 1e-310, 1e-160])(
    'sizes of %d, which would take steps without end, are refused by their name',
    (tiny) => {
      const wall = (part: object): never => ({ ...fill, wall: { ...fill.wall, ...part } }) as never
      expect(refused(() => chargeCylinder({ ...fill, flow: tiny as never }))).toBe('range fill.flow')
      expect(refused(() => chargeCylinder(wall({ heatCapacity: tiny })))).toBe('range fill.wall.heatCapacity')
      expect(refused(() => chargeCylinder({ ...fill, internalVolume: tiny as never }))).toBe(
        'range fill.internalVolume',
      )
      expect(refused(() => chargeCylinder({ ...fill, start: { ...fill.start, pressure: tiny as never } }))).toBe(
        'range fill.start.pressure',
      )
    },
  )

  test('at the lowest sizes that are accepted a fill of too many steps is refused', () => {
    const slow = { ...fill, flow: measure(0.001, gramPerSecond) }
    const wall = {
      ...fill.wall,
      heatCapacity: measure(1, joulePerKelvin),
      innerConductance: measure(1000, wattPerKelvin),
    }
    expect(refused(() => chargeCylinder({ ...slow, wall }))).toBe('range fill.flow')
  })
})
