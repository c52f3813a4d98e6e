// Seeded hostile texts through every writer of text and the parser that reads it: each must come back as it was, with no element,
// attribute, formula or command born. `npm run claims -- --all` makes the trial of 1,000,000 texts and stores it.
// Usage: npm run script -- escaping [count] [seed]
import { escapingTrials } from './claims/escaping.ts'

const results = await escapingTrials(Number(process.argv[2] ?? 100_000), Number(process.argv[3] ?? 2))
for (const [name, { texts, faults }] of Object.entries(results)) {
  console.log(`${name}: ${String(texts)} texts, ${String(faults.length)} faults`)
  for (const fault of faults.slice(0, 12)) console.error(`  ${fault}`)
  if (faults.length > 0) process.exitCode = 1
}
