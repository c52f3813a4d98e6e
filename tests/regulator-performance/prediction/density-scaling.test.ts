import { expect, test } from 'vitest'
import {
  dryAir,
  idealGasDensity,
  mixture,
  molarMass,
  pressureAtGasDensity,
  trimix,
  viscosity,
} from '../../../src/gas-law/index.ts'
import { type PredictionOptions, predictedWork, workAtDensity } from '../../../src/regulator-performance/index.ts'
import { normalQuantile, seededRandom } from '../../../src/uncertainty/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  difference,
  type EnergyPerVolume,
  gramPerLitre,
  inUnit,
  joulePerLitre,
  kilogramPerMole,
  measure,
  metreOfSeaWaterTenKilopascal,
  pascal,
  temperatureOf,
} from '../../../src/units/index.ts'
import { close, number, vectorsOf } from '../vectors.ts'

test.each(vectorsOf('R13'))('$id: $title, share $in.const_fraction', ({ in: given, out, tolerance }) => {
  const measured = {
    workOfBreathingPerLitre: difference(number(given, 'WOB0'), joulePerLitre),
    density: measure(number(given, 'rho0'), gramPerLitre),
    constantShare: number(given, 'const_fraction'),
  }
  const work = workAtDensity(measured, measure(number(given, 'rho'), gramPerLitre))
  close(inUnit(work, joulePerLitre), number(out, 'WOB'), tolerance)
})

test.each(vectorsOf('R14'))('$id: $title at $in.depth msw', ({ in: given, out, tolerance }) => {
  const part = (name: string) => (typeof given[name] === 'number' ? number(given, name) : 0)
  const breathed = mixture({ oxygen: part('O2'), nitrogen: part('N2'), helium: part('He') })
  const pressure = absolute(number(given, 'p0') + number(given, 'depth') * metreOfSeaWaterTenKilopascal.factor, pascal)
  close(pressure, number(out, 'p'), tolerance)
  close(inUnit(molarMass(breathed), kilogramPerMole), number(out, 'M'), tolerance)
  for (const warmth of [0, 20]) {
    const knowns = { pressure, temperature: temperatureOf(warmth, celsius), molarMass: molarMass(breathed) }
    close(inUnit(idealGasDensity(knowns).density, gramPerLitre), number(out, `rho_${warmth}C`), tolerance)
  }
})

test('R14: air reaches 6 g/L at 36.9, 40.4 and 43.3 msw, by the temperature of the gas alone', () => {
  for (const [warmth, depth] of [
    [0, 36.9],
    [20, 40.4],
    [37, 43.3],
  ] as const) {
    const gas = { mixture: dryAir, density: measure(6, gramPerLitre), temperature: temperatureOf(warmth, celsius) }
    const pressure = pressureAtGasDensity(gas, { gas: 'ideal' })
    expect((pressure - inUnit(absolute(1, atmosphere), pascal)) / metreOfSeaWaterTenKilopascal.factor).toBeCloseTo(
      depth,
      1,
    )
  }
})

const temperature = temperatureOf(20, celsius)
const unknown: PredictionOptions = { laminarShare: 'unknown' }

function air(ambient: number, work: number, uncertainty?: number) {
  return {
    gas: { mixture: dryAir, pressure: absolute(ambient, bar), temperature },
    workOfBreathingPerLitre: difference(work, joulePerLitre),
    ...(uncertainty === undefined ? {} : { standardUncertainty: difference(uncertainty, joulePerLitre) }),
  }
}

const inAir = (ambient: number) => ({ mixture: dryAir, pressure: absolute(ambient, bar), temperature })

test('a line in density comes back: parts, value, and no interval without scatter', () => {
  const line = [1, 3, 5].map((ambient) => {
    const density = predictedWork([air(1, 1), air(3, 1), air(5, 1)], inAir(ambient), unknown).density
    return { ambient, density }
  })
  const measured = line.map(({ ambient, density }) => air(ambient, 0.4 + 0.2 * density))
  const prediction = predictedWork(measured, inAir(7), unknown)
  expect(inUnit(prediction.constantPart, joulePerLitre)).toBeCloseTo(0.4, 2)
  expect(inUnit(prediction.workOfBreathingPerLitre, joulePerLitre)).toBeCloseTo(0.4 + 0.2 * prediction.density, 3)
  expect(prediction.findings.map(({ code }) => code)).toContain('extrapolated')
})

test('question 6: from air at 0, 20 and 40 m to trimix 18/45 at 60 m, within the range of density, by density and viscosity', () => {
  const measured = [air(1, 0.6, 0.02), air(3, 1.02, 0.02), air(5, 1.47, 0.02)]
  const target = { mixture: trimix({ oxygen: 0.18, helium: 0.45 }), pressure: absolute(7, bar), temperature }
  const open = predictedWork(measured, target, unknown)
  expect(open.findings).toEqual([])
  expect(open.density).toBeGreaterThan(5)
  expect(open.density).toBeLessThan(5.3)
  // trimix is more viscous than air: a wholly laminar constant part is higher by the ratio, a cracking one the same
  const ratio = open.viscosity / viscosity(dryAir, { pressure: absolute(3, bar), temperature })
  const cracking = predictedWork(measured, target, { laminarShare: 0 })
  const laminar = predictedWork(measured, target, { laminarShare: 1 })
  expect(laminar.constantPart / cracking.constantPart).toBeCloseTo(ratio, 2)
  expect(open.parts.laminarShare).toBeCloseTo(
    (laminar.workOfBreathingPerLitre - cracking.workOfBreathingPerLitre) / Math.sqrt(12),
    6,
  )
  expect(cracking.parts.laminarShare).toBe(0)
  expect(cracking.high - cracking.low).toBeLessThan(open.high - open.low)
})

test('a density beyond twice those measured is refused unless extrapolation is asked for, and said then', () => {
  const measured = [air(1, 0.6), air(1.5, 0.7), air(2, 0.82)]
  expect(() => predictedWork(measured, inAir(4.1), unknown)).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'target' }),
  )
  const far = predictedWork(measured, inAir(4.1), { laminarShare: 0, extrapolate: true })
  expect(far.findings.map(({ code }) => code)).toEqual(['extrapolated'])
})

test('too few or equal measurements are refused by name', () => {
  const unread = Number.NaN as EnergyPerVolume // as from a file
  expect(() => predictedWork([air(1, 1), air(2, 2)], inAir(2), unknown)).toThrow(
    expect.objectContaining({ code: 'input', value: '2 measurements' }),
  )
  expect(() => predictedWork([air(2, 1), air(2, 2), air(2, 3)], inAir(2), unknown)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'measurements' }),
  )
  expect(() =>
    predictedWork([air(1, 1), { ...air(2, 2), workOfBreathingPerLitre: unread }, air(3, 3)], inAir(2), unknown),
  ).toThrow(expect.objectContaining({ code: 'range', argument: 'measurements[1].workOfBreathingPerLitre' }))
})

test('scatter that denies the stated uncertainties widens the interval, and a work that falls with depth is named', () => {
  const straight = [air(1, 0.6, 0.02), air(3, 1.0, 0.02), air(5, 1.4, 0.02)]
  const crooked = [air(1, 0.6, 0.02), air(3, 1.3, 0.02), air(5, 1.4, 0.02)]
  const width = (measured: typeof straight) => {
    const { low, high } = predictedWork(measured, inAir(4), unknown)
    return high - low
  }
  expect(width(crooked)).toBeGreaterThan(3 * width(straight))
  const falling = predictedWork([air(1, 1.4), air(3, 1.0), air(5, 0.7)], inAir(4), unknown)
  expect(falling.findings.map(({ code }) => code)).toContain('negative-part')
})

test.each([
  ['stated', true],
  ['unstated', false],
] as const)(
  'with %s uncertainties the next measurement falls into the interval in 94 of 100 cases or more',
  (_, stated) => {
    const uniform = seededRandom(5)
    const noise = () => 0.03 * normalQuantile(uniform())
    const trials = 400
    let within = 0
    for (let k = 0; k < trials; k++) {
      const [constant, slope] = [0.2 + uniform(), 0.05 + 0.2 * uniform()]
      const at = (ambient: number) => constant + slope * 1.19 * ambient
      const measured = [1, 2, 3, 4, 5].map((ambient) => air(ambient, at(ambient) + noise(), stated ? 0.03 : undefined))
      const { low, high } = predictedWork(measured, inAir(6), { laminarShare: 0 })
      const next = difference(at(6) + noise(), joulePerLitre)
      if (next >= low && next <= high) within++
    }
    expect(within / trials).toBeGreaterThanOrEqual(0.94)
  },
)
