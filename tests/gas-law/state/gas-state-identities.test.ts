import { assert, property } from 'fast-check'
import { expect, test } from 'vitest'
import { logarithm } from '../../../src/gas-law/equation/exponential.ts'
import {
  type GasState,
  gasState,
  gerg2008GasConstant,
  molarDensity,
  type PressureTemperature,
  pressureAtDensity,
} from '../../../src/gas-law/index.ts'
import {
  type AbsolutePressure,
  absolute,
  type MolarDensity,
  pascal,
  type Temperature,
} from '../../../src/units/index.ts'
import { type AnyState, anyState } from '../states.ts'

const stateOf = ({ pressure, temperature }: PressureTemperature): PressureTemperature => ({ pressure, temperature })

function everywhere(check: (state: GasState, at: AnyState) => void, numRuns = 300): void {
  assert(
    property(anyState, (at) => {
      check(gasState(at.gas, stateOf(at)), at)
    }),
    { numRuns },
  )
}

/** Central difference in temperature or pressure, of fourth order. */
function derivative(f: (x: number) => number, x: number, step: number): number {
  return (8 * (f(x + step) - f(x - step)) - (f(x + 2 * step) - f(x - 2 * step))) / (12 * step)
}

test('c_p - c_v is T (∂p/∂T)² / (ρ² ∂p/∂ρ)', () => {
  everywhere((s) => {
    const difference =
      (s.temperature * s.pressureTemperatureDerivative ** 2) / (s.molarDensity ** 2 * s.pressureDensityDerivative)
    expect(s.isobaricHeatCapacity - s.isochoricHeatCapacity).toBeCloseTo(difference, 9)
  })
})

test('pressure comes back from density without iteration, to 1e-12', () => {
  everywhere((s, { gas }) => {
    expect(
      Math.abs(pressureAtDensity(gas, { molarDensity: s.molarDensity, temperature: s.temperature }) / s.pressure - 1),
    ).toBeLessThan(1e-12)
  }, 1000)
})

test('Maxwell: ∂s/∂p at constant T is -∂v/∂T at constant p', () => {
  everywhere((s, { gas }) => {
    const step = 1e-4 * s.pressure
    const byPressure = derivative(
      (p) => gasState(gas, { ...stateOf(s), pressure: p as AbsolutePressure }).molarEntropy,
      s.pressure,
      step,
    )
    const expansion = s.pressureTemperatureDerivative / (s.pressureDensityDerivative * s.molarDensity ** 2)
    expect(Math.abs(byPressure / -expansion - 1)).toBeLessThan(1e-7)
  })
})

test('Maxwell: ∂s/∂v at constant T is ∂p/∂T at constant v', () => {
  everywhere((s, { gas }) => {
    const byTemperature = derivative(
      (T) => pressureAtDensity(gas, { molarDensity: s.molarDensity, temperature: T as Temperature }),
      s.temperature,
      1e-3 * s.temperature,
    )
    expect(Math.abs(byTemperature / s.pressureTemperatureDerivative - 1)).toBeLessThan(1e-7)
  })
})

test('∂h/∂T at constant pressure is c_p, and the Joule–Thomson coefficient is -∂h/∂p / c_p', () => {
  everywhere((s, { gas }) => {
    const enthalpy = (p: number, T: number): number =>
      gasState(gas, { pressure: p as AbsolutePressure, temperature: T as Temperature }).molarEnthalpy
    const heat = derivative((T) => enthalpy(s.pressure, T), s.temperature, 1e-3 * s.temperature)
    expect(Math.abs(heat / s.isobaricHeatCapacity - 1)).toBeLessThan(1e-6)
    const byPressure = derivative((p) => enthalpy(p, s.temperature), s.pressure, 1e-3 * s.pressure)
    // ∂h/∂p is a small difference of large enthalpies: 1e-12 RT over a step
    const noise = (1e-12 * gerg2008GasConstant * s.temperature) / (1e-3 * s.pressure)
    const want = -s.jouleThomsonCoefficient * s.isobaricHeatCapacity
    expect(Math.abs(byPressure - want)).toBeLessThan(1e-6 * Math.abs(want) + 10 * noise)
  })
})

test('the speed of sound is √(∂p/∂ρ) at constant entropy, and κ goes with it', () => {
  everywhere((s) => {
    const molarMass = s.density / s.molarDensity
    const ratio = s.isobaricHeatCapacity / s.isochoricHeatCapacity
    expect(s.speedOfSound ** 2 / ((ratio * s.pressureDensityDerivative) / molarMass)).toBeCloseTo(1, 12)
    expect((s.isentropicExponent * s.pressure) / s.density / s.speedOfSound ** 2).toBeCloseTo(1, 12)
  })
})

test('g is h - T s, and u is h - p v', () => {
  everywhere((s) => {
    expect(s.molarGibbsEnergy - (s.molarEnthalpy - s.temperature * s.molarEntropy)).toBeCloseTo(0, 7)
    expect(s.molarInternalEnergy - (s.molarEnthalpy - s.pressure / s.molarDensity)).toBeCloseTo(0, 7)
  })
})

test('fugacity coefficients weighted by fractions add up to the residual Gibbs energy', () => {
  everywhere((s, { gas }) => {
    const sum = Object.entries(s.fugacityCoefficients).reduce(
      (total, [name, phi]) => total + gas[name as keyof typeof s.fugacityCoefficients] * logarithm(phi),
      0,
    )
    // residual at the same T and p: the integral of (Z - 1)/p, here by Gauss–Legendre quadrature in ln p from nothing
    const residual = integral(
      (p) => gasState(gas, { ...stateOf(s), pressure: p as AbsolutePressure }).compressibilityFactorMinusOne / p,
      s.pressure,
    )
    expect(Math.abs(sum - residual)).toBeLessThan(1e-7)
  }, 60)
})

/** ∫ f from 0 to the end, ten panels of five points. */
function integral(f: (x: number) => number, end: number): number {
  const points = [0, 0.5384693101056831, -0.5384693101056831, 0.906179845938664, -0.906179845938664]
  const weights = [
    0.5688888888888889, 0.47862867049936647, 0.47862867049936647, 0.23692688505618908, 0.23692688505618908,
  ]
  const half = end / 20
  let sum = 0
  for (let panel = 0; panel < 10; panel++) {
    points.forEach((x, k) => {
      sum += half * (weights[k] as number) * f(half * (2 * panel + 1 + x))
    })
  }
  return sum
}

test('Z goes to 1 and (Z - 1)/ρ to a limit as pressure goes to nothing', () => {
  everywhere((_, { gas, temperature }) => {
    const at = (p: number): GasState => gasState(gas, { pressure: absolute(p, pascal), temperature })
    const [faint, fainter] = [at(1), at(0.5)]
    expect(Math.abs(faint.compressibilityFactorMinusOne)).toBeLessThan(1e-6)
    const virial = (s: GasState): number => s.compressibilityFactorMinusOne / s.molarDensity
    expect(Math.abs(virial(faint) - virial(fainter))).toBeLessThan(1e-10)
  })
})

test('density rises with pressure and falls with temperature without a jump', () => {
  assert(
    property(anyState, ({ gas, pressure, temperature }) => {
      const near = 1e-6
      const base = molarDensity(gas, pressure, temperature)
      const pressed = molarDensity(gas, (pressure * (1 - near)) as AbsolutePressure, temperature)
      const warmed = molarDensity(gas, pressure, Math.min(temperature * (1 + near), 700) as Temperature)
      const { pressureDensityDerivative, pressureTemperatureDerivative } = gasState(gas, { pressure, temperature })
      const byPressure = (near * pressure) / pressureDensityDerivative
      const byTemperature = (near * temperature * pressureTemperatureDerivative) / pressureDensityDerivative
      expect(Math.abs((base - pressed) / byPressure - 1)).toBeLessThan(1e-4)
      expect(Math.abs((base - warmed) / byTemperature - 1)).toBeLessThan(1e-4)
    }),
    { numRuns: 500 },
  )
})

test('a state does not depend on what was asked before', () => {
  everywhere((s, { gas }) => {
    molarDensity(gas, absolute(0.5 * s.pressure, pascal), (s.temperature * 1.01) as Temperature)
    expect(gasState({ ...gas }, stateOf(s))).toEqual(s)
    expect(molarDensity(gas, s.pressure, s.temperature)).toBe(s.molarDensity satisfies MolarDensity)
  })
})
