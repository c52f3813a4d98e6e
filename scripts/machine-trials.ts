// Seeded compressors: no number that is none, no negative water, none lost. Usage: npm run script -- machine-trials [machines] [seed]
import { seededRandom } from '../src/uncertainty/index.ts'
import { machineTrial } from '../tests/charging/machine-trial.ts'

const [machines = '1000000', seed = '1'] = process.argv.slice(2)
const random = seededRandom(Number(seed), 0)
const refused: Record<string, number> = {}
let bad = 0
for (let k = 0; k < Number(machines); k++) {
  const end = machineTrial(random)
  if ('refused' in end) refused[end.refused] = (refused[end.refused] ?? 0) + 1
  else if (end.bad.length > 0 && ++bad <= 10) console.log(`machine ${k}: ${end.bad.join('; ')}`)
}
console.log(`${machines} machines: ${bad} bad, refused by name ${JSON.stringify(refused)}`)
process.exitCode = bad === 0 ? 0 : 1
