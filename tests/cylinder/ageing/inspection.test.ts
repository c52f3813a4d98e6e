import { expect, test } from 'vitest'
import {
  assessNeckCrack,
  assessPit,
  assessStorage,
  assessWear,
  inspectionAdvice,
  inspectionFindings,
  storagePressure,
} from '../../../src/cylinder/ageing/index.ts'
import { bar, gauge, inUnit, type Length, measure, millimetre, psi } from '../../../src/units/index.ts'

test('fog at the valve, liquid that moves and a smell each withdraw a cylinder and refer to an inspector', () => {
  for (const id of ['fog-at-valve', 'liquid-moving', 'smell'] as const) {
    const { action, cautions } = inspectionAdvice([id])
    expect([action, cautions.includes('inspection'), cautions.includes('rust-oxygen')]).toEqual([
      'withdraw',
      true,
      true,
    ])
  }
})

test('no finding lets a cylinder stay in use, and the strictest one decides', () => {
  const actions = new Set(Object.values(inspectionFindings).map(({ action }) => action))
  expect([...actions].sort()).toEqual(['inspector', 'withdraw'])
  expect(inspectionAdvice(['tumbled']).action).toBe('inspector')
  expect(inspectionAdvice(['tumbled', 'dent-or-gouge']).action).toBe('withdraw')
})

test('no finding at all is not an inspection', () => {
  expect(() => inspectionAdvice([])).toThrow(expect.objectContaining({ code: 'input', argument: 'findings' }))
  expect(() => inspectionAdvice(['shiny' as never])).toThrow("findings is 'shiny'")
})

test('the two criteria for neck cracks give two verdicts, never one', () => {
  const verdicts = (lengthInThreads: number, isInThreads: boolean): string[] => {
    const both = assessNeckCrack({ lengthInThreads, isInThreads })
    return [both['appendix-c'].verdict, both['letter-2011'].verdict]
  }
  expect(verdicts(1, false)).toEqual(['undetermined', 'undetermined'])
  expect(verdicts(1.9, false)).toEqual(['undetermined', 'undetermined'])
  expect(verdicts(1, true)).toEqual(['undetermined', 'beyond'])
  expect(verdicts(2, false)).toEqual(['beyond', 'undetermined'])
  expect(verdicts(3, true)).toEqual(['beyond', 'beyond'])
})

test('a verdict on a crack holds both criteria, whichever it follows', () => {
  for (const assessment of Object.values(assessNeckCrack({ lengthInThreads: 1.9, isInThreads: false }))) {
    const codes = assessment.because.map(({ code }) => code)
    expect([...codes].sort()).toEqual(['appendix-c', 'cracked', 'letter-2011'])
    expect(assessment.sources).toEqual(['cfr-49-180-appendix-c', 'phmsa-10-0019r'])
  }
  expect(assessNeckCrack({ lengthInThreads: 1.5, isInThreads: false })['appendix-c'].margin).toBe(0.5)
  expect(() => assessNeckCrack({ lengthInThreads: 1, isInThreads: 'no' as never })).toThrow("isInThreads is 'no'")
})

test('exactly the remembered share of the wall does not exceed it, and is not thereby within', () => {
  const wall = measure(5, millimetre)
  expect(assessWear('general-corrosion', { depth: measure(0.5, millimetre), of: wall }).verdict).toBe('undetermined')
  expect(assessWear('general-corrosion', { depth: measure(0.51, millimetre), of: wall }).verdict).toBe('beyond')
  expect(assessWear('local-corrosion', { depth: measure(1.01, millimetre), of: wall }).verdict).toBe('beyond')
  expect(() => assessWear('aluminium-pit' as never, { depth: wall, of: wall })).toThrow("limit is 'aluminium-pit'")
  expect(assessWear('dent', { depth: measure(6, millimetre), of: measure(171, millimetre) }).verdict).toBe('beyond')
})

test('about 20 bar or 300 psi is what the trade keeps in store', () => {
  // The two figures are one: 300 psi is 20.7 bar.
  expect(Math.round(inUnit(gauge(storagePressure.psi, psi), bar))).toBe(21)
  expect(assessStorage(gauge(storagePressure.bar, bar)).verdict).toBe('within')
  expect(assessStorage(gauge(storagePressure.psi, psi)).verdict).toBe('within')
  expect(assessStorage(gauge(0, bar)).because[0]?.code).toBe('empty')
  expect(assessStorage(gauge(200, bar)).because[0]?.code).toBe('high')
})

// The margin is the room left to the nearer end of 10 to 30 bar.
test.each([
  [0, 10, -10, 'beyond', 'empty'],
  [0.99, 10, -9.01, 'beyond', 'empty'],
  [1, 10, -9, 'beyond', 'low'],
  [9.9, 10, -0.1, 'beyond', 'low'],
  [10, 10, 0, 'within', 'as-practised'],
  [15, 10, 5, 'within', 'as-practised'],
  [25, 30, 5, 'within', 'as-practised'],
  [30, 30, 0, 'within', 'as-practised'],
  [30.1, 30, -0.1, 'beyond', 'high'],
] as const)('%s bar in store: limit %s bar, margin %s bar, %s', (bars, limit, margin, verdict, code) => {
  const stored = assessStorage(gauge(bars, bar))
  expect((stored.limit ?? 0) / 1e5).toBeCloseTo(limit, 9)
  expect((stored.margin ?? 0) / 1e5).toBeCloseTo(margin, 9)
  expect([stored.verdict, stored.because[0]?.code]).toEqual([verdict, code])
  expect(stored.cautions.includes('inspection')).toBe(code === 'empty')
})

const mm = (n: number): Length => measure(n, millimetre)

// Every condition both ways: wall against the marked minimum, depth against the limit of the metal, what is not stated or known.
test.each([
  ['steel', 0.2, 5.4, 5.1, 'undetermined', ['limit-not-read', 'local-corrosion']],
  ['steel', 0.2, 5.3, 5.1, 'undetermined', ['limit-not-read', 'local-corrosion']],
  ['steel', 0.3, 5.3, 5.1, 'beyond', ['below-minimum-wall', 'limit-not-read', 'local-corrosion']],
  ['steel', 1.5, 7, 5.1, 'beyond', ['local-corrosion']],
  ['steel', 1.4, 7, 5.1, 'undetermined', ['limit-not-read', 'local-corrosion']],
  ['steel', 0.2, 5.4, undefined, 'undetermined', ['no-minimum-wall', 'limit-not-read', 'local-corrosion']],
  ['aluminium', 1.53, 12, 10, 'undetermined', ['limit-not-read', 'aluminium-pit']],
  ['aluminium', 1.54, 12, 10, 'beyond', ['aluminium-pit']],
  ['composite', 0.1, 8, undefined, 'undetermined', ['no-minimum-wall', 'no-limit']],
  ['composite', 0.1, 8, 7.95, 'beyond', ['below-minimum-wall', 'no-limit']],
] as const)(
  'a pit in %s, %s mm deep in %s mm of wall, %s mm guaranteed, is %s',
  (material, depth, wall, minimum, verdict, codes) => {
    const pit = assessPit({
      material,
      depth: mm(depth),
      wall: mm(wall),
      ...(minimum === undefined ? {} : { guaranteedMinimumWall: mm(minimum) }),
    })
    expect([pit.verdict, pit.because.map(({ code }) => code)]).toEqual([verdict, codes])
    expect(pit.value).toBeCloseTo((wall - depth) / 1000, 12)
    expect(pit.margin).toEqual(minimum === undefined ? undefined : expect.closeTo((wall - depth - minimum) / 1000, 12))
  },
)

test('a pit deeper than the wall, or of no known material, is refused', () => {
  expect(() => assessPit({ material: 'steel', depth: mm(6), wall: mm(5) })).toThrow(
    'depth is 6 mm, expected at most 5 mm',
  )
  expect(() => assessPit({ material: 'titanium' as never, depth: mm(1), wall: mm(5) })).toThrow(
    "material is 'titanium'",
  )
})
