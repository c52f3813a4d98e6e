import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { version } from '../../src/batch/version.ts'

test('the version that results carry is that of the package', () => {
  expect(version).toBe((JSON.parse(readFileSync('package.json', 'utf8')) as { version: string }).version)
})
