/**
 * A text with its places filled.
 *
 * @param text - such as `Answer in {unit}`
 * @param parts - what stands for each name in braces; a name without a part stays as it is
 * @returns the text
 */
export function filled(text: string, parts: Readonly<Record<string, string>>): string {
  return text.replaceAll(/\{([\p{L}\p{N}_]+)\}/gu, (whole, name: string) =>
    Object.hasOwn(parts, name) ? (parts[name] as string) : whole,
  )
}
