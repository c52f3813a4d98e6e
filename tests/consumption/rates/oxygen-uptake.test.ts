import { expect, test } from 'vitest'
import {
  carbonDioxideOutput,
  freeGasFlowAt,
  oxygenEndurance,
  respiratoryRatios,
  ventilationFor,
  workLevels,
} from '../../../src/consumption/index.ts'
import { atpd, btpsConventional, pureGas, stpd } from '../../../src/gas-law/index.ts'
import { sources } from '../../../src/references/index.ts'
import {
  absolute,
  bar,
  celsius,
  freeGasFlowOf,
  inUnit,
  litrePerMinute,
  minute,
  pascal,
  temperatureOf,
} from '../../../src/units/index.ts'
import { cylinder } from '../given.ts'

const oxygen = pureGas('oxygen')

// engineering vectors C8-1, C8-2, C8-3
test.each([
  { uptake: 1.5, quotient: 0.9, pressure: 101_325, ventilation: 36, carbonDioxide: 1.35, ambient: 1.8154538394459019 },
  { uptake: 3, quotient: 0.9, pressure: 601_325, ventilation: 72, carbonDioxide: 2.7, ambient: 0.5800272797281882 },
  {
    uptake: 0.8,
    quotient: 0.85,
    pressure: 101_325,
    ventilation: 19.2,
    carbonDioxide: 0.68,
    ambient: 0.968242047704481,
  },
])('C8: $uptake L/min of oxygen breathe $ventilation L/min and are $ambient L/min at $pressure Pa', (given) => {
  const uptake = freeGasFlowOf(given.uptake, litrePerMinute, stpd)
  expect(inUnit(ventilationFor(uptake, 24), litrePerMinute) / given.ventilation).toBeCloseTo(1, 12)
  expect(inUnit(carbonDioxideOutput(uptake, given.quotient), litrePerMinute) / given.carbonDioxide).toBeCloseTo(1, 12)
  const atDiver = { ...btpsConventional, pressure: absolute(given.pressure, pascal) }
  const litres = freeGasFlowAt(uptake, { from: stpd, to: atDiver, mixture: oxygen, gas: 'ideal' })
  expect(inUnit(litres, litrePerMinute) / given.ambient).toBeCloseTo(1, 12)
})

// engineering vector C8-4
test('C8-4: dry gas at 20 °C grows 1.1277 times in the lungs', () => {
  const room = atpd({ name: 'room', pressure: absolute(101_325, pascal), temperature: temperatureOf(20, celsius) })
  const dry = freeGasFlowOf(1, litrePerMinute, room)
  const body = freeGasFlowAt(dry, { from: room, to: btpsConventional, mixture: oxygen, gas: 'ideal' })
  expect(inUnit(body, litrePerMinute) / 1.1277303229169322).toBeCloseTo(1, 12)
})

test('an oxygen supply lasts as long at every depth, and twice as long at half the work', () => {
  const flask = { contents: { ...cylinder(2, 200), mixture: oxygen }, residualPressure: absolute(20, bar) }
  const hard = oxygenEndurance(flask, freeGasFlowOf(3, litrePerMinute, stpd))
  const easy = oxygenEndurance(flask, freeGasFlowOf(1.5, litrePerMinute, stpd))
  expect(easy / hard).toBeCloseTo(2, 12)
  expect(inUnit(easy, minute)).toBeGreaterThan(200)
})

test('every work level names a registered source, says how it was seen, and stays within a body', () => {
  for (const level of workLevels) {
    expect(sources).toHaveProperty([level.source])
    expect(['primary', 'secondary', 'memory']).toContain(level.evidence)
    const { oxygenUptake, ventilation } = level
    expect(oxygenUptake ?? ventilation).toBeDefined()
    if (oxygenUptake === undefined || ventilation === undefined) continue
    // litres of ventilation for a litre of oxygen
    const ratio = Number(ventilation.value) / Number(oxygenUptake.value)
    const [from, to] = respiratoryRatios.ventilatoryEquivalent.usual
    expect(ratio).toBeGreaterThanOrEqual(from)
    expect(ratio).toBeLessThanOrEqual(to)
  }
})

test('an uptake of zero, and litres a minute of ventilation given for oxygen, are refused', () => {
  expect(() => ventilationFor(freeGasFlowOf(0, litrePerMinute, stpd), 24)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'uptake' }),
  )
  expect(() => carbonDioxideOutput(freeGasFlowOf(36, litrePerMinute, stpd), 0.9)).toThrow(
    expect.objectContaining({ argument: 'uptake' }),
  )
  // @ts-expect-error a flow at another condition is no uptake at STPD
  expect(ventilationFor(freeGasFlowOf(1, litrePerMinute, btpsConventional), 24)).toBeGreaterThan(0)
})
