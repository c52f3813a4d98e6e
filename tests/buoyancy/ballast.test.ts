import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { foamVolume } from '../../src/buoyancy/foam-suit.ts'
import {
  type BallastConditions,
  ballast,
  ballastForOtherWater,
  ballastFromCheck,
  bodyVolume,
  buoyancySeries,
  displacedVolumeFromWeighing,
  type EquippedDiver,
  netBuoyancy,
} from '../../src/buoyancy/index.ts'
import { cylinderBuoyancy } from '../../src/cylinder/index.ts'
import { pressureAtDepth } from '../../src/environment/index.ts'
import { dryAir, massOfGas } from '../../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  barLitre,
  celsius,
  depthOf,
  displacedVolumeOf,
  gasVolumeOf,
  internalVolumeOf,
  inUnit,
  kilogram,
  kilogramForce,
  kilogramPerCubicMetre,
  litre,
  measure,
  metre,
  minute,
  newton,
  one,
  pound,
  temperatureOf,
} from '../../src/units/index.ts'

const water = { surfacePressure: absolute(1, atmosphere), density: measure(1025, kilogramPerCubicMetre) }

function gasMass(bars: number) {
  return massOfGas({
    internalVolume: internalVolumeOf(12, litre),
    pressure: absolute(bars, bar),
    temperature: temperatureOf(8, celsius),
    mixture: dryAir,
  })
}

const foamSuit = {
  mass: measure(4, kilogram),
  displacedVolume: displacedVolumeOf(14, litre),
  statedAt: absolute(1, atmosphere),
  gasFraction: measure(0.8, one),
}

const diver: EquippedDiver = {
  items: [
    { mass: measure(80, kilogram), displacedVolume: displacedVolumeOf(79, litre) },
    { mass: measure(5, kilogram), displacedVolume: displacedVolumeOf(3, litre) },
  ],
  foamSuits: [foamSuit],
  cylinders: [
    {
      mass: measure(15, kilogram),
      displacedVolume: displacedVolumeOf(14.2, litre),
      gasMass: { start: gasMass(200), deepest: gasMass(150), end: gasMass(30) },
    },
  ],
}

const [cylinder] = diver.cylinders as [EquippedDiver['cylinders'][number]]

const conditions: BallastConditions = {
  water,
  depths: { start: depthOf(0, metre), deepest: depthOf(30, metre), end: depthOf(5, metre) },
  ballastDensity: measure(11_340, kilogramPerCubicMetre),
  show: { unit: kilogram, step: 0.5 },
}

test('the end sets the ballast: it hangs level there, the deepest point has to be lifted', () => {
  const { cases, ballast: mass, requiredLift, shown } = ballast(diver, conditions)
  const [start, deepest, end] = cases
  expect(cases.map(({ moment }) => moment)).toEqual(['start', 'deepest', 'end'])
  expect(end?.withBallast).toBeCloseTo(0, 9)
  expect(end?.ballast).toBe(mass)
  expect(deepest?.withBallast).toBeLessThan(0)
  expect(requiredLift).toBe(Math.max(start?.requiredLift ?? 0, deepest?.requiredLift ?? 0))
  for (const { withBallast, requiredLift: lift } of cases) expect(lift).toBe(Math.max(0, 0 - withBallast))
  expect(shown.value).toBeGreaterThanOrEqual(inUnit(mass, kilogram))
  expect(shown.value - inUnit(mass, kilogram)).toBeLessThan(0.5)
})

test('a thick suit floats the diver at the start until it gives way, and the case of the start says by how much', () => {
  const thick = { ...diver, foamSuits: [{ ...foamSuit, displacedVolume: displacedVolumeOf(22, litre) }] }
  const [start, , end] = ballast(thick, conditions).cases
  expect(start?.withBallast).toBeGreaterThan(0)
  expect(start?.requiredLift).toBe(0)
  expect(start?.ballast).toBeGreaterThan(end?.ballast ?? Infinity)
  // with the end at the surface the suit is the same, and only the gas counts
  const surface = ballast(thick, { ...conditions, depths: { ...conditions.depths, end: depthOf(0, metre) } })
  expect((surface.cases[0]?.withBallast ?? 0) / kilogramForce.factor).toBeCloseTo(gasMass(30) - gasMass(200), 9)
})

test('the lift wanted at depth is the lost suit lift and the gas carried, against the set case', () => {
  const { cases } = ballast(diver, conditions)
  const [, deepest, end] = cases
  const at = (metres: number): number =>
    foamVolume(foamSuit, pressureAtDepth({ ...water, depth: depthOf(metres, metre) }))
  const expected = (at(5) - at(30)) * 1025 + gasMass(150) - gasMass(30)
  const difference = (end?.withBallast ?? 0) - (deepest?.withBallast ?? 0)
  expect(difference / kilogramForce.factor).toBeCloseTo(expected, 9)
})

test('ballast that is light for its size weighs less in water, so that more of it is needed', () => {
  const shot = ballast(diver, { ...conditions, ballastDensity: measure(6500, kilogramPerCubicMetre) })
  expect(shot.ballast).toBeGreaterThan(ballast(diver, conditions).ballast)
})

test('more suit never needs less ballast, more iron never more; unit and result agree', () => {
  assert(
    property(double({ min: 1, max: 10, noNaN: true }), (more) => {
      const usual = ballast(diver, conditions).ballast
      const thick = { ...foamSuit, displacedVolume: displacedVolumeOf(14 + more, litre) }
      expect(ballast({ ...diver, foamSuits: [thick] }, conditions).ballast).toBeGreaterThanOrEqual(usual)
      const plate = { mass: measure(more, kilogram), displacedVolume: displacedVolumeOf(more / 7.85, litre) }
      expect(ballast({ ...diver, items: [...diver.items, plate] }, conditions).ballast).toBeLessThanOrEqual(usual)
      const pounds = ballast(diver, { ...conditions, show: { unit: pound, step: 1 } }).shown.value
      expect(pounds).toBeGreaterThanOrEqual(inUnit(usual, pound))
    }),
    { numRuns: 25 },
  )
})

test('gas in a dry suit counts at the pressure of the moment', () => {
  const ten = gasVolumeOf(10, litre)
  const dry = { ...diver, suitGas: { start: ten, deepest: ten, end: ten } }
  const gain =
    (ballast(dry, conditions).cases[2]?.withoutBallast ?? 0) -
    (ballast(diver, conditions).cases[2]?.withoutBallast ?? 0)
  expect(inUnit(measure(gain, newton), kilogramForce)).toBeCloseTo(10.25, 9)
})

test('another water asks for the difference of its density', () => {
  const waters = { from: measure(1000, kilogramPerCubicMetre), to: measure(1025, kilogramPerCubicMetre) }
  expect(inUnit(ballastForOtherWater(displacedVolumeOf(100, litre), waters), kilogram)).toBeCloseTo(2.5, 12)
  // both waters reckoned in full: the ballast that keeps the same force
  const item = { mass: measure(100, kilogram), displacedVolume: displacedVolumeOf(100, litre) }
  const force = netBuoyancy(item, { density: waters.to }) - netBuoyancy(item, { density: waters.from })
  expect(force / kilogramForce.factor).toBeCloseTo(2.5, 12)
})

test('a cylinder weighed in water by its own room agrees with a rigid item and its gas', () => {
  const room = cylinderBuoyancy({
    internalVolume: internalVolumeOf(12, litre),
    body: { mass: measure(14, kilogram), displacedVolume: displacedVolumeOf(14, litre) },
    waterDensity: water.density,
    mixture: dryAir,
    pressure: absolute(200, bar),
    temperature: temperatureOf(8, celsius),
  })
  const item = {
    mass: measure(14 + inUnit(gasMass(200), kilogram), kilogram),
    displacedVolume: displacedVolumeOf(14, litre),
  }
  expect(inUnit(netBuoyancy(item, water), kilogramForce)).toBeCloseTo(inUnit(room, kilogram), 9)
})

test('a body of 80 kg with a fifth of fat and 2 L in the lungs pushes aside 77.96 L', () => {
  // 16/0.9 + 64/1.1 + 2, by hand
  const body = { mass: measure(80, kilogram), fatFraction: measure(0.2, one), lungGas: gasVolumeOf(2, litre) }
  expect(inUnit(bodyVolume(body), litre)).toBeCloseTo(77.9596, 4)
  // the equation of Siri gives the fat fraction back from the density without lung gas
  const density = 80 / (inUnit(bodyVolume(body), litre) - 2)
  expect(4.95 / density - 4.5).toBeCloseTo(0.2, 12)
})

const points = [
  [0, 0, 200],
  [3, 30, 190],
  [20, 30, 100],
  [25, 5, 80],
  [60, 5, 30],
].map(([minutes = 0, metres = 0, bars = 0]) => ({
  time: measure(minutes, minute),
  depth: depthOf(metres, metre),
  gasMass: gasMass(bars),
}))

test('the series through a dive starts and ends where the cases do', () => {
  const { cases, ballast: mass } = ballast(diver, conditions)
  const lead = { mass, displacedVolume: displacedVolumeOf((1000 * mass) / 11_340, litre) }
  const items = [...diver.items, ...diver.cylinders, lead]
  const rigid = items.map(({ mass, displacedVolume }) => ({ mass, displacedVolume }))
  const series = buoyancySeries(points, { items: rigid, foamSuits: [foamSuit] }, water)
  expect(series[0]?.net).toBeCloseTo(cases[0]?.withBallast ?? 0, 6)
  expect(series.at(-1)?.net).toBeCloseTo(cases[2]?.withBallast ?? 1, 6)
  expect(series[1]?.foamLift).toBeLessThan(series[0]?.foamLift ?? 0)
  const volume = series[1]?.deviceVolume ?? gasVolumeOf(0, litre)
  expect(inUnit(volume, litre) * 1.025 + (series[1]?.net ?? 0) / kilogramForce.factor).toBeCloseTo(0, 9)
  const pressure = pressureAtDepth({ ...water, depth: depthOf(30, metre) })
  expect(inUnit(series[1]?.deviceGas ?? measure(0, barLitre), barLitre)).toBeCloseTo(
    inUnit(volume, litre) * inUnit(pressure, bar),
    9,
  )
})

test('bad input is refused with its path', () => {
  expect(() => ballast(diver, { ...conditions, ballastDensity: measure(11.34, kilogramPerCubicMetre) })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'conditions.ballastDensity' }),
  )
  const missing = { ...diver, items: [{ mass: measure(80, kilogram), displacedVolume: Number.NaN as never }] }
  expect(() => ballast(missing, conditions)).toThrow(
    expect.objectContaining({ argument: 'diver.items[0].displacedVolume' }),
  )
  expect(() =>
    buoyancySeries([...points].reverse(), { items: diver.items, foamSuits: diver.foamSuits }, water),
  ).toThrow(expect.objectContaining({ code: 'input', argument: 'points[1].time' }))
})

// Taken as stated, such moments gave 3.0 and 5.0 kg where 7.0 were needed.
test.each([
  [
    'an end below the deepest point',
    { depths: { ...conditions.depths, end: depthOf(30.1, metre) } },
    {},
    'conditions.depths.end',
  ],
  ['a start below it', { depths: { ...conditions.depths, start: depthOf(40, metre) } }, {}, 'conditions.depths.start'],
  [
    'gas of start and end exchanged',
    {},
    { cylinders: [{ ...cylinder, gasMass: { start: gasMass(30), deepest: gasMass(150), end: gasMass(200) } }] },
    'diver.cylinders[0].gasMass.deepest',
  ],
  [
    'gas gained on the way up',
    {},
    { cylinders: [{ ...cylinder, gasMass: { start: gasMass(200), deepest: gasMass(50), end: gasMass(60) } }] },
    'diver.cylinders[0].gasMass.end',
  ],
])('moments that contradict one another are refused: %s', (_, changedConditions, changedDiver, argument) => {
  expect(() => ballast({ ...diver, ...changedDiver }, { ...conditions, ...changedConditions })).toThrow(
    expect.objectContaining({ code: 'input', argument }),
  )
})

test('moments at one depth, and gas that nobody breathed, are no contradiction', () => {
  const same = {
    ...conditions,
    depths: { start: depthOf(5, metre), deepest: depthOf(5, metre), end: depthOf(5, metre) },
  }
  const still = { ...cylinder, gasMass: { start: gasMass(50), deepest: gasMass(50), end: gasMass(50) } }
  const { cases } = ballast({ ...diver, cylinders: [still] }, same)
  expect(new Set(cases.map(({ ballast: mass }) => mass)).size).toBe(1)
})

test('gas in the suit is checked at every moment, and misspelt keys are refused', () => {
  const ten = gasVolumeOf(10, litre)
  for (const moment of ['start', 'deepest', 'end'] as const) {
    for (const wrong of [gasVolumeOf(201, litre), -0.001 as typeof ten, Number.NaN as typeof ten]) {
      const suitGas = { start: ten, deepest: ten, end: ten, [moment]: wrong }
      expect(() => ballast({ ...diver, suitGas }, conditions)).toThrow(
        expect.objectContaining({ code: 'range', argument: `diver.suitGas.${moment}` }),
      )
    }
  }
  const short = { ...diver, suitGas: { start: ten, deepest: ten } } as unknown as EquippedDiver
  expect(() => ballast(short, conditions)).toThrow(expect.objectContaining({ argument: 'diver.suitGas.end' }))
  const misspelt = { ...diver, suitgas: { start: ten, deepest: ten, end: ten } }
  expect(() => ballast(misspelt, conditions)).toThrow(/Did you mean suitGas/)
  const { cautions } = ballast(diver, conditions)
  expect(cautions).toEqual(['buoyancy', 'always'])
})

test('a check in the water gives the ballast that the three cases give, for the body that the check implies', () => {
  const found = ballast(diver, conditions)
  // level with the ballast of the end at 5 m and 30 bar; the same diver checked at 1 m with 200 bar and 2.6 L in the device
  const pull = (1 - water.density / conditions.ballastDensity) * 9.80665
  const atCheck = { depth: depthOf(1, metre), gasMass: gasMass(200), gasVolume: gasVolumeOf(2.6, litre) }
  const pressureAtCheck = pressureAtDepth({ ...water, depth: atCheck.depth })
  const rigid = [...diver.items, ...diver.cylinders]
  const volume =
    rigid.reduce<number>((sum, { displacedVolume }) => sum + displacedVolume, 0) +
    foamVolume(foamSuit, pressureAtCheck) +
    atCheck.gasVolume
  const mass = rigid.reduce<number>((sum, { mass: each }) => sum + each, 0) + foamSuit.mass + atCheck.gasMass
  const carried = ((volume * water.density - mass) * 9.80665) / pull
  const checked = ballastFromCheck({
    water,
    ballast: measure(carried, kilogram),
    ballastDensity: conditions.ballastDensity,
    foamSuits: [foamSuit],
    check: atCheck,
    end: { depth: conditions.depths.end, gasMass: gasMass(30) },
    show: conditions.show,
  })
  expect(checked.ballast).toBeCloseTo(found.ballast, 9)
  expect(checked.ballast - carried).toBeCloseTo(checked.change, 9)
  expect(checked.shown.value).toBeGreaterThanOrEqual(checked.ballast)
  expect(checked.cautions).toEqual(['buoyancy', 'always'])
})

test('displaced volume from weighing in air and water', () => {
  // 14.2 L in water of 1000 kg/m³, 15 kg
  const weighing = {
    inAir: measure(15, kilogram),
    inWater: measure(0.8, kilogram),
    waterDensity: measure(1000, kilogramPerCubicMetre),
  }
  expect(inUnit(displacedVolumeFromWeighing(weighing), litre)).toBeCloseTo(14.2, 9)
  const floats = { ...weighing, inWater: measure(-1, kilogram) }
  expect(inUnit(displacedVolumeFromWeighing(floats), litre)).toBeCloseTo(16, 9)
  // a balance in air shows mass less 1.2 kg/m³ times volume: counted, the volume comes out exactly
  const volume = 0.0142
  const exact = { inAir: measure(15 - 1.2 * volume, kilogram), inWater: measure(15 - 1000 * volume, kilogram) }
  const airDensity = measure(1.2, kilogramPerCubicMetre)
  expect(displacedVolumeFromWeighing({ ...weighing, ...exact, airDensity })).toBeCloseTo(volume, 12)
  expect(() => displacedVolumeFromWeighing({ ...weighing, inWater: measure(15, kilogram) })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'weighing.inWater' }),
  )
  expect(() => displacedVolumeFromWeighing({ ...weighing, inWater: Number.NaN as typeof weighing.inWater })).toThrow(
    expect.objectContaining({ code: 'range' }),
  )
})
