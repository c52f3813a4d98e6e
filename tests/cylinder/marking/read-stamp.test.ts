import { expect, test } from 'vitest'
import { type Finding, readStamp, type Stamp } from '../../../src/cylinder/marking/index.ts'
import { bar, inUnit, kilogram, kilogramForcePerSquareCentimetre, litre, psi } from '../../../src/units/index.ts'
import fixture from '../../fixtures/stamps.json' with { type: 'json' }
import { fuzzStamps } from './stamp-fuzz.ts'

const asOf = '2026-11'
const codes = ({ findings }: Stamp): string[] => findings.map(({ code }) => code)
const only = (stamp: Stamp, code: string): Finding[] => stamp.findings.filter((finding) => finding.code === code)
const marksOf = (stamp: Stamp): Stamp => ({ ...stamp, fields: [], findings: [] })
const seeds = [...fixture.valid, ...fixture.malformed].map(({ lines }) => lines.join('\n'))

test('a US stamp reads the same in small letters, on one line and with other separators, each repair noted', () => {
  const plain = readStamp('DOT-3AA2265\nHB10427 NORDKAP\n06 K 97 +\n05 A417 02 +', { asOf })
  const variants = {
    'dot-3aa2265\nhb10427 nordkap\n06 k 97 +\n05 a417 02 +': 'lower-case',
    'DOT-3AA2265 HB10427 NORDKAP 06 K 97 + 05 A417 02 +': undefined,
    'DOT 3AA 2265 HB10427 NORDKAP 06 K 97 + 05 A417 02 +': 'spacing',
    'DOT-3AA2265 | HB10427 | NORDKAP | 06 K 97 + | 05 A417 02 +': 'separator',
    'DOT-3AA2265/HB10427/NORDKAP/06 K 97+/05-A417-02+': 'separator',
    'DOT-3AA\n2265\nHB10427\nNORDKAP\n06\nK\n97\n+\n05\nA417\n02\n+': 'line-break',
    'D0T-3AA2265\nHB10427 NORDKAP\nO6 K 97 +\n05 A417 O2 +': 'look-alike',
    'DOT‑3AA2265\nHB10427 NORDKAP\n06 К 97 +\n05 А417 02 +': 'look-alike', // a no-break hyphen and Cyrillic letters
    'ＤＯＴ－３ＡＡ２２６５\nHB10427 NORDKAP\n06K97+\n05A41702+': 'look-alike', // full width, and dates without spaces
  }
  for (const [text, repair] of Object.entries(variants)) {
    const stamp = readStamp(text, { asOf })
    expect(marksOf(stamp)).toEqual(marksOf(plain))
    const repairs = codes(stamp).filter((code) =>
      ['lower-case', 'spacing', 'separator', 'line-break', 'look-alike'].includes(code),
    )
    expect({ text, repairs: [...new Set(repairs)] }).toEqual({ text, repairs: repair === undefined ? [] : [repair] })
  }
})

test('a UN stamp reads the same with spaces, a decimal comma, joined words and on one line', () => {
  const plain = readStamp(seeds[fixture.valid.findIndex(({ id }) => id === 'V07')] ?? '', { asOf })
  const variants = [
    '25P D MAREN 508231 H PW232 PH348BAR 14.9KG 12.0L 5.1MM UN ISO 9809-1 D IN07 2016/03 K11 21/04',
    '25P D MAREN 508231 H\nPW 232 PH 348 BAR 14,9 KG 12,0 L 5,1 MM\nUN ISO9809-1 D IN07 2016/03\nK11 2021/04',
    '25p d maren 508231 h\npw232 ph348bar 14.9kg 12.0l 5.1mm\nu/n iso 9809-1 d in07 2016/03\nk11 21/04',
    '25P D MAREN 508231 H\nPW232 PH348BAR 14.9KG 12.OL 5.IMM\nUN IS0 9809-I D IN07 2016-03\nK11 21.04',
  ]
  for (const text of variants)
    expect({ text, marks: marksOf(readStamp(text, { asOf })) }).toEqual({ text, marks: marksOf(plain) })
})

test('the printed examples of the US and UN rules', () => {
  // 49 CFR 178.35(f): DOT-3A1800 / 1234 / XY / AB 5-95
  expect(readStamp('DOT-3A1800\n1234\nXY\nAB 5-95', { asOf })).toMatchObject({
    specification: '3A',
    serial: '1234',
    maker: 'XY',
    inspector: 'AB',
    firstTest: '1995-05',
  })
  // UN 6.2.2.7.5
  const un = readStamp('25E D MF 765432 H\nPW200 PH300BAR 62.1KG 50L 5.8MM\nUN ISO 9809-1 F IB 2000/12', { asOf })
  expect(un).toMatchObject({ system: 'UN', countryOfApproval: 'F', inspector: 'IB', firstTest: '2000-12', maker: 'MF' })
  expect([inUnit(un.waterCapacity as never, litre), inUnit(un.emptyMass as never, kilogram)]).toEqual([50, 62.1])
  expect(un.thread).toEqual({ designation: '25E', form: 'taper' })
  expect(un.findings.filter(({ severity }) => severity !== 'note')).toEqual([])
  // The letter between month and year is the inspector: 05A08 is May 2008 (STD-081).
  expect(readStamp('DOT-3AA2400 M4711 X88 05A08', { asOf })).toMatchObject({ firstTest: '2008-05', inspector: 'A' })
  // DOT-SPnnnnn-3442, formerly E (STD-083)
  for (const permit of ['SP12345', 'E7042']) {
    const stamp = readStamp(`DOT-${permit}-3442\nX88 KELDA\n05 A 08`, { asOf })
    expect(stamp).toMatchObject({ specification: 'special permit', permit })
    expect(inUnit(stamp.servicePressure as never, psi)).toBeCloseTo(3442, 9)
  }
  // TC-3ALM207 alone is metric (STD-082); ICC and CTC are older prefixes (STD-086)
  expect(inUnit(readStamp('TC-3ALM207\nP33 KELDA\n07 V 08', { asOf }).servicePressure as never, bar)).toBe(207)
  expect(readStamp('CTC-3A1800\nP33 KELDA\n07 V 68', { asOf })).toMatchObject({ prefix: 'CTC', firstTest: '1968-07' })
  // An older European example (STD-106)
  const old = readStamp('DRUCKLUFT-TG\n200 BAR T 300bar\n14,6 KG 12,0L\n88/05', { asOf })
  expect([inUnit(old.emptyMass as never, kilogram), inUnit(old.testPressure as never, bar)]).toEqual([14.6, 300])
})

test('marks that name themselves: closure, rejection elastic expansion, water and tare weight', () => {
  const stamp = readStamp('DOT-3AA2400 SPUN\nX881 KELDA REE 75.3\nTW 31.2 LB WC 26.4 LB\n05 A 08', { asOf })
  expect(stamp.closure).toBe('SPUN')
  expect(stamp.rejectionElasticExpansion).toBeCloseTo(75.3e-6, 12)
  expect(stamp.emptyMass).toBeCloseTo(14.15208, 4)
  // 26.4 lb of water at 20 °C (998.2 kg/m³) is 11.99643 L
  expect(inUnit(stamp.waterCapacity as never, litre)).toBeCloseTo(11.99643, 5)
})

test('atmospheres above ambient are kilogram-force per square centimetre', () => {
  const stamp = readStamp('PRESSLUFT 7 L 150 ATÜ PRÜF 225 ATÜ NR 12 KELDA 05.62', { asOf })
  expect(inUnit(stamp.workingPressure as never, kilogramForcePerSquareCentimetre)).toBeCloseTo(150, 9)
  expect(inUnit(stamp.testPressure as never, bar)).toBeCloseTo(220.65, 2)
})

test('what contradicts itself is found, all of it, at its place', () => {
  const stamp = readStamp(
    'TC-3ALM250 DOT-3AL3000\nP1 BRISKA\n07 V 08\n06 D114 03\n05 D114 19 ★\n04 D114 18\n12 D114 26 +',
    { asOf },
  )
  expect(stamp.findings.map(({ code, line, text }) => [code, line, text])).toEqual([
    ['conflicting-dual-pressure', 0, 'TC-3ALM250'],
    ['retest-before-first-test', 3, '06 D114 03'],
    ['late-retest', 4, '05 D114 19 ★'],
    ['star-not-allowed', 4, '★'],
    ['retests-out-of-order', 5, '04 D114 18'],
    ['date-in-the-future', 6, '12 D114 26 +'],
    ['late-retest', 6, '12 D114 26 +'],
    ['plus-not-allowed', 6, '+'],
  ])
})

test('a wall, a mass or a capacity that cannot belong together', () => {
  const withMarks = (marks: string): Stamp =>
    readStamp(`25P D MAREN 5 H\n${marks}\nUN ISO 9809-1 D IN07 2016/03`, { asOf })
  const fits = 'PW200 PH300BAR 14.9KG 12.0L 5.1MM'
  expect(codes(withMarks(fits))).toEqual([])
  // 1.2 mm on 12 L at 300 bar means more than 1300 MPa even in the slimmest shell.
  expect(only(withMarks(fits.replace('5.1MM', '1.2MM')), 'wall-too-thin')).toHaveLength(1)
  // 8 kg is less than the steel of a 12 L sphere of 5.1 mm: 10.2 kg.
  expect(only(withMarks(fits.replace('14.9KG', '8.0KG')), 'capacity-mass-mismatch')[0]?.detail?.limit).toBeCloseTo(
    10.15,
    2,
  )
  expect(only(withMarks(fits.replace('12.0L', '0.9L')), 'capacity-mass-mismatch')).toHaveLength(1)
  expect(only(withMarks(fits.replace('12.0L', '1200L')), 'implausible-number')).toHaveLength(1)
})

test('an expiry date in place of a test date: where German words stand, and where the date lies ahead', () => {
  const german = readStamp('DRUCKLUFT 10 L 200 BAR PRUEF 300 BAR NR 4471 STERNWERK\n05.86 T7', { asOf })
  const ahead = readStamp('AIR 10 L PS 200 BAR PE 300 BAR NR 4471 FOREZ\n05/2024\n07/2029', { asOf })
  expect(codes(german)).toContain('date-may-be-expiry')
  expect(only(ahead, 'date-may-be-expiry').map(({ text }) => text)).toEqual(['07/2029'])
})

test('dates without an order of their own follow those that have one, else the doubt is said', () => {
  const sure = readStamp('AIR 11 L PS 200 BAR PE 300 BAR\n89-03\n04-05', { asOf })
  expect([sure.firstTest, sure.retests[0]?.date, codes(sure).includes('ambiguous-date')]).toEqual([
    '1989-03',
    '2004-05',
    false,
  ])
  for (const text of ['5.86', '05.86', '5.1986', '05/1986', '1986-05']) {
    expect({ text, date: readStamp(`AIR 11 L PS 200 BAR\n${text}`, { asOf }).firstTest }).toEqual({
      text,
      date: '1986-05',
    })
  }
  const unsure = readStamp('AIR 11 L PS 200 BAR PE 300 BAR\n04-05', { asOf })
  expect(codes(unsure)).toContain('ambiguous-date')
})

test('a mark of a second family and a row of X are reported, not resolved', () => {
  const both = readStamp('DOT-3AL3000 P1 BRISKA 07 V 08 ISO 7866', { asOf })
  expect(only(both, 'two-families').map(({ text }) => text)).toEqual(['ISO'])
  expect(codes(readStamp('XXXXXXXX\nDOT-3AA2265', { asOf }))).toContain('condemned')
  expect(codes(readStamp('DOT-3AA2265 CONDEMNED', { asOf }))).toContain('condemned')
})

test('fields that every stamp of a family has are missed', () => {
  expect(only(readStamp('DOT-3AA2265', { asOf }), 'missing-field').map(({ detail }) => detail?.field)).toEqual([
    'serial',
    'firstTest',
  ])
  const un = readStamp('UN ISO 7866 GB AB3 2014/09', { asOf })
  expect(only(un, 'missing-field').map(({ detail }) => detail?.field)).toContain('testPressure')
})

test('without a day to count from, two-digit years get a century and a finding says so', () => {
  const stamp = readStamp('DOT-3AA2265\nHB1 NORDKAP\n06 K 49\n06 A417 50')
  expect([stamp.firstTest, stamp.retests[0]?.date]).toEqual(['2049-06', '1950-06'])
  expect(only(stamp, 'century-assumed')).toHaveLength(1)
  expect(codes(readStamp('UN ISO 7866 GB AB3 2014/09'))).not.toContain('century-assumed')
})

test('a text without any mark is refused with its place', () => {
  const refusal = expect.objectContaining({ code: 'stamp', position: { line: 1, start: 2, end: 7 } })
  expect(() => readStamp('\n  hello world')).toThrow(refusal)
  expect(() => readStamp('')).toThrow(
    expect.objectContaining({ code: 'stamp', position: { line: 0, start: 0, end: 0 } }),
  )
  expect(() => readStamp('DOT-3AA2265', { asOf: '2026-13' })).toThrow(expect.objectContaining({ code: 'input' }))
})

test('a requalifier alone is enough to be read as a US stamp, and what is missing is said', () => {
  const stamp = readStamp('05 A417 02 +', { asOf })
  expect(stamp.retests).toEqual([
    { date: '2002-05', kind: 'hydraulic', body: 'A417', country: undefined, suffixes: ['+'] },
  ])
  expect(only(stamp, 'missing-field').map(({ detail }) => detail?.field)).toEqual([
    'specification',
    'serial',
    'firstTest',
  ])
})

test('20 000 texts that nobody would stamp give a stamp or a typed error, their places inside the text', () => {
  const { read, refused } = fuzzStamps({ count: 20_000, seed: 20261125, seeds })
  expect(read + refused).toBe(20_000)
  expect(read).toBeGreaterThan(5_000)
  expect(refused).toBeGreaterThan(1_000)
})

test('reading time grows with the length, not with its square', () => {
  // The worst texts we could think of: all separators, all letters, all dates, all look-alikes, one word.
  for (const piece of [
    '| ',
    'AB ',
    '05 A4 02 + ',
    'O',
    'I0 ',
    'DOT-',
    'PW200 ',
    '25P ',
    'UN ISO ',
    '1.',
    'REE ',
    '\n',
    '+ ',
    'E ',
    '9-',
  ]) {
    expect({ piece, isLinear: isLinear('DOT-3AA2265 ', piece) }).toEqual({ piece, isLinear: true })
  }
})

test('reading time grows with the number of next dates, not with its square', () => {
  expect(isLinear('AIR 10 L\nPS 200 BAR PT 300 BAR\nNR 1 FOREZ\n06.2022\n', '06.2027\n')).toBe(true)
})

/** Processor time, since the machine may be busy. Eight times the text: linear takes 8 times as long, quadratic 64 times. */
function isLinear(head: string, piece: string): boolean {
  const time = (count: number): number => {
    const text = head + piece.repeat(count)
    const began = process.cpuUsage()
    readStamp(text, { asOf })
    return process.cpuUsage(began).user / 1000
  }
  time(2_000)
  const short = Math.min(time(5_000), time(5_000), time(5_000))
  const long = Math.min(time(40_000), time(40_000))
  return long < 30 * short + 60
}

test('a date whose year is 39 is no US type 39', () => {
  const text =
    '25P NORDKAP HB10427 H\nPW100 PH150BAR 1.0KG 1.0L 1.5MM\nUN ISO 9809-1 D IN07 1930/06\nK12 39/01\n9998 39/02'
  const { system, specification, retests } = readStamp(text, { asOf: '1939-02' })
  expect([system, specification, retests.map(({ date }) => date)]).toEqual(['UN', 'ISO 9809-1', ['1939-01', '1939-02']])
})

test.each(['DOT-3AA2265\nWC 52016 LBS', 'TC-3AAM 184\nWC 52016 KG'])(
  '%j: water that no cylinder holds is a figure left unread',
  (text) => {
    const { findings, waterCapacity } = readStamp(text, { asOf })
    expect(waterCapacity).toBeUndefined()
    expect(findings.map(({ code }) => code)).toContain('unread-figure')
  },
)
