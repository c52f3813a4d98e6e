import { compressorWork, runningPressures, separatedWater } from '../../src/charging/index.ts'
import { LitrebarError } from '../../src/errors/index.ts'
import { dryAir } from '../../src/gas-law/index.ts'
import type { AbsolutePressure, Fraction, Temperature, VolumeFlow } from '../../src/units/index.ts'

/** What came of one seeded machine: numbers that are bad, or why it was refused. */
export type TrialEnd = { readonly bad: readonly string[] } | { readonly refused: string }

/** A seeded compressor of ideal gas, its work, its interstage pressures and its water. */
export function machineTrial(random: () => number): TrialEnd {
  const between = (low: number, high: number): number => low + (high - low) * random()
  const count = 2 + Math.floor(between(0, 4))
  const intake = between(0.6e5, 1.05e5)
  const final = between(150e5, 300e5)
  const temperature = between(263, 313) as Temperature
  const ratio = (final / intake) ** (1 / count)
  const inlets = Array.from({ length: count }, (_, k) => (k === 0 ? temperature : between(275, 330)) as Temperature)
  const pressures = inlets.map((_, k) =>
    k + 1 === count ? final : intake * ratio ** (k + 1 + between(-0.1, 0.1)),
  ) as AbsolutePressure[]
  const intakePressure = intake as AbsolutePressure
  try {
    const work = compressorWork(
      {
        mixture: dryAir,
        intake: { pressure: intakePressure, temperature },
        stages: pressures.map((to, k) => ({ to, inletTemperature: inlets[k] as Temperature })),
        path: { process: 'polytropic', exponent: between(1.05, 1.4) as Fraction },
      },
      { gas: 'ideal' },
    )
    const water = separatedWater(
      {
        intake: { pressure: intakePressure, temperature, relativeHumidity: between(0, 1) as Fraction },
        flow: between(0.0005, 0.05) as VolumeFlow,
        separators: pressures.map((pressure) => ({
          pressure,
          temperature: between(275, 330) as Temperature,
          separation: between(0.5, 1) as Fraction,
        })),
      },
      { gas: 'ideal' },
    )
    const swept = between(0.001, 0.05)
    const running = runningPressures(
      {
        mixture: dryAir,
        intakePressure,
        finalPressure: final as AbsolutePressure,
        stages: inlets.map((inletTemperature, k) => ({
          sweptFlow: (swept / ratio ** k) as VolumeFlow,
          clearance: { clearance: between(0.005, 0.06) as Fraction, exponent: between(1.1, 1.4) as Fraction },
          inletTemperature,
          slip: between(0, 0.1) as Fraction,
        })),
      },
      { gas: 'ideal' },
    )
    const drained = water.separators.map(({ drained: { value } }) => value as number)
    const lost = water.takenIn.value - water.carryOver.value - drained.reduce((sum, value) => sum + value, 0)
    const bad = [
      ...notAbove('work', [work.molarWork, work.isothermalMolarWork, ...work.stages.map((s) => s.molarWork)]),
      ...notAbove(
        'discharge temperature',
        work.stages.map((s) => s.dischargeTemperature),
      ),
      ...notAbove('interstage pressure', running.pressures),
      ...notAbove('mass flow', [running.massFlow]),
      ...[water.takenIn.value, water.carryOver.value, ...drained]
        .filter((value) => !(value >= 0 && value < Infinity))
        .map((value) => `water ${String(value)}`),
      ...(Math.abs(lost) <= 1e-12 * water.takenIn.value ? [] : [`water lost: ${String(lost)}`]),
    ]
    return { bad }
  } catch (error) {
    if (error instanceof LitrebarError) return { refused: `${error.code} ${error.argument}` }
    throw error
  }
}

function notAbove(name: string, values: readonly number[]): readonly string[] {
  return values.filter((value) => !(value > 0 && value < Infinity)).map((value) => `${name} ${String(value)}`)
}
