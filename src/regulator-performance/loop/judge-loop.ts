import type { LogColumn } from '../log/column.ts'
import type { LoopFinding } from './loop-finding.ts'

/** What the findings of a loop are drawn from, SI. */
export interface LoopFigures {
  readonly work: number
  readonly tidalVolume: number
  readonly crossings: number
  readonly grossWork: number
  readonly lowestPressure: number
  readonly maximumPressure: number
}

// What a demand regulator and a person can show, wide on purpose. Ours (common practice, no source): outside, a unit is the likelier cause.
const usualPeak = { from: 50, to: 6000 } // Pa
const usualTidalVolume = { from: 0.0002, to: 0.008 } // m³

/** What is doubtful about one loop. */
export function loopFindings(
  { volume, pressure }: { readonly volume: LogColumn; readonly pressure: LogColumn },
  figures: LoopFigures,
): readonly LoopFinding[] {
  return [...signFindings(figures), ...unitFindings(figures), ...openFindings(volume, pressure, figures)]
}

/** Sign, crossing and constancy. */
export function signFindings(figures: LoopFigures): readonly LoopFinding[] {
  const { work, crossings, grossWork, lowestPressure, maximumPressure } = figures
  const findings: LoopFinding[] = []
  if (maximumPressure === lowestPressure) {
    findings.push({
      code: 'constant-pressure',
      text: 'The pressure never changes, so that the work is zero by input and not by merit: check that the pressure channel was connected.',
    })
  }
  if (work < 0) {
    findings.push({
      code: 'reversed',
      text: 'The net work is negative: the apparatus drives the diver, or the samples run backwards, or the sign of pressure or volume is reversed. Expected: volume rises on inhalation, pressure falls below zero on inhalation.',
    })
  }
  if (crossings > 0) {
    findings.push({
      code: 'crossing',
      text: `The halves cross ${crossings === 1 ? 'once' : `${crossings} times`}: the signed work of ${joules(work)} hides a gross work of ${joules(grossWork)}.`,
    })
  }
  return findings
}

/** Sizes that only a wrong unit explains. */
export function unitFindings({ tidalVolume, lowestPressure, maximumPressure }: LoopFigures): readonly LoopFinding[] {
  const findings: LoopFinding[] = []
  const swing = (maximumPressure - lowestPressure) / 2
  if (swing > 0 && (swing < usualPeak.from || swing > usualPeak.to)) {
    findings.push({
      code: 'unlikely-pressure',
      text: `Half the pressure swing is ${figure(swing)} Pa, outside the ${usualPeak.from} to ${usualPeak.to} Pa of demand regulators. ${likelyUnit(swing, pressureSlips, usualPeak, 'Pa')}`,
    })
  }
  if (tidalVolume < usualTidalVolume.from || tidalVolume > usualTidalVolume.to) {
    findings.push({
      code: 'unlikely-volume',
      text: `The tidal volume is ${figure(tidalVolume * 1000)} L, outside the 0.2 to 8 L of people and machines. ${likelyUnit(tidalVolume, volumeSlips, usualTidalVolume, 'm³')}`,
    })
  }
  return findings
}

/** By which factor a number comes out when it was in this unit and was read as SI. */
const pressureSlips = [
  { unit: 'mbar or hPa', factor: 100 },
  { unit: 'cmH2O', factor: 98.0665 },
  { unit: 'kPa', factor: 1000 },
  { unit: 'inH2O', factor: 249.08891 },
  { unit: 'bar', factor: 100_000 },
] as const

const volumeSlips = [
  { unit: 'L', factor: 0.001 },
  { unit: 'mL', factor: 1e-6 },
] as const

function likelyUnit(
  value: number,
  slips: readonly { readonly unit: string; readonly factor: number }[],
  usual: { readonly from: number; readonly to: number },
  si: string,
): string {
  const fits = (size: number): boolean => size >= usual.from && size <= usual.to
  const unconverted = slips.filter(({ factor }) => fits(value * factor)).map(({ unit }) => unit)
  if (unconverted.length > 0) return `Numbers in ${unconverted.join(', ')} taken as ${si} would look like this.`
  const factors = [10, 100, 1000, 0.1, 0.01, 0.001].filter((factor) => fits(value * factor))
  if (factors.length > 0)
    return `A factor of ${factors.join(' or ')} would bring it inside: check the unit of the column.`
  return 'Check the unit of the column.'
}

// A closed record's own steps tell how far apart neighbours lie; a gap well beyond them was never sampled.
const openGap = { timesLargestStep: 3, shareOfVolume: 0.02, shareOfPressure: 0.05, fewestPoints: 8 }

function openFindings(volume: LogColumn, pressure: LogColumn, figures: LoopFigures): readonly LoopFinding[] {
  if (volume.length < openGap.fewestPoints) return []
  const pressureRange = figures.maximumPressure - figures.lowestPressure
  const volumeOpen = isOpen(volume, openGap.shareOfVolume * figures.tidalVolume)
  const pressureOpen = isOpen(pressure, openGap.shareOfPressure * pressureRange)
  if (!volumeOpen && !pressureOpen) return []
  const last = volume.length - 1
  const litres = figure(((volume[0] as number) - (volume[last] as number)) * 1000)
  const pascals = figure((pressure[0] as number) - (pressure[last] as number))
  return [
    {
      code: 'open',
      text: `The record does not come back to its start: ${litres} L and ${pascals} Pa are missing, and a straight line was drawn there. Give one whole breath, or remove the drift.`,
    },
  ]
}

function isOpen(values: LogColumn, least: number): boolean {
  const gap = Math.abs((values[0] as number) - (values[values.length - 1] as number))
  if (gap <= least) return false
  let largest = 0
  for (let row = 1; row < values.length; row++) {
    largest = Math.max(largest, Math.abs((values[row] as number) - (values[row - 1] as number)))
  }
  return gap > openGap.timesLargestStep * largest
}

function joules(energy: number): string {
  return `${figure(energy)} J`
}

function figure(value: number): string {
  return String(Number(value.toPrecision(3)))
}
