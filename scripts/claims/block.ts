/** Measured numbers by what they say, such as the label of a row. */
export type Figures = Readonly<Record<string, number>>

/**
 * A table of a page between `<!-- name -->` and `<!-- end -->`, made of what was measured.
 * `quick` does not depend on the speed of the machine and is measured by the checks; `speed` and `long` only on request.
 */
export interface Block {
  readonly page: string
  readonly name: string
  readonly kind: 'quick' | 'speed' | 'long'
  /** The figure measured anew over the stated one: from `1 / band` to `band`. */
  readonly band: number
  readonly measure: () => Figures | Promise<Figures>
  /** The lines of the table. */
  readonly table: (figures: Figures) => readonly string[]
}

/** 12 345 with narrow spaces would not be found by a search: plain ones. */
export function grouped(n: number): string {
  return String(Math.round(n)).replaceAll(/\B(?=(\d{3})+$)/g, ' ')
}

/** Three significant figures, without a power of ten up to a thousand million. */
export function threeFigures(n: number): string {
  return n >= 1000 ? grouped(Number(n.toPrecision(3))) : String(Number(n.toPrecision(3)))
}
