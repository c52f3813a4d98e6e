import {
  absolute,
  bar,
  bestInterstagePressures,
  compression,
  compressorDelivery,
  compressorWork,
  dryAir,
  gerg2008GasConstant,
  kelvin,
  litrePerMinute,
  measure,
  one,
  type ReferenceCondition,
  temperatureOf,
  volumetricEfficiency,
} from '../../src/index.ts'

// Textbooks reckon with an ideal gas and gas constants of their own: what litrebar gives is taken without dimension, and theirs put to it.

/** Work over R T₁ of stages between the pressures, bar, with inlet temperatures, K; along p vⁿ. */
export function workOverRT(pressures: readonly number[], n: number, temperatures: readonly number[] = []): number {
  const [first = 300, ...others] = temperatures
  const { molarWork } = compressorWork(
    {
      mixture: dryAir,
      intake: { pressure: absolute(pressures[0] as number, bar), temperature: temperatureOf(first, kelvin) },
      stages: pressures.slice(1).map((p, k) => ({
        to: absolute(p, bar),
        inletTemperature: temperatureOf(k === 0 ? first : (others[k - 1] ?? first), kelvin),
      })),
      path: { process: 'polytropic', exponent: measure(n, one) },
    },
    { gas: 'ideal' },
  )
  return molarWork / (gerg2008GasConstant * first)
}

/** Discharge temperature, K. */
export function discharge(temperature: number, ratio: number, n: number): number {
  const from = { pressure: absolute(1, bar), temperature: temperatureOf(temperature, kelvin) }
  const path = { process: 'polytropic', exponent: measure(n, one) } as const
  return compression({ mixture: dryAir, from, to: absolute(ratio, bar) }, path, { gas: 'ideal' }).dischargeTemperature
}

/** The exponent that leads from one temperature to the other, sought by `discharge`. */
export function exponentBetween(from: number, to: number, ratio: number): number {
  return bisected((n) => discharge(from, ratio, n) - to, 1.0001, 1.9)
}

/** The ratio that leads from one temperature to the other. */
export function ratioBetween(from: number, to: number, n: number): number {
  return bisected((ratio) => discharge(from, ratio, n) - to, 1.0001, 400)
}

function bisected(of: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to]
  for (let k = 0; k < 200; k++) {
    const middle = (low + high) / 2
    if (of(middle) > 0) high = middle
    else low = middle
  }
  return (low + high) / 2
}

/** Pressures after each stage, bar, all drawing at one temperature. */
export function equalStages(from: number, to: number, count: number): readonly number[] {
  const inletTemperatures = Array.from({ length: count }, () => temperatureOf(300, kelvin))
  const stages = { from: absolute(from, bar), to: absolute(to, bar), inletTemperatures }
  return bestInterstagePressures(stages, { gas: 'ideal', exponent: measure(1.3, one) }).map((p) => p / bar.factor)
}

/** Volumetric efficiency. */
export function filled(clearance: number, ratio: number, n: number): number {
  return volumetricEfficiency({ clearance: measure(clearance, one), exponent: measure(n, one) }, measure(ratio, one))
}

/** Volumetric efficiency referred to free air. */
export function filledWithFreeAir(given: {
  readonly clearance: number
  readonly n: number
  readonly drawn: { readonly bar: number; readonly K: number }
  readonly free: { readonly bar: number; readonly K: number }
  readonly to: number
}): number {
  const { clearance, n, drawn, free } = given
  const state = ({ bar: p, K }: { readonly bar: number; readonly K: number }) => ({
    pressure: absolute(p, bar),
    temperature: temperatureOf(K, kelvin),
  })
  const reference = {
    ...state(free),
    name: 'free air',
    moisture: 'dry',
    waterVapourPressure: absolute(0, bar),
    source: 'memory',
    place: '',
  }
  const stage = {
    mixture: dryAir,
    ambient: state(free),
    sweptFlow: measure(1000, litrePerMinute),
    clearance: { clearance: measure(clearance, one), exponent: measure(n, one) },
    to: absolute(given.to, bar),
    drawn: state(drawn),
  }
  return compressorDelivery(stage, { reference: reference as ReferenceCondition, gas: 'ideal' })
    .overallVolumetricEfficiency
}

/** Volume that a piston sweeps, m³. */
export function swept(bore: number, stroke: number): number {
  return (Math.PI / 4) * bore ** 2 * stroke
}

/** Heat given to the wall over R T₁, for a ratio of heat capacities. */
export function heatOverRT(ratio: number, n: number, heatCapacityRatio: number): number {
  const from = { pressure: absolute(1, bar), temperature: temperatureOf(300, kelvin) }
  const path = { process: 'polytropic', exponent: measure(n, one) } as const
  const options = { gas: 'ideal', heatCapacityRatio } as const
  return (
    compression({ mixture: dryAir, from, to: absolute(ratio, bar) }, path, options).molarHeat /
    (gerg2008GasConstant * 300)
  )
}
