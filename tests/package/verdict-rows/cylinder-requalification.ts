import { dueWithin, nextRequalification, readStamp, requalifications } from '../../../src/cylinder/index.ts'
import type { Verdict } from '../../../src/references/index.ts'
import type { VerdictRow } from './row.ts'

const aluminium = 'DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 23'
type Judge = (text: string, asOf: `${number}-${number}-${number}`) => Verdict | undefined
const ruleSet = 'us-180.209'
const ofNext: Judge = (text, asOf) => nextRequalification(readStamp(text, { asOf }), { ruleSet, asOf }).verdict
const ofFirst: Judge = (text, asOf) => requalifications(readStamp(text, { asOf }), { ruleSet, asOf })[0]?.verdict
const ofRegister: Judge = (text, asOf) =>
  dueWithin([{ id: 'A1', ruleSet, stamp: text }], { asOf, days: 60 })[0]?.requalification?.verdict

/** The same shoulders for each: what is known of a cylinder must reach every answer. */
function rowOf(judge: Judge): VerdictRow {
  const judged = (text = aluminium, asOf: `${number}-${number}-${number}` = '2026-11-25') =>
    judge(text, asOf) as Verdict
  return {
    base: () => judged(),
    turnedBy: {
      'a day after it fell due': () => judged(aluminium, '2028-11-01'),
      'a mark that condemns': () => judged(`${aluminium} CONDEMNED`),
      'a test in the future': () => judged(aluminium.replace('A902 23', 'A902 31')),
      'no test but the first': () => judged(aluminium.replace('\n10 A902 23', '')),
      'a specification without a rule': () => judged(aluminium.replace('3AL', '3ZZ')),
    },
  }
}

/** Functions of this room. */
export const rows: Readonly<Record<string, VerdictRow>> = {
  dueWithin: rowOf(ofRegister),
  nextRequalification: rowOf(ofNext),
  requalifications: rowOf(ofFirst),
}
