import { type FindingCode, findingTexts } from '../../../cylinder/index.ts'
import { type FigureTexts, figureTexts } from '../../figures/figure-text.table.ts'

/** Texts of the questions that are drawn, by id. */
export const drawnTexts = {
  dueStamp: 'It is {month}. Under 49 CFR 180.209, five years, which of these cylinders is due for requalification?',
  dueOn: 'tested {tested}, due {due}.',
  dueStampWorking: 'Take the latest test on each shoulder, add the interval, and compare with today.',
  shoulderFindings: 'Read this shoulder as of November 2026. Which findings does it have?',
  notOnThis: 'Nothing on this shoulder shows that.',
  loopFault:
    'Which of these loops shows this fault: {fault}? Mouth pressures in mbar, at 0, 25, 50, 75 and 100 % of each half.',
  loop: 'inhaling {inhaled}; exhaling {exhaled}',
  loopPicture: 'A regulator drew this loop. Which fault does it show?',
  loopPictureTitle: 'Mouth pressure over one breath',
  loopPictureName: 'the loop',
  loopPictureDescription:
    'Pressure at the mouth against volume breathed in, in mbar at 0, 25, 50, 75 and 100 % of the time of each half: inhaling {inhaled}; exhaling {exhaled}.',
} as const

/** The faults behind loops: what is wrong, and what the loop shows of it. */
export const loopFaultTexts = {
  'stiff-valve': {
    fault: 'a demand valve that is hard to open',
    seen: 'suction is high from the very start; flow adds no more than usual.',
  },
  'starved-valve': {
    fault: 'a first stage that cannot keep up with peak flow',
    seen: 'the start is normal, and suction grows where the flow is greatest.',
  },
  'sticking-exhaust': {
    fault: 'an exhaust valve that does not open far enough',
    seen: 'inhalation is normal, exhalation pressure is high.',
  },
  'strong-assist': {
    fault: 'a venturi assist that opens the valve too far',
    seen: 'the pressure rises above ambient while the diver inhales.',
  },
} as const

/** The texts of drawn questions, each under its id. */
export type DrawnTexts = Readonly<Record<keyof typeof drawnTexts, string>>

/** The faults behind loops in words, each under its id. */
export type LoopFaultTexts = Readonly<
  Record<keyof typeof loopFaultTexts, { readonly fault: string; readonly seen: string }>
>

/** The words that drawn questions are put in. */
export interface DrawnWords {
  readonly texts: DrawnTexts
  readonly faults: LoopFaultTexts
  readonly findings: Readonly<Record<FindingCode, { readonly text: string; readonly remedy: string }>>
  readonly figures: FigureTexts
}

/** The words of drawn questions in English. */
export const englishDrawn: DrawnWords = {
  texts: drawnTexts,
  faults: loopFaultTexts,
  findings: findingTexts,
  figures: figureTexts,
}
