import { build } from 'esbuild'
import { expect, test } from 'vitest'
import * as litrebar from '../../src/index.ts'
import { hasBrowser, openBrowser } from '../browser.ts'

test.skipIf(!hasBrowser('the core in a browser'))(
  'the core loads in a browser and converts as it does in Node',
  async () => {
    const { outputFiles } = await build({
      stdin: { contents: `export * from './src/index.ts'`, resolveDir: process.cwd(), loader: 'ts' },
      bundle: true,
      format: 'iife',
      globalName: 'litrebar',
      target: 'es2022',
      write: false,
    })
    const browser = await openBrowser()
    try {
      const page = await browser.newPage()
      const problems: string[] = []
      page.on('pageerror', (error) => problems.push(error.message))
      page.on('console', (message) => problems.push(message.text()))
      await page.addScriptTag({ content: outputFiles[0]?.text ?? '' })
      expect(await page.evaluate('Object.keys(litrebar).sort()')).toEqual(Object.keys(litrebar).sort())
      const { absolute, bar, inUnit, psi } = litrebar
      expect(await page.evaluate('litrebar.inUnit(litrebar.absolute(3000, litrebar.psi), litrebar.bar)')).toBe(
        inUnit(absolute(3000, psi), bar),
      )
      expect(problems).toEqual([])
    } finally {
      await browser.close()
    }
  },
)
