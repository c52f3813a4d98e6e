import { LitrebarError, shown } from '../errors/index.ts'

/** Refuses what is not a whole number. */
export function requireWhole(argument: string, n: number): void {
  if (Number.isSafeInteger(n)) return
  throw new LitrebarError({
    code: 'range',
    argument,
    value: shown(n),
    expected: 'a whole number',
    hint: 'Give a whole number, so that the drawings can be repeated.',
  })
}
