// Unit conversion against the bare multiplication, in a column loop and as a checked scalar.
// Usage: npm run bench -- units
import { absolute, bar, convertInto, inUnit, psi } from '../src/units/index.ts'

const rows = 4096
const rounds = 4000
const repeats = 9
const factor = psi.factor / bar.factor
const column = Float64Array.from({ length: rows }, (_, row) => 1 + 3000 * ((row * 0.618034) % 1))
const out = { value: new Float64Array(rows), code: new Uint8Array(rows) }
let sink = 0

/** Best of the repeats, ns per row. */
function best(run: () => void): number {
  let shortest = Number.POSITIVE_INFINITY
  for (let repeat = 0; repeat < repeats; repeat++) {
    const from = performance.now()
    for (let round = 0; round < rounds; round++) run()
    shortest = Math.min(shortest, performance.now() - from)
    sink += out.value[repeat] ?? 0
  }
  return (shortest * 1e6) / (rounds * rows)
}

const cases: Readonly<Record<string, () => void>> = {
  'column: bare multiplication, with the same check and code': () => {
    for (let row = 0; row < rows; row++) {
      const value = (column[row] as number) * factor
      out.value[row] = value
      out.code[row] = value - value === 0 ? 0 : 1
    }
  },
  'column: convertInto': () => convertInto(out, column, { from: psi, to: bar }),
  'scalar: bare multiplication': () => {
    for (let row = 0; row < rows; row++) out.value[row] = (column[row] as number) * factor
  },
  'scalar: inUnit(absolute(n, psi), bar), checked': () => {
    for (let row = 0; row < rows; row++) out.value[row] = inUnit(absolute(column[row] as number, psi), bar)
  },
}

for (const run of Object.values(cases)) run() // warm
for (const [name, run] of Object.entries(cases)) console.log(`${name.padEnd(62)} ${best(run).toFixed(2)} ns`)
if (!Number.isFinite(sink)) throw new Error('a bad row')
