// The scanner under `readStamp`: one pass, one character at a time, so that no text can make it slow.

/** A stretch of text between spaces, in capitals, with where it stands. */
export interface Word {
  /** As read: capitals, plain dashes, `★`, `π`. */
  readonly text: string
  readonly line: number
  readonly start: number
  readonly end: number
  /** Whether a separator, not a space, stood before it on the same line. */
  readonly isJoined: boolean
  /** What was changed to read it. */
  readonly repair?: 'lower-case' | 'look-alike'
}

export interface Separator {
  readonly line: number
  readonly start: number
  readonly end: number
}

export interface Scan {
  readonly lines: readonly string[]
  readonly words: readonly Word[]
  /** Characters that were taken for a space between words. */
  readonly separators: readonly Separator[]
}

/** Splits a text into words. `/` separates in US marks and belongs to dates and makers in the others. */
export function scanWords(text: string, slashSeparates: boolean): Scan {
  const lines: string[] = []
  const words: Word[] = []
  const separators: Separator[] = []
  let lineStart = 0
  let isJoined = false
  let at = 0
  while (at <= text.length) {
    const code = at < text.length ? text.charCodeAt(at) : 10
    if (isLineBreak(code)) {
      lines.push(text.slice(lineStart, at))
      if (code === 13 && text.charCodeAt(at + 1) === 10) at++
      at++
      lineStart = at
      isJoined = false
    } else if (isSpace(code)) {
      at++
    } else if (isSeparator(text, at, slashSeparates)) {
      separators.push({ line: lines.length, start: at - lineStart, end: at - lineStart + 1 })
      isJoined = true
      at++
    } else {
      const from = at
      let isPlain = true
      do {
        const c = text.charCodeAt(at)
        if (c > 126 || (c >= 97 && c <= 122) || c === 42) isPlain = false
        at++
      } while (at < text.length && !endsWord(text, at, slashSeparates))
      const raw = text.slice(from, at)
      const place = { line: lines.length, start: from - lineStart, end: at - lineStart, isJoined }
      words.push(isPlain ? { text: raw, ...place } : folded(raw, place))
      isJoined = false
    }
  }
  return { lines, words, separators }
}

function endsWord(text: string, at: number, slashSeparates: boolean): boolean {
  const code = text.charCodeAt(at)
  return isSpace(code) || isLineBreak(code) || isSeparator(text, at, slashSeparates)
}

function folded(raw: string, place: Omit<Word, 'text' | 'repair'>): Word {
  let text = ''
  let isLowered = false
  let isReplaced = false
  for (const character of raw) {
    const code = character.charCodeAt(0)
    if (code >= 97 && code <= 122) {
      text += String.fromCharCode(code - 32)
      isLowered = true
    } else if (code < 127 && code !== 42) {
      text += character
    } else {
      const substitute = lookAlikes.get(character)
      isReplaced ||= substitute !== undefined
      isLowered ||= lowerCaseLetters.has(character)
      text += substitute ?? lowerCaseLetters.get(character) ?? character
    }
  }
  if (isReplaced) return { text, ...place, repair: 'look-alike' }
  return isLowered ? { text, ...place, repair: 'lower-case' } : { text, ...place }
}

const lowerCaseLetters: ReadonlyMap<string, string> = new Map([
  ['ä', 'Ä'],
  ['ö', 'Ö'],
  ['ü', 'Ü'],
  ['é', 'É'],
  ['è', 'È'],
  ['ø', 'Ø'],
  ['å', 'Å'],
  ['æ', 'Æ'],
])

// Signs of other alphabets and of typing aids that look like what is stamped. One character each, so that no offset moves.
const lookAlikes: ReadonlyMap<string, string> = new Map([
  ...pairs('‐‑‒–—−﹣－', '--------'),
  ...pairs('×✕✖⨯', 'XXXX'),
  ...pairs('*☆✩✪✭✯⭐⋆∗＊', '★★★★★★★★★★'),
  ...pairs('＋﹢', '++'),
  ...pairs('ПΠп∏', 'ππππ'),
  ...pairs('АВЕКМНОРСТУХІЅ', 'ABEKMHOPCTYXIS'), // Cyrillic
  ...pairs('ΑΒΕΖΗΙΚΜΝΟΡΤΥΧ', 'ABEZHIKMNOPTYX'), // Greek
  ...fullWidth(),
])

function pairs(from: string, to: string): [string, string][] {
  return Array.from(from, (character, index) => [character, to.charAt(index)])
}

function fullWidth(): [string, string][] {
  return Array.from({ length: 94 }, (_, index) => {
    const code = index + 33
    const capital = code >= 97 && code <= 122 ? code - 32 : code
    return [String.fromCharCode(code + 0xfee0), String.fromCharCode(capital)]
  })
}

function isLineBreak(code: number): boolean {
  return code === 10 || code === 13 || code === 0x2028 || code === 0x2029
}

function isSpace(code: number): boolean {
  if (code <= 32) return code !== 10 && code !== 13
  if (code < 0x80) return code === 127
  return (
    (code >= 0x80 && code <= 0xa0) ||
    (code >= 0x2000 && code <= 0x200f) ||
    code === 0x1680 ||
    code === 0x202f ||
    code === 0x205f ||
    code === 0x3000 ||
    code === 0xfeff
  )
}

/** `|`, `;`, `:`, `_`, `\`, bullets; a comma that is no decimal sign; a dash or slash on its own. */
function isSeparator(text: string, at: number, slashSeparates: boolean): boolean {
  const code = text.charCodeAt(at)
  if (code === 44) return !(isDigitCode(text.charCodeAt(at - 1)) && isDigitCode(text.charCodeAt(at + 1)))
  if (code === 47) return slashSeparates || isAlone(text, at)
  if (code === 45) return isAlone(text, at)
  return code === 124 || code === 59 || code === 58 || code === 95 || code === 92 || code === 0xb7 || code === 0x2022
}

function isAlone(text: string, at: number): boolean {
  const before = at === 0 ? 32 : text.charCodeAt(at - 1)
  const after = at + 1 >= text.length ? 32 : text.charCodeAt(at + 1)
  return (isSpace(before) || isLineBreak(before)) && (isSpace(after) || isLineBreak(after))
}

export function isDigitCode(code: number): boolean {
  return code >= 48 && code <= 57
}

export function isLetterCode(code: number): boolean {
  return (code >= 65 && code <= 90) || (code >= 0xc0 && code <= 0x24f)
}
