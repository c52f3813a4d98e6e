import type { SourceId } from '../../references/sources.ts'

/** What has to be kept out of breathing air. */
export type Impurity =
  | 'particles'
  | 'liquid-water'
  | 'water-vapour'
  | 'oil-mist'
  | 'oil-vapour'
  | 'odour'
  | 'carbon-monoxide'
  | 'carbon-dioxide'

/** A stage between compressor and cylinder. */
export interface FilterStageRow {
  readonly name: string
  readonly removes: readonly Impurity[]
  /** What it lets pass although it is often thought to hold it. */
  readonly passes: readonly Impurity[]
  /** What it needs to work. */
  readonly needs: string
  readonly source: SourceId
  readonly place: string
}

/** What each stage removes, and what it does not. */
export const filterStages = {
  separator: {
    name: 'coalescing separator',
    removes: ['liquid-water', 'oil-mist'],
    passes: ['water-vapour', 'oil-vapour', 'carbon-monoxide', 'carbon-dioxide'],
    needs: 'Draining before its liquid is carried over.',
    source: 'common-practice',
    place: 'trade',
  },
  'activated-carbon': {
    name: 'activated carbon',
    removes: ['oil-vapour', 'odour'],
    passes: ['carbon-monoxide', 'carbon-dioxide', 'water-vapour'],
    needs: 'Dry gas: water takes the places of oil.',
    source: 'common-practice',
    place: 'several technical pages agree that it does not hold carbon monoxide',
  },
  'molecular-sieve': {
    name: 'molecular sieve 13X',
    removes: ['water-vapour', 'oil-vapour'],
    passes: ['carbon-monoxide'],
    needs:
      'Free of liquid water and oil. Wet, it gives back carbon dioxide that it held before: the first air after a standstill.',
    source: 'common-practice',
    place: 'maker’s note on humid adsorption: humidity takes 69 % of what it holds of carbon dioxide',
  },
  catalyst: {
    name: 'catalyst of copper and manganese oxides',
    removes: ['carbon-monoxide'],
    passes: ['water-vapour', 'carbon-dioxide', 'oil-vapour'],
    needs: 'Gas below 10 % relative humidity: it stands after the sieve. Carbon monoxide becomes carbon dioxide.',
    source: 'common-practice',
    place: 'catalyst maker’s note',
  },
  'dust-filter': {
    name: 'dust filter',
    removes: ['particles'],
    passes: ['carbon-monoxide', 'oil-vapour', 'water-vapour'],
    needs: 'A place after everything that sheds dust.',
    source: 'common-practice',
    place: 'trade',
  },
} as const satisfies Readonly<Record<string, FilterStageRow>>

/** Id of a stage. */
export type FilterStageId = keyof typeof filterStages

/** Where the air is drawn: what the filters after it cannot mend. */
export const intakePlacement = [
  {
    code: 'upwind-of-engines',
    text: 'Upwind and well away from the exhaust of the driving engine, vehicles and boats; the wind turns.',
    source: 'common-practice',
  },
  {
    code: 'away-from-vents',
    text: 'Away from vents of kitchens, heaters, paint, solvents, batteries and drains.',
    source: 'common-practice',
  },
  {
    code: 'outside-the-compressor-room',
    text: 'Outside the room of the machine: carbon dioxide of people and oil fumes gather there, and the air is warm.',
    source: 'common-practice',
  },
  {
    code: 'above-the-ground',
    text: 'Above the ground and water, where heavy vapours and spray collect.',
    source: 'common-practice',
  },
  {
    code: 'cool-and-shaded',
    text: 'Cool and shaded: warm air carries more water and less gas.',
    source: 'litrebar-derivation',
  },
] as const satisfies readonly { readonly code: string; readonly text: string; readonly source: SourceId }[]

/** What makes air fit to meet oxygen-rich gas, beside its analysis. The standard that covers such air by name was not read. */
export const oxygenCompatibleConditions = [
  {
    code: 'oil-and-hydrocarbons',
    text: 'Oil and condensed hydrocarbons far below a rule of breathing air: 0.1 mg/m³ is the criterion of the trade, a fifth of EN 12021.',
    source: 'air-specification-bulletin',
  },
  {
    code: 'added-filtration',
    text: 'A second filter with charcoal after the first, changed by its own hours.',
    source: 'common-practice',
  },
  {
    code: 'clean-equipment',
    text: 'Cylinder, valve and filling line cleaned and rated for oxygen: dirt from one fill stays for the next.',
    source: 'common-practice',
  },
  {
    code: 'standard-unread',
    text: 'BS 8478 names such air; its numbers were not read, so no figure of it stands here.',
    source: 'bs-8478',
  },
  {
    code: 'analysis-at-the-outlet',
    text: 'An analysis at the outlet that reaches down to the criterion: many tubes do not.',
    source: 'common-practice',
  },
] as const satisfies readonly { readonly code: string; readonly text: string; readonly source: SourceId }[]
