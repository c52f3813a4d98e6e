import type { SourceId } from '../../references/sources.ts'
import type { StampFieldName } from './stamp.ts'

/** What a field of a stamp is, for someone who learns to read one. */
export interface FieldText {
  readonly title: string
  readonly meaning: string
  readonly source: SourceId
}

/** The words of every field. */
export const fieldTexts: Readonly<Record<StampFieldName, FieldText>> = {
  prefix: {
    title: 'Authority',
    meaning:
      'Whose specification the mark names: DOT or formerly ICC in the US, TC or formerly CTC, CRC, BTC in Canada.',
    source: 'cfr-49-180-205',
  },
  specification: {
    title: 'Specification',
    meaning:
      'The rule or standard by which the cylinder was designed and made. Metal, test pressure and the marks it may carry follow from it.',
    source: 'cfr-49-178-35',
  },
  permit: {
    title: 'Special permit',
    meaning: 'A design outside the specifications; the permit itself sets its tests.',
    source: 'common-practice',
  },
  dual: {
    title: 'Second authority',
    meaning:
      'Specification and pressure under another country’s rule. An M after the type means bar. The two pressures need not be equal.',
    source: 'common-practice',
  },
  servicePressure: {
    title: 'Service pressure',
    meaning: 'The settled gauge pressure at 70 °F that the cylinder may hold under the US rule, in psi.',
    source: 'cfr-49-173-301a',
  },
  workingPressure: {
    title: 'Working pressure',
    meaning:
      'The settled gauge pressure at 15 °C that the cylinder may hold, in bar; at most two thirds of the test pressure.',
    source: 'cfr-49-173-302b',
  },
  testPressure: {
    title: 'Test pressure',
    meaning: 'The gauge pressure of the hydraulic test, in bar. Gas at 65 °C must never reach it.',
    source: 'cfr-49-173-302b',
  },
  waterCapacity: {
    title: 'Water capacity',
    meaning:
      'The water that fills the cylinder: its internal volume, not the free gas it holds. Some shoulders state its mass instead.',
    source: 'adr-2017',
  },
  emptyMass: {
    title: 'Empty mass',
    meaning: 'The mass without valve and gas; a loss of mass tells of lost metal.',
    source: 'memory',
  },
  minimumWall: {
    title: 'Guaranteed wall',
    meaning: 'The least thickness of the wall. A thinner place condemns the cylinder.',
    source: 'memory',
  },
  thread: {
    title: 'Neck thread',
    meaning: 'The thread that takes the valve. Only a valve of exactly this thread belongs in it.',
    source: 'un-model-regulations-17',
  },
  serial: { title: 'Serial number', meaning: 'The maker’s number for this one cylinder.', source: 'cfr-49-178-35' },
  maker: { title: 'Maker', meaning: 'Name or sign of who made it.', source: 'cfr-49-178-35' },
  makerNumber: {
    title: 'Maker’s number',
    meaning: 'The number under which the authority registers the maker.',
    source: 'common-practice',
  },
  countryOfManufacture: {
    title: 'Country of manufacture',
    meaning: 'Where it was made, by the sign of road traffic.',
    source: 'un-model-regulations-17',
  },
  countryOfApproval: {
    title: 'Country of approval',
    meaning: 'The state that approved the body of the first inspection, by the sign of road traffic.',
    source: 'adr-2017',
  },
  inspector: { title: 'Inspector', meaning: 'The mark of who saw the first test.', source: 'cfr-49-178-35' },
  notifiedBody: {
    title: 'Notified body',
    meaning: 'The pi mark of European law with the four figures of the body behind the first inspection.',
    source: 'memory',
  },
  firstTest: {
    title: 'First test',
    meaning: 'Month and year of the first test, when the cylinder was made. It is never removed.',
    source: 'cfr-49-180-213',
  },
  manufactured: {
    title: 'Manufacture',
    meaning: 'Month and year in which the cylinder was made.',
    source: 'common-practice',
  },
  deadline: {
    title: 'Date ahead',
    meaning:
      'When the next inspection is due, until when the last one holds, or when the life of the cylinder ends. It is never a test.',
    source: 'betrsichv-2015',
  },
  underwater: { title: 'UW', meaning: 'A composite made for use under water.', source: 'cfr-49-178-71' },
  hydrogenCompatible: {
    title: 'H',
    meaning: 'The steel may hold gases that embrittle steel.',
    source: 'un-model-regulations-17',
  },
  gas: {
    title: 'Gas',
    meaning: 'The gas that an older shoulder names. The label and an analysis decide, not the stamp.',
    source: 'memory',
  },
  nominal: {
    title: 'Trade size',
    meaning: 'A size in cubic feet of free gas as the trade rounds it; not the water capacity.',
    source: 'common-practice',
  },
  rejectionElasticExpansion: {
    title: 'Rejection elastic expansion',
    meaning:
      'The elastic expansion above which the cylinder loses the plus mark; only one US type is condemned for it.',
    source: 'cfr-49-180-205',
  },
  closure: { title: 'Closed end', meaning: 'An end was closed by spinning, or by a plug.', source: 'cfr-49-178-35' },
  retest: {
    title: 'Requalification',
    meaning: 'A later test: month, who tested, year, and what followed from it. The newest one counts.',
    source: 'cfr-49-180-213',
  },
  unSymbol: {
    title: 'UN symbol',
    meaning: 'Made and inspected as the UN model regulations say, for carriage in every country that follows them.',
    source: 'adr-2017',
  },
}
