import { describe, expect, test } from 'vitest'
import { assessFilling, type FillingRequest } from '../../../src/cylinder/index.ts'
import { readStamp } from '../../../src/cylinder/marking/index.ts'
import { dryAir, mixture, nitrox, pureGas, trimix } from '../../../src/gas-law/index.ts'
import { bar, gauge, inUnit, psi } from '../../../src/units/index.ts'
import { rich, steel, un, unStamp, us } from '../../fixtures/filling-requests.ts'

// Reasons with their sources and words, and each condition on both sides of its edge.

const reasons = (request: FillingRequest) => {
  const filling = assessFilling(request)
  for (const { code, text } of filling.because) expect(text.length, code).toBeGreaterThan(10)
  for (const { text, code } of filling.because)
    expect(filling.because.filter((other) => other.text === text && other.code === code)).toHaveLength(1)
  for (const source of filling.sources) expect(typeof source).toBe('string')
  expect(new Set(filling.sources).size).toBe(filling.sources.length)
  return filling.because
}
const find = (request: FillingRequest, code: string) => reasons(request).find((reason) => reason.code === code)
const has = (request: FillingRequest, code: string): boolean => find(request, code) !== undefined

test('what heads several rows that are due is named once', () => {
  const condemned = {
    ...un,
    stamp: `${un.stamp as string}\nCONDEMNED`,
    rules: { ...un.rules, ruleSet: 'german-diving' },
  } as const
  expect(reasons(condemned).filter(({ code }) => code === 'condemned')).toHaveLength(1)
})

test('in order: what is due, and nothing else that could be left out', () => {
  expect(reasons(us).map(({ code }) => code)).toContain('due')
  expect(assessFilling(us).sources).toEqual(expect.arrayContaining(['cfr-49-180-209', 'cfr-49-173-301a']))
  expect(assessFilling(un).sources.every((source) => source.length > 3)).toBe(true)
})

test.each<[string, FillingRequest, string, string, string | undefined]>([
  [
    'type 39',
    { ...us, stamp: 'DOT-39-1800 NRC\nKELDA M9901\n06 A 24' },
    'not-refillable',
    'only its maker fills it, once',
    'memory',
  ],
  [
    'nobody looked',
    { ...us, outside: undefined } as never,
    'outside-not-looked-at',
    'an empty list',
    'cfr-49-173-301-2015',
  ],
  [
    'European marks in the US',
    { ...un, stamp: (un.stamp as string).replace('UN ', ''), country: 'US' },
    'foreign-marks',
    'without DOT, TC or UN marks',
    'cfr-49-173-301',
  ],
  [
    'US marks in Norway',
    { ...us, country: 'NO' },
    'foreign-marks',
    'whether cylinders with US marks may be filled in NO',
    undefined,
  ],
  [
    'a rule from elsewhere',
    { ...us, country: 'CA' },
    'foreign-rule',
    'us-180.209 is a rule of US, but the cylinder is filled in CA',
    undefined,
  ],
  [
    'an outlet made for less',
    { ...un, valve: { ...un.valve, outlet: 'cga-850' } },
    'outlet-range',
    'is rated for 207 bar, the cylinder for 232 bar',
    expect.any(String) as never,
  ],
  [
    'a valve rated for less',
    { ...us, valve: { ...us.valve, ratedPressure: gauge(2400, psi) } },
    'valve-rating',
    'rated for 165 bar, the cylinder for 207 bar',
    undefined,
  ],
  [
    'an outlet for inert gas',
    { ...us, valve: { ...us.valve, outlet: 'cga-580' } },
    'outlet-for-another-gas',
    'is for inert',
    expect.any(String) as never,
  ],
  [
    'an outlet not of diving',
    { ...us, valve: { ...us.valve, outlet: 'cga-346' } },
    'outlet-not-for-diving',
    'is not a diving outlet',
    expect.any(String) as never,
  ],
  [
    'an unknown neck',
    { ...us, neckThread: undefined } as never,
    'thread-unknown',
    'the thread of the neck is not known',
    undefined,
  ],
  [
    'an unknown valve thread',
    { ...us, valve: { outlet: 'cga-850', ratedPressure: gauge(3000, psi) } },
    'thread-unknown',
    'the thread of the valve is not known',
    undefined,
  ],
  [
    'threads that differ',
    { ...us, valve: { ...us.valve, thread: '7/8-14 UNF' } },
    'thread-mismatch',
    'the neck has 3/4-14 NPSM, the valve has 7/8-14 UNF',
    undefined,
  ],
  [
    'a gauged neck that differs',
    { ...un, neckThread: '3/4 G' },
    'thread-mismatch',
    'the neck has M25x2, the gauged neck has 3/4 G',
    undefined,
  ],
])('%s: the words and the source', (_, request, code, words, source) => {
  const given = Object.fromEntries(
    Object.entries(request).filter(([, value]) => value !== undefined),
  ) as unknown as FillingRequest
  const reason = find(given, code)
  expect(reason?.text).toContain(words)
  expect(reason?.source).toEqual(source)
})

describe('edges', () => {
  test('a rule that belongs to no country is at home everywhere', () => {
    expect(has({ ...un, rules: { ...un.rules, ruleSet: 'carriage-p200' } }, 'foreign-rule')).toBe(false)
    expect(has({ ...un, country: 'SE' }, 'foreign-rule')).toBe(true)
  })

  test('a pressure a little above the range of a valve is rounding, 1 % is not', () => {
    const rated = (pressure: number) =>
      has({ ...us, valve: { ...us.valve, ratedPressure: gauge(pressure, psi) } }, 'valve-rating')
    expect([rated(3000), rated(2990), rated(2970)]).toEqual([false, false, true])
  })

  test('air is no rich gas, a per cent more is', () => {
    expect(has({ ...us, mixture: mixture({ oxygen: 0.21, nitrogen: 0.79 }) }, 'oxygen-policy-unknown')).toBe(false)
    expect(has({ ...us, mixture: mixture({ oxygen: 0.2101, nitrogen: 0.7899 }) }, 'oxygen-policy-unknown')).toBe(false)
    expect(has({ ...us, mixture: nitrox(0.22) }, 'oxygen-policy-unknown')).toBe(true)
  })

  test('the threshold of the station is named whether it is passed or not', () => {
    expect(
      has({ ...us, mixture: nitrox(0.32), oxygen: { threshold: 'us-diving-equipment' } }, 'us-diving-equipment'),
    ).toBe(true)
    expect(has({ ...us, mixture: nitrox(0.32), oxygen: rich }, 'us-transport-oxidizer')).toBe(true)
  })

  test('oxygen in aluminium asks for a metal above 23.5 %, in the US, and of aluminium alone', () => {
    const open = { outlet: 'cga-850', thread: '3/4-14 NPSM', ratedPressure: gauge(3500, psi) } as const
    const asks = (request: FillingRequest): boolean => has({ ...request, oxygen: rich }, 'valve-metal-unknown')
    expect(asks({ ...us, valve: open, mixture: nitrox(0.235) })).toBe(false)
    expect(asks({ ...us, valve: open, mixture: nitrox(0.236) })).toBe(true)
    expect(asks({ ...us, valve: open, mixture: nitrox(0.236), country: 'CA' })).toBe(false)
    expect(asks({ ...steel, valve: { ...open, thread: '7/8-14 UNF' }, mixture: nitrox(0.32) })).toBe(false)
    expect(asks({ ...us, valve: undefined, mixture: nitrox(0.32) } as never)).toBe(true)
  })

  test('a taper thread is against oxygen in aluminium, by stamp or by gauge, unless the marks are those of the UN', () => {
    const tapered = (request: FillingRequest): boolean =>
      has({ ...request, oxygen: rich, mixture: nitrox(0.32) }, 'taper-thread')
    const gauged = (neckThread: string): boolean => tapered({ ...us, neckThread })
    expect([gauged('3/4-14 NGT'), gauged('1/2-14 NPT'), gauged('25E'), gauged('17E')]).toEqual([true, true, true, true])
    expect([
      gauged('3/4-14 NPSM'),
      gauged('M25E'),
      gauged('125E'),
      gauged('2XE'),
      gauged('25E1'),
      gauged('X5E'),
    ]).toEqual(Array(6).fill(false))
    const stamped = (text: string): FillingRequest => ({
      ...us,
      stamp: text,
      rules: { ...us.rules, ruleSet: 'us-180.209' },
    })
    const aluminium = '25E D MAREN 508231\nPW200 PH300BAR 14.9KG 12.0L 9.1MM\nISO 7866 D IN07 2024/03'
    expect(tapered(stamped(aluminium))).toBe(true)
    expect(tapered(stamped(aluminium.replace('ISO 7866', 'UN ISO 7866')))).toBe(false)
    const form = readStamp(us.stamp as string, { asOf: '2026-11' })
    expect(tapered({ ...us, stamp: { ...form, thread: { designation: 'neck', form: 'taper' } } })).toBe(true)
    const { neckThread: _, ...ungauged } = us
    expect(tapered(ungauged)).toBe(false)
  })

  test('a shoulder that names a gas wants air in it', () => {
    const named: FillingRequest = {
      ...un,
      stamp: 'AIR 10 L M25X2\nPS 200 BAR PT 300 BAR\nNR 77142 SKAGEN 12.8 KG\n05.2025',
      rules: { ...un.rules, ruleSet: 'norwegian-diving' },
    }
    const asks = (gas: FillingRequest['mixture']): boolean => has({ ...named, mixture: gas, oxygen: rich }, 'gas-word')
    expect([asks(dryAir), asks(mixture({ oxygen: 0.2, nitrogen: 0.8 })), asks(nitrox(0.22))]).toEqual([
      false,
      false,
      false,
    ])
    expect([
      asks(mixture({ oxygen: 0.19, nitrogen: 0.81 })),
      asks(nitrox(0.23)),
      asks(trimix({ oxygen: 0.21, helium: 0.35 })),
    ]).toEqual([true, true, true])
    expect(has({ ...un, mixture: nitrox(0.32), oxygen: rich }, 'gas-word')).toBe(false)
  })

  test('a per cent of carbon dioxide is covered, more is not', () => {
    const asks = (carbonDioxide: number): boolean =>
      has({ ...us, mixture: mixture({ oxygen: 0.2, carbonDioxide, nitrogen: 0.8 - carbonDioxide }) }, 'gas-not-covered')
    expect([asks(0.01), asks(0.011)]).toEqual([false, true])
  })

  test('an outlet for inert gas takes a gas without oxygen, one for air takes air up to 22 %', () => {
    const inert = { ...us, valve: { ...us.valve, outlet: 'cga-580' } } as const
    expect(has({ ...inert, mixture: pureGas('helium') }, 'outlet-for-another-gas')).toBe(false)
    const nitroxRule = { threshold: 'en-nitrox-connection', isCleaned: true } as const
    const asks = (oxygen: number, outlet: 'threaded-232' | 'threaded-nitrox' = 'threaded-232'): boolean =>
      has(
        { ...un, mixture: nitrox(oxygen), oxygen: nitroxRule, valve: { ...un.valve, outlet } },
        'outlet-for-another-gas',
      )
    expect([asks(0.22), asks(0.23), asks(0.23, 'threaded-nitrox')]).toEqual([false, true, false])
    expect(has({ ...un, mixture: nitrox(0.32), oxygen: rich }, 'outlet-for-another-gas')).toBe(false)
  })

  test('an outlet that is not of diving is no doubt for another use, and one for an unstated use', () => {
    const other = { ...us, valve: { ...us.valve, outlet: 'cga-346' } } as const
    const { service: _, ...unstated } = us.rules
    expect(has({ ...other, rules: { ...us.rules, service: 'breathing apparatus' } }, 'outlet-not-for-diving')).toBe(
      false,
    )
    expect(has({ ...other, rules: unstated }, 'outlet-not-for-diving')).toBe(true)
    expect(has(other, 'outlet-not-for-diving')).toBe(true)
  })
})

describe('the marking behind the limit', () => {
  test('a UN receptacle is held by the lower of its working pressure and two thirds of its test pressure', () => {
    const filled = (group: string): string =>
      inUnit(
        assessFilling({ ...un, stamp: (un.stamp as string).replace('PW232 PH348BAR', group) }).fillLimit
          ?.settledPressure ?? gauge(0, bar),
        bar,
      ).toFixed(1)
    expect([filled('PW232 PH348BAR'), filled('PW200 PH348BAR')]).toEqual(['232.0', '200.0'])
  })

  test('a shoulder without any pressure of its own has no limit', () => {
    const bare = readStamp(un.stamp as string, { asOf: '2025-11' })
    const filling = assessFilling({ ...un, stamp: { ...bare, workingPressure: undefined, testPressure: undefined } })
    expect([filling.value, filling.fillTo, filling.limit, filling.verdict]).toEqual([0, 0, undefined, 'undetermined'])
    expect(filling.cautions).toContain('fill-limit')
    expect(filling.because.filter(({ code }) => code === 'no-marked-pressure')).toHaveLength(1)
    expect(filling.sources.every((source) => typeof source === 'string' && source.length > 3)).toBe(true)
  })

  test('two-digit years count from the day of the question', () => {
    const late = {
      ...us,
      stamp: 'DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 30',
      rules: { ...us.rules, asOf: '2031-01-01' },
    } as const
    expect(assessFilling(late).stamp.retests[0]?.date).toBe('2030-10')
    expect(has(late, 'century-assumed')).toBe(false)
    expect(assessFilling(late).stamp.findings.map(({ code }) => code)).not.toContain('century-assumed')
  })

  test('the plus mark: what is unknown is named; with hydrogen in the gas it is none', () => {
    const plus = { ...steel, stamp: 'DOT-3AA2400\nLP33107 SKERRY\n11 W 19 +\n07 C208 24 +' }
    expect(find(plus, 'plus-current')?.text).toBe('the plus mark is current; unknown: reliefDevice')
    const stated = { ...plus, valve: { ...plus.valve, hasReliefDevice: true } }
    expect(find(stated, 'plus-current')?.text).toBe('the plus mark is current; unknown: nothing')
    const hydrogen = { ...stated, mixture: mixture({ hydrogen: 0.04, oxygen: 0.01, helium: 0.95 }) }
    expect(inUnit(assessFilling(hydrogen).fillLimit?.settledPressure ?? gauge(0, psi), psi)).toBeCloseTo(2400, 6)
    expect(assessFilling(steel).because.map(({ code }) => code)).not.toContain('plus-current')
  })
})

test.each<[Record<string, unknown>, string]>([
  [{ stamp: undefined }, 'request.stamp'],
  [{ rules: undefined }, 'request.rules'],
  [{ country: undefined }, 'request.country'],
  [{ mixture: 21 }, 'mixture'],
  [{ ambientPressure: 0 }, 'ambientPressure'],
  [{ gasTemperature: 0 }, 'gasTemperature'],
  [{ outside: 'dent-or-gouge' }, 'outside'],
  [{ outside: ['dents'] }, 'outside[0]'],
  [{ valve: { outlets: 'cga-850' } }, 'valve.outlets'],
  [{ valve: { ratedPressure: Number.NaN } }, 'valve.ratedPressure'],
  [{ oxygen: { isCleaned: true } }, 'oxygen.threshold'],
  [{ oxygen: { threshold: 'us-transport-oxidizer', gases: [] } }, 'oxygen.gases'],
  [{ oxygen: { threshold: 'us-transport-oxidizer', gasesPassed: [21] } }, 'oxygen.gasesPassed[0]'],
])('%j is refused by name', (field, argument) => {
  const request = Object.fromEntries(
    Object.entries<unknown>({ ...us, ...field }).filter(([, value]) => value !== undefined),
  )
  expect(() => assessFilling(request as never)).toThrow(expect.objectContaining({ argument }))
})

test('what makes the limit doubtful makes the filling doubtful', () => {
  const given = assessFilling({ ...un, stamp: unStamp.replace('PW232', 'PW240') })
  const { doubts } = given.fillLimit ?? { doubts: [] }
  expect(doubts.map(({ code }) => code)).toEqual(['marks-contradict'])
  expect(given.because.map(({ code }) => code)).toContain('marks-contradict')
  expect(given.verdict).toBe('undetermined')
})
