import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  breathingSeries,
  elastanceAndInertance,
  loadedBreath,
  loopShape,
  peakInhalationFlow,
  powerLawWorkPerLitre,
  type ResistanceParts,
  resistanceFit,
  resistiveWork,
  workOfBreathing,
} from '../../../src/regulator-performance/index.ts'
import {
  difference,
  inUnit,
  joulePerLitre,
  kilopascal,
  kilopascalPerLitre,
  kilopascalSecondPerLitre,
  kilopascalSecondSquaredPerLitre,
  kilopascalSecondSquaredPerLitreSquared,
  litre,
  litrePerMinute,
  measure,
  perMinute,
} from '../../../src/units/index.ts'
import { close, number, vectorsOf } from '../vectors.ts'

const parts = (cracking: number, laminar: number, turbulent: number): ResistanceParts => ({
  crackingPressure: difference(cracking, kilopascal),
  laminarResistance: measure(laminar, kilopascalSecondPerLitre),
  turbulentResistance: measure(turbulent, kilopascalSecondSquaredPerLitreSquared),
})

const peakFlowAt = (ventilation: number) =>
  peakInhalationFlow(measure(ventilation, litrePerMinute), { shape: 'sinusoid' })

/** A finely sampled sinusoidal breath of 2.5 L at 25 per minute against any pressure law of flow, volume and change of flow. */
function simulated(law: (flow: number, volume: number, flowChange: number) => number, samplesPerBreath = 20_000) {
  const frequency = measure(25, perMinute)
  const setting = {
    tidalVolume: measure(2.5, litre),
    breathingFrequency: frequency,
    waveform: { shape: 'sinusoid' },
  } as const
  const { volumeCubicMetre: volume, flowCubicMetrePerSecond: flow } = breathingSeries(setting, {
    breaths: 1,
    samplesPerBreath,
  })
  const angular = 2 * Math.PI * frequency
  const pressure = flow.map((q, row) => {
    const v = volume[row] ?? 0
    return law(q, v, angular * angular * (0.00125 - v))
  })
  return { volume, pressure }
}

test.each(vectorsOf('R3'))('$id: $title', ({ in: given, out, tolerance }) => {
  const peak = difference(number(given, 'p_peak'), kilopascal)
  const work = powerLawWorkPerLitre(peak, number(given, 'exponent'))
  close(inUnit(work, joulePerLitre), number(out, 'WOB'), tolerance)
  close(inUnit(work, joulePerLitre) / 2, number(out, 'WOB_insp'), tolerance)
})

test('question 5: with one peak a cracking valve costs 2, a laminar one 1.571, a turbulent one 1.333', () => {
  const cost = [0, 1, 2].map((exponent) => powerLawWorkPerLitre(difference(1, kilopascal), exponent) / 1000)
  expect(cost[0]).toBeCloseTo(2, 12)
  expect(cost[1]).toBeCloseTo(Math.PI / 2, 12)
  expect(cost[2]).toBeCloseTo(4 / 3, 12)
})

test('the work of a power law is that of its simulated loop', () => {
  for (const exponent of [0.5, 1, 1.3, 1.75, 2, 3]) {
    const peakFlow = peakFlowAt(62.5)
    const loop = simulated((q) => -1000 * Math.sign(q) * (Math.abs(q) / peakFlow) ** exponent)
    const measured = workOfBreathing(loop)
    close(measured.workOfBreathingPerLitre, powerLawWorkPerLitre(difference(1, kilopascal), exponent), 1e-6)
  }
})

test('the shape of a half gives back the exponent that made it', () => {
  assert(
    property(double({ min: 0, max: 20, noNaN: true }), (exponent) => {
      const peakPressure = difference(0.8, kilopascal)
      const whole = powerLawWorkPerLitre(peakPressure, exponent)
      const shape = loopShape({ workPerLitre: difference(whole / 2000, joulePerLitre), peakPressure })
      expect(shape.flowExponent).toBeCloseTo(exponent, 8)
    }),
  )
})

test('each regime is told by its factor, and what no resistance makes is undetermined', () => {
  const regime = (factor: number) =>
    loopShape({ workPerLitre: difference(factor / 2, kilopascal), peakPressure: difference(1, kilopascal) }).regime
  expect([2, 1.8, 1.57, 1.46, 1.33, 1.1].map(regime)).toEqual([
    'cracking',
    'cracking',
    'laminar',
    'laminar',
    'turbulent',
    'turbulent',
  ])
  expect(regime(2.3)).toBe('undetermined')
  expect(regime(0.4)).toBe('undetermined')
})

test.each(vectorsOf('R4'))('$id: $title', ({ in: given, out, tolerance }) => {
  const half = (name: string) =>
    parts(number(given, `c0_${name}`), number(given, `R1_${name}`), number(given, `K2_${name}`))
  const made = resistiveWork({ inhalation: half('insp'), exhalation: half('exp') }, peakFlowAt(number(given, 'VE')))
  close(inUnit(made.inhalationPerLitre, joulePerLitre), number(out, 'WOB_insp'), tolerance)
  close(inUnit(made.exhalationPerLitre, joulePerLitre), number(out, 'WOB_exp'), tolerance)
  close(inUnit(made.workOfBreathingPerLitre, joulePerLitre), number(out, 'WOB'), tolerance)
  close(inUnit(made.inhalationPressure, kilopascal), number(out, 'p_min'), tolerance)
  close(inUnit(made.exhalationPressure, kilopascal), number(out, 'p_max'), tolerance)
})

test('three ventilations give back the parts that made them, for a half and for a whole breath', () => {
  const part = double({ min: 0, max: 0.5, noNaN: true })
  assert(
    property(part, part, part, (cracking, laminar, turbulent) => {
      const both = { inhalation: parts(cracking, laminar, turbulent), exhalation: parts(0.1, 0.02, 0.03) }
      const settings = [22.5, 40, 62.5].map((ventilation) => {
        const peakFlow = peakFlowAt(ventilation)
        return { peakFlow, made: resistiveWork(both, peakFlow) }
      })
      const half = resistanceFit(
        settings.map(({ peakFlow, made }) => ({ peakFlow, workPerLitre: made.inhalationPerLitre })),
        'half',
      )
      expect(inUnit(half.crackingPressure, kilopascal)).toBeCloseTo(cracking, 9)
      expect(inUnit(half.laminarResistance, kilopascalSecondPerLitre)).toBeCloseTo(laminar, 9)
      expect(inUnit(half.turbulentResistance, kilopascalSecondSquaredPerLitreSquared)).toBeCloseTo(turbulent, 9)
      const whole = resistanceFit(
        settings.map(({ peakFlow, made }) => ({ peakFlow, workPerLitre: made.workOfBreathingPerLitre })),
        'breath',
      )
      expect(inUnit(whole.crackingPressure, kilopascal)).toBeCloseTo((cracking + 0.1) / 2, 9)
    }),
  )
})

test('a fit with measurements to spare states the uncertainty of its parts, and names a part below zero', () => {
  const at = (ventilation: number, work: number) => ({
    peakFlow: peakFlowAt(ventilation),
    workPerLitre: difference(work, joulePerLitre),
  })
  const fit = resistanceFit([at(22.5, 0.31), at(40, 0.44), at(62.5, 0.7), at(75, 0.9), at(90, 1.18)], 'half')
  expect(fit.standardUncertainty?.crackingPressure).toBeGreaterThan(0)
  expect(fit.scatter).toBeGreaterThan(0)
  expect(fit.negative).toEqual([])
  expect(resistanceFit([at(22.5, 0.1), at(40, 0.3), at(62.5, 0.7)], 'half').negative).toEqual(['crackingPressure'])
  expect(() => resistanceFit([at(22.5, 0.1), at(40, 0.3)], 'half')).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => resistanceFit([at(40, 0.1), at(40, 0.3), at(40, 0.2)], 'half')).toThrow(
    expect.objectContaining({ code: 'input', argument: 'measurements' }),
  )
})

const linear = (given: Readonly<Record<string, unknown>>) => ({
  resistance: measure(number(given, 'R'), kilopascalSecondPerLitre),
  elastance: measure(number(given, 'E'), kilopascalPerLitre),
  inertance: measure(number(given, 'I'), kilopascalSecondSquaredPerLitre),
})

test.each(vectorsOf('R7'))('$id: $title', ({ in: given, out, tolerance }) => {
  const made = loadedBreath(linear(given), {
    tidalVolume: measure(number(given, 'VT'), litre),
    breathingFrequency: measure(number(given, 'f'), perMinute),
  })
  close(inUnit(made.workOfBreathingPerLitre, joulePerLitre), number(out, 'WOB'), tolerance)
  close(inUnit(made.apparentElastance, kilopascalPerLitre), number(out, 'E_apparent'), tolerance)
  close(inUnit(made.zeroFlowPressureDifference, kilopascal), number(out, 'dp_zero_flow'), tolerance)
})

test('elastance and inertance cost no net work, and two frequencies tell them apart', () => {
  const load = linear({ R: 0.4, E: 0.3, I: 0.02 })
  const loop = simulated((q, v, change) => -(load.resistance * q + load.elastance * v + load.inertance * change))
  const setting = { tidalVolume: measure(2.5, litre), breathingFrequency: measure(25, perMinute) }
  close(workOfBreathing(loop).workOfBreathingPerLitre, loadedBreath(load, setting).workOfBreathingPerLitre, 1e-6)
  const measurements = [10, 20, 35].map((rate) => {
    const breathingFrequency = measure(rate, perMinute)
    const { apparentElastance } = loadedBreath(load, { ...setting, breathingFrequency })
    return { breathingFrequency, apparentElastance }
  })
  const apart = elastanceAndInertance(measurements)
  close(apart.elastance, load.elastance, 1e-9)
  close(apart.inertance, load.inertance, 1e-9)
  expect(() => elastanceAndInertance(measurements.slice(0, 1))).toThrow(expect.objectContaining({ code: 'input' }))
})
