import { minute, second } from './duration.ts'
import { cubicFootPerMinute, litrePerMinute, litrePerSecond } from './flow.ts'
import { one, percent } from './fraction.ts'
import { foot, metre } from './length.ts'
import { bar, kilopascal, megapascal, pascal, psi } from './pressure.ts'
import { celsius, fahrenheit, kelvin } from './temperature.ts'
import type { Unit } from './unit.ts'
import { cubicFoot, litre } from './volume.ts'

/** A mistake in stating a quantity: the number was given in one unit and would make sense in another. */
export interface UnitSlip {
  readonly id: string
  readonly text: string
  readonly given: Unit
  readonly meant: Unit
}

/** A mistake of datum or of kind: the value would make sense as something else, `plus` so many SI units. */
export interface KindSlip {
  readonly id: string
  readonly text: string
  readonly usualOf: SlipRole
  readonly plus: number
}

/** What a stated number stands for, with what is met in practice. */
export interface Role {
  /** Ours, wide on purpose: common practice, no source. */
  readonly usual: { readonly from: number; readonly to: number; readonly unit: Unit }
  readonly slips: readonly (UnitSlip | KindSlip)[]
}

/** The roles that `likelySlips` and `recordSlips` know. */
export type SlipRole =
  | 'cylinder gauge pressure'
  | 'starting gauge pressure'
  | 'ending gauge pressure'
  | 'cylinder absolute pressure'
  | 'service pressure'
  | 'test pressure'
  | 'surface pressure'
  | 'ambient pressure'
  | 'intermediate pressure'
  | 'gas temperature'
  | 'air temperature'
  | 'water temperature'
  | 'internal volume'
  | 'rated capacity'
  | 'depth'
  | 'mean depth'
  | 'altitude'
  | 'oxygen fraction'
  | 'helium fraction'
  | 'duration'
  | 'respiratory minute volume'

const unitSlip = (id: string, text: string, given: Unit, meant: Unit): UnitSlip => ({ id, text, given, meant })

const psiAsBar = unitSlip('psi-read-as-bar', 'a number in psi was read as bar', bar, psi)
const barAsPsi = unitSlip('bar-read-as-psi', 'a number in bar was read as psi', psi, bar)
const kilopascalAsBar = unitSlip('kilopascal-read-as-bar', 'a number in kPa was read as bar', bar, kilopascal)
const barAsKilopascal = unitSlip('bar-read-as-kilopascal', 'a number in bar was read as kPa', kilopascal, bar)
const megapascalAsBar = unitSlip('megapascal-read-as-bar', 'a number in MPa was read as bar', bar, megapascal)
const barAsPascal = unitSlip('bar-read-as-pascal', 'a number in bar was read as Pa', pascal, bar)
const highPressure = [psiAsBar, barAsPsi, kilopascalAsBar, barAsKilopascal, megapascalAsBar, barAsPascal] as const
const temperatures = [
  unitSlip('fahrenheit-read-as-celsius', 'a number in °F was read as °C', celsius, fahrenheit),
  unitSlip('kelvin-read-as-celsius', 'a number in K was read as °C', celsius, kelvin),
  unitSlip('celsius-read-as-kelvin', 'a number in °C was read as K', kelvin, celsius),
  unitSlip('celsius-read-as-fahrenheit', 'a number in °C was read as °F', fahrenheit, celsius),
] as const
const feetAsMetres = unitSlip('feet-read-as-metres', 'a number in feet was read as metres', metre, foot)
const metresAsFeet = unitSlip('metres-read-as-feet', 'a number in metres was read as feet', foot, metre)
const percentAsFraction = unitSlip('percent-read-as-fraction', 'a percentage was read as a fraction', one, percent)
const fractionAsPercent = unitSlip('fraction-read-as-percent', 'a fraction was read as a percentage', percent, one)
const gaugeAsAbsolute = (usualOf: SlipRole): KindSlip => ({
  id: 'gauge-read-as-absolute',
  text: 'a gauge pressure was given as an absolute one',
  usualOf,
  plus: 101_325,
})
const cylinderPressure: Role = { usual: { from: 0, to: 350, unit: bar }, slips: highPressure }

/** Every role. A function, so that a bundle without slips does not carry the table. */
export const slipRoles = (): Readonly<Record<SlipRole, Role>> => ({
  'cylinder gauge pressure': cylinderPressure,
  'starting gauge pressure': { usual: { from: 20, to: 350, unit: bar }, slips: highPressure },
  'ending gauge pressure': cylinderPressure,
  'cylinder absolute pressure': {
    usual: { from: 0.3, to: 351, unit: bar },
    slips: [gaugeAsAbsolute('cylinder absolute pressure'), ...highPressure],
  },
  'service pressure': { usual: { from: 100, to: 350, unit: bar }, slips: highPressure },
  'test pressure': { usual: { from: 150, to: 550, unit: bar }, slips: highPressure },
  'surface pressure': {
    usual: { from: 0.3, to: 1.1, unit: bar },
    slips: [gaugeAsAbsolute('surface pressure'), psiAsBar, kilopascalAsBar, barAsKilopascal, barAsPascal],
  },
  'ambient pressure': {
    usual: { from: 0.3, to: 35, unit: bar },
    slips: [gaugeAsAbsolute('ambient pressure'), kilopascalAsBar, psiAsBar, barAsPsi, barAsKilopascal, barAsPascal],
  },
  'intermediate pressure': { usual: { from: 5, to: 16, unit: bar }, slips: highPressure },
  'gas temperature': { usual: { from: -40, to: 65, unit: celsius }, slips: temperatures },
  'air temperature': { usual: { from: -30, to: 48, unit: celsius }, slips: temperatures },
  'water temperature': { usual: { from: -2, to: 35, unit: celsius }, slips: temperatures },
  'internal volume': {
    usual: { from: 0.2, to: 150, unit: litre },
    slips: [
      {
        id: 'free-gas-read-as-internal-volume',
        text: 'the free gas of a cylinder was given as its internal volume',
        usualOf: 'rated capacity',
        plus: 0,
      },
    ],
  },
  'rated capacity': {
    usual: { from: 200, to: 15_000, unit: litre },
    slips: [
      unitSlip('cubic-feet-read-as-litres', 'a number in cubic feet was read as litres', litre, cubicFoot),
      {
        id: 'internal-volume-read-as-free-gas',
        text: 'litres of water, the internal volume, were given as free gas',
        usualOf: 'internal volume',
        plus: 0,
      },
      unitSlip('litres-read-as-cubic-feet', 'a number in litres was read as cubic feet', cubicFoot, litre),
    ],
  },
  depth: { usual: { from: 0, to: 150, unit: metre }, slips: [feetAsMetres, metresAsFeet] },
  'mean depth': { usual: { from: 0, to: 100, unit: metre }, slips: [feetAsMetres, metresAsFeet] },
  altitude: { usual: { from: -430, to: 5500, unit: metre }, slips: [feetAsMetres, metresAsFeet] },
  'oxygen fraction': { usual: { from: 0.02, to: 1, unit: one }, slips: [percentAsFraction, fractionAsPercent] },
  'helium fraction': { usual: { from: 0, to: 0.98, unit: one }, slips: [percentAsFraction, fractionAsPercent] },
  duration: {
    usual: { from: 1, to: 600, unit: minute },
    slips: [
      unitSlip('minutes-read-as-seconds', 'a number of minutes was read as seconds', second, minute),
      unitSlip('seconds-read-as-minutes', 'a number of seconds was read as minutes', minute, second),
    ],
  },
  'respiratory minute volume': {
    usual: { from: 5, to: 120, unit: litrePerMinute },
    slips: [
      unitSlip(
        'cubic-feet-read-as-litres',
        'a number in ft³/min was read as L/min',
        litrePerMinute,
        cubicFootPerMinute,
      ),
      unitSlip('per-second-read-as-per-minute', 'a number in L/s was read as L/min', litrePerMinute, litrePerSecond),
    ],
  },
})

/** What a value becomes when the unit that was meant is taken for the one that was given. */
export function reread(value: number, { given, meant }: UnitSlip): number {
  return ((value - (given.offset ?? 0)) / given.factor) * meant.factor + (meant.offset ?? 0)
}

/** Whether a value is of a size that is met for a role. */
export function isUsual({ usual: { from, to, unit } }: Role, value: number): boolean {
  const stated = (value - (unit.offset ?? 0)) / unit.factor
  return stated >= from && stated <= to
}
