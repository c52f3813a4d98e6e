// What a worker thread runs: some of the rows of one column function.
import { type ErrorFacts, isLitrebarError } from '../../errors/index.ts'
import { type ColumnFunctionName, columnFunctions } from './column-function.table.ts'

/** Some rows of a calculation: plain data and shared memory. */
export interface ColumnTask {
  readonly name: ColumnFunctionName
  readonly out: unknown
  readonly columns: unknown
  readonly options: unknown
  readonly from: number
  readonly to: number
}

/** Computes the rows. An error of the library comes back as its facts, which a thrown error would lose on the way. */
export default async function columnPart(task: ColumnTask): Promise<ErrorFacts | undefined> {
  const { name, out, columns, options, from, to } = task
  const fn = await columnFunctions[name]()
  try {
    fn(out, columns, options, from, to)
    return undefined
  } catch (thrown) {
    if (isLitrebarError(thrown)) return thrown.toJSON()
    throw thrown
  }
}
