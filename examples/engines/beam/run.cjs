// Rows in Apache Beam: elements are blocks of a thousand rows, computed by the row computer of the library; then the largest density of each
// gas. Functions travel to the workers by the name of the package that exports them, so the one used here stands in a module of its own.
// Needs apache-beam 2.49.0. Usage: node run.cjs [blocks]. Run with the direct runner; other runners were not tried.
const beam = require('apache-beam')
const { directRunner } = require('apache-beam/runners/direct_runner')
const { requireForSerialization } = require('apache-beam/serialization')
const { max } = require('apache-beam/transforms/combiners')
const rows = require('./rows.cjs')

requireForSerialization('./rows.cjs', rows)
const count = Number(process.argv[2] ?? 20)
const blocks = Array.from({ length: count }, (_, block) => rows.blockOf(block))

async function main() {
  await directRunner().run((root) =>
    root
      .apply(beam.withName('blocks', beam.create(blocks)))
      .flatMap(beam.withName('density', rows.densities))
      .apply(beam.withName('largest of each gas', beam.groupBy('gas').combining('density', max, 'largest')))
      .map(beam.withName('collect', rows.collect)),
  )
  const wanted = rows.largestAlone(blocks)
  const isSame = JSON.stringify(rows.collected()) === JSON.stringify(wanted)
  console.log(`${count * rows.size} rows in ${count} blocks; ${isSame ? 'the same' : 'DIFFERENT'} as without an engine`)
  process.exit(isSame ? 0 : 1)
}

main()
