import type { RetestSuffix, StampMarks } from './stamp.ts'

/** What the marks say about the aluminium alloy that cracks in the neck under steady load. */
export type AlloySign = 'examined' | 'presumed' | 'one maker' | 'none'

// Notice 94-7: 3AL made before 1990-02, by one maker before 1990-07, and all made outside the US, are presumed to be of 6351-T6
// until shown otherwise; exemption cylinders of the time likewise. UN aluminium excludes the alloy (178.71(h)).
const presumedBefore = '1990-02'
const oneMakerBefore = '1990-07'

/** The sign of alloy 6351-T6 on a shoulder: eddy-current letters on a cylinder of the time, or its age and origin. */
export function alloySign(
  marks: Partial<Pick<StampMarks, 'specification' | 'firstTest' | 'manufactured' | 'countryOfManufacture'>> & {
    readonly retests: readonly { readonly suffixes: readonly RetestSuffix[] }[]
  },
): AlloySign {
  const isOfType = marks.specification === '3AL' || marks.specification === 'special permit'
  if (!isOfType) return 'none'
  const made = marks.manufactured ?? marks.firstTest
  const isExamined = marks.retests.some(({ suffixes }) => suffixes.includes('VE'))
  const isForeign = marks.countryOfManufacture !== undefined && !americanSigns.has(marks.countryOfManufacture)
  if (marks.specification === 'special permit' && !isExamined) {
    // The number of a permit does not say what it is made of: only its age does, and only together.
    return made !== undefined && made < presumedBefore ? 'presumed' : 'none'
  }
  // Without a date of manufacture the age cannot show otherwise.
  const isOfTheTime = made === undefined || made < presumedBefore || isForeign
  if (isOfTheTime) return isExamined ? 'examined' : 'presumed'
  return made < oneMakerBefore ? (isExamined ? 'examined' : 'one maker') : 'none'
}

const americanSigns: ReadonlySet<string> = new Set(['USA', 'US'])
