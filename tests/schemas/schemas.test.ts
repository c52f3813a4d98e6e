import { expect, test } from 'vitest'
import * as z from 'zod/mini'
import { gases, mixtureFromText } from '../../src/gas-law/index.ts'
import {
  breathedDiveSchema,
  breathingLogSchema,
  breathingSettingSchema,
  cylinderContentsSchema,
  diveProfileSchema,
  type InputName,
  inputSchemas,
  jsonSchemaOf,
  measuredUseSchema,
  mixtureSchema,
  quantitySchema,
  registerRowSchema,
  stampSchema,
  testConditionsSchema,
} from '../../src/schemas/index.ts'
import { absolute, bar, type GaugePressure, gauge, hectopascal, psi } from '../../src/units/index.ts'

const contents = {
  internalVolume: '12 L',
  gaugePressure: { value: 3000, unit: 'psi' },
  ambientPressure: '1013,25 hPa',
  temperature: '15 °C',
  mixture: { oxygen: 0.21, nitrogen: 0.79 },
}

test('gives branded numbers in SI from text, and from number and unit apart', () => {
  const read = cylinderContentsSchema.parse(contents)
  expect(read).toMatchObject({
    internalVolume: 0.012,
    gaugePressure: gauge(3000, psi),
    ambientPressure: absolute(1013.25, hectopascal),
    temperature: 288.15,
  })
  const filled: GaugePressure = quantitySchema('gauge pressure').parse('232 bar')
  expect(filled).toBe(gauge(232, bar))
})

test('reports every problem at once, each at its place and with the facts of the library’s error', () => {
  const wrong = {
    ...contents,
    gaugePressure: '3000 bar',
    temperature: '72 °C',
    internalVolume: '200 b',
    mixture: { oxygen: 0.5, nitrogen: 0.4 },
  }
  const { error } = cylinderContentsSchema.safeParse(wrong)
  const issues = error?.issues.map((issue) => [issue.path.join('.'), issue.message]) ?? []
  expect(Object.fromEntries(issues)).toEqual({
    gaugePressure: expect.stringContaining('a number in psi was read as bar'),
    temperature: expect.stringContaining('a number in °F was read as °C'),
    internalVolume: expect.stringContaining('expected a unit of volume'),
    mixture: expect.stringMatching(/expected .*1/),
  })
  const mixtureIssue = error?.issues.find((issue) => issue.path[0] === 'mixture')
  expect(mixtureIssue).toMatchObject({ code: 'custom', params: { code: 'mixture', hint: expect.any(String) } })
})

test('an unusual number is taken where the caller allows it', () => {
  expect(quantitySchema('gauge pressure', { role: 'cylinder gauge pressure' }).safeParse('700 bar').success).toBe(false)
  expect(
    quantitySchema('gauge pressure', { role: 'cylinder gauge pressure', allowUnusual: true }).parse('700 bar'),
  ).toBe(gauge(700, bar))
})

test.each([
  [{ oxygen: Number.NaN, nitrogen: 0.79 }],
  [{ oxygen: -0.1, nitrogen: 1.1 }],
  [{ oxygen: 0.21, nitrogen: 0.79, neon: 0 }],
  ['airr'],
  ['32'],
  [null],
])('refuses the mixture %o without a crash', (input) => {
  expect(mixtureSchema.safeParse(input).success).toBe(false)
})

test('a bare number is refused with what to write', () => {
  const message = (input: unknown): string | undefined =>
    quantitySchema('gauge pressure').safeParse(input).error?.issues[0]?.message
  expect(message(232)).toContain('232 has no unit. Write 232 bar')
  expect(message(null)).toContain('such as "232 bar"')
})

test('what a schema gives goes back into a form that it reads, through JSON, without losing a bit', () => {
  const read = cylinderContentsSchema.parse({ ...contents, mixture: '18/45' })
  const written = JSON.parse(JSON.stringify(z.encode(cylinderContentsSchema, read))) as unknown
  expect(cylinderContentsSchema.parse(written)).toEqual(read)
  expect(written).toMatchObject({ gaugePressure: { value: gauge(3000, psi), unit: 'Pa' }, mixture: { helium: 0.45 } })
  const setting = {
    tidalVolume: '2.5 L',
    breathingFrequency: '25 /min',
    waveform: { shape: 'trapezoid', inhalationShare: 0.4, rampShare: 0.1 },
  } as const
  const set = breathingSettingSchema.parse(setting)
  expect(breathingSettingSchema.parse(JSON.parse(JSON.stringify(z.encode(breathingSettingSchema, set))))).toEqual(set)
  const log = breathingLogSchema.parse({
    time: { values: [0, 0.5], unit: 's' },
    flow: { values: [1, null], unit: 'L/min' },
    pressure: { values: [0, -12], unit: 'cmH2O' },
  })
  expect(breathingLogSchema.parse(JSON.parse(JSON.stringify(z.encode(breathingLogSchema, log))))).toEqual(log)
  const conditions = testConditionsSchema.parse({ gas: 'air', supplyPressure: '50 bar' })
  expect(testConditionsSchema.parse(z.encode(testConditionsSchema, conditions))).toEqual(conditions)
  expect(z.encode(testConditionsSchema, testConditionsSchema.parse({}))).toEqual({})
  const stamp = stampSchema.parse('DOT-3AL3000\nP4711 BRISKA\n07 V 08')
  expect(stampSchema.parse(z.encode(stampSchema, stamp))).toMatchObject({
    system: 'US',
    serial: stamp.serial,
  })
})

test.each(['air', 'nitrox 32', '18/45', 'heliox 21', '32 %'])('a mixture is taken as people write it: %s', (text) => {
  const made = mixtureSchema.parse(text)
  expect(gases.map((gas) => made[gas])).toEqual(gases.map((gas) => mixtureFromText(text)[gas]))
  expect(mixtureSchema.parse(z.encode(mixtureSchema, made))).toEqual(made)
})

const water = { surfacePressure: '1 atm', density: '1025 kg/m³' }

test('a profile that goes back in time is one issue that names the point', () => {
  const points = [
    { time: '0 min', depth: '0 m' },
    { time: '5 min', depth: '20 m' },
    { time: '4 min', depth: '10 m' },
  ]
  const { error } = diveProfileSchema.safeParse({ water, points })
  expect(error?.issues).toHaveLength(1)
  expect(error?.issues[0]?.message).toContain('points[2].time')
  expect(diveProfileSchema.parse({ water, points: points.slice(0, 2) })).toHaveLength(2)
})

test('a depth without the pressure at its surface is refused by name', () => {
  const { error } = diveProfileSchema.safeParse({ water: { density: '1000 kg/m³' }, points: [] })
  expect(error?.issues.map((issue) => issue.path.join('.'))).toContain('water.surfacePressure')
})

test('a log keeps its missing values as missing, and needs exactly one of volume and flow', () => {
  const time = { values: [0, 0.5, 1], unit: 's' }
  const pressure = { values: [0, null, -12], unit: 'cmH2O' }
  const log = breathingLogSchema.parse({ time, volume: { values: [0, 1, 2], unit: 'L' }, pressure })
  expect([...log.pressure]).toEqual([0, Number.NaN, -12 * 98.0665])
  expect(breathingLogSchema.safeParse({ time, pressure }).success).toBe(false)
  expect(
    breathingLogSchema.safeParse({ time: { values: [0], unit: 'bar' }, pressure }).error?.issues[0]?.message,
  ).toContain('unit of duration')
})

test('a stamp is read with its findings; a register row keeps its stamp as text', () => {
  expect(stampSchema.parse('DOT-3AL3000\nP4711 BRISKA\n07 V 08')).toMatchObject({ system: 'US', specification: '3AL' })
  expect(stampSchema.safeParse('').error?.issues[0]).toMatchObject({ params: { code: 'stamp' } })
  expect(registerRowSchema.parse({ id: 'A1', stamp: 'nothing readable', ruleSet: 'us-180.209' })).toMatchObject({
    stamp: 'nothing readable',
  })
  expect(
    registerRowSchema.safeParse({ id: '', stamp: '', ruleSet: 'mine' }).error?.issues.map((issue) => issue.path[0]),
  ).toEqual(['id', 'ruleSet'])
})

test('conditions left out stay unknown', () => {
  expect(testConditionsSchema.parse({ ambientPressure: '6 bar' })).toEqual({ ambientPressure: absolute(6, bar) })
})

test.each(Object.keys(inputSchemas) as InputName[])(
  '%s exports a JSON Schema of draft 2020-12 that is plain JSON',
  (name) => {
    const schema = jsonSchemaOf(name)
    expect(schema).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      $id: `urn:litrebar:input:${name}`,
    })
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema)
  },
)

test('the JSON Schema of an object names its required fields and closes it to others', () => {
  expect(jsonSchemaOf('cylinderContents')).toMatchObject({
    type: 'object',
    required: ['internalVolume', 'gaugePressure', 'ambientPressure', 'temperature', 'mixture'],
    additionalProperties: false,
  })
})

test('numbers that are usual one by one, but not together, are refused with the slip', () => {
  const water = { surfacePressure: '1013.25 hPa', density: '1025 kg/m³' }
  const points = (depth: string) => ['0 m', depth, '0 m'].map((each, k) => ({ time: `${20 * k} min`, depth: each }))
  const dive = (depth: string) => ({
    cylinders: [{ before: contents, after: { ...contents, gaugePressure: '60 bar' } }],
    profile: { water, points: points(depth) },
    breathingGasTemperature: '15 °C',
    surfacePressure: '1013.25 hPa',
  })
  expect(measuredUseSchema.safeParse(dive('30 m')).success).toBe(true)
  const { error } = measuredUseSchema.safeParse(dive('98 m'))
  expect(error?.issues[0]?.message).toContain('in the depth, a number in feet was read as metres')
  const two = dive('98 m')
  expect(measuredUseSchema.safeParse({ ...two, cylinders: [...two.cylinders, ...two.cylinders] }).success).toBe(true)

  const breathed = (depth: string) => ({
    profile: { water, points: points(depth) },
    breathing: [{ from: '0 min', respiratoryMinuteVolume: '20 L/min', cylinder: 'back' }],
    cylinders: { back: { contents, residualPressure: '20 bar' } },
    breathingGasTemperature: '15 °C',
  })
  expect(breathedDiveSchema.safeParse(breathed('30 m')).success).toBe(true)
  expect(breathedDiveSchema.safeParse(breathed('98 m')).success).toBe(false)

  const conditions = { supplyPressure: '290 bar', ratedWorkingPressure: '300 bar' }
  expect(testConditionsSchema.safeParse(conditions).success).toBe(true)
  expect(testConditionsSchema.safeParse({ ...conditions, ratedWorkingPressure: '105 bar' }).success).toBe(false)
})
