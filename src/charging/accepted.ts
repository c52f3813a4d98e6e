import { requireList } from '../errors/index.ts'
import {
  type Accepted,
  bar,
  celsius,
  kelvin,
  litre,
  litrePerMinute,
  one,
  percent,
  requireWithin,
} from '../units/index.ts'

// The limits are ours: wide enough for any filling station, narrow enough to catch a wrong unit.

/** What is accepted as absolute pressure anywhere between intake and cylinder. */
export const pressure: Accepted = {
  above: 0,
  atMost: 500,
  unit: bar,
  hint: 'Give an absolute pressure: add the ambient pressure to a gauge reading.',
}
/** What is accepted as absolute pressure around a compressor. */
export const ambientPressure: Accepted = {
  atLeast: 0.3,
  atMost: 1.2,
  unit: bar,
  hint: 'Give the absolute pressure around the compressor: about 1.013 bar at sea level.',
}
/** What is accepted as temperature of gas that is drawn in, or has left a cooler. */
export const temperature: Accepted = {
  atLeast: -60,
  atMost: 150,
  unit: celsius,
  hint: 'Give the temperature of the gas there.',
}
/** What is accepted as temperature at the end of a compression. */
export const dischargeTemperature: Accepted = {
  above: 200,
  atMost: 1500,
  unit: kelvin,
  hint: 'Give the temperature of the gas as it leaves the stage.',
}
/** What is accepted as share of something, none excluded. */
export const efficiency: Accepted = { above: 0, atMost: 1, unit: one, hint: 'Give 80 per cent as 0.8.' }
/** What is accepted as share that may be nothing, but not all. */
export const share: Accepted = { atLeast: 0, below: 1, unit: one, hint: 'Give 5 per cent as 0.05.' }
/** What is accepted as relative humidity. */
export const humidity: Accepted = {
  atLeast: 0,
  atMost: 100,
  unit: percent,
  hint: 'Give 60 per cent as 0.6, or measure(60, percent).',
}
/** What is accepted as flow of free gas or through an intake. */
export const flow: Accepted = {
  above: 0,
  atMost: 1e6,
  unit: litrePerMinute,
  hint: 'Give the flow at the intake, or as free gas; not that at the outlet.',
}
/** What is accepted as the volume inside a cylinder or a bank. */
export const internalVolume: Accepted = {
  above: 0,
  atMost: 10_000,
  unit: litre,
  hint: 'Give the internal volume, as filled with water, not the free gas.',
}

/**
 * Refuses a pressure that does not stand above another one. Compared in SI.
 *
 * @param argument - the parameter with its path
 * @param value - absolute, Pa
 * @param other - the pressure to stand above, absolute, Pa
 */
export function requireAbove(argument: string, value: number, other: number): void {
  requireWithin(argument, value, pressure)
  if (value > other) return
  requireWithin(argument, value, {
    above: Number((other / bar.factor).toPrecision(12)),
    unit: bar,
    hint: pressure.hint,
  })
}

/**
 * Refuses a list without members.
 *
 * @param argument - the parameter with its path
 * @param list - what was given
 * @param hint - what to list
 */
export function requireSome(argument: string, list: readonly unknown[], hint: string): void {
  requireList(argument, list, 1, hint)
}
