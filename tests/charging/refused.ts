import { isLitrebarError } from '../../src/index.ts'

/** Code and argument of the refusal, or what else happened. */
export function refused(run: () => unknown): string {
  try {
    run()
  } catch (error) {
    return isLitrebarError(error) ? `${error.code} ${error.argument}` : String(error)
  }
  return 'taken'
}

/** Relative difference. */
export function off(found: number, wanted: number): number {
  return Math.abs(found / wanted - 1)
}
