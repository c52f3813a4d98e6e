/** What one run of `npm run script -- mutation <set>` changes, and the tests that are to notice. */
export interface MutationSet {
  readonly room: string
  /** Files of the set, from `src/`. */
  readonly files: readonly string[]
  /** The share of changes that must be noticed: 0.98 where a result can hurt someone, 0.9 elsewhere. */
  readonly aim: 0.98 | 0.9
}

/**
 * Files with verdicts, limits, reserves, due dates and rounding sides, by room; and beside them the rest of the core.
 * A set is small enough for one run of a few minutes on two cores.
 */
export const mutationSets = {
  units: {
    room: 'units',
    files: ['units/round.ts', 'units/accepted.ts'],
    aim: 0.98,
  },
  conversion: {
    room: 'units',
    files: ['units/convert.ts', 'units/construct.ts', 'units/check-unit.ts', 'units/format.ts'],
    aim: 0.9,
  },
  parsing: { room: 'units', files: ['units/parse.ts'], aim: 0.9 },
  errors: { room: 'errors', files: ['errors/*.ts'], aim: 0.9 },
  references: {
    room: 'references',
    files: ['references/assessment.ts'],
    aim: 0.98,
  },
  uncertainty: {
    room: 'uncertainty',
    files: ['uncertainty/agreement.ts', 'uncertainty/coverage.ts', 'uncertainty/propagate.ts'],
    aim: 0.98,
  },
  environment: {
    room: 'environment',
    files: ['environment/depth-convention.ts', 'environment/water-column.ts', 'environment/gravity.ts'],
    aim: 0.9,
  },
  'gas-limits': {
    room: 'gas-law',
    files: ['gas-law/limits/*.ts'],
    aim: 0.98,
  },
  'gas-laws': {
    room: 'gas-law',
    files: ['gas-law/laws/*.ts', 'gas-law/mixture/*.ts'],
    aim: 0.9,
  },
  'gas-contents': {
    room: 'gas-law',
    files: ['gas-law/contents/*.ts'],
    aim: 0.9,
  },
  'fill-limits': {
    room: 'cylinder',
    files: [
      'cylinder/filling/fill-limit.ts',
      'cylinder/filling/assess-fill.ts',
      'cylinder/filling/oxygen-service.ts',
      'cylinder/filling/plus-permission.ts',
      'cylinder/filling/leak-test.ts',
      'cylinder/filling/stop-pressure.ts',
    ],
    aim: 0.98,
  },
  blends: {
    room: 'cylinder',
    files: [
      'cylinder/filling/plan-blend.ts',
      'cylinder/filling/blend-amounts.ts',
      'cylinder/filling/equalise.ts',
      'cylinder/filling/mixed-gas.ts',
      'cylinder/filling/developed-pressure.ts',
    ],
    aim: 0.9,
  },
  fitness: {
    room: 'cylinder',
    files: ['cylinder/fitness/*.ts'],
    aim: 0.98,
  },
  requalification: {
    room: 'cylinder',
    files: ['cylinder/requalification/*.ts'],
    aim: 0.98,
  },
  'stamp-evidence': {
    room: 'cylinder',
    files: [
      'cylinder/marking/alloy.ts',
      'cylinder/marking/consistency.ts',
      'cylinder/marking/finding-evidence.ts',
      'cylinder/marking/test-kind.ts',
      'cylinder/marking/calendar-month.ts',
    ],
    aim: 0.98,
  },
  testing: {
    room: 'cylinder',
    files: ['cylinder/testing/*.ts'],
    aim: 0.98,
  },
  ageing: {
    room: 'cylinder',
    files: ['cylinder/ageing/*.ts'],
    aim: 0.98,
  },
  valves: {
    room: 'cylinder',
    files: ['cylinder/valves/*.ts'],
    aim: 0.98,
  },
  'regulator-limits': {
    room: 'regulator-performance',
    files: ['regulator-performance/limits/*.ts'],
    aim: 0.98,
  },
  'regulator-stages': {
    room: 'regulator-performance',
    files: ['regulator-performance/stages/bench-finding.ts', 'regulator-performance/stages/workshop.ts'],
    aim: 0.98,
  },
  cold: {
    room: 'regulator-performance',
    files: ['regulator-performance/cold/*.ts'],
    aim: 0.98,
  },
  'breathing-loop': {
    room: 'regulator-performance',
    files: ['regulator-performance/loop/*.ts'],
    aim: 0.9,
  },
  reserves: {
    room: 'consumption',
    files: ['consumption/reserves/*.ts'],
    aim: 0.98,
  },
  'mixture-limits': {
    room: 'consumption',
    files: ['consumption/use/mixture-limits.ts', 'consumption/use/endurance.ts'],
    aim: 0.98,
  },
  circuits: {
    room: 'consumption',
    files: ['consumption/circuits/*.ts'],
    aim: 0.98,
  },
  purity: {
    room: 'charging',
    files: ['charging/purity/*.ts'],
    aim: 0.98,
  },
  'charging-water': {
    room: 'charging',
    files: ['charging/water/*.ts'],
    aim: 0.98,
  },
  running: {
    room: 'charging',
    files: ['charging/compressor/assess-running.ts', 'charging/compressor/running-pressures.ts'],
    aim: 0.98,
  },
  gauges: {
    room: 'gauges',
    files: ['gauges/pressure/*.ts', 'gauges/ports/*.ts', 'gauges/depth/surface-check.ts'],
    aim: 0.98,
  },
  'oxygen-cells': {
    room: 'gauges',
    files: ['gauges/oxygen-cell/*.ts'],
    aim: 0.98,
  },
  ballast: {
    room: 'buoyancy',
    files: ['buoyancy/ballast.ts', 'buoyancy/ballast-check.ts', 'buoyancy/relief-valve.ts', 'buoyancy/net-buoyancy.ts'],
    aim: 0.98,
  },
} as const satisfies Record<string, MutationSet>

export type MutationSetName = keyof typeof mutationSets
