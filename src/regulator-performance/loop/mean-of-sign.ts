/** Mean over a segment of that part of the pressure that has the given sign; a crossing of zero is cut linearly. */
export function meanOfSign(before: number, after: number, sign: 1 | -1): number {
  const a = before * sign
  const b = after * sign
  if (a >= 0 && b >= 0) return (before + after) / 2
  if (a <= 0 && b <= 0) return 0
  const positive = a > 0 ? a : b
  return (sign * positive * positive) / (2 * Math.abs(a - b))
}
