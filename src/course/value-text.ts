import { type NumberStyle, withNumberStyle } from '../units/index.ts'
import { quantityText } from './quantity-text.ts'

/** A number and its unit, held together by a narrow no-break space. */
export function valueText(
  { text, unit }: { readonly text: string; readonly unit: string },
  style: NumberStyle,
): string {
  return quantityText(withNumberStyle(text, style), unit)
}
