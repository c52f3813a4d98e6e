import { isAllFigures } from './us-names.ts'
import { isDigitCode, isLetterCode, type Word } from './words.ts'

// What is one mark and typed as two words, `SP 9144` or `June 2024`, is put together before any family is read; what is several marks and
// typed as one word, `PW232/PH348BAR/14.9KG`, is taken apart.

/** The words of a text with permits and months in words put together. */
export function joinWords(words: readonly Word[]): readonly Word[] {
  let joined: Word[] | undefined
  for (let index = 0; index < words.length; index++) {
    const word = words[index] as Word
    const following = words[index + 1]
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

const months: ReadonlyMap<string, string> = /* @__PURE__ */ new Map(
  monthNames.flatMap((names, index) =>
    names.split(' ').map((name): [string, string] => [name, String(index + 1).padStart(2, '0')]),
  ),
)

/** Words of shoulders without US marks in which a slash stands between marks and not within one. */
export function splitSlashes(words: readonly Word[]): readonly Word[] {
  if (!words.some(isSeveralMarks)) return words
  return words.flatMap((word) => (isSeveralMarks(word) ? partsOf(word) : [word]))
}

function isSeveralMarks({ text, start, end }: Word): boolean {
  if (!text.includes('/') || end - start !== text.length) return false
  return !oneMark.test(text)
}

// 2023/06, V4/02, 12/05/2023, 03/93V; USA/M9903; KP/CM2 with its figure; U/N; 3/4-14NPSM; A417/23 is left to the family.
const oneMark =
  /^(?:V?\d{1,4}\/\d{1,4}(?:\/\d{2,4})?[A-Z+★]{0,2}|[A-Z]{1,3}\/M?\d{3,5}|[\d.,]*(?:KP|KG)\/CM2|U\/N|\d\/\d.*|\d*\/?|π?\w{1,5}\/\d{2})$/u
const pieces = /(?:19|20)\d{2}\/(?:0[1-9]|1[0-2])(?![^/])|\d{2}\/(?:0[1-9]|1[0-2])(?![^/])|[^/]+/gu

function partsOf(word: Word): readonly Word[] {
  return Array.from(word.text.matchAll(pieces), ({ 0: text, index }) => ({
    ...word,
    text,
    start: word.start + index,
    end: word.start + index + text.length,
    isJoined: word.isJoined || index > 0,
    repair: undefined,
  }))
}
