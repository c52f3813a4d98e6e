// How fast a tabulated viscosity is against the function itself, and how long its table takes to make.
import { dryAir, tabulated, tabulatedInto, viscosity } from '../src/gas-law/index.ts'
import { absolute, bar, celsius, temperatureOf } from '../src/units/index.ts'

const rows = 1_000_000
const columns = {
  pressurePascal: Float64Array.from({ length: rows }, (_, row) => 1e5 + 2.9e7 * ((row * 0.618034) % 1)),
  temperatureKelvin: Float64Array.from({ length: rows }, (_, row) => 275 + 35 * ((row * 0.414214) % 1)),
}
const out = { value: new Float64Array(rows), code: new Uint8Array(rows) }
const started = performance.now()
const table = tabulated((pressure, temperature) => viscosity(dryAir, { pressure, temperature }), {
  temperature: [temperatureOf(-30, celsius), temperatureOf(60, celsius)],
  pressure: [absolute(0.5, bar), absolute(300, bar)],
  tolerance: 1e-6,
})
const made = performance.now()
console.log(
  `table ${(made - started).toFixed(0)} ms, ${table.cells} cells, largest error ${table.largestError.toExponential(1)}`,
)
for (let run = 0; run < 3; run++) {
  const before = performance.now()
  tabulatedInto(out, columns, table)
  console.log(`${(rows / (performance.now() - before) / 1000).toFixed(1)} M rows/s`)
}
const before = performance.now()
for (let row = 0; row < 100_000; row++) {
  viscosity(dryAir, {
    pressure: absolute((columns.pressurePascal[row] as number) / 1e5, bar),
    temperature: temperatureOf((columns.temperatureKelvin[row] as number) - 273.15, celsius),
  })
}
console.log(`scalar ${(100_000 / (performance.now() - before) / 1000).toFixed(2)} M rows/s`)
