// Seeded dives, reserves and turns against gas counted step by step: the worst of each, and in which dive.
// Usage: npm run script -- dive-trials [dives] [seed] [ideal|real] [first dive]
import { allowed, diveTrial } from '../tests/consumption/trials/dive-trial.ts'

const [dives = '100000', seed = '1', law = 'ideal', first = '0'] = process.argv.slice(2)
const worst = new Map<string, { value: number; index: number; count: number }>()
for (let index = Number(first); index < Number(first) + Number(dives); index++) {
  for (const [what, value] of Object.entries(diveTrial(Number(seed), index, law === 'real' ? 'real' : 'ideal'))) {
    const before = worst.get(what)
    const count = (before?.count ?? 0) + 1
    worst.set(what, before !== undefined && before.value >= value ? { ...before, count } : { value, index, count })
  }
}
for (const [what, most] of Object.entries(allowed)) {
  const found = worst.get(what)
  const holds = found !== undefined && found.value <= most
  if (!holds) process.exitCode = 1
  const where =
    found === undefined ? 'never compared' : `${found.value.toPrecision(4)} in dive ${found.index} of ${found.count}`
  console.log(`${holds ? '   ' : 'OFF'} ${what.padEnd(60)} ${where}, allowed ${most}`)
}
