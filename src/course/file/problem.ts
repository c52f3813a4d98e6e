import { isLitrebarError, nearestOf } from '../../errors/index.ts'

/** Something in a text file that its author must mend. */
export interface Problem {
  readonly file: string
  /** Line in the file, from 1. */
  readonly line: number
  /** What is wrong and what to do, in one or two sentences. */
  readonly message: string
}

/** Collects what is wrong with one file, so that an author sees everything at once. */
export class Problems {
  readonly #file: string
  readonly #found: Problem[] = []

  /** @param file - name of the file, as the author knows it */
  constructor(file: string) {
    this.#file = file
  }

  /** Notes a problem at a line. */
  add(line: number, message: string): void {
    this.#found.push({ file: this.#file, line, message })
  }

  /** Runs a piece of work; an error of the library becomes a problem at the line, anything else is thrown on. */
  attempt<Result>(line: number, work: () => Result): Result | undefined {
    try {
      return work()
    } catch (error) {
      if (!isLitrebarError(error)) throw error
      this.add(line, error.message)
      return undefined
    }
  }

  /** Everything noted so far, in the order of the lines. */
  inOrder(): readonly Problem[] {
    return this.#found.toSorted((a, b) => a.line - b.line)
  }
}

/** The sentence about a word that is none of the known ones. */
export function unknownWord(what: string, word: string, known: readonly string[]): string {
  const near = nearestOf(word, known)
  const hint =
    near === undefined
      ? known.length <= 14
        ? `Known are: ${known.join(', ')}.`
        : 'See `litrebar list`.'
      : `Did you mean "${near}"?`
  return `"${word}" is no ${what}. ${hint}`
}
