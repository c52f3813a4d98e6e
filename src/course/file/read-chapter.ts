import type { BlockContent, Code, DefinitionContent, Heading, PhrasingContent, Root, RootContent } from 'mdast'
import { fromMarkdown } from 'mdast-util-from-markdown'
import { gfmFootnoteFromMarkdown } from 'mdast-util-gfm-footnote'
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table'
import { gfmFootnote } from 'micromark-extension-gfm-footnote'
import { gfmTable } from 'micromark-extension-gfm-table'
import { nearestOf } from '../../errors/index.ts'
import { type Caution, cautions, type Source, sources } from '../../references/index.ts'
import type { Card } from '../card.ts'
import { allCards } from '../cards/all-cards.ts'
import type { Block, Chapter, Inline, Section } from '../chapter.ts'
import { type CourseLanguage, translatedCard } from '../language.ts'
import { languageShape } from '../language-shape.table.ts'
import { pageTexts } from '../page-text.table.ts'
import { type Ask, type Recipe, shownText } from '../recipe.ts'
import { requireCard } from '../require-card.ts'
import { requireShape, type Shape } from '../require-shape.ts'
import { readShowing } from '../stated.ts'
import { requireAddress } from '../written-chapter.ts'
import { cardNamed, type Named } from './ask.ts'
import { blockReaders } from './blocks.ts'
import { type Claim, readClaims } from './claims.ts'
import { type Entry, fieldsOf, readEntries, requireNames, textOf } from './entries.ts'
import { readFormula } from './formula-text.ts'
import { readNamed } from './named.ts'
import { type Problem, Problems, unknownWord } from './problem.ts'
import type { BlockSetting } from './run.ts'

/** What a reader of chapters may be told. */
export interface ChapterFileOptions {
  /** Name of the file, for messages. */
  readonly file: string
  /** Cards of the author’s own beside those of the library. */
  readonly cards?: readonly Card[]
  /** The data address of a picture, or undefined where there is none. Without it pictures keep their addresses. */
  readonly image?: (address: string) => string | undefined
  /** Whether readers may change the numbers of workings, where neither the head of the file nor the working says so itself. */
  readonly live?: boolean
  /** Languages beside English: the one that the head names gives its texts to everything that is computed. */
  readonly languages?: readonly CourseLanguage[]
}

/** A chapter read from a file. */
export interface ChapterFile {
  readonly chapter: Chapter
  /** How its numbers and fixed texts are to be written. */
  readonly style: { readonly decimal: 'point' | 'comma'; readonly language?: CourseLanguage }
  /** Everything that the author must mend. With any of them the chapter is incomplete. */
  readonly problems: readonly Problem[]
  /** The claims of the file, judged. */
  readonly claims: readonly Claim[]
  /** Ids of the cards that the chapter uses, in order of their first use. */
  readonly formulas: readonly string[]
}

/**
 * Reads a chapter: CommonMark with tables and footnotes, and fenced blocks that ask for numbers by the library’s own names.
 * Everything that is wrong is found at once, each with file, line and remedy.
 *
 * @param text - the file
 * @param options - its name, further cards, pictures
 * @returns the chapter, its problems, its claims
 * @throws LitrebarError `input` for what is no text, and for unknown options
 */
export function readChapter(text: string, options: ChapterFileOptions): ChapterFile {
  requireShape('text', text, 'text')
  requireShape('options', options, optionShape)
  for (const [at, card] of (options.cards ?? []).entries()) requireCard(`options.cards[${String(at)}]`, card)
  const problems = new Problems(options.file)
  const parts = headOf(text, problems)
  const tree = fromMarkdown(parts.body, {
    extensions: [gfmTable(), gfmFootnote()],
    mdastExtensions: [gfmTableFromMarkdown(), gfmFootnoteFromMarkdown()],
  })
  return new Reader(tree, parts, problems, options).read()
}

const optionShape: Shape = {
  fields: {
    file: 'text',
    'cards?': ['any'], // with their own check
    'image?': 'function',
    'live?': 'truth',
    'languages?': [languageShape],
  },
}

const headNames = ['language', 'decimal', 'live', 'sources', 'cautions'] as const

/** The lines between two rows of three hyphens at the start of a file. */
function headOf(
  text: string,
  problems: Problems,
): { readonly head: Entry | undefined; readonly body: string; readonly bodyLine: number } {
  const source = text.replace(/^\uFEFF/, '').replaceAll('\r\n', '\n')
  const found = /^---\n([\s\S]*?)\n---\n/.exec(source)
  if (found === null) {
    if (source.startsWith('---\n')) problems.add(1, 'The head of the file is not closed. End it with a line "---".')
    return { head: undefined, body: source, bodyLine: 1 }
  }
  const head = readEntries(found[1] ?? '', 2, problems)
  return { head, body: source.slice(found[0].length), bodyLine: found[0].split('\n').length }
}

/** One pass over one file. */
class Reader {
  readonly #setting: BlockSetting
  readonly #formulas: string[] = []
  readonly #claims: Claim[] = []
  readonly #notes: { number: number; text: readonly Inline[] }[] = []
  readonly #noteNumbers = new Map<string, number>()
  readonly #own: Pick<Chapter, 'ownSources' | 'ownCautions'>
  readonly #language: string
  readonly #words: CourseLanguage | undefined
  #sectionTitle = ''

  readonly tree: Root
  readonly body: string
  readonly bodyLine: number
  readonly problems: Problems
  readonly options: ChapterFileOptions

  constructor(
    tree: Root,
    { head, body, bodyLine }: ReturnType<typeof headOf>,
    problems: Problems,
    options: ChapterFileOptions,
  ) {
    this.tree = tree
    this.body = body
    this.bodyLine = bodyLine
    this.problems = problems
    this.options = options
    const fields = head?.fields ?? new Map<string, Entry>()
    requireNames(fields, 'line of the head', headNames, problems)
    const decimal = fields.get('decimal')
    if (decimal !== undefined && decimal.text !== 'point' && decimal.text !== 'comma')
      problems.add(decimal.line, '"decimal" is point or comma.')
    const live = fields.get('live')
    if (live !== undefined && live.text !== 'yes' && live.text !== 'no')
      problems.add(live.line, '"live" is yes or no. Name single numbers in the block of a working.')
    this.#language = fields.get('language')?.text ?? 'en'
    this.#own = ownOf(fields, problems)
    const ids = new Map<string, number>()
    const words = options.languages?.find(({ tag }) => isOf(this.#language, tag))
    this.#words = words
    const all = [...allCards(), ...(options.cards ?? [])]
    const cards = words === undefined ? all : all.map((card) => translatedCard(card, words))
    this.#setting = {
      problems,
      cards,
      names: new Map<string, Named>(),
      unknownNumbers: new Set<string>(),
      decimal: decimal === undefined ? (words?.decimal ?? 'point') : decimal.text === 'comma' ? 'comma' : 'point',
      knownSources: [...Object.keys(sources), ...Object.keys(this.#own.ownSources ?? {})],
      knownCautions: [...Object.keys(cautions), ...Object.keys(this.#own.ownCautions ?? {})],
      nextId: (kind) => {
        ids.set(kind, (ids.get(kind) ?? 0) + 1)
        return `${kind}-${String(ids.get(kind))}`
      },
      texts: { ...pageTexts, ...words?.page },
      ...(words !== undefined && { roundings: words.roundings }),
      live: live === undefined ? options.live === true : live.text === 'yes',
    }
  }

  read(): ChapterFile {
    this.#readValues()
    const title = this.tree.children.find((node) => node.type === 'heading' && node.depth === 1)
    if (title === undefined)
      this.problems.add(this.bodyLine, 'The title is missing. Begin the text with a line "# Title".')
    const sections: { id: string; title: string; blocks: Block[] }[] = []
    let lead = ''
    const ids = new Set<string>()
    for (const node of this.tree.children) {
      if (node.type === 'heading' && node.depth === 2) {
        const text = plainText(node.children)
        this.#sectionTitle = text
        sections.push({ id: idFor(text, ids), title: text, blocks: [] })
      } else if (node === title) continue
      else if (sections.length === 0 && node.type === 'paragraph') lead = `${lead} ${plainText(node.children)}`.trim()
      else {
        const blocks = this.#blocksOf(node)
        const last = sections.at(-1)
        if (last !== undefined) last.blocks.push(...blocks)
        else if (blocks.length > 0)
          this.problems.add(this.#line(node), 'This stands before the first section. Put a line "## …" above it.')
      }
    }
    if (lead === '')
      this.problems.add(
        this.bodyLine,
        'The opening is missing. Write one or two sentences between the title and the first section.',
      )
    if (sections.length === 0) this.problems.add(this.bodyLine, 'There is no section. Begin one with a line "## …".')
    if (this.#notes.length > 0)
      sections.at(-1)?.blocks.push({ kind: 'footnotes', notes: this.#notes.toSorted((a, b) => a.number - b.number) })
    return {
      chapter: {
        title: title?.type === 'heading' ? plainText(title.children) : '',
        lead,
        language: this.#language,
        sections: (sections satisfies Section[]).map(withLiveRecipes),
        ...this.#own,
      },
      style: { decimal: this.#setting.decimal, ...(this.#words !== undefined && { language: this.#words }) },
      problems: this.problems.inOrder(),
      claims: this.#claims,
      formulas: [...new Set(this.#formulas)],
    }
  }

  #line(node: { readonly position?: { readonly start: { readonly line: number } } | undefined }): number {
    return (node.position?.start.line ?? 1) + this.bodyLine - 1
  }

  /** Values are read before everything else, so that a sentence may name a number that is worked out further down. */
  #readValues(): void {
    for (const node of this.tree.children) {
      if (node.type !== 'code' || node.lang !== 'values') continue
      const entry = readEntries(node.value, this.#line(node) + 1, this.problems)
      if (entry === undefined) continue
      for (const [name, value] of fieldsOf(entry, 'A block of values', this.problems)) {
        const before = this.#setting.names.get(name)
        if (before !== undefined) {
          this.problems.add(
            value.line,
            `"${name}" has a value already, in line ${String(before.line)}. Rename one of the two.`,
          )
          continue
        }
        if (!/^[A-Za-z][\w-]*$/.test(name))
          this.problems.add(value.line, `"${name}" is no name: begin with a letter, then letters, digits and hyphens.`)
        this.#noteFormula(value)
        const named = readNamed(value, this.#setting)
        if (named === undefined) this.#setting.unknownNumbers.add(name)
        else this.#setting.names.set(name, { ...named, line: value.line })
      }
    }
  }

  /** Every formula that is named anywhere in a block goes into the index of the course. */
  #noteFormula(entry: Entry): void {
    const name = entry.fields?.get('formula')?.text
    const card = this.#setting.cards.find(({ id, documents }) => id === name || documents === name)
    if (card !== undefined) this.#formulas.push(card.id)
    for (const inner of [...(entry.fields?.values() ?? []), ...(entry.list ?? [])]) this.#noteFormula(inner)
  }

  #blocksOf(node: RootContent): readonly Block[] {
    switch (node.type) {
      case 'paragraph': {
        const [only] = node.children
        if (node.children.length === 1 && only?.type === 'strong')
          return [{ kind: 'answer', text: this.#inline(only.children) }]
        return [{ kind: 'paragraph', text: this.#inline(node.children) }]
      }
      case 'heading':
        return this.#heading(node)
      case 'list':
        return [
          {
            kind: 'list',
            ordered: node.ordered === true,
            items: node.children.map((item) => this.#all(item.children)),
          },
        ]
      case 'blockquote':
        return [{ kind: 'quote', blocks: this.#all(node.children) }]
      case 'code':
        return this.#code(node)
      case 'table':
        return [
          {
            kind: 'table',
            table: {
              caption: this.#sectionTitle,
              columns: (node.children[0]?.children ?? []).map((cell, at) => ({
                heading: this.#cell(cell.children),
                align: node.align?.[at] === 'right' ? ('number' as const) : ('text' as const),
              })),
              rows: node.children.slice(1).map((row) => row.children.map((cell) => this.#cell(cell.children))),
              notes: [],
            },
          },
        ]
      case 'footnoteDefinition': {
        const number = this.#noteNumber(node.identifier)
        const text = node.children.flatMap((child) => (child.type === 'paragraph' ? this.#inline(child.children) : []))
        this.#notes.push({ number, text })
        return []
      }
      case 'thematicBreak':
      case 'definition':
        return []
      case 'html':
        if (!/^\s*<!--/.test(node.value))
          this.problems.add(
            this.#line(node),
            'Markup is not read here. Write it as plain text; put angle brackets into backquotes.',
          )
        return []
      default:
        this.problems.add(this.#line(node), `A ${node.type} is not read here. Leave it out.`)
        return []
    }
  }

  #all(nodes: readonly (BlockContent | DefinitionContent)[]): readonly Block[] {
    return nodes.flatMap((node) => this.#blocksOf(node))
  }

  #heading(node: Heading): readonly Block[] {
    if (node.depth === 1) this.problems.add(this.#line(node), 'There is a title already. Begin a section with "##".')
    return [{ kind: 'heading', text: this.#inline(node.children) }]
  }

  #code(node: Code): readonly Block[] {
    const line = this.#line(node)
    if (!this.#isClosed(node))
      this.problems.add(line, 'This block is not closed. End it with a line of three backquotes.')
    const word = node.lang ?? ''
    const known = [...Object.keys(blockReaders), 'claims']
    if (!known.includes(word)) {
      if (word !== '' && nearestOf(word, known) !== undefined)
        this.problems.add(line, unknownWord('kind of block', word, known))
      return [{ kind: 'code', text: node.value }]
    }
    if (word === 'values') return []
    const entry = readEntries(node.value, line + 1, this.problems)
    if (entry === undefined) return []
    if (word === 'claims') {
      this.#claims.push(...readClaims(entry, this.#setting))
      return []
    }
    this.#noteFormula(entry)
    return (blockReaders[word] as (typeof blockReaders)[string])(
      entry.fields === undefined ? entry : { ...entry, line },
      this.#setting,
    )
  }

  /** A fence that is never closed takes the rest of the file, and the parser says nothing of it. */
  #isClosed(node: Code): boolean {
    const { start, end } = node.position ?? {}
    const first = this.body.split('\n')[(start?.line ?? 1) - 1] ?? ''
    if (!/^\s*(?:[>-]\s*)*(```|~~~)/.test(first)) return true
    const last = this.body.split('\n')[(end?.line ?? 1) - 1] ?? ''
    return end?.line !== start?.line && /^\s*(?:>\s*)*(```+|~~~+)\s*$/.test(last)
  }

  #cell(nodes: readonly PhrasingContent[]): string {
    return this.#inline(nodes)
      .map((piece) =>
        piece.kind === 'value' ? `${piece.text}${piece.unit === '' ? '' : `\u202f${piece.unit}`}` : plainInline(piece),
      )
      .join('')
  }

  #noteNumber(identifier: string): number {
    const known = this.#noteNumbers.get(identifier)
    if (known !== undefined) return known
    const number = this.#noteNumbers.size + 1
    this.#noteNumbers.set(identifier, number)
    return number
  }

  #inline(nodes: readonly PhrasingContent[]): readonly Inline[] {
    return nodes.flatMap((node): readonly Inline[] => {
      switch (node.type) {
        case 'text':
          return [{ kind: 'text', text: node.value.replaceAll('\n', ' ') }]
        case 'emphasis':
        case 'strong':
          return [{ kind: node.type, content: this.#inline(node.children) }]
        case 'link':
          if (this.problems.attempt(this.#line(node), () => requireAddress(node.url)) === undefined) return []
          return [{ kind: 'link', address: node.url, content: this.#inline(node.children) }]
        case 'image':
          return this.#image(node.url, node.alt ?? '', this.#line(node))
        case 'break':
          return [{ kind: 'break' }]
        case 'footnoteReference':
          return [{ kind: 'note', number: this.#noteNumber(node.identifier) }]
        case 'inlineCode':
          return this.#asked(node.value, this.#line(node))
        default:
          this.problems.add(
            this.#line(node),
            node.type === 'html'
              ? 'Markup is not read here. Write it as plain text.'
              : `A ${node.type} is not read here. Write the address behind the word: [word](address).`,
          )
          return []
      }
    })
  }

  #image(address: string, alternative: string, line: number): readonly Inline[] {
    if (alternative === '')
      this.problems.add(line, `The picture ${address} has no description. Write it between the square brackets.`)
    if (this.options.image === undefined) return [{ kind: 'image', address, alternative }]
    const data = this.options.image(address)
    if (data === undefined) {
      this.problems.add(
        line,
        `The picture ${address} cannot be read. Give its path from this file; PNG, JPEG, GIF, WebP or SVG.`,
      )
      return []
    }
    return [{ kind: 'image', address, alternative, data }]
  }

  /** Inline code that begins with one of our words asks for something; any other stays code. */
  #asked(code: string, line: number): readonly Inline[] {
    const [word = '', ...rest] = code.split(' ')
    const text = rest.join(' ').trim()
    if (word === 'value' && text !== '') return this.#value(text, line)
    if (word === 'formula' && text !== '') return this.#formula(text, line)
    return [{ kind: 'code', text: code }]
  }

  #value(text: string, line: number): readonly Inline[] {
    const [name = '', show] = text.split(/ in (.*)/s)
    const named = this.#setting.names.get(name)
    if (named === undefined && this.#setting.unknownNumbers.has(name)) return []
    if (named === undefined) {
      this.problems.add(line, unknownWord('value of this chapter', name, [...this.#setting.names.keys()]))
      return []
    }
    if (named.text !== undefined && show === undefined) {
      const [, number = named.text, unit = ''] = /^(\S+)\s*(.*)$/.exec(named.text) ?? []
      return [{ kind: 'value', text: number.replace(',', '.'), unit }]
    }
    const shown = this.problems.attempt(line, () => {
      const showing = show === undefined ? named.showing : readShowing(show, named.symbol.dimension, named.showing.unit)
      return { kind: 'value' as const, text: shownText(named.value, showing), unit: showing.unit.symbol }
    })
    return shown === undefined ? [] : [shown]
  }

  #formula(text: string, line: number): readonly Inline[] {
    const isName =
      /^[A-Za-z][\w-]+$/.test(text) &&
      (text.includes('-') || this.#setting.cards.some(({ id, documents }) => id === text || documents === text))
    if (!isName) {
      const read = this.problems.attempt(line, () => readFormula(text))
      return read === undefined ? [] : [{ kind: 'formula', ...read }]
    }
    const card = cardNamed(text, line, this.#setting)
    const expression = card?.forms[card.result]
    if (card === undefined || expression === undefined) return []
    this.#formulas.push(card.id)
    return [{ kind: 'formula', find: card.result, expression, symbols: { ...card.symbols, ...card.callSymbols } }]
  }
}

/** Whether a language tag is that of a language or of one of its regions. */
function isOf(tag: string, language: string): boolean {
  return tag === language || tag.startsWith(`${language}-`)
}

/** Only where a working is live do its neighbours need their recipes, and those need no functions. */
function withLiveRecipes(section: Section): Section {
  const isLive = section.blocks.some((block) => block.kind === 'solution' && (block.recipe?.live.length ?? 0) > 0)
  const blocks = section.blocks.map((block): Block => {
    if (!('recipe' in block)) return block
    const { recipe, ...made } = block
    return (isLive ? { ...made, recipe: asData(recipe) } : made) as Block
  })
  return { ...section, blocks }
}

function asData(recipe: Recipe): Recipe {
  const asks = recipe.asks.map((ask): Ask => {
    const { calls: _, ...card } = ask.card
    return { ...ask, card: { ...card, core: {} } }
  })
  return { ...recipe, asks } as Recipe
}

function ownOf(fields: ReadonlyMap<string, Entry>, problems: Problems): Pick<Chapter, 'ownSources' | 'ownCautions'> {
  const rows = (name: string): [string, Entry][] => {
    const all = [...(fields.get(name)?.fields ?? [])]
    for (const [id, { line }] of all) {
      if (!/^own-[a-z0-9-]+$/.test(id))
        problems.add(line, `"${id}": names of your own begin with "own-". Call it own-${id.toLowerCase()}.`)
    }
    return all.filter(([id]) => id.startsWith('own-'))
  }
  const ownSources: Record<`own-${string}`, Source> = {}
  for (const [id, { line, fields: own = new Map<string, Entry>() }] of rows('sources')) {
    requireNames(own, 'line of a source', ['title', 'edition', 'publisher'], problems)
    ownSources[id as `own-${string}`] = {
      title: textOf(own, 'title', line, problems) ?? '',
      edition: textOf(own, 'edition', line, problems) ?? '',
      scheme: 'place',
      publisher: own.get('publisher')?.text ?? 'none',
      kind: 'handbook',
    }
  }
  const ownCautions: Record<`own-${string}`, Caution> = {}
  for (const [id, { line, text }] of rows('cautions')) {
    if (text === undefined || text === '') problems.add(line, 'A caution is one sentence behind its name.')
    else ownCautions[id as `own-${string}`] = { text, appliesTo: 'this chapter', source: 'common-practice' }
  }
  return {
    ...(Object.keys(ownSources).length > 0 && { ownSources }),
    ...(Object.keys(ownCautions).length > 0 && { ownCautions }),
  }
}

function plainText(nodes: readonly PhrasingContent[]): string {
  return nodes
    .map((node) =>
      'value' in node ? node.value.replaceAll('\n', ' ') : 'children' in node ? plainText(node.children) : '',
    )
    .join('')
}

function plainInline(piece: Inline): string {
  if (piece.kind === 'text' || piece.kind === 'code') return piece.text
  return 'content' in piece ? piece.content.map(plainInline).join('') : ''
}

/** A target for links from a title: letters and digits, each once in a chapter. */
function idFor(title: string, taken: Set<string>): string {
  const slug = title
    .replaceAll('ß', 'ss')
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^A-Za-z0-9]+/g, '-')
    .replaceAll(/^[^A-Za-z]+|-$/g, '')
    .toLowerCase()
    .slice(0, 60)
  const base = slug === '' || /^chart-\d+$/.test(slug) ? `section-${String(taken.size + 1)}` : slug
  const id = taken.has(base) ? `${base}-${String(taken.size + 1)}` : base
  taken.add(id)
  return id
}
