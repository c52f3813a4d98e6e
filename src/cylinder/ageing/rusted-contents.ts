import { requireKeys, requireWord } from '../../errors/index.ts'
import { type GasModelOption, type Mixture, mixture as mixtureOf } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  type InternalVolume,
  kilogram,
  type Mass,
  type MoleFraction,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import {
  fraction,
  internalVolume as internalVolumeRange,
  pressure as pressureRange,
  temperature as temperatureRange,
} from '../accepted-contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'
import { type RustProductName, rustMolarMasses, rustProducts } from './rust.table.ts'

/** A sealed steel cylinder with water inside. */
export interface WetCylinder {
  readonly mixture: Mixture
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
  readonly internalVolume: InternalVolume
  /** Liquid water inside. */
  readonly water: Mass
  readonly product: RustProductName
}

/** What is left when rusting has run its course. */
export interface RustedContents {
  /** What the reaction ran out of. Iron never runs out. */
  readonly boundedBy: 'water' | 'oxygen'
  readonly oxygenConsumed: Amount
  readonly ironConsumed: Mass
  /** Rust formed: the iron with the oxygen and water it bound. */
  readonly rustFormed: Mass
  /** Mole fraction of oxygen in the gas that is left. */
  readonly oxygenFraction: MoleFraction
  readonly mixture: Mixture
  /** Absolute pressure at the same temperature. */
  readonly pressure: AbsolutePressure
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const water: Accepted = { atLeast: 0, atMost: 100, unit: kilogram, hint: 'Give the mass of liquid water inside.' }
const cautions: readonly CautionId[] = ['rust-oxygen', 'analyse-mixture', 'inspection']

/**
 * Oxygen that rust can take from a sealed wet steel cylinder, taken to its end: until water or oxygen is used up.
 * A bound, not a forecast: how far it goes in a year depends on heat, salt and surface, and weeks can be enough.
 * Nitrogen and the rest stay, so the pressure falls only by the oxygen, and a gauge shows little.
 *
 * @param cylinder - mixture at its absolute pressure, Pa, up to 500 bar, and temperature, K; internal volume, m³;
 *   liquid water, kg; what the rust is taken to be
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns what is left: oxygen fraction, mixture, absolute pressure, Pa; what was used up
 * @throws LitrebarError `range` or `input`, naming the field; `mixture` where nothing but oxygen was inside and all of it is gone
 * @source litrebar-derivation, balance of atoms; density from gas-law
 * @example
 * // A forgotten 12 L cylinder: 20 bar of air and a gram of water.
 * const left = rustedContents({
 *   mixture: dryAir,
 *   pressure: absolute(21, bar),
 *   temperature: temperatureOf(15, celsius),
 *   internalVolume: internalVolumeOf(12, litre),
 *   water: measure(1, gram),
 *   product: 'goethite',
 * })
 * const shown = `${left.boundedBy}, ${inUnit(left.oxygenFraction, percent).toFixed(1)} % left` // => 'water, 20.3 % left'
 */
export function rustedContents(cylinder: WetCylinder, options: GasModelOption = {}): RustedContents {
  requireKeys('cylinder', cylinder, {
    mixture: true,
    pressure: true,
    temperature: true,
    internalVolume: true,
    water: true,
    product: true,
  })
  requireWord('product', cylinder.product, Object.keys(rustProducts) as RustProductName[])
  const gas = gasModelOf(options)
  const { mixture, pressure, temperature, internalVolume } = cylinder
  requireWithin('pressure', pressure, pressureRange)
  requireWithin('temperature', temperature, temperatureRange)
  requireWithin('internalVolume', internalVolume, internalVolumeRange)
  requireWithin('water', cylinder.water, water)
  const product = rustProducts[cylinder.product]
  const amount = internalVolume * densityBy(gas, mixture, pressure, temperature)
  const oxygen = amount * mixture.oxygen
  const waterAmount = cylinder.water / rustMolarMasses.water
  const allowedByWater =
    product.waterPerOxygen > 0 ? waterAmount / product.waterPerOxygen : waterAmount > 0 ? Number.POSITIVE_INFINITY : 0
  const consumed = Math.min(oxygen, allowedByWater)
  const left = leftOf(mixture, amount, consumed)
  const density = (amount - consumed) / internalVolume
  const ironConsumed = consumed * product.ironPerOxygen * rustMolarMasses.iron
  return {
    boundedBy: allowedByWater < oxygen ? 'water' : 'oxygen',
    oxygenConsumed: consumed as Amount,
    ironConsumed: ironConsumed as Mass,
    rustFormed: (ironConsumed +
      consumed * (rustMolarMasses.oxygen + product.waterPerOxygen * rustMolarMasses.water)) as Mass,
    oxygenFraction: left.oxygen,
    mixture: left,
    pressure: pressureBy(gas, left, density, temperature) as AbsolutePressure,
    cautions,
    sources: [product.source, rustMolarMasses.source],
  }
}

function leftOf(mixture: Mixture, amount: number, consumed: number): Mixture {
  const fractions = { ...mixture, oxygen: Math.max(0, mixture.oxygen - consumed / amount) as MoleFraction }
  return mixtureOf(fractions, { normalise: true })
}

/** What one kind of rust says about the oxygen it took. */
export interface RustFound {
  readonly rust: Mass
  readonly product: RustProductName
}

/**
 * Oxygen that a mass of rust has bound: the other way round, from what comes out of a cylinder at the inspection.
 *
 * @param found - mass of dry rust, kg, above 0 and at most 100 kg; what it is taken to be
 * @returns amount of oxygen, mol
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation, balance of atoms
 * @example
 * oxygenInRust({ rust: measure(100, gram), product: 'goethite' }).toFixed(2) // => '0.84'
 */
export function oxygenInRust(found: RustFound): Amount {
  requireKeys('found', found, { rust: true, product: true })
  const { rust, product: name } = found
  requireWord('product', name, Object.keys(rustProducts) as RustProductName[])
  requireWithin('rust', rust, { above: 0, atMost: 100, unit: kilogram, hint: 'Give the mass of dry rust.' })
  const product = rustProducts[name]
  const perOxygen =
    product.ironPerOxygen * rustMolarMasses.iron +
    rustMolarMasses.oxygen +
    product.waterPerOxygen * rustMolarMasses.water
  return (rust / perOxygen) as Amount
}

/** Absolute pressure of oxygen that a diver would breathe from it. */
export interface BreathedOxygen {
  readonly oxygenFraction: MoleFraction
  readonly ambientPressure: AbsolutePressure
}

/**
 * Oxygen partial pressure of what is left, at the pressure where it would be breathed. At the surface it is at its lowest:
 * gas that seems breathable at depth can be hypoxic on the way up.
 *
 * @param breathed - oxygen fraction; ambient pressure, absolute, Pa, up to 100 bar
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation, Dalton's law
 */
export function breathedOxygenPressure(breathed: BreathedOxygen): AbsolutePressure {
  requireKeys('breathed', breathed, { oxygenFraction: true, ambientPressure: true })
  const { oxygenFraction, ambientPressure } = breathed
  requireWithin('oxygenFraction', oxygenFraction, fraction)
  requireWithin('ambientPressure', ambientPressure, { above: 0, atMost: 100, unit: bar, hint: 'Give it absolute.' })
  return (oxygenFraction * ambientPressure) as AbsolutePressure
}
