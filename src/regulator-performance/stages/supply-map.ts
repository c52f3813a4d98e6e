import { faultOfRow, inputError, LitrebarError, requireKeys, requireRows, rowCodes, shown } from '../../errors/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { CautionId } from '../../references/index.ts'
import { requireFields } from '../../units/accepted.ts'
import { type AbsolutePressure, type Accepted, bar, one, requireWithin } from '../../units/index.ts'
import { criticalFlow, realCriticalFlow } from '../flow/critical-flow.ts'
import {
  flowFactor,
  idealRatioOfHeatCapacities,
  massFluxScale,
  requireGasModel,
  requireOrifice,
} from '../flow/orifice.ts'
import { demandedMassFlow, requireDemand, type SupplyDemand } from './minimum-supply-pressure.ts'

/** Everything about a supply and its demand but the two pressures that a map runs over. */
export type MappedSupply = Omit<SupplyDemand, 'ambientPressure'>

/** A first stage ready to be asked many times: its critical flow over supply pressure is in a table. */
export interface CompiledSupply {
  readonly supply: MappedSupply
  readonly heatCapacityRatio: number
  /** Of the ideal gas, to which the real pressure ratios are mapped below choking. */
  readonly ideal: { readonly criticalFlowFactor: number; readonly criticalPressureRatio: number }
  readonly maximumPressure: AbsolutePressure
  /** At even steps of supply pressure from 1 bar to the highest. */
  readonly factors: Float64Array
  readonly ratios: Float64Array
  /** Mass flow of the peak demand over ambient pressure, kg/(s·Pa), at even steps of ambient pressure from 0.2 to 60 bar. */
  readonly demands: Float64Array
}

const steps = 64
const demandSteps = 16
const lowest = 1e5
const ambients = { lowest: 0.2e5, highest: 60e5 } as const
const top: Accepted = { atLeast: 10, atMost: 500, unit: bar, hint: 'Give the top of the map.' }
const ambient: Accepted = { atLeast: 0.2, atMost: 60, unit: bar, hint: 'Give the absolute pressure around the divers.' }

/**
 * A supply ready for maps: the critical flow of the gas over supply pressure, in a table of 64 steps. Between them a parabola is drawn, whose
 * ratio of supply to demand is within 1.3e-6 of the direct one (measured for air, nitrox, oxygen, trimix and helium, −10 to 20 °C, to 500 bar).
 *
 * @param supply - orifice, mixture, temperatures, peak flow, intermediate pressure and margin
 * @param options - highest supply pressure, absolute, Pa, up to 500 bar; `gas: 'ideal'` for the ideal formula
 * @returns the compiled supply
 * @throws LitrebarError `range` for a value out of range; as `gasState`
 * @source gerg-2008, critical flow; litrebar-derivation
 */
export function compileSupply(
  supply: MappedSupply,
  options: { readonly maximumPressure: AbsolutePressure; readonly gas?: 'real' | 'ideal' },
): CompiledSupply {
  requireKeys('options', options, { maximumPressure: true, gas: false })
  const { maximumPressure, gas = 'real' } = options
  requireGasModel({ gas })
  requireSupply('supply', supply)
  const { mixture, supplyTemperature: temperature } = supply
  requireWithin('options.maximumPressure', maximumPressure, top)
  const k = idealRatioOfHeatCapacities(mixture, temperature)
  const ideal = criticalFlow(k)
  const factors = new Float64Array(steps + 1)
  const ratios = new Float64Array(steps + 1)
  for (let step = 0; step <= steps; step++) {
    const pressure = (lowest + ((maximumPressure - lowest) * step) / steps) as AbsolutePressure
    const critical = gas === 'ideal' ? ideal : realCriticalFlow(mixture, { pressure, temperature })
    factors[step] = critical.criticalFlowFactor
    ratios[step] = critical.criticalPressureRatio
  }
  const demands = Float64Array.from({ length: demandSteps + 1 }, (_, step) => {
    const span = ambients.highest - ambients.lowest
    const ambientPressure = (ambients.lowest + (span * step) / demandSteps) as AbsolutePressure
    return demandedMassFlow({ ...supply, ambientPressure }, { gas }) / ambientPressure
  })
  return { supply, heatCapacityRatio: k, ideal, maximumPressure, factors, ratios, demands }
}

/**
 * Supply over demand for columns of supply and ambient pressures: above 1 the stage delivers what is asked for. Below the pressure that it needs to
 * regulate it counts as 0. Bad rows get a code instead of an error.
 *
 * @param out - `ratio` receives supply over demand; `code` a row code: `outOfRange` for a supply outside 1 bar to the highest of
 *   the compiled supply or an ambient pressure outside 0.2 to 60 bar
 * @param columns - absolute pressures, of one length
 * @param compiled - from `compileSupply`
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `input` for a column that is missing or too short, or what `compileSupply` did not make; `range` for rows that are not there
 * @source litrebar-derivation
 */
export function supplyRatioInto(
  out: { readonly ratio: Float64Array; readonly code: Uint8Array },
  columns: { readonly supplyPressurePascal: Float64Array; readonly ambientPressurePascal: Float64Array },
  compiled: CompiledSupply,
  from = 0,
  to?: number,
): void {
  const end = requireRows(
    [columns, ['supplyPressurePascal', 'ambientPressurePascal']],
    [out, ['ratio', 'code']],
    from,
    to,
  )
  requireCompiled(compiled)
  ratiosInto(out, columns, compiled, from, end)
}

/** The same of columns and a supply that have been checked. */
function ratiosInto(
  out: { readonly ratio: Float64Array; readonly code: Uint8Array },
  columns: { readonly supplyPressurePascal: Float64Array; readonly ambientPressurePascal: Float64Array },
  compiled: CompiledSupply,
  from: number,
  end: number,
): void {
  const { supply, heatCapacityRatio: k, ideal, maximumPressure, factors, ratios, demands } = compiled
  const { orifice, mixture, supplyTemperature, intermediatePressure, regulatingMargin } = supply
  const drive = massFluxScale(mixture, 1, supplyTemperature) * orifice.dischargeCoefficient * orifice.area
  const perStep = steps / (maximumPressure - lowest)
  const perDemandStep = demandSteps / (ambients.highest - ambients.lowest)
  for (let row = from; row < end; row++) {
    const pressure = columns.supplyPressurePascal[row] as number
    const around = columns.ambientPressurePascal[row] as number
    if (
      !(pressure >= lowest && pressure <= maximumPressure && around >= ambients.lowest && around <= ambients.highest)
    ) {
      out.ratio[row] = Number.NaN
      out.code[row] = faultOfRow(rowCodes.outOfRange, pressure, around)
      continue
    }
    const outlet = around + intermediatePressure
    out.code[row] = 0
    if (pressure < outlet + regulatingMargin) {
      out.ratio[row] = 0
      continue
    }
    const at = (pressure - lowest) * perStep
    const factor = parabola(factors, at)
    const critical = parabola(ratios, at)
    const flow = drive * pressure * flowFactor(outlet / pressure, factor, critical, ideal, k)
    out.ratio[row] = flow / (around * parabola(demands, (around - ambients.lowest) * perDemandStep))
  }
}

/** Through the three nodes around a place. */
function parabola(nodes: Float64Array, at: number): number {
  const middle = Math.min(Math.max(Math.round(at), 1), nodes.length - 2)
  const x = at - middle
  const a = nodes[middle - 1] as number
  const b = nodes[middle] as number
  const c = nodes[middle + 1] as number
  return b + (x / 2) * (c - a + x * (a - 2 * b + c))
}

/** Supply over demand on a grid, with the line where they meet. */
export interface SupplyMap {
  /** Absolute, one for each column of the grid. */
  readonly ambientPressures: Float64Array
  /** Absolute, one for each row. */
  readonly supplyPressures: Float64Array
  /** Row after row. */
  readonly ratio: Float64Array
  /** For each ambient pressure the lowest supply pressure within the grid's range that still delivers, Pa, whatever its steps; NaN where none does. */
  readonly minimumSupplyPressure: Float64Array
  readonly cautions: readonly CautionId[]
}

/**
 * Map of supply over demand over depth, as ambient pressure, and supply pressure.
 *
 * @param compiled - from `compileSupply`
 * @param grid - absolute pressures, Pa: ambient ones, and supply ones in rising order
 * @returns the grid and its contour at 1, found by the root between the rows
 * @throws LitrebarError `range` for a pressure outside the compiled supply or 0.2 to 60 bar; `input` for supply pressures that do not rise,
 *   or what `compileSupply` did not make
 * @source litrebar-derivation
 */
export function supplyMap(
  compiled: CompiledSupply,
  grid: { readonly ambientPressures: Float64Array; readonly supplyPressures: Float64Array },
): SupplyMap {
  requireCompiled(compiled)
  requireKeys('grid', grid, { ambientPressures: true, supplyPressures: true })
  const { ambientPressures, supplyPressures } = grid
  requireGrid(compiled, grid)
  const across = ambientPressures.length
  const cells = across * supplyPressures.length
  const columns = {
    ambientPressurePascal: Float64Array.from({ length: cells }, (_, cell) => ambientPressures[cell % across] as number),
    supplyPressurePascal: Float64Array.from(
      { length: cells },
      (_, cell) => supplyPressures[Math.floor(cell / across)] as number,
    ),
  }
  const ratio = new Float64Array(cells)
  ratiosInto({ ratio, code: new Uint8Array(cells) }, columns, compiled, 0, cells)
  const minimumSupplyPressure = Float64Array.from(ambientPressures, (_, column) =>
    contour(compiled, grid, ratio, column),
  )
  return { ambientPressures, supplyPressures, ratio, minimumSupplyPressure, cautions: ['regulator', 'reserve'] }
}

function requireGrid(
  { maximumPressure }: CompiledSupply,
  {
    ambientPressures,
    supplyPressures,
  }: { readonly ambientPressures: Float64Array; readonly supplyPressures: Float64Array },
): void {
  requirePressures('grid.ambientPressures', ambientPressures)
  requirePressures('grid.supplyPressures', supplyPressures)
  const supply: Accepted = {
    atLeast: lowest / bar.factor,
    atMost: maximumPressure / bar.factor,
    unit: bar,
    hint: 'Compile the supply up to the top of the map.',
  }
  ambientPressures.forEach((pressure, at) => {
    requireWithin(`grid.ambientPressures[${at}]`, pressure, ambient)
  })
  supplyPressures.forEach((pressure, at) => {
    requireWithin(`grid.supplyPressures[${at}]`, pressure, supply)
    if (at === 0 || pressure > (supplyPressures[at - 1] as number)) return
    throw new LitrebarError({
      code: 'input',
      argument: `grid.supplyPressures[${at}]`,
      value: 'no higher than the one before',
      expected: 'rising supply pressures',
      hint: 'Sort them.',
    })
  })
}

function requirePressures(argument: string, column: unknown): void {
  if (column instanceof Float64Array) return
  throw inputError(argument, shown(column), 'a Float64Array', 'Pass the pressures of the grid, Pa.')
}

function requireSupply(argument: string, supply: MappedSupply): void {
  requireKeys(argument, supply, {
    orifice: true,
    mixture: true,
    supplyTemperature: true,
    breathingGasTemperature: true,
    peakFlow: true,
    intermediatePressure: true,
    regulatingMargin: true,
  })
  requireMixture(`${argument}.mixture`, supply.mixture)
  requireDemand({ ...supply, ambientPressure: 1e5 as AbsolutePressure })
  requireOrifice(supply.orifice)
}

const compiledKeys = {
  supply: true,
  heatCapacityRatio: true,
  ideal: true,
  maximumPressure: true,
  factors: true,
  ratios: true,
  demands: true,
}
const compileIt = 'Make it with compileSupply.'
const ofHeats: Accepted = { above: 1, atMost: 2, unit: one, hint: compileIt }
const ofFlow: Accepted = { above: 0, atMost: 1, unit: one, hint: compileIt }

/** Refuses what compileSupply did not make: tables of another length would be read beside their ends. */
function requireCompiled(compiled: CompiledSupply): void {
  requireKeys('compiled', compiled, compiledKeys)
  requireSupply('compiled.supply', compiled.supply)
  requireWithin('compiled.heatCapacityRatio', compiled.heatCapacityRatio, ofHeats)
  requireWithin('compiled.maximumPressure', compiled.maximumPressure, top)
  requireFields('compiled.ideal', compiled.ideal, { criticalFlowFactor: ofFlow, criticalPressureRatio: ofFlow })
  for (const [name, length] of [
    ['factors', steps + 1],
    ['ratios', steps + 1],
    ['demands', demandSteps + 1],
  ] as const) {
    const { [name]: table } = compiled
    if (table instanceof Float64Array && table.length === length) continue
    throw inputError(`compiled.${name}`, shown(table), `a Float64Array of ${length}`, compileIt)
  }
}

/** Where the ratio passes 1 above an ambient pressure of the grid: the root between the two rows that enclose it. */
function contour(
  compiled: CompiledSupply,
  { ambientPressures, supplyPressures }: Pick<SupplyMap, 'ambientPressures' | 'supplyPressures'>,
  ratio: Float64Array,
  column: number,
): number {
  const across = ambientPressures.length
  const delivers = supplyPressures.findIndex((_, row) => (ratio[row * across + column] as number) >= 1)
  if (delivers <= 0) return delivers === 0 ? (supplyPressures[0] as number) : Number.NaN
  const out = { ratio: new Float64Array(1), code: new Uint8Array(1) }
  const columns = {
    supplyPressurePascal: new Float64Array(1),
    ambientPressurePascal: ambientPressures.slice(column, column + 1),
  }
  let below = supplyPressures[delivers - 1] as number
  let above = supplyPressures[delivers] as number
  while (above - below > 1e-9 * above) {
    const middle = (below + above) / 2
    columns.supplyPressurePascal[0] = middle
    ratiosInto(out, columns, compiled, 0, 1)
    if ((out.ratio[0] as number) >= 1) above = middle
    else below = middle
  }
  return above
}
