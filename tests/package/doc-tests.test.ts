import { expect, test } from 'vitest'
import { exampleBlocks, markdownBlocks } from '../../scripts/doc-tests/blocks.ts'
import { agrees, more, Printed } from '../../scripts/doc-tests/check.ts'
import { checkingModule, type PublicName } from '../../scripts/doc-tests/module.ts'

const names = new Map<string, PublicName>([
  ['bar', { from: 'litrebar', isType: false }],
  ['psi', { from: 'litrebar', isType: false }],
  ['Unit', { from: 'litrebar', isType: true }],
  ['explain', { from: 'litrebar/course', isType: false }],
])

function moduleOf(code: string): string {
  return checkingModule({ file: 'page.md', line: 10, code, mark: '' }, names, './check.ts').text
}

test('ts blocks of a page are found with their lines and marks, others are passed over', () => {
  const page = 'text\n```ts\na\nb\n```\n```sh\nnpm ci\n```\n```typescript throws\nc\n```\n'
  expect(markdownBlocks('page.md', page)).toEqual([
    { file: 'page.md', line: 3, code: 'a\nb', mark: '' },
    { file: 'page.md', line: 10, code: 'c', mark: 'throws' },
  ])
})

test('an unknown mark and a block left open are errors with their line', () => {
  expect(() => markdownBlocks('page.md', '\n```ts nocheck\na\n```')).toThrow('page.md:2 has the unknown mark "nocheck"')
  expect(() => markdownBlocks('page.md', '```ts\na')).toThrow('page.md:1')
})

test('examples of doc comments end with the comment or the next tag', () => {
  const source = [
    '/**',
    ' * Text.',
    ' * @example',
    ' * const a = 1',
    ' * a + 1 // => 2',
    ' * @example',
    ' * ```ts throws',
    ' * fail()',
    ' * ```',
    ' * @see other',
    ' */',
    'export const x = "/** @example */"',
    '// @example is only a word here',
  ].join('\n')
  expect(exampleBlocks('a.ts', source)).toEqual([
    { file: 'a.ts', line: 4, code: 'const a = 1\na + 1 // => 2', mark: '' },
    { file: 'a.ts', line: 8, code: 'fail()', mark: 'throws' },
  ])
})

test('examples inside an interface are found, and an empty one is an error', () => {
  const source = 'interface A {\n  /**\n   * @example\n   * a() // => 1\n   */\n  b: number\n}'
  expect(exampleBlocks('a.ts', source)).toEqual([{ file: 'a.ts', line: 4, code: 'a() // => 1', mark: '' }])
  expect(() => exampleBlocks('a.ts', '/**\n * @example\n */\nexport const a = 1')).toThrow('a.ts:2')
})

test('a result behind an expression or a constant is compared at its own line', () => {
  expect(moduleOf('f(1) // => 2')).toContain(`check("page.md:10", f(1), new Printed('2'), "2")`)
  expect(moduleOf('\nconst a = f(1) // => -2.5e3')).toContain(
    `const a = f(1); check("page.md:11", a, new Printed('-2.5e3')`,
  )
  expect(moduleOf(`f(1) // throws range`)).toContain(`checkThrows("page.md:10", () => (f(1)), "range")`)
})

test('an expression over several lines is compared at its last', () => {
  expect(moduleOf('f(\n  1,\n) // => 2')).toContain('check("page.md:12", f(\n  1,\n), new Printed')
})

test('a value may go on below and leave a rest open', () => {
  const text = moduleOf(`f() // => { a: 1,\n// b: [2, …], … }\ng() // => 'x'`)
  expect(text).toContain(`{ a: new Printed('1'), b: [new Printed('2'), more], [more]: true }`)
  expect(text).toContain(`g(), "x"`)
})

test('what looks like a result but is not written as one is an error', () => {
  for (const code of ['f() // 2', 'f() // = 2', 'f() // -> 2', 'f() // => about 2', 'if (a) b() // => 2']) {
    expect(() => moduleOf(code), code).toThrow('page.md:10')
  }
  expect(moduleOf('f() // the pressure')).toContain('f() // the pressure')
})

test('names that a block uses without declaring them are imported from where they are public', () => {
  const header = (code: string): string => moduleOf(code).split('\n')[0] ?? ''
  expect(header('f(bar)')).toContain(`import { bar } from 'litrebar'`)
  expect(header('const u: Unit = explain')).toContain(`import { explain } from 'litrebar/course'`)
  expect(header('const u: Unit = explain')).toContain(
    `import { type Unit } from 'litrebar'`.replace('{ type', 'type {'),
  )
  expect(header('f({ bar })')).toContain('{ bar }')
  expect(header('f({ bar: 1 }); x.psi')).not.toContain('litrebar')
  expect(header('const bar = 1; f(bar)')).not.toContain('litrebar')
  expect(header(`import { bar } from 'other'\nf(bar)`)).not.toContain(`'litrebar'`)
})

test('a printed number is exact, or the rounding of four digits or more behind a point', () => {
  const matches = (text: string, actual: unknown): boolean => new Printed(text).matches(actual)
  expect(matches('0.0015', 0.0015 * (1 + 1e-15))).toBe(true)
  expect(matches('0.0015', 0.00151)).toBe(false)
  expect(matches('206.84', 206.8427)).toBe(true)
  expect(matches('206.84', 206.8451)).toBe(false)
  expect(matches('0.21', 0.2095)).toBe(false)
  expect(matches('1000', 1000.4)).toBe(false)
  expect(matches('-1.234e-3', -0.0012344)).toBe(true)
  expect(matches('1', '1')).toBe(false)
  expect(matches('1', Number.NaN)).toBe(false)
  expect(matches('0', 1e-15)).toBe(false)
})

test('results agree through and through, and only an open rest may hold more', () => {
  const one = new Printed('1')
  expect(agrees({ a: 1, b: ['x'] }, { a: one, b: ['x'] })).toBe(true)
  expect(agrees({ a: 1, b: 2 }, { a: one })).toBe(false)
  expect(agrees({ a: 1, b: 2 }, { a: one, [more]: true })).toBe(true)
  expect(agrees({ b: 2 }, { a: one, [more]: true })).toBe(false)
  expect(agrees({ a: 1, b: undefined }, { a: one })).toBe(true)
  expect(agrees([1, 2], [one])).toBe(false)
  expect(agrees([1, 2], [one, more])).toBe(true)
  expect(agrees(Float64Array.of(1), [one])).toBe(true)
  expect(agrees({ 0: 1, length: 1 }, [one])).toBe(false)
  expect(agrees(undefined, null)).toBe(false)
})
