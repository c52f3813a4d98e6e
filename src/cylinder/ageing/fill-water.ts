import { requireKeys, requireList, requireText } from '../../errors/index.ts'
import {
  type DewPoint,
  dewPoint,
  dryAir,
  molarDensity,
  pressureAtDensity,
  saturatedWaterFraction,
  type WaterPhase,
} from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type InternalVolume,
  type Mass,
  type MoleFraction,
  one,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import {
  internalVolume as internalVolumeRange,
  pressure as pressureRange,
  temperature as temperatureRange,
} from '../accepted-contents.ts'
import { rustMolarMasses } from './rust.table.ts'

/** Air in a filled cylinder, with the moisture that the filling plant left in it. */
export interface MoistFill {
  readonly internalVolume: InternalVolume
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
  /** Mole fraction of water in what was delivered. */
  readonly waterFraction: MoleFraction
  /** What of the cylinder is cold, and how cold: valve, neck, wall in the water. */
  readonly parts?: readonly { readonly name: string; readonly temperature: Temperature }[]
}

/** Water brought in by one fill, and where it settles. */
export interface FillWater {
  /** All water that the fill brought. */
  readonly water: Mass
  /** Pressure dew or frost point of the filled cylinder. */
  readonly dewPoint: DewPoint
  /** Parts on which water settles, coldest first, with what they would take if all the gas came to their temperature. */
  readonly sites: readonly {
    readonly name: string
    readonly temperature: Temperature
    readonly settled: Mass
    readonly as: WaterPhase
  }[]
  readonly cautions: readonly CautionId[]
}

const fraction: Accepted = {
  above: 0,
  atMost: 0.1,
  unit: one,
  hint: 'Give the mole fraction of water: 50 ppm is 50e-6.',
}

/**
 * Water that a fill leaves in a cylinder, and where it settles. Air holds far less water at cylinder pressure than at the
 * surface, so air that is dry enough to breathe can still be saturated when the cylinder cools: the coldest part takes the water first.
 * For air: helium mixtures hold other amounts.
 *
 * @param fill - internal volume, m³; absolute pressure, Pa, up to 300 bar; temperature, K; mole fraction of water, above 0;
 *   the parts that are colder, K, each 193 to 373 K
 * @returns mass of water, kg; pressure dew point; the parts on which it settles, coldest first
 * @throws LitrebarError `range` or `outside-validity`, naming the field
 * @source litrebar-derivation, balance of water at constant amount; moist air from gas-law
 * @example
 * const fill = fillWater({
 *   internalVolume: internalVolumeOf(12, litre),
 *   pressure: absolute(201, bar),
 *   temperature: temperatureOf(20, celsius),
 *   waterFraction: fractionOf(67, partPerMillion),
 *   parts: [{ name: 'valve', temperature: temperatureOf(-5, celsius) }, { name: 'wall', temperature: temperatureOf(4, celsius) }],
 * })
 * const shown = `${inUnit(fill.water, milligram).toFixed(0)} mg, ${fill.sites.map(({ name }) => name).join(', ')}` // => '116 mg, valve'
 */
export function fillWater(fill: MoistFill): FillWater {
  requireKeys('fill', fill, {
    internalVolume: true,
    pressure: true,
    temperature: true,
    waterFraction: true,
    parts: false,
  })
  const { internalVolume, pressure, temperature, waterFraction, parts = [] } = fill
  requireParts(parts)
  requireWithin('internalVolume', internalVolume, internalVolumeRange)
  requireWithin('pressure', pressure, pressureRange)
  requireWithin('temperature', temperature, temperatureRange)
  requireWithin('waterFraction', waterFraction, fraction)
  const density = molarDensity(dryAir, pressure, temperature)
  const water = internalVolume * density * waterFraction * rustMolarMasses.water
  const sites = parts
    .map(({ name, temperature: cold }, index) => {
      requireWithin(`parts[${String(index)}].temperature`, cold, temperatureRange)
      // The amount stays, so the pressure at the cold temperature is that of the same density.
      const there = pressureAtDensity(dryAir, { molarDensity: density, temperature: cold })
      const held = saturatedWaterFraction({ temperature: cold, pressure: there })
      const settled =
        held >= waterFraction ? 0 : (waterFraction - ((1 - waterFraction) * held) / (1 - held)) / waterFraction
      const { over } = dewPoint({ waterFraction: held, pressure: there })
      return { name, temperature: cold, settled: (water * settled) as Mass, as: over }
    })
    .filter(({ settled }) => settled > 0)
    .sort((a, b) => a.temperature - b.temperature)
  return {
    water: water as Mass,
    dewPoint: dewPoint({ waterFraction, pressure }),
    sites,
    cautions: sites.length > 0 ? ['rust-oxygen', 'regulator-cold'] : ['rust-oxygen'],
  }
}

function requireParts(parts: NonNullable<MoistFill['parts']>): void {
  requireList('parts', parts, 0, 'List the colder parts, each with its name and temperature.')
  for (const [k, part] of parts.entries()) {
    requireKeys(`parts[${String(k)}]`, part, { name: true, temperature: true })
    requireText(`parts[${String(k)}].name`, part.name, 'Name the part, such as the valve.')
  }
}
