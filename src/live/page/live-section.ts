/// <reference lib="dom" />
// One section of a live page: fields above its first live working, and what follows from them.
import { chartSvg } from '../../course/chart.ts'
import { escaped } from '../../course/escape.ts'
import { filled } from '../../course/filled.ts'
import {
  capitalised,
  chartFrom,
  type HeatMapRecipe,
  type LinesRecipe,
  type Recipe,
  type RecipeWords,
  type SolutionRecipe,
  solutionFrom,
  type TableRecipe,
  tableFrom,
} from '../../course/recipe.ts'
import { chartDataHtml, solutionHtml, tableHtml } from '../../course/result-html.ts'
import { valueText } from '../../course/value-text.ts'
import type { WorkedSolution } from '../../course/worked-solution.ts'
import { isLitrebarError } from '../../errors/index.ts'
import { withNumberStyle } from '../../units/index.ts'
import { changedRecipe, type Given, givensOf, readTyped, typed } from './givens.ts'

interface LiveBlock {
  readonly element: HTMLElement
  readonly recipe: Recipe
}

/** A section as data: its id, and its blocks with the ids of their elements. */
export interface SectionData {
  readonly id: string
  readonly blocks: readonly { readonly target: string; readonly recipe: Recipe }[]
}

/** What must be known to change a field. */
interface Row {
  readonly given: Given
  readonly field: HTMLInputElement
  readonly slider: HTMLInputElement | undefined
}

/** Readers hear the answer once they pause, not at every step of a slider. */
const pause = 400

/** The live part of one section of a page. */
export class LiveSection {
  readonly id: string
  readonly #blocks: readonly LiveBlock[]
  readonly #words: RecipeWords
  readonly #givens: ReadonlyMap<string, Given>
  readonly #rows: readonly Row[]
  readonly #status: HTMLElement
  readonly #note: HTMLElement
  readonly #onChange: () => void
  #changes: ReadonlyMap<string, string> = new Map()
  #speech: ReturnType<typeof setTimeout> | undefined
  #isDrawing = false

  /**
   * @param data - the section and its blocks
   * @param words - the words of the page
   * @param onChange - told whenever numbers have changed
   */
  constructor({ id, blocks }: SectionData, words: RecipeWords, onChange: () => void) {
    this.id = id
    this.#words = words
    this.#onChange = onChange
    this.#blocks = blocks.flatMap(({ target, recipe }): LiveBlock[] => {
      const element = document.getElementById(target)
      return element === null ? [] : [{ element, recipe }]
    })
    const givens = givensOf(
      this.#blocks.map(({ recipe }) => recipe),
      words.decimal,
    )
    this.#givens = new Map(givens.map((given) => [given.key, given]))
    const statusId = `${id}-live-status`
    this.#status = made('p', { id: statusId, role: 'status', class: 'live-status' })
    this.#note = made('p', { class: 'notes live-note' })
    this.#note.hidden = true
    this.#note.textContent = words.texts.liveChanged
    this.#rows = givens.map((given, at) => this.#row(given, `${id}-live-${String(at)}`, statusId))
    this.#place()
  }

  /** The typed texts of numbers that are not as printed, by their names. */
  get state(): ReadonlyMap<string, string> {
    return new Map([...this.#changes].map(([key, text]) => [this.#givens.get(key)?.name ?? key, text]))
  }

  /** Puts texts into the fields as if they had been typed; numbers that are not named are as printed. */
  set state(texts: ReadonlyMap<string, string>) {
    for (const { given, field, slider } of this.#rows) {
      field.value = texts.get(given.name) ?? given.text
      this.#moveSlider(given, field.value, slider)
    }
    this.#work()
  }

  #row(given: Given, id: string, statusId: string): Row {
    const { texts, decimal } = this.#words
    const { meaning } = given.symbol
    const field = made('input', {
      id,
      type: 'text',
      size: '9',
      autocomplete: 'off',
      spellcheck: 'false',
      'aria-describedby': `${id}-unit ${statusId}`,
    })
    field.value = given.text
    const { slide } = given
    const slider =
      slide === undefined
        ? undefined
        : made('input', {
            type: 'range',
            min: String(slide.low),
            max: String(slide.high),
            step: String(slide.step),
            'aria-label': filled(texts.liveSlider, { meaning }),
            'aria-describedby': statusId,
          })
    this.#moveSlider(given, given.text, slider)
    field.addEventListener('input', () => {
      this.#moveSlider(given, field.value, slider)
      this.#work()
    })
    slider?.addEventListener('input', () => {
      field.value = withNumberStyle(Number(slider.value).toFixed(slide?.decimals ?? 0), { decimal, grouping: 'none' })
      slider.setAttribute('aria-valuetext', `${field.value} ${given.unit.symbol}`)
      this.#work()
    })
    return { given, field, slider }
  }

  /** A slider follows its field as far as it reaches. */
  #moveSlider(given: Given, text: string, slider: HTMLInputElement | undefined): void {
    if (slider === undefined) return
    try {
      const { value } = readTyped(text, given, given.symbol, this.#words.decimal)
      const { factor, offset = 0 } = given.unit
      slider.value = String((value - offset) / factor)
      slider.setAttribute('aria-valuetext', `${text} ${given.unit.symbol}`)
    } catch (error) {
      if (!isLitrebarError(error)) throw error // what cannot be read leaves the slider where it is
    }
  }

  /** Puts the fields above the first working that they change. */
  #place(): void {
    const first = this.#blocks.find(({ recipe }) => recipe.kind === 'solution' && recipe.live.length > 0)
    const { texts } = this.#words
    const box = made('fieldset', { class: 'live' })
    const legend = made('legend', {})
    legend.textContent = texts.liveLegend
    const reset = made('button', { type: 'button' })
    reset.textContent = texts.liveReset
    reset.addEventListener('click', () => (this.state = new Map()))
    const rows = this.#rows.map(({ given, field, slider }) => {
      const row = made('div', {})
      const label = made('label', { for: field.id })
      const { letter, subscript, meaning } = given.symbol
      const sub = subscript === undefined ? '' : `<sub>${escaped(subscript)}</sub>`
      label.innerHTML = `<i>${escaped(letter)}</i>${sub} ${escaped(meaning)}`
      const unit = made('span', { id: `${field.id}-unit` })
      unit.textContent = given.unit.symbol
      row.append(label, field, unit, ...(slider === undefined ? [] : [slider]))
      return row
    })
    box.append(legend, ...rows, reset, this.#status)
    first?.element.before(box, this.#note)
  }

  /** Works everything out again: the workings at once, tables and charts with the next frame. */
  #work(): void {
    clearTimeout(this.#speech)
    const typedTexts = this.#rows.flatMap(({ given, field }): [string, string][] =>
      field.value === given.text ? [] : [[given.key, field.value]],
    )
    const changes = new Map(typedTexts)
    const unread = this.#rows.find(({ given, field }) => changes.has(given.key) && !this.#canRead(given, field.value))
    for (const { field } of this.#rows) field.toggleAttribute('aria-invalid', false)
    if (unread !== undefined) {
      unread.field.setAttribute('aria-invalid', 'true')
      const { given, field } = unread
      this.#refuse(
        filled(this.#words.texts.liveUnread, {
          meaning: capitalised(given.symbol.meaning),
          text: field.value,
          example: valueText({ text: given.text, unit: given.unit.symbol }, {}),
        }),
      )
      return
    }
    try {
      const solutions = this.#blocks.flatMap(({ element, recipe }) =>
        recipe.kind === 'solution' ? [{ element, solution: this.#solution(recipe, changes) }] : [],
      )
      const page = { style: { decimal: this.#words.decimal }, texts: this.#words.texts }
      for (const { element, solution } of solutions) element.innerHTML = solutionHtml(solution, page)
      this.#changes = changes
      this.#note.hidden = changes.size === 0
      this.#status.classList.remove('live-error')
      this.#draw()
      this.#say(solutions.map(({ solution }) => solution))
    } catch (error) {
      this.#refuse(this.#sentenceOf(error))
      return
    }
    this.#onChange()
  }

  #canRead(given: Given, text: string): boolean {
    try {
      return Number.isFinite(readTyped(text, given, given.symbol, this.#words.decimal).value)
    } catch (error) {
      if (!isLitrebarError(error)) throw error
      return false
    }
  }

  #solution(recipe: SolutionRecipe, changes: ReadonlyMap<string, string>): WorkedSolution {
    return solutionFrom(changedRecipe(recipe, changes, this.#givens, this.#words.decimal), this.#words)
  }

  /** Tables and charts are made once for each frame, however often a slider moves in between. */
  #draw(): void {
    if (this.#isDrawing) return
    this.#isDrawing = true
    requestAnimationFrame(() => {
      this.#isDrawing = false
      for (const { element, recipe } of this.#blocks) {
        if (recipe.kind === 'solution') continue
        this.#redraw(element, changedRecipe(recipe, this.#changes, this.#givens, this.#words.decimal))
      }
    })
  }

  /** A table or a chart that has no answer for these numbers keeps its last one. */
  #redraw(element: HTMLElement, recipe: TableRecipe | LinesRecipe | HeatMapRecipe): void {
    const page = { style: { decimal: this.#words.decimal }, texts: this.#words.texts }
    try {
      if (recipe.kind === 'table') {
        element.innerHTML = tableHtml(tableFrom(recipe, this.#words))
        return
      }
      const chart = chartFrom(recipe)
      const svg = chartSvg(chart, page.style)
      const data = chartDataHtml(chart, page)
      const [drawn, details] = [element.querySelector('svg'), element.querySelector('details')]
      if (drawn !== null) drawn.outerHTML = svg
      if (details !== null) details.innerHTML = data
    } catch (error) {
      this.#refuse(this.#sentenceOf(error))
    }
  }

  #say(solutions: readonly WorkedSolution[]): void {
    const { texts, decimal } = this.#words
    const [first] = solutions
    if (first === undefined) return
    const meaning = first.symbols[first.find]?.meaning ?? first.find
    const answer = valueText(first.answer, { decimal })
    const beyond = this.#rows.flatMap((row) => this.#beyond(row))
    const sentences = [filled(texts.liveAnswer, { meaning: capitalised(meaning), answer }), ...beyond]
    this.#speech = setTimeout(() => (this.#status.textContent = sentences.join(' ')), pause)
  }

  /** What is outside the range of its card is said, not refused. */
  #beyond({ given, field }: Row): string[] {
    const { range, unit, symbol, text } = given
    if (range === undefined || field.value === text) return []
    const { decimal, texts } = this.#words
    const { value } = readTyped(field.value, given, symbol, decimal)
    const number = (value - (unit.offset ?? 0)) / unit.factor
    const [low, high] = range
    if (number >= low * (1 - 1e-9) && number <= high * (1 + 1e-9)) return []
    const shown = (end: number): string => valueText({ text: typed(end, decimal), unit: unit.symbol }, {})
    return [filled(texts.liveBeyond, { meaning: capitalised(symbol.meaning), low: shown(low), high: shown(high) })]
  }

  /** Says what is wrong at once; what stands below stays. */
  #refuse(sentence: string): void {
    this.#status.classList.add('live-error')
    this.#status.textContent = `${sentence} ${this.#words.texts.liveKept}`
  }

  #sentenceOf(error: unknown): string {
    if (!isLitrebarError(error)) throw error
    const { texts, decimal } = this.#words
    const { accepted, value } = error
    if (accepted === undefined) return texts.liveNoAnswer
    const { above, atLeast, below, atMost, unit } = accepted
    const limit = (text: string, end: number | undefined): string[] =>
      end === undefined ? [] : [filled(text, { limit: valueText({ text: typed(end, decimal), unit }, {}) })]
    const limits = [
      ...limit(texts.liveAbove, above),
      ...limit(texts.liveAtLeast, atLeast),
      ...limit(texts.liveBelow, below),
      ...limit(texts.liveAtMost, atMost),
    ]
    return filled(texts.liveOutside, { value, limits: limits.join(', ') })
  }
}

function made<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Readonly<Record<string, string>>,
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag)
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value)
  return element
}
