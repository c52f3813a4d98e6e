import { faultOfRow, requireKeys, requireRows, rowCodes } from '../../errors/index.ts'
import type { PlainNumber } from '../../units/quantity.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import { modelOf } from '../state/gas-model.ts'
import { type ColumnGas, molarDensityInto, requireColumnGas } from '../state/state-columns.ts'
import { amountPerFreeGas } from './free-gas.ts'
import { acceptedContents, type GasModelOption } from './gas-contents.ts'
import type { ReferenceCondition } from './reference-condition.ts'

/** Contents by row, pressures absolute. */
export interface ContentsColumns {
  readonly internalVolumeCubicMetre: Float64Array
  readonly pressurePascal: Float64Array
  readonly temperatureKelvin: Float64Array
}

/**
 * Free gas in a column of vessels, by the full equation, from a compiled mixture, or ideal. A bad row is NaN and
 * gets a code instead of an error.
 *
 * @param out - `freeGasCubicMetre` receives the volumes; `code` a row code: `good`, `missing`, `outOfRange` outside
 *   the ranges of `freeGas`, `outsideValidity` outside the box of the compiled mixture, `condensing` for a state that is not a gas
 * @param columns - internal volumes, absolute pressures and temperatures, of one length
 * @param options - the mixture, or one from `compileMixture`; reference condition; `gas: 'ideal'` to leave out compressibility
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `mixture` for fractions that are none; `input` for no gas or two; as `requireRows`; as `molarDensity` for the reference condition
 * @source common-practice, definition; gerg-2008, density
 * @example
 * const columns = {
 *   internalVolumeCubicMetre: Float64Array.of(0.012, 0.012),
 *   pressurePascal: Float64Array.of(200e5, -1),
 *   temperatureKelvin: Float64Array.of(288.15, 288.15),
 * }
 * const out = { freeGasCubicMetre: new Float64Array(2), code: new Uint8Array(2) }
 * freeGasInto(out, columns, { mixture: dryAir, reference: isoStandard })
 * out.freeGasCubicMetre[0]?.toFixed(3) // => '2.317'
 * out.code.join(' ') // => '0 2'
 */
export function freeGasInto(
  out: { readonly freeGasCubicMetre: Float64Array; readonly code: Uint8Array },
  columns: ContentsColumns,
  options: ColumnGas & GasModelOption & { readonly reference: ReferenceCondition },
  from: PlainNumber = 0,
  to?: PlainNumber,
): void {
  requireKeys('options', options, { mixture: false, compiled: false, gas: false, reference: true })
  requireColumnGas(options)
  const read = ['internalVolumeCubicMetre', 'pressurePascal', 'temperatureKelvin']
  const end = requireRows([columns, read], [out, ['freeGasCubicMetre', 'code']], from, to)
  const { freeGasCubicMetre: result, code } = out
  const { internalVolumeCubicMetre, pressurePascal, temperatureKelvin } = columns
  const { reference } = options
  const gas = modelOf(options)
  const columnGas = options.compiled === undefined ? { mixture: options.mixture } : { compiled: options.compiled }
  const mixture = options.compiled === undefined ? options.mixture : options.compiled.mixture
  const { internalVolume, pressure, temperature } = acceptedContents
  const largest = internalVolume.atMost * internalVolume.unit.factor
  const highest = pressure.atMost * pressure.unit.factor
  const coldest = temperature.atLeast + 273.15
  const warmest = temperature.atMost + 273.15
  const perVolume = 1 / amountPerFreeGas({ reference, mixture, gas })
  if (gas === 'real') molarDensityInto({ molarDensityMolePerCubicMetre: result, code }, columns, columnGas, from, end)
  for (let row = from; row < end; row++) {
    const volume = internalVolumeCubicMetre[row] as number
    const p = pressurePascal[row] as number
    const t = temperatureKelvin[row] as number
    if (!(volume > 0 && volume <= largest && p > 0 && p <= highest && t >= coldest && t <= warmest)) {
      result[row] = Number.NaN
      code[row] = faultOfRow(rowCodes.outOfRange, volume, p, t)
      continue
    }
    if (gas === 'ideal') {
      result[row] = p / (gerg2008GasConstant * t)
      code[row] = rowCodes.good
    }
    result[row] = (result[row] as number) * volume * perVolume
  }
}
