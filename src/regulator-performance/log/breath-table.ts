import { observationsOf } from '../../uncertainty/index.ts'
import type { Duration, EnergyPerVolume, PressureDifference, Volume } from '../../units/index.ts'
import { type BreathRows, measureHalf } from './breath-rows.ts'
import type { CleanLog } from './breathing-log.ts'
import { mean } from './mean.ts'
import { vertexNear } from './turning-points.ts'

/** One breath of the table. */
export interface BreathRow {
  readonly start: Duration
  readonly duration: Duration
  readonly tidalVolume: Volume
  readonly workOfBreathingPerLitre: EnergyPerVolume
  readonly inhalationPerLitre: EnergyPerVolume
  readonly exhalationPerLitre: EnergyPerVolume
  /** Lowest pressure during inhalation. */
  readonly inhalationPressure: PressureDifference
  /** Highest pressure during exhalation. */
  readonly exhalationPressure: PressureDifference
  /** Highest pressure during inhalation. */
  readonly assistPressureOnInhalation: PressureDifference
}

/** Mean of a column of the table and its spread about it. */
export interface ColumnSummary<Q extends number> {
  readonly mean: Q
  /** Of a single breath; undefined for one breath, which shows none. */
  readonly standardDeviation: Q | undefined
}

/** Mean and spread of each column of the table. */
export type BreathSummary = { readonly [Name in Exclude<keyof BreathRow, 'start'>]: ColumnSummary<BreathRow[Name]> }

/** One breath as measured, before a zero is taken off. SI. */
export interface MeasuredBreath {
  readonly start: number
  readonly duration: number
  readonly tidalVolume: number
  readonly inhalationPerLitre: number
  readonly exhalationPerLitre: number
  readonly lowestOnInhalation: number
  readonly highestOnInhalation: number
  readonly highestOnExhalation: number
  readonly curvaturePerLitre: number
  readonly perDelay: number
}

/** Work, peaks and sensitivity of one breath. */
export function measureBreath(log: CleanLog, { start, middle, end }: BreathRows, noise: number): MeasuredBreath {
  const inhalation = measureHalf(log, start, middle)
  const exhalation = measureHalf(log, middle, end)
  const tidalVolume = middle.volume
  const half = Math.max(1, Math.round((end.row - start.row) / 18))
  const peak = (row: number, sign: 1 | -1): number => vertexNear(log.time, log.pressure, row, half, noise, sign).value
  return {
    start: start.time,
    duration: end.time - start.time,
    tidalVolume,
    inhalationPerLitre: (inhalation.polygonWork + inhalation.curvatureWork) / tidalVolume,
    exhalationPerLitre: (exhalation.polygonWork + exhalation.curvatureWork) / tidalVolume,
    lowestOnInhalation: peak(inhalation.lowestRow, -1),
    highestOnInhalation: peak(inhalation.highestRow, 1),
    highestOnExhalation: peak(exhalation.highestRow, 1),
    curvaturePerLitre: (inhalation.curvatureWork + exhalation.curvatureWork) / tidalVolume,
    perDelay: (inhalation.perDelay + exhalation.perDelay) / tidalVolume,
  }
}

/** The row of the table, with another pressure counted as zero. */
export function rowOf(measured: MeasuredBreath, zero: number): BreathRow {
  const { inhalationPerLitre, exhalationPerLitre } = measured
  return {
    start: measured.start as Duration,
    duration: measured.duration as Duration,
    tidalVolume: measured.tidalVolume as Volume,
    workOfBreathingPerLitre: (inhalationPerLitre + exhalationPerLitre) as EnergyPerVolume,
    inhalationPerLitre: (inhalationPerLitre + zero) as EnergyPerVolume,
    exhalationPerLitre: (exhalationPerLitre - zero) as EnergyPerVolume,
    inhalationPressure: (measured.lowestOnInhalation - zero) as PressureDifference,
    exhalationPressure: (measured.highestOnExhalation - zero) as PressureDifference,
    assistPressureOnInhalation: (measured.highestOnInhalation - zero) as PressureDifference,
  }
}

/** Mean and spread of every column. */
export function summaryOf(rows: readonly BreathRow[]): BreathSummary {
  const column = <Name extends keyof BreathRow>(name: Name): ColumnSummary<BreathRow[Name]> => {
    const values = rows.map((row): number => row[name])
    const spread = values.length > 1 ? observationsOf(values).standardDeviation : undefined
    return { mean: mean(values), standardDeviation: spread } as ColumnSummary<BreathRow[Name]>
  }
  return {
    duration: column('duration'),
    tidalVolume: column('tidalVolume'),
    workOfBreathingPerLitre: column('workOfBreathingPerLitre'),
    inhalationPerLitre: column('inhalationPerLitre'),
    exhalationPerLitre: column('exhalationPerLitre'),
    inhalationPressure: column('inhalationPressure'),
    exhalationPressure: column('exhalationPressure'),
    assistPressureOnInhalation: column('assistPressureOnInhalation'),
  }
}
