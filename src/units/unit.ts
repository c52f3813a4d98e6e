import type { Dimension } from './dimension.ts'

/**
 * A unit: plain data. A quantity in SI is `number × factor + offset`.
 * Add your own as an object of this shape.
 */
export interface Unit<D extends Dimension = Dimension> {
  /** As printed after a number. Empty for the number one. */
  readonly symbol: string
  readonly quantity: D
  /** SI units in one of this unit: the double nearest to `definition`. */
  readonly factor: number
  /** Only temperature scales have one: SI value of their zero. */
  readonly offset?: number
  /** The exact factor as decimal text of products, quotients and whole powers, worked from left to right. */
  readonly definition?: string
  /** The exact offset, likewise. */
  readonly offsetDefinition?: string
  /** What else people write for it. */
  readonly spellings?: readonly string[]
}
