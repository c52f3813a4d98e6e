// The script of live pages: src/live/page/live-page.ts with everything it needs as one text, and the hash of that text.
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { build } from 'esbuild'
import ts from 'typescript'

/** A page holds the data of the cards that it uses: the script needs their functions and nothing else of them. */
const kept = new Set(['id', 'calls'])

/** A file of cards, every card cut down to what the script needs. */
export function withoutCardData(code, path) {
  const file = ts.createSourceFile(path, code, ts.ScriptTarget.ES2022, true)
  const cuts = file.statements
    .filter((statement) => ts.isVariableStatement(statement))
    .flatMap(({ declarationList }) => [...declarationList.declarations])
    .filter(({ type, initializer }) => type?.getText().startsWith('Card<') && ts.isObjectLiteralExpression(initializer))
    .flatMap(({ initializer }) => [...initializer.properties])
    .filter(({ name }) => name !== undefined && !kept.has(name.getText()))
  let cut = ''
  let at = 0
  for (const property of cuts) {
    cut += code.slice(at, property.getFullStart())
    at = property.getEnd() + (code[property.getEnd()] === ',' ? 1 : 0)
  }
  return cut + code.slice(at)
}

const cards = {
  name: 'cards',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]course[\\/]cards[\\/][^\\/]+\.ts$/ }, ({ path }) => ({
      contents: withoutCardData(readFileSync(path, 'utf8'), path),
      loader: 'ts',
    }))
  },
}

/**
 * Joins the script.
 *
 * @returns {Promise<{ text: string, hash: string }>} its text, as it stands between the tags, and the hash for the content policy
 */
export async function joinedLiveScript() {
  const { outputFiles } = await build({
    entryPoints: ['src/live/page/live-page.ts'],
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    charset: 'utf8',
    write: false,
    logLevel: 'error',
    plugins: [cards],
  })
  const text = outputFiles[0].text.trimEnd()
  return { text, hash: `sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}` }
}

/** The names in src/live/live-script.ts with what the build puts in their places. */
export async function liveScriptDefinitions() {
  const { text, hash } = await joinedLiveScript()
  return { LIVE_PAGE_TEXT: JSON.stringify(text), LIVE_PAGE_HASH: JSON.stringify(hash) }
}
