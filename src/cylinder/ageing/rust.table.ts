import type { SourceId } from '../../references/sources.ts'

/** What iron, oxygen and water become: amounts per mole of oxygen, from the balance of atoms. */
export interface RustProduct {
  readonly formula: string
  readonly ironPerOxygen: number
  /** Water bound in the product; 0 where water only carries the reaction and comes back. */
  readonly waterPerOxygen: number
  readonly source: SourceId
  readonly place: string
}

/**
 * Products of rusting in a cylinder. Which one forms is not known from outside, so it is the caller's choice:
 * red rust in plenty of oxygen and water, magnetite where oxygen runs short.
 */
export const rustProducts = {
  /** 4 Fe + 3 O2 + 2 H2O → 4 FeO(OH) */
  goethite: {
    formula: 'FeO(OH)',
    ironPerOxygen: 4 / 3,
    waterPerOxygen: 2 / 3,
    source: 'litrebar-derivation',
    place: '4 Fe + 3 O2 + 2 H2O → 4 FeO(OH)',
  },
  /** 4 Fe + 3 O2 + 6 H2O → 4 Fe(OH)3 */
  hydroxide: {
    formula: 'Fe(OH)3',
    ironPerOxygen: 4 / 3,
    waterPerOxygen: 2,
    source: 'litrebar-derivation',
    place: '4 Fe + 3 O2 + 6 H2O → 4 Fe(OH)3',
  },
  /** 4 Fe + 3 O2 → 2 Fe2O3: water carries the reaction and is not used up. */
  haematite: {
    formula: 'Fe2O3',
    ironPerOxygen: 4 / 3,
    waterPerOxygen: 0,
    source: 'litrebar-derivation',
    place: '4 Fe + 3 O2 → 2 Fe2O3',
  },
  /** 3 Fe + 2 O2 → Fe3O4 */
  magnetite: {
    formula: 'Fe3O4',
    ironPerOxygen: 3 / 2,
    waterPerOxygen: 0,
    source: 'litrebar-derivation',
    place: '3 Fe + 2 O2 → Fe3O4',
  },
} as const satisfies Record<string, RustProduct>

/** The name of a product. */
export type RustProductName = keyof typeof rustProducts

/** Molar masses, kg/mol, of what takes part. */
export const rustMolarMasses = {
  iron: 0.055845,
  oxygen: 0.031998,
  water: 0.018015268,
  source: 'memory', // standard atomic weights
} as const satisfies { readonly source: SourceId; readonly [name: string]: number | string }
