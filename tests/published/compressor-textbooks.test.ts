import { compressorTextbooks } from '../fixtures/compressor-textbooks.ts'
import { provePublished } from './prove.ts'

provePublished(
  compressorTextbooks,
  {},
  {
    'stages of a compressor: the charging room is not built': Object.keys(
      compressorTextbooks,
    ) as (keyof typeof compressorTextbooks)[],
  },
)
