import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  kelvin,
  one,
  type PressureDifference,
  requireWithin,
  type Temperature,
  type TemperatureDifference,
} from '../../units/index.ts'
import { dischargeTemperature, pressure, requireSome } from '../accepted.ts'

/** Gauges and thermometers of one stage: read on the machine, or as it should show at the same final pressure. */
export interface StageReadings {
  /** After the stage, absolute. */
  readonly pressure: AbsolutePressure
  readonly inletTemperature?: Temperature
  readonly dischargeTemperature?: Temperature
}

/** What is compared. */
export interface RunningCheck {
  /** As the maker states it, as it was when new, or from `runningPressures` and `compressorWork`. */
  readonly expected: readonly StageReadings[]
  readonly read: readonly StageReadings[]
  /** Before the first stage, absolute. */
  readonly intakePressure: AbsolutePressure
  /** Largest departure that the maker, or the scatter of a sound machine, allows. */
  readonly allowed: { readonly pressureShare: number; readonly temperature: TemperatureDifference }
  /** Standard uncertainty of what was read. */
  readonly uncertainty: { readonly pressure: PressureDifference; readonly temperature: TemperatureDifference }
}

/** What a set of readings is evidence of. */
export type CompressorFault =
  | 'stage-passes-less'
  | 'stage-before-passes-less'
  | 'intake-restricted-or-first-stage-passes-less'
  | 'cooler-leaves-gas-warm'
  | 'discharge-hotter-than-ratio-explains'

/** One finding of a check, with the readings that speak for it. */
export interface CompressorEvidence {
  readonly fault: CompressorFault
  /** Of the stage that it is about, counted from 1; of a cooler, the stage that it feeds. */
  readonly stage: number
  readonly text: string
}

/** A check of a running compressor. */
export interface RunningAssessment extends Assessment<readonly StageReadings[]> {
  /** What the departures point at. It is evidence for the technician, no instruction to repair. */
  readonly evidence: readonly CompressorEvidence[]
}

const shareRange: Accepted = { above: 0, atMost: 1, unit: one, hint: 'Give 10 per cent as 0.1.' }
const spanRange: Accepted = { above: 0, atMost: 200, unit: kelvin, hint: 'Give a difference of temperatures.' }
const doubtRange: Accepted = { atLeast: 0, atMost: 50, unit: bar, hint: 'Give a standard uncertainty.' }
const warmRange: Accepted = { atLeast: 0, atMost: 50, unit: kelvin, hint: 'Give a standard uncertainty.' }

// Two standard uncertainties: a reading is beyond the band only where it is so with about 95 per cent.
const coverage = 2

type Level = 'high' | 'low' | 'within' | 'open'

/**
 * Readings of a running compressor against what it should show at the same final pressure. An interstage pressure that is high means
 * that the stage after it takes too little, or gets warm gas; one that is low, that what comes before delivers too little. A discharge
 * that is hotter than its own ratio and inlet explain speaks of gas that leaks back and is compressed again.
 *
 * The result is evidence, not a diagnosis: whoever services the machine opens it, and the maker’s instructions come first.
 *
 * @param check - expected and read values of all stages, absolute Pa and K; intake pressure; allowed departures; uncertainty of the readings
 * @returns verdict on the readings, and what they point at
 * @throws LitrebarError `range`, naming the stage and field; `input` for lists of two lengths or an unknown key
 * @source litrebar-derivation, one flow through all stages, as `runningPressures`
 * @example
 * const at = (bars: number[]) => bars.map((p) => ({ pressure: absolute(p, bar) }))
 * const found = assessRunning({
 *   expected: at([5.7, 32.3, 226]),
 *   read: at([5.8, 41, 226]),
 *   intakePressure: absolute(1, bar),
 *   allowed: { pressureShare: 0.1, temperature: difference(10, kelvin) },
 *   uncertainty: { pressure: difference(0.2, bar), temperature: difference(1, kelvin) },
 * })
 * found.verdict // => 'beyond'
 * found.evidence.map(({ fault, stage }) => `${fault} ${stage}`) // => ['stage-passes-less 3']
 */
export function assessRunning(check: RunningCheck): RunningAssessment {
  requireCheck(check)
  const { expected, read } = check
  const pressures = read.map((stage, k) =>
    levelOfPressure(check, stage.pressure, (expected[k] as StageReadings).pressure),
  )
  const inlets = read.map((stage, k) =>
    levelOfTemperature(check, stage.inletTemperature, (expected[k] as StageReadings).inletTemperature),
  )
  const discharges = read.map((_, k) => levelOfDischarge(check, k))
  const against: Reason[] = []
  const doubts: Reason[] = []
  for (const k of read.keys()) {
    const of = { pressure: pressures[k], 'inlet temperature': inlets[k], 'discharge temperature': discharges[k] }
    for (const [what, level] of Object.entries(of)) {
      const code = what.replace(' ', '-')
      if ((level === 'high' || level === 'low') && what === 'pressure' && k === read.length - 1) {
        doubts.push({
          code: 'final-pressure-differs',
          text: `The final pressure is ${shown(check, k, what)}: the other readings compare only at the same one.`,
        })
      } else if (level === 'high' || level === 'low') {
        against.push({ code: `${code}-${level}`, text: `Stage ${k + 1}: ${what} ${level}, ${shown(check, k, what)}.` })
      } else if (level === 'open') {
        doubts.push({
          code: `${code}-open`,
          text: `Stage ${k + 1}: ${what} too near its bound to tell, ${shown(check, k, what)}.`,
        })
      } else if (level === undefined) {
        doubts.push({
          code: `${code}-not-read`,
          text: `Stage ${k + 1}: ${what} was not read, or nothing says what it should be.`,
        })
      }
    }
  }
  return {
    value: read,
    limit: expected,
    ...verdictFrom({ against, doubts }),
    cautions: ['instrument', 'breathing-air', 'always'],
    sources: ['litrebar-derivation'],
    evidence: evidenceOf(pressures, inlets, discharges),
  }
}

function evidenceOf(
  pressures: readonly Level[],
  inlets: readonly (Level | undefined)[],
  discharges: readonly (Level | undefined)[],
): readonly CompressorEvidence[] {
  const found: CompressorEvidence[] = []
  const add = (fault: CompressorFault, k: number, text: string): void => {
    found.push({ fault, stage: k + 1, text })
  }
  for (const [k, level] of inlets.entries()) {
    if (level !== 'high') continue
    const cause =
      k === 0 ? 'the intake draws warm air' : `the cooler after stage ${k} is fouled or short of air or water`
    add('cooler-leaves-gas-warm', k, `Gas enters stage ${k + 1} warmer than it should: ${cause}.`)
  }
  // the pressure after the last stage is set from outside, so it says nothing
  const between = pressures.slice(0, -1)
  const lowest = between.indexOf('low')
  for (const [k, level] of between.entries()) {
    if (level === 'high') {
      const warm = inlets[k + 1] === 'high' ? ' The warm gas that it gets explains some or all of it.' : ''
      add(
        'stage-passes-less',
        k + 1,
        `The pressure before stage ${k + 2} is high: the stage takes less than it is given, as with leaking valves or worn rings in it.${warm}`,
      )
    } else if (level === 'low' && k === lowest) {
      // what passes less starves everything after it; the first low gauge stands nearest to it
      if (k === 0) {
        add(
          'intake-restricted-or-first-stage-passes-less',
          0,
          'The first interstage pressure is low: the intake filter is blocked, or valves or rings of stage 1 leak.',
        )
      } else {
        add(
          'stage-before-passes-less',
          k,
          `The pressure after stage ${k + 1} is low while those before it are not: the stage delivers too little, or gas is lost after it.`,
        )
      }
    }
  }
  for (const [k, level] of discharges.entries()) {
    if (level === 'high') {
      add(
        'discharge-hotter-than-ratio-explains',
        k,
        `Stage ${k + 1} discharges hotter than its ratio and inlet explain: gas leaks back through a valve or past rings and is compressed again.`,
      )
    }
  }
  return found
}

function level(departure: number, allowed: number, uncertainty: number): Level {
  const size = Math.abs(departure)
  if (size - coverage * uncertainty > allowed) return departure > 0 ? 'high' : 'low'
  return size + coverage * uncertainty > allowed ? 'open' : 'within'
}

function levelOfPressure({ allowed, uncertainty }: RunningCheck, read: number, expected: number): Level {
  return level(read - expected, allowed.pressureShare * expected, uncertainty.pressure)
}

function levelOfTemperature(
  { allowed, uncertainty }: RunningCheck,
  read: number | undefined,
  expected: number | undefined,
): Level | undefined {
  if (read === undefined || expected === undefined) return undefined
  return level(read - expected, allowed.temperature, uncertainty.temperature)
}

/** Against the discharge that the expected machine would have at the ratio and inlet that were read. */
function levelOfDischarge(check: RunningCheck, k: number): Level | undefined {
  const wanted = explainedDischarge(check, k)
  return levelOfTemperature(check, check.read[k]?.dischargeTemperature, wanted)
}

/** T₂/T₁ grows with the ratio as it does on the expected machine. */
function explainedDischarge({ expected, read, intakePressure }: RunningCheck, k: number): number | undefined {
  const [wanted, found] = [expected[k] as StageReadings, read[k] as StageReadings]
  const { inletTemperature: from, dischargeTemperature: to } = wanted
  if (from === undefined || to === undefined) return to
  const before = k === 0 ? intakePressure : (expected[k - 1] as StageReadings).pressure
  const foundBefore = k === 0 ? intakePressure : (read[k - 1] as StageReadings).pressure
  const change = (found.pressure / foundBefore) * (before / wanted.pressure)
  const power = Math.log(to / from) / Math.log(wanted.pressure / before)
  return (found.inletTemperature ?? from) * (to / from) * change ** power
}

function shown(check: RunningCheck, k: number, what: string): string {
  const [wanted, found] = [check.expected[k] as StageReadings, check.read[k] as StageReadings]
  if (what === 'pressure') {
    const inBar = (p: number): string => (p / bar.factor).toPrecision(3)
    return `${inBar(found.pressure)} bar for ${inBar(wanted.pressure)} bar`
  }
  const inCelsius = (t: number | undefined): string =>
    t === undefined ? '?' : `${(t - (celsius.offset as number)).toFixed(0)} °C`
  return what === 'inlet temperature'
    ? `${inCelsius(found.inletTemperature)} for ${inCelsius(wanted.inletTemperature)}`
    : `${inCelsius(found.dischargeTemperature)} for ${inCelsius(explainedDischarge(check, k))}`
}

function requireCheck(check: RunningCheck): void {
  requireKeys('check', check, { expected: true, read: true, intakePressure: true, allowed: true, uncertainty: true })
  requireKeys('check.allowed', check.allowed, { pressureShare: true, temperature: true })
  requireKeys('check.uncertainty', check.uncertainty, { pressure: true, temperature: true })
  requireWithin('check.allowed.pressureShare', check.allowed.pressureShare, shareRange)
  requireWithin('check.allowed.temperature', check.allowed.temperature, spanRange)
  requireWithin('check.uncertainty.pressure', check.uncertainty.pressure, doubtRange)
  requireWithin('check.uncertainty.temperature', check.uncertainty.temperature, warmRange)
  requireWithin('check.intakePressure', check.intakePressure, pressure)
  requireSome('check.read', check.read, 'List the readings of each stage.')
  requireSome('check.expected', check.expected, 'List what each stage should show.')
  if (check.expected.length !== check.read.length) {
    throw new LitrebarError({
      code: 'input',
      argument: 'check.read',
      value: `${check.read.length} stages`,
      expected: `${check.expected.length} stages, as in check.expected`,
      hint: 'List every stage in both; leave out only temperatures that were not read.',
    })
  }
  for (const list of ['expected', 'read'] as const) {
    for (const [k, stage] of check[list].entries()) {
      const at = `check.${list}[${k}]`
      requireKeys(at, stage, { pressure: true, inletTemperature: false, dischargeTemperature: false })
      requireWithin(`${at}.pressure`, stage.pressure, pressure)
      for (const name of ['inletTemperature', 'dischargeTemperature'] as const) {
        if (stage[name] !== undefined) requireWithin(`${at}.${name}`, stage[name], dischargeTemperature)
      }
    }
  }
}
