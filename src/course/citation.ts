import { requireList, requireText } from '../errors/index.ts'
import { type Source, type SourceId, sourceOf, sources } from '../references/index.ts'
import { requireShape } from './require-shape.ts'
import { ownSourceShape } from './shapes.table.ts'

/**
 * A source as one line of text.
 *
 * @param id - id of the registry
 * @param place - section, table or page within the source
 * @returns title, edition, place and publisher; for memory and common practice their plain statement
 * @example
 * citation('gum-2008', 'annex H.1') // => 'JCGM 100, Guide to the expression of uncertainty in measurement, 2008, annex H.1. BIPM.'
 */
export function citation(id: SourceId, place?: string): string {
  return citationOf(sourceOf(id), place)
}

/**
 * Any source, also one of the author’s own, as one line of text.
 *
 * @param source - title, edition, publisher and kind
 * @param place - section, table or page within the source
 * @returns the line
 */
export function citationOf(source: Source, place?: string): string {
  requireShape('source', source, ownSourceShape)
  if (place !== undefined) requireText('place', place)
  const { title, edition, publisher, kind } = source
  if (kind === 'memory' || kind === 'common-practice') return `${title}.`
  if (kind === 'derivation') return `${place === undefined ? title : `${title}: ${place}`}.`
  const what = [title, edition, place].filter((part) => part !== undefined).join(', ')
  return publisher === 'none' ? `${what}.` : `${what}. ${publisher}.`
}

/** The kinds of the registry as entry types of BibTeX. */
const entryTypes = {
  standard: 'techreport',
  regulation: 'misc',
  handbook: 'book',
  paper: 'misc',
  textbook: 'book',
  derivation: 'misc',
  'common-practice': 'misc',
  memory: 'misc',
} as const

/**
 * A source as a BibTeX entry.
 *
 * @param id - id of the registry, which becomes the key
 * @returns the entry
 */
export function bibtex(id: SourceId): string {
  const { title, edition, publisher, kind } = sourceOf(id)
  const year = /\d{4}/.exec(edition)?.[0]
  const fields = {
    title: `{${title}}`,
    ...(year !== undefined && { year }),
    note: edition,
    ...(publisher !== 'none' && { publisher }),
  }
  const lines = Object.entries(fields).map(([field, value]) => `  ${field} = {${value.replace(/[%&#_]/g, '\\$&')}},`)
  return [`@${entryTypes[kind]}{${id},`, ...lines, '}'].join('\n')
}

/**
 * Ids of sources in the order of the registry, each once.
 *
 * @param ids - ids, in any order
 * @returns sorted ids
 */
export function sortedSources(ids: readonly SourceId[]): SourceId[] {
  requireList('ids', ids)
  const wanted = new Set<string>(ids)
  return (Object.keys(sources) as SourceId[]).filter((id) => wanted.has(id))
}
