import type { Random } from '../../uncertainty/index.ts'

/**
 * The same in an order of chance, each order as likely as the others.
 *
 * @param list - anything
 * @param random - where chance comes from
 * @returns a new list
 */
export function shuffled<T>(list: readonly T[], random: Random): T[] {
  const mixed = [...list]
  for (let last = mixed.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1))
    ;[mixed[last], mixed[other]] = [mixed[other] as T, mixed[last] as T]
  }
  return mixed
}

/**
 * One of a list, each as likely as the others.
 *
 * @param list - at least one
 * @param random - where chance comes from
 * @returns the one drawn
 */
export function oneOf<T>(list: readonly T[], random: Random): T {
  return list[Math.floor(random() * list.length)] as T
}

/**
 * A whole number from low to high, both included.
 *
 * @param low - least
 * @param high - greatest
 * @param random - where chance comes from
 * @returns the number
 */
export function wholeNumber(low: number, high: number, random: Random): number {
  return low + Math.floor(random() * (high - low + 1))
}
