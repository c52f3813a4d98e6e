import type { SourceId } from '../../references/sources.ts'

/** Something that calls for a test before further use, whatever date is stamped. */
export type TestTrigger = 'damaged' | 'accident' | 'overheated' | 'ordered'

const rule = { source: 'cfr-49-180-205' } as const

/** What each of them is: 49 CFR 180.205(d)(1) to (4), edition 2015, restated by an official letter of 2025-02-12. */
export const testTriggers: Readonly<Record<TestTrigger, { readonly text: string; readonly source: SourceId }>> = {
  damaged: {
    text: 'dents, corrosion, cracked or abraded areas, leakage, thermal damage or another sign of an unsafe condition: to be tested before further use despite a valid date',
    source: 'phmsa-24-0093',
  },
  accident: { text: 'an accident with damage that may impair gas retention: to be tested before further use', ...rule },
  overheated: { text: 'known or evident overheating: to be tested before further use', ...rule },
  ordered: { text: 'the authority has ordered a test', ...rule },
}
