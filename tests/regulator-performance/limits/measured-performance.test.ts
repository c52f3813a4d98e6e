import { expect, test } from 'vitest'
import { dryAir } from '../../../src/gas-law/index.ts'
import { assessAcceptance, breathingAnalysis, measuredPerformance } from '../../../src/regulator-performance/index.ts'
import { seededRandom } from '../../../src/uncertainty/index.ts'
import { absolute, bar, celsius, gauge, measure, millisecond, temperatureOf } from '../../../src/units/index.ts'
import { calm, syntheticLog } from '../synthetic-log.ts'

const conditions = {
  ambientPressure: absolute(6, bar),
  surfacePressure: absolute(1, bar),
  gas: dryAir,
  waveform: 'sinusoid',
  supplyPressure: gauge(50, bar),
  waterTemperature: temperatureOf(10, celsius),
} as const

test('question 4 from the log: work, peaks and elastance of the log meet or miss each limit that speaks', () => {
  const uniform = seededRandom(1)
  const analysis = breathingAnalysis(
    syntheticLog({ ...calm, samplesPerBreath: 300 }, uniform, () => 0),
    {
      zero: 'as recorded',
      pressureGainUncertainty: 0.01,
      lag: { delay: measure(0, millisecond) },
    },
  )
  const { measured, standardUncertainty, findings, breathed } = measuredPerformance(analysis)
  // R4-1: peaks of −0.787 and 0.956 kPa, with 0.1 kPa/L of elastance counted from end exhalation on top
  expect((measured.inhalationPressure ?? 0) / 1000).toBeCloseTo(-0.93, 1)
  expect((measured.exhalationPressure ?? 0) / 1000).toBeCloseTo(0.84, 1)
  expect(standardUncertainty.workOfBreathingPerLitre).toBeGreaterThanOrEqual(13.7)
  expect(standardUncertainty.inhalationPressure).toBeGreaterThanOrEqual(9)
  const verdicts = assessAcceptance(measured, {
    conditions: { ...conditions, ...breathed },
    standardUncertainty,
    findings,
  })
  const of = (id: string) => verdicts.find(({ limitId }) => limitId === id)
  expect(of('european-work')).toMatchObject({
    verdict: 'within',
    marginUncertainty: standardUncertainty.workOfBreathingPerLitre,
  })
  expect(of('european-inhalation')?.verdict).toBe('within')
  expect(of('diver-focused-elastance')?.verdict).toBe('within')
  expect(of('naval-goal')?.verdict).toBe('undetermined')
})

test('an inhalation without positive pressure has no assist pressure to judge, one with it has', () => {
  const log = syntheticLog({ ...calm, elastance: 0 }, seededRandom(1), () => 0)
  const options = { zero: 'as recorded', pressureGainUncertainty: 0 } as const
  const pushed = { ...log, pressure: Float64Array.from(log.pressure, (p) => p + 900) }
  expect(measuredPerformance(breathingAnalysis(pushed, options)).measured.assistPressureOnInhalation).toBeGreaterThan(0)
  const pulled = { ...log, pressure: Float64Array.from(log.pressure, (p) => p - 900) }
  expect(measuredPerformance(breathingAnalysis(pulled, options)).measured).not.toHaveProperty(
    'assistPressureOnInhalation',
  )
})

test('a log that runs backwards is −1.4 J/L and meets no limit', () => {
  const { time, volume, pressure } = syntheticLog({ ...calm, breaths: 10 }, seededRandom(1), () => 0)
  const backwards = { time, volume: volume ?? [], pressure: Float64Array.from(pressure, (p) => -p) }
  const analysis = breathingAnalysis(backwards, {
    zero: 'as recorded',
    pressureGainUncertainty: 0,
    lag: { delay: measure(0, millisecond) },
  })
  const { measured, findings, breathed } = measuredPerformance(analysis)
  expect(measured.workOfBreathingPerLitre).toBeLessThan(-1000)
  const work = assessAcceptance(measured, { conditions: { ...conditions, ...breathed }, findings })[0]
  expect(work).toMatchObject({ limitId: 'european-work', verdict: 'undetermined' })
  expect(work?.because.map(({ code }) => code)).toEqual(expect.arrayContaining(['finding-reversed', 'impossible-sign']))
})

test('what is no analysis is refused', () => {
  expect(() => measuredPerformance({} as never)).toThrow(
    expect.objectContaining({ name: 'LitrebarError', code: 'input' }),
  )
})
