/** A place in a file; lines and columns count from 1. */
interface Position {
  readonly line: number
  readonly column: number
}

/** One small fault, and what the tests made of it. */
export interface Mutant {
  readonly id: string
  /** From the root of the project. */
  readonly file: string
  readonly mutatorName: string
  readonly replacement: string
  /** `Ignored`: not tried, a sentence or what runs once at loading. */
  status: 'Killed' | 'Timeout' | 'Survived' | 'NoCoverage' | 'Ignored' | 'Pending'
  readonly location: { readonly start: Position; readonly end: Position }
}
