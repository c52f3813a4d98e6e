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
  readonly repair: 'lower-case' | 'look-alike' | undefined
}

/** A character that was taken for a space between words. */
export interface Separator {
  readonly line: number
  readonly start: number
  readonly end: number
}

export interface Scan {
  readonly lines: readonly string[]
  readonly words: readonly Word[]
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
    const kind = at < text.length ? kindAt(text, at, slashSeparates) : lineBreak
    if (kind === lineBreak) {
      lines.push(text.slice(lineStart, at))
      if (text.charCodeAt(at) === 13 && text.charCodeAt(at + 1) === 10) at++
      at++
      lineStart = at
      isJoined = false
    } else if (kind === space) {
      at++
    } else if (kind === separator) {
      separators.push({ line: lines.length, start: at - lineStart, end: at - lineStart + 1 })
      isJoined = true
      at++
    } else {
      const from = at
      let isPlain = kind !== foldable
      for (at++; at < text.length; at++) {
        const code = text.charCodeAt(at)
        // Capitals and figures are most of a stamp: no need to ask further.
        if ((code > 64 && code < 91) || (code > 47 && code < 58)) continue
        const within = kindAt(text, at, slashSeparates)
        if (within < plain) break
        if (within === foldable) isPlain = false
      }
      const raw = text.slice(from, at)
      const line = lines.length
      const start = from - lineStart
      words.push(
        isPlain
          ? { text: raw, line, start, end: at - lineStart, isJoined, repair: undefined }
          : folded(raw, line, start, isJoined),
      )
      isJoined = false
    }
  }
  return { lines, words, separators }
}

const lineBreak = 0
const space = 1
const separator = 2
const plain = 3
const foldable = 4

/** What a character is to the scanner; a dash, a slash or a comma depends on its neighbours. */
function kindAt(text: string, at: number, slashSeparates: boolean): number {
  const code = text.charCodeAt(at)
  if (code > 127) return kindBeyondAscii(code)
  if (code >= 97) return code <= 122 ? foldable : code === 127 ? space : code === 126 ? plain : separator // { | }
  if (code > 59) return code === 61 || (code > 90 && code !== 96) ? separator : plain // = [ \ ] ^ _
  if (code > 47) return code >= 58 ? separator : plain
  if (code <= 32) return code === 10 || code === 13 ? lineBreak : space
  if (code === 42) return isBetweenSigns(text, at) ? separator : foldable // 07*08, and 08* for the star
  if (code === 40 || code === 41) return separator
  if (code === 44)
    return isDigitCode(text.charCodeAt(at - 1)) && isDigitCode(text.charCodeAt(at + 1)) ? plain : separator
  if (code === 46) return isDigitCode(text.charCodeAt(at - 1)) && isGap(text, at + 1) ? separator : plain // the end of a sentence
  if (code === 47) return slashSeparates || isAlone(text, at) ? separator : plain
  return code === 45 && isAlone(text, at) ? separator : plain
}

function kindBeyondAscii(code: number): number {
  if (code <= 0xa0 || code === 0x1680 || code === 0x202f || code === 0x205f || code === 0x3000 || code === 0xfeff)
    return space
  if (code === 0x2028 || code === 0x2029) return lineBreak
  if (code >= 0x2000 && code <= 0x200f) return space
  if (code === 0xb7 || code === 0x2022 || code === 0x394 || code === 0x2206) return separator
  return code >= 0x2500 && code <= 0x25ff ? separator : foldable // lines, blocks, triangles and circles: the mark of an inspector
}

function isBetweenSigns(text: string, at: number): boolean {
  return isFigureOrCapital(text.charCodeAt(at - 1)) && isFigureOrCapital(text.charCodeAt(at + 1))
}

function isFigureOrCapital(code: number): boolean {
  return isDigitCode(code) || (code >= 65 && code <= 90) || (code >= 97 && code <= 122)
}

function isAlone(text: string, at: number): boolean {
  return isGap(text, at - 1) && isGap(text, at + 1)
}

function isGap(text: string, at: number): boolean {
  if (at < 0 || at >= text.length) return true
  const code = text.charCodeAt(at)
  return code <= 32 || (code > 127 && kindBeyondAscii(code) <= space)
}

function folded(raw: string, line: number, start: number, isJoined: boolean): Word {
  let text = ''
  let isLowered = false
  let isReplaced = false
  let at = 0
  for (const character of raw) {
    const code = character.charCodeAt(0)
    const from = at
    at += character.length
    if (code >= 97 && code <= 122) {
      const isNumber = isDigitCode(raw.charCodeAt(at)) && (from === 0 || isDigitCode(raw.charCodeAt(from - 1)))
      if (code === 108 && isNumber) {
        text += '1' // a small l before figures
        isReplaced = true
        continue
      }
      text += String.fromCharCode(code - 32)
      // The x of M25x2 is written small.
      isLowered ||= !(code === 120 && isNumber)
    } else if (code < 127 && code !== 42) {
      text += character
    } else {
      const substitute = lookAlikes.get(character)
      isReplaced ||= substitute !== undefined
      const capital = substitute ?? capitalOf(character)
      isLowered ||= substitute === undefined && capital !== character
      text += capital
    }
  }
  const repair = isReplaced ? 'look-alike' : isLowered ? 'lower-case' : undefined
  return { text, line, start, end: start + raw.length, isJoined, repair }
}

/** The capital of a letter with an accent, where it is one character too. */
function capitalOf(character: string): string {
  const code = character.charCodeAt(0)
  if (code < 0xe0 || code > 0x24f) return character
  const capital = character.toUpperCase()
  return capital.length === character.length ? capital : character
}

// Signs of other alphabets and of typing aids that look like what is stamped. One character each, so that no offset moves.
const lookAlikes: ReadonlyMap<string, string> = new Map([
  ...pairs('‐‑‒–—−﹣－', '--------'),
  ...pairs('×✕✖⨯', 'XXXX'),
  ...pairs('‘’ʼ´²', "''''2"),
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

export function isDigitCode(code: number): boolean {
  return code >= 48 && code <= 57
}

export function isLetterCode(code: number): boolean {
  return (code >= 65 && code <= 90) || (code >= 0xc0 && code <= 0x24f)
}
