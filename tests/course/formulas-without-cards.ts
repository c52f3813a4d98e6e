/** Core functions that a form of another card explains: the card, and the symbol that it finds. */
export const otherForms: Readonly<Record<string, readonly [card: string, find: string]>> = {
  amountOfFreeGas: ['free-gas-of-amount', 'n'],
  clearanceFromStall: ['stall-ratio', 'c'],
  depthAtPressure: ['pressure-at-depth', 'd'],
  expectedOutput: ['oxygen-shown', 'U'],
  fillingRateFromFreeAir: ['free-air-of-filling-rate', 'q'],
  pressureAtShownDepth: ['indicated-depth', 'p'],
  pressureChange: ['pressure-volume', 'p'],
  semiClosedFlow: ['semi-closed-oxygen', 'q'],
  semiClosedUptake: ['semi-closed-oxygen', 'u'],
  toGauge: ['gauge-to-absolute', 'pg'],
  traceFraction: ['trace-concentration', 'x'],
  waterFractionFromConcentration: ['moisture-concentration', 'x'],
  waterFractionFromHumidityRatio: ['humidity-ratio', 'x'],
}

/** Forms for columns, and the function that they do row by row. */
export const columnForms: Readonly<Record<string, string>> = {
  ascentRateInto: 'ascentRate',
  compressibilityFactorInto: 'gasState',
  convertInto: 'inUnit',
  depthFromPressureInto: 'depthShown',
  developedPressureInto: 'developedPressure',
  enduranceInto: 'endurance',
  freeGasInto: 'freeGas',
  molarDensityInto: 'molarDensity',
  pressureAtDepthInto: 'pressureAtDepth',
  pressureVolumeBreathedInto: 'pressureVolumeBreathed',
  saturationPressureInto: 'saturationPressure',
  seawaterDensityInto: 'seawaterDensity',
  separatedWaterInto: 'separatedWater',
  solveForInto: 'solveFor',
  supplyRatioInto: 'supplyMap',
  tabulatedInto: 'tabulatedValue',
}

/** All other core functions without a formula card, by the reason why there is none. */
export const withoutCard: Readonly<Record<string, readonly string[]>> = {
  'checks or describes input, or an error: nothing is computed': [
    ...['LitrebarError', 'faultOfRow', 'isLitrebarError', 'isWithin', 'nearestOf', 'requireKeys', 'requireRows'],
    ...['requireWithin', 'requireWord', 'shown', 'likelySlips', 'channelHealth'],
  ],
  'states a quantity or a mixture: number times unit is no formula of diving': [
    ...['absolute', 'absoluteSalinityOf', 'altitudeOf', 'conservativeTemperatureOf', 'depthOf', 'difference'],
    ...['differenceInUnit', 'displacedVolumeOf', 'fillingRateOf', 'fractionOf', 'freeGasFlowOf', 'freeGasOf'],
    ...['gasVolumeOf', 'gauge', 'inUnit', 'internalVolumeOf', 'massFractionOf', 'measure', 'practicalSalinityOf'],
    ...['siColumn', 'sumOf', 'temperatureOf', 'volumeFractionOf', 'workOfBreathingPerLitreOf'],
    ...['enrichedAir', 'heliox', 'mixture', 'nitrox', 'pureGas', 'sameMixture', 'trimix'],
    ...['atpd', 'atps', 'btpsAt', 'steadyProfile', 'normalDistribution', 'meanOfReadings', 'measuredPerformance'],
  ],
  'reads or writes text': [
    ...['explainStamp', 'format', 'mixtureFromText', 'parseQuantity', 'parseUnit', 'readStamp', 'round', 'roundNumber'],
    ...['withNumberStyle', 'withUnit', 'writeStamp'],
  ],
  'looks up a row of a table': [
    ...['acceptanceLimitAt', 'cautionOf', 'connectionOf', 'findBenchFindings', 'nearestColdTest', 'sourceOf'],
    ...['specificationOf', 'testKindOf', 'threadSize', 'tradeSizes', 'valveOutletsFor'],
  ],
  'counts days and months of the calendar': [
    ...['daysBetween', 'dueWithin', 'lastDayOf', 'monthsLater', 'nextRequalification', 'requalifications'],
  ],
  'gives a verdict: a rule applied, with its reasons': [
    ...['assessAcceptance', 'assessAnalysis', 'assessCartridge', 'assessCell', 'assessCold'],
    ...['assessContaminantAtDepth', 'assessDisagreement', 'assessEquivalentGauges', 'assessFill', 'assessFilling'],
    ...['assessFilters', 'assessFrost', 'assessGasDensity', 'assessGaugeTest', 'assessIntermediatePressure'],
    ...['assessMixtures', 'assessNeckCrack', 'assessOxygenService', 'assessPit', 'assessPortFit', 'assessReliefValve'],
    ...['assessRunning', 'assessSemiClosed', 'assessStorage', 'assessSurfaceCheck', 'assessTestPlan', 'assessWear'],
    ...['comparedWork', 'compareRatedCapacity', 'expansionTest', 'fillLimit', 'findingEvidence', 'inspectionAdvice'],
    ...['linearityCheck', 'plusMark', 'plusPermission', 'remainingEvidence', 'testPressure', 'verdictFrom'],
  ],
  'a published correlation or an equation of state: more terms than a page can work out': [
    ...['airSaturation', 'airThermalConductivity', 'airViscosity', 'bunsenCoefficient', 'conventionDifferences'],
    ...['depthInStandardOcean', 'depthInWaterColumn', 'diffusivity', 'dissolvedConcentration', 'enhancementFactor'],
    ...['enhancementFactorInHelium', 'freezingPointOfWater', 'freshWaterDensity', 'gasState', 'henryConstant'],
    ...['humidAirDensity', 'humidAirVirials', 'humidityRatioFromWetBulb', 'liquidWaterAt', 'modelUncertainty'],
    ...['molarDensity', 'molarDensityBy', 'pressureAtDensity', 'pressureInWaterColumn', 'saturatedVapourDensity'],
    ...['saturatedWaterDensity', 'saturatedWaterFraction', 'saturationPressure', 'saturationPressureOverIce'],
    ...['saturationPressureOverWater', 'seawaterDensity', 'seawaterDensityTeos10', 'speedOfSoundInWater'],
    ...['standardAtmosphereAt', 'stationPressure', 'pressureAltitude', 'thermalConductivity', 'toAbsoluteSalinity'],
    ...['toPracticalSalinity', 'viscosity', 'waterCompressionByPractice', 'waterDensities', 'waterFugacityInAir'],
    ...['realCriticalFlow', 'relativeHumidity', 'waterFractionFromHumidity', 'breathingHeat', 'condensate'],
  ],
  'found by iteration: it has no closed form': [
    ...['dewPoint', 'dewPointAtPressure', 'pressureOfAmount', 'saturationTemperature', 'solveFor', 'stopPressure'],
    ...['temperatureAtDensity', 'temperatureAtEnthalpy', 'temperatureAtEntropy', 'temperatureAtInternalEnergy'],
    ...['throttledTemperature', 'vanDerWaalsMolarDensity', 'runningPressures', 'suddenCompression'],
    ...['coldestRemainder', 'equalise', 'furthestTurn', 'independentTurn', 'minimumSupplyPressure', 'seriesFlow'],
    ...['hoseFlow', 'settlingAfterFill', 'fillTemperature', 'internalVolumeForCapacity', 'capillaryServesTo'],
  ],
  'integrated in steps': [
    ...['chargeCylinder', 'fastestFill', 'fillAtConstantFlow', 'fillWaterFraction', 'freeFlowEmptying'],
    ...['intermediatePressureMotion', 'intermediatePressureRise', 'boostedDrive', 'boosterDrawDown'],
  ],
  'tabulates a function, for speed': [
    ...['compileMixture', 'compileSupply', 'compiledCompressibilityFactor', 'compiledMolarDensity', 'supplyMap'],
    ...['tabulated', 'tabulatedValue'],
  ],
  'walks a profile, a log or a list row by row': [
    ...['automaticTime', 'bankCapacity', 'bankOrder', 'bankSequence', 'breathingAnalysis', 'breathingSeries'],
    ...['buoyancySeries', 'capacityTable', 'capillaryScale', 'compressorStart', 'fillInSteps', 'fillsFromBank'],
    ...['fittedAssist', 'gasUsed', 'inflationLegs', 'inflationUse', 'loopShape', 'loopWork', 'meanAmbientPressure'],
    ...['meanWorkOfBreathing', 'orderOfUse', 'planBlend', 'pressureReached', 'pressureSeries', 'profileInWater'],
    ...['summaryOf', 'trim', 'workOfBreathing', 'ascentLegs', 'cellAgreement', 'twoBreathers'],
  ],
  'fitted to many readings, or statistics of them': [
    ...['calibrationLine', 'compassDeviation', 'correlationCoefficient', 'elastanceAndInertance', 'leakTest'],
    ...['observationsOf', 'predictedWork', 'rateOfNextDive', 'resistanceFit', 'supplyAtLimit', 'tracedRate'],
    ...['workInTwoGases', 'quantileOf', 'coverageInterval', 'coverageFactor', 'normalQuantile', 'studentQuantile'],
  ],
  'works on any function, by differences, drawings or designs': [
    ...['gridDesign', 'latinHypercube', 'propagate', 'propagateBySampling', 'randomDesign', 'seededRandom'],
    ...['sobolDesign', 'sobolIndices', 'sobolSequence', 'reserveEffects', 'blendUncertainty'],
  ],
  'puts together what has cards of its own, or differs from a card by one step': [
    ...['analysedFraction', 'ascentReserve', 'attitudeEffect', 'ballast', 'ballastFromCheck', 'breathedOxygenPressure'],
    ...['burstDiscWindow', 'capillaryResolution', 'cartridgeCapacity', 'cartridgeLife', 'cartridgeLifeRatio'],
    ...['chargingTime', 'circuitEndurance', 'compressorDelivery', 'compressorWork', 'conductanceOfOrifice'],
    ...['conductedFlow', 'continuousMix', 'cylinderBuoyancy', 'cylinderPressureBehind', 'deliveredMoisture'],
    ...['depthBeforePointerMoves', 'depthErrorOf', 'depthOfAnalysis', 'exhaustPressure', 'fillWater', 'filterLag'],
    ...['firstStageSurfaceTemperature', 'foamInsulation', 'foamLoss', 'freeGasByModel', 'freeGasFlowAt'],
    ...['guaranteedWall', 'iceBound', 'idealOrificeFlow', 'idealRecipe', 'imbalance', 'lagError', 'loadedBreath'],
    ...['massOfGasTaken', 'mixtureOfPartialPressures', 'orificeFlow', 'oxygenInRust', 'partialPressures', 'peakDemand'],
    ...['pilotOpening', 'pressureBehindDepth', 'pressureUsed', 'ratedCapacity', 'rejectionElasticExpansion'],
    ...['reserveOf', 'reservePressure', 'resistiveWork', 'rustedContents', 'sensorBudget', 'shownCylinderPressure'],
    ...['trueDepth', 'trueHeading', 'warmedGas'],
  ],
}
