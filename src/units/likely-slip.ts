import { requireWord } from '../errors/index.ts'
import { requireNumber } from './check-unit.ts'
import { cubicFootPerMinute, litrePerMinute, litrePerSecond } from './flow.ts'
import { one, percent } from './fraction.ts'
import { foot, metre } from './length.ts'
import { bar, kilopascal, psi } from './pressure.ts'
import { celsius, fahrenheit, kelvin } from './temperature.ts'
import type { Unit } from './unit.ts'
import { cubicFoot, litre } from './volume.ts'

/** A mistake in stating a quantity: the number was given in one unit and would make sense in another. */
interface UnitSlip {
  readonly id: string
  readonly text: string
  readonly given: Unit
  readonly meant: Unit
}

/** A mistake of datum or of kind: the value would make sense as something else, `plus` so many SI units. */
interface KindSlip {
  readonly id: string
  readonly text: string
  readonly usualOf: SlipRole
  readonly plus: number
}

/** What a stated number stands for, with what is met in practice. */
interface Role {
  /** Ours, wide on purpose: common practice, no source. */
  readonly usual: { readonly from: number; readonly to: number; readonly unit: Unit }
  readonly slips: readonly (UnitSlip | KindSlip)[]
}

/** The roles that `likelySlips` knows. */
export type SlipRole =
  | 'cylinder gauge pressure'
  | 'service pressure'
  | 'surface pressure'
  | 'ambient pressure'
  | 'intermediate pressure'
  | 'gas temperature'
  | 'water temperature'
  | 'internal volume'
  | 'rated capacity'
  | 'depth'
  | 'oxygen fraction'
  | 'respiratory minute volume'

const psiAsBar: UnitSlip = { id: 'psi-read-as-bar', text: 'a number in psi was read as bar', given: bar, meant: psi }
const barAsPsi: UnitSlip = { id: 'bar-read-as-psi', text: 'a number in bar was read as psi', given: psi, meant: bar }
const kilopascalAsBar: UnitSlip = {
  id: 'kilopascal-read-as-bar',
  text: 'a number in kPa was read as bar',
  given: bar,
  meant: kilopascal,
}
const temperatureSlips: readonly UnitSlip[] = [
  { id: 'fahrenheit-read-as-celsius', text: 'a number in °F was read as °C', given: celsius, meant: fahrenheit },
  { id: 'kelvin-read-as-celsius', text: 'a number in K was read as °C', given: celsius, meant: kelvin },
  { id: 'celsius-read-as-kelvin', text: 'a number in °C was read as K', given: kelvin, meant: celsius },
]
const gaugeAsAbsolute = (usualOf: SlipRole): KindSlip => ({
  id: 'gauge-read-as-absolute',
  text: 'a gauge pressure was given as an absolute one',
  usualOf,
  plus: 101_325,
})

const roles = (): Readonly<Record<SlipRole, Role>> => ({
  'cylinder gauge pressure': { usual: { from: 0, to: 350, unit: bar }, slips: [psiAsBar, kilopascalAsBar] },
  'service pressure': { usual: { from: 100, to: 350, unit: bar }, slips: [psiAsBar, barAsPsi, kilopascalAsBar] },
  'surface pressure': {
    usual: { from: 0.3, to: 1.1, unit: bar },
    slips: [gaugeAsAbsolute('surface pressure'), psiAsBar, kilopascalAsBar],
  },
  'ambient pressure': {
    usual: { from: 0.3, to: 35, unit: bar },
    slips: [gaugeAsAbsolute('ambient pressure'), kilopascalAsBar],
  },
  'intermediate pressure': { usual: { from: 5, to: 16, unit: bar }, slips: [psiAsBar, barAsPsi, kilopascalAsBar] },
  'gas temperature': { usual: { from: -40, to: 65, unit: celsius }, slips: temperatureSlips },
  'water temperature': { usual: { from: -2, to: 38, unit: celsius }, slips: temperatureSlips },
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
      {
        id: 'cubic-feet-read-as-litres',
        text: 'a number in cubic feet was read as litres',
        given: litre,
        meant: cubicFoot,
      },
      {
        id: 'internal-volume-read-as-free-gas',
        text: 'litres of water, the internal volume, were given as free gas',
        usualOf: 'internal volume',
        plus: 0,
      },
    ],
  },
  depth: {
    usual: { from: 0, to: 150, unit: metre },
    slips: [{ id: 'feet-read-as-metres', text: 'a number in feet was read as metres', given: metre, meant: foot }],
  },
  'oxygen fraction': {
    usual: { from: 0.02, to: 1, unit: one },
    slips: [
      { id: 'percent-read-as-fraction', text: 'a percentage was read as a fraction', given: one, meant: percent },
    ],
  },
  'respiratory minute volume': {
    usual: { from: 5, to: 120, unit: litrePerMinute },
    slips: [
      {
        id: 'cubic-feet-read-as-litres',
        text: 'a number in ft³/min was read as L/min',
        given: litrePerMinute,
        meant: cubicFootPerMinute,
      },
      {
        id: 'per-second-read-as-per-minute',
        text: 'a number in L/s was read as L/min',
        given: litrePerMinute,
        meant: litrePerSecond,
      },
    ],
  },
})

/** A reading of an unusual number that would make sense. */
export interface LikelySlip {
  readonly id: string
  readonly text: string
  /** What the value would be, SI. */
  readonly meant: number
}

/** Whether a number is of a usual size, and if not, what may have gone wrong. */
export interface Plausibility {
  readonly usual: boolean
  readonly slips: readonly LikelySlip[]
}

/**
 * Whether a stated number is of a size met in practice, and the slips that would explain it if not.
 * For input without types: what a person or a file states. An unusual number is no error; the caller decides.
 *
 * @param role - what the number stands for
 * @param value - the number, SI; pressures as their role says (a surface pressure is absolute)
 * @returns whether it is usual, and the slips whose reading would be
 * @throws LitrebarError `input` for a role that is not known or a value that is not a number; `range` for NaN and the infinities
 * @source common-practice
 * @example
 * likelySlips('service pressure', gauge(3000, bar)).slips[0]?.id // => 'psi-read-as-bar'
 */
export function likelySlips(role: SlipRole, value: number): Plausibility {
  const table = roles()
  requireWord('role', role, Object.keys(table) as SlipRole[])
  requireNumber('value', value)
  const usual = (name: SlipRole, si: number): boolean => {
    const { from, to, unit } = table[name].usual
    const stated = (si - (unit.offset ?? 0)) / unit.factor
    return stated >= from && stated <= to
  }
  if (usual(role, value)) return { usual: true, slips: [] }
  const slips = table[role].slips.flatMap((slip) => {
    const meant = 'usualOf' in slip ? value + slip.plus : reread(value, slip)
    return usual('usualOf' in slip ? slip.usualOf : role, meant) ? [{ id: slip.id, text: slip.text, meant }] : []
  })
  return { usual: false, slips }
}

function reread(value: number, { given, meant }: UnitSlip): number {
  return ((value - (given.offset ?? 0)) / given.factor) * meant.factor + (meant.offset ?? 0)
}
