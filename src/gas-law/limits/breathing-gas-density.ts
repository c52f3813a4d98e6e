import { requireKeys, requireText, requireWord } from '../../errors/index.ts'
import { verdictFrom } from '../../references/assessment.ts'
import type { Assessment, Reason } from '../../references/index.ts'
import { isUnitOf, notOfQuantity } from '../../units/check-unit.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Density,
  gramPerLitre,
  type MolarDensity,
  one,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import { type Mixture, molarMass } from '../mixture/mixture.ts'
import { type GasModel, modelOf, molarDensityBy } from '../state/gas-model.ts'
import { pressureAtDensity } from '../state/pressure-at-density.ts'
import type { GasDensityLimit } from './breathing-gas-density.table.ts'

/** Gas on its way to a diver. */
export interface BreathedGas {
  readonly mixture: Mixture
  /** Absolute pressure around the diver. */
  readonly pressure: AbsolutePressure
  /** Temperature of the gas where its density counts. Named, since 0 °C or 37 °C move the density by 13 %. */
  readonly temperature: Temperature
}

const pressureRange: Accepted = {
  above: 0,
  atMost: 100,
  unit: bar,
  hint: 'Give the absolute pressure around the diver, from pressureAtDepth().',
}
const temperatureRange: Accepted = {
  atLeast: -20,
  atMost: 45,
  unit: celsius,
  hint: 'Name the temperature of the gas: that of the water, or 37 °C in the lung.',
}
const densityRange: Accepted = {
  above: 0,
  atMost: 20,
  unit: gramPerLitre,
  hint: 'Give the density as mass per volume.',
}

/**
 * Density of breathed gas held against a published limit. The temperature of the gas is asked for: air at 40 m has 6.4 g/L at 0 °C,
 * 5.9 at 20 °C, and no source says which it means.
 *
 * @param gas - mixture; pressure around the diver, absolute, Pa, above 0 and at most 100 bar; temperature of the gas, K, -20 to 45 °C
 * @param options - the limit, a row of `gasDensityLimits` or your own; `gas: 'ideal'` to leave out compressibility
 * @returns density and its limit, kg/m³, the room left, and what the verdict rests on; below a limit that was only remembered it is
 *   `undetermined`
 * @throws LitrebarError `range`, naming the field, if one is not finite or out of range; as `molarDensity`
 * @source gerg-2008, density; the limit names its own
 * @example
 * const gas = { mixture: dryAir, pressure: absolute(5.01, bar), temperature: temperatureOf(0, celsius) }
 * const { value, verdict } = assessGasDensity(gas, { limit: gasDensityLimits.hard })
 * const shown = `${inUnit(value, gramPerLitre).toFixed(2)} g/L, ${verdict}` // => '6.41 g/L, beyond'
 */
export function assessGasDensity(
  gas: BreathedGas,
  options: { readonly limit: GasDensityLimit; readonly gas?: GasModel },
): Assessment<Density> {
  requireKeys('gas', gas, { mixture: true, pressure: true, temperature: true })
  requireKeys('options', options, { limit: true, gas: false })
  const { limit } = options
  requireLimit(limit)
  const value = breathedDensity(gas, modelOf(options))
  const most = (limit.atMost.value * limit.atMost.unit.factor) as Density
  const within = value <= most
  const shown = `${(value / gramPerLitre.factor).toFixed(2)} g/L at ${(gas.temperature - 273.15).toFixed(1)} °C`
  const compared: Reason = {
    code: within ? 'density-within' : 'density-beyond',
    text: `${shown}, against ${String(limit.atMost.value)} ${limit.atMost.unit.symbol}: ${limit.name}.`,
    source: limit.source,
  }
  const remembered: Reason = {
    code: 'limit-not-read-at-source',
    text: 'The limit is given from memory.',
    source: limit.source,
  }
  const reported: Reason = { ...remembered, text: 'The limit was read in a report of the source.' }
  return {
    value,
    limit: most,
    margin: most - value,
    ...verdictFrom({
      against: within ? [] : [compared],
      doubts: limit.evidence === 'memory' ? [remembered] : [],
      notes: [
        ...(within ? [compared] : []),
        { code: 'limit-condition', text: `Of the limit: ${limit.condition}.`, source: limit.source },
        {
          code: 'temperature-not-in-source',
          text: 'The source does not name the temperature of the gas; the verdict holds for the one given.',
        },
        ...(limit.evidence === 'secondary' ? [reported] : []),
      ],
    }),
    cautions: ['gas-density'],
    sources: [limit.source, 'gerg-2008'],
  }
}

/**
 * Pressure around the diver at which a mixture reaches a density: put it through `depthAtPressure` for the depth.
 *
 * @param gas - mixture; density, kg/m³, above 0 and at most 20 g/L; temperature of the gas, K, -20 to 45 °C
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range`, naming the field, if one is not finite or out of range; as `pressureAtDensity`
 * @source gerg-2008
 * @example
 * const gas = { mixture: trimix({ oxygen: 0.18, helium: 0.45 }), density: measure(5.2, gramPerLitre), temperature: temperatureOf(10, celsius) }
 * inUnit(pressureAtGasDensity(gas), bar).toFixed(2) // => '6.85'
 */
export function pressureAtGasDensity(
  gas: { readonly mixture: Mixture; readonly density: Density; readonly temperature: Temperature },
  options: { readonly gas?: GasModel } = {},
): AbsolutePressure {
  requireKeys('gas', gas, { mixture: true, density: true, temperature: true })
  requireKeys('options', options, { gas: false })
  const model = modelOf(options)
  const { mixture, density, temperature } = gas
  requireWithin('density', density, densityRange)
  requireWithin('temperature', temperature, temperatureRange)
  const molarDensity = (density / molarMass(mixture)) as MolarDensity
  if (model === 'ideal') return (molarDensity * gerg2008GasConstant * temperature) as AbsolutePressure
  return pressureAtDensity(mixture, { molarDensity, temperature })
}

function requireLimit(limit: GasDensityLimit): void {
  requireKeys('options.limit', limit, {
    name: true,
    atMost: true,
    condition: true,
    source: true,
    place: true,
    evidence: true,
  })
  const { atMost } = limit
  requireKeys('options.limit.atMost', atMost, { value: true, unit: true })
  requireText('options.limit.name', limit.name)
  requireText('options.limit.condition', limit.condition)
  requireText('options.limit.source', limit.source)
  requireWord('options.limit.evidence', limit.evidence, ['primary', 'secondary', 'memory'])
  if (!isUnitOf(atMost.unit, 'density')) throw notOfQuantity('options.limit.atMost.unit', atMost.unit, 'density')
  requireWithin('options.limit.atMost.value', atMost.value, {
    above: 0,
    atMost: 1e6,
    unit: one,
    hint: 'State the printed number.',
  })
}

function breathedDensity({ mixture, pressure, temperature }: BreathedGas, model: GasModel): Density {
  requireWithin('pressure', pressure, pressureRange)
  requireWithin('temperature', temperature, temperatureRange)
  return (molarDensityBy(model, mixture, pressure, temperature) * molarMass(mixture)) as Density
}
