// What a documented result must meet when the documentation is run.
import { inspect } from 'node:util'

/** A number as it stands in the documentation. */
export class Printed {
  readonly text: string
  constructor(text: string) {
    this.text = text
  }

  /**
   * A decimal number of four significant digits or more stands for its rounding: it may be off by half of its last
   * digit. Any other is exact, but for the noise of binary fractions.
   */
  matches(actual: unknown): boolean {
    const printed = Number(this.text.replaceAll('_', ''))
    if (typeof actual !== 'number') return false
    const [mantissa = '', exponent = '0'] = this.text.toLowerCase().replaceAll('_', '').split('e')
    const decimals = mantissa.split('.')[1]?.length ?? 0
    const significant = mantissa.replace(/[-.]/g, '').replace(/^0+/, '').length
    const half = decimals > 0 && significant >= 4 ? 0.5 * 10 ** (Number(exponent) - decimals) : 0
    return Math.abs(actual - printed) <= half + 1e-12 * Math.abs(printed)
  }
}

/** Put last in a documented object or array: more may follow. */
export const more = Symbol('and more')

/** Whether a result is what the documentation says: numbers by {@link Printed}, everything else equal through and through. */
export function agrees(actual: unknown, expected: unknown): boolean {
  if (expected instanceof Printed) return expected.matches(actual)
  if (typeof expected !== 'object' || expected === null) return Object.is(actual, expected)
  if (typeof actual !== 'object' || actual === null) return false
  if (Array.isArray(expected)) {
    const isOpen = expected.at(-1) === more
    const wanted: unknown[] = isOpen ? expected.slice(0, -1) : expected
    const given = ArrayBuffer.isView(actual) ? Array.from(actual as Float64Array) : actual
    if (!Array.isArray(given) || (isOpen ? given.length < wanted.length : given.length !== wanted.length)) return false
    return wanted.every((each, index) => agrees(given[index], each))
  }
  const given = new Map(Object.entries(actual).filter(([, value]) => value !== undefined))
  const wanted = Object.entries(expected).filter(([, value]) => value !== undefined)
  const isOpen = more in expected
  if (isOpen ? given.size < wanted.length : given.size !== wanted.length) return false
  return wanted.every(([name, value]) => given.has(name) && agrees(given.get(name), value))
}

const failures: string[] = []
const count = { blocks: 0, results: 0 }

/** Notes a documented result; the words are those of the documentation. */
export function check(place: string, actual: unknown, expected: unknown, words: string): void {
  count.results++
  if (!agrees(actual, expected)) failures.push(`${place} says ${words}, but gives ${inspect(actual, { depth: 6 })}`)
}

/** Notes a documented error: `code` is its code, or the beginning of its name or message. */
export function checkThrows(place: string, act: () => unknown, code: string): void {
  count.results++
  try {
    const result = act()
    failures.push(`${place} says that it throws ${code}, but it gives ${inspect(result)}`)
  } catch (error) {
    const { code: actual, name, message } = error as { code?: string; name: string; message: string }
    if (actual !== code && name !== code && !message.startsWith(code)) {
      failures.push(`${place} says that it throws ${code}, but it throws ${actual ?? name}: ${message}`)
    }
  }
}

/** Runs a block; what it throws is a failure, unless it is marked so. */
export async function block(place: string, isToThrow: boolean, body: () => Promise<void>): Promise<void> {
  count.blocks++
  try {
    await body()
    if (isToThrow) failures.push(`${place} is marked throws, but nothing is thrown`)
  } catch (error) {
    if (!isToThrow) failures.push(`${place} throws ${inspect(error)}`)
  }
}

/** Prints what was found; says by the exit code whether the documentation is true. */
export function finish(): void {
  for (const failure of failures) console.error(failure)
  console.log(`Documentation: ${count.blocks} blocks run, ${count.results} results compared, ${failures.length} false.`)
  if (failures.length > 0) process.exitCode = 1
}
