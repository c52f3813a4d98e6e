import { requireWord } from '../../../errors/index.ts'
import { chartSvg } from '../../chart.ts'
import type { LineChart } from '../../chart-kinds.ts'
import type { ExerciseItem, NumberKey } from '../exercise.ts'
import { exerciseTexts } from '../exercise-text.table.ts'
import { requireItem, requireItems } from '../require-exercise.ts'
import { type QtiDialect, type QtiVersion, qtiDialects } from './qti-dialect.table.ts'
import { type Element, element, xmlDocument } from './xml.ts'

/**
 * One item as QTI. A number is asked for in a named unit, since QTI knows no units; its range is built round the key, which stands
 * first, absolute, and widened by 1e-9 of itself, so that the last accepted figure is not lost in binary arithmetic.
 *
 * @param item - the variant
 * @param version - of QTI: 2.1 is read most widely, 3.0 is current
 * @returns the document
 * @throws LitrebarError `input` for an unknown version, or what is no item
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * const item = exerciseItem(exercise, 7)
 * qtiItem(item, '3.0').includes('<qti-assessment-item') // => true
 */
export function qtiItem(item: ExerciseItem, version: QtiVersion): string {
  requireItem('item', item)
  requireWord('version', version, Object.keys(qtiDialects) as QtiVersion[])
  const dialect = qtiDialects[version]
  return xmlDocument(inDialect(assessmentItem(item, dialect), dialect))
}

/**
 * Items as a QTI package: the files of a folder, or of a zip archive, by their names.
 *
 * @param items - the variants
 * @param version - of QTI
 * @returns manifest and items
 * @throws LitrebarError `input` for an unknown version, or what is no item
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * const item = exerciseItem(exercise, 7)
 * Object.keys(qtiPackage([item], '2.1')).includes('imsmanifest.xml') // => true
 */
export function qtiPackage(items: readonly ExerciseItem[], version: QtiVersion): Readonly<Record<string, string>> {
  requireItems('items', items)
  requireWord('version', version, Object.keys(qtiDialects) as QtiVersion[])
  const dialect = qtiDialects[version]
  const files = items.map((item, index) => ({ name: `item-${String(index + 1)}.xml`, text: qtiItem(item, version) }))
  const manifest = element(
    'manifest',
    { xmlns: dialect.manifestNamespace, identifier: 'manifest-1' },
    element(
      'metadata',
      {},
      element('schema', {}, dialect.manifestSchema),
      element('schemaversion', {}, dialect.manifestVersion),
    ),
    element('organizations'),
    element(
      'resources',
      {},
      ...files.map(({ name }, index) =>
        element(
          'resource',
          { identifier: `resource-${String(index + 1)}`, type: dialect.resourceType, href: name },
          element('file', { href: name }),
        ),
      ),
    ),
  )
  return Object.fromEntries([
    ['imsmanifest.xml', xmlDocument(manifest)],
    ...files.map(({ name, text }) => [name, text] as const),
  ])
}

/** Names of elements of QTI are written with hyphens here; those of HTML begin with `html:`. */
function assessmentItem(item: ExerciseItem, dialect: QtiDialect): Element {
  const typed = item.choices === undefined ? item.number : undefined
  return element(
    'assessment-item',
    {
      xmlns: dialect.namespace,
      'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
      'xsi:schemaLocation': `${dialect.namespace} ${dialect.schema}`,
      identifier: `${item.exercise}-${String(item.seed).replace('-', 'm')}`,
      title: item.exercise,
      adaptive: 'false',
      'time-dependent': 'false',
      'xml:lang': 'en',
    },
    ...(typed === undefined ? chosen(item, dialect) : entered(item, typed, dialect)),
  )
}

function declaration(item: ExerciseItem, baseType: string, values: readonly string[]): Element {
  return element(
    'response-declaration',
    { identifier: 'RESPONSE', cardinality: item.kind === 'several' ? 'multiple' : 'single', 'base-type': baseType },
    element('correct-response', {}, ...values.map((value) => element('value', {}, value))),
  )
}

function outcome(identifier: string, value: string): Element {
  return element(
    'outcome-declaration',
    { identifier, cardinality: 'single', 'base-type': 'float' },
    element('default-value', {}, element('value', {}, value)),
  )
}

function paragraphs({ text, exhibit = [], chart }: ExerciseItem): Element[] {
  return [
    element('html:p', {}, text),
    ...(exhibit.length === 0 ? [] : [element('html:pre', {}, exhibit.join('\n'))]),
    ...(chart === undefined ? [] : [element('html:p', {}, element('html:img', picture(chart)))]),
  ]
}

/** A picture within the item, which all versions allow, and which needs no file beside it. */
function picture(chart: LineChart): { readonly src: string; readonly alt: string } {
  return { src: `data:image/svg+xml,${encodeURIComponent(chartSvg(chart))}`, alt: chart.description }
}

function chosen(item: ExerciseItem, dialect: QtiDialect): Element[] {
  const choices = item.choices ?? []
  return [
    declaration(
      item,
      'identifier',
      choices.flatMap(({ id, right }) => (right ? [id] : [])),
    ),
    outcome('SCORE', '0'),
    element(
      'item-body',
      {},
      ...paragraphs(item),
      element(
        'choice-interaction',
        { 'response-identifier': 'RESPONSE', shuffle: 'false', 'max-choices': item.kind === 'several' ? '0' : '1' },
        ...choices.map(({ id, text }) => element('simple-choice', { identifier: id }, text)),
      ),
    ),
    element('response-processing', { template: dialect.matchCorrect }),
  ]
}

function entered(item: ExerciseItem, key: NumberKey, { hyphens }: QtiDialect): Element[] {
  const tolerance = exact(key.tolerance.total * (1 + 1e-9))
  const set = (identifier: string, baseType: string, value: string): Element =>
    element('set-outcome-value', { identifier }, element('base-value', { 'base-type': baseType }, value))
  const equalTo = (first: Element): Element =>
    element(
      'equal',
      {
        'tolerance-mode': 'absolute',
        tolerance: `${tolerance} ${tolerance}`,
        'include-lower-bound': 'true',
        'include-upper-bound': 'true',
      },
      first,
      element('variable', { identifier: 'RESPONSE' }),
    )
  const feedback = (identifier: string, lines: readonly string[]): Element => {
    const content = lines.map((line) => element('html:p', {}, line))
    return element(
      'modal-feedback',
      { 'outcome-identifier': 'FEEDBACK', identifier, 'show-hide': 'show' },
      ...(hyphens ? [element('content-body', {}, ...content)] : content),
    )
  }
  return [
    declaration(item, 'float', [exact(key.value)]),
    outcome('SCORE', '0'),
    outcome('MAXSCORE', '1'),
    element('outcome-declaration', { identifier: 'FEEDBACK', cardinality: 'single', 'base-type': 'identifier' }),
    element(
      'item-body',
      {},
      ...paragraphs(item),
      element(
        'html:p',
        {},
        element('text-entry-interaction', {
          'response-identifier': 'RESPONSE',
          'expected-length': '10',
          'pattern-mask': '[\\-+]?[0-9]+([.][0-9]+)?',
        }),
        ` ${key.unit}`,
      ),
    ),
    element(
      'response-processing',
      {},
      element(
        'response-condition',
        {},
        element(
          'response-if',
          {},
          element('is-null', {}, element('variable', { identifier: 'RESPONSE' })),
          set('SCORE', 'float', '0'),
        ),
        element(
          'response-else-if',
          {},
          equalTo(element('correct', { identifier: 'RESPONSE' })),
          set('SCORE', 'float', '1'),
          set('FEEDBACK', 'identifier', 'correct'),
        ),
        ...key.distractors.map(({ value }, index) =>
          element(
            'response-else-if',
            {},
            equalTo(element('base-value', { 'base-type': 'float' }, exact(value))),
            set('FEEDBACK', 'identifier', `error-${String(index + 1)}`),
          ),
        ),
      ),
    ),
    feedback('correct', [exerciseTexts.correct, ...item.working]),
    ...key.distractors.map(({ says }, index) => feedback(`error-${String(index + 1)}`, [`${says}.`])),
  ]
}

/** As exact as a double, without an exponent where the number is of usual size. */
function exact(value: number): string {
  return String(value)
}

function inDialect({ name, attributes, children }: Element, dialect: QtiDialect): Element {
  const isHtml = name.startsWith('html:')
  const camel = (text: string): string => text.replaceAll(/-([a-z])/g, (_, letter: string) => letter.toUpperCase())
  return {
    name: isHtml ? name.slice('html:'.length) : dialect.hyphens ? `qti-${name}` : camel(name),
    attributes: dialect.hyphens
      ? attributes
      : Object.fromEntries(Object.entries(attributes).map(([key, value]) => [camel(key), value])),
    children: children.map((child) => (typeof child === 'string' ? child : inDialect(child, dialect))),
  }
}
