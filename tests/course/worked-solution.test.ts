import { expect, test } from 'vitest'
import {
  boyleCard,
  type Card,
  cartridgeLoadCard,
  charlesCard,
  freeGasCard,
  gayLussacCard,
  latexLines,
  mathmlLines,
  plainLines,
  pressureAtDepthCard,
  richestMixtureCard,
  tiltErrorCard,
  type WorkedSolution,
  workedSolution,
} from '../../src/course/index.ts'
import { standardGravity } from '../../src/environment/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  degree,
  depthOf,
  fahrenheit,
  foot,
  kilogramPerCubicMetre,
  litre,
  litrePerMinute,
  measure,
  psi,
  temperatureOf,
} from '../../src/units/index.ts'

function substituted(solution: WorkedSolution): string | undefined {
  return plainLines(solution)
    .find(({ kind }) => kind === 'substitute')
    ?.text.replaceAll('\u202f', ' ')
}

const hundredFeet = workedSolution(
  pressureAtDepthCard,
  { p0: absolute(1, atmosphere), rho: measure(1025, kilogramPerCubicMetre), g: standardGravity, d: depthOf(100, foot) },
  { units: { p: bar, p0: bar, d: foot }, figures: 3 },
)

test('a formula of unlike units is substituted in coherent ones, and answered in the unit asked for', () => {
  expect(plainLines(hundredFeet).map((line) => line.text.replaceAll('\u202f', ' '))).toEqual([
    'p_0 = 1.01325 bar = 101 325 Pa',
    'ρ = 1025 kg/m³',
    'g = 9.80665 m/s²',
    'd = 100 ft = 30.48 m',
    'p = p_0 + ρ · g · d',
    'p = 101 325 Pa + 1025 kg/m³ · 9.80665 m/s² · 30.48 m',
    'p = 1.01325 bar + 3.0638 bar',
    'p = 407 700 Pa = 4.08 bar',
  ])
})

test('units that scale freely are kept as stated', () => {
  const { steps, answer } = workedSolution(
    boyleCard,
    { p1: absolute(1, bar), V1: 0.006, p2: absolute(4, bar) },
    { units: { p1: bar, p2: bar, V1: litre, V2: litre }, figures: 3 },
  )
  expect(steps.filter((step) => step.kind === 'convert')).toEqual([])
  expect(answer).toMatchObject({ text: '1.50', unit: 'L' })
})

test('temperatures alone go to kelvin where the pressures may stay', () => {
  const solution = workedSolution(
    gayLussacCard,
    { p1: absolute(200, bar), T1: temperatureOf(20, celsius), T2: temperatureOf(45, celsius) },
    { units: { p1: bar, p2: bar, T1: celsius, T2: celsius }, figures: 4 },
  )
  const texts = plainLines(solution).map((line) => line.text.replaceAll('\u202f', ' '))
  expect(texts).toContain('T_2 = 45 °C = 318.15 K')
  expect(texts).toContain('p_2 = 200 bar · 318.15 K / 293.15 K')
})

test('whether units fit together does not hang on the numbers: equal temperatures, no depth, a capped fraction', () => {
  const alike = workedSolution(
    charlesCard,
    { V1: 0.006, T1: temperatureOf(20, celsius), T2: temperatureOf(20, celsius) },
    { units: { T1: celsius, T2: celsius, V1: litre, V2: litre }, figures: 3 },
  )
  expect(substituted(alike)).toBe('V_2 = 6 L · 293.15 K / 293.15 K')
  const water = { rho: measure(1000, kilogramPerCubicMetre), g: standardGravity, d: depthOf(0, foot) }
  const atSurface = workedSolution(
    pressureAtDepthCard,
    { p0: absolute(1, bar), ...water },
    { units: { p: bar, p0: bar, d: foot }, figures: 3 },
  )
  expect(substituted(atSurface)).toBe('p = 100 000 Pa + 1000 kg/m³ · 9.80665 m/s² · 0 m')
  const capped = workedSolution(
    richestMixtureCard,
    { pO2: absolute(1.6, bar), p0: absolute(1, bar), ...water },
    { units: { pO2: bar, p0: bar, d: foot }, figures: 3 },
  )
  expect(substituted(capped)).toBe('x_O2 = min(1, 160 000 Pa / (100 000 Pa + 1000 kg/m³ · 9.80665 m/s² · 0 m))')
})

test('the value is never touched by showing it', () => {
  expect(hundredFeet.value).toBe(101_325 + 1025 * 9.80665 * 30.48)
})

test('another symbol is found by its own form', () => {
  const { answer } = workedSolution(
    pressureAtDepthCard,
    { p: absolute(4, bar), p0: absolute(1, bar), rho: measure(1000, kilogramPerCubicMetre), g: standardGravity },
    { find: 'd', units: { p: bar, p0: bar }, figures: 4, toward: 'down' },
  )
  expect(answer.text).toBe('30.59')
})

test('a symbol without a value, and one that cannot be found, are refused by name', () => {
  expect(() => workedSolution(boyleCard, { p1: 1e5, V1: 1 }, { figures: 3 })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'inputs.p2' }),
  )
  expect(() => workedSolution(boyleCard, { p1: 1e5, V1: Number.NaN, p2: 1e5 }, { figures: 3 })).toThrow(
    expect.objectContaining({ argument: 'knowns.V1', value: 'NaN' }),
  )
  expect(() => workedSolution(boyleCard, { p1: 1e5, V1: 1, p2: 1e5 }, { find: 'x' as 'p1', figures: 3 })).toThrow(
    expect.objectContaining({ argument: 'options.find' }),
  )
})

test('is plain JSON', () => {
  expect(JSON.parse(JSON.stringify(hundredFeet))).toEqual(hundredFeet)
})

test('LaTeX keeps braces balanced and writes the decimal comma so that it is not spaced', () => {
  const lines = latexLines(hundredFeet, { decimal: 'comma' }).map((line) => line.text)
  expect(lines).toContain(
    'p = 101\\,325\\,\\mathrm{Pa} + 1025\\,\\mathrm{kg/m^{3}} \\cdot 9{,}80665\\,\\mathrm{m/s^{2}} \\cdot 30{,}48\\,\\mathrm{m}',
  )
  for (const line of lines) expect(line.split('{').length, line).toBe(line.split('}').length)
})

test('MathML carries the plain line as its alternative and closes every element', () => {
  for (const { text } of mathmlLines(hundredFeet)) {
    expect(text).toMatch(/^<math display="block" alttext="[^"<]+">/)
    const open = [...text.matchAll(/<([a-z]+)[ >]/g)].map(([, name]) => name).sort()
    const closed = [...text.matchAll(/<\/([a-z]+)>/g)].map(([, name]) => name).sort()
    expect(open).toEqual(closed)
  }
})

test('common errors give the answer that each leads to, rounded as the right one', () => {
  const contents = {
    V: 0.012,
    p: absolute(233.01325, bar),
    T: temperatureOf(15, celsius),
    p0: absolute(1, atmosphere),
    T0: temperatureOf(15, celsius),
  }
  const options = { units: { V0: litre }, figures: 4 } as const
  const { answer, commonErrors } = workedSolution(freeGasCard, contents, { ...options, commonErrors: true })
  expect(answer.text).toBe('2641')
  expect(commonErrors?.map((error) => [error.slip, error.answer.text])).toEqual([
    ['gauge-for-absolute', workedSolution(freeGasCard, { ...contents, p: absolute(232, bar) }, options).answer.text],
    ['other-formula', '2760'], // 12 L · 233.01325 / 1.01325 by the ideal law
  ])
  expect(workedSolution(freeGasCard, contents, options).commonErrors).toBeUndefined()
})

test('an error that nothing comes out of is left out', () => {
  const cold = workedSolution(gayLussacCard, { p1: 2e5, T1: 273.15, T2: 300 }, { figures: 3, commonErrors: true })
  expect(cold.commonErrors?.map(({ slip }) => slip)).toEqual(['gauge-for-absolute']) // 0 °C would divide by zero
})

test('a call within a call shows its own value first', () => {
  const symbol = (letter: string, meaning: string) => ({ letter, meaning, dimension: 'fraction' }) as const
  const card: Card<'y' | 'x'> = {
    ...(boyleCard as unknown as Card<'y' | 'x'>),
    result: 'y',
    symbols: { y: symbol('y', 'the result'), x: symbol('x', 'what is given') },
    forms: { y: ['*', 2, ['call', 'f', ['call', 'g', 'x'], 3]] },
    calls: { f: (a = 0, b = 0) => a + b, g: (a = 0) => 10 * a },
    callSymbols: { f: symbol('f', 'outer'), g: symbol('g', 'inner') },
  }
  const texts = plainLines(workedSolution(card, { x: 4 }, { figures: 3 })).map(({ text }) => text)
  expect(texts).toEqual(['x = 4', 'y = 2 · f(g(x), 3)', 'g(x) = 40', 'f(g, 3) = 43', 'y = 2 · 43', 'y = 86.0'])
})

test('degrees Fahrenheit go to degrees Rankine, so that the other units may stay', () => {
  const solution = workedSolution(
    gayLussacCard,
    { p1: absolute(3000, psi), T1: temperatureOf(70, fahrenheit), T2: temperatureOf(110, fahrenheit) },
    { units: { p1: psi, p2: psi, T1: fahrenheit, T2: fahrenheit }, figures: 4 },
  )
  expect(substituted(solution)).toBe('p_2 = 3000 psi · 569.67 °R / 529.67 °R')
})

test('a unit of another quantity is refused', () => {
  expect(() => workedSolution(boyleCard, { p1: 1e5, V1: 1, p2: 2e5 }, { figures: 3, units: { V2: bar } })).toThrow(
    expect.objectContaining({ code: 'unit', argument: 'options.units.V2' }),
  )
})

test('an angle stays in degrees inside a sine, and what an arctangent gives is converted once', () => {
  const solution = workedSolution(
    tiltErrorCard,
    { r: measure(30, degree), d: measure(60, degree) },
    { units: { e: degree, r: degree, d: degree }, figures: 3 },
  )
  const lines = plainLines(solution).map((line) => line.text.replaceAll('\u202f', ' '))
  expect(lines.slice(2)).toEqual([
    'ε = arctan(sin(φ) · tan(δ))',
    'ε = arctan(sin(30°) · tan(60°))',
    'ε = 0.71372 rad = 40.9°', // the tangent of it is √3/2
  ])
  expect(latexLines(solution)[2]?.text).toBe(
    '\\varepsilon = \\arctan\\left(\\sin\\left(\\varphi\\right) \\cdot \\tan\\left(\\delta\\right)\\right)',
  )
})

test('a call that stands twice in a formula is worked out once', () => {
  const solution = workedSolution(
    cartridgeLoadCard,
    {
      q: measure(100, litrePerMinute),
      p0: absolute(1, atmosphere),
      T0: temperatureOf(20, celsius),
      p: absolute(200, bar),
      T: temperatureOf(30, celsius),
    },
    { figures: 2 },
  )
  expect(solution.steps.filter(({ kind }) => kind === 'called')).toHaveLength(1)
})
