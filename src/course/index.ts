export type { Card, CardSymbol } from './card.ts'
export { allCards } from './cards/all-cards.ts'
export {
  enduranceCard,
  gasBreathedCard,
  respiratoryMinuteVolumeFromDropCard,
  turnPressureCard,
} from './cards/consumption.ts'
export { pressureAtDepthCard } from './cards/environment.ts'
export {
  boyleCard,
  charlesCard,
  combinedGasLawCard,
  freeGasCard,
  gayLussacCard,
  grahamCard,
  henryCard,
  idealGasDensityCard,
  idealGasLawCard,
  maximumOperatingDepthCard,
  partialPressureCard,
  richestMixtureCard,
  surfaceEquivalentCard,
} from './cards/gas-law.ts'
export {
  balancedPistonCard,
  chokedMassFlowCard,
  chokedSupplyPressureCard,
  crackingPressureCard,
  crackingWorkCard,
  hydrostaticImbalanceCard,
  laminarWorkCard,
  peakInhalationFlowCard,
  powerOfBreathingCard,
  respiratoryMinuteVolumeCard,
  turbulentWorkCard,
} from './cards/regulator-performance.ts'
export { gaugeToAbsoluteCard } from './cards/units.ts'
export type { Block, Chapter, Section } from './chapter.ts'
export { chapterHtml } from './chapter-html.ts'
export { chapterMarkdown, chartTable } from './chapter-markdown.ts'
export {
  type Axis,
  type Chart,
  chartSvg,
  chartVegaLite,
  type LimitLine,
  type Series,
  ticks,
  type VegaLiteChart,
} from './chart.ts'
export { bibtex, citation, sortedSources } from './citation.ts'
export {
  type Algebra,
  type Calls,
  dimensionOf,
  type Exponents,
  type Expression,
  evaluate,
  fold,
  type Operator,
} from './expression.ts'
export { type LoopChartOptions, loopChart } from './figures/loop-chart.ts'
export { type ResistanceChartOptions, resistanceChart } from './figures/resistance-chart.ts'
export { type SupplyMapChartOptions, supplyMapChart } from './figures/supply-map-chart.ts'
export { type TemperatureMapChartOptions, temperatureMapChart } from './figures/temperature-map-chart.ts'
export { latexLines, latexNotation } from './latex.ts'
export { escaped, mathElement, mathmlLines, mathmlNotation } from './mathml.ts'
export { equationOf, linesOf, type Notation, type WorkedLine } from './notation.ts'
export { plainLines, plainNotation } from './plain.ts'
export {
  type ComputedColumn,
  type DualColumn,
  type DualUnitTable,
  dualUnitTable,
  type Table,
  type TableColumn,
  tableCsv,
  tableMarkdown,
} from './table.ts'
export { type Shown, type Step, type WorkedSolution, type WorkingOptions, workedSolution } from './worked-solution.ts'
