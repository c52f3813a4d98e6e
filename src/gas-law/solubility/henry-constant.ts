import { requireWord } from '../../errors/index.ts'
import type { SourceId } from '../../references/sources.ts'
import { type Accepted, kelvin, type Quantity, requireWithin, type Temperature } from '../../units/index.ts'
import { overWater } from '../water/saturation.ts'

/** Fugacity of a gas over its mole fraction in water, Pa. The higher, the less dissolves. */
export type HenryConstant = Quantity<'pressure', 'per mole fraction'>

/** Coefficients of a gas and the temperatures of the data behind them. */
export interface HenryCoefficients {
  readonly A: number
  readonly B: number
  readonly C: number
  /** K */
  readonly from: number
  readonly to: number
}

/** The table of gases dissolved in water. To add one, add a row. */
export const henryCoefficients: {
  readonly source: SourceId
  readonly place: string
  readonly gases: Readonly<Record<DissolvedGas, HenryCoefficients>>
} = {
  source: 'iapws-g7-04',
  place: 'table 2, coefficients; table 4, temperatures',
  gases: {
    helium: { A: -3.52839, B: 7.12983, C: 4.4777, from: 273.21, to: 553.18 },
    neon: { A: -3.18301, B: 5.31448, C: 5.43774, from: 273.2, to: 543.36 },
    argon: { A: -8.40954, B: 4.29587, C: 10.52779, from: 273.19, to: 568.36 },
    krypton: { A: -8.97358, B: 3.61508, C: 11.29963, from: 273.19, to: 525.56 },
    xenon: { A: -14.21635, B: 4.00041, C: 15.60999, from: 273.22, to: 574.85 },
    hydrogen: { A: -4.73284, B: 6.08954, C: 6.06066, from: 273.15, to: 636.09 },
    nitrogen: { A: -9.67578, B: 4.72162, C: 11.70585, from: 278.12, to: 636.46 },
    oxygen: { A: -9.44833, B: 4.43822, C: 11.42005, from: 274.15, to: 616.52 },
    carbonMonoxide: { A: -10.52862, B: 5.13259, C: 12.01421, from: 278.15, to: 588.67 },
    carbonDioxide: { A: -8.55445, B: 4.01195, C: 9.52345, from: 274.19, to: 642.66 },
    hydrogenSulphide: { A: -4.51499, B: 5.23538, C: 4.42126, from: 273.15, to: 533.09 },
    methane: { A: -10.44708, B: 4.66491, C: 12.12986, from: 275.46, to: 633.11 },
    ethane: { A: -19.67563, B: 4.51222, C: 20.62567, from: 275.44, to: 473.46 },
    sulphurHexafluoride: { A: -16.56118, B: 2.15289, C: 20.3544, from: 283.14, to: 505.55 },
  },
}

/** The gases whose solubility in water is in the table. */
export type DissolvedGas =
  | 'helium'
  | 'neon'
  | 'argon'
  | 'krypton'
  | 'xenon'
  | 'hydrogen'
  | 'nitrogen'
  | 'oxygen'
  | 'carbonMonoxide'
  | 'carbonDioxide'
  | 'hydrogenSulphide'
  | 'methane'
  | 'ethane'
  | 'sulphurHexafluoride'

/**
 * Henry's constant of a gas in pure water: its fugacity over its mole fraction in the water.
 * Made for 0 to 350 °C; near room temperature it gives 1 to 2 % more dissolved gas than the data of oceanography,
 * for which `bunsenCoefficient` is the better choice.
 *
 * @param gas - one of the table
 * @param temperature - K, within the data of that gas: for nitrogen 278.12 to 636.46
 * @returns pressure per mole fraction, Pa
 * @throws LitrebarError `outside-validity` outside the data of the gas; `range` if not finite; `input` for a gas that is not in the table
 * @source iapws-g7-04, equation 3
 * @example
 * inUnit(henryConstant('nitrogen', temperatureOf(25, celsius)), gigapascal).toFixed(4) // => '8.5600'
 */
export function henryConstant(gas: DissolvedGas, temperature: Temperature): HenryConstant {
  requireWord('gas', gas, Object.keys(henryCoefficients.gases) as DissolvedGas[])
  const { from, to } = henryCoefficients.gases[gas]
  const range: Accepted = {
    atLeast: from,
    atMost: to,
    unit: kelvin,
    code: 'outside-validity',
    hint: `The data of ${gas} in water end there.`,
  }
  requireWithin('temperature', temperature, range)
  return henryAt(gas, temperature) as HenryConstant
}

/** Henry's constant, Pa. Unchecked: runs on smoothly down to 0 °C. */
export function henryAt(gas: DissolvedGas, temperature: number): number {
  const { A, B, C } = henryCoefficients.gases[gas]
  const ratio = temperature / 647.096
  const tau = 1 - ratio
  return overWater(temperature) * Math.exp((A + B * tau ** 0.355) / ratio + C * ratio ** -0.41 * Math.exp(tau))
}
