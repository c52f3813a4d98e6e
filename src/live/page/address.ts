// The state of a page in its address: `#section?symbol=number&…;section?…`, so that a link carries it.

/** The typed texts of each section, by the names of their numbers. */
export type State = ReadonlyMap<string, ReadonlyMap<string, string>>

/**
 * The fragment for a state.
 *
 * @param state - the changed numbers of each section
 * @returns the fragment with its `#`; empty where nothing is changed
 */
export function fragmentOf(state: State): string {
  const parts = [...state].flatMap(([section, numbers]) => {
    const pairs = [...numbers].map(([name, text]) => `${encodeURIComponent(name)}=${encodeURIComponent(text)}`)
    return pairs.length === 0 ? [] : [`${section}?${pairs.join('&')}`]
  })
  return parts.length === 0 ? '' : `#${parts.join(';')}`
}

/**
 * The state that a fragment carries; what is not of its form is passed over.
 *
 * @param fragment - of the address of the page
 * @returns the changed numbers of each section
 */
export function stateOf(fragment: string): State {
  const parts = fragment.replace(/^#/, '').split(';')
  return new Map(
    parts.flatMap((part) => {
      const [section = '', pairs] = part.split('?')
      if (pairs === undefined) return []
      const numbers = pairs.split('&').flatMap((pair): (readonly [string, string])[] => {
        const [name, text] = pair.split('=').map(decoded)
        return name === undefined || text === undefined ? [] : [[name, text]]
      })
      return [[section, new Map(numbers)] as const]
    }),
  )
}

function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text)
  } catch {
    return undefined
  }
}
