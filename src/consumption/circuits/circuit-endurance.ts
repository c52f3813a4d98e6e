import { requireKeys } from '../../errors/index.ts'
import { amountOfFreeGas, type Mixture, stpd } from '../../gas-law/index.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Duration,
  type FreeGas,
  type FreeGasFlow,
  litre,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import { amountAbove, type BreathedCylinder, requireFilledCylinder, requireResidual } from '../gas/residual.ts'
import { densityOf, type GasOptions, requireGasOptions } from '../gas/vessel-gas.ts'
import { carbonDioxideOutput } from '../rates/oxygen-uptake.ts'
import { breathingRate } from '../use/breathed-dive.ts'

/** Where and how hard one works, for all circuits alike. */
export interface CircuitConditions {
  /** Around the diver, absolute. */
  readonly ambientPressure: AbsolutePressure
  readonly breathingGasTemperature: Temperature
  readonly uptake: FreeGasFlow<'STPD'>
  /** Carbon dioxide given off for oxygen taken up. */
  readonly respiratoryQuotient: number
}

/** The three circuits, each with what it carries. Those left out are not compared. */
export interface Circuits {
  readonly open?: { readonly cylinder: BreathedCylinder; readonly respiratoryMinuteVolume: VolumeFlow }
  readonly semiClosed?: {
    readonly cylinder: BreathedCylinder
    readonly flow: FreeGasFlow<'STPD'>
    /** Carbon dioxide that the absorbent takes up, as its maker states it for the conditions of the dive. */
    readonly absorbentCapacity: FreeGas<'STPD'>
  }
  readonly closed?: {
    /** Oxygen. */
    readonly cylinder: BreathedCylinder
    readonly absorbentCapacity: FreeGas<'STPD'>
  }
}

/** How long one circuit lasts. */
export interface CircuitEndurance {
  readonly circuit: keyof Circuits
  /** Free gas taken from the cylinder at that depth: grows with it in an open circuit, and in no other. */
  readonly gasTaken: FreeGasFlow<'STPD'>
  readonly gasLasts: Duration
  /** Absent without an absorbent. */
  readonly absorbentLasts?: Duration
  /** The shorter of the two. */
  readonly duration: Duration
  readonly limitedBy: 'gas' | 'absorbent'
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const ambient: Accepted = { atLeast: 0.2, atMost: 100, unit: bar, hint: 'Give the pressure around the diver.' }
const breathed: Accepted = { atLeast: -50, atMost: 100, unit: celsius, hint: 'Check the temperature scale.' }
const capacityRange: Accepted = { above: 0, atMost: 5000, unit: litre, hint: 'Give litres of carbon dioxide at STPD.' }

/**
 * Endurance of open, semi-closed and closed circuit side by side, at one depth and one level of work: gas taken from the cylinder,
 * how long it lasts above its residual pressure, and how long the absorbent does. Flushing, leaks and the gas for descents come on top,
 * and no reserve for leaving the loop is counted.
 *
 * @param circuits - cylinders with residual pressure; rate of the open circuit, m³/s; flow of the semi-closed one, STPD, m³/s; capacity of the
 *   absorbents, m³ of carbon dioxide at STPD
 * @param conditions - ambient pressure, absolute, Pa, 0.2 to 100 bar; temperature of the breathed gas, K; uptake, STPD, m³/s, above 0 and
 *   at most 10 L/min; respiratory quotient, 0.5 to 1.5
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns a row for each circuit, unrounded; show times rounded down
 * @throws LitrebarError `range` or `input`, naming the field
 * @source litrebar-derivation; gerg-2008, density
 * @example
 * const cylinder = {
 *   contents: {
 *     internalVolume: internalVolumeOf(3, litre),
 *     pressure: absolute(200, bar),
 *     temperature: temperatureOf(10, celsius),
 *     mixture: pureGas('oxygen'),
 *   },
 *   residualPressure: absolute(20, bar),
 * }
 * const rows = circuitEndurance(
 *   { closed: { cylinder, absorbentCapacity: freeGasOf(250, litre, stpd) } },
 *   {
 *     ambientPressure: absolute(4, bar),
 *     breathingGasTemperature: temperatureOf(10, celsius),
 *     uptake: freeGasFlowOf(1.5, litrePerMinute, stpd),
 *     respiratoryQuotient: 0.9,
 *   },
 * )
 * rows.map(({ circuit, duration, limitedBy }) => `${circuit}: ${inUnit(duration, minute).toFixed(0)} min, ${limitedBy}`)
 * // => ['closed: 185 min, absorbent']
 */
export function circuitEndurance(
  circuits: Circuits,
  conditions: CircuitConditions,
  options: GasOptions = {},
): readonly CircuitEndurance[] {
  requireKeys('circuits', circuits, { open: false, semiClosed: false, closed: false })
  requireKeys('conditions', conditions, {
    ambientPressure: true,
    breathingGasTemperature: true,
    uptake: true,
    respiratoryQuotient: true,
  })
  requireGasOptions(options)
  const { ambientPressure, breathingGasTemperature, uptake, respiratoryQuotient } = conditions
  requireWithin('conditions.ambientPressure', ambientPressure, ambient)
  requireWithin('conditions.breathingGasTemperature', breathingGasTemperature, breathed)
  const output = carbonDioxideOutput(uptake, respiratoryQuotient)
  const { open, semiClosed, closed } = circuits
  const rows: CircuitEndurance[] = []
  if (open !== undefined) {
    requireKeys('circuits.open', open, { cylinder: true, respiratoryMinuteVolume: true })
    requireWithin('circuits.open.respiratoryMinuteVolume', open.respiratoryMinuteVolume, breathingRate)
    requireFilledCylinder('circuits.open.cylinder', open.cylinder)
    const { mixture } = open.cylinder.contents
    const density = densityOf(options, mixture, ambientPressure, breathingGasTemperature)
    rows.push(row('open', open.cylinder, (open.respiratoryMinuteVolume * density) / perFreeGas(mixture, options)))
  }
  if (semiClosed !== undefined) {
    requireKeys('circuits.semiClosed', semiClosed, { cylinder: true, flow: true, absorbentCapacity: true })
    requireWithin('circuits.semiClosed.flow', semiClosed.flow, breathingRate)
    rows.push(row('semiClosed', semiClosed.cylinder, semiClosed.flow, semiClosed.absorbentCapacity))
  }
  if (closed !== undefined) {
    requireKeys('circuits.closed', closed, { cylinder: true, absorbentCapacity: true })
    rows.push(row('closed', closed.cylinder, uptake, closed.absorbentCapacity))
  }
  return rows

  function row(
    circuit: keyof Circuits,
    cylinder: BreathedCylinder,
    taken: number,
    capacity?: FreeGas<'STPD'>,
  ): CircuitEndurance {
    const path = `circuits.${circuit}.cylinder`
    requireFilledCylinder(path, cylinder)
    const residual = requireResidual(`${path}.residualPressure`, cylinder.residualPressure, ambientPressure)
    const amount = amountAbove(`${path}.residualPressure`, cylinder.contents, residual, options)
    const gasLasts = amount / (taken * perFreeGas(cylinder.contents.mixture, options))
    if (capacity !== undefined) requireWithin(`circuits.${circuit}.absorbentCapacity`, capacity, capacityRange)
    const absorbentLasts = capacity === undefined ? Infinity : capacity / output
    return {
      circuit,
      gasTaken: taken as FreeGasFlow<'STPD'>,
      gasLasts: gasLasts as Duration,
      ...(capacity === undefined ? {} : { absorbentLasts: absorbentLasts as Duration }),
      duration: Math.min(gasLasts, absorbentLasts) as Duration,
      limitedBy: gasLasts <= absorbentLasts ? 'gas' : 'absorbent',
      cautions: circuit === 'open' ? ['reserve', 'always'] : ['breathing-loop', 'oxygen-limits', 'reserve', 'always'],
      sources: ['litrebar-derivation', 'gerg-2008'],
    }
  }
}

/** Amount in a cubic metre of free gas at STPD, mol. */
function perFreeGas(mixture: Mixture, { gas = 'real' }: GasOptions): number {
  return amountOfFreeGas(1 as FreeGas<'STPD'>, { reference: stpd, mixture, gas })
}
