import {
  assessGasDensity,
  dryAir,
  type GasDensityLimit,
  gasDensityLimits,
  type Mixture,
  nitrox,
} from '../../../src/gas-law/index.ts'
import { absolute, bar, celsius, temperatureOf } from '../../../src/units/index.ts'
import type { VerdictRow } from './row.ts'

const { recommended } = gasDensityLimits
const read = { ...recommended, evidence: 'primary' } as const
interface JudgedGas {
  readonly pressure?: number
  readonly temperature?: number
  readonly mixture?: Mixture
  readonly limit?: GasDensityLimit
}

// Air of 10 °C has 1.23 g/L for each bar: 5.2 g/L at 4.2 bar.
const judged = ({ pressure = 4, temperature = 10, mixture = dryAir, limit = read }: JudgedGas = {}) =>
  assessGasDensity(
    { mixture, pressure: absolute(pressure, bar), temperature: temperatureOf(temperature, celsius) },
    { limit },
  ).verdict

/** Functions of this room. */
export const rows: Readonly<Record<string, VerdictRow>> = {
  assessGasDensity: {
    base: () => judged(),
    turnedBy: {
      'a greater pressure': () => judged({ pressure: 4.3 }),
      'colder gas': () => judged({ temperature: -15 }),
      'a heavier mixture': () => judged({ mixture: nitrox(1) }),
      'a limit from memory': () => judged({ limit: recommended }),
    },
  },
}
