import { LitrebarError, requireKeys, requireText, requireWord } from '../errors/index.ts'
import {
  absolute,
  altitudeOf,
  depthOf,
  difference,
  displacedVolumeOf,
  fractionOf,
  gasVolumeOf,
  gauge,
  internalVolumeOf,
  type MeasuredDimension,
  massFractionOf,
  measure,
  temperatureOf,
  volumeFractionOf,
} from './construct.ts'
import type { Dimension } from './dimension.ts'
import type {
  AbsolutePressure,
  Altitude,
  Depth,
  DisplacedVolume,
  GasVolume,
  GaugePressure,
  InternalVolume,
  MassFraction,
  MoleFraction,
  PressureDifference,
  Quantity,
  Temperature,
  TemperatureDifference,
  VolumeFraction,
} from './quantity.ts'
import type { Unit } from './unit.ts'
import { allUnits } from './unit-list.ts'

/** What a text can be read as, and the type that comes of it. Dimensions without a constructor of their own are read by their name. */
export interface ParsedKinds extends MeasuredKinds {
  'gauge pressure': GaugePressure
  'absolute pressure': AbsolutePressure
  'pressure difference': PressureDifference
  temperature: Temperature
  'temperature difference': TemperatureDifference
  'internal volume': InternalVolume
  'gas volume': GasVolume
  'displaced volume': DisplacedVolume
  depth: Depth
  altitude: Altitude
  'mole fraction': MoleFraction
  'volume fraction': VolumeFraction
  'mass fraction': MassFraction
}

type MeasuredKinds = { [D in MeasuredDimension]: Quantity<D> }

/** The name of something that a text can be read as. */
export type ParsedKind = keyof ParsedKinds

/** How the writer of the text writes numbers. */
export interface ParseOptions {
  /** Without it, `3,000` is refused: it may be three or three thousand. */
  readonly decimal?: 'point' | 'comma'
}

/** Kinds that are not simply `measure` of their dimension. */
type OwnKind = Exclude<ParsedKind, MeasuredDimension>

interface Reading {
  readonly dimension: Dimension
  /** For pressures: the datum that the kind asks for, and what a text may say of it. */
  readonly datum?: 'gauge' | 'absolute' | 'difference' | 'none'
  readonly make: (n: number, unit: Unit) => number
}

const readings: Readonly<Record<OwnKind, Reading>> = {
  'gauge pressure': { dimension: 'pressure', datum: 'gauge', make: (n, unit) => gauge(n, unit as Unit<'pressure'>) },
  'absolute pressure': {
    dimension: 'pressure',
    datum: 'absolute',
    make: (n, unit) => absolute(n, unit as Unit<'pressure'>),
  },
  'pressure difference': {
    dimension: 'pressure',
    datum: 'difference',
    make: (n, unit) => difference(n, unit as Unit<'pressure'>),
  },
  temperature: { dimension: 'temperature', make: (n, unit) => temperatureOf(n, unit as Unit<'temperature'>) },
  'temperature difference': { dimension: 'temperature', make: (n, unit) => difference(n, unit as Unit<'temperature'>) },
  'internal volume': { dimension: 'volume', make: (n, unit) => internalVolumeOf(n, unit as Unit<'volume'>) },
  'gas volume': { dimension: 'volume', make: (n, unit) => gasVolumeOf(n, unit as Unit<'volume'>) },
  'displaced volume': { dimension: 'volume', make: (n, unit) => displacedVolumeOf(n, unit as Unit<'volume'>) },
  depth: { dimension: 'length', make: (n, unit) => depthOf(n, unit as Unit<'length'>) },
  altitude: { dimension: 'length', make: (n, unit) => altitudeOf(n, unit as Unit<'length'>) },
  'mole fraction': { dimension: 'fraction', make: (n, unit) => fractionOf(n, unit as Unit<'fraction'>) },
  'volume fraction': { dimension: 'fraction', make: (n, unit) => volumeFractionOf(n, unit as Unit<'fraction'>) },
  'mass fraction': { dimension: 'fraction', make: (n, unit) => massFractionOf(n, unit as Unit<'fraction'>) },
}

/**
 * Reads a quantity as people write it: `232 bar`, `3000 psig`, `206,8 kPa(a)`, `80 cu ft`, `1 013.25 hPa`.
 * Refuses what has two meanings and shows the place; never guesses between gauge and absolute, which the caller states as the kind.
 *
 * @param text - a number and a unit
 * @param kind - what the text stands for
 * @param options - decimal sign of the writer, where it is known
 * @returns the branded quantity, SI
 * @throws LitrebarError `input` for what is not text; `unit` with `position` for a number or unit that cannot be read, or has two meanings; `range` for a value its kind does not accept
 * @example
 * parseQuantity('232 bar', 'gauge pressure') // => 23200000
 */
export function parseQuantity<Kind extends ParsedKind>(
  text: string,
  kind: Kind,
  options: ParseOptions = {},
): ParsedKinds[Kind] {
  requireKeys('options', options, { decimal: false })
  requireText('text', text, textHint)
  const { decimal } = options
  if (decimal !== undefined) requireWord('options.decimal', decimal, ['point', 'comma'])
  requireKind('kind', kind)
  const reading = Object.hasOwn(readings, kind) ? readings[kind as OwnKind] : measured(kind as MeasuredDimension)
  const { number, end } = readNumber(text, decimal)
  const unit = readUnit(text, end, reading)
  return reading.make(number, unit) as ParsedKinds[Kind]
}

/**
 * The unit that a text names, as in the head of a column. Marks such as gauge or absolute are refused: a unit knows nothing of them.
 *
 * @param text - symbol or spelling of a unit
 * @param dimension - what the column holds
 * @returns the unit
 * @throws LitrebarError `input` for what is not text; `unit` with `position` for a unit that is unknown, of another dimension, or has two meanings
 * @example
 * parseUnit('cmH2O', 'pressure').factor // => 98.0665
 */
export function parseUnit<D extends Dimension>(text: string, dimension: D): Unit<D> {
  requireText('text', text, textHint)
  if (!unitsBySpelling.has(dimension)) requireWord('dimension', dimension, [...unitsBySpelling.keys()])
  return readUnit(text, 0, { dimension, datum: 'none', make: (n) => n }) as Unit<D>
}

function measured(dimension: MeasuredDimension): Reading {
  return { dimension, make: (n, unit) => measure(n, unit as Unit<MeasuredDimension>) }
}

// Digits and at most one decimal point before the letter of a unit, but for the letters that may begin an exponent:
// nearly every text, and read at a fraction of the time.
const plainNumber = /^-?\d+(?:\.\d+)?(?= ?(?:[A-DF-Za-df-wyz°%]|$))/

const numberAtStart = /^\s*([+\-−]?)((?:\d[\d\s'’.,]*)?\d|[.,]\d+)(?:\s*(?:[eE]|[×x]\s*10\s*\^?)\s*([+\-−]?\d+))?/

function readNumber(
  text: string,
  decimal: 'point' | 'comma' | undefined,
): { readonly number: number; readonly end: number } {
  const plainDigits = decimal === 'comma' ? undefined : plainNumber.exec(text)?.[0]
  if (plainDigits !== undefined) return { number: Number(plainDigits), end: plainDigits.length }
  const found = numberAtStart.exec(text)
  if (found === null) {
    throw refusal(text, 0, text.length, 'a number followed by a unit', 'Begin with digits, such as "232 bar".')
  }
  const [whole, sign = '', digits = '', exponent = '0'] = found
  const start = whole.indexOf(digits)
  const plain = withPoint(text, digits, start, decimal)
  const number = Number(`${sign === '' || sign === '+' ? '' : '-'}${plain}e${exponent.replace('−', '-')}`)
  return { number, end: whole.length }
}

/** The digits with a point as decimal sign and no grouping. */
function withPoint(text: string, digits: string, start: number, decimal: 'point' | 'comma' | undefined): string {
  const ungrouped = digits.replace(/[\s'’]/g, '')
  if (/[\s'’]/.test(digits) && !/^\d{1,3}([\s'’]\d{3})+([.,]\d+)?$/.test(digits)) {
    throw refusal(text, start, start + digits.length, 'one number', 'Spaces may only part groups of three digits.')
  }
  const sign = decimal ?? decimalSignOf(text, ungrouped, start, start + digits.length)
  const [mark, group] = sign === 'comma' ? [',', '.'] : ['.', ',']
  const [whole = '', ...decimals] = ungrouped.split(mark)
  const grouped = whole.includes(group)
  if (decimals.length > 1 || decimals[0]?.includes(group) || (grouped && !/^\d{1,3}([.,]\d{3})+$/.test(whole))) {
    throw refusal(
      text,
      start,
      start + digits.length,
      'one number',
      `Write groups of three digits and one decimal ${sign}.`,
    )
  }
  return `${whole.replaceAll(group, '') || '0'}.${decimals[0] ?? '0'}`
}

/** Which sign is the decimal sign, where the number itself shows it. */
function decimalSignOf(text: string, digits: string, start: number, end: number): 'point' | 'comma' {
  const commas = digits.split(',').length - 1
  const points = digits.split('.').length - 1
  if (commas === 0) return points > 1 ? 'comma' : 'point'
  if (points > 0) return digits.lastIndexOf(',') > digits.lastIndexOf('.') ? 'comma' : 'point'
  if (commas > 1) return 'point'
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) {
    throw refusal(
      text,
      start,
      end,
      'a number with one meaning',
      `Write ${digits.replace(',', '')} or ${digits.replace(',', '.')}, or state the decimal sign.`,
    )
  }
  return 'comma'
}

/** Units that the trade writes with two meanings, and what to write instead. */
const ambiguous: readonly { readonly spelling: string; readonly dimension: Dimension; readonly instead: string }[] = [
  { spelling: 'b', dimension: 'pressure', instead: 'bar, or psi' },
  { spelling: 'ata', dimension: 'pressure', instead: 'atm for standard atmospheres, or kgf/cm² for technical ones' },
  { spelling: 'ATA', dimension: 'pressure', instead: 'atm for standard atmospheres, or kgf/cm² for technical ones' },
  { spelling: 'atü', dimension: 'pressure', instead: 'kgf/cm², as a gauge pressure' },
  { spelling: 'msw', dimension: 'pressure', instead: 'msw (10 kPa)' },
  {
    spelling: 'fsw',
    dimension: 'pressure',
    instead: 'fsw (64 lb/ft³), fsw (1/33 atm), fsw (1/33.08 atm) or fsw (1/33.066 atm)',
  },
  { spelling: 'cf', dimension: 'volume', instead: 'ft³' },
  { spelling: 'gal', dimension: 'volume', instead: 'gal (US) or gal (imp)' },
  { spelling: 'gallon', dimension: 'volume', instead: 'gal (US) or gal (imp)' },
  { spelling: 'gallons', dimension: 'volume', instead: 'gal (US) or gal (imp)' },
  { spelling: 'mH', dimension: 'pressure', instead: 'mH2O' },
  { spelling: 'mil', dimension: 'length', instead: 'mm, or in' },
]

// "232 bar gauge", "psig", "kPa(a)": longest first, so that "absolute" is not read as "a"
const datumMarks = [
  ['gauge', 'gauge'],
  ['absolute', 'absolute'],
  ['abs', 'absolute'],
  ['(g)', 'gauge'],
  ['(a)', 'absolute'],
  ['g', 'gauge'],
  ['a', 'absolute'],
] as const

const wantedOf = {
  gauge: 'a gauge pressure',
  absolute: 'an absolute pressure',
  difference: 'a difference of pressures',
  none: 'a unit without a datum',
} as const

function readUnit(text: string, from: number, { dimension, datum }: Reading): Unit {
  const written = text.slice(from)
  const start = from + written.length - written.trimStart().length
  const end = start + written.trim().length
  const spelling = normal(written)
  const plain = unitsBySpelling.get(dimension)?.get(spelling)
  if (plain !== undefined) return plain
  const refused = ambiguous.find((row) => row.dimension === dimension && row.spelling === spelling)
  if (refused !== undefined) {
    throw refusal(text, start, end, 'a unit with one meaning', `Write ${refused.instead}.`)
  }
  if (spelling === '' && dimension !== 'fraction') {
    const number = text.trim()
    const examples = (usual[dimension] ?? firstSymbolsOf(dimension)).map((symbol) => `${number} ${symbol}`.trim())
    throw refusal(text, start, end, `a unit of ${dimension}`, `Write ${examples.join(' or ')}.`)
  }
  const marked = unitWithMark(spelling, dimension, datum)
  if (marked !== undefined) return marked
  const whole = unitSpelled(spelling, dimension)
  if (whole !== undefined) return whole
  if (dimension === 'pressure') {
    for (const [mark, says] of datumMarks) {
      const unit = spelling.endsWith(mark) ? unitSpelled(spelling.slice(0, -mark.length).trim(), dimension) : undefined
      if (unit === undefined) continue
      if (says === datum) return unit
      throw refusal(
        text,
        start,
        end,
        wantedOf[datum ?? 'none'],
        `The text says ${says}: ask for that kind, or leave the mark out.`,
      )
    }
  }
  const elsewhere = allUnits.find((unit) => spells(unit, spelling))
  throw refusal(
    text,
    start,
    end,
    `a unit of ${dimension}`,
    elsewhere === undefined
      ? `Write one of ${allUnits
          .filter((unit) => unit.quantity === dimension && unit.symbol !== '')
          .map((unit) => unit.symbol)
          .join(', ')}.`
      : `${elsewhere.symbol} is a unit of ${elsewhere.quantity}.`,
  )
}

/** Units that people write most, for the hint. */
const usual: Partial<Readonly<Record<Dimension, readonly string[]>>> = {
  pressure: ['bar', 'psi'],
  temperature: ['°C', '°F'],
  volume: ['L', 'ft³'],
  length: ['m', 'ft'],
  mass: ['kg', 'lb'],
}

function firstSymbolsOf(dimension: Dimension): readonly string[] {
  return allUnits
    .flatMap(({ quantity, symbol }) => (quantity === dimension && symbol !== '' ? [symbol] : []))
    .slice(0, 2)
}

/** Units by dimension, then by what is written: nearly every text, and without forming every spelling anew. */
const unitsBySpelling: ReadonlyMap<Dimension, ReadonlyMap<string, Unit>> = /* @__PURE__ */ indexed(allUnits)

function indexed(units: readonly Unit[]): Map<Dimension, Map<string, Unit>> {
  const index = new Map<Dimension, Map<string, Unit>>()
  for (const unit of units) {
    const { quantity, symbol, spellings = [] } = unit
    const known = index.get(quantity) ?? new Map<string, Unit>()
    index.set(quantity, known)
    for (const spelling of [symbol, ...spellings]) if (!known.has(spelling)) known.set(spelling, unit)
  }
  return index
}

/** The unit of a pressure that says the datum which was asked for. */
function unitWithMark(spelling: string, dimension: Dimension, datum: Reading['datum']): Unit | undefined {
  if (dimension !== 'pressure') return undefined
  for (const [mark, says] of datumMarks) {
    if (says !== datum || !spelling.endsWith(mark)) continue
    const unit = unitsBySpelling.get(dimension)?.get(spelling.slice(0, -mark.length).trim())
    if (unit !== undefined) return unit
  }
  return undefined
}

const textHint = 'Pass a text such as "232 bar", or build the quantity from a number and its unit: gauge(232, bar).'

/** Refuses what no text can be read as. */
export function requireKind(argument: string, kind: unknown): void {
  if (typeof kind === 'string' && Object.hasOwn(readings, kind)) return
  if (!unitsBySpelling.has(kind as Dimension))
    requireWord(argument, kind, [...Object.keys(readings), ...unitsBySpelling.keys()])
}

function unitSpelled(spelling: string, dimension: Dimension): Unit | undefined {
  const units = allUnits.filter((unit) => unit.quantity === dimension)
  const exact = units.find((unit) => spells(unit, spelling))
  if (exact !== undefined) return exact
  // Case is forgiven, except in a first m or M, which tells milli from mega.
  const candidates = units.filter((unit) => spells(unit, spelling, true))
  return candidates.length === 1 ? candidates[0] : undefined
}

function spells(unit: Unit, spelling: string, anyCase = false): boolean {
  const fold = (text: string): string =>
    anyCase ? text.charAt(0).replace(/[^mM]/, (c) => c.toLowerCase()) + text.slice(1).toLowerCase() : text
  const wanted = fold(spelling)
  return [unit.symbol, ...(unit.spellings ?? [])].some((known) => fold(normal(known)) === wanted)
}

// ASCII without a star, and single spaces inside
const isPlain = /^[!-)+-~]*(?: [!-)+-~]+)*$/

/** One form for the ways in which the same unit reaches us: superscripts, spaces, middle dots, micro signs. */
function normal(text: string): string {
  const trimmed = text.trim()
  if (isPlain.test(trimmed)) return trimmed
  return trimmed
    .replace(/\s+/g, ' ')
    .replaceAll('²', '2')
    .replaceAll('³', '3')
    .replaceAll('₂', '2')
    .replaceAll('μ', 'µ')
    .replace(/ ?[·⋅*] ?/g, '·')
}

function refusal(text: string, start: number, end: number, expected: string, hint: string): LitrebarError {
  const line = text.slice(0, start).split('\n').length - 1
  // not lastIndexOf with a start: it takes -1 for 0, and would find a newline that begins the text
  const lineStart = text.slice(0, start).lastIndexOf('\n') + 1
  return new LitrebarError({
    code: 'unit',
    argument: 'text',
    value: `${JSON.stringify(text)} (at ${JSON.stringify(text.slice(start, end))})`,
    expected,
    hint,
    position: { line, start: start - lineStart, end: end - lineStart },
  })
}
