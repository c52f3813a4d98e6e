import { type Accepted, bar, celsius, litre, one, requireWithin } from '../units/index.ts'

// The limits are ours: wide enough for any cylinder, narrow enough to catch a wrong unit.

/** What is accepted as the volume inside a cylinder or a bank. */
export const internalVolume: Accepted = {
  above: 0,
  atMost: 10_000,
  unit: litre,
  hint: 'Give the internal volume, as filled with water, not the free gas.',
}
/** What is accepted as absolute pressure in a cylinder. */
export const pressure: Accepted = {
  above: 0,
  atMost: 500,
  unit: bar,
  hint: 'Give an absolute pressure: add the ambient pressure to a gauge reading.',
}
/** What is accepted as absolute pressure in a cylinder that may have been evacuated. */
export const pressureOrVacuum: Accepted = {
  atLeast: 0,
  atMost: 500,
  unit: bar,
  hint: 'Give an absolute pressure: add the ambient pressure to a gauge reading.',
}
/** What is accepted as reading of a cylinder gauge or as a marked pressure. */
export const gaugePressure: Accepted = {
  above: 0,
  atMost: 500,
  unit: bar,
  hint: 'Give the pressure above ambient, in the unit that the gauge or the marking is in.',
}
/** What is accepted as pressure around the cylinder. */
export const ambientPressure: Accepted = {
  above: 0.2,
  atMost: 100,
  unit: bar,
  hint: 'Give the absolute pressure around the gauge: about 1.013 bar at sea level.',
}
/** What is accepted as fraction of a gas that is wanted. */
export const fraction: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Give 32 per cent as 0.32.' }
/** What is accepted as temperature of the gas in a cylinder. */
export const temperature: Accepted = {
  atLeast: -60,
  atMost: 150,
  unit: celsius,
  hint: 'Give the temperature of the gas.',
}

/**
 * Refuses a pressure out of range, or on the wrong side of another one. Compared in SI, so that equal pressures are equal.
 *
 * @param argument - the parameter with its path
 * @param value - absolute, Pa
 * @param side - where it must stand
 * @param other - the other pressure, absolute, Pa
 */
export function requirePressure(
  argument: string,
  value: number,
  side: 'above' | 'atLeast' | 'atMost',
  other: number,
): void {
  requireWithin(argument, value, pressure)
  if (side === 'above' ? value > other : side === 'atLeast' ? value >= other : value <= other) return
  const { unit, hint } = pressure
  // a pressure that differs in the last digits alone is not on the wrong side
  requireWithin(argument, value, { [side]: Number((other / unit.factor).toPrecision(12)), unit, hint })
}
