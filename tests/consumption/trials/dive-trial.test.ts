import { expect, test } from 'vitest'
import { allowed, diveTrials } from './dive-trial.ts'

// The long form: npm run script -- dive-trials 100000
test.each([
  ['ideal', 200],
  ['real', 25],
] as const)('dives, reserves and turns agree with gas counted step by step: %s gas', (law, dives) => {
  const found = diveTrials(dives, 2026, law)
  for (const [what, most] of Object.entries(allowed))
    expect(found[what as keyof typeof allowed], what).toBeLessThanOrEqual(most)
})
