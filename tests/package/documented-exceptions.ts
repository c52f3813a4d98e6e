/** What a function takes, or gives, on purpose. */
export interface DocumentedException {
  /** Which faults it covers: the spoilt place, a colon, what happened. */
  readonly at: RegExp
  readonly because: string
}

const nameAlone =
  'reads the name of a reference condition alone, so that a condition of the caller’s own needs nothing else'
const twoOfReference =
  'reads pressure and temperature of a reference condition alone: the cubic metre is that of a gas, not of its moisture'
const restOfResult = 'takes a result as another function gives it, whole, and reads three of its fields'
const stateOfReference = 'takes any reference condition, and reads its pressure and temperature'
const twoOfResult = 'takes a result as another function gives it, whole, and reads two of its fields'

const placesOfStamp = 'takes a stamp as read, whole, and does not read where its marks stand'

const analysisWhole = 'takes an analysis as breathingAnalysis gives it, whole, and reads what an acceptance needs'

const ofTable =
  'a table is plain data that crosses to workers: its box and its coefficients are checked, what merely tells of it is not'

/** What answers later, writes files or starts threads meets its hostile values in a test of its own. */
export const spoiltElsewhere: Readonly<Record<string, string>> = {
  runRows: 'tests/batch/spoilt-runs.test.ts',
  columnWorkers: 'tests/batch/spoilt-runs.test.ts',
}

/** Where the hostile test finds what the documentation promises. An exception that covers nothing fails the test. */
export const documentedExceptions: Readonly<Record<string, readonly DocumentedException[]>> = {
  reasonIn: [
    {
      at: /^1 with a misspelt key: was taken$/,
      because: 'takes a whole language, and reads its reasons and its decimal sign',
    },
  ],
  inUnit: [{ at: /^/, because: 'unchecked, so that an app which only shows numbers stays below 200 B' }],
  isWithin: [{ at: /^0 = .*: was taken$/, because: 'the filter of a batch: false for what is not a number' }],
  freeGasOf: [{ at: /^2(\.(?!name)| with a misspelt key)/, because: nameAlone }],
  freeGasFlowOf: [{ at: /^2(\.(?!name)| with a misspelt key)/, because: nameAlone }],
  effectiveDegreesOfFreedom: [
    { at: /: result is Infinity$/, because: 'Infinity where no part with finite degrees of freedom adds anything' },
  ],
  expandedUncertainty: [{ at: /^0\.(contributions|secondOrderUncertainty|departure)/, because: restOfResult }],
  linearityCheck: [
    { at: /^0\.(contributions|secondOrderUncertainty|departure)/, because: restOfResult },
    { at: /^1\.(mean|standardUncertainty)/, because: 'reads the sorted results alone' },
  ],
  coverageInterval: [{ at: /^0\.(mean|standardUncertainty)/, because: 'reads the sorted results alone' }],
  quantileOf: [{ at: /^0\.(mean|standardUncertainty)/, because: 'reads the sorted results alone' }],
  // cylinder
  nextRequalification: [{ at: /^0\.fields\.0/, because: placesOfStamp }],
  requalifications: [{ at: /^0\.fields\.0/, because: placesOfStamp }],
  writeStamp: [{ at: /^0\.fields\.0/, because: placesOfStamp }],
  plusMark: [{ at: /^0\.fields\.0/, because: placesOfStamp }],
  assessFilling: [{ at: /^0\.stamp\.fields\.0/, because: placesOfStamp }],
  dueWithin: [
    {
      at: /^0\.0( with a misspelt key: was taken$|(\.(?!id).*)? = NaN: result\.0\.error\.value says "NaN"$)/,
      because: 'a row of a register that cannot be judged stays a row, with its error',
    },
  ],
  // gauges
  deviationAt: [{ at: /^0\.(standardUncertainties|scatter|degreesOfFreedom)/, because: twoOfResult }],
  // charging
  compressorStart: [{ at: /: result.latest is Infinity$/, because: 'no time is the latest where nothing is lacking' }],
  drainInterval: [
    { at: /: result.(interval|shortest) is Infinity$/, because: 'no drain is needed where no water separates' },
  ],
  assessAnalysis: [{ at: /^2\.reference\.waterVapourPressure/, because: stateOfReference }],
  deliveredMoisture: [{ at: /^1\.reference\.waterVapourPressure/, because: stateOfReference }],
  // regulator-performance
  measuredPerformance: [
    {
      at: /^0\.(totalWorkPerLitre|breaths\.0|exhalation|averagedLoop|crossings|grossWorkPerLitre|endExhalationPressure|middleLinePressure|removed|changePerSecondOfDelay|noise|samplesPerBreath)/,
      because: analysisWhole,
    },
    {
      at: /^0\.workOfBreathingPerLitre( with|\.(expandedUncertainty|coverageFactor|degreesOfFreedom|parts( with|\.(?!pressureGain))))/,
      because: analysisWhole,
    },
    { at: /^0\.inhalation( with|\.(?!workOfAssistPerLitre))/, because: analysisWhole },
    {
      at: /^0\.summary( with|\.(duration|workOfBreathingPerLitre|inhalationPerLitre|exhalationPerLitre))/,
      because: analysisWhole,
    },
  ],
  loopWork: [{ at: /^[01]\.0 = /, because: 'the bare area, for loops by the million: NaN in, NaN out' }],
  comparedWork: [{ at: /^[01]\.(expandedUncertainty|coverageFactor)/, because: restOfResult }],
  siColumn: [{ at: /: result\.0 is (NaN|-?Infinity)$/, because: 'missing values of a log stay in their rows, as NaN' }],
  // course
  cardIn: [
    { at: /^1\.cards with a misspelt key: was taken$/, because: 'a language holds the texts of other cards too' },
  ],
  // gas-law
  compiledMolarDensity: [{ at: /^0\.(mixture|tolerance|largestError|cellsCut)/, because: ofTable }],
  compiledCompressibilityFactor: [{ at: /^0\.(mixture|tolerance|largestError|cellsCut)/, because: ofTable }],
  molarDensityInto: [{ at: /^2\.compiled\.(mixture|tolerance|largestError|cellsCut)/, because: ofTable }],
  tabulatedValue: [{ at: /^0\.(tolerance|largestError|cellsCut)/, because: ofTable }],
  tabulatedInto: [{ at: /^2\.(tolerance|largestError|cellsCut)/, because: ofTable }],
  moistureConcentration: [{ at: /^1\.waterVapourPressure/, because: twoOfReference }],
  waterFractionFromConcentration: [{ at: /^1\.waterVapourPressure/, because: twoOfReference }],
  // course
  evaluate: [{ at: /^1 with a misspelt key/, because: 'one record of values serves all formulas of a card' }],
}
