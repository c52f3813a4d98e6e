import type { Card } from '../card.ts'
import { enduranceCard, gasBreathedCard, respiratoryMinuteVolumeFromDropCard, turnPressureCard } from './consumption.ts'
import { pressureAtDepthCard } from './environment.ts'
import {
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
} from './gas-law.ts'
import {
  crackingWorkCard,
  hydrostaticImbalanceCard,
  laminarWorkCard,
  peakInhalationFlowCard,
  powerOfBreathingCard,
  respiratoryMinuteVolumeCard,
  turbulentWorkCard,
} from './regulator-performance.ts'
import { gaugeToAbsoluteCard } from './units.ts'

/** Every card, for lists and generated pages. A page that explains one formula should import that card alone. */
export const allCards: readonly Card[] = [
  gaugeToAbsoluteCard,
  pressureAtDepthCard,
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
  crackingWorkCard,
  hydrostaticImbalanceCard,
  laminarWorkCard,
  peakInhalationFlowCard,
  powerOfBreathingCard,
  respiratoryMinuteVolumeCard,
  turbulentWorkCard,
  enduranceCard,
  gasBreathedCard,
  respiratoryMinuteVolumeFromDropCard,
  turnPressureCard,
]
