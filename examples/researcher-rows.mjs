// For researchers: a file of pressures, temperatures and mixtures to a file with free gas, density and viscosity of every row.
import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { runRows } from 'litrebar/batch'

const line = (row) =>
  `${(1 + ((row * 7) % 230)).toFixed(1)},${5 + (row % 30)},${['air', 'nitrox 32', '18/45'][row % 3]}`
writeFileSync('rows.csv', `p,T,gas\n${Array.from({ length: 3000 }, (_, row) => line(row)).join('\n')}\n250,,air\n`)

const inputs = {
  pressure: { column: 'p', unit: 'bar' },
  temperature: { column: 'T', unit: '°C' },
  internalVolume: { value: '12 L' },
}
const reference = '15 °C, 1.01325 bar, dry'
const plan = { compute: ['freeGas', 'density', 'viscosity'], reference, inputs, mixture: { column: 'gas' }, figures: 5 }
const done = await runRows({ input: 'rows.csv', output: 'results.csv', plan, overwrite: true })

console.log(`${done.rows} rows, bad ones: ${JSON.stringify(done.bad)}`)
const lines = readFileSync('results.csv', 'utf8').trimEnd().split('\n')
console.log([...lines.slice(0, 4), lines.at(-1)].join('\n'))
for (const file of ['rows.csv', 'results.csv', 'results.csv.provenance.json']) rmSync(file)
