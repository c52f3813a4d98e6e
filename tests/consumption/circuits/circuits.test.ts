import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  assessSemiClosed,
  circuitEndurance,
  endurance,
  oxygenEndurance,
  type SemiClosedLoop,
  semiClosedFlow,
  semiClosedOxygen,
  semiClosedUptake,
} from '../../../src/consumption/index.ts'
import { pureGas, stpd } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  type FreeGasFlow,
  freeGasFlowOf,
  freeGasOf,
  inUnit,
  litre,
  litrePerMinute,
  measure,
  minute,
  one,
  pascal,
  temperatureOf,
} from '../../../src/units/index.ts'
import { cylinder } from '../given.ts'

const flow = (litres: number): FreeGasFlow<'STPD'> => freeGasFlowOf(litres, litrePerMinute, stpd)
const supply = { flow: flow(7.3), oxygen: measure(0.5, one) }

// semi-closed-balance, worked example: 7.3 L/min of 50 % and 0.9 L/min taken up: (3.65 - 0.9) / (7.3 - 0.9)
test('the steady fraction is what is left of the oxygen over what is left of the gas', () => {
  expect(semiClosedOxygen(supply, flow(0.9))).toBeCloseTo(2.75 / 6.4, 12)
})

test('the fraction falls with work and rises with flow and richness; flow and uptake are its inverses', () => {
  const numbers = { noNaN: true } as const
  assert(
    property(
      double({ min: 3, max: 40, ...numbers }),
      double({ min: 0.25, max: 0.99, ...numbers }),
      double({ min: 0.05, max: 0.9, ...numbers }),
      (litres, oxygen, share) => {
        const given = { flow: flow(litres), oxygen: measure(oxygen, one) }
        const uptake = Math.min(share * litres * oxygen, 9)
        const fraction = semiClosedOxygen(given, flow(uptake))
        expect(fraction).toBeLessThan(oxygen)
        expect(semiClosedOxygen(given, flow(uptake * 0.9))).toBeGreaterThan(fraction)
        expect(inUnit(semiClosedUptake(given, fraction), litrePerMinute)).toBeCloseTo(uptake, 9)
        const back = semiClosedFlow({ oxygen: given.oxygen }, { uptake: flow(uptake), fraction })
        expect(inUnit(back, litrePerMinute) / litres).toBeCloseTo(1, 9)
      },
    ),
  )
})

// Brute force: a loop of 6 L at 3 bar, filled with the supply, followed in steps of a tenth of a second to its steady state.
test('a loop followed in time settles at the steady fraction, whatever its volume and depth', () => {
  for (const [volume, pressure] of [
    [6, 3],
    [10, 1],
  ] as const) {
    const gas = volume * pressure
    let oxygen = 0.5 * gas
    for (let step = 0; step < 600 * 60; step++) {
      const out = 7.3 - 1.5
      oxygen += (0.5 * 7.3 - 1.5 - (out * oxygen) / gas) / 600
    }
    expect(oxygen / gas).toBeCloseTo(semiClosedOxygen(supply, flow(1.5)), 6)
  }
})

test('an uptake that meets the oxygen supplied has no steady state, and is refused', () => {
  expect(() => semiClosedOxygen(supply, flow(3.65))).toThrow(
    expect.objectContaining({ code: 'range', argument: 'uptake', value: '3.65 L/min' }),
  )
  expect(() => semiClosedOxygen(supply, Number.NaN as FreeGasFlow<'STPD'>)).toThrow(
    expect.objectContaining({ code: 'range' }),
  )
  expect(() => semiClosedUptake(supply, measure(0.5, one))).toThrow(expect.objectContaining({ argument: 'fraction' }))
})

const loop: SemiClosedLoop = {
  supply,
  uptake: { lowest: flow(0.3), highest: flow(2.5) },
  ambientPressure: { shallowest: absolute(1, bar), deepest: absolute(2.8, bar) },
}
const limits = { highest: absolute(1.4, bar), lowest: absolute(0.2, bar) }

// every condition both ways; 1.15 / 4.8 = 0.2396 bar at the surface, 0.5 · 2.8 = 1.4 bar at depth
test.each([
  { name: 'all within, the highest at its limit', change: {}, verdict: 'within', codes: [] },
  {
    name: 'hard work at the surface',
    change: { uptake: { lowest: flow(0.3), highest: flow(2.8) } },
    verdict: 'beyond',
    codes: ['below-lowest-oxygen'],
  },
  {
    name: 'the same work, never at the surface',
    change: {
      uptake: { lowest: flow(0.3), highest: flow(2.8) },
      ambientPressure: { shallowest: absolute(1.5, bar), deepest: absolute(2.8, bar) },
    },
    verdict: 'within',
    codes: [],
  },
  {
    name: 'too deep for the supply',
    change: { ambientPressure: { shallowest: absolute(1, bar), deepest: absolute(2.81, bar) } },
    verdict: 'beyond',
    codes: ['above-highest-oxygen'],
  },
  {
    name: 'work beyond the supply',
    change: { uptake: { lowest: flow(0.3), highest: flow(3.65) } },
    verdict: 'beyond',
    codes: ['uptake-meets-supply', 'below-lowest-oxygen'],
  },
])('a semi-closed loop, $name: $verdict', ({ change, verdict, codes }) => {
  const found = assessSemiClosed({ ...loop, ...change }, limits)
  expect(found.verdict).toBe(verdict)
  expect(found.because.map(({ code }) => code)).toEqual([...codes, 'steady-states-only'])
  expect(found.cautions).toEqual(['breathing-loop', 'oxygen-limits', 'analyse-mixture', 'always'])
  expect(found.margin).toBeCloseTo(found.value - limits.lowest, 9)
})

test('the swing lies between hardest work and rest; exchanged bounds and missing limits are refused', () => {
  const { swing, value } = assessSemiClosed(loop, limits)
  expect(swing.lowest).toBeCloseTo(1.15 / 4.8, 12)
  expect(swing.highest).toBeCloseTo(3.35 / 7, 12)
  expect(inUnit(value, bar)).toBeCloseTo(1.15 / 4.8, 12)
  const exchanged = { ...loop, uptake: { lowest: flow(2.5), highest: flow(0.3) } }
  expect(() => assessSemiClosed(exchanged, limits)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'loop.uptake.lowest' }),
  )
  expect(() => assessSemiClosed(loop, { highest: limits.highest } as typeof limits)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'limits.lowest' }),
  )
})

const conditions = {
  ambientPressure: absolute(4, bar),
  breathingGasTemperature: temperatureOf(15, celsius),
  uptake: flow(1.5),
  respiratoryQuotient: 0.9,
}
const air = { contents: cylinder(12, 200), residualPressure: absolute(20, bar) }
const oxygen = {
  contents: { ...cylinder(3, 200), mixture: pureGas('oxygen') },
  residualPressure: absolute(20, bar),
}
const circuits = {
  open: { cylinder: air, respiratoryMinuteVolume: measure(36, litrePerMinute) },
  semiClosed: { cylinder: air, flow: flow(12), absorbentCapacity: freeGasOf(250, litre, stpd) },
  closed: { cylinder: oxygen, absorbentCapacity: freeGasOf(250, litre, stpd) },
}

test('side by side: the open circuit shortens with depth, the others do not', () => {
  const rows = circuitEndurance(circuits, conditions)
  const [open, semiClosed, closed] = rows
  expect(rows.map(({ circuit }) => circuit)).toEqual(['open', 'semiClosed', 'closed'])
  const { duration } = endurance({
    cylinders: [air],
    respiratoryMinuteVolume: measure(36, litrePerMinute),
    ambientPressure: conditions.ambientPressure,
    breathingGasTemperature: conditions.breathingGasTemperature,
  })
  expect((open?.duration ?? 0) / duration).toBeCloseTo(1, 9)
  const flask = { contents: oxygen.contents, residualPressure: oxygen.residualPressure }
  expect((closed?.gasLasts ?? 0) / oxygenEndurance(flask, flow(1.5))).toBeCloseTo(1, 9)
  // 250 L of carbon dioxide at 0.9 · 1.5 L/min
  expect(inUnit(closed?.absorbentLasts ?? measure(0, minute), minute)).toBeCloseTo(250 / 1.35, 9)
  expect(closed?.limitedBy).toBe('absorbent')
  expect(semiClosed?.limitedBy).toBe('gas')
  expect(open).not.toHaveProperty('absorbentLasts')
  const deeper = circuitEndurance(circuits, { ...conditions, ambientPressure: absolute(8, bar) })
  expect((deeper[0]?.gasTaken ?? 0) / (open?.gasTaken ?? 1)).toBeCloseTo(2, 1)
  expect(deeper[0]?.duration).toBeLessThan((open?.duration ?? 0) * 0.55)
  expect(deeper[1]?.gasLasts).toBe(semiClosed?.gasLasts)
  expect(deeper[2]?.duration).toBe(closed?.duration)
  expect(open?.cautions).toContain('reserve')
  for (const loopRow of [semiClosed, closed]) expect(loopRow?.cautions).toContain('breathing-loop')
})

test('a residual below ambient, a capacity of nothing and an unknown circuit are refused', () => {
  const low = { ...air, residualPressure: absolute(3, bar) }
  expect(() => circuitEndurance({ open: { ...circuits.open, cylinder: low } }, conditions)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'circuits.open.cylinder.residualPressure' }),
  )
  const spent = { ...circuits.closed, absorbentCapacity: freeGasOf(0, litre, stpd) }
  expect(() => circuitEndurance({ closed: spent }, conditions)).toThrow(
    expect.objectContaining({ argument: 'circuits.closed.absorbentCapacity' }),
  )
  // @ts-expect-error -- no such circuit
  expect(() => circuitEndurance({ semiclosed: circuits.semiClosed }, conditions)).toThrow(/Did you mean semiClosed/)
})

test('oxygen that just reaches its lowest limit is within it, and a breath less is not', () => {
  const { value } = assessSemiClosed(loop, limits)
  expect(assessSemiClosed(loop, { ...limits, lowest: value }).verdict).toBe('within')
  expect(assessSemiClosed(loop, { ...limits, lowest: absolute(value * (1 + 1e-9), pascal) }).verdict).toBe('beyond')
})

test('the reasons say the numbers behind them', () => {
  const spent = assessSemiClosed({ ...loop, uptake: { lowest: flow(0.3), highest: flow(3.65) } }, limits)
  expect(spent.because[0]?.text).toContain('3.65 L/min no oxygen is left of the 3.65 L/min')
  const deep = { ...loop, ambientPressure: { shallowest: absolute(1, bar), deepest: absolute(3, bar) } }
  expect(assessSemiClosed(deep, limits).because[0]?.text).toContain('up to 1.5 bar')
})

test('the one that ends first limits, gas and absorbent both ways, and each circuit may stand alone', () => {
  const semiClosed = (litres: number) =>
    circuitEndurance(
      { semiClosed: { ...circuits.semiClosed, absorbentCapacity: freeGasOf(litres, litre, stpd) } },
      conditions,
    )
  const [first] = semiClosed(100)
  // what 0.9 · 1.5 L/min of carbon dioxide come to while the gas lasts
  const litres = 1.35 * inUnit(first?.gasLasts ?? measure(0, minute), minute)
  for (const [share, limitedBy] of [
    [0.999, 'absorbent'],
    [1.001, 'gas'],
  ] as const) {
    const rows = semiClosed(litres * share)
    expect(rows).toHaveLength(1)
    expect(rows[0]?.limitedBy).toBe(limitedBy)
    expect(rows[0]?.duration).toBe(limitedBy === 'gas' ? rows[0]?.gasLasts : rows[0]?.absorbentLasts)
  }
})
