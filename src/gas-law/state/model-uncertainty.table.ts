import type { SourceId } from '../../references/sources.ts'
import type { Gas } from '../mixture/gas.ts'

/** How far the densities of a class of mixtures are to be trusted. */
export interface UncertaintyClass {
  readonly name: string
  /** The class holds mixtures within these mole fractions; a gas that is not named may be there in any amount. */
  readonly atLeast?: { readonly [Name in Gas]?: number }
  readonly atMost?: { readonly [Name in Gas]?: number }
  /** Relative expanded uncertainty of density and Z, about 95 % of cases, up to 350 bar and from 250 to 350 K. */
  readonly expanded: number
  /** What stands behind the figure. */
  readonly basis: string
  readonly sources: readonly SourceId[]
}

const noLightGas = { helium: 0.001, hydrogen: 0.001 } as const
const littleCarbonDioxide = { carbonDioxide: 0.01 } as const

/** The classes; a mixture belongs to the first that holds it. */
export const uncertaintyClasses: readonly UncertaintyClass[] = [
  {
    name: 'air and nitrox',
    atMost: { ...noLightGas, ...littleCarbonDioxide, oxygen: 0.5, argon: 0.02, water: 0.1 },
    expanded: 0.001,
    basis: '0.05 to 0.09 % from the reference equation of air, which claims 0.1 %; nitrogen within 0.01 % of its own.',
    sources: ['gerg-2008', 'lemmon-2000', 'litrebar-derivation'],
  },
  {
    name: 'oxygen and argon, with nitrogen or alone',
    atMost: { ...noLightGas, ...littleCarbonDioxide, water: 0.1 },
    expanded: 0.003,
    basis:
      'Oxygen and argon from their reference equations: 0.06 to 0.09 % at 232 bar, 0.18 % at 300 bar, 0.27 % at 400 bar.',
    sources: ['gerg-2008', 'litrebar-derivation'],
  },
  {
    name: 'carbon dioxide, with gases of air or alone',
    atMost: { ...noLightGas, water: 0.1 },
    expanded: 0.01,
    basis: 'Judgement: carbon dioxide and oxygen are not fitted to each other.',
    sources: ['memory'],
  },
  {
    name: 'helium',
    atLeast: { helium: 0.999 },
    expanded: 0.002,
    basis: 'From its reference equation: 0.07 % at 232 bar, 0.13 % at 300 bar, 0.20 % at 400 bar.',
    sources: ['gerg-2008', 'litrebar-derivation'],
  },
  {
    name: 'helium and nitrogen',
    atMost: { oxygen: 0.001, argon: 0.001, hydrogen: 0.001, carbonDioxide: 0.001, water: 0.001 },
    expanded: 0.003,
    basis: 'Judgement: the pair is fitted; each gas alone is within 0.2 %.',
    sources: ['gerg-2008', 'memory'],
  },
  {
    name: 'trimix',
    atLeast: { nitrogen: 0.05 },
    atMost: { oxygen: 0.4, argon: 0.01, hydrogen: 0.001, carbonDioxide: 0.01, water: 0.1 },
    expanded: 0.007,
    basis:
      'Helium and oxygen are not fitted. With the parameters of helium and nitrogen in their place Z falls by 0.2 to 0.35 % at 232 bar: Z is probably too high and the content understated.',
    sources: ['gerg-2008', 'litrebar-derivation'],
  },
  {
    name: 'heliox',
    atMost: { oxygen: 0.3, nitrogen: 0.05, argon: 0.01, hydrogen: 0.001, carbonDioxide: 0.01, water: 0.1 },
    expanded: 0.01,
    basis:
      'Helium and oxygen are not fitted; Z falls by 0.46 % at 21 % oxygen and 232 bar with the parameters of helium and nitrogen. A measured statement of 1982 says lower still.',
    sources: ['gerg-2008', 'litrebar-derivation'],
  },
  {
    name: 'helium with much oxygen',
    atMost: { argon: 0.01, hydrogen: 0.001, carbonDioxide: 0.01, water: 0.1 },
    expanded: 0.02,
    basis:
      'Helium and oxygen are not fitted; Z falls by 1.3 % at equal parts and 232 bar with the parameters of helium and nitrogen.',
    sources: ['gerg-2008', 'litrebar-derivation'],
  },
  {
    name: 'hydrogen',
    atLeast: { hydrogen: 0.999 },
    expanded: 0.001,
    basis: 'Within 0.03 % of its reference equation.',
    sources: ['gerg-2008', 'litrebar-derivation'],
  },
  {
    name: 'anything else',
    expanded: 0.06,
    basis:
      'Pairs without measurements. Helium and argon, the one such pair with a published point, misses it by 5.5 % at 200 K and 10 mol/L.',
    sources: ['gerg-2008', 'litrebar-derivation'],
  },
]

/** Ranges that the authors of the equation name: temperatures in K, pressures in bar. */
export const modelRanges = {
  normal: { temperature: [90, 450], pressure: 350 },
  extended: { temperature: [60, 700], pressure: 700 },
  source: 'gerg-2008',
} as const satisfies { source: SourceId } & Record<string, unknown>
