/** The value that a share of the others lie below, without a value between two. A sorted copy of numbers is quicker than one by comparison. */
export function ranked(values: ArrayLike<number>, share: number): number | undefined {
  return Float64Array.from(values).sort()[Math.floor(share * values.length)]
}

/** The upper middle value; undefined of none. */
export function middleOf(values: ArrayLike<number>): number | undefined {
  return ranked(values, 0.5)
}
