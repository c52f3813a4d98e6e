import { expect, test } from 'vitest'
import { driftError, lagError, samplingLoss, workUncertainty } from '../../../src/regulator-performance/index.ts'
import {
  difference,
  inUnit,
  joulePerLitre,
  kilopascal,
  measure,
  millisecond,
  perMinute,
  second,
} from '../../../src/units/index.ts'
import { close, number, vectorsOf } from '../vectors.ts'

test.each(vectorsOf('R8'))('$id: $title', ({ in: given, out, tolerance }) => {
  const drift = { change: difference(number(given, 'drift'), kilopascal), during: measure(1, second) }
  const error = inUnit(driftError(drift, measure(number(given, 'f'), perMinute)), joulePerLitre)
  close(error, number(out, 'dWOB'), tolerance)
  close((Math.PI / 2) * number(given, 'p_peak') + error, number(out, 'WOB_measured'), tolerance)
})

test.each(vectorsOf('R9'))('$id: $title of $in.tau s', ({ in: given, out, tolerance }) => {
  const lag = lagError({
    resistivePressure: difference(number(given, 'p_res'), kilopascal),
    elasticPressure: difference(number(given, 'p_el'), kilopascal),
    delay: measure(number(given, 'tau'), second),
    breathingFrequency: measure(number(given, 'f'), perMinute),
  })
  close(lag.phase, number(out, 'phase'), tolerance)
  close(inUnit(lag.trueWorkPerLitre, joulePerLitre), number(out, 'WOB_true'), tolerance)
  close(inUnit(lag.measuredWorkPerLitre, joulePerLitre), number(out, 'WOB_measured'), tolerance)
})

const channel = {
  resistivePressure: difference(1, kilopascal),
  elasticPressure: difference(0.5, kilopascal),
  breathingFrequency: measure(25, perMinute),
}

test('a first-order lag turns by the arc tangent and weakens: R9', () => {
  const tau = 0.03
  const turned = 2 * Math.PI * (25 / 60) * tau
  const lag = lagError({ ...channel, timeConstant: measure(tau, second) })
  close(lag.phase, Math.atan(turned), 1e-12)
  // cos(atan x) and sin(atan x) over √(1 + x²)
  close(
    inUnit(lag.measuredWorkPerLitre, joulePerLitre),
    (Math.PI / 2) * ((1 - 0.5 * turned) / (1 + turned ** 2)),
    1e-12,
  )
})

test('a phase beyond 0.5 rad is refused as outside validity', () => {
  expect(lagError({ ...channel, delay: measure(190, millisecond) }).phase).toBeLessThan(0.5)
  expect(() => lagError({ ...channel, delay: measure(192, millisecond) })).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'phase between the channels' }),
  )
})

test.each(vectorsOf('R11'))('$id: $title', ({ in: given, out, tolerance }) => {
  const parts = workUncertainty({
    workOfBreathingPerLitre: difference(number(given, 'WOB'), joulePerLitre),
    pressureGain: number(given, 'u_gain'),
    pressureNoise: difference(number(given, 'sigma_p'), kilopascal),
    samplesPerBreath: number(given, 'N'),
  })
  close(inUnit(parts.noise, joulePerLitre), number(out, 'u_noise'), tolerance)
  close(inUnit(parts.gain, joulePerLitre), number(out, 'u_gain_abs'), tolerance)
  close(inUnit(parts.combined, joulePerLitre), number(out, 'u_c'), tolerance)
})

test('the spread of n breaths enters as s/√n', () => {
  const parts = workUncertainty({
    workOfBreathingPerLitre: difference(1, joulePerLitre),
    pressureGain: 0,
    pressureNoise: difference(0, kilopascal),
    samplesPerBreath: 200,
    breaths: { spread: difference(0.2, joulePerLitre), count: 16 },
  })
  close(inUnit(parts.combined, joulePerLitre), 0.05, 1e-12)
})

test.each(vectorsOf('R12'))('$id: the loss by sampling', ({ in: given, out, tolerance }) => {
  const loss = samplingLoss(number(given, 'N'))
  close(loss.workFactor, number(out, 'factor'), tolerance)
  expect(loss.peakFactor).toBeCloseTo(Math.cos(Math.PI / number(given, 'N')), 14)
})
