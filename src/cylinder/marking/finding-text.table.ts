import type { SourceId } from '../../references/sources.ts'
import type { FindingCode } from './finding.ts'

/** A finding in words: what it means, and what to do. */
export interface FindingText {
  readonly text: string
  readonly remedy: string
  readonly source: SourceId
}

const ask = 'Withdraw the cylinder and ask a licensed inspector.'
const look = 'Look at the shoulder again, under oblique light.'

/** The words of every finding. Apart from the reader, so that an application that translates them does not carry them. */
export const findingTexts: Readonly<Record<FindingCode, FindingText>> = {
  'unknown-specification': {
    text: 'No specification or standard of this name is known.',
    remedy: look,
    source: 'cfr-49-173-301',
  },
  'missing-service-pressure': {
    text: 'No pressure follows the specification.',
    remedy: look,
    source: 'cfr-49-178-35',
  },
  'missing-unit': {
    text: 'The pressure has no unit.',
    remedy: 'The rule requires BAR after PH; bar was assumed.',
    source: 'adr-2017',
  },
  'missing-field': {
    text: 'A mark that this family of stamps carries was not found.',
    remedy: look,
    source: 'cfr-49-178-35',
  },
  'missing-prefix': { text: 'No authority precedes the specification.', remedy: look, source: 'cfr-49-178-35' },
  'invalid-month': { text: 'There is no such month.', remedy: look, source: 'common-practice' },
  'invalid-number': { text: 'This is not a positive number.', remedy: look, source: 'common-practice' },
  'invalid-date-order': {
    text: 'In this family the year comes first.',
    remedy: 'Check whether the mark is original.',
    source: 'adr-2017',
  },
  'ambiguous-date': {
    text: 'Month and year cannot be told apart; the month was assumed to come first.',
    remedy: 'Another date on the shoulder, or the cylinder’s papers, may settle it.',
    source: 'memory',
  },
  'month-first': {
    text: 'The month comes first, as some countries stamp it; the rule for this family puts the year first.',
    remedy: 'None needed.',
    source: 'common-practice',
  },
  'month-left-out': {
    text: 'Only a year is stamped, which is allowed where the interval is ten years or longer.',
    remedy: 'Take the month from the papers.',
    source: 'adr-2017',
  },
  'group-order': {
    text: 'The groups of marks are not in the order that the rule prescribes.',
    remedy: look,
    source: 'un-model-regulations-17',
  },
  'incomplete-rin': {
    text: 'The square of a requalifier’s number lacks its second row.',
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
    text: 'Mass and capacity do not match: too little metal for the wall or the pressure, or far too much.',
    remedy: 'Check the unit: pounds instead of kilograms, free gas instead of water capacity.',
    source: 'litrebar-derivation',
  },
  'implausible-number': {
    text: 'No such mark can have this value.',
    remedy: 'Check the unit and the decimal sign.',
    source: 'common-practice',
  },
  'pressure-withheld': {
    text: 'This type never had such a pressure, so none was read from the figure.',
    remedy: look,
    source: 'common-practice',
  },
  'conflicting-dual-pressure': {
    text: 'The pressures of the two authorities differ by more than rounding explains.',
    remedy: ask,
    source: 'common-practice',
  },
  'dual-pressure-differs': {
    text: 'The pressures of the two authorities differ, as they often do on these types, where one mark may be near the ten per cent value.',
    remedy: 'Under each authority, its own mark applies.',
    source: 'common-practice',
  },
  'plus-not-allowed': {
    text: 'The ten per cent rule covers 3A, 3AX, 3AA, 3AAX and 3T, not this type.',
    remedy: 'The plus has no effect here; ask whoever stamped it.',
    source: 'cfr-49-173-302',
  },
  'star-not-allowed': {
    text: 'Only 3A and 3AA may carry the ten-year star.',
    remedy: 'Use five years, and ask whoever stamped it.',
    source: 'memory',
  },
  'eddy-current-on-steel': {
    text: 'A steel cylinder carries the letters of an eddy-current test.',
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
    text: 'The date is later than the day asked about.',
    remedy: look,
    source: 'common-practice',
  },
  'date-may-be-expiry': {
    text: 'These may be expiry dates: some countries stamp them instead of the test date.',
    remedy: 'Find out where it was tested before counting from a date.',
    source: 'common-practice',
  },
  'late-retest': {
    text: 'The test was done after the previous one had expired. The stamp is not at fault; the cylinder could not be filled in between.',
    remedy: 'None; the interval counts from the late test.',
    source: 'cfr-49-180-209',
  },
  'retest-kind-not-stamped': {
    text: 'The test came early, and the mark does not say whether it was a full test or an internal inspection.',
    remedy: 'Ask the body that stamped it, or assume that the earlier one was the full test.',
    source: 'iso-18119',
  },
  'us-retest-on-un': {
    text: 'Month, RIN and year: a US requalifier stamped a UN receptacle.',
    remedy: 'None needed.',
    source: 'memory',
  },
  'square-rin': {
    text: 'The requalifier’s number is in a square and was read clockwise.',
    remedy: 'None needed.',
    source: 'memory',
  },
  'high-strength-steel': {
    text: 'High-strength steel: US requalification adds an ultrasonic examination.',
    remedy: 'Tell the requalifier.',
    source: 'phmsa-13-0137',
  },
  'possible-6351': {
    text: 'The eddy-current letters and the age point to alloy 6351-T6, which can develop sustained load cracks in the neck.',
    remedy: 'Have the neck examined by the rule that applies; two crack criteria are in force side by side.',
    source: 'phmsa-10-0019r',
  },
  'possible-6351-one-maker': {
    text: 'One maker used alloy 6351-T6 until July 1990; at this age the cylinder could be of it.',
    remedy: 'Find out who made the cylinder.',
    source: 'notice-94-7',
  },
  'presumed-6351': {
    text: 'By its age or origin the cylinder is presumed to be alloy 6351-T6 until shown otherwise, and no eddy-current examination is stamped.',
    remedy: 'Have the alloy established, or the neck examined, before the next fill.',
    source: 'notice-94-7',
  },
  'composite-without-uw': {
    text: 'A composite for underwater use must be marked UW; this one is not.',
    remedy: 'Do not use it under water.',
    source: 'cfr-49-178-71',
  },
  'date-is-next-due': {
    text: 'The date is one interval after a stamped test, so it was read as the next due date.',
    remedy: 'Compare it with the papers of the last test.',
    source: 'betrsichv-2015',
  },
  'material-not-stated': {
    text: 'Nothing says what the cylinder is made of.',
    remedy: 'A magnet tells steel; an inspector tells the rest.',
    source: 'common-practice',
  },
  'pressure-not-labelled': {
    text: 'Two pressures without a label: the higher one was taken as the test pressure.',
    remedy: look,
    source: 'memory',
  },
  condemned: {
    text: 'The cylinder is marked as condemned or out of use.',
    remedy: 'Never fill it.',
    source: 'cfr-49-180-205',
  },
  'life-ended': {
    text: 'Its stamped service life is over. It cannot be requalified and must be condemned.',
    remedy: 'Never fill it.',
    source: 'phmsa-24-0033r',
  },
  'two-families': {
    text: 'The shoulder carries marks of two families; only the first was read.',
    remedy: 'Read the other one separately.',
    source: 'common-practice',
  },
  'century-assumed': {
    text: 'The century of two-digit years had to be guessed, since no reference date was given.',
    remedy: 'State asOf.',
    source: 'common-practice',
  },
  'lower-case': {
    text: 'Lower-case letters were read as capitals.',
    remedy: 'None needed.',
    source: 'common-practice',
  },
  'look-alike': { text: 'A character was read as a look-alike.', remedy: look, source: 'common-practice' },
  separator: { text: 'A sign was read as a space between marks.', remedy: 'None needed.', source: 'common-practice' },
  spacing: {
    text: 'A space was removed from a mark, or inserted into one.',
    remedy: 'None needed.',
    source: 'common-practice',
  },
  'line-break': { text: 'A mark continues on the next line.', remedy: look, source: 'common-practice' },
  'unread-figure': {
    text: 'This looks like a date or a pressure and was not read.',
    remedy: 'Nothing can be said about the cylinder until it is.',
    source: 'common-practice',
  },
  'unread-text': { text: 'No mark could be recognised here.', remedy: look, source: 'common-practice' },
}
