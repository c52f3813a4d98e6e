/**
 * A number and the symbol of its unit, held together by a narrow no-break space; degrees of an angle stand without one.
 *
 * @param text - the number
 * @param unit - symbol of the unit, empty for a pure number
 * @returns both
 */
export function quantityText(text: string, unit: string): string {
  return unit === '' || unit === '°' ? text + unit : `${text}\u202f${unit}`
}
