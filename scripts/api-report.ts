// Compares the public interface of every entry point with its report under api/, so that a change of it is seen in review.
// Usage: npm run api (compare), npm run api -- --write (after a change that is meant)
import { existsSync, mkdirSync, rmSync } from 'node:fs'
import { resolve } from 'node:path'
import { Extractor, ExtractorConfig, ExtractorLogLevel } from '@microsoft/api-extractor'
import { builtFile, entries } from './entries.ts'
import { filesIn } from './files-in.ts'

const isWriting = process.argv.includes('--write')
const projectFolder = process.cwd()
const silent = { logLevel: ExtractorLogLevel.None }

// The root is left out: it gives what the core rooms give, and a test says so.
const sources = entries()
const names = Object.keys(sources).filter((name) => name !== 'index')
const typesOf = (name: string): string => builtFile(sources[name] ?? '', '.d.ts')
const reportOf = (name: string): string => `${name.replaceAll('/', '-')}.api.md`
const known = new Set(names.map((name) => `api/${reportOf(name)}`))
const stale = filesIn('api', '.api.md').filter((path) => !known.has(path))
if (isWriting) for (const path of stale) rmSync(path)

const unbuilt = names.filter((name) => !existsSync(typesOf(name)))
if (unbuilt.length > 0) {
  console.error(`API: ${unbuilt.join(', ')} not built. Run npm run build first.`)
  process.exit(1)
}

mkdirSync('api', { recursive: true })
const changed = names.filter((name) => {
  const config = ExtractorConfig.prepare({
    configObject: {
      projectFolder,
      mainEntryPointFilePath: `<projectFolder>/${typesOf(name)}`,
      compiler: { tsconfigFilePath: '<projectFolder>/tsconfig.test.json' },
      apiReport: {
        enabled: true,
        reportFolder: '<projectFolder>/api/',
        reportTempFolder: '<projectFolder>/.cache/api/',
        reportFileName: reportOf(name),
      },
      docModel: { enabled: false },
      dtsRollup: { enabled: false },
      tsdocMetadata: { enabled: false },
      // Comments and forgotten exports are the business of typedoc, which sees all rooms at once.
      messages: {
        compilerMessageReporting: { default: { logLevel: ExtractorLogLevel.Error } },
        extractorMessageReporting: { default: silent },
        tsdocMessageReporting: { default: silent },
      },
    },
    configObjectFullPath: resolve('api-extractor.json'),
    packageJsonFullPath: resolve('package.json'),
  })
  const result = Extractor.invoke(config, {
    localBuild: isWriting,
    messageCallback: (message) => {
      message.handled = message.logLevel !== ExtractorLogLevel.Error
    },
  })
  return result.apiReportChanged
})

if (isWriting) {
  console.log(`API: ${names.length} reports, ${changed.length} of them new or changed.`)
} else if (changed.length + stale.length > 0) {
  console.error(`API: the public interface differs from api/ in ${[...changed, ...stale].join(', ')}.`)
  console.error('If that is meant, run npm run api -- --write, and say in CHANGELOG.md what users must know.')
  process.exitCode = 1
} else {
  console.log(`API: ${names.length} reports agree with the build.`)
}
