/** Where a command writes: results to one place, everything else to the other. */
export interface Console {
  readonly out: (text: string) => void
  readonly say: (text: string) => void
  /** Text made bold where a terminal shows it. */
  readonly bold: (text: string) => string
}

/** How a command ended. */
export const exit = { done: 0, failed: 1, wrongUse: 2, differences: 3 } as const

/** Wrong use of a command: said in one sentence, then the command ends. */
export class WrongUse extends Error {
  override readonly name = 'WrongUse'
}
