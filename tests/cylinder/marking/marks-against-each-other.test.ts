import { describe, expect, test } from 'vitest'
import { readStamp } from '../../../src/cylinder/marking/index.ts'

// What the marks of one shoulder say about each other: each finding with its place and its figures, and the case beside it without one.

const asOf = '2026-11'
type Day = '2026-11' | 'none'
const found = (text: string, day: Day = asOf): readonly string[] =>
  readStamp(text, day === 'none' ? {} : { asOf: day }).findings.map(({ code, line, text: there, detail = {} }) => {
    const figures = Object.entries(detail).map(
      ([name, value]) => `${name} ${typeof value === 'number' ? Number(value.toFixed(2)) : value}`,
    )
    return [`${code} ${line}:${there}`, ...figures].join(', ')
  })
const us = (...lines: string[]): string => ['DOT-3AA2400', 'H1234 KELDA', ...lines].join('\n')
const un = (group: string, certificate = 'UN ISO 9809-1 D IN07 2024/06', ...more: string[]): string =>
  ['25P D MAREN 508231 H', group, certificate, ...more].join('\n')
const old = (...lines: string[]): string =>
  ['AIR 10 L', 'PS 200 BAR PT 300 BAR', 'NR 77142 FOREZ 12.8 KG', ...lines].join('\n')
const sound = 'PW200 PH300BAR 13.9KG 10.0L 4.6MM'

describe('fields', () => {
  test.each<[string, string, readonly string[]]>([
    ['a whole US shoulder', us('06 A 22'), []],
    ['without a serial number', 'DOT-3AA2400\nKELDA\n06 A 22', ['missing-field 2:, field serial']],
    ['without a date', us(), ['missing-field 1:, field firstTest']],
    ['a date of manufacture will do', us('MFD 06/2022'), ['separator 2:/']],
    ['a whole UN shoulder', un(sound), []],
    ['without its working pressure', un('PH300BAR 13.9KG 10.0L 4.6MM'), ['missing-field 2:, field workingPressure']],
    ['without its test pressure', un('PW200 13.9KG 10.0L 4.6MM'), ['missing-field 2:, field testPressure']],
    [
      'a UN shoulder without its mass; 178.71(q)(11) asks for a capacity with liquefied gases alone',
      un('PW200 PH300BAR 4.6MM'),
      ['missing-field 2:, field emptyMass'],
    ],
    [
      'another one without mass and capacity',
      un('PW200 PH300BAR 4.6MM').replace('UN ', ''),
      ['missing-field 2:, field waterCapacity', 'missing-field 2:, field emptyMass'],
    ],
    [
      'a date in the certification said to be missing is said once',
      un(sound, 'UN ISO 9809-1 D IN07'),
      ['missing-field 2:, field firstTest'],
    ],
    ['an older shoulder', old('05.2024'), ['material-not-stated 3:']],
    [
      'an older one without a serial number',
      'AIR 10 L\nPS 200 BAR PT 300 BAR\n05.2024',
      ['missing-field 2:, field serial', 'material-not-stated 2:'],
    ],
    [
      'an older one without a working pressure',
      'AIR 10 L\nPT 300 BAR\nNR 1 FOREZ\n05.2024',
      ['missing-field 3:, field workingPressure', 'material-not-stated 3:'],
    ],
    ['a month that is none is no missing date', us('13 A 22'), ['invalid-month 2:13']],
    [
      'a standard that is not known is no missing one',
      un(sound, 'UN ISO 9999 D IN07 2024/06'),
      ['unknown-specification 2:9999'],
    ],
  ])('%s', (_, text, wanted) => {
    expect(found(text)).toEqual(wanted)
  })
})

describe('signs behind a date', () => {
  test.each<[string, string, readonly string[]]>([
    ['a plus on 3AA', us('06 A 22 +'), []],
    ['a plus on 3AL', 'DOT-3AL3000\nH1234 KELDA\n06 A 22 +', ['plus-not-allowed 2:+']],
    ['a star on 3AA', us('06 A 22', '06 C208 26 ★'), []],
    ['a star on 3AL', 'DOT-3AL3000\nH1234 KELDA\n06 A 22\n06 C208 26 ★', ['star-not-allowed 3:★']],
    ['eddy-current letters on steel', us('06 A 22', '06 C208 26 VE'), ['eddy-current-on-steel 3:VE']],
    ['and on aluminium', 'DOT-3AL3000\nH1234 KELDA\n06 A 22\n06 C208 26 VE', []],
    ['signs of a type that no rule speaks of', 'DOT-SP9144-3000\nH1234 KELDA\n06 A 22 +', []],
  ])('%s', (_, text, wanted) => {
    expect(found(text)).toEqual(wanted)
  })
})

describe('two authorities', () => {
  // 2400 psi are 165.47 bar.
  const dual = (type: string, bars: number, main = '3AA2400'): readonly string[] =>
    found(`TC-${type}M${bars} DOT-${main}\nH1234 KELDA\n06 A 22`)
  test.each<[string, () => readonly string[], readonly string[]]>([
    ['the same within the rounding', () => dual('3AA', 166), []],
    [
      'a Canadian mark near the ten per cent value',
      () => dual('3AA', 184),
      ['dual-pressure-differs 0:TC-3AAM184, value 184, limit 165.47, unit bar'],
    ],
    ['12 % more', () => dual('3AA', 185), ['dual-pressure-differs 0:TC-3AAM185, value 185, limit 165.47, unit bar']],
    [
      'more than that',
      () => dual('3AA', 186),
      ['conflicting-dual-pressure 0:TC-3AAM186, value 186, limit 165.47, unit bar'],
    ],
    ['less', () => dual('3AA', 160), ['conflicting-dual-pressure 0:TC-3AAM160, value 160, limit 165.47, unit bar']],
    [
      '3A likewise',
      () => dual('3A', 184, '3A2400'),
      ['dual-pressure-differs 0:TC-3AM184, value 184, limit 165.47, unit bar'],
    ],
    [
      'not so another type',
      () => dual('3AL', 184, '3AL2400'),
      ['conflicting-dual-pressure 0:TC-3ALM184, value 184, limit 165.47, unit bar'],
    ],
  ])('%s', (_, got, wanted) => {
    expect(got()).toEqual(wanted)
  })
})

describe('the shell', () => {
  test.each<[string, string, readonly string[]]>([
    ['a test pressure of 3/2', 'PW200 PH300BAR 13.9KG 10.0L 4.6MM', []],
    [
      'one below it',
      'PW200 PH299BAR 13.9KG 10.0L 4.6MM',
      ['test-pressure-too-low 1:PH299BAR, value 299, limit 300, unit bar'],
    ],
    // 7850 kg/m³ × 4.6 mm × 4.836 × (10 L)^(2/3) = 8.11 kg
    [
      'a mass below that of its wall',
      'PW200 PH300BAR 8.1KG 10.0L 4.6MM',
      ['capacity-mass-mismatch 1:8.1KG, field waterCapacity, value 8.1, limit 8.11, unit kg'],
    ],
    ['a little more', 'PW200 PH300BAR 8.2KG 10.0L 4.6MM', []],
    // 2 × 300 bar × 10 L / 1.3 GPa × 7850 kg/m³ = 3.62 kg
    [
      'a mass below what holds the pressure',
      'PW200 PH300BAR 3.6KG 10.0L',
      ['capacity-mass-mismatch 1:3.6KG, field waterCapacity, value 3.6, limit 3.62, unit kg'],
    ],
    ['a little more without a wall', 'PW200 PH300BAR 3.7KG 10.0L', []],
    [
      'without a test pressure, by 3/2 of the working pressure',
      'PW200 3.6KG 10.0L',
      [
        'capacity-mass-mismatch 1:3.6KG, field waterCapacity, value 3.6, limit 3.62, unit kg',
        'missing-field 2:, field testPressure',
      ],
    ],
    // 4 kg per litre and 2 kg: 42 kg
    [
      'a mass beyond every cylinder',
      'PW200 PH300BAR 42.1KG 10.0L 4.6MM',
      ['capacity-mass-mismatch 1:42.1KG, field waterCapacity, value 42.1, limit 42, unit kg'],
    ],
    ['the heaviest', 'PW200 PH300BAR 42KG 10.0L 4.6MM', []],
    // radius of a shell of ten diameters: (4 × 10 L / 10 π)^(1/3) / 2 = 54.2 mm; 300 bar × 54.2 mm / 1.3 GPa = 1.25 mm
    [
      'a wall too thin for any steel',
      'PW200 PH300BAR 13.9KG 10.0L 1.2MM',
      ['wall-too-thin 1:1.2MM, field testPressure, value 1.2, limit 1.25, unit mm'],
    ],
    ['a little more wall', 'PW200 PH300BAR 13.9KG 10.0L 1.3MM', []],
    ['without a capacity nothing is held against it', 'PW200 PH300BAR 1.0KG 1.2MM', []],
  ])('%s', (_, group, wanted) => {
    expect(found(un(group))).toEqual(wanted)
  })

  test('aluminium has its own density and strength, an unknown metal the milder of both', () => {
    const alu = (group: string): readonly string[] =>
      found(un(group, 'UN ISO 7866 D IN07 2024/06').replace(' H\n', '\n'))
    // 2700 × 12 mm × 4.836 × 0.0464 = 7.27 kg; 300 bar × 54.2 mm / 0.5 GPa = 3.25 mm
    expect(alu('PW200 PH300BAR 7.2KG 10.0L 12.0MM')).toEqual([
      'capacity-mass-mismatch 1:7.2KG, field waterCapacity, value 7.2, limit 7.27, unit kg',
    ])
    expect(alu('PW200 PH300BAR 9.0KG 10.0L 3.2MM')).toEqual([
      'wall-too-thin 1:3.2MM, field testPressure, value 3.2, limit 3.25, unit mm',
    ])
    expect(alu('PW200 PH300BAR 9.0KG 10.0L 3.3MM')).toEqual([])
    const unknown = (mass: string, wall: string): readonly string[] =>
      found(`AIR 10 L\nPS 200 BAR PT 300 BAR\nNR 1 FOREZ ${mass} KG ${wall} MM\n05.2024`).filter(
        (each) => !each.startsWith('material'),
      )
    expect(unknown('7.2', '12.0')).toEqual([
      'capacity-mass-mismatch 2:7.2 KG, field waterCapacity, value 7.2, limit 7.27, unit kg',
    ])
    expect(unknown('7.3', '12.0')).toEqual([])
    expect(unknown('12', '1.2')).toEqual(['wall-too-thin 2:1.2 MM, field testPressure, value 1.2, limit 1.25, unit mm'])
  })

  test('high-strength steel is noted at its standard', () => {
    expect(found(un(sound, 'UN ISO 9809-2 D IN07 2024/06'))).toEqual(['high-strength-steel 2:ISO 9809-2'])
  })
})

describe('dates', () => {
  test.each<[string, string, readonly string[]]>([
    ['a first test in the month of the question', us('11 A 26'), []],
    ['a first test ahead', us('12 A 2026'), ['date-in-the-future 2:12 A 2026']],
    ['a test in the month of the question', us('06 A 22', '11 C208 26'), []],
    ['a test ahead', us('06 A 22', '12 C208 2026'), ['date-in-the-future 3:12 C208 2026']],
    ['a test in the month of the first', us('06 A 22', '06 C208 22'), []],
    [
      'a test before the first',
      us('06 A 22', '05 C208 22'),
      ['retest-before-first-test 3:05 C208 22, date 2022-05, wasDue 2022-06'],
    ],
    [
      'tests out of order',
      us('06 A 12', '06 C208 17', '06 D114 22', '05 B551 19'),
      ['retests-out-of-order 5:05 B551 19, date 2019-05'],
    ],
    ['the newest first', us('06 A 22', '06 C208 26', '05 D114 25', '04 B551 24'), []],
    ['two in one month', us('06 A 22', '06 C208 26', '06 D114 26'), []],
    ['a late test', us('06 A 15', '07 C208 20'), ['late-retest 3:07 C208 20, date 2020-07, wasDue 2020-06']],
    ['on its last month', us('06 A 15', '06 C208 20'), []],
    ['after a star', us('06 A 05', '06 C208 10 ★', '06 C208 20'), []],
    [
      'late after a star',
      us('06 A 05', '06 C208 10 ★', '07 C208 20'),
      ['late-retest 4:07 C208 20, date 2020-07, wasDue 2020-06'],
    ],
    [
      'three years for 3HT',
      'DOT-3HT1850\nH1234 KELDA\n06 A 20\n07 C208 23',
      ['late-retest 3:07 C208 23, date 2023-07, wasDue 2023-06'],
    ],
  ])('US: %s', (_, text, wanted) => {
    expect(found(text)).toEqual(wanted)
  })

  test.each<[string, string, readonly string[]]>([
    [
      'a mark after less than five years may be an inspection',
      un(sound, 'UN ISO 9809-1 D IN07 2019/06', 'K11 24/05'),
      ['retest-kind-not-stamped 3:K11 24/05'],
    ],
    ['after five years it is none', un(sound, 'UN ISO 9809-1 D IN07 2019/06', 'K11 24/06'), []],
    [
      'counted from the one before',
      un(sound, 'UN ISO 9809-1 D IN07 2014/06', 'K11 19/06', 'K11 22/06'),
      ['retest-kind-not-stamped 4:K11 22/06'],
    ],
    ['a late mark elsewhere is not noted', un(sound, 'UN ISO 9809-1 D IN07 2014/06', 'K11 24/06'), []],
    [
      'a date ahead by an interval is the next one',
      un(sound, 'UN ISO 9809-1 D IN07 2024/06', 'K11 27/06'),
      ['date-is-next-due 3:K11 27/06'],
    ],
    [
      'by the interval from a test',
      un(sound, 'UN ISO 9809-1 D IN07 2014/05', 'K11 22/06', 'K11 27/06'),
      ['date-is-next-due 4:K11 27/06'],
    ],
    [
      'ahead by no interval of any country',
      un(sound, 'UN ISO 9809-1 D IN07 2024/06', 'K11 27/07'),
      ['date-in-the-future 3:K11 27/07', 'retest-kind-not-stamped 3:K11 27/07'],
    ],
    [
      'a date in the month of the question has been',
      un(sound, 'UN ISO 9809-1 D IN07 2024/11', 'K11 26/11'),
      ['retest-kind-not-stamped 3:K11 26/11'],
    ],
    [
      'a visual inspection ahead is no next date',
      un(sound, 'UN ISO 9809-1 D IN07 2024/12', 'VISUAL 2026/12'),
      ['date-in-the-future 3:VISUAL 2026/12', 'retest-kind-not-stamped 3:VISUAL 2026/12'],
    ],
  ])('UN: %s', (_, text, wanted) => {
    expect(found(text)).toEqual(wanted)
  })

  const withoutMetal = (text: string, day: Day = asOf): readonly string[] =>
    found(text, day).filter((each) => !each.startsWith('material'))
  test.each<[string, string, readonly string[]]>([
    [
      'a first date ahead may be an expiry',
      old('12.2026'),
      ['date-in-the-future 3:12.2026', 'date-may-be-expiry 3:12.2026'],
    ],
    [
      'a later one likewise',
      old('05.2024', '01.2027'),
      ['date-in-the-future 4:01.2027', 'date-may-be-expiry 4:01.2027'],
    ],
    [
      'a German gas word says it of any first date',
      old('05.2024').replace('AIR', 'DRUCKLUFT'),
      ['date-may-be-expiry 3:05.2024'],
    ],
    ['not where a date is named as the next one', old('05.2024', 'NEXT TEST 05.2026').replace('AIR', 'DRUCKLUFT'), []],
    [
      'and once',
      old('12.2026').replace('AIR', 'DRUCKLUFT'),
      ['date-in-the-future 3:12.2026', 'date-may-be-expiry 3:12.2026'],
    ],
    ['nothing of it without a date', old('').replace('AIR', 'DRUCKLUFT'), ['missing-field 3:, field firstTest']],
  ])('older shoulders: %s', (_, text, wanted) => {
    expect(withoutMetal(text)).toEqual(wanted)
  })

  test('two figures that lie a little ahead are of this century, except for the first date of an old US mark', () => {
    const dates = (prefix: string): readonly (string | undefined)[] => {
      const { firstTest, retests } = readStamp(`${prefix}-3A1800\nH1234 KELDA\n6-30\n06 C208 24`, { asOf })
      return [firstTest, ...retests.map(({ date }) => date)]
    }
    expect([dates('ICC'), dates('CRC'), dates('DOT')]).toEqual([
      ['1930-06', '2024-06'],
      ['1930-06', '2024-06'],
      ['2030-06', '2024-06'],
    ])
    const later = readStamp('ICC-3A1800\nH1234 KELDA\n6-50\n06 C208 24\n06 C208 29', { asOf })
    expect(later.retests.map(({ date }) => date)).toEqual(['2024-06', '2029-06'])
  })

  test('without a day nothing lies ahead', () => {
    expect(found(un(sound, 'UN ISO 9809-1 D IN07 2024/06', 'K11 2027/06'), 'none')).toEqual([
      'retest-kind-not-stamped 3:K11 2027/06',
    ])
    expect(found(us('12 A 2031'), 'none')).toEqual([])
    expect(found(us('06 A 2022', 'FINAL 06/2023'), 'none')).toEqual(['separator 3:/'])
  })

  const ofDates = (...lines: readonly string[]): readonly string[] => {
    const { retests, deadlines = [] } = readStamp(un(sound, ...lines), { asOf })
    return [...retests.map(({ date }) => date), ...deadlines.map(({ date }) => `next ${date}`)]
  }

  test.each<[string, readonly string[], readonly string[]]>([
    ['the month of the question is none', ['2024/11', 'K11 26/11', 'K11 28/11'], ['2026-11', 'next 2028-11']],
    ['two and a half years', ['2024/06', 'K11 26/12'], ['next 2026-12']],
    ['by a first test that lies ahead itself', ['2027/01', 'K11 29/01'], ['next 2029-01']],
    ['not by another date ahead', ['2024/06', 'K11 27/07', 'K11 29/07'], ['2027-07', '2029-07']],
    ['not by a next date that has passed', ['2024/05', 'NEXT TEST 2025/06', 'K11 27/06'], ['2027-06', 'next 2025-06']],
    ['two figures ten years ahead', ['2024/06', 'K11 36/11'], ['2036-11']],
    ['two figures further ahead have been', ['2024/06', 'K11 36/12'], ['1936-12']],
  ])('next dates: %s', (_, [first = '', ...lines], wanted) => {
    expect(ofDates(`UN ISO 9809-1 D IN07 ${first}`, ...lines)).toEqual(wanted)
  })

  test('what becomes a next date takes its place among the others that are named', () => {
    const stamp = readStamp(un(sound, 'UN ISO 9809-1 D IN07 2024/06', 'NEXT TEST 2026/12', 'K11 27/06 FINAL 2044/06'), {
      asOf,
    })
    expect(stamp.deadlines).toEqual([
      { date: '2026-12', kind: 'next due' },
      { date: '2027-06', kind: 'next due' },
      { date: '2044-06', kind: 'end of life' },
    ])
    expect(stamp.retests).toEqual([])
    expect(stamp.fields.filter(({ name }) => name === 'retest')).toEqual([])
    expect(stamp.fields.filter(({ name }) => name === 'deadline').map(({ text }) => text)).toEqual([
      'NEXT TEST 2026/12',
      'K11 27/06',
      'FINAL 2044/06',
    ])
  })

  test.each<[string, string, readonly string[]]>([
    ['a life that ends in the month of the question', 'FINAL 2026/11', []],
    ['one that has ended', 'FINAL 2026/10', ['life-ended 3:FINAL 2026/10']],
    ['a next date that has passed ends no life', 'NEXT TEST 2026/10', []],
  ])('%s', (_, line, wanted) => {
    expect(found(un(sound, 'UN ISO 9809-1 D IN07 2024/06', line))).toEqual(wanted)
  })
})

describe('composites and alloys', () => {
  test.each(['ISO 11119-2', 'ISO 11119-3'])('UN %s without UW', (standard) => {
    const text = un('PW200 PH300BAR 5.9KG 10.0L', `UN ${standard} D IN07 2024/06`).replace(' H\n', '\n')
    expect(found(text)).toEqual([`composite-without-uw 2:${standard}`])
    expect(found(`${text} UW`)).toEqual([])
    expect(found(text.replace('UN ', ''))).toEqual([])
  })

  test('other composites are not asked for it', () => {
    expect(found(un('PW200 PH300BAR 5.9KG 10.0L', 'UN ISO 11119-1 D IN07 2024/06').replace(' H\n', '\n'))).toEqual([])
  })

  const alu = (made: string, ...more: string[]): readonly string[] =>
    found(['DOT-3AL3000', 'P1234 KELDA', made, ...more].join('\n')).filter((each) => each.includes('6351'))
  const permit = (made: string, ...more: string[]): readonly string[] =>
    found(['DOT-E9144-3000', 'P1234 KELDA', made, ...more].join('\n')).filter((each) => each.includes('6351'))
  test.each<[string, () => readonly string[], readonly string[]]>([
    ['made before February 1990', () => alu('01 A 90', '06 C208 24'), ['presumed-6351 0:DOT-3AL']],
    ['made in it', () => alu('02 A 90', '06 C208 24'), ['possible-6351-one-maker 0:DOT-3AL']],
    ['made before July 1990', () => alu('06 A 90', '06 C208 24'), ['possible-6351-one-maker 0:DOT-3AL']],
    ['made in July 1990', () => alu('07 A 90', '06 C208 24'), []],
    ['without a date', () => alu(''), ['presumed-6351 0:DOT-3AL']],
    ['examined once of twice', () => alu('01 A 90', '06 C208 19 VE', '06 C208 24'), ['possible-6351 3:06 C208 19 VE']],
    ['examined, of the months of one maker', () => alu('03 A 90', '06 C208 24 VE'), ['possible-6351 3:06 C208 24 VE']],
    ['examined though made later', () => alu('07 A 95', '06 C208 24 VE'), []],
    ['made outside the US', () => alu('07 A 95', 'MADE IN ITALY'), ['presumed-6351 0:DOT-3AL']],
    ['made in the US', () => alu('07 A 95', 'MADE IN USA'), []],
    ['an exemption of the time', () => permit('01 A 90'), ['presumed-6351 0:DOT-E9144']],
    ['an exemption of later', () => permit('02 A 90'), []],
    ['an exemption without a date', () => permit(''), []],
    ['an exemption examined', () => permit('01 A 90', '06 C208 24 VE'), ['possible-6351 3:06 C208 24 VE']],
  ])('%s', (_, got, wanted) => {
    expect(got()).toEqual(wanted)
  })

  test('the hint follows the age, not the months of one maker', () => {
    const hint = (made: string): string | undefined =>
      readStamp(`DOT-3AL3000\nP1234 KELDA\n${made}`, { asOf }).alloyHint
    expect([hint('01 A 90'), hint('02 A 90'), hint('07 A 90')]).toEqual(['6351-T6', undefined, undefined])
  })

  test('steel is none of it', () => {
    expect(found(us('01 A 85')).filter((each) => each.includes('6351'))).toEqual([])
  })
})
