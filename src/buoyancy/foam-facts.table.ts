import type { SourceId } from '../references/index.ts'

/** A published fact about foam under pressure, in our words. */
export interface FoamFact {
  readonly fact: string
  readonly source: SourceId
  readonly place: string
}

/** What stands behind the foam model, and where it is known to fall short. */
export const foamFacts: readonly FoamFact[] = [
  {
    fact: 'At about 15 m of water a suit is about half as thick, and conducts about half as much again.',
    source: 'open-encyclopedia',
    place: 'article on wet suits',
  },
  {
    fact: 'Thickness and insulation fall along similar curves from 0.5 to 5 atmospheres; samples of 5 mm insulate 0.100 to 0.120 K·m²/W new and 0.060 to 0.080 after thousands of cycles, and lined ones recover little.',
    source: 'undersea-1989-16-313',
    place: 'abstract',
  },
  {
    fact: 'The change of the gas fraction with pressure follows the ideal gas law; the conductivity rises with it.',
    source: 'bardy-mollendorf-2008',
    place: 'abstract and introduction',
  },
]
