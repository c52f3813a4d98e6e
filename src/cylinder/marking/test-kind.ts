import { requireFamily, requireSuffixes } from './require-stamp.ts'
import type { MarkingFamily, RetestSuffix, TestKind } from './stamp.ts'

// Letters that name the kind of a test wherever they stand; what the others mean depends on the country (`countryMarks`).
const kindOfLetters: Readonly<Partial<Record<RetestSuffix, TestKind>>> = {
  E: 'external visual', // 180.213(f)(5)
  UE: 'ultrasonic',
  AE: 'acoustic emission',
}

// 180.213(f): S, FS a proof pressure test; without a letter, or with + or ★, the volumetric test. VE is stamped behind the
// date of a requalification and adds the eddy-current examination to it.
const kindOnUsShoulders: Readonly<Partial<Record<RetestSuffix, TestKind>>> = {
  S: 'proof',
  FS: 'proof',
  R: 'unknown',
  V: 'visual',
}

/**
 * What was done on the date of a mark, as far as its letters and the family of the shoulder say.
 * A US requalification mark without letters is the volumetric test; elsewhere a plain date may be any inspection.
 *
 * @param suffixes - the letters and signs behind the date
 * @param system - family of the shoulder; unknown counts as one that does not say
 * @returns the kind, `unknown` where neither says
 * @throws LitrebarError `input` for a sign or a family that no stamp has
 * @source cfr-49-180-213, paragraph (f); V for a visual inspection: common-practice
 */
export function testKindOf(suffixes: readonly RetestSuffix[], system: MarkingFamily | undefined): TestKind {
  requireSuffixes('suffixes', suffixes)
  if (system !== undefined) requireFamily('system', system)
  return kindByMarks(suffixes, system)
}

/** The same of letters and a family that have been checked. */
export function kindByMarks(suffixes: readonly RetestSuffix[], system: MarkingFamily | undefined): TestKind {
  for (const suffix of suffixes) {
    const kind = kindOfLetters[suffix] ?? (system === 'US' ? kindOnUsShoulders[suffix] : undefined)
    if (kind !== undefined) return kind
    if (suffix === 'V') return 'visual'
  }
  return system === 'US' ? 'hydraulic' : 'unknown'
}
