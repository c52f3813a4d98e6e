import { compressorWork, type MultistageCompressor } from '../../charging/index.ts'
import { celsius, inUnit } from '../../units/index.ts'
import type { BarChart, LimitLine } from '../chart-kinds.ts'

/** A compressor whose discharge temperatures are drawn. */
export interface InterstageTemperatureChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  /** At most eight stages. */
  readonly machine: MultistageCompressor
  /** In degrees Celsius: what oil or valves bear, as their maker states it. */
  readonly limits?: readonly LimitLine[]
}

/**
 * Temperature of the gas after each stage of a compressor, a bar for each.
 *
 * @param options - id, title, the machine, and limits, °C
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError as `compressorWork`
 * @source litrebar-derivation
 */
export function interstageTemperatureChart(options: InterstageTemperatureChartOptions): BarChart {
  const { id, title, machine, limits } = options
  const { stages, cautions } = compressorWork(machine)
  const bars = stages.map(({ dischargeTemperature }, k) => ({
    name: `Stage ${k + 1}`,
    parts: [{ name: 'Discharge temperature', value: inUnit(dischargeTemperature, celsius) }],
  }))
  return {
    kind: 'bars',
    id,
    title,
    description: `Temperature of the gas after each stage: ${bars.map(({ name, parts }) => `${name.toLowerCase()}, ${Math.round(parts[0]?.value ?? 0)} °C`).join('; ')}.`,
    y: { label: 'Discharge temperature', unit: '°C', from: 0 },
    bars,
    ...(limits !== undefined && { limits }),
    cautions,
    sources: ['gerg-2008'],
  }
}
