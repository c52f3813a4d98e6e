import { LitrebarError, requireKeys, requireList } from '../../errors/index.ts'
import { type GasModelOption, type Mixture, massOfGas } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Density,
  type DisplacedVolume,
  type InternalVolume,
  inUnit,
  isWithin,
  kilogram,
  kilogramPerCubicMetre,
  litre,
  type Mass,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { internalVolume, pressure, pressureOrVacuum, requirePressure, temperature } from '../accepted-contents.ts'
import { gasModelOf } from '../cylinder-gas.ts'

/** What a cylinder displaces: by the density of its metal, or measured as a whole. */
export type CylinderBody =
  | {
      /** Of the bare cylinder. */
      readonly mass: Mass
      /** Of its metal: about 7850 kg/m³ for steel, 2700 for aluminium. */
      readonly density: Density
      readonly displacedVolume?: never
    }
  | {
      /** Of the bare cylinder. */
      readonly mass: Mass
      /** Of its outside, as measured in water with the valve shut. */
      readonly displacedVolume: DisplacedVolume
      readonly density?: never
    }

/** A cylinder in water. */
export interface SubmergedCylinder {
  readonly internalVolume: InternalVolume
  readonly body: CylinderBody
  /** Valve, boot, handle: mass, and mean density or volume. */
  readonly attached?: readonly CylinderBody[]
  /** Of the water around it. */
  readonly waterDensity: Density
  /** What is in it. Pressure absolute; 0 for an evacuated one. */
  readonly mixture: Mixture
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
}

const waterDensity: Accepted = {
  atLeast: 900,
  atMost: 1300,
  unit: kilogramPerCubicMetre,
  hint: 'About 1000 kg/m³ for fresh water and 1025 for the sea.',
}
const bodyMass: Accepted = { above: 0, atMost: 2000, unit: kilogram, hint: 'Give the mass as weighed in air.' }
const bodyDensity: Accepted = {
  atLeast: 100,
  atMost: 20_000,
  unit: kilogramPerCubicMetre,
  hint: 'About 7850 kg/m³ for steel, 2700 for aluminium, 8500 for brass.',
}
const displaced: Accepted = { above: 0, atMost: 20_000, unit: litre, hint: 'Give the volume of the outside.' }
// Wider than any metal or composite: what is refused is a mass and volumes that do not belong together.
const shellDensity: Accepted = { ...bodyDensity, atLeast: 1200, atMost: 9000 }

/**
 * Net buoyancy of a cylinder, as a mass: water displaced less everything weighed. Positive floats, negative sinks;
 * times gravity it is a force. The shell is treated as rigid: it expands by 0.4 % when filled, which adds some 50 g of lift.
 *
 * @param cylinder - internal volume, m³; mass, kg, with density of the metal, kg/m³, or displaced volume of the whole, m³; valve and
 *   other parts likewise; density of the water, kg/m³, 900 to 1300; mixture, pressure, absolute, Pa, 0 to 500 bar, temperature, K
 * @param options - `gas: 'ideal'` to show the difference
 * @returns net buoyancy, kg, negative when it sinks
 * @throws LitrebarError `range`, naming the field; `input` for a displaced volume that mass and internal volume contradict
 * @source litrebar-derivation, law of Archimedes
 * @example
 * const cylinder = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   body: { mass: measure(14.5, kilogram), density: measure(7850, kilogramPerCubicMetre) },
 *   attached: [{ mass: measure(0.8, kilogram), density: measure(8500, kilogramPerCubicMetre) }],
 *   waterDensity: measure(1025, kilogramPerCubicMetre),
 *   mixture: dryAir,
 *   temperature: temperatureOf(15, celsius),
 * }
 * const buoyancyAt = (bars: number) => cylinderBuoyancy({ ...cylinder, pressure: absolute(bars, bar) })
 * const shown = [232, 50].map((bars) => inUnit(buoyancyAt(bars), kilogram).toFixed(1)) // => ['-4.2', '-1.7']
 */
export function cylinderBuoyancy(cylinder: SubmergedCylinder, options: GasModelOption = {}): Mass {
  requireKeys('cylinder', cylinder, {
    internalVolume: true,
    body: true,
    attached: false,
    waterDensity: true,
    mixture: true,
    pressure: true,
    temperature: true,
  })
  gasModelOf(options)
  const { internalVolume: room, body, attached = [], mixture } = cylinder
  requireMixture('mixture', mixture)
  requireList('attached', attached, 0, 'List valve, boot and handle, each with mass and density or volume.')
  requireWithin('internalVolume', room, internalVolume)
  requireWithin('waterDensity', cylinder.waterDensity, waterDensity)
  requireWithin('pressure', cylinder.pressure, pressureOrVacuum)
  requireWithin('temperature', cylinder.temperature, temperature)
  let outside = outsideOf(body, room)
  let mass: number = body.mass
  for (const [k, part] of attached.entries()) {
    outside += volumeOf(`attached[${k}]`, part)
    mass += part.mass
  }
  const gas =
    cylinder.pressure > 0
      ? massOfGas(
          { internalVolume: room, mixture, pressure: cylinder.pressure, temperature: cylinder.temperature },
          options,
        )
      : 0
  return (cylinder.waterDensity * outside - mass - gas) as Mass
}

/** The volume of the whole cylinder, metal and inside. */
function outsideOf(body: CylinderBody, room: InternalVolume): number {
  const own = volumeOf('body', body)
  if (body.displacedVolume === undefined) return own + room
  const shell = body.mass / (own - room)
  if (own > room && isWithin(shell, shellDensity)) return own
  throw new LitrebarError({
    code: 'input',
    argument: 'body.displacedVolume',
    value: `${Number(inUnit(body.displacedVolume, litre).toPrecision(6))} L`,
    expected: `the internal volume of ${Number(inUnit(room, litre).toPrecision(6))} L and ${Number(inUnit(body.mass, kilogram).toPrecision(6))} kg of metal`,
    hint: 'Mass, displaced and internal volume contradict each other: weigh and measure again.',
  })
}

function volumeOf(argument: string, body: CylinderBody): number {
  requireKeys(argument, body, { mass: true, density: false, displacedVolume: false })
  requireWithin(`${argument}.mass`, body.mass, bodyMass)
  if (body.displacedVolume !== undefined) {
    requireWithin(`${argument}.displacedVolume`, body.displacedVolume, displaced)
    return body.displacedVolume
  }
  requireWithin(`${argument}.density`, body.density, bodyDensity)
  return body.mass / body.density
}

/** Gas taken from a cylinder. */
export interface GasTaken {
  readonly internalVolume: InternalVolume
  readonly mixture: Mixture
  readonly temperature: Temperature
  readonly from: AbsolutePressure
  readonly to: AbsolutePressure
}

/**
 * Mass of the gas taken from a cylinder: by how much it grows lighter, and so does its diver.
 *
 * @param taken - internal volume, m³; mixture; temperature, K; pressures from and to, absolute, Pa, up to 500 bar
 * @param options - `gas: 'ideal'` to show the difference
 * @returns mass, kg
 * @throws LitrebarError `range`, naming the field, also for a pressure that rises
 * @source litrebar-derivation; density from gas-law
 * @example
 * const taken = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   mixture: dryAir,
 *   temperature: temperatureOf(15, celsius),
 *   from: absolute(200, bar),
 *   to: absolute(50, bar),
 * }
 * inUnit(massOfGasTaken(taken), kilogram).toFixed(2) // => '2.10'
 */
export function massOfGasTaken(taken: GasTaken, options: GasModelOption = {}): Mass {
  requireKeys('taken', taken, { internalVolume: true, mixture: true, temperature: true, from: true, to: true })
  gasModelOf(options)
  const { from, to, ...contents } = taken
  requireWithin('from', from, pressure)
  requirePressure('to', to, 'atMost', from)
  return (massOfGas({ ...contents, pressure: from }, options) -
    massOfGas({ ...contents, pressure: to }, options)) as Mass
}
