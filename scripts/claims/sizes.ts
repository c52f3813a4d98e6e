import { bundleSize } from '../bundle-size.ts'
import { type Block, grouped } from './block.ts'

const rows: readonly (readonly [label: string, code: string])[] = [
  ['one conversion, `inUnit` with `psi`', `import { inUnit, psi } from 'litrebar'; show(inUnit(pressure, psi))`],
  ['`pressureAtDepth`', `export { pressureAtDepth } from 'litrebar'`],
  ['the five ideal gas laws', `export { boyle, charles, combinedGasLaw, gayLussac, idealGasLaw } from 'litrebar'`],
  ['`workOfBreathing`', `export { workOfBreathing } from 'litrebar'`],
  ['`workedSolution` with one card', `export { workedSolution, pressureAtDepthCard } from 'litrebar/course'`],
  ['`freeGas`, real gas', `export { freeGas } from 'litrebar'`],
  ['`gasState`', `export { gasState } from 'litrebar'`],
  ['`turnPressures`', `export { turnPressures } from 'litrebar'`],
  ['`readStamp`', `export { readStamp } from 'litrebar'`],
  ['`assessFilling`', `export { assessFilling } from 'litrebar'`],
  ['`quantitySchema`, with its validator', `export { quantitySchema } from 'litrebar/schemas'`],
  ['every core room together', `export * from 'litrebar'`],
]

export const sizes: Block = {
  page: 'docs/measured/speed-and-size.md',
  name: 'sizes',
  kind: 'quick',
  band: 1.02,
  measure: async () =>
    Object.fromEntries(await Promise.all(rows.map(async ([label, code]) => [label, await bundleSize(code)] as const))),
  table: (figures) => [
    '| Import | Bytes |',
    '| :--- | ---: |',
    ...rows.map(([label]) => `| ${label} | ${grouped(figures[label] ?? Number.NaN)} |`),
  ],
}
