// Rows of moisture, endurance, blends, stamps and due dates, each against the function that the library has for it.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { tableFromIPC } from 'apache-arrow'
import { parquetReadObjects } from 'hyparquet'
import { asyncBufferFromFile } from 'hyparquet/src/node.js'
import { afterAll, expect, test, vi } from 'vitest'
import { type RowPlan, rowComputer, rowPlanJsonSchema, runRows } from '../../src/batch/index.ts'
import { endurance } from '../../src/consumption/index.ts'
import { nextRequalification, planBlend, readStamp } from '../../src/cylinder/index.ts'
import {
  dewPoint,
  dryAir,
  molarDensity,
  nitrox,
  pureGas,
  relativeHumidity,
  saturatedWaterFraction,
  saturationPressure,
  trimix,
  waterFractionFromHumidity,
} from '../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  fractionOf,
  internalVolumeOf,
  inUnit,
  kelvin,
  litre,
  litrePerMinute,
  measure,
  millibar,
  minute,
  partPerMillion,
  percent,
  temperatureOf,
} from '../../src/units/index.ts'

vi.setConfig({ testTimeout: 60_000 })

const folder = mkdtempSync(join(tmpdir(), 'litrebar-records-'))
afterAll(() => rmSync(folder, { recursive: true }))

type Columns = Parameters<ReturnType<typeof rowComputer>['compute']>[0]['columns']
const computed = (plan: RowPlan, columns: Columns) => {
  const count = Object.values(columns)[0]?.length ?? 0
  return rowComputer(plan).compute({ from: 0, count, columns, faults: new Map() })
}

test('moisture by rows is that of the functions', () => {
  const made = computed(
    {
      compute: [
        'saturationPressure',
        'saturatedWaterFraction',
        'waterFractionFromHumidity',
        'relativeHumidity',
        'dewPoint',
      ],
      inputs: {
        pressure: { column: 'p', unit: 'bar' },
        temperature: { column: 'T', unit: '°C' },
        relativeHumidity: { column: 'h', unit: '%' },
        waterFraction: { value: '67 ppm' },
      },
    },
    { p: Float64Array.of(1, 200, 200), T: Float64Array.of(25, 20, -200), h: Float64Array.of(60, 40, 50) },
  )
  const states = [
    { pressure: absolute(1, bar), temperature: temperatureOf(25, celsius) },
    { pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) },
  ]
  const waterFraction = fractionOf(67, partPerMillion)
  states.forEach((state, row) => {
    const humidity = measure([60, 40][row] ?? 0, percent)
    const found = (name: string) => made.values[name]?.[row] ?? Number.NaN
    expect(found('saturationPressure')).toBeCloseTo(inUnit(saturationPressure(state.temperature), millibar), 9)
    expect(found('saturatedWaterFraction')).toBeCloseTo(inUnit(saturatedWaterFraction(state), partPerMillion), 6)
    expect(found('waterFractionFromHumidity')).toBeCloseTo(
      inUnit(waterFractionFromHumidity({ ...state, relativeHumidity: humidity }), partPerMillion),
      6,
    )
    expect(found('relativeHumidity')).toBeCloseTo(inUnit(relativeHumidity({ ...state, waterFraction }), percent), 9)
    const point = dewPoint({ pressure: state.pressure, waterFraction })
    expect(found('dewPoint')).toBeCloseTo(inUnit(point.temperature, celsius), 9)
  })
  expect([...made.code]).toEqual([0, 0, 3])
  expect(made.values['saturationPressure']?.[2]).toBeNaN()
  expect(made.errors.get(2)).toContain('temperature')
})

test('endurance by rows is that of the function, with its cautions beside it, and a residual below ambient fails its row alone', () => {
  const made = computed(
    {
      compute: ['endurance'],
      inputs: {
        gaugePressure: { column: 'p', unit: 'bar' },
        ambientPressure: { value: '1 bar' },
        temperature: { value: '10 °C' },
        internalVolume: { column: 'V', unit: 'L' },
        residualPressure: { column: 'r', unit: 'bar' },
        pressureAtDepth: { value: '3 bar' },
        breathingGasTemperature: { value: '10 °C' },
        respiratoryMinuteVolume: { value: '20 L/min' },
      },
      mixture: { column: 'gas' },
    },
    {
      p: Float64Array.of(199, 231, 199),
      V: Float64Array.of(12, 15, 12),
      r: Float64Array.of(50, 40, 2),
      gas: ['air', 'nitrox 32', 'air'],
    },
  )
  const of = (pressure: number, volume: number, residual: number, mixture = dryAir) =>
    endurance({
      cylinders: [
        {
          contents: {
            internalVolume: internalVolumeOf(volume, litre),
            pressure: absolute(pressure, bar),
            temperature: temperatureOf(10, celsius),
            mixture,
          },
          residualPressure: absolute(residual, bar),
        },
      ],
      respiratoryMinuteVolume: measure(20, litrePerMinute),
      ambientPressure: absolute(3, bar),
      breathingGasTemperature: temperatureOf(10, celsius),
    })
  const found = made.values['endurance'] ?? new Float64Array(0)
  expect(found[0]).toBeCloseTo(inUnit(of(200, 12, 50).duration, minute), 9)
  expect(found[1]).toBeCloseTo(inUnit(of(232, 15, 40, nitrox(0.32)).duration, minute), 9)
  expect(found[2]).toBeNaN()
  expect([...made.code]).toEqual([0, 0, 2])
  expect(made.texts['cautions']).toEqual([of(200, 12, 50).cautions.join(' '), of(232, 15, 40).cautions.join(' '), ''])
})

test('a blend by rows stops at the pressures of the plan', () => {
  const made = computed(
    {
      compute: ['blendAfterHelium', 'blendAfterOxygen', 'blendAfterAir'],
      inputs: {
        pressure: { column: 'p', unit: 'bar' },
        temperature: { value: '20 °C' },
        internalVolume: { value: '12 L' },
        targetPressure: { value: '232 bar' },
        targetOxygen: { column: 'o', unit: '%' },
        targetHelium: { column: 'h', unit: '%' },
      },
      mixture: { value: 'air' },
    },
    { p: Float64Array.of(1, 50), o: Float64Array.of(18, 32), h: Float64Array.of(45, 0) },
  )
  const of = (pressure: number, oxygen: number, helium: number) =>
    planBlend({
      internalVolume: internalVolumeOf(12, litre),
      start: { mixture: dryAir, pressure: absolute(pressure, bar) },
      target: { oxygen: fractionOf(oxygen), helium: fractionOf(helium), pressure: absolute(232, bar) },
      gases: [...(helium > 0 ? [pureGas('helium')] : []), pureGas('oxygen'), dryAir],
      temperature: temperatureOf(20, celsius),
    })
  const stops = (row: number) =>
    ['blendAfterHelium', 'blendAfterOxygen', 'blendAfterAir'].map((name) => made.values[name]?.[row]?.toFixed(6))
  const wanted = [of(1, 0.18, 0.45), of(50, 0.32, 0)]
  expect(stops(0)).toEqual(wanted[0]?.steps.map((step) => inUnit(step.pressure, bar).toFixed(6)))
  expect(stops(1)).toEqual(['NaN', ...(wanted[1]?.steps ?? []).map((step) => inUnit(step.pressure, bar).toFixed(6))])
  expect(made.texts['cautions']).toEqual(wanted.map(({ cautions }) => cautions.join(' ')))
})

const stamps = ['DOT-3AL3000 P4711 BRISKA 07 V 08 10 A902 23', 'no marks at all', 'DOT-3AL3000 P12 BRISKA 07 V 98']
const stampPlan: RowPlan = {
  compute: [
    'stampSpecification',
    'stampSerial',
    'stampServicePressure',
    'stampWaterCapacity',
    'stampLastTest',
    'requalificationDue',
  ],
  inputs: {},
  stamp: { column: 'marks' },
  ruleSet: 'us-180.209',
  asOf: '2026-11-25',
  units: { stampServicePressure: 'psi' },
}

test.each(['csv', 'ndjson', 'arrow', 'parquet'] as const)('stamps and due dates by rows, as %s', async (format) => {
  const input = join(folder, 'stamps.csv')
  writeFileSync(input, `marks\n${stamps.join('\n')}\n`)
  const output = join(folder, `stamps-out.${format}`)
  const done = await runRows({ input, output, plan: stampPlan })
  expect(done.bad).toEqual({ input: 1 })
  const rows = await rowsOf(output, format)
  const stamp = readStamp(stamps[0] ?? '', { asOf: '2026-11-25' })
  const next = nextRequalification(stamp, { ruleSet: 'us-180.209', asOf: '2026-11-25' })
  expect(rows[0]).toMatchObject({
    marks: stamps[0],
    stampSpecification: '3AL',
    stampSerial: stamp.serial,
    stampLastTest: '2023-10',
    requalificationDue: '2028-10',
    requalificationVerdict: [next.verdict, ...next.because.map(({ code }) => code)].join(' '),
    cautions: next.cautions.join(' '),
  })
  expect(Number(rows[0]?.['stampServicePressure (psi)'])).toBeCloseTo(3000, 6)
  // the stamp has none: not a bad row
  expect(rows[0]?.['stampWaterCapacity (L)'] ?? '').toBe('')
  expect(rows[1]?.['stampSpecification'] ?? '').toBe('')
  expect(String(rows[1]?.['error'])).not.toBe('')
  expect(String(rows[2]?.['requalificationVerdict'])).toMatch(/^beyond/)
})

async function rowsOf(
  path: string,
  format: 'csv' | 'ndjson' | 'arrow' | 'parquet',
): Promise<Record<string, unknown>[]> {
  const text = (): string[] => readFileSync(path, 'utf8').trimEnd().split('\n')
  if (format === 'ndjson') return text().map((line) => JSON.parse(line) as Record<string, unknown>)
  if (format === 'parquet') return parquetReadObjects({ file: await asyncBufferFromFile(path) })
  if (format === 'arrow') {
    const table = tableFromIPC(readFileSync(path))
    return Array.from(
      { length: table.numRows },
      (_, row) => (table.get(row)?.toJSON() ?? {}) as Record<string, unknown>,
    )
  }
  const [heading = '', ...lines] = text()
  return lines.map((line) =>
    Object.fromEntries(line.split(',').map((field, place) => [heading.split(',')[place] ?? '', field])),
  )
}

test('standard uncertainties are those of the derivatives, pressure and temperature together', () => {
  const plan: RowPlan = {
    compute: ['molarDensity', 'dewPoint'],
    inputs: {
      pressure: { column: 'p', unit: 'bar' },
      temperature: { column: 'T', unit: 'K' },
      waterFraction: { value: '67 ppm' },
    },
    mixture: { column: 'gas' },
    uncertainty: { pressure: '1 bar', temperature: '0.5 K' },
    tolerance: 0,
  }
  const made = computed(plan, {
    p: Float64Array.of(200, 50, 8000),
    T: Float64Array.of(290, 280, 290),
    gas: ['air', '18/45', 'air'],
  })
  const gases = [dryAir, trimix({ oxygen: 0.18, helium: 0.45 })]
  ;[
    [200, 290],
    [50, 280],
  ].forEach(([p = 0, T = 0], row) => {
    const at = (dp: number, dT: number) =>
      molarDensity(gases[row] ?? dryAir, absolute(p + dp, bar), temperatureOf(T + dT, kelvin))
    const byPressure = (at(0.01, 0) - at(-0.01, 0)) / 0.02
    const byTemperature = ((at(0, 0.01) - at(0, -0.01)) / 0.02) * 0.5
    expect(made.values['u(molarDensity)']?.[row]).toBeCloseTo(Math.hypot(byPressure, byTemperature), 1)
  })
  expect(made.values['u(dewPoint)']?.[0]).toBeGreaterThan(0)
  expect(made.values['u(molarDensity)']?.[2]).toBeNaN()
  expect(rowComputer(plan).results.map(({ name, unit }) => `${name} ${unit}`)).toEqual([
    'molarDensity mol/m³',
    'dewPoint °C',
    'u(molarDensity) mol/m³',
    'u(dewPoint) K',
  ])
})

test('an uncertainty that reaches where there is no value fails its row, and says why', () => {
  const made = computed(
    {
      compute: ['saturationPressure'],
      inputs: { temperature: { column: 'T', unit: 'K' } },
      uncertainty: { temperature: '20 K' },
    },
    { T: Float64Array.of(290, 60) },
  )
  expect([...made.code]).toEqual([0, 3])
  expect(made.errors.get(1)).toContain('40 K')
})

const moisture: RowPlan = { compute: ['saturationPressure'], inputs: { temperature: { column: 'T', unit: 'K' } } }
test.each([
  [{ ...moisture, uncertainty: { pressure: '1 bar' } }, 'There is no pressure'],
  [{ ...moisture, uncertainty: { temperature: '0 K' } }, 'above 0'],
  [{ ...moisture, uncertainty: { temperature: '1 bar' } }, 'bar'],
  [
    { ...moisture, compute: ['density'], inputs: { ...moisture.inputs, pressure: { value: '1 bar' } } },
    'plan.mixture is missing',
  ],
  [{ ...stampPlan, stamp: undefined }, 'plan.stamp is missing'],
  [{ ...stampPlan, ruleSet: undefined }, 'plan.ruleSet is missing'],
  [{ ...stampPlan, asOf: 'yesterday' }, 'asOf'],
  [{ ...stampPlan, ruleSet: 'none' }, 'ruleSet'],
  [{ ...stampPlan, units: { stampSerial: 'bar' } }, 'The result is words'],
  [{ ...moisture, compute: ['endurance'] }, 'missing'],
])('a plan that leaves out what a result rests on is refused: %#', (plan, words) => {
  expect(() => rowComputer(plan as unknown as RowPlan)).toThrow(words)
})

test('results that nobody should do without come unasked, once', () => {
  expect(rowComputer(stampPlan).results.map(({ name }) => name)).toEqual([
    ...stampPlan.compute,
    'stampFindings',
    'requalificationVerdict',
    'cautions',
  ])
  expect(JSON.stringify(rowPlanJsonSchema())).toContain('blendAfterHelium')
})
