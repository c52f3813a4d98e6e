// For researchers: a million densities of a mixture in one loop, the error of the table known and the bad rows marked.
import { absolute, bar, celsius, compileMixture, molarDensityInto, temperatureOf, trimix } from 'litrebar'

const rows = 1_000_000
const pressurePascal = Float64Array.from({ length: rows }, (_, row) => 1e5 + 3e7 * ((row * 0.618034) % 1))
const temperatureKelvin = Float64Array.from({ length: rows }, (_, row) => 275 + 35 * ((row * 0.414214) % 1))
pressurePascal[4711] = Number.NaN // a bad row stays a row

const compiled = compileMixture(trimix({ oxygen: 0.18, helium: 0.45 }), {
  pressure: [absolute(1, bar), absolute(320, bar)],
  temperature: [temperatureOf(0, celsius), temperatureOf(40, celsius)],
  tolerance: 5e-9,
})
const out = { molarDensityMolePerCubicMetre: new Float64Array(rows), code: new Uint8Array(rows) }
molarDensityInto(out, { pressurePascal, temperatureKelvin }, { compiled })

let sum = 0
for (let row = 0; row < rows; row++) if (out.code[row] === 0) sum += out.molarDensityMolePerCubicMetre[row]
console.log(
  `mean of ${rows - out.code.filter((code) => code !== 0).length} rows: ${(sum / (rows - 1)).toFixed(3)} mol/m³`,
)
console.log(`row 4711 has code ${out.code[4711]}; table within ${compiled.tolerance} of the equation`)
