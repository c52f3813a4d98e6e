import { readdirSync } from 'node:fs'
import { Linter } from 'eslint'
import tseslint from 'typescript-eslint'
import { expect, test } from 'vitest'
import layers from '../../layers.json' with { type: 'json' }
import plugin, { layerFault } from '../../scripts/layer-rule.mjs'

const fault = (from: string, specifier: string, typeOnly = false): string | undefined =>
  layerFault(layers, from, specifier, typeOnly)

test('every room on disk stands in exactly one layer', () => {
  const rooms = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory())
  const listed = [...layers.core, ...layers.outer].flat()
  expect(new Set(listed).size).toBe(listed.length)
  for (const { name } of rooms) expect(listed).toContain(name)
})

test('a room may import rooms before it, and nothing else', () => {
  expect(fault('cylinder/a.ts', '../gas-law/index.ts')).toBeUndefined()
  expect(fault('cylinder/a.ts', './b.table.ts')).toBeUndefined()
  expect(fault('cylinder/filling/a.ts', '../b.ts')).toBeUndefined()
  expect(fault('gas-law/a.ts', '../cylinder/index.ts')).toContain('comes later')
  expect(fault('gas-law/a.ts', '../cylinder/index.ts', true)).toContain('comes later')
  expect(fault('gauges/a.ts', '../consumption/index.ts')).toContain('siblings')
  expect(fault('gauges/a.ts', '../index.ts')).toContain('root')
  expect(fault('gauges/a.ts', '../attic/index.ts')).toContain('layers.json')
  expect(fault('attic/a.ts', '../units/index.ts')).toContain('layers.json')
  expect(fault('gauges/a.ts', '../units/index')).toContain('suffix')
  expect(fault('gauges/a.ts', '../../tests/a.ts')).toContain('leaves src')
})

test('the core imports the registry by type only, the rooms around it as they like', () => {
  expect(fault('units/a.ts', '../references/sources.ts', true)).toBeUndefined()
  expect(fault('gas-law/a.ts', '../references/sources.ts')).toContain('by type only')
  expect(fault('gas-law/a.ts', '../references/index.ts')).toContain('by type only')
  expect(fault('gas-law/a.ts', '../references/assessment.ts')).toBeUndefined()
  expect(fault('course/a.ts', '../references/sources.ts')).toBeUndefined()
  expect(fault('references/index.ts', './sources.ts')).toBeUndefined()
})

test('only the rooms that layers.json names may import a package or Node', () => {
  expect(fault('units/a.ts', 'decimal.js')).toContain('no package')
  expect(fault('units/exact.ts', 'decimal.js')).toBeUndefined()
  expect(fault('gas-law/a.ts', 'node:fs')).toContain('no package')
  expect(fault('batch/a.ts', 'node:fs')).toBeUndefined()
  expect(fault('batch/a.ts', 'hyparquet/src/node.js')).toBeUndefined()
  expect(fault('batch/a.ts', 'hyparquets')).toContain('no package')
})

test('the root gives core rooms only', () => {
  expect(fault('index.ts', './units/index.ts')).toBeUndefined()
  expect(fault('index.ts', './course/index.ts')).toContain('core rooms')
  expect(fault('index.ts', './references/index.ts')).toBeUndefined()
})

function complaints(filename: string, code: string): string[] {
  const config = [
    {
      files: ['**/*.ts'],
      languageOptions: { parser: tseslint.parser },
      plugins: { layers: plugin },
      rules: { 'layers/arrows': ['error', layers], 'layers/index-only-reexports': 'error' },
    } satisfies Linter.Config,
  ]
  return new Linter().verify(code, config, { filename }).map(({ message }) => message)
}

test('the lint rule sees every way to import', () => {
  const later = "'../cylinder/index.ts'"
  for (const code of [
    `import { a } from ${later}`,
    `import ${later}`,
    `import type { A } from ${later}`,
    `export { a } from ${later}`,
    `export * from ${later}`,
    `void import(${later})`,
    `type A = import(${later}).A`,
  ]) {
    expect(complaints('src/gas-law/a.ts', code), code).toEqual([expect.stringContaining('comes later')])
  }
  expect(complaints('src/gas-law/a.ts', `import { type A, type B } from '../references/sources.ts'`)).toEqual([])
  expect(complaints('src/gas-law/a.ts', `import { type A, b } from '../references/sources.ts'`)).toHaveLength(1)
  expect(complaints('src/gas-law/a.ts', 'void import(name)')).toEqual([expect.stringContaining('literal')])
})

test('zod is imported as a namespace, since its named export defeats tree shaking', () => {
  expect(complaints('src/schemas/a.ts', `import * as z from 'zod'`)).toEqual([])
  expect(complaints('src/schemas/a.ts', `import type { ZodType } from 'zod'`)).toEqual([])
  expect(complaints('src/schemas/a.ts', `import { z } from 'zod'`)).toEqual([expect.stringContaining('import * as')])
})

test('an index only re-exports, by name', () => {
  expect(complaints('src/units/index.ts', `export { a } from './a.ts'\nexport type { A } from './a.ts'`)).toEqual([])
  expect(complaints('src/index.ts', `export * from './units/index.ts'`)).toEqual([])
  for (const code of ['export const a = 1', `import './a.ts'`, `export * from './a.ts'`]) {
    expect(complaints('src/units/index.ts', code), code).toEqual([expect.stringContaining('only re-exports')])
  }
})
