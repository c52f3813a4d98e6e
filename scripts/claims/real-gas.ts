import { readFileSync } from 'node:fs'
import { dryAir, gasState, type Mixture, mixture, molarMass } from '../../src/gas-law/index.ts'
import { realCriticalFlow, throttledTemperature } from '../../src/regulator-performance/index.ts'
import {
  type AbsolutePressure,
  absolute,
  atmosphere,
  celsius,
  kelvin,
  pascal,
  type Temperature,
  temperatureOf,
} from '../../src/units/index.ts'
import type { Block } from './block.ts'

interface Vector {
  readonly equation: string
  readonly title: string
  readonly in: Readonly<Record<string, number | string>>
  readonly out: Readonly<Record<string, number>>
}

const pascals = (n: unknown): AbsolutePressure => absolute(Number(n), pascal)
const kelvins = (n: unknown): Temperature => temperatureOf(Number(n), kelvin)

function gasOf({ in: given, title }: Vector): readonly [name: string, gas: Mixture] {
  const { fluid } = given
  if (fluid === 'Air') return ['air', dryAir]
  if (typeof fluid === 'string') return [fluid.toLowerCase(), mixture({ [fluid.toLowerCase()]: 1 })]
  const parts = Object.fromEntries(
    ['Oxygen', 'Nitrogen', 'Helium'].flatMap((name) =>
      given[name] === undefined ? [] : [[name.toLowerCase(), Number(given[name])]],
    ),
  )
  return [/heliox|trimix/.test(title) ? 'trimix and heliox' : 'nitrox 32', mixture(parts)]
}

/** What each kind of vector compares: what, and by how much, in its unit. */
const comparisons: Readonly<Record<string, (vector: Vector) => Readonly<Record<string, number>>>> = {
  M15(vector) {
    const [name, gas] = gasOf(vector)
    const upstream = { pressure: pascals(vector.in['p0']), temperature: kelvins(vector.in['T0']) }
    const found = realCriticalFlow(gas, upstream)
    return {
      [`critical flow factor, ${name}, %`]: percentOff(found.criticalFlowFactor, vector.out['C_star']),
      'critical pressure ratio, %': percentOff(found.criticalPressureRatio, vector.out['p_ratio']),
    }
  },
  F1(vector) {
    const [name, gas] = gasOf(vector)
    const temperature = kelvins(vector.in['T1'])
    const before = { pressure: pascals(vector.in['p1']), temperature }
    const rewarmed = gasState(gas, { pressure: pascals(vector.in['p2']), temperature })
    const heat = (rewarmed.molarEnthalpy - gasState(gas, before).molarEnthalpy) / molarMass(gas)
    return {
      ...throttled(vector),
      [`heat to bring the gas back to water temperature, ${name}, %`]: percentOff(heat, vector.out['dh_rewarm']),
    }
  },
  F5({ in: given, out }) {
    const state = gasState(dryAir, {
      pressure: absolute(Number(given['p']), atmosphere),
      temperature: temperatureOf(Number(given['t']), celsius),
    })
    const found = state.jouleThomsonCoefficient * 101_325
    return {
      'Joule–Thomson coefficient, air, reference equation, %': percentOff(found, out['mu_reference']),
      'Joule–Thomson coefficient, air, printed table, %': percentOff(found, out['mu_printed']),
    }
  },
  F7: throttled,
}

function throttled(vector: Vector): Readonly<Record<string, number>> {
  const [name, gas] = gasOf(vector)
  const before = { pressure: pascals(vector.in['p1']), temperature: kelvins(vector.in['T1']) }
  const after = throttledTemperature(gas, before, pascals(vector.in['p2']))
  return { [`temperature behind a throttle, ${name}, K`]: Math.abs(after - (vector.out['T2'] ?? Number.NaN)) }
}

function percentOff(found: number, expected = Number.NaN): number {
  return 100 * Math.abs(found / expected - 1)
}

/** How far GERG-2008 departs from the reference equation of each gas, at the states of the vectors. */
export const realGas: Block = {
  page: 'docs/measured/regulator-mechanics.md',
  name: 'real gas',
  kind: 'quick',
  band: 1.02,
  measure() {
    const { vectors } = JSON.parse(readFileSync('tests/fixtures/regulator-mechanics-vectors.json', 'utf8')) as {
      readonly vectors: readonly Vector[]
    }
    const largest: Record<string, number> = {}
    for (const vector of vectors)
      for (const [what, apart] of Object.entries(comparisons[vector.equation]?.(vector) ?? {}))
        largest[what] = Math.max(largest[what] ?? 0, apart)
    return Object.fromEntries(Object.entries(largest).map(([what, apart]) => [what, Number(apart.toPrecision(4))]))
  },
  table: (figures) => [
    '| What | Largest difference |',
    '| :--- | ---: |',
    ...Object.entries(figures).map(([what, apart]) => {
      const comma = what.lastIndexOf(', ')
      return `| ${what.slice(0, comma)} | ${Number(apart.toPrecision(2))} ${what.slice(comma + 2)} |`
    }),
  ],
}
