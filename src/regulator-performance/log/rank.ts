/**
 * The value that a share of the others lie below, without a value between two; undefined of none. Finite numbers only. By selection
 * about the value sought: nothing else has to be sorted, and a log asks for many medians.
 */
export function ranked(values: ArrayLike<number>, share: number): number | undefined {
  const rest = new Float64Array(values)
  const wanted = Math.floor(share * rest.length)
  for (let low = 0, high = rest.length - 1; low < high; ) {
    const pivot = rest[wanted] as number
    let i = low
    let j = high
    while (i <= j) {
      while ((rest[i] as number) < pivot) i++
      while (pivot < (rest[j] as number)) j--
      if (i > j) break
      const moved = rest[i] as number
      rest[i++] = rest[j] as number
      rest[j--] = moved
    }
    if (j < wanted) low = i
    if (wanted < i) high = j
  }
  return rest[wanted]
}

/** The upper middle value; undefined of none. */
export function middleOf(values: ArrayLike<number>): number | undefined {
  return ranked(values, 0.5)
}
