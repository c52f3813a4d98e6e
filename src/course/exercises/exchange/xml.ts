import { escaped } from '../../escape.ts'

/** An element: its name, its attributes, and what stands in it. */
export interface Element {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: readonly (Element | string)[]
}

/**
 * An element.
 *
 * @param name - its name
 * @param attributes - its attributes
 * @param children - elements and texts in it
 * @returns the element as data
 */
export function element(
  name: string,
  attributes: Readonly<Record<string, string>> = {},
  ...children: readonly (Element | string)[]
): Element {
  return { name, attributes, children }
}

/**
 * An element as XML. Texts are escaped, and characters that XML does not allow are left out.
 *
 * @param root - the element
 * @returns the document, with its declaration
 */
export function xmlDocument(root: Element): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root)}\n`
}

function written({ name, attributes, children }: Element): string {
  const head = Object.entries(attributes).map(([key, value]) => ` ${key}="${attributeText(value)}"`)
  const inner = children.map((child) => (typeof child === 'string' ? allowed(child) : written(child))).join('')
  return inner === '' ? `<${name}${head.join('')}/>` : `<${name}${head.join('')}>${inner}</${name}>`
}

/** A parser of XML reads line ends and tabs of an attribute as spaces. */
function attributeText(value: string): string {
  return allowed(value).replaceAll('\n', '&#10;').replaceAll('\t', '&#9;')
}

function allowed(text: string): string {
  return escaped(text.replaceAll(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, ''))
}
