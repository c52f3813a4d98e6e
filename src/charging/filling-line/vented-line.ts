import { densityBy } from '../../cylinder/cylinder-gas.ts'
import { requireKeys, requireWord } from '../../errors/index.ts'
import type { GasModelOption, Mixture } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId } from '../../references/cautions.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  type InternalVolume,
  litre,
  type PressureVolume,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { ambientPressure, pressure, requireAbove, temperature } from '../accepted.ts'

/** Hose, valves and manifold between the supply and a cylinder, full of gas when the cylinder is closed. */
export interface FillingLine {
  /** Of all that is vented together: bore times length, and what valves and filters hold. */
  readonly internalVolume: InternalVolume
  readonly mixture: Mixture
  /** At the end of the fill, absolute. */
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
  readonly ambientPressure: AbsolutePressure
}

/** Gas that one venting of a line costs. */
export interface VentedLine {
  /** Goes out. */
  readonly lost: Amount
  /** Stays in the line at ambient pressure, and goes into the next cylinder. */
  readonly left: Amount
  /** Internal volume times the fall of pressure: what the ideal rule takes for the gas lost. */
  readonly pressureVolume: PressureVolume
  readonly cautions: readonly CautionId[]
}

const lineVolume: Accepted = {
  above: 0,
  atMost: 100,
  unit: litre,
  hint: 'Give bore times length: 6 mm and 2 m hold 0.057 L.',
}

/**
 * Gas that is lost each time a filling line is vented, and gas that stays in it: little beside a large cylinder, several per cent of a
 * small one, and the wrong gas in a blend where the mixture changes between two fills.
 *
 * @param line - internal volume, m³, up to 100 L; mixture; pressure at the end of the fill, absolute, Pa, up to 500 bar; temperature, K;
 *   ambient pressure, absolute, Pa
 * @param options - `gas: 'ideal'` to show the difference
 * @returns amounts lost and left, mol
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key or word
 * @source litrebar-derivation, balance of amounts; gerg-2008, density
 * @example
 * const { lost } = ventedLine({
 *   internalVolume: internalVolumeOf(0.06, litre),
 *   mixture: dryAir,
 *   pressure: absolute(233, bar),
 *   temperature: temperatureOf(20, celsius),
 *   ambientPressure: absolute(1, bar),
 * })
 * lost.toFixed(2) // => '0.54'
 */
export function ventedLine(line: FillingLine, options: GasModelOption = {}): VentedLine {
  requireKeys('line', line, {
    internalVolume: true,
    mixture: true,
    pressure: true,
    temperature: true,
    ambientPressure: true,
  })
  requireKeys('options', options, { gas: false })
  const { gas = 'real' } = options
  requireWord('options.gas', gas, ['real', 'ideal'])
  requireWithin('line.internalVolume', line.internalVolume, lineVolume)
  requireMixture('line.mixture', line.mixture)
  requireWithin('line.pressure', line.pressure, pressure)
  requireWithin('line.temperature', line.temperature, temperature)
  requireWithin('line.ambientPressure', line.ambientPressure, ambientPressure)
  requireAbove('line.pressure', line.pressure, line.ambientPressure)
  const { internalVolume, mixture, temperature: t } = line
  const left = internalVolume * densityBy(gas, mixture, line.ambientPressure, t)
  return {
    lost: (internalVolume * densityBy(gas, mixture, line.pressure, t) - left) as Amount,
    left: left as Amount,
    pressureVolume: (internalVolume * (line.pressure - line.ambientPressure)) as PressureVolume,
    cautions: ['fill-limit', 'analyse-mixture'],
  }
}
