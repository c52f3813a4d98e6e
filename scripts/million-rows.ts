// The program of docs/how-to/compute-a-million-rows.md, taken from the page, run as a newcomer would: on a million rows, in an empty folder with
// the packed package. Its lines are counted, some rows are held against the functions themselves, and its time is taken.
// Usage: npm run script -- million-rows [--write] (after npm run build)
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { machine, markdownTable, storeResult } from '../bench/stored-result.ts'
import {
  freeGas,
  isoStandard,
  type Mixture,
  mixtureFromText,
  molarDensity,
  molarMass,
  viscosity,
} from '../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  internalVolumeOf,
  inUnit,
  litre,
  micropascalSecond,
  temperatureOf,
} from '../src/units/index.ts'
import { installPacked } from './installed-package.ts'

const page = 'docs/how-to/compute-a-million-rows.md'
const program = /```js\n([^`]*)```/.exec(readFileSync(page, 'utf8'))?.[1]
if (program === undefined) throw new Error(`${page} has no program`)
const lines = program.trimEnd().split('\n').length

const rows = 1_000_000
const gases = ['air', 'nitrox 32', '18/45']
const pressureOf = (row: number): string => (1 + 230 * ((row * 0.618034) % 1)).toFixed(3)
const celsiusOf = (row: number): string => (5 + 30 * ((row * 0.414214) % 1)).toFixed(2)

/** What the functions themselves give for a row. */
function wanted(row: number): readonly number[] {
  const gas: Mixture = mixtureFromText(gases[row % 3] ?? '')
  const pressure = absolute(Number(pressureOf(row)), bar)
  const temperature = temperatureOf(Number(celsiusOf(row)), celsius)
  const contents = { internalVolume: internalVolumeOf(12, litre), pressure, temperature, mixture: gas }
  return [
    inUnit(freeGas(contents, { reference: isoStandard }), litre),
    molarDensity(gas, pressure, temperature) * molarMass(gas),
    inUnit(viscosity(gas, { pressure, temperature }), micropascalSecond),
  ]
}

const folder = mkdtempSync(join(tmpdir(), 'litrebar-million-'))
try {
  installPacked(folder)
  const all = Array.from({ length: rows }, (_, row) => `${pressureOf(row)},${celsiusOf(row)},${gases[row % 3] ?? ''}`)
  writeFileSync(join(folder, 'log.csv'), `p,T,gas\n${all.join('\n')}\n`)
  // what the program takes of processors is said by the process itself, as it ends
  const told = `process.on('exit', () => { const { user, system } = process.cpuUsage(); console.error((user + system) / 1e6) })\n`
  writeFileSync(join(folder, 'program.mjs'), told + program)
  const began = performance.now()
  const ended = spawnSync(process.execPath, ['program.mjs'], { cwd: folder, encoding: 'utf8' })
  const clock = (performance.now() - began) / 1000
  if (ended.status !== 0) throw new Error(ended.stderr)
  const cpu = Number(ended.stderr.trim())
  const results = readFileSync(join(folder, 'results.csv'), 'utf8').trimEnd().split('\n').slice(1)
  let largest = 0
  for (let row = 0; row < rows; row += 9973) {
    const found = (results[row] ?? '').split(',').slice(3, 6).map(Number)
    for (const [place, value] of wanted(row).entries()) {
      largest = Math.max(largest, Math.abs((found[place] ?? Number.NaN) / value - 1))
    }
  }
  // viscosity comes from a table within 1e-6, the others within 1e-7
  if (results.length !== rows || !(largest < 1e-6)) throw new Error(`${results.length} rows, off by ${largest}`)
  storeResult(
    'docs/measured/batch.md',
    'million rows',
    `${machine()}.\n\n${markdownTable(
      [
        'the program of the page',
        'lines',
        'rows',
        'clock with start, s',
        'processor time, s',
        'largest departure of a result',
      ],
      [
        [
          'a million rows, three results, gas by name',
          String(lines),
          String(results.length),
          clock.toFixed(2),
          cpu.toFixed(2),
          largest.toExponential(0),
        ],
      ],
    )}`,
  )
} finally {
  rmSync(folder, { recursive: true, force: true })
}
