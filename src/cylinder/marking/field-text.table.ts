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
    meaning: 'Whose specification it is: DOT (formerly ICC) in the US; TC (formerly CTC, CRC, BTC) in Canada.',
    source: 'cfr-49-180-205',
  },
  specification: {
    title: 'Specification',
    meaning:
      'The rule or standard that the cylinder was designed and made to. It determines metal, test pressure and permitted marks.',
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
    meaning: 'The settled gauge pressure at 70 °F that the US rule allows, in psi.',
    source: 'cfr-49-173-301a',
  },
  workingPressure: {
    title: 'Working pressure',
    meaning: 'The settled gauge pressure allowed at 15 °C, in bar; at most two thirds of the test pressure.',
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
      'The internal volume, as the water that fills it; not the free gas it holds. Some shoulders state the mass of that water instead.',
    source: 'adr-2017',
  },
  emptyMass: {
    title: 'Empty mass',
    meaning: 'The mass without valve and gas; a loss of mass indicates metal loss.',
    source: 'memory',
  },
  minimumWall: {
    title: 'Guaranteed wall',
    meaning: 'The minimum wall thickness. A thinner spot condemns the cylinder.',
    source: 'memory',
  },
  thread: {
    title: 'Neck thread',
    meaning: 'The thread for the valve. Fit only a valve with exactly this thread.',
    source: 'un-model-regulations-17',
  },
  serial: { title: 'Serial number', meaning: 'The maker’s number for this one cylinder.', source: 'cfr-49-178-35' },
  maker: { title: 'Maker', meaning: 'The name or mark of the maker.', source: 'cfr-49-178-35' },
  makerNumber: {
    title: 'Maker’s number',
    meaning: 'The number under which the authority registers the maker.',
    source: 'common-practice',
  },
  countryOfManufacture: {
    title: 'Country of manufacture',
    meaning: 'Where it was made, as the country code of motor vehicles.',
    source: 'un-model-regulations-17',
  },
  countryOfApproval: {
    title: 'Country of approval',
    meaning: 'The country that approved the initial inspection body, as the country code of motor vehicles.',
    source: 'adr-2017',
  },
  inspector: { title: 'Inspector', meaning: 'The mark of whoever witnessed the first test.', source: 'cfr-49-178-35' },
  notifiedBody: {
    title: 'Notified body',
    meaning: 'The European pi mark, with the four-digit number of the body behind the first inspection.',
    source: 'memory',
  },
  firstTest: {
    title: 'First test',
    meaning: 'Month and year of the first test, at manufacture. It is never removed.',
    source: 'cfr-49-180-213',
  },
  manufactured: {
    title: 'Manufacture',
    meaning: 'Month and year in which the cylinder was made.',
    source: 'common-practice',
  },
  deadline: {
    title: 'Future date',
    meaning: 'When the next inspection is due, the last one expires or the service life ends. It is never a test date.',
    source: 'betrsichv-2015',
  },
  underwater: { title: 'UW', meaning: 'A composite made for underwater use.', source: 'cfr-49-178-71' },
  hydrogenCompatible: {
    title: 'H',
    meaning: 'The steel is suitable for gases that embrittle steel.',
    source: 'un-model-regulations-17',
  },
  gas: {
    title: 'Gas',
    meaning: 'The gas named on an older shoulder. Go by the label and an analysis, not by the stamp.',
    source: 'memory',
  },
  nominal: {
    title: 'Trade size',
    meaning: 'A nominal size in cubic feet of free gas, as the trade rounds it; not the water capacity.',
    source: 'common-practice',
  },
  rejectionElasticExpansion: {
    title: 'Rejection elastic expansion',
    meaning: 'The elastic expansion above which the cylinder loses its plus mark; one US type is condemned for it.',
    source: 'cfr-49-180-205',
  },
  closure: {
    title: 'Closed end',
    meaning: 'How an end was closed: by spinning, or with a plug.',
    source: 'cfr-49-178-35',
  },
  retest: {
    title: 'Requalification',
    meaning: 'A later test: month, requalifier, year, and what followed from it. The latest one counts.',
    source: 'cfr-49-180-213',
  },
  unSymbol: {
    title: 'UN symbol',
    meaning: 'Made and inspected to the UN Model Regulations, for transport in every country that applies them.',
    source: 'adr-2017',
  },
}
