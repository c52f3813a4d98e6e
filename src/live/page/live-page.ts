/// <reference lib="dom" />
// The script of a live page. The build joins it with everything it needs into one text; the page holds its data as JSON.
import type { Card } from '../../course/card.ts'
import type { LiveData } from '../../course/live-data.ts'
import { pageTexts } from '../../course/page-text.table.ts'
import type { Ask, Recipe } from '../../course/recipe.ts'
import { fragmentOf, stateOf } from './address.ts'
import { callsOf } from './calls.ts'
import { LiveSection } from './live-section.ts'

/** Browsers refuse addresses that change at every step of a slider. */
const pause = 250

function start(): void {
  const text = document.getElementById('live-data')?.textContent
  if (text == null) return
  const { decimal, texts, roundings, cards, sections } = JSON.parse(text) as LiveData
  const words = { decimal, texts: { ...pageTexts, ...texts }, ...(roundings !== undefined && { roundings }) }
  const withCard = (recipe: Recipe): Recipe =>
    ({
      ...recipe,
      asks: recipe.asks.map((ask): Ask => {
        const id = ask.card as unknown as string
        const calls = callsOf.get(id)
        return { ...ask, card: { ...(cards[id] as Card), core: {}, ...(calls !== undefined && { calls }) } }
      }),
    }) as Recipe
  let timer: ReturnType<typeof setTimeout> | undefined
  const keep = (): void => {
    clearTimeout(timer)
    timer = setTimeout(() => {
      const fragment = fragmentOf(new Map(live.map((section) => [section.id, section.state])))
      history.replaceState(null, '', fragment === '' ? location.pathname + location.search : fragment)
    }, pause)
  }
  const live = sections.map(
    ({ id, blocks }) =>
      new LiveSection(
        { id, blocks: blocks.map(({ target, recipe }) => ({ target, recipe: withCard(recipe) })) },
        words,
        keep,
      ),
  )
  const follow = (): void => {
    const state = stateOf(location.hash)
    if (state.size === 0) return // a link to a place of the page
    for (const section of live) section.state = state.get(section.id) ?? new Map()
    const [first] = [...state.keys()]
    if (first !== undefined) document.getElementById(first)?.scrollIntoView()
  }
  follow()
  addEventListener('hashchange', follow)
}

start()
