// What the workers run: one block of rows by the row computer, made once in each process.
const { rowComputer } = require('litrebar/batch')

const size = 1000
const gases = ['air', 'nitrox 32', '18/45']
const plan = {
  compute: ['density'],
  inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { column: 'T', unit: '°C' } },
  mixture: { column: 'gas' },
}
let computer
const found = new Map()

/** Plain lists, since elements travel as JSON. */
function blockOf(block) {
  const rows = Array.from({ length: size }, (_, row) => block * size + row)
  return {
    p: rows.map((row) => 1 + ((row * 0.37) % 230)),
    T: rows.map((row) => 5 + ((row * 0.11) % 30)),
    gas: rows.map((row) => gases[row % 3]),
  }
}

function densities({ p, T, gas }) {
  computer ??= rowComputer(plan)
  const columns = { p: Float64Array.from(p), T: Float64Array.from(T), gas }
  const { values, code } = computer.compute({ from: 0, count: p.length, columns, faults: new Map() })
  return gas.map((name, row) => ({ gas: name, density: code[row] === 0 ? values.density[row] : Number.NaN }))
}

function collect(row) {
  found.set(row.gas, row.largest)
  return row
}

const sorted = (map) => [...map].sort(([a], [b]) => (a < b ? -1 : 1))
const collected = () => sorted(found)

function largestAlone(blocks) {
  const largest = new Map()
  for (const { gas, density } of blocks.flatMap(densities)) largest.set(gas, Math.max(largest.get(gas) ?? 0, density))
  return sorted(largest)
}

module.exports = { blockOf, collect, collected, densities, largestAlone, size }
