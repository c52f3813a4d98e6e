import type { SourceId } from '../../references/sources.ts'
import type { FindingCode } from './finding.ts'

/** A finding in words: what it means, and what to do. */
export interface FindingText {
  readonly text: string
  readonly remedy: string
  readonly source: SourceId
}

const ask = 'Withdraw the cylinder and ask a licensed inspector.'
const look = 'Look at the shoulder again, in slanting light.'

/** The words of every finding. Apart from the reader, so that an application that translates them does not carry them. */
export const findingTexts: Readonly<Record<FindingCode, FindingText>> = {
  'unknown-specification': {
    text: 'No specification or standard of this name is known.',
    remedy: look,
    source: 'cfr-49-173-301',
  },
  'missing-service-pressure': {
    text: 'The specification is not followed by a pressure.',
    remedy: look,
    source: 'cfr-49-178-35',
  },
  'missing-unit': {
    text: 'The pressure has no unit behind it.',
    remedy: 'The rule wants BAR behind PH; bar was assumed.',
    source: 'adr-2017',
  },
  'missing-field': {
    text: 'A mark that shoulders of this family carry was not found.',
    remedy: look,
    source: 'cfr-49-178-35',
  },
  'missing-prefix': { text: 'No authority stands before the specification.', remedy: look, source: 'cfr-49-178-35' },
  'invalid-month': { text: 'There is no such month.', remedy: look, source: 'common-practice' },
  'invalid-number': { text: 'This is no number above zero.', remedy: look, source: 'common-practice' },
  'invalid-date-order': {
    text: 'The year comes first in this family.',
    remedy: 'Check whether the mark is original.',
    source: 'adr-2017',
  },
  'ambiguous-date': {
    text: 'Month and year cannot be told apart; the month was taken to come first.',
    remedy: 'Another date on the shoulder, or the papers, may decide.',
    source: 'memory',
  },
  'month-first': {
    text: 'The month comes first, as some countries stamp it; the rule of this family has the year first.',
    remedy: 'None needed.',
    source: 'common-practice',
  },
  'month-left-out': {
    text: 'Only a year is stamped: allowed where the interval is ten years or longer.',
    remedy: 'Take the month from the papers.',
    source: 'adr-2017',
  },
  'group-order': {
    text: 'The groups of marks stand in another order than the rule has them.',
    remedy: look,
    source: 'un-model-regulations-17',
  },
  'incomplete-rin': {
    text: 'A number of a requalifier in a square lacks its second row.',
    remedy: 'Read it clockwise from the upper left: two characters above, two below.',
    source: 'memory',
  },
  'test-pressure-too-low': {
    text: 'The working pressure is more than two thirds of the test pressure.',
    remedy: ask,
    source: 'cfr-49-173-302b',
  },
  'wall-too-thin': {
    text: 'A wall of this thickness could not hold the test pressure at this capacity in any shape that a cylinder has.',
    remedy: look,
    source: 'litrebar-derivation',
  },
  'capacity-mass-mismatch': {
    text: 'Mass and capacity do not belong together: too little metal for the wall or the pressure, or far too much.',
    remedy: 'Check the unit: pounds for kilograms, free gas for water capacity.',
    source: 'litrebar-derivation',
  },
  'implausible-number': {
    text: 'The figure lies outside what such a mark can be.',
    remedy: 'Check the unit and the decimal sign.',
    source: 'common-practice',
  },
  'pressure-withheld': {
    text: 'The figure lies outside what the type ever had, and no pressure was taken from it.',
    remedy: look,
    source: 'common-practice',
  },
  'conflicting-dual-pressure': {
    text: 'The pressures of the two authorities lie further apart than rounding explains.',
    remedy: ask,
    source: 'common-practice',
  },
  'dual-pressure-differs': {
    text: 'The pressures of the two authorities differ: usual on these types, where one mark may be near the ten per cent value.',
    remedy: 'Each authority reads its own mark.',
    source: 'common-practice',
  },
  'plus-not-allowed': {
    text: 'This type is not on the list of the ten per cent rule: 3A, 3AX, 3AA, 3AAX and 3T.',
    remedy: 'The plus counts for nothing here; ask who stamped it.',
    source: 'cfr-49-173-302',
  },
  'star-not-allowed': {
    text: 'The ten-year star belongs to 3A and 3AA only.',
    remedy: 'Count five years, and ask who stamped it.',
    source: 'memory',
  },
  'eddy-current-on-steel': {
    text: 'The letters of an eddy-current test stand on a steel cylinder.',
    remedy: ask,
    source: 'memory',
  },
  'retest-before-first-test': {
    text: 'The test is dated before the cylinder was made.',
    remedy: ask,
    source: 'common-practice',
  },
  'retests-out-of-order': {
    text: 'The test is older than the one stamped before it.',
    remedy: look,
    source: 'common-practice',
  },
  'date-in-the-future': {
    text: 'The date lies after the day that was asked for.',
    remedy: look,
    source: 'common-practice',
  },
  'date-may-be-expiry': {
    text: 'The dates may be those of expiry: some countries punch them in place of the test date.',
    remedy: 'Find out in which country it was tested before counting from a date.',
    source: 'common-practice',
  },
  'late-retest': {
    text: 'The test came after the one before it had run out. No fault of the stamp: nobody could fill the cylinder meanwhile.',
    remedy: 'None; the interval counts from the late test.',
    source: 'cfr-49-180-209',
  },
  'retest-kind-not-stamped': {
    text: 'The mark came early and does not say whether it was a full test or an internal inspection.',
    remedy: 'Ask the body that stamped it, or take the earlier one for the full test.',
    source: 'iso-18119',
  },
  'us-retest-on-un': {
    text: 'Month, RIN and year: a US requalifier stamped a UN receptacle.',
    remedy: 'None needed.',
    source: 'memory',
  },
  'square-rin': {
    text: 'The number of the requalifier stands in a square and was read clockwise.',
    remedy: 'None needed.',
    source: 'memory',
  },
  'high-strength-steel': {
    text: 'Steel of high strength: US requalification adds an ultrasonic examination.',
    remedy: 'Tell the requalifier.',
    source: 'phmsa-13-0137',
  },
  'possible-6351': {
    text: 'The eddy-current letters and the age point to alloy 6351-T6, which can crack in the neck under steady load.',
    remedy: 'Have the neck examined as its rule says; two criteria for cracks are in force beside each other.',
    source: 'phmsa-10-0019r',
  },
  'possible-6351-one-maker': {
    text: 'One maker used alloy 6351-T6 until July 1990: the age leaves that open.',
    remedy: 'Find out who made the cylinder.',
    source: 'notice-94-7',
  },
  'presumed-6351': {
    text: 'By its age or origin the cylinder is presumed to be of alloy 6351-T6 until shown otherwise, and no eddy-current examination is stamped.',
    remedy: 'Have the alloy established, or the neck examined, before the next fill.',
    source: 'notice-94-7',
  },
  'composite-without-uw': {
    text: 'A composite for use under water has to bear UW; this one does not.',
    remedy: 'Do not use it under water.',
    source: 'cfr-49-178-71',
  },
  'date-is-next-due': {
    text: 'The date lies ahead by one interval of a stamped test: it was read as the date of the next inspection.',
    remedy: 'Compare with the papers of the last test.',
    source: 'betrsichv-2015',
  },
  'material-not-stated': {
    text: 'Nothing says what the cylinder is made of.',
    remedy: 'A magnet tells steel; an inspector tells the rest.',
    source: 'common-practice',
  },
  'pressure-not-labelled': {
    text: 'Two pressures without a label: the higher one was taken for the test pressure.',
    remedy: look,
    source: 'memory',
  },
  condemned: {
    text: 'The cylinder is marked as condemned or out of use.',
    remedy: 'Never fill it.',
    source: 'cfr-49-180-205',
  },
  'life-ended': {
    text: 'The stamped end of its service life has passed. No requalification follows; it is to be condemned.',
    remedy: 'Never fill it.',
    source: 'phmsa-24-0033r',
  },
  'two-families': {
    text: 'Marks of two families stand on one shoulder; only the first was read.',
    remedy: 'Read the other one by itself.',
    source: 'common-practice',
  },
  'century-assumed': {
    text: 'Two-figure years were given a century without a day to count from.',
    remedy: 'State asOf.',
    source: 'common-practice',
  },
  'lower-case': { text: 'Small letters were read as capitals.', remedy: 'None needed.', source: 'common-practice' },
  'look-alike': { text: 'A character was read as one that looks like it.', remedy: look, source: 'common-practice' },
  separator: { text: 'A sign was taken for a space between marks.', remedy: 'None needed.', source: 'common-practice' },
  spacing: {
    text: 'A space was taken out of a mark, or put into one.',
    remedy: 'None needed.',
    source: 'common-practice',
  },
  'line-break': { text: 'A mark goes on in the next line.', remedy: look, source: 'common-practice' },
  'unread-figure': {
    text: 'This looks like a date or a pressure and was not read.',
    remedy: 'Nothing can be said about the cylinder before it is.',
    source: 'common-practice',
  },
  'unread-text': { text: 'This was not read as any mark.', remedy: look, source: 'common-practice' },
}
