import { withoutAccents, wordsThatBegin } from './labelled-dates.ts'
import { pressureWords } from './pressure-label.table.ts'
import type { MarkingFamily } from './stamp.ts'
import { hasLetter, isAllFigures } from './us-names.ts'
import { isDigitCode, isLetterCode, type Word } from './words.ts'

// What is one mark and typed as two words, `SP 9144` or `June 2024`, is put together before any family is read; what is several marks and
// typed as one word, `PW232/PH348BAR/14.9KG`, is taken apart.

// By the languages themselves, without accents that shoulders and keyboards leave out; the usual short forms among them.
const monthNames = [
  'JAN JANUARY JANUAR JANVIER JANV GENNAIO GEN ENERO ENE JANUARI JANEIRO',
  'FEB FEBRUARY FEBRUAR FEVRIER FÉVRIER FEVR FEBBRAIO FEBRERO FEBRUARI FEVEREIRO FEV',
  'MAR MARCH MARZ MÄRZ MAERZ MARS MARZO MAART MRT MARTS MARÇO MARCO',
  'APR APRIL AVRIL AVR APRILE ABRIL ABR',
  'MAY MAI MAGGIO MAG MAYO MEI MAJ MAIO',
  'JUN JUNE JUNI JUIN GIUGNO GIU JUNIO JUNHO',
  'JUL JULY JULI JUILLET JUIL LUGLIO LUG JULIO JULHO',
  'AUG AUGUST AOUT AOÛT AGOSTO AGO AUGUSTUS AUGUSTI',
  'SEP SEPT SEPTEMBER SEPTEMBRE SETTEMBRE SET SEPTIEMBRE SETEMBRO',
  'OCT OCTOBER OKT OKTOBER OCTOBRE OTTOBRE OTT OCTUBRE OUTUBRO OUT',
  'NOV NOVEMBER NOVEMBRE NOVIEMBRE NOVEMBRO',
  'DEC DECEMBER DEZ DEZEMBER DECEMBRE DÉCEMBRE DICEMBRE DIC DICIEMBRE DES DESEMBER DEZEMBRO',
] as const

/**
 * Whether any word of a text is one of a language, a date with its day, or a permit in two words. Most shoulders have none, and need
 * neither be joined nor searched for dates in words.
 */
export function hasPhrases(words: readonly Word[], system: MarkingFamily): boolean {
  for (let index = 0; index < words.length; index++) {
    const { text } = words[index] as Word
    const first = text.charCodeAt(0)
    if (isDigitCode(first)) {
      if (text.length > 7 ? isoDate.test(text) : system === 'US' && words[index + 1]?.isJoined === true) return true
    } else if (isDigitCode(text.charCodeAt(text.length - 1))) {
      if (text.length > 3 && text.includes('XXX')) return true
    } else if (beginsPhrase(text)) return true
  }
  return false
}

function beginsPhrase(text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    // An accent, a point or a dash may hide a word of the lists.
    if (code < 65 || code > 90) return isLetterCode(text.charCodeAt(0)) && text.length > 1
  }
  return phraseWords.has(text) || text.includes('XXX')
}

const phraseWords: ReadonlySet<string> = /* @__PURE__ */ new Set([
  ...wordsThatBegin,
  ...pressureWords.test.split(' '),
  ...pressureWords.working.split(' '),
  ...pressureWords.filler.split(' '),
  ...monthNames.flatMap((names) => names.split(' ')),
  'SP',
  'SU',
  'E',
  'X',
])

/** The words of a text with permits, months in words, whole dates and the words for a pressure put together. */
export function joinWords(words: readonly Word[], system: MarkingFamily): readonly Word[] {
  let joined: Word[] | undefined
  for (let index = 0; index < words.length; index++) {
    const word = words[index] as Word
    const { text: plain } = word
    const isFigure = isDigitCode(plain.charCodeAt(0))
    // Most words begin or end in a figure, and no label, month or permit does.
    if (isFigure ? !mayBeWholeDate(plain, system) : isDigitCode(plain.charCodeAt(plain.length - 1))) {
      joined?.push(word)
      continue
    }
    const following = words[index + 1]
    const whole = isFigure ? wholeDate(words, index, system) : pressureLabel(words, index, system)
    if (whole !== undefined) {
      joined ??= words.slice(0, index)
      if (whole.text !== '')
        joined.push({ ...word, text: whole.text, end: (words[index + whole.words - 1] as Word).end })
      index += whole.words - 1
      continue
    }
    const month = monthBeforeMark(words, index)
    if (month !== undefined) {
      joined ??= words.slice(0, index)
      joined.push({ ...word, text: month })
      continue
    }
    const text = following?.line === word.line ? jointText(word, following) : undefined
    if (text === undefined || following === undefined) joined?.push(word)
    else {
      joined ??= words.slice(0, index)
      joined.push({ ...word, text, end: following.end })
      index++
    }
  }
  return joined ?? words
}

function mayBeWholeDate(text: string, system: MarkingFamily): boolean {
  return text.length > 7 || (system === 'US' && text.length <= 2)
}

interface Joint {
  readonly text: string
  readonly words: number
}

/** `2024-07-15`, and on US shoulders `7/15/2024`: the day is left out. */
function wholeDate(words: readonly Word[], index: number, system: MarkingFamily): Joint | undefined {
  const { text, line, isJoined } = words[index] as Word
  if (!isDigitCode(text.charCodeAt(0))) return undefined
  if (text.length > 7) {
    const match = isoDate.exec(text)
    if (match === null) return undefined
    const [, year = '', month = ''] = match
    return { text: system === 'US' ? `${month}-${year}` : `${year}/${month}`, words: 1 }
  }
  if (system !== 'US' || isJoined || text.length > 2) return undefined
  const day = words[index + 1]
  const year = words[index + 2]
  if (day?.isJoined !== true || year?.isJoined !== true || year.line !== line || words[index + 3]?.isJoined === true)
    return undefined
  const isDate = isAllFigures(text, 0) && isAllFigures(day.text, 0) && day.text.length <= 2 && isYear(year.text)
  return isDate && Number(text) <= 12 && Number(day.text) <= 31 ? { text: `${text}-${year.text}`, words: 3 } : undefined
}

const isoDate = /^((?:19|20)\d{2})[-/.](\d{1,2})[-/.]\d{1,2}$/u

/** `PRESSION D'ÉPREUVE 348 BAR`, `WORKING PRESSURE 232 BAR`: the words before a pressure as its label, `À 15` behind it as nothing. */
function pressureLabel(words: readonly Word[], index: number, system: MarkingFamily): Joint | undefined {
  const first = words[index] as Word
  let role = pressureRoleOf(first.text)
  if (role === undefined) return undefined
  let at = index + 1
  for (; at < words.length && at < index + 5; at++) {
    const next = pressureRoleOf((words[at] as Word).text)
    if (next === undefined) break
    if (role === 'filler') role = next
  }
  if (role === 'filler' || !isPressure(words, at)) return undefined
  return { text: labels[system === 'US' ? 'US' : 'others'][role], words: at - index }
}

const labels = { US: { test: 'TP', working: 'WP' }, others: { test: 'PH', working: 'PW' } } as const

function pressureRoleOf(text: string): 'test' | 'working' | 'filler' | undefined {
  if (!isLetterCode(text.charCodeAt(0))) return undefined
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (isDigitCode(code)) return undefined
    if (code < 65 || code > 90) return pressureRoles.get(withoutAccents(text).replaceAll(/[.']/gu, ''))
  }
  return pressureRoles.get(text)
}

const pressureRoles: ReadonlyMap<string, 'test' | 'working' | 'filler'> = /* @__PURE__ */ new Map(
  (['filler', 'working', 'test'] as const).flatMap((role) =>
    pressureWords[role].split(' ').map((word): [string, 'test' | 'working' | 'filler'] => [word, role]),
  ),
)

function isPressure(words: readonly Word[], index: number): boolean {
  const word = words[index]
  if (word === undefined || !isDigitCode(word.text.charCodeAt(0))) return false
  const unit = /^[\d.,]+(.*)$/u.exec(word.text)?.[1]
  const spelled = unit === '' && words[index + 1]?.line === word.line ? words[index + 1]?.text : unit
  return spelled !== undefined && pressureUnits.has(spelled)
}

const pressureUnits: ReadonlySet<string> = /* @__PURE__ */ new Set([
  'BAR',
  'BARS',
  'PSI',
  'PSIG',
  'MPA',
  'ATÜ',
  'ATU',
  'KP/CM2',
  'KG/CM2',
  'KGF/CM2',
])

/** `JUN A 12`: a month in letters, the mark of who tested, and the year. */
function monthBeforeMark(words: readonly Word[], index: number): string | undefined {
  const { text, line } = words[index] as Word
  if (text.length < 3 || text.length > 4 || !isLetterCode(text.charCodeAt(2))) return undefined
  const month = months.get(text)
  const mark = words[index + 1]
  const year = words[index + 2]
  if (month === undefined || mark?.line !== line || year?.line !== line) return undefined
  return isLetterCode(mark.text.charCodeAt(0)) && mark.text.length <= 4 && isYear(year.text) ? month : undefined
}

function jointText(word: Word, following: Word): string | undefined {
  const { text } = word
  const last = text.charCodeAt(text.length - 1)
  if (!isLetterCode(last) || !isDigitCode(following.text.charCodeAt(0))) return undefined
  // The dash stands for the space, so that no offset moves.
  if (isPermit(text) && following.start === word.end + 1) return `${text}-${following.text}`
  const month = text.length < 3 ? undefined : months.get(text)
  return month !== undefined && isYear(following.text) ? `${month}/${following.text}` : undefined
}

/** DOT-SP, TC-SU, DOT-E and the letters alone, their number in the next word. */
function isPermit(text: string): boolean {
  const end = text.endsWith('SP') || text.endsWith('SU') ? 2 : text.endsWith('E') ? 1 : 0
  if (end === 0) return false
  const head = text.slice(0, -end)
  return head === 'DOT-' || head === 'TC-' || head === 'DOT' || (head === '' && end === 2)
}

function isYear(text: string): boolean {
  return (text.length === 2 || text.length === 4) && isAllFigures(text, 0)
}

const months: ReadonlyMap<string, string> = /* @__PURE__ */ new Map(
  monthNames.flatMap((names, index) =>
    names.split(' ').map((name): [string, string] => [name, String(index + 1).padStart(2, '0')]),
  ),
)

/** Words of shoulders without US marks in which a slash or a dash stands between marks and not within one. */
export function splitMarks(words: readonly Word[]): readonly Word[] {
  if (!hasSeveralMarks(words)) return words
  return words.flatMap((word, index) => {
    const pressures = pairOf(word, words[index + 1])
    if (pressures !== undefined) return pressures
    // The unit of a pair stands in both of its pressures.
    const isUnitOfPair = word.text === 'BAR' && index > 0 && pairOf(words[index - 1] as Word, word) !== undefined
    if (isUnitOfPair) return []
    if (isDashed(word)) return partsOf(word, betweenDashes)
    return isSeveralMarks(word) ? partsOf(word, pieces) : [word]
  })
}

function hasSeveralMarks(words: readonly Word[]): boolean {
  for (const word of words) {
    if (isDashed(word) || (word.text.includes('/') && (isSeveralMarks(word) || pair.test(word.text)))) return true
  }
  return false
}

/** `PW200-PH300BAR-13.9KG`: two marks or more that say what they are, and dashes between them. A serial number has none. */
function isDashed({ text, start, end }: Word): boolean {
  return text.length > 8 && text.includes('-') && end - start === text.length && (text.match(measured)?.length ?? 0) > 1
}

const measured = /(?:^|-)(?:P[WHST]\d{2,3}(?:BAR)?|\d+(?:[.,]\d+)?(?:BAR|KG|L|MM))(?=-|$)/gu

const pair = /^(\d{3})\/(\d{3})(BAR)?$/u

/** `200/300 BAR`: working and test pressure with one unit. */
function pairOf(word: Word, following: Word | undefined): readonly Word[] | undefined {
  const match = pair.exec(word.text)
  if (match === null || word.end - word.start !== word.text.length) return undefined
  const isUnitNext = following?.line === word.line && following.text === 'BAR'
  if (match[3] === undefined && !isUnitNext) return undefined
  return [
    { ...word, text: `${match[1] ?? ''}BAR`, end: word.start + 3, repair: undefined },
    {
      ...word,
      text: `${match[2] ?? ''}BAR`,
      start: word.start + 4,
      end: word.start + 7,
      isJoined: true,
      repair: undefined,
    },
  ]
}

function isSeveralMarks({ text, start, end }: Word): boolean {
  if (!text.includes('/') || end - start !== text.length) return false
  // Most are dates: figures alone are one mark.
  return hasLetter(text) && !oneMark.test(text)
}

// 2023/06, V4/02, 12/05/2023, 03/93V; USA/M9903; KP/CM2 with its figure; U/N; 3/4-14NPSM; A417/23 is left to the family.
const oneMark =
  /^(?:\d{2,4}\/\d{1,3}\/(?:EC|EEC|CE|CEE|EWG|EG)|\d{4}\/\d\/[A-Z/\d]+|\d{4}\/\d|V?\d{1,4}\/\d{1,4}(?:\/\d{2,4})?[A-Z+★]{0,2}|[A-Z]{1,3}\/M?\d{3,5}|[\d.,]*(?:KP|KGF?)\/CM2|U\/N|\d\/\d.*|\d*\/?|π?\w{1,5}\/\d{2})$/u
const pieces = /(?:19|20)\d{2}\/(?:0[1-9]|1[0-2])(?![^/])|\d{2}\/(?:0[1-9]|1[0-2])(?![^/])|[^/]+/gu

const betweenDashes = /[^-]+/gu

function partsOf(word: Word, parts: RegExp): readonly Word[] {
  return Array.from(word.text.matchAll(parts), ({ 0: text, index }) => ({
    ...word,
    text,
    start: word.start + index,
    end: word.start + index + text.length,
    isJoined: word.isJoined || index > 0,
    repair: undefined,
  }))
}
