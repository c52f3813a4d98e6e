// What does not yet refuse every hostile value, with the first fault found. The list may only shrink.
export const notYetStrict: Readonly<Record<string, string>> = {
  // cylinder
  assessFilling: 'no valid call in the table yet',
  explainStamp: '0 = NaN: threw TypeError: stamp.fields is not iterable',
  findingEvidence: 'no valid call in the table yet',
  testKindOf: 'no valid call in the table yet',
  writeStamp: '0 = NaN: threw TypeError: retests is not iterable',
  dueWithin: '0 = NaN: threw TypeError: register.map is not a function',
  nextRequalification: '0.specification = NaN: result.because.0.text says "rule set us-180.209 has no interval for',
  requalifications: '0.specification = NaN: result.0.because.0.text says "rule set us-180.209 has no interval f',
  plusMark: "0 = null: threw TypeError: Cannot read properties of null (reading 'specification')",
  // regulator-performance
  acceptanceLimitAt: 'no valid call in the table yet',
  measuredPerformance: 'no valid call in the table yet',
  breathingAnalysis: 'no valid call in the table yet',
  meanWorkOfBreathing: 'no valid call in the table yet',
  loopWork: 'no valid call in the table yet',
  supplyMap: 'no valid call in the table yet',
  supplyRatioInto: 'no valid call in the table yet',
  // consumption
  // charging
  // gauges
  // buoyancy
  // course
  allCards: 'no valid call in the table yet',
  supplyMapChart: 'no valid call in the table yet',
  // schemas
  // batch
  rowComputer: 'no valid call in the table yet',
  runRows: 'no valid call in the table yet',
  columnWorkers: 'a valid call starts threads; tests/batch/column-workers.test.ts spoils its arguments',
  twoBreathers: 'no valid call in the table yet',
  bankSequenceChart: 'no valid call in the table yet',
  cardIn: 'no valid call in the table yet',
  ruleText: 'no valid call in the table yet',
}
