// Solves very many random states of random mixtures and proves each: no error, no NaN, the pressure comes back within
// 1e-12, the isotherm rises at the root, and the root is the first one on the way up from nothing.
// Usage: npm run script -- gas-sweep [states] [seed] [seconds]; workers share the seeds out among themselves.
import { availableParallelism } from 'node:os'
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads'
import { type SweepResult, sweep } from '../tests/gas-law/equation/sweep.ts'

interface Task {
  readonly seeds: readonly number[]
  readonly statesPerMixture: number
  readonly until: number
}

const mixturesPerSeed = 10

if (isMainThread) {
  const [states = '1e8', firstSeed = '1', seconds = '36000'] = process.argv.slice(2)
  const statesPerMixture = 10_000
  const seedCount = Math.ceil(Number(states) / statesPerMixture / mixturesPerSeed)
  const workers = availableParallelism()
  const until = Date.now() + Number(seconds) * 1000
  const began = Date.now()
  const results = await Promise.all(
    Array.from({ length: workers }, (_, worker) => {
      const seeds = Array.from({ length: seedCount }, (_, k) => Number(firstSeed) + k).filter(
        (_, k) => k % workers === worker,
      )
      const task: Task = { seeds, statesPerMixture, until }
      return new Promise<SweepResult[]>((resolve, reject) => {
        // the bundle itself, not the source that argv names
        const thread = new Worker(new URL(import.meta.url), { workerData: task })
        thread.on('message', resolve)
        thread.on('error', reject)
      })
    }),
  )
  const all = results.flat()
  const sum = (of: (result: SweepResult) => number): number => all.reduce((total, result) => total + of(result), 0)
  console.log(
    `${sum((r) => r.states)} states of ${sum((r) => r.mixtures)} mixtures in ${(Date.now() - began) / 1000} s`,
  )
  console.log(`largest pressure residual ${Math.max(...all.map((r) => r.largestResidual)).toExponential(2)}`)
  console.log(`refused because carbon dioxide condenses: ${sum((r) => r.condensed)}`)
  console.log(`of which outside the corner where it can: ${sum((r) => r.condensedUnexpectedly)}`)
  console.log(`failed: ${sum((r) => r.failures)}, wrong roots: ${sum((r) => r.wrongRoots)}`)
  for (const { examples } of all) for (const example of examples.slice(0, 3)) console.log(example)
  process.exitCode = sum((r) => r.failures + r.wrongRoots + r.condensedUnexpectedly) === 0 ? 0 : 1
} else {
  const { seeds, statesPerMixture, until } = workerData as Task
  const results: SweepResult[] = []
  for (const seed of seeds) {
    if (Date.now() > until) break
    results.push(sweep({ seed, mixtures: mixturesPerSeed, statesPerMixture }))
  }
  parentPort?.postMessage(results)
}
