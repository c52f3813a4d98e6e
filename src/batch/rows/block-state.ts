import { type LitrebarError, type RowCodeName, rowCodes } from '../../errors/index.ts'
import type { RowBlock } from './row-block.ts'

/** Codes and words of a block while it is computed: the first fault of a row counts. */
export class BlockState {
  readonly code: Uint8Array
  readonly errors = new Map<number, string>()

  constructor(block: RowBlock) {
    this.code = new Uint8Array(block.count)
    for (const [row, text] of block.faults) this.fail(row, 'input', text)
  }

  fail(row: number, code: RowCodeName, text: string): void {
    if (this.code[row] !== rowCodes.good) return
    this.code[row] = rowCodes[code]
    this.errors.set(row, text)
  }
}

/** The row code of what a function has thrown. */
export function codeOf({ code, value }: LitrebarError): RowCodeName {
  if (code === 'not-converged') return 'notConverged'
  if (code === 'outside-validity')
    return /liquid|condens|two phases|no gas/.test(value) ? 'condensing' : 'outsideValidity'
  return code === 'range' ? 'outOfRange' : 'input'
}
