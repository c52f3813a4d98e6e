import type { Card } from '../card.ts'
import { pressureAtDepthCard } from './environment.ts'
import { boyleCard, charlesCard, combinedGasLawCard, gayLussacCard, idealGasLawCard } from './gas-law.ts'

/** Every card, for lists and generated pages. A page that explains one formula should import that card alone. */
export const allCards: readonly Card[] = [
  pressureAtDepthCard,
  boyleCard,
  charlesCard,
  gayLussacCard,
  combinedGasLawCard,
  idealGasLawCard,
]
