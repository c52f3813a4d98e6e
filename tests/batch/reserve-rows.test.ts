// Rows of reserves, supplies and throttling, each against the function that the library has for it; and uncertainties by sampling.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { type RowPlan, rowComputer, rowPlanJsonSchema, runRows } from '../../src/batch/index.ts'
import { ascentReserve } from '../../src/consumption/index.ts'
import { dryAir, gasState, isoStandard, trimix } from '../../src/gas-law/index.ts'
import { minimumSupplyPressure } from '../../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  celsius,
  depthOf,
  difference,
  hectopascal,
  internalVolumeOf,
  inUnit,
  kelvin,
  kilogramPerCubicMetre,
  litre,
  litrePerMinute,
  litrePerSecond,
  measure,
  metre,
  metrePerMinute,
  minute,
  one,
  squareMillimetre,
  temperatureOf,
} from '../../src/units/index.ts'

const folder = mkdtempSync(join(tmpdir(), 'litrebar-reserves-'))
afterAll(() => rmSync(folder, { recursive: true }))

type Columns = Parameters<ReturnType<typeof rowComputer>['compute']>[0]['columns']
const computed = (plan: RowPlan, columns: Columns, from = 0) => {
  const count = Object.values(columns)[0]?.length ?? 0
  return rowComputer(plan).compute({ from, count, columns, faults: new Map() })
}

const reservePlan: RowPlan = {
  compute: ['reservePressure', 'reserveGaugePressure'],
  inputs: {
    temperature: { value: '8 °C' },
    internalVolume: { column: 'V', unit: 'L' },
    residualPressure: { value: '20 bar' },
    respiratoryMinuteVolume: { value: '40 L/min' },
    depth: { column: 'd', unit: 'm' },
    surfacePressure: { value: '1013.25 hPa' },
    waterDensity: { value: '1025 kg/m³' },
    stressFactor: { column: 's', unit: '' },
    timeAtDepth: { value: '2 min' },
    ascentRate: { value: '9 m/min' },
    stopDepth: { value: '5 m' },
    stopDuration: { column: 'stop', unit: 'min' },
    maximumPermissibleError: { value: '5 bar' },
  },
  mixture: { column: 'gas' },
}

test('a reserve by rows is that of the function, unrounded, with its cautions; a depth that is none fails its row alone', () => {
  const made = computed(reservePlan, {
    V: Float64Array.of(12, 15, 12),
    d: Float64Array.of(30, 40, -3),
    s: Float64Array.of(1.5, 2, 1.5),
    stop: Float64Array.of(3, 0, 3),
    gas: ['air', '18/45', 'air'],
  })
  const of = (volume: number, depth: number, stress: number, stop: number, mixture = dryAir) =>
    ascentReserve(
      {
        depth: depthOf(depth, metre),
        water: { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) },
        breathers: [measure(20, litrePerMinute), measure(20, litrePerMinute)],
        stressFactor: stress,
        timeAtDepth: measure(2, minute),
        ascentRate: measure(9, metrePerMinute),
        ...(stop > 0 && { stop: { depth: depthOf(5, metre), duration: measure(stop, minute) } }),
      },
      {
        internalVolume: internalVolumeOf(volume, litre),
        temperature: temperatureOf(8, celsius),
        mixture,
        residualPressure: absolute(20, bar),
        maximumPermissibleError: difference(5, bar),
      },
      { show: { unit: bar, step: 5 } },
    )
  const wanted = [of(12, 30, 1.5, 3), of(15, 40, 2, 0, trimix({ oxygen: 0.18, helium: 0.45 }))]
  wanted.forEach(({ pressure, gaugePressure, cautions }, row) => {
    // a stop of no time is one leg more for the search of the hardest moment, which ends within 1e-9
    expect(made.values['reservePressure']?.[row]).toBeCloseTo(inUnit(pressure, bar), 6)
    expect(made.values['reserveGaugePressure']?.[row]).toBeCloseTo(inUnit(gaugePressure, bar), 6)
    expect(made.texts['cautions']?.[row]).toBe(cautions.join(' '))
  })
  expect([...made.code]).toEqual([0, 0, 2])
  expect(made.values['reservePressure']?.[2]).toBeNaN()
  expect(made.errors.get(2)).toContain('depth')
})

test('a stop is stated, if only as none: a reserve does not leave one out in silence', () => {
  const { stopDuration: _, ...inputs } = reservePlan.inputs
  expect(() => rowComputer({ ...reservePlan, inputs })).toThrow('plan.inputs.stopDuration')
})

test('the lowest supply pressure by rows is that of the function, and a demand that no supply meets fails its row', () => {
  const plan: RowPlan = {
    compute: ['minimumSupplyPressure'],
    inputs: {
      temperature: { value: '4 °C' },
      breathingGasTemperature: { value: '10 °C' },
      pressureAtDepth: { column: 'a', unit: 'bar' },
      peakFlow: { column: 'q', unit: 'L/s' },
      intermediatePressure: { value: '9.5 bar' },
      regulatingMargin: { value: '3 bar' },
      orificeArea: { value: '4 mm²' },
      dischargeCoefficient: { value: '0.8' },
    },
    mixture: { value: 'air' },
  }
  const made = computed(plan, { a: Float64Array.of(4, 6, 6), q: Float64Array.of(3, 6, 90) })
  const of = (ambient: number, peak: number) =>
    minimumSupplyPressure({
      orifice: { area: measure(4, squareMillimetre), dischargeCoefficient: measure(0.8, one) },
      mixture: dryAir,
      supplyTemperature: temperatureOf(4, celsius),
      breathingGasTemperature: temperatureOf(10, celsius),
      ambientPressure: absolute(ambient, bar),
      peakFlow: measure(peak, litrePerSecond),
      intermediatePressure: difference(9.5, bar),
      regulatingMargin: difference(3, bar),
    })
  expect(made.values['minimumSupplyPressure']?.[0]).toBeCloseTo(inUnit(of(4, 3).supplyPressure, bar), 9)
  expect(made.values['minimumSupplyPressure']?.[1]).toBeCloseTo(inUnit(of(6, 6).supplyPressure, bar), 9)
  expect(made.texts['cautions']?.[0]).toBe('regulator reserve')
  expect([...made.code]).toEqual([0, 0, 2])
  expect(made.errors.get(2)).toContain('peakFlow')
})

const throttling: RowPlan = {
  compute: ['jouleThomsonCoefficient'],
  inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { value: '20 °C' } },
  mixture: { column: 'gas' },
}

test('a Joule–Thomson coefficient by rows is that of the state, below 0 for helium', () => {
  const made = computed(throttling, { p: Float64Array.of(200, 200), gas: ['air', '0/100'] })
  const of = (mixture = dryAir) =>
    gasState(mixture, { pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) }).jouleThomsonCoefficient
  // the table is within 1e-7 of the largest in the box, some 0.3 K/bar
  expect(made.values['jouleThomsonCoefficient']?.[0]).toBeCloseTo(of() * bar.factor, 6)
  expect(made.values['jouleThomsonCoefficient']?.[1]).toBeLessThan(0)
  expect(rowComputer(throttling).results[0]?.unit).toBe('K/bar')
})

const sampled: RowPlan = {
  compute: ['density'],
  inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { value: '20 °C' } },
  mixture: { value: 'nitrox 32' },
  gas: 'ideal',
  uncertainty: { pressure: '2 bar', temperature: '3 K' },
  sampling: { trials: 20_000, seed: 5 },
}

test('sampled uncertainties are those to first order where the function hardly bends', () => {
  const columns = { p: Float64Array.of(100, 200) }
  const { sampling: _, ...toFirstOrder } = sampled
  const first = computed(toFirstOrder, columns).values['u(density)']
  const found = computed(sampled, columns).values['u(density)']
  // a standard deviation from n draws is known to 1/√(2n), 0.5 %; four of them
  for (const row of [0, 1]) expect((found?.[row] ?? 0) / (first?.[row] ?? 1)).toBeCloseTo(1, 1.7)
  expect(computed({ ...sampled, sampling: { trials: 20_000, seed: 6 } }, columns).values['u(density)']).not.toEqual(
    found,
  )
})

test('where a function is at its highest the first order sees nothing, and sampling the spread of a parabola', () => {
  const plan: RowPlan = {
    compute: ['isobaricHeatCapacity'],
    inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { value: '273 K' } },
    mixture: { value: 'air' },
    tolerance: 0,
    uncertainty: { pressure: '10 bar' },
  }
  const heatAt = (p: number) =>
    gasState(dryAir, { pressure: absolute(p, bar), temperature: temperatureOf(273, kelvin) }).isobaricHeatCapacity
  const pressures = Array.from({ length: 81 }, (_, step) => 350 + step / 4)
  const highest = pressures.reduce((best, p) => (heatAt(p) > heatAt(best) ? p : best))
  const columns = { p: Float64Array.of(highest) }
  const bend = (2 * heatAt(highest) - heatAt(highest + 10) - heatAt(highest - 10)) / 2
  // y = -b z² of a normal z with deviation 1 has the deviation b √2
  const wanted = bend * Math.SQRT2
  const first = computed(plan, columns).values['u(isobaricHeatCapacity)']?.[0] ?? Number.NaN
  const drawn = { ...plan, sampling: { trials: 4000, seed: 1 } }
  const found = computed(drawn, columns).values['u(isobaricHeatCapacity)']?.[0] ?? Number.NaN
  expect(first).toBeLessThan(0.1 * wanted)
  // known to some 4 %: squares of normal numbers have long tails
  expect(found / wanted).toBeGreaterThan(0.85)
  expect(found / wanted).toBeLessThan(1.15)
})

test('a row has the same sampled uncertainty wherever its file is cut', () => {
  const p = Float64Array.from({ length: 40 }, (_, row) => 50 + 5 * row)
  const whole = computed(sampled, { p }).values['u(density)']
  const later = computed(sampled, { p: p.slice(25) }, 25).values['u(density)']
  expect([...(later ?? [])]).toEqual([...(whole?.slice(25) ?? [])])
})

test.each([
  ['by sampling', { sampling: { trials: 60, seed: 2 } }],
  ['to first order', {}],
] as const)('a file has the uncertainties that a block has, though its memory serves again: %s', async (name, how) => {
  const { sampling: _, ...plan } = {
    ...sampled,
    figures: 17,
    mixture: { column: 'gas' },
    compute: ['density', 'freeGas'],
  } as const
  const asked: RowPlan = {
    ...plan,
    ...how,
    reference: isoStandard.name,
    inputs: { ...plan.inputs, internalVolume: { value: '12 L' } },
  }
  const rows = 30_000 // two blocks
  const p = Float64Array.from({ length: rows }, (_, row) => 50 + (row % 150))
  const gas = Array.from(p, (_, row) => ['air', '18/45'][row % 2] ?? '')
  const input = join(folder, 'u.csv')
  const output = join(folder, `u-${name}.csv`)
  writeFileSync(
    input,
    `p,gas,note\n${Array.from(p, (each, row) => `${each},${gas[row] ?? ''},${'x'.repeat(40)}`).join('\n')}\n`,
  )
  await runRows({ input, output, plan: asked })
  const lines = readFileSync(output, 'utf8').split('\n')
  const { values } = computed(asked, { p, gas })
  const names = ['density', 'freeGas', 'u(density)', 'u(freeGas)']
  for (const row of [0, 1, 20_000, rows - 1]) {
    const fields = lines[row + 1]?.split(',').slice(3, 7).map(Number)
    expect(fields).toEqual(names.map((each) => values[each]?.[row]))
  }
})

test('a row for which a draw has no value fails, and the others do not', () => {
  const plan: RowPlan = {
    ...sampled,
    gas: 'real',
    uncertainty: { pressure: '2 bar' },
    sampling: { trials: 200, seed: 1 },
  }
  expect([...computed(plan, { p: Float64Array.of(1, 200) }).code]).toEqual([2, 0])
})

test.each([
  [{ ...sampled, uncertainty: undefined }, 'plan.uncertainty is missing'],
  [{ ...sampled, sampling: { trials: 10, seed: 1 } }, 'trials'],
  [{ ...sampled, sampling: { trials: 100.5, seed: 1 } }, 'trials'],
  [{ ...sampled, sampling: { trials: 100 } }, 'seed'],
  [{ ...sampled, sampling: { trials: 100, seed: -1 } }, 'seed'],
])('sampling without its numbers is refused: %#', (plan, words) => {
  expect(() => rowComputer(plan as unknown as RowPlan)).toThrow(words)
})

test('the published schema knows what is new', () => {
  const schema = JSON.stringify(rowPlanJsonSchema())
  for (const word of ['reserveGaugePressure', 'minimumSupplyPressure', 'jouleThomsonCoefficient', 'sampling'])
    expect(schema).toContain(`"${word}"`)
})
