/** What went wrong. Closed: a new member is a new minor version. */
export type ErrorCode = 'range' | 'mixture' | 'stamp' | 'unit' | 'not-converged' | 'outside-validity' | 'input'

/** Where in a text the trouble is. Lines and columns count from 0; `end` is the column after the last character. */
export interface TextPosition {
  readonly line: number
  readonly start: number
  readonly end: number
}

/** The numbers behind `expected`, in the unit named, for an application that writes its own sentence. */
export interface AcceptedNumbers {
  readonly above?: number
  readonly atLeast?: number
  readonly below?: number
  readonly atMost?: number
  readonly unit: string
}

/** The facts of an error. Plain data, so that it survives JSON, a batch row and a worker boundary. */
export interface ErrorFacts {
  readonly code: ErrorCode
  /** The parameter as the caller wrote it, with its path: `contents.pressure`. */
  readonly argument: string
  /** What was given, as text in the unit a person would use. */
  readonly value: string
  /** What would have been accepted. */
  readonly expected: string
  /** What to do about it. */
  readonly hint: string
  /** The limits of `expected` as numbers, where there are any. */
  readonly accepted?: AcceptedNumbers
  /** The place in the text, where the value was text. */
  readonly position?: TextPosition
}

/**
 * Every error that litrebar throws. Tell it apart by `code` or by `isLitrebarError`, never by `instanceof`:
 * an application may hold both the ESM and the CommonJS copy of this class.
 */
export class LitrebarError extends Error implements ErrorFacts {
  /** Always `LitrebarError`, in every copy of the class. */
  override readonly name = 'LitrebarError'
  /** What went wrong, from a closed list. */
  declare readonly code: ErrorCode
  /** The parameter as the caller wrote it, with its path. */
  declare readonly argument: string
  /** What was given, as text. */
  declare readonly value: string
  /** What would have been accepted. */
  declare readonly expected: string
  /** What to do about it. */
  declare readonly hint: string
  /** The limits of `expected` as numbers, where there are any. */
  declare readonly accepted?: AcceptedNumbers
  /** The place in the text, where the value was text. */
  declare readonly position?: TextPosition

  /** @param facts - what the error says; the message is written from them */
  constructor(facts: ErrorFacts) {
    super(`${facts.argument} is ${facts.value}, expected ${facts.expected}. ${facts.hint}`)
    Object.assign(this, facts)
  }

  /**
   * The facts and the message as plain data.
   * `JSON.stringify` drops the message of an Error and `structuredClone` drops its fields; this keeps both.
   */
  toJSON(): ErrorFacts & { readonly message: string } {
    return Object.assign({}, this, { message: this.message })
  }
}

/** The error `input` for what is of the wrong kind, missing or not known. */
export function inputError(argument: string, value: string, expected: string, hint: string): LitrebarError {
  return new LitrebarError({ code: 'input', argument, value, expected, hint })
}

/**
 * Whether something caught is an error of litrebar, from whichever copy of the library.
 *
 * @param thrown - anything a `catch` gives
 * @returns true for a `LitrebarError`
 */
export function isLitrebarError(thrown: unknown): thrown is LitrebarError {
  return thrown instanceof Error && thrown.name === 'LitrebarError'
}
