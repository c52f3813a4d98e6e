// Property tests draw new inputs at every run on a developer's machine, and the same ones where a change is judged: a red run there is the change's.
// PROPERTY_SEED=<number> repeats a run.
import { configureGlobal } from 'fast-check'

const stated = process.env['PROPERTY_SEED'] ?? (process.env['CI'] === 'true' ? '20261125' : undefined)
if (stated !== undefined) configureGlobal({ seed: Number(stated) })
