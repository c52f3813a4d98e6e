import { LitrebarError } from '../errors/index.ts'
import type { Axis, LimitLine } from './chart-kinds.ts'

/** Refuses a chart that cannot be drawn. */
export function refuseChart(argument: string, value: string, expected: string, hint: string): never {
  throw new LitrebarError({ code: 'input', argument, value, expected, hint })
}

/** Refuses an end of an axis that is not a number, or that lies before its beginning. */
export function requireAxes(axes: { readonly x?: Axis; readonly y: Axis }): void {
  for (const name of ['x', 'y'] as const) {
    const { from, to } = axes[name] ?? {}
    for (const end of [from, to]) {
      if (end !== undefined && !Number.isFinite(end))
        refuseChart(`chart.${name}`, String(end), 'a finite number', 'Leave out an end of an axis that is not known.')
    }
    if (from !== undefined && to !== undefined && !(from < to))
      refuseChart(
        `chart.${name}`,
        `from ${String(from)} to ${String(to)}`,
        'from the lesser to the greater',
        'Swap the ends.',
      )
  }
}

/** Refuses a limit without a value. */
export function requireLimits(limits: readonly LimitLine[] = []): void {
  limits.forEach(({ value }, index) => {
    if (!Number.isFinite(value))
      refuseChart(
        `chart.limits[${String(index)}]`,
        String(value),
        'a finite number',
        'Leave out a limit without a value.',
      )
  })
}
