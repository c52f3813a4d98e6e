import { inputError, LitrebarError, shown } from '../../errors/index.ts'
import { isUnit } from '../../units/check-unit.ts'
import {
  type Dimension,
  type EnergyPerVolume,
  joulePerLitre,
  litrePerMinute,
  one,
  type PlainNumber,
  type Power,
  requireWithin,
  type Unit,
  type VolumeFlow,
} from '../../units/index.ts'

/** What a unit of another dimension was probably meant to be. */
const meant: Partial<Record<Dimension, string>> = {
  density:
    'is mass per volume. The old literature drops the metre: kgf·m/L was probably meant, where 0.14 kgf·m/L is 1.373 J/L',
  energy: 'is an energy, without a volume. Divide the work of a breath by its tidal volume: J/L',
  torque: 'is a torque, without a volume. Newton metre per litre is J/L',
  force: 'is a force. Kilogram-force metre per litre, kgf·m/L, was probably meant',
  power: 'is a power. Divide by the respiratory minute volume: J/L',
  'pressure volume': 'is pressure times volume, which is an energy. Divide it by the tidal volume: J/L',
}

/**
 * Work of breathing per litre, from a number in any unit that a report prints: J/L, kPa, kgf·m/L, cmH2O …
 * Takes a unit of any dimension, as it comes from a file, and refuses with a reason what cannot be work per volume.
 *
 * @param n - the number as printed, finite
 * @param unit - its unit
 * @returns energy per volume, Pa
 * @throws LitrebarError `unit` for a unit that is no pressure, with what was probably meant; `range` if `n` is not finite
 * @source common-practice
 * @example
 * inUnit(workOfBreathingPerLitreOf(0.14, kilogramForceMetrePerLitre), joulePerLitre).toFixed(6) // => '1.372931'
 */
export function workOfBreathingPerLitreOf(n: PlainNumber, unit: Unit): EnergyPerVolume {
  if (!isUnit(unit))
    throw inputError(
      'unit',
      shown(unit),
      'a unit of work per volume',
      'Use joulePerLitre, kilopascal or kilogramForceMetrePerLitre.',
    )
  if (unit.quantity !== 'pressure') {
    const because = meant[unit.quantity] ?? `is a ${unit.quantity}`
    throw new LitrebarError({
      code: 'unit',
      argument: 'unit',
      value: unit.symbol,
      expected: 'work per volume, such as J/L, kPa or kgf·m/L',
      hint: `${unit.symbol} ${because}.`,
    })
  }
  requireWithin('n', n, { unit: one, hint: 'Replace a missing value before the calculation.' })
  const si = n * unit.factor
  requireWithin('work of breathing per litre', si, { unit, hint: 'Replace a missing value before the calculation.' })
  return si as EnergyPerVolume
}

/**
 * Power of breathing: work per litre times respiratory minute volume.
 *
 * @param workOfBreathingPerLitre - Pa
 * @param respiratoryMinuteVolume - m³/s, at least 0
 * @returns power, W
 * @throws LitrebarError `range` if one is not finite or the ventilation is negative
 * @source litrebar-derivation
 * @example
 * inUnit(powerOfBreathing(difference(1.5, joulePerLitre), measure(60, litrePerMinute)), watt).toFixed(6) // => '1.500000'
 */
export function powerOfBreathing(workOfBreathingPerLitre: EnergyPerVolume, respiratoryMinuteVolume: VolumeFlow): Power {
  requireWithin('workOfBreathingPerLitre', workOfBreathingPerLitre, { unit: joulePerLitre, hint: 'State it in J/L.' })
  requireWithin('respiratoryMinuteVolume', respiratoryMinuteVolume, {
    atLeast: 0,
    unit: litrePerMinute,
    hint: 'State the size of the ventilation.',
  })
  return (workOfBreathingPerLitre * respiratoryMinuteVolume) as Power
}
