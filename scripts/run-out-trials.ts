// Run-out times of seeded dives against a count of seconds. Usage: npm run script -- run-out-trials [dives] [seed] [ideal|real]
import { seededRandom } from '../src/uncertainty/index.ts'
import { againstSeconds, seededDive } from '../tests/consumption/use/seeded-dives.ts'

const [dives = '100000', seed = '1', gas = 'ideal'] = process.argv.slice(2)
const random = seededRandom(Number(seed), 0)
let apart = 0
let least = Infinity
let ends = 0
for (let k = 0; k < Number(dives); k++) {
  const found = againstSeconds(seededDive(random), gas === 'real' ? 'real' : 'ideal')
  apart = Math.max(apart, found.apart)
  least = Math.min(least, found.least)
  if (found.runsOut) ends++
}
console.log(
  `${dives} dives, ${ends} of them run out: at most ${apart.toFixed(3)} s apart, at least ${least.toFixed(4)} ${gas === 'real' ? 'mol/m³' : 'Pa'} above ambient`,
)
process.exitCode = apart <= 1.000001 && least > -1e-3 ? 0 : 1
