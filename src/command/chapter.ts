import { spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, dirname, extname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { parseArgs } from 'node:util'
import {
  type Chapter,
  type ChapterFile,
  type CourseOptions,
  type CoursePart,
  chapterHtml,
  chapterLatex,
  chapterMarkdown,
  chapterText,
  coursePages,
  readChapter,
} from '../course/index.ts'
import { nearestOf } from '../errors/index.ts'
import { german } from '../german/index.ts'
import { liveScript } from '../live/index.ts'
import { claimLines, sayProblems } from './claims.ts'
import { type Console, exit, WrongUse } from './console.ts'
import { watchChapters } from './watch.ts'

const options = {
  as: { type: 'string', default: 'html' },
  into: { type: 'string' },
  title: { type: 'string' },
  live: { type: 'boolean', default: false },
  replace: { type: 'boolean', default: false },
  check: { type: 'boolean', default: false },
  watch: { type: 'boolean', default: false },
} as const

interface Writing {
  readonly suffix: string
  readonly write: (chapter: Chapter, style: ChapterFile['style']) => string
}

const writers = {
  html: { suffix: '.html', write: (chapter, style) => chapterHtml(chapter, { ...style, live: liveScript }) },
  pdf: { suffix: '.pdf', write: chapterHtml },
  markdown: { suffix: '.markdown', write: chapterMarkdown },
  latex: { suffix: '.tex', write: chapterLatex },
  text: { suffix: '.txt', write: chapterText },
} as const satisfies Readonly<Record<string, Writing>>

type Format = keyof typeof writers

interface Job {
  readonly format: Format
  readonly into: string | undefined
  readonly title: string | undefined
  readonly live: boolean
  readonly replace: boolean
  readonly check: boolean
}

/** `litrebar chapter`: files of text to pages. */
export async function chapterCommand(args: readonly string[], console: Console): Promise<number> {
  const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options })
  if (positionals.length === 0) throw new WrongUse('Name a chapter or a folder of chapters.')
  if (!Object.hasOwn(writers, values.as)) {
    const near = nearestOf(values.as, Object.keys(writers))
    throw new WrongUse(
      `"${values.as}" is none of ${Object.keys(writers).join(', ')}.${near === undefined ? '' : ` Did you mean "${near}"?`}`,
    )
  }
  const job: Job = {
    format: values.as as Format,
    into: values.into,
    title: values.title,
    live: values.live,
    replace: values.replace,
    check: values.check,
  }
  const run = (): number => Math.max(...positionals.map((path) => made(path, job, console)))
  const code = run()
  if (!values.watch) return code
  console.say('Watching. End with Ctrl+C.')
  const again = { ...job, replace: true } // the files are ours by now
  let last = code
  const stop = watchChapters(positionals, (path) => {
    try {
      last = made(path, again, console)
    } catch (error) {
      // a file that is away for a moment, a full disk: the next save may mend it
      last = exit.failed
      console.say(error instanceof Error ? error.message : String(error))
    }
  })
  await once(process, 'SIGINT')
  stop()
  return last
}

/** What a page is made of, without what else is known of its file. */
function coursePart({ name, chapter, style, formulas }: CoursePart): CoursePart {
  return { name, chapter, style, formulas }
}

function made(path: string, job: Job, console: Console): number {
  const started = performance.now()
  if (!existsSync(path)) throw new WrongUse(`There is no ${path}.`)
  const isCourse = statSync(path).isDirectory()
  const names = isCourse
    ? readdirSync(path)
        .filter((name) => name.endsWith('.md') && !/^readme/i.test(name))
        .sort()
    : [basename(path)]
  if (names.length === 0) throw new WrongUse(`There is no file with the suffix .md in ${path}.`)
  const folder = isCourse ? path : dirname(path)
  const parts = names.map((name) => {
    const file = join(folder, name)
    return {
      name: basename(name, extname(name)),
      file,
      ...readChapter(readFileSync(file, 'utf8'), {
        file,
        live: job.live,
        languages: [german],
        image: (address) => pictureAt(join(folder, address)),
      }),
    }
  })
  const problems = parts.flatMap((part) => part.problems)
  sayProblems(problems, console)
  if (problems.length > 0) {
    console.say(`${String(problems.length)} problem${problems.length === 1 ? '' : 's'}; nothing was written.`)
    return exit.failed
  }
  const claims = parts.filter((part) => part.claims.length > 0)
  const plain = { ...console, bold: (text: string) => text } // what is said may go elsewhere than what is written
  for (const { file, claims: own } of claims) console.say(claimLines(file, own, false, plain).trimEnd())
  const differs = claims.some((part) => part.claims.some(({ verdict }) => verdict === 'differs'))
  if (!job.check) {
    const files =
      isCourse && job.format === 'html'
        ? coursePages(job.title ?? basename(path), parts.map(coursePart), { live: liveScript, ...languageOf(parts) })
        : pagesOf(parts, job.format)
    const target = job.into ?? folder
    const taken = [...files.keys()].filter((name) => existsSync(join(target, name)))
    if (taken.length > 0 && !job.replace) {
      console.say(
        `${taken.map((name) => join(target, name)).join(', ')} ${taken.length === 1 ? 'is' : 'are'} there already; nothing was written. Add --replace to write over.`,
      )
      return exit.failed
    }
    mkdirSync(target, { recursive: true })
    for (const [name, text] of files) {
      if (job.format === 'pdf') printed(text, join(target, name))
      else writeFileSync(join(target, name), text)
      console.out(`${join(target, name)}\n`)
    }
  }
  const done = job.check ? 'checked' : 'made'
  console.say(
    `${String(parts.length)} chapter${parts.length === 1 ? '' : 's'} ${done} in ${((performance.now() - started) / 1000).toFixed(1)} s.`,
  )
  return differs ? exit.differences : exit.done
}

/** The pages around the chapters are written in the language of the first. */
function languageOf(parts: readonly ChapterFile[]): Pick<CourseOptions, 'language'> {
  const language = parts[0]?.style.language
  return language === undefined ? {} : { language }
}

function pagesOf(
  parts: readonly (ChapterFile & { readonly name: string })[],
  format: Format,
): ReadonlyMap<string, string> {
  const { suffix, write } = writers[format]
  return new Map(parts.map(({ name, chapter, style }) => [`${name}${suffix}`, write(chapter, style)]))
}

const pictureKinds: Readonly<Record<string, string>> = {
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.gif': 'image/gif',
  '.webp': 'image/webp',
  '.svg': 'image/svg+xml',
}

/** A picture as data, so that a page stays one file. */
function pictureAt(path: string): string | undefined {
  const kind = pictureKinds[extname(path).toLowerCase()]
  if (kind === undefined || !existsSync(path)) return undefined
  return `data:${kind};base64,${readFileSync(path).toString('base64')}`
}

const browsers = ['chromium', 'chromium-browser', 'google-chrome', 'chrome', 'msedge']

/** Prints a page through a browser: nothing else sets MathML and SVG as the page shows them. */
function printed(html: string, path: string): void {
  const folder = mkdtempSync(join(tmpdir(), 'litrebar-print-'))
  const page = join(folder, 'page.html')
  writeFileSync(page, html)
  const named = process.env['LITREBAR_BROWSER']
  const tried = named === undefined ? browsers : [named]
  const browser = tried.find((name) => spawnSync(name, ['--version']).status === 0)
  if (browser === undefined)
    throw new WrongUse(
      'No browser was found to print with. Name one in LITREBAR_BROWSER, or print the html page yourself.',
    )
  const { status } = spawnSync(browser, [
    '--headless',
    '--no-sandbox',
    '--no-pdf-header-footer',
    `--print-to-pdf=${path}`,
    pathToFileURL(page).href,
  ])
  rmSync(folder, { recursive: true })
  if (status !== 0 || !existsSync(path)) throw new WrongUse(`${browser} did not print the page.`)
}
