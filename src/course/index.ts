export type { Card, CardSymbol, CommonError } from './card.ts'
export { allCards } from './cards/all-cards.ts'
export * from './cards/buoyancy.ts'
export * from './cards/buoyancy-changes.ts'
export * from './cards/charging.ts'
export * from './cards/charging-compressor.ts'
export * from './cards/consumption.ts'
export * from './cards/consumption-circuits.ts'
export * from './cards/cylinder.ts'
export * from './cards/cylinder-testing.ts'
export * from './cards/environment.ts'
export * from './cards/environment-conventions.ts'
export * from './cards/gas-law.ts'
export * from './cards/gas-law-amounts.ts'
export * from './cards/gas-law-contents.ts'
export * from './cards/gas-law-mixtures.ts'
export * from './cards/gauges.ts'
export * from './cards/gauges-compass.ts'
export * from './cards/gauges-oxygen.ts'
export * from './cards/regulator-bench.ts'
export * from './cards/regulator-performance.ts'
export * from './cards/uncertainty.ts'
export * from './cards/uncertainty-compared.ts'
export * from './cards/units.ts'
export * from './cards/units-differences.ts'
export type { Block, Chapter, Inline, Section, Text } from './chapter.ts'
export { chapterHtml, type HtmlStyle, type PageLinks } from './chapter-html.ts'
export { chapterLatex } from './chapter-latex.ts'
export { chapterMarkdown } from './chapter-markdown.ts'
export { chapterText, solutionText, tableText } from './chapter-text.ts'
export { chartSvg, chartVegaLite, type VegaLiteChart } from './chart.ts'
export type {
  Axis,
  BarChart,
  Chart,
  HeatMap,
  LimitLine,
  LineChart,
  PressureSteps,
  ScatterChart,
  Series,
} from './chart-kinds.ts'
export { chartTable } from './chart-table.ts'
export { bibtex, citation, citationOf, sortedSources } from './citation.ts'
export type { CautionName, CitedSource, SourceName } from './cited.ts'
export { dimensionOf, type Exponents } from './dimension-of.ts'
export { evaluate } from './evaluate.ts'
export * from './exercises/index.ts'
export type { Calls, Expression } from './expression.ts'
export { type BankSequenceChartOptions, bankSequenceChart } from './figures/bank-sequence-chart.ts'
export { type CapillaryScaleChartOptions, capillaryScaleChart } from './figures/capillary-scale-chart.ts'
export { type CartridgeLifeChartOptions, cartridgeLifeChart } from './figures/cartridge-life-chart.ts'
export { type FigureTexts, figureTexts } from './figures/figure-text.table.ts'
export {
  type InterstageTemperatureChartOptions,
  interstageTemperatureChart,
} from './figures/interstage-temperature-chart.ts'
export { type LoopChartOptions, loopChart } from './figures/loop-chart.ts'
export { type ResistanceChartOptions, resistanceChart } from './figures/resistance-chart.ts'
export { type StageWaterChartOptions, stageWaterChart } from './figures/stage-water-chart.ts'
export { type SupplyMapChartOptions, supplyMapChart } from './figures/supply-map-chart.ts'
export { type TemperatureMapChartOptions, temperatureMapChart } from './figures/temperature-map-chart.ts'
export { type Claim, judgeClaims } from './file/claims.ts'
export { type CourseOptions, type CoursePart, coursePages } from './file/course-pages.ts'
export type { Problem } from './file/problem.ts'
export { type ChapterFile, type ChapterFileOptions, readChapter } from './file/read-chapter.ts'
export { type CardTexts, type CourseLanguage, cardIn } from './language.ts'
export { latexLines, latexNotation } from './latex.ts'
export type { LiveScript } from './live-data.ts'
export { mathmlLines, mathmlNotation } from './mathml.ts'
export { equationOf, type Notation, type WorkedLine } from './notation.ts'
export { type PageTexts, pageTexts } from './page-text.table.ts'
export { plainLines, plainNotation } from './plain.ts'
export { type ReasonLanguage, type ReasonTexts, reasonIn, type TranslatedReason } from './reason-in.ts'
export type {
  Ask,
  HeatMapRecipe,
  LinesRecipe,
  Recipe,
  Run,
  SolutionRecipe,
  StatedLimit,
  TableRecipe,
} from './recipe.ts'
export {
  type RoundingTexts,
  type RoundingUseTexts,
  type RoundingWords,
  roundingTexts,
} from './rounding-text.table.ts'
export { ruleText } from './rule-text.ts'
export { type Slip, type SlipId, slips } from './slip.table.ts'
export type { Showing, Stated } from './stated.ts'
export type { SystemName } from './systems.table.ts'
export {
  type ComputedColumn,
  type DualColumn,
  type DualUnitTable,
  dualUnitTable,
  type Table,
  type TableColumn,
  type TableWords,
  tableCsv,
  tableMarkdown,
} from './table.ts'
export {
  type Shown,
  type Step,
  type WorkedSolution,
  type WorkingOptions,
  type WrongAnswer,
  workedSolution,
} from './worked-solution.ts'
export { type PageStyle, sourcesOf } from './written-chapter.ts'
