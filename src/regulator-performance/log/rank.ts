/**
 * The value that a share of the others lie below, without a value between two; undefined of none. Finite numbers only. By selection
 * about a middle value: nothing else has to be sorted, and a log asks for many medians.
 */
export function ranked(values: ArrayLike<number>, share: number): number | undefined {
  const rest = new Float64Array(values)
  const wanted = Math.floor(share * rest.length)
  let low = 0
  let high = rest.length - 1
  while (low < high) {
    const pivot = rest[(low + high) >> 1] as number
    let [i, j] = [low, high]
    while (i <= j) {
      while ((rest[i] as number) < pivot) i++
      while ((rest[j] as number) > pivot) j--
      if (i > j) break
      const moved = rest[i] as number
      rest[i++] = rest[j] as number
      rest[j--] = moved
    }
    // between the two parts all values equal the pivot
    if (wanted <= j) high = j
    else if (wanted >= i) low = i
    else break
  }
  return rest[wanted]
}

/** The upper middle value; undefined of none. */
export function middleOf(values: ArrayLike<number>): number | undefined {
  return ranked(values, 0.5)
}
