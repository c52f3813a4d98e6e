// What an import costs a program that has just started: processor time of a process that imports and ends, less that of one that only
// ends, taken in turn. Measures the built package. Usage: npm run bench cold-start [rounds] [--write]
import { execFileSync } from 'node:child_process'
import { machine, markdownTable, numbersGiven, storeResult } from './stored-result.ts'

const [rounds = 21] = numbersGiven()
const entries = ['litrebar', 'litrebar/gas-law', 'litrebar/cylinder', 'litrebar/consumption', 'litrebar/batch']
const waysIn = [
  ...entries.map((entry) => ({ name: `import '${entry}'`, code: `await import('${entry}')`, type: 'module' })),
  { name: `require('litrebar')`, code: `require('litrebar')`, type: 'commonjs' },
]
const report = 'const { user, system } = process.cpuUsage(); process.stdout.write(String((user + system) / 1000))'

/** Processor time of a whole start, ms. */
function start(code: string, type: string): number {
  return Number(
    execFileSync(process.execPath, [`--input-type=${type}`, '-e', `${code}\n${report}`], { encoding: 'utf8' }),
  )
}

const empty: number[] = []
const costs = waysIn.map(() => [] as number[])
for (let round = 0; round < rounds; round++) {
  waysIn.forEach(({ code, type }, place) => {
    const bare = start('', type)
    empty.push(bare)
    costs[place]?.push(start(code, type))
  })
}
const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN
const least = (values: readonly number[]): number => Math.min(...values)
const rows = waysIn.map(({ name }, place) => {
  const own = costs[place] ?? []
  return [`\`${name}\``, (middle(own) - middle(empty)).toFixed(0), (least(own) - least(empty)).toFixed(0)]
})
storeResult(
  'docs/measured/speed-and-size.md',
  'cold start',
  `${machine()}; ${rounds} rounds; Node alone takes ${middle(empty).toFixed(0)} ms, at least ${least(empty).toFixed(0)} ms.\n\n${markdownTable(['Over Node alone, processor time', 'median, ms', 'least, ms'], rows)}`,
)
