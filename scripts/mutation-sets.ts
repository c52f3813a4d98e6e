/** What one run of `npm run script -- mutation <set>` changes, and the tests that are to notice. */
export interface MutationSet {
  readonly room: string
  /** Files of the set, from `src/`. */
  readonly files: readonly string[]
  /** Tests to run, as patterns of paths. */
  readonly tests: readonly string[]
  /** The share of changes that must be noticed: 0.98 where a result can hurt someone, 0.9 elsewhere. */
  readonly aim: 0.98 | 0.9
}

const verdicts = 'tests/package/verdicts.test.ts'
const refusals = 'tests/package/named-refusals.test.ts'

/**
 * Files with verdicts, limits, reserves, due dates and rounding sides, by room; and beside them the rest of the core.
 * A set is small enough for one run of a few minutes on two cores.
 */
export const mutationSets = {
  units: {
    room: 'units',
    files: ['units/round.ts', 'units/accepted.ts'],
    tests: ['tests/units/*.test.ts', refusals],
    aim: 0.98,
  },
  conversion: {
    room: 'units',
    files: ['units/convert.ts', 'units/construct.ts', 'units/check-unit.ts', 'units/format.ts'],
    tests: ['tests/units/*.test.ts', refusals],
    aim: 0.9,
  },
  parsing: { room: 'units', files: ['units/parse.ts'], tests: ['tests/units/*.test.ts', refusals], aim: 0.9 },
  errors: { room: 'errors', files: ['errors/*.ts'], tests: ['tests/errors/*.test.ts', refusals], aim: 0.9 },
  references: {
    room: 'references',
    files: ['references/assessment.ts'],
    tests: ['tests/references/*.test.ts', verdicts, refusals],
    aim: 0.98,
  },
  uncertainty: {
    room: 'uncertainty',
    files: ['uncertainty/agreement.ts', 'uncertainty/coverage.ts', 'uncertainty/propagate.ts'],
    tests: ['tests/uncertainty/*.test.ts', verdicts, refusals],
    aim: 0.98,
  },
  environment: {
    room: 'environment',
    files: ['environment/depth-convention.ts', 'environment/water-column.ts', 'environment/gravity.ts'],
    tests: ['tests/environment/*.test.ts', refusals],
    aim: 0.9,
  },
  'gas-limits': {
    room: 'gas-law',
    files: ['gas-law/limits/*.ts'],
    tests: ['tests/gas-law/limits/*.test.ts', verdicts, refusals],
    aim: 0.98,
  },
  'gas-laws': {
    room: 'gas-law',
    files: ['gas-law/laws/*.ts', 'gas-law/mixture/*.ts'],
    tests: ['tests/gas-law/laws/*.test.ts', 'tests/gas-law/mixture/*.test.ts', refusals],
    aim: 0.9,
  },
  'gas-contents': {
    room: 'gas-law',
    files: ['gas-law/contents/*.ts'],
    tests: ['tests/gas-law/contents/*.test.ts', refusals],
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
    tests: ['tests/cylinder/filling/*.test.ts', verdicts, refusals],
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
    tests: ['tests/cylinder/filling/*.test.ts', refusals],
    aim: 0.9,
  },
  fitness: {
    room: 'cylinder',
    files: ['cylinder/fitness/*.ts'],
    tests: ['tests/cylinder/fitness/*.test.ts', verdicts, refusals],
    aim: 0.98,
  },
  requalification: {
    room: 'cylinder',
    files: ['cylinder/requalification/*.ts'],
    tests: ['tests/cylinder/requalification/*.test.ts', verdicts, refusals],
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
    tests: [
      'tests/cylinder/marking/stamps.test.ts',
      'tests/cylinder/marking/shoulders.test.ts',
      'tests/cylinder/marking/finding-evidence.test.ts',
      'tests/cylinder/marking/joined-words.test.ts',
      'tests/cylinder/marking/marks-against-each-other.test.ts',
      'tests/cylinder/marking/read-stamp.test.ts',
      'tests/cylinder/requalification/*.test.ts',
      refusals,
    ],
    aim: 0.98,
  },
  testing: {
    room: 'cylinder',
    files: ['cylinder/testing/*.ts'],
    tests: ['tests/cylinder/testing/*.test.ts', verdicts, refusals],
    aim: 0.98,
  },
  ageing: {
    room: 'cylinder',
    files: ['cylinder/ageing/*.ts'],
    tests: ['tests/cylinder/ageing/*.test.ts', verdicts, refusals],
    aim: 0.98,
  },
  valves: {
    room: 'cylinder',
    files: ['cylinder/valves/*.ts'],
    tests: ['tests/cylinder/valves/*.test.ts', verdicts, refusals],
    aim: 0.98,
  },
  'regulator-limits': {
    room: 'regulator-performance',
    files: ['regulator-performance/limits/*.ts'],
    tests: ['tests/regulator-performance/limits/*.test.ts', 'tests/regulator-performance/decisions.test.ts', refusals],
    aim: 0.98,
  },
  'regulator-stages': {
    room: 'regulator-performance',
    files: ['regulator-performance/stages/bench-finding.ts', 'regulator-performance/stages/workshop.ts'],
    tests: ['tests/regulator-performance/stages/*.test.ts', 'tests/regulator-performance/decisions.test.ts', refusals],
    aim: 0.98,
  },
  cold: {
    room: 'regulator-performance',
    files: ['regulator-performance/cold/*.ts'],
    tests: ['tests/regulator-performance/cold/*.test.ts', 'tests/regulator-performance/decisions.test.ts', refusals],
    aim: 0.98,
  },
  'breathing-loop': {
    room: 'regulator-performance',
    files: ['regulator-performance/loop/*.ts'],
    tests: ['tests/regulator-performance/loop/*.test.ts', refusals],
    aim: 0.9,
  },
  reserves: {
    room: 'consumption',
    files: ['consumption/reserves/*.ts'],
    tests: ['tests/consumption/reserves/*.test.ts', 'tests/consumption/decisions.test.ts', refusals],
    aim: 0.98,
  },
  'mixture-limits': {
    room: 'consumption',
    files: ['consumption/use/mixture-limits.ts', 'consumption/use/endurance.ts'],
    tests: ['tests/consumption/use/*.test.ts', 'tests/consumption/decisions.test.ts', refusals],
    aim: 0.98,
  },
  circuits: {
    room: 'consumption',
    files: ['consumption/circuits/*.ts'],
    tests: ['tests/consumption/circuits/*.test.ts', 'tests/consumption/decisions.test.ts', refusals],
    aim: 0.98,
  },
  purity: {
    room: 'charging',
    files: ['charging/purity/*.ts'],
    tests: ['tests/charging/purity.test.ts', 'tests/charging/decisions.test.ts', refusals],
    aim: 0.98,
  },
  'charging-water': {
    room: 'charging',
    files: ['charging/water/*.ts'],
    tests: ['tests/charging/water.test.ts', 'tests/charging/decisions.test.ts', refusals],
    aim: 0.98,
  },
  running: {
    room: 'charging',
    files: ['charging/compressor/assess-running.ts', 'charging/compressor/running-pressures.ts'],
    tests: ['tests/charging/decisions.test.ts', 'tests/charging/compressor.test.ts', refusals],
    aim: 0.98,
  },
  gauges: {
    room: 'gauges',
    files: ['gauges/pressure/*.ts', 'gauges/ports/*.ts', 'gauges/depth/surface-check.ts'],
    tests: ['tests/gauges/*.test.ts', refusals],
    aim: 0.98,
  },
  'oxygen-cells': {
    room: 'gauges',
    files: ['gauges/oxygen-cell/*.ts'],
    tests: ['tests/gauges/*.test.ts', refusals],
    aim: 0.98,
  },
  ballast: {
    room: 'buoyancy',
    files: ['buoyancy/ballast.ts', 'buoyancy/ballast-check.ts', 'buoyancy/relief-valve.ts', 'buoyancy/net-buoyancy.ts'],
    tests: ['tests/buoyancy/*.test.ts', refusals],
    aim: 0.98,
  },
} as const satisfies Record<string, MutationSet>

export type MutationSetName = keyof typeof mutationSets
