import { requireList, requireWord } from '../../errors/index.ts'
import type { ContentsByAbsolutePressure, GasContents, GasModel, GasModelOption } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import { rootBetween } from '../../uncertainty/root-between.ts'
import { type AbsolutePressure, type Amount, requireWithin, type Temperature } from '../../units/index.ts'
import { internalVolume } from '../accepted-contents.ts'
import { type Caloric, caloricOf, type State } from '../caloric.ts'
import { byAbsolutePressure } from '../contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'
import { filledTo } from './fill-in-steps.ts'
import { type GasPortion, richerThanAir, sameMixture, together } from './mixed-gas.ts'

export interface EqualiseOptions extends GasModelOption {
  /** Whether each cylinder keeps its temperature (opened slowly, or settled after) or no heat passes its wall (opened quickly). */
  readonly heat: 'isothermal' | 'adiabatic'
}

/** A cylinder after it has been joined to others. */
export interface EqualisedCylinder extends ContentsByAbsolutePressure {
  readonly amount: Amount
  /** What it received; negative for what it gave. */
  readonly received: Amount
}

/** Cylinders at one pressure. */
export interface Equalised {
  readonly pressure: AbsolutePressure
  /** In the order given. */
  readonly cylinders: readonly EqualisedCylinder[]
  readonly cautions: readonly CautionId[]
}

/**
 * Cylinders joined until their pressures are equal: pressure, mixtures, temperatures and what each gave or received.
 * Gas flows from those above the common pressure to those below, and not back: a cylinder that gives keeps its mixture, one that
 * receives gets the gas of all that give. Without heat, gas left in a giving cylinder expands without friction and cools, and the
 * receiving ones are warmed by the energy that the gas brings; energy as a whole stays. Afterwards they drift apart in pressure as
 * they settle.
 *
 * @param cylinders - two or more: internal volume, m³, up to 10 000 L; mixture; pressure, absolute, Pa, 0 for an evacuated one and up to
 *   500 bar, or gauge pressure with the ambient pressure; temperature, K
 * @param options - with or without heat; `gas: 'ideal'` to show the difference
 * @returns common pressure and the state of each cylinder
 * @throws LitrebarError `range` or `mixture`, naming the cylinder and field; `input` for fewer than two, or an unknown key or word
 * @source litrebar-derivation, balance of amounts and of energy
 * @example
 * const cylinder = (litres: number, bars: number) => ({
 *   internalVolume: internalVolumeOf(litres, litre),
 *   mixture: dryAir,
 *   pressure: absolute(bars, bar),
 *   temperature: temperatureOf(20, celsius),
 * })
 * const joined = equalise([cylinder(50, 250), cylinder(12, 50)], { heat: 'isothermal' })
 * inUnit(joined.pressure, bar).toFixed(1) // => '205.7'
 */
export function equalise(cylinders: readonly GasContents[], options: EqualiseOptions): Equalised {
  const gas = gasModelOf(options, { heat: true })
  requireWord('options.heat', options.heat, ['isothermal', 'adiabatic'])
  requireList('cylinders', cylinders, 2, 'List every connected cylinder.')
  return equalised(
    cylinders.map((cylinder, k) => cylinderOf(`cylinders[${k}]`, cylinder)),
    gas,
    options.heat,
  )
}

/** The same of cylinders that have been checked. */
export function equalised(
  cylinders: readonly ContentsByAbsolutePressure[],
  gas: GasModel,
  heat: EqualiseOptions['heat'],
): Equalised {
  const process = heat === 'isothermal' ? isothermal(gas) : adiabatic(gas)
  const vessels = cylinders.map((cylinder): Vessel => vesselOf(gas, cylinder))
  const pressures = cylinders.map((cylinder): number => cylinder.pressure)
  const lowest = Math.min(...pressures)
  const highest = Math.max(...pressures)
  const surplus = (p: number): number => {
    const { given, taken } = exchangeAt(process, vessels, p)
    return given.amount - taken.reduce((sum, { amount }) => sum + amount, 0)
  }
  const isLevel = lowest === highest // nothing flows, also where all are evacuated
  const common = isLevel ? highest : rootBetween(surplus, bracketOf(surplus, vessels), 1e-14, 'pressure')
  const ends: readonly End[] = isLevel ? vessels : exchangeAt(process, vessels, common).ends
  return {
    pressure: common as AbsolutePressure,
    cylinders: cylinders.map((cylinder, k) => {
      const { mixture, amount, temperature: reached } = ends[k] as End
      return {
        internalVolume: cylinder.internalVolume,
        mixture,
        pressure: common as AbsolutePressure,
        temperature: reached as Temperature,
        amount: amount as Amount,
        received: (amount - (vessels[k] as Vessel).amount) as Amount,
      }
    }),
    cautions: cautionsOf(cylinders, heat),
  }
}

/**
 * Two pressures between which the common one lies. They close in from the ideal one: an expansion down to the lowest pressure,
 * which never happens, would leave the range of the equation.
 */
function bracketOf(surplus: (p: number) => number, vessels: readonly Vessel[]): readonly [number, number] {
  const pressures = vessels.map((vessel) => vessel.pressure)
  const rooms = vessels.reduce((sum, { room }) => sum + room, 0)
  const ideal = vessels.reduce((sum, vessel) => sum + vessel.pressure * vessel.room, 0) / rooms
  let inner = ideal
  const isAbove = surplus(inner) > 0
  for (;;) {
    const outer = isAbove
      ? Math.min(inner * 1.06, Math.max(...pressures))
      : Math.max(inner / 1.06, Math.min(...pressures))
    if (surplus(outer) > 0 !== isAbove || outer === inner) return [inner, outer]
    inner = outer
  }
}

/** A cylinder while it is joined. */
interface Vessel extends State, GasPortion {
  readonly room: number
}

/** What is in a vessel once the pressures are equal. */
interface End extends GasPortion {
  readonly temperature: number
}

/** Gas in transit, with the energy it carries, J/mol. */
interface Stream extends GasPortion {
  readonly enthalpy: number
}

/** How gas leaves one vessel and enters another. */
interface Process {
  /** What is left at a lower pressure, and the energy that the gas took along, J. */
  left(vessel: Vessel, p: number): End & { readonly energyGiven: number }
  /** What is in the vessel once it has taken from the stream up to a higher pressure. */
  filled(vessel: Vessel, stream: Stream, p: number): End
  enthalpy(vessel: Vessel): number
}

function vesselOf(
  gas: GasModel,
  { internalVolume: room, mixture, pressure: p, temperature: t }: ContentsByAbsolutePressure,
): Vessel {
  return { room, mixture, pressure: p, temperature: t, amount: p > 0 ? room * densityBy(gas, mixture, p, t) : 0 }
}

function isothermal(gas: GasModel): Process {
  return {
    left: ({ room, mixture, temperature: t }, p) => ({
      mixture,
      temperature: t,
      amount: room * densityBy(gas, mixture, p, t),
      energyGiven: 0,
    }),
    filled: (vessel, { mixture }, p) => ({
      ...filledTo(gas, vessel.room, vessel, { mixture, pressure: p as AbsolutePressure }, vessel.temperature),
      temperature: vessel.temperature,
    }),
    enthalpy: () => 0,
  }
}

function adiabatic(gas: GasModel): Process {
  const caloric = caloricOf({ gas })
  return {
    left: (vessel, p) => {
      const { room, mixture } = vessel
      const cooled = caloric.isentropicTemperature(mixture, vessel, p)
      const amount = room * densityBy(gas, mixture, p, cooled)
      const energy = amount * caloric.internalEnergy(mixture, { pressure: p, temperature: cooled })
      return { mixture, temperature: cooled, amount, energyGiven: energyIn(caloric, vessel) - energy }
    },
    filled: (vessel, stream, p) => {
      const energy = energyIn(caloric, vessel)
      const after = (added: number): End => {
        const all = together([vessel, { mixture: stream.mixture, amount: added }])
        const perMole = (energy + added * stream.enthalpy) / all.amount
        return { ...all, temperature: caloric.temperatureOfEnergy(all.mixture, perMole, all.amount / vessel.room) }
      }
      const excess = (added: number): number => {
        if (vessel.amount + added === 0) return -p // evacuated: nothing is in it yet
        const { mixture, amount, temperature: t } = after(added)
        return pressureBy(gas, mixture, amount / vessel.room, t) - p
      }
      const settled = isothermal(gas).filled(vessel, stream, p).amount - vessel.amount
      return after(rootBetween(excess, [0, 1.5 * settled], 1e-14, 'pressure'))
    },
    enthalpy: (vessel) => caloric.enthalpy(vessel.mixture, vessel),
  }
}

function energyIn(caloric: Caloric, vessel: Vessel): number {
  return vessel.amount === 0 ? 0 : vessel.amount * caloric.internalEnergy(vessel.mixture, vessel)
}

/** What passes between the vessels if the common pressure is p, and what is then in each. */
function exchangeAt(
  process: Process,
  vessels: readonly Vessel[],
  p: number,
): { readonly given: GasPortion; readonly taken: readonly GasPortion[]; readonly ends: readonly End[] } {
  const giving = vessels.map((vessel) => (vessel.pressure > p ? process.left(vessel, p) : undefined))
  const stream = streamOf(process, vessels, giving)
  const ends = vessels.map((vessel, k): End => {
    const left = giving[k]
    if (left !== undefined) return left
    return vessel.pressure < p ? process.filled(vessel, stream, p) : vessel
  })
  const taken = vessels.flatMap((vessel, k) => {
    const amount = (ends[k] as End).amount - vessel.amount
    return vessel.pressure < p ? [{ mixture: stream.mixture, amount }] : []
  })
  return { given: stream, taken, ends }
}

/** The gas that all giving vessels send, as one; where none gives yet, that of the fullest, about to. */
function streamOf(
  process: Process,
  vessels: readonly Vessel[],
  giving: readonly (ReturnType<Process['left']> | undefined)[],
): Stream {
  const portions = vessels.map((vessel, k) => ({
    mixture: vessel.mixture,
    amount: vessel.amount - (giving[k]?.amount ?? vessel.amount),
  }))
  const amount = portions.reduce((sum, portion) => sum + portion.amount, 0)
  if (!(amount > 0)) {
    const fullest = vessels.reduce((most, vessel) => (vessel.pressure > most.pressure ? vessel : most))
    return { mixture: fullest.mixture, amount: 0, enthalpy: process.enthalpy(fullest) }
  }
  const energy = giving.reduce((sum, left) => sum + (left?.energyGiven ?? 0), 0)
  return { ...together(portions as [GasPortion, ...GasPortion[]]), enthalpy: energy / amount }
}

/** A cylinder as it stands, checked and with its pressure absolute. */
export function cylinderOf(path: string, contents: GasContents): ContentsByAbsolutePressure {
  const cylinder = byAbsolutePressure(path, contents)
  requireWithin(`${path}.internalVolume`, cylinder.internalVolume, internalVolume)
  return cylinder
}

function cautionsOf(
  cylinders: readonly ContentsByAbsolutePressure[],
  heat: EqualiseOptions['heat'],
): readonly CautionId[] {
  const fullest = cylinders.reduce((most, cylinder) => (cylinder.pressure > most.pressure ? cylinder : most))
  const isMixed = cylinders.some(({ mixture, pressure }) => pressure > 0 && !sameMixture(mixture, fullest.mixture))
  const isRich = cylinders.some(({ mixture }) => mixture.oxygen > richerThanAir)
  return [
    'fill-limit',
    ...(heat === 'adiabatic' ? (['hot-fill'] as const) : []),
    ...(isMixed ? (['analyse-mixture'] as const) : []),
    ...(isRich ? (['oxygen-handling'] as const) : []),
  ]
}
