/** What is asked of a piece of syntax, as the instrumenter hands it over. */
interface Syntax {
  readonly isStringLiteral: () => boolean
  readonly isTemplateElement: () => boolean
  readonly node: { readonly value: string | { readonly raw: string } }
}

/** A text with a space in it is a sentence for people, and is left alone. Codes, ids and closed words have none. */
export const sentences = {
  shouldIgnore(syntax: Syntax): string | undefined {
    if (!syntax.isStringLiteral() && !syntax.isTemplateElement()) return undefined
    const { value } = syntax.node
    const text = typeof value === 'string' ? value : value.raw
    return text.includes(' ') ? 'sentence' : undefined
  },
}
