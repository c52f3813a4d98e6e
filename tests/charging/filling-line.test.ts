import { expect, test } from 'vitest'
import {
  assessFillPanel,
  assessIntakeOxygen,
  type FillPanel,
  hotBankFill,
  type PanelFill,
  type QuickBankFill,
  ventedLine,
} from '../../src/charging/index.ts'
import { bankSequence, continuousMix } from '../../src/cylinder/index.ts'
import { dryAir, gasState, molarDensity, pureGas } from '../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  fractionOf,
  freeGasFlowOf,
  gauge,
  internalVolumeOf,
  inUnit,
  litre,
  litrePerMinute,
  temperatureOf,
} from '../../src/units/index.ts'
import { refused } from './refused.ts'

const room = temperatureOf(20, celsius)
const of = (litres: number, bars: number) => ({
  internalVolume: internalVolumeOf(litres, litre),
  mixture: dryAir,
  pressure: absolute(bars, bar),
  temperature: room,
})
const line = { ...of(0.06, 233), ambientPressure: absolute(1, bar) }

test('a line loses what it holds above ambient pressure, and keeps the rest', () => {
  const { lost, left, pressureVolume } = ventedLine(line)
  const at = (bars: number) => 6e-5 * molarDensity(dryAir, absolute(bars, bar), room)
  expect(lost + left).toBeCloseTo(at(233), 12)
  expect(left).toBeCloseTo(at(1), 12)
  expect(pressureVolume).toBeCloseTo(6e-5 * 232e5, 9)
  // ideal: p V / R T
  expect(ventedLine(line, { gas: 'ideal' }).lost).toBeCloseTo(1392 / (8.314472 * 293.15), 9)
  // half the bore, a quarter of the gas
  expect(ventedLine({ ...line, internalVolume: internalVolumeOf(0.015, litre) }).lost).toBeCloseTo(lost / 4, 12)
})

test('a line that is no line is refused by name', () => {
  expect(refused(() => ventedLine({ ...line, pressure: absolute(0.9, bar) }))).toBe('range line.pressure')
  expect(refused(() => ventedLine({ ...line, ambientPressure: absolute(2, bar) }))).toBe('range line.ambientPressure')
  expect(refused(() => ventedLine({ ...line, internalVolume: internalVolumeOf(101, litre) }))).toBe(
    'range line.internalVolume',
  )
  expect(refused(() => ventedLine({ ...line, bore: 6 } as never))).toBe('input line.bore')
  expect(refused(() => ventedLine(line, { gas: 'perfect' as 'ideal' }))).toBe('input options.gas')
})

const quick: QuickBankFill = { receiver: of(12, 50), bank: [of(50, 180), of(50, 250)], surroundings: room }

test('a quick fill keeps amount and energy, and settles below the slow one, whose gas the bank keeps', () => {
  const { developedPressure, gasTemperature, settledPressure, bankPressures } = hotBankFill(quick)
  const slow = bankSequence({ receiver: quick.receiver, bank: quick.bank }, [0, 1])
  expect(gasTemperature).toBeGreaterThan(350)
  expect(settledPressure).toBeLessThan(slow.pressure)
  expect(developedPressure).toBeGreaterThan(settledPressure)
  bankPressures.forEach((pressure, k) => {
    expect(pressure).toBeGreaterThan(slow.bankPressures[k] ?? Number.POSITIVE_INFINITY)
  })
  const amount = (litres: number, p: number) => (litres / 1000) * molarDensity(dryAir, p as never, room)
  const after = amount(12, settledPressure) + amount(50, bankPressures[0] ?? 0) + amount(50, bankPressures[1] ?? 0)
  expect(after / (amount(12, 50e5) + amount(50, 180e5) + amount(50, 250e5))).toBeCloseTo(1, 9)
  const hot = { pressure: developedPressure, temperature: gasTemperature }
  expect((12 / 1000) * gasState(dryAir, hot).molarDensity).toBeCloseTo(amount(12, settledPressure), 6)
})

test('from one large ideal bank the gas warms to γ times its temperature less what was there before', () => {
  const large = { receiver: of(0.001, 1), bank: [of(10_000, 200)], surroundings: room }
  const { gasTemperature } = hotBankFill(large, { gas: 'ideal' })
  // filling from 1 to 200 bar: T = γ T₀ / (1 + (γ - 1) p₁/p₂), with the heat capacity ratio of air at low pressure
  const { isochoricHeatCapacity } = gasState(dryAir, { pressure: 1 as never, temperature: room })
  const ratio = 1 + 8.314472 / isochoricHeatCapacity
  expect(gasTemperature).toBeCloseTo((ratio * room) / (1 + (ratio - 1) / 200), 2)
})

test('a bank cylinder that gives nothing to the hot cylinder is refused by its place', () => {
  expect(refused(() => hotBankFill({ ...quick, bank: [of(50, 250), of(50, 180)] }))).toBe('range fill.bank[1].pressure')
  expect(refused(() => hotBankFill({ ...quick, bank: [] }))).toBe('input fill.bank')
  expect(refused(() => hotBankFill({ ...quick, surroundings: 900 as never }))).toBe('range fill.surroundings')
  expect(refused(() => hotBankFill(quick, { gas: 'perfect' as 'ideal' }))).toBe('input options.gas')
})

test('the value of a panel is what it lets in at most, and the margin what is left of it', () => {
  const panel = { kind: 'fixed', set: gauge(225, bar), error: difference(4, bar) } as const
  const { value, limit, margin, cautions } = assessFillPanel({
    panel,
    supply: gauge(300, bar),
    allowed: gauge(232, bar),
  })
  expect([inUnit(value, bar), inUnit(limit ?? gauge(0, bar), bar)].map(Math.round)).toEqual([229, 232])
  expect(margin).toBeCloseTo(3e5, 6)
  expect(cautions).toEqual(['fill-limit', 'hot-fill', 'always'])
})

test.each([
  [{ panel: { kind: 'closed' } }, 'input fill.panel.kind'],
  [{ panel: { kind: 'open', set: 1 } }, 'input fill.panel.set'],
  [{ panel: { kind: 'fixed', set: 2e7 } }, 'input fill.panel.error'],
  [{ panel: { kind: 'fixed', set: 2e7, error: -1 } }, 'range fill.panel.error'],
  [{ panel: { kind: 'adjustable', set: 2e7, error: 0, highestSetting: 1e7 } }, 'range fill.panel.highestSetting'],
  [{ supply: Number.NaN }, 'range fill.supply'],
  [{ allowed: 6e7 }, 'range fill.allowed'],
  [{ reliefOpens: 0 }, 'range fill.reliefOpens'],
])('a panel with %o is refused', (change, argument) => {
  const panel: FillPanel = { kind: 'open' }
  const fill = { panel, supply: gauge(300, bar), allowed: gauge(232, bar), ...change } as PanelFill
  expect(refused(() => assessFillPanel(fill))).toBe(argument)
})

test('the intake of continuous mixing is held against the limit of the compressor, with the error of its flow', () => {
  const mix = continuousMix({
    totalFlow: freeGasFlowOf(200, litrePerMinute, { name: 'intake' }),
    target: { oxygen: fractionOf(0.36) },
    intake: dryAir,
    added: [pureGas('oxygen')],
  })
  // two litres a minute of doubt about the oxygen: 2 × 0.7905 / 200
  const flow = freeGasFlowOf(2, litrePerMinute, { name: 'intake' })
  const standardUncertainty = fractionOf(flow * (mix.oxygenPerFlow[0] ?? Number.NaN))
  expect(standardUncertainty).toBeCloseTo(0.007905, 9)
  const intake = { oxygen: fractionOf(0.36), standardUncertainty }
  const found = assessIntakeOxygen(intake, { highest: fractionOf(0.4), basis: 'maker' })
  expect([found.verdict, found.marginUncertainty]).toEqual(['within', standardUncertainty])
  expect(found.margin).toBeCloseTo(0.04, 12)
  expect(refused(() => assessIntakeOxygen(intake, undefined as never))).toBe('input limit')
  expect(refused(() => assessIntakeOxygen(intake, { basis: 'maker' } as never))).toBe('input limit.highest')
  expect(refused(() => assessIntakeOxygen(intake, { highest: fractionOf(0.4), basis: 'guess' as 'memory' }))).toBe(
    'input limit.basis',
  )
  expect(
    refused(() => assessIntakeOxygen({ ...intake, oxygen: 36 as never }, { highest: fractionOf(0.4), basis: 'maker' })),
  ).toBe('range intake.oxygen')
})
