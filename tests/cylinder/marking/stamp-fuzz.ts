import { readStamp } from '../../../src/cylinder/marking/index.ts'
import { requireStamp, requireStampFields } from '../../../src/cylinder/marking/require-stamp.ts'
import { isLitrebarError } from '../../../src/errors/index.ts'

export interface FuzzResult {
  readonly read: number
  readonly refused: number
  readonly slowest: { readonly milliseconds: number; readonly length: number }
}

/**
 * Feeds texts to the reader that nobody would stamp, and checks everything that it promises about any text:
 * a stamp whose findings and fields lie inside their lines, or an error of code `stamp` with a place.
 * Throws at the first broken promise, with the text.
 */
export function fuzzStamps(options: {
  readonly count: number
  readonly seed: number
  readonly seeds: readonly string[]
}): FuzzResult {
  const random = randomNumbers(options.seed)
  let read = 0
  let refused = 0
  let slowest = { milliseconds: 0, length: 0 }
  for (let trial = 0; trial < options.count; trial++) {
    const text = trial % 3 === 0 ? randomText(random) : damaged(pick(random, options.seeds), random)
    const began = performance.now()
    try {
      const stamp = readStamp(text, random() < 0.5 ? {} : { asOf: '2026-11' })
      check(text, stamp.findings)
      check(text, stamp.fields)
      // what the reader gives, everything that takes a stamp takes
      requireStamp('stamp', stamp, ['system', 'retests', 'fields', 'findings'])
      requireStampFields('stamp.fields', stamp.fields)
      for (const retest of [{ date: stamp.firstTest ?? '2000-01' }, ...stamp.retests]) {
        if (!/^\d{4}-(0[1-9]|1[0-2])$/.test(retest.date))
          throw new Error(`date ${retest.date} of ${JSON.stringify(text)}`)
      }
      for (const value of numbersOf(stamp)) {
        if (!Number.isFinite(value) || value <= 0) throw new Error(`figure ${value} of ${JSON.stringify(text)}`)
      }
      read++
    } catch (thrown) {
      if (!isLitrebarError(thrown)) throw thrown
      if (thrown.code !== 'stamp' || thrown.position === undefined)
        throw new Error(`untyped error for ${JSON.stringify(text)}`)
      check(text, [thrown.position])
      refused++
    }
    const milliseconds = performance.now() - began
    if (milliseconds > slowest.milliseconds) slowest = { milliseconds, length: text.length }
  }
  return { read, refused, slowest }
}

function numbersOf(stamp: ReturnType<typeof readStamp>): number[] {
  const { servicePressure, workingPressure, testPressure, waterCapacity, emptyMass, minimumWall } = stamp
  return [servicePressure, workingPressure, testPressure, waterCapacity, emptyMass, minimumWall].filter(
    (n) => n !== undefined,
  )
}

function check(
  text: string,
  places: readonly { readonly line: number; readonly start: number; readonly end: number; readonly text?: string }[],
): void {
  const lines = text.split(/\r\n|[\n\r\u2028\u2029]/)
  for (const { line, start, end, text: stated } of places) {
    const whole = lines[line]
    const isInside = whole !== undefined && start >= 0 && start <= end && end <= whole.length
    if (!isInside || (stated !== undefined && stated !== whole.slice(start, end))) {
      throw new Error(`place ${line}:${start}-${end} of ${JSON.stringify(text)}`)
    }
  }
}

const pieces = [
  ...'0123456789OIlXMPH+-/.,|★π×ü °ABEZ'.split(''),
  ...['DOT-', 'TC-', '3AA', '3AL', 'UN', 'ISO', '9809-1', 'PW', 'PH', 'BAR', 'KG', 'MM', 'L', 'SP', 'REE', 'WC', 'TW'],
  ...[
    '\n',
    '\r\n',
    '\r',
    '\u2028',
    '\t',
    '  ',
    '\u0000',
    '\ud83d\ude00',
    '\ud800',
    'ß',
    'İ',
    '٣',
    'A417',
    '05',
    '25P',
    '2016/03',
  ],
]

function randomText(random: () => number): string {
  const length = Math.floor(random() ** 3 * 200)
  let text = ''
  for (let k = 0; k < length; k++) {
    text += random() < 0.9 ? pick(random, pieces) : String.fromCharCode(Math.floor(random() * 0xffff))
  }
  return text
}

function damaged(seed: string, random: () => number): string {
  let text = seed
  const blows = 1 + Math.floor(random() * 6)
  for (let blow = 0; blow < blows; blow++) {
    const at = Math.floor(random() * (text.length + 1))
    const to = at + Math.floor(random() ** 2 * 8)
    const kind = random()
    if (kind < 0.3) text = text.slice(0, at) + text.slice(to)
    else if (kind < 0.6) text = text.slice(0, at) + pick(random, pieces) + text.slice(to)
    else if (kind < 0.8) text = text.slice(0, at) + pick(random, pieces) + text.slice(at)
    else text = text.slice(0, at) + text.slice(at, to).repeat(2) + text.slice(at)
  }
  return text
}

function pick<Item>(random: () => number, items: readonly Item[]): Item {
  return items[Math.floor(random() * items.length)] as Item
}

/** A small generator of our own: the same texts on every machine. */
function randomNumbers(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}
