import { requireList } from '../../errors/index.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import type { PressureVolume } from '../../units/index.ts'
import {
  type GaugedCylinder,
  requireConditions,
  type TurnConditions,
  type TurnPressure,
  turnAfter,
  usableGas,
} from './usable-gas.ts'

/** The turn with independent cylinders that the loss of any one of them leaves enough gas for. */
export interface IndependentTurn {
  /** Gas that may be used on the way out, from all cylinders together, as pressure times volume breathed. */
  readonly used: PressureVolume
  /** Where each cylinder stands at the turn, in the order given. */
  readonly turns: readonly TurnPressure[]
  /** The same fraction of every cylinder instead, as large a use: what is then missing after the worst loss. 0 where it is enough. */
  readonly equalFractions: { readonly shortfall: PressureVolume; readonly worstLoss: number }
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/**
 * The latest turn with cylinders that are not joined, if any one of them may be lost at the turn and the others must bring the diver
 * back by the same way at the same rate. With usable gas A and B that is a use of min((A + B)/3, A, B): the richer gives more, so
 * that no cylinder holds more than the rest can do without. A second breather is not counted.
 *
 * @param cylinders - at least two, of any size: contents; residual pressure, absolute, Pa, at least the ambient pressure, or
 *   `{ aboveAmbient }`; maximum permissible error of the gauge, Pa
 * @param options - as for `turnPressures`, without a fraction
 * @returns use on the way out, where each cylinder stands at the turn, and what equal fractions would leave short
 * @throws LitrebarError `range`, also if a cylinder holds less than its residual pressure; `input` for fewer than two
 * @source litrebar-derivation
 * @example
 * const gas = { temperature: temperatureOf(12, celsius), mixture: dryAir }
 * const cylinders = [[12, 220], [7, 200]].map(([litres = 0, bars = 0]) => ({
 *   contents: { ...gas, internalVolume: internalVolumeOf(litres, litre), pressure: absolute(bars, bar) },
 *   residualPressure: absolute(20, bar),
 * }))
 * const { used, turns, equalFractions } = independentTurn(cylinders, {
 *   gas: 'ideal',
 *   ambientPressure: absolute(4, bar),
 *   breathingGasTemperature: temperatureOf(12, celsius),
 *   gaugeZero: absolute(1, bar),
 *   show: { unit: bar, step: 1 },
 * })
 * inUnit(used, barLitre).toFixed(0) // => '1220'
 * turns.map(({ shown }) => shown.text) // => ['121', '194']
 * inUnit(equalFractions.shortfall, barLitre).toFixed(0) // => '380'
 */
export function independentTurn(cylinders: readonly GaugedCylinder[], options: TurnConditions): IndependentTurn {
  requireConditions(options, {})
  requireList('cylinders', cylinders, 2, 'A single cylinder, or a joined set, has nothing left once it is lost.')
  const usable = cylinders.map((cylinder, i) => usableGas(`cylinders[${i}]`, cylinder, options))
  const volumes = usable.map(({ volume }) => volume)
  const most = mostThatMayBeLost(volumes)
  const total = volumes.reduce((sum, volume) => sum + volume, 0)
  const used = (total - most) / 2
  const equal = shortfallAfterLoss(
    used,
    volumes.map((volume) => volume * (1 - used / total)),
  )
  return {
    used: (used * options.ambientPressure) as PressureVolume,
    turns: cylinders.map((cylinder, i) => {
      const { volume, density } = usable[i] as (typeof usable)[number]
      return turnAfter(Math.max(0, volume - most) * density, cylinder, options)
    }),
    equalFractions: {
      shortfall: (equal.shortfall * options.ambientPressure) as PressureVolume,
      worstLoss: equal.worstLoss,
    },
    cautions: ['reserve', 'always'],
    sources: ['litrebar-derivation', 'gerg-2008'],
  }
}

/**
 * What no cylinder may hold more than at the turn, c: after a use U the total T - U less any one of them must still be U, so that
 * c = T - 2 U, and the cylinders must hold what is left with none above c: Σ min(V, c) = (T + c)/2. The smallest such c.
 */
function mostThatMayBeLost(volumes: readonly number[]): number {
  const sorted = [...volumes].sort((a, b) => a - b)
  const half = sorted.reduce((sum, volume) => sum + volume, 0) / 2
  let below = 0
  // the k smallest stay full, as they hold less than c
  for (let k = 0; k < sorted.length; k++) {
    const most = (half - below) / (sorted.length - k - 0.5)
    if (most <= (sorted[k] as number)) return most
    below += sorted[k] as number
  }
  return sorted.at(-1) ?? Number.NaN
}

/** Gas missing for the same way back after the loss of the fullest cylinder, and which one that is. */
export function shortfallAfterLoss(
  used: number,
  left: readonly number[],
): { readonly shortfall: number; readonly worstLoss: number } {
  const fullest = Math.max(...left)
  const rest = left.reduce((sum, volume) => sum + volume, 0) - fullest
  // equal cylinders by thirds meet exactly; rounding is no shortfall
  const shortfall = used - rest > 1e-12 * used ? used - rest : 0
  return { shortfall, worstLoss: left.indexOf(fullest) }
}
