import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { sources } from '../../../src/references/sources.ts'
import {
  breathingSeries,
  machineSettings,
  peakInhalationFlow,
  simulatedBreathing,
  type Waveform,
} from '../../../src/regulator-performance/index.ts'
import {
  inUnit,
  litre,
  litrePerMinute,
  litrePerSecond,
  measure,
  one,
  perMinute,
  second,
} from '../../../src/units/index.ts'
import { close, number, vectorsOf } from '../vectors.ts'

const sinusoid: Waveform = { shape: 'sinusoid' }
const trapezoid = (inhalationShare: number, rampShare: number): Waveform => ({
  shape: 'trapezoid',
  inhalationShare: measure(inhalationShare, one),
  rampShare: measure(rampShare, one),
})

test.each(vectorsOf('R1').filter(({ in: given }) => given['f'] !== undefined))(
  '$id: $title',
  ({ in: given, out, tolerance }) => {
    const made = simulatedBreathing({
      tidalVolume: measure(number(given, 'VT'), litre),
      breathingFrequency: measure(number(given, 'f'), perMinute),
      waveform: sinusoid,
    })
    close(inUnit(made.respiratoryMinuteVolume, litrePerMinute), number(out, 'VE'), tolerance)
    close(inUnit(made.peakInhalationFlow, litrePerSecond), number(out, 'q_peak'), tolerance)
    close(inUnit(made.meanInhalationFlow, litrePerSecond), number(out, 'q_mean_insp'), tolerance)
    close(inUnit(made.period, second), number(out, 'period'), tolerance)
  },
)

test.each(vectorsOf('R1').filter(({ in: given }) => given['duty'] !== undefined))(
  '$id: $title at $in.VE L/min, duty $in.duty, ramp $in.ramp',
  ({ in: given, out, tolerance }) => {
    const waveform = trapezoid(number(given, 'duty'), number(given, 'ramp'))
    const peak = peakInhalationFlow(measure(number(given, 'VE'), litrePerMinute), waveform)
    close(inUnit(peak, litrePerSecond), number(out, 'q_peak'), tolerance)
  },
)

test('volume is the integral of flow, and flow peaks where the formula says, for any waveform', () => {
  const share = double({ min: 0.2, max: 0.8, noNaN: true })
  const ramp = double({ min: 0, max: 0.5, noNaN: true })
  assert(
    property(share, ramp, (inhalationShare, rampShare) => {
      for (const waveform of [sinusoid, trapezoid(inhalationShare, rampShare)]) {
        const setting = { tidalVolume: measure(2, litre), breathingFrequency: measure(20, perMinute), waveform }
        const series = breathingSeries(setting, { breaths: 1, samplesPerBreath: 4000 })
        const { timeSecond, volumeCubicMetre: volume, flowCubicMetrePerSecond: flow } = series
        let integral = 0
        let worst = 0
        for (let row = 1; row < flow.length; row++) {
          const step = (timeSecond[row] ?? 0) - (timeSecond[row - 1] ?? 0)
          integral += (((flow[row] ?? 0) + (flow[row - 1] ?? 0)) / 2) * step
          worst = Math.max(worst, Math.abs(integral - (volume[row] ?? 0)))
        }
        // the flow of a trapezoid without ramps jumps within a step, by twice its peak at most
        expect(worst).toBeLessThan(4e-6)
        const made = simulatedBreathing(setting)
        expect(Math.max(...flow) / made.peakInhalationFlow).toBeCloseTo(1, 2)
        expect(Math.min(...flow) / made.peakExhalationFlow).toBeCloseTo(-1, 2)
        expect(Math.max(...volume)).toBeCloseTo(0.002, 6)
      }
    }),
    { numRuns: 20 },
  )
})

test.each(machineSettings)('$respiratoryMinuteVolume.printed L/min is tidal volume times frequency', (setting) => {
  const { respiratoryMinuteVolume, tidalVolume, breathingFrequency, source } = setting
  expect(Number(tidalVolume.printed) * Number(breathingFrequency.printed)).toBe(Number(respiratoryMinuteVolume.printed))
  expect(sources).toHaveProperty(source)
})

test('settings that no machine has are refused by name', () => {
  const setting = { tidalVolume: measure(2, litre), breathingFrequency: measure(20, perMinute), waveform: sinusoid }
  const facts = (argument: string): unknown => expect.objectContaining({ code: 'range', argument })
  expect(() => simulatedBreathing({ ...setting, tidalVolume: measure(0, litre) })).toThrow(facts('setting.tidalVolume'))
  expect(() => simulatedBreathing({ ...setting, waveform: trapezoid(0.5, 0.6) })).toThrow(facts('waveform.rampShare'))
  expect(() => simulatedBreathing({ ...setting, waveform: trapezoid(1, 0.2) })).toThrow(
    facts('waveform.inhalationShare'),
  )
  expect(() => breathingSeries(setting, { breaths: 1.5, samplesPerBreath: 10 })).toThrow(facts('sampling.breaths'))
  expect(() => breathingSeries(setting, { breaths: 1, samplesPerBreath: 2 })).toThrow(
    facts('sampling.samplesPerBreath'),
  )
})
