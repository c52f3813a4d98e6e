import { axisTitle } from './chart-frame.ts'
import type { Axis, LimitLine } from './chart-kinds.ts'

/** The encoding of an axis in the Vega-Lite format. */
export function vegaAxis(field: string, axis: Axis): object {
  return {
    field,
    type: 'quantitative',
    title: axisTitle(axis),
    scale: {
      ...(axis.from !== undefined && { domainMin: axis.from }),
      ...(axis.to !== undefined && { domainMax: axis.to }),
      ...((axis.from !== undefined || axis.to !== undefined) && { nice: false }),
    },
  }
}

/** Limits as layers: a rule across the plot and its name. */
export function vegaLimits(limits: readonly LimitLine[] = []): object[] {
  if (limits.length === 0) return []
  return [
    {
      data: { values: limits.map(({ value, label }) => ({ y: value, label })) },
      layer: [
        { mark: { type: 'rule', strokeDash: [1, 4] }, encoding: { y: { field: 'y', type: 'quantitative' } } },
        {
          mark: { type: 'text', align: 'left', dy: -6 },
          encoding: { y: { field: 'y', type: 'quantitative' }, x: { value: 4 }, text: { field: 'label' } },
        },
      ],
    },
  ]
}
