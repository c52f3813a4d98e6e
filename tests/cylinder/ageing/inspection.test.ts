import { expect, test } from 'vitest'
import {
  assessNeckCrack,
  assessStorage,
  assessWear,
  inspectionAdvice,
  inspectionFindings,
  storagePressure,
} from '../../../src/cylinder/ageing/index.ts'
import { bar, gauge, inUnit, measure, millimetre, psi } from '../../../src/units/index.ts'

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
  expect(() => inspectionAdvice(['shiny' as never])).toThrow(expect.objectContaining({ value: 'shiny' }))
})

test('the two criteria for neck cracks give two verdicts, never one', () => {
  const verdicts = (lengthInThreads: number, isInThreads: boolean): string[] => {
    const both = assessNeckCrack({ lengthInThreads, isInThreads })
    return [both['appendix-c'].verdict, both['letter-2011'].verdict]
  }
  expect(verdicts(1, false)).toEqual(['within', 'within'])
  expect(verdicts(1, true)).toEqual(['within', 'beyond'])
  expect(verdicts(2, false)).toEqual(['beyond', 'within'])
  expect(verdicts(3, true)).toEqual(['beyond', 'beyond'])
})

test('exactly the remembered share of the wall is within it', () => {
  const wall = measure(5, millimetre)
  expect(assessWear('general-corrosion', { depth: measure(0.5, millimetre), of: wall }).verdict).toBe('within')
  expect(assessWear('general-corrosion', { depth: measure(0.51, millimetre), of: wall }).verdict).toBe('beyond')
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
