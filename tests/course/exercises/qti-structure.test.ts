import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { type QtiVersion, qtiItem, variantsOf } from '../../../src/course/index.ts'
import { exercises } from './bank-files.ts'

// The fixtures were validated against the schemas of their versions (2.1, 2.2.4, a published profile of 3.0), which may not be shipped.
const suffixes: Readonly<Record<QtiVersion, string>> = { '3.0': 'qti3', '2.2': 'qti22', '2.1': 'qti21' }

/** Each element below its parent, with its attributes. */
function shapesOf(document: string): Map<string, Set<string>> {
  const shapes = new Map<string, Set<string>>()
  const open: string[] = []
  for (const [tag] of document.replaceAll(/<\?[^>]*\?>/g, '').matchAll(/<[^>]+>/g)) {
    if (tag.startsWith('</')) {
      open.pop()
      continue
    }
    const name = /^<([\w:-]+)/.exec(tag)?.[1] ?? ''
    const key = `${open.at(-1) ?? ''} > ${name}`
    const attributes = shapes.get(key) ?? new Set<string>()
    for (const [, attribute = ''] of tag.matchAll(/\s([\w:-]+)="/g)) attributes.add(attribute)
    shapes.set(key, attributes)
    if (!tag.endsWith('/>')) open.push(name)
  }
  return shapes
}

const versions: readonly QtiVersion[] = ['3.0', '2.2', '2.1']
test.each(versions)(
  'QTI %s: elements stand where validated documents have them, with attributes that those have',
  (version) => {
    const known = new Map<string, Set<string>>()
    for (const kind of ['numeric', 'choice']) {
      const text = readFileSync(`tests/fixtures/qti/${kind}.${suffixes[version]}.xml`, 'utf8')
      for (const [key, attributes] of shapesOf(text))
        known.set(key, new Set([...(known.get(key) ?? []), ...attributes]))
    }
    const body = version === '3.0' ? 'qti-item-body' : 'itemBody'
    known.set(`${body} > pre`, new Set()) // a block of the HTML subset in all versions (memory)
    known.set('p > img', new Set(['src', 'alt'])) // both required by the HTML subset in all versions (memory)
    let seen = 0
    for (const exercise of exercises) {
      for (const [key, attributes] of shapesOf(qtiItem(variantsOf(exercise)(2), version))) {
        expect([...known.keys()], exercise.id).toContain(key)
        for (const attribute of attributes)
          expect([...(known.get(key) ?? [])], `${exercise.id}: ${key}`).toContain(attribute)
        seen += 1
      }
    }
    expect(seen).toBeGreaterThan(500)
  },
)
