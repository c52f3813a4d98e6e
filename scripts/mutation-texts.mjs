// A text with a space in it is a sentence for people; Stryker is told to leave it alone. Codes, ids and closed words have none.
const reason = 'sentence'

const sentences = {
  shouldIgnore(path) {
    if (path.isStringLiteral()) return path.node.value.includes(' ') ? reason : undefined
    if (path.isTemplateElement()) return path.node.value.raw.includes(' ') ? reason : undefined
    return undefined
  },
}

export const strykerPlugins = [{ kind: 'Ignore', name: 'sentences', value: sentences }]
