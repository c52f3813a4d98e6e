import { expect, test } from 'vitest'
import { assessFilling, type FillingRequest } from '../../../src/cylinder/index.ts'
import { mixture, nitrox, pureGas, trimix } from '../../../src/gas-law/index.ts'
import { bar, celsius, gauge, inUnit, psi, temperatureOf } from '../../../src/units/index.ts'
import { rich, steelWithPlus, un, unStamp, us } from '../../fixtures/filling-requests.ts'

const codes = (request: FillingRequest): readonly string[] => assessFilling(request).because.map(({ code }) => code)
const without = (request: FillingRequest, key: keyof FillingRequest): FillingRequest =>
  Object.fromEntries(Object.entries(request).filter(([name]) => name !== key)) as unknown as FillingRequest
const stamped = (stamp: string): FillingRequest => ({ ...us, stamp })

test('with everything in order it may be filled to its service pressure, and further while it is warm', () => {
  const cold = assessFilling(us)
  expect(cold.verdict).toBe('within')
  expect(inUnit(cold.value, psi)).toBeCloseTo(3000, 6)
  expect(inUnit(cold.fillTo, psi)).toBeCloseTo(3000, 6)
  const warm = assessFilling({ ...us, gasTemperature: temperatureOf(50, celsius) })
  expect(warm.value).toBe(cold.value)
  expect(warm.fillTo).toBeGreaterThan(cold.fillTo * 1.1)
  expect(warm.cautions).toEqual(
    expect.arrayContaining(['always', 'fill-limit', 'hot-fill', 'valve-connection', 'requalification']),
  )
  expect(warm.sources).toContain('cfr-49-173-301a')
  expect(JSON.stringify(warm)).not.toMatch(/\bsafe/i)
})

test('a UN cylinder may be filled to its working pressure at 15 °C', () => {
  const filling = assessFilling(un)
  expect([filling.verdict, inUnit(filling.value, bar).toFixed(3)]).toEqual(['within', '232.000'])
})

// Every condition both ways: the cases in order are `within` above; each row spoils one thing.
const against: readonly (readonly [name: string, request: FillingRequest, code: string])[] = [
  ['condemned', stamped('DOT-3AL3000 CONDEMNED\nP4711 BRISKA\n07 V 08\n10 A902 23'), 'condemned'],
  ['not refillable', stamped('DOT-39-1800 NRC\nKELDA M9901\n06 A 24'), 'not-refillable'],
  ['put out of use', stamped('DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 23\nDO NOT FILL'), 'condemned'],
  ['overdue', { ...us, rules: { ...us.rules, asOf: '2028-11-01' } }, 'overdue'],
  ['a dent on the outside', { ...us, outside: ['dent-or-gouge'] }, 'dent-or-gouge'],
  ['an outlet made for less', { ...un, valve: { ...un.valve, outlet: 'cga-850' } }, 'outlet-range'],
  ['a valve rated for less', { ...us, valve: { ...us.valve, ratedPressure: gauge(2400, psi) } }, 'valve-rating'],
  ['threads that do not match', { ...us, valve: { ...us.valve, thread: '7/8-14 UNF' } }, 'thread-mismatch'],
  ['a neck gauged as another thread than the stamp says', { ...un, neckThread: '3/4 G' }, 'thread-mismatch'],
  ['an outlet for inert gas', { ...us, valve: { ...us.valve, outlet: 'cga-580' } }, 'outlet-for-another-gas'],
  [
    'nitrox through an outlet for air where the station works by the nitrox connection',
    { ...un, mixture: nitrox(0.32), oxygen: { threshold: 'en-nitrox-connection', isCleaned: true } },
    'outlet-for-another-gas',
  ],
  [
    'a rich gas in what is not cleaned',
    { ...us, mixture: nitrox(0.32), oxygen: { ...rich, isCleaned: false } },
    'not-oxygen-clean',
  ],
  [
    'pure oxygen on the way to a lean mixture',
    { ...us, oxygen: { threshold: 'us-diving-equipment', isCleaned: false, gasesPassed: [pureGas('oxygen')] } },
    'not-oxygen-clean',
  ],
  [
    'oxygen in aluminium behind another metal',
    { ...us, mixture: nitrox(0.32), oxygen: rich, valve: { ...us.valve, metal: 'other' } },
    'valve-metal',
  ],
  [
    'oxygen in aluminium with a taper thread',
    {
      ...us,
      mixture: nitrox(0.32),
      oxygen: rich,
      neckThread: '3/4-14 NGT',
      valve: { ...us.valve, thread: '3/4-14 NGT' },
    },
    'taper-thread',
  ],
]
test.each(against)('%s: beyond, and nothing may be filled', (_name, request, code) => {
  const filling = assessFilling(request)
  expect(filling.verdict).toBe('beyond')
  expect(codes(request)).toContain(code)
  expect([filling.value, filling.fillTo]).toEqual([0, 0])
  expect(filling.limit).toBeGreaterThan(0)
})

const doubts: readonly (readonly [name: string, request: FillingRequest, code: string])[] = [
  ['nobody has looked', without(us, 'outside'), 'outside-not-looked-at'],
  ['the valve is not stated', without(us, 'valve'), 'valve-unknown'],
  [
    'the rating of the valve is not stated',
    { ...us, valve: { outlet: 'cga-850', thread: '3/4-14 NPSM' } },
    'valve-rating-unknown',
  ],
  [
    'the outlet is not stated',
    { ...us, valve: { ratedPressure: gauge(3000, psi), thread: '3/4-14 NPSM' } },
    'outlet-unknown',
  ],
  ['the range of the outlet was not read', { ...us, valve: { ...us.valve, outlet: 'cga-346' } }, 'outlet-not-read'],
  ['the outlet is not one of diving', { ...us, valve: { ...us.valve, outlet: 'cga-346' } }, 'outlet-not-for-diving'],
  ['the neck thread is not known', without(us, 'neckThread'), 'thread-unknown'],
  [
    'the thread of the valve is not known',
    { ...us, valve: { outlet: 'cga-850', ratedPressure: gauge(3000, psi) } },
    'thread-unknown',
  ],
  [
    'US marks in Germany',
    { ...us, country: 'DE', rules: { ...us.rules, ruleSet: 'german-diving', asOf: '2024-11-25' } },
    'foreign-marks',
  ],
  ['a pi mark in the US', { ...un, stamp: unStamp.replace('UN ', ''), country: 'US' }, 'foreign-marks'],
  ['a rule of another country', { ...us, country: 'CA' }, 'foreign-rule'],
  ['a rich gas and no policy', { ...us, mixture: nitrox(0.32) }, 'oxygen-policy-unknown'],
  [
    'a rich gas, and nobody says whether it is cleaned',
    { ...us, mixture: nitrox(0.32), oxygen: { threshold: 'us-transport-oxidizer' } },
    'oxygen-clean-unknown',
  ],
  [
    'oxygen in aluminium behind an unknown metal',
    {
      ...us,
      mixture: nitrox(0.32),
      oxygen: rich,
      valve: { outlet: 'cga-850', thread: '3/4-14 NPSM', ratedPressure: gauge(3000, psi) },
    },
    'valve-metal-unknown',
  ],
  [
    'a gas with hydrogen',
    { ...us, mixture: mixture({ hydrogen: 0.04, oxygen: 0.01, helium: 0.95 }) },
    'gas-not-covered',
  ],
  [
    'a gas that condenses',
    { ...us, mixture: mixture({ carbonDioxide: 0.02, oxygen: 0.2, nitrogen: 0.78 }) },
    'gas-not-covered',
  ],
  ['no rule for the type', stamped('DOT-4L200\nP4711 BRISKA\n07 V 08\n10 A902 23'), 'no-rule'],
]
test.each(doubts)('%s: undetermined, with what is missing', (_name, request, code) => {
  expect(codes(request)).toContain(code)
  expect(assessFilling(request).verdict).toBe('undetermined')
})

test('what was spoiled above can be put right', () => {
  const richInOrder = { ...us, mixture: nitrox(0.32), oxygen: rich }
  expect(assessFilling(richInOrder).verdict).toBe('within')
  expect(assessFilling(richInOrder).cautions).toContain('oxygen-handling')
  const byPolicy = { ...us, mixture: nitrox(0.32), oxygen: { threshold: 'us-diving-equipment' } as const }
  expect(assessFilling(byPolicy).verdict).toBe('within')
  const trimixed = { ...us, mixture: trimix({ oxygen: 0.18, helium: 0.45 }) }
  expect(assessFilling(trimixed).verdict).toBe('within')
  expect(assessFilling({ ...un, neckThread: 'm25 × 2' }).verdict).toBe('within')
})

test('oxygen above 23.5 % in aluminium ends at 3000 psi, in the US', () => {
  const permit = stamped('DOT-SP12345-3442\nP4711 BRISKA\n07 V 08\n10 A902 23')
  const aluminium = { ...permit, stamp: assessFilling(permit).stamp, mixture: nitrox(0.32), oxygen: rich }
  const limitOf = (country: string): number =>
    inUnit(
      assessFilling({ ...aluminium, stamp: { ...aluminium.stamp, material: 'aluminium' }, country }).fillLimit
        ?.settledPressure ?? gauge(0, psi),
      psi,
    )
  expect(limitOf('US')).toBeCloseTo(3000, 6)
})

test('a current plus mark counts when the relief device is stated, and only then', () => {
  const plain = assessFilling(steelWithPlus)
  expect(inUnit(plain.value, psi)).toBeCloseTo(2400, 6)
  expect(codes(steelWithPlus)).toContain('plus-current')
  const checked = { ...steelWithPlus, valve: { ...steelWithPlus.valve, hasReliefDevice: true } }
  expect(inUnit(assessFilling(checked).value, psi)).toBeCloseTo(2640, 6)
  expect(assessFilling(checked).cautions).toContain('plus-mark')
  expect(
    inUnit(assessFilling({ ...steelWithPlus, valve: { ...steelWithPlus.valve, hasReliefDevice: false } }).value, psi),
  ).toBeCloseTo(2400, 6)
  const ended = { ...checked, stamp: 'DOT-3AA2400\nLP33107 SKERRY\n11 W 19 +\n07 C208 24' }
  expect(inUnit(assessFilling(ended).value, psi)).toBeCloseTo(2400, 6)
  expect(codes(ended)).toContain('plus-ended')
})

test('a shoulder without a pressure has no limit, and is not within', () => {
  const read = assessFilling(us).stamp
  const bare = assessFilling({ ...us, stamp: { ...read, servicePressure: undefined } })
  expect([bare.verdict, bare.value, bare.limit]).toEqual(['undetermined', 0, undefined])
  expect(bare.because.map(({ code }) => code)).toContain('no-marked-pressure')
  const derived = assessFilling({ ...un, stamp: { ...assessFilling(un).stamp, testPressure: undefined } })
  expect(derived.because.map(({ code }) => code)).toContain('test-pressure-not-marked')
  expect(derived.verdict).toBe('undetermined')
})

test('what is misspelt or no option is refused', () => {
  expect(() => assessFilling({ ...us, valvee: {} } as never)).toThrow('Did you mean valve?')
  expect(() => assessFilling({ ...us, country: 'usa' })).toThrow('country is ')
  expect(() => assessFilling({ ...us, valve: { outlet: 'constructor' as never } })).toThrow('valve.outlet')
  expect(() => assessFilling({ ...us, valve: { metal: 'iron' as never } })).toThrow('valve.metal')
  expect(() => assessFilling({ ...us, outside: ['shiny' as never] })).toThrow('outside')
  expect(() => assessFilling({ ...us, oxygen: { threshold: 'toString' as never } })).toThrow('oxygen.threshold')
  expect(() => assessFilling({ ...us, gasTemperature: Number.NaN as never })).toThrow('gasTemperature')
  expect(() => assessFilling({ ...us, rules: { ...us.rules, ruleSet: 'us' as never } })).toThrow(
    expect.objectContaining({ code: 'input' }),
  )
})
