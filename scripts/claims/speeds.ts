// Speeds by processor time, as the benches print them. A speed depends on the machine: beside each stands the yardstick of its run.
import { spawnSync } from 'node:child_process'
import { type Block, type Figures, threeFigures } from './block.ts'

interface Row {
  readonly label: string
  readonly bench: string
  /** Finds the number in what the bench prints. */
  readonly pattern: RegExp
  /** From the printed number to the shown one. */
  readonly scale?: number
  readonly unit: string
  readonly aim?: string
}

const after = (heading: string, line: string, number: string): RegExp =>
  new RegExp(`^${heading}$[\\s\\S]*?^${line}.*?${number}`, 'm')
const rate = String.raw`median ([\d.]+)`
const states = (gas: string, line: string): RegExp => after(gas, line, rate)
const timed = (line: string, figure = 'processor'): RegExp => new RegExp(`^${line}.*?${figure} ([\\d.]+) ms`, 'm')
const three = 'three gases'
const air = 'dry air, four gases'
const humid = 'humid air, five gases'

const general: readonly Row[] = [
  {
    label: 'a column from psi to bar, per row',
    bench: 'units',
    pattern: /^column: convertInto +([\d.]+) ns/m,
    unit: 'ns',
    aim: '1.05 of the bare loop',
  },
  { label: 'the bare loop with the same check', bench: 'units', pattern: /^column: bare.*? ([\d.]+) ns/m, unit: 'ns' },
  {
    label: '`inUnit(absolute(n, psi), bar)`, checked',
    bench: 'units',
    pattern: /^scalar: inUnit.*? ([\d.]+) ns/m,
    unit: 'ns',
  },
  { label: 'the bare multiplication', bench: 'units', pattern: /^scalar: bare.*? ([\d.]+) ns/m, unit: 'ns' },
  {
    label: 'density from pressure and temperature, three gases',
    bench: 'gas-state',
    pattern: states(three, 'density from'),
    unit: 'M/s',
    aim: '1.9 M/s',
  },
  {
    label: 'the same, five gases',
    bench: 'gas-state',
    pattern: states(humid, 'density from'),
    unit: 'M/s',
    aim: '1.15 M/s',
  },
  {
    label: 'all properties, three gases',
    bench: 'gas-state',
    pattern: states(three, 'all properties'),
    unit: 'M/s',
    aim: '0.95 M/s',
  },
  {
    label: 'the same, five gases ',
    bench: 'gas-state',
    pattern: states(humid, 'all properties'),
    unit: 'M/s',
    aim: '0.6 M/s',
  },
  {
    label: '`gasState` with its record and fugacities, three gases',
    bench: 'gas-state',
    pattern: states(three, 'gasState'),
    unit: 'M/s',
  },
  { label: 'the same, air of four gases', bench: 'gas-state', pattern: states(air, 'gasState'), unit: 'M/s' },
  {
    label: 'densities from a compiled mixture of three gases, 5e-9',
    bench: 'gas-state',
    pattern: states(three, 'molarDensityInto from'),
    unit: 'M/s',
    aim: '50 M/s',
  },
  { label: 'shoulder stamps read', bench: 'stamps', pattern: /median (\d+) stamps/, unit: '/s', aim: '200 000 /s' },
  {
    label: 'three-gas blends by real gas, top gas 21/79',
    bench: 'blend',
    pattern: /^empty cylinder, top gas 21\/79: median (\d+)/m,
    unit: '/s',
    aim: '20 000 /s',
  },
  {
    label: 'the same, top gas air of four gases',
    bench: 'blend',
    pattern: /^empty cylinder, top gas air.*?: median (\d+)/m,
    unit: '/s',
    aim: '20 000 /s',
  },
  {
    label: 'a million real-gas endurances',
    bench: 'consumption',
    pattern: timed('1 M real-gas endurances'),
    unit: 'ms',
    aim: '1 s',
  },
  {
    label: 'a million samples of a reserve by `compileReserve`, ideal gas',
    bench: 'consumption',
    pattern: timed('1 M samples of a reserve, ideal gas'),
    unit: 'ms',
    aim: '500 ms',
  },
  {
    label: 'the same by real gas',
    bench: 'consumption',
    pattern: timed('1 M samples of a reserve, real gas'),
    unit: 'ms',
    aim: '700 ms',
  },
]

const microseconds = (line: string): Pick<Row, 'pattern' | 'unit'> => ({
  pattern: new RegExp(`^${line}: median ([\\d.]+) µs`, 'm'),
  unit: 'µs',
})
const milliseconds = (line: string): Pick<Row, 'pattern' | 'unit'> => ({
  pattern: new RegExp(`^${line}: median ([\\d.]+) ms`, 'm'),
  unit: 'ms',
})

const loops: readonly Row[] = [
  {
    label: 'area of a loop of 10 000 points',
    bench: 'loop',
    ...microseconds('area of a loop of 10000 points'),
    aim: '50 µs',
  },
  {
    label: 'full reading of a loop of 10 000 points',
    bench: 'loop',
    ...microseconds('full reading of a loop of 10000 points'),
  },
  {
    label: 'full analysis of a log of 10 000 rows, 40 breaths',
    bench: 'loop',
    ...milliseconds('full analysis of a log of \\d{4,5} rows'),
    aim: '3 ms',
  },
  { label: 'area of 1 000 000 samples', bench: 'loop', ...milliseconds('area of \\d{6,7} samples'), aim: '5 ms' },
  {
    label: 'full analysis of a log of 1 000 000 rows, 4000 breaths',
    bench: 'loop',
    ...milliseconds('full analysis of a log of \\d{6,7} rows'),
    aim: '400 ms',
  },
]

const supplyMaps: readonly Row[] = (
  [
    ['compiling a supply of air, ideal', 'compiling air, ideal', undefined],
    ['compiling a supply of air, real', 'compiling air, real', undefined],
    ['1 000 000 cells, air, ideal', '1000000 cells of air, ideal', '2 s'],
    ['1 000 000 cells, air, real', '1000000 cells of air, real', '10 s'],
    ['1 000 000 cells, trimix 18/45, ideal', '1000000 cells of trimix 18/45, ideal', '2 s'],
    ['1 000 000 cells, trimix 18/45, real', '1000000 cells of trimix 18/45, real', '10 s'],
  ] as const
).map(([label, line, aim]) => ({
  label,
  bench: 'supply-map',
  ...milliseconds(line),
  ...(aim === undefined ? {} : { aim }),
}))

const perRow = (label: string, line: string): Row => ({
  label,
  bench: 'fluids',
  pattern: new RegExp(`^${line}: median ([\\d.]+) ns`, 'm'),
  unit: 'ns',
})
const fluids: readonly Row[] = [
  perRow('bare multiply-add in a column', 'bare multiply-add in a column'),
  perRow('`pressureAtDepthInto`', 'pressureAtDepthInto'),
  perRow('`seawaterDensityInto`', 'seawaterDensityInto'),
  perRow('`saturationPressureInto`, ice and water', 'saturationPressureInto'),
  perRow('`pressureAtDepth`', 'pressureAtDepth, by the call'),
  perRow('`seawaterDensity`', 'seawaterDensity, by the call'),
  perRow('`saturationPressure`', 'saturationPressure, by the call'),
  perRow('`enhancementFactor`', 'enhancementFactor, by the call'),
  perRow('`dewPoint`', 'dewPoint, by the call'),
  perRow('`viscosity` of trimix', 'viscosity of trimix, by the call'),
]

/** The yardstick in a run of its own, by which another machine or another hour scales. */
export const yardstick = 'yardstick, 1000 loops of five `Math.exp` and 250 multiply-adds'

/** Million loops a second; best of many short runs. */
export function yardstickNow(): number {
  const round = (): number => {
    let x = 0.5
    for (let k = 0; k < 1000; k++) {
      for (let j = 0; j < 5; j++) x = Math.exp(-x)
      for (let j = 0; j < 250; j++) x = x * 0.999 + 0.0005
    }
    return x
  }
  for (let k = 0; k < 100; k++) round()
  const seconds = Array.from({ length: 40 }, () => {
    const { user: from } = process.cpuUsage()
    for (let k = 0; k < 20; k++) round()
    return (process.cpuUsage().user - from) / 1e6
  })
  return 0.02 / Math.min(...seconds.filter((each) => each > 0))
}

const printed = new Map<string, string>()
function printedBy(bench: string): string {
  const before = printed.get(bench)
  if (before !== undefined) return before
  const { stdout, status } = spawnSync('node', ['--expose-gc', 'scripts/run.mjs', 'bench', bench], {
    encoding: 'utf8',
    env: { ...process.env, LITREBAR_CLOCK: 'processor' },
  })
  if (status !== 0) throw new Error(`bench ${bench} ended with ${status}`)
  printed.set(bench, stdout)
  return stdout
}

function speedBlock(page: string, name: string, rows: readonly Row[]): Block {
  const hasAims = rows.some(({ aim }) => aim !== undefined)
  return {
    page,
    name,
    kind: 'speed',
    band: 2,
    measure: (): Figures => {
      const figures = rows.map(({ label, bench, pattern, scale = 1 }) => {
        const found = pattern.exec(printedBy(bench))?.[1]
        if (found === undefined) throw new Error(`the bench ${bench} prints nothing for "${label}" (${pattern})`)
        return [label, Number(found) * scale] as const
      })
      return { ...Object.fromEntries(figures), [yardstick]: yardstickNow() }
    },
    table: (figures) => [
      hasAims ? '| What | Measured | Aim | `bench` |' : '| What | Measured | `bench` |',
      hasAims ? '| :--- | ---: | ---: | :--- |' : '| :--- | ---: | :--- |',
      ...rows.map(({ label, bench, unit, aim = '' }) => {
        const measured = `| ${label} | ${threeFigures(figures[label] ?? Number.NaN)} ${unit} |`
        return hasAims ? `${measured} ${aim} | \`${bench}\` |` : `${measured} \`${bench}\` |`
      }),
      `| ${yardstick} | ${threeFigures(1000 * (figures[yardstick] ?? Number.NaN))} /s |${hasAims ? '  |' : ''}  |`,
    ],
  }
}

/** Whether a larger figure means a faster run. */
export function isRate(label: string): boolean {
  return [...general, ...loops, ...supplyMaps, ...fluids].some((row) => row.label === label && row.unit.endsWith('/s'))
}

export const speeds: readonly Block[] = [
  speedBlock('docs/measured/speed-and-size.md', 'speeds', general),
  speedBlock('docs/measured/work-of-breathing.md', 'loop speeds', loops),
  speedBlock('docs/measured/regulator-mechanics.md', 'supply map speeds', supplyMaps),
  speedBlock('docs/measured/fluids.md', 'fluid speeds', fluids),
]
