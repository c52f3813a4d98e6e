import { requireKeys } from '../../errors/index.ts'
import {
  type GasModel,
  type GasModelOption,
  type Mixture,
  molarDensity,
  temperatureAtDensity,
} from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { Reason } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Fraction,
  type GaugePressure,
  one,
  requireWithin,
  type Temperature,
  toAbsolute,
} from '../../units/index.ts'
import {
  ambientPressure as ambientRange,
  gaugePressure as gaugeRange,
  temperature as temperatureRange,
} from '../accepted-contents.ts'
import { gasModelOf } from '../cylinder-gas.ts'

/** A rule about the rating of a relief device, against the minimum test pressure. */
export interface ReliefDeviceRule {
  readonly text: string
  /** Rating over minimum test pressure, per cent. */
  readonly atLeast?: number
  readonly atMost: number
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

/** The rules differ, and their low ends do not agree with discs reported by the trade: go by the marked rating. */
export const reliefDeviceRules = {
  'plus-permission': {
    text: 'disc without fusible backing, rated to burst at or below the minimum test pressure',
    atMost: 100,
    source: 'cfr-49-173-302a-2015',
    place: 'paragraph (b)(1)',
    edition: 'annual edition 2015',
  },
  '3HT': {
    text: 'relief disc of a 3HT cylinder',
    atMost: 90,
    source: 'cfr-49-173-302a',
    place: 'page 560, copied by others',
    edition: '2003',
  },
  'relief-standard': {
    text: 'unbacked disc, rating marked',
    atLeast: 90,
    atMost: 100,
    source: 'memory',
    place: 'CGA S-1.1',
    edition: 'current',
  },
} as const satisfies Record<string, ReliefDeviceRule>

/** The id of a rule. */
export type ReliefDeviceRuleId = keyof typeof reliefDeviceRules

/** A filled cylinder with a disc. */
export interface DiscOnCylinder {
  readonly testPressure: GaugePressure
  /** Width of the window below the test pressure, as a share of it. */
  readonly toleranceBelow: Fraction
  readonly fillPressure: GaugePressure
  readonly fillTemperature: Temperature
  readonly ambientPressure: AbsolutePressure
  readonly mixture: Mixture
  /** What is marked on the disc or its plug, where it can be read. */
  readonly markedRating?: GaugePressure
}

/** Where a disc may burst, and how warm the full cylinder must get for that. */
export interface BurstDiscWindow {
  readonly lowest: GaugePressure
  readonly highest: GaugePressure
  /** Temperature of the gas at the lowest and at the highest burst pressure, at constant density. */
  readonly temperatureAtLowest: Temperature
  readonly temperatureAtHighest: Temperature
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
}

const share: Accepted = { atLeast: 0, atMost: 0.5, unit: one, hint: 'Give the window as a share of the test pressure.' }

/**
 * Pressure range in which a burst disc ruptures, from the test pressure and the tolerance below it, and the temperature at which a
 * full cylinder reaches it: by the real gas at constant density, which warms to it far sooner than the ideal rule says.
 * A disc that is marked outside the window, or below what is filled, is reported.
 *
 * @param disc - test pressure and fill pressure, gauge, Pa; tolerance, 0 to 0.5; fill temperature, K; ambient pressure,
 *   absolute, Pa; mixture; marked rating, gauge, Pa
 * @param options - `gas: 'ideal'` for the temperature in proportion to absolute pressure
 * @returns the window, gauge, Pa; temperatures, K; what contradicts it
 * @throws LitrebarError `range`, naming the field; `outside-validity` where the temperature lies beyond the equation of state
 * @source litrebar-derivation, constant density; density from gas-law
 * @example
 * const disc = {
 *   testPressure: gauge(348, bar),
 *   toleranceBelow: measure(0.1, one),
 *   fillPressure: gauge(232, bar),
 *   fillTemperature: temperatureOf(15, celsius),
 *   ambientPressure: absolute(1, atmosphere),
 *   mixture: dryAir,
 * }
 * const shown = [burstDiscWindow(disc), burstDiscWindow(disc, { gas: 'ideal' })].map((window) =>
 *   inUnit(window.temperatureAtLowest, celsius).toFixed(0),
 * ) // => ['82', '115']
 */
export function burstDiscWindow(disc: DiscOnCylinder, options: GasModelOption = {}): BurstDiscWindow {
  requireKeys('disc', disc, {
    testPressure: true,
    toleranceBelow: true,
    fillPressure: true,
    fillTemperature: true,
    ambientPressure: true,
    mixture: true,
    markedRating: false,
  })
  const gas = gasModelOf(options)
  const { testPressure, toleranceBelow, fillPressure, fillTemperature, ambientPressure, markedRating } = disc
  requireWithin('testPressure', testPressure, { ...gaugeRange, atMost: 700 })
  requireWithin('toleranceBelow', toleranceBelow, share)
  requireWithin('fillPressure', fillPressure, gaugeRange)
  requireWithin('fillTemperature', fillTemperature, temperatureRange)
  requireWithin('ambientPressure', ambientPressure, ambientRange)
  requireMixture('mixture', disc.mixture)
  if (markedRating !== undefined) requireWithin('markedRating', markedRating, { ...gaugeRange, atMost: 700 })
  const lowest = (testPressure * (1 - toleranceBelow)) as GaugePressure
  const at = (pressure: GaugePressure): Temperature => temperatureAt(disc, pressure, gas)
  return {
    lowest,
    highest: testPressure,
    temperatureAtLowest: at(lowest),
    temperatureAtHighest: at(testPressure),
    because: contradictions(disc, lowest),
    cautions: ['valve-connection', 'inspection', 'overfill'],
  }
}

function temperatureAt(disc: DiscOnCylinder, pressure: GaugePressure, gas: GasModel): Temperature {
  const { fillPressure, fillTemperature, ambientPressure, mixture } = disc
  const filled = toAbsolute(fillPressure, ambientPressure)
  const reached = toAbsolute(pressure, ambientPressure)
  if (gas === 'ideal') return ((fillTemperature * reached) / filled) as Temperature
  return temperatureAtDensity(mixture, {
    molarDensity: molarDensity(mixture, filled, fillTemperature),
    pressure: reached,
  })
}

function contradictions(
  { markedRating, testPressure, fillPressure }: DiscOnCylinder,
  lowest: GaugePressure,
): readonly Reason[] {
  if (markedRating === undefined) {
    return [
      {
        code: 'rating-not-stated',
        text: 'the rules differ by a tenth or more: read the rating marked on the disc',
      },
    ]
  }
  const because: Reason[] = []
  const marked = `${(markedRating / bar.factor).toFixed(0)} bar marked`
  if (markedRating > testPressure) {
    const source = reliefDeviceRules['plus-permission'].source
    because.push({ code: 'rating-above-test', text: `${marked}, above the test pressure`, source })
  } else if (markedRating < lowest) {
    because.push({
      code: 'rating-below-window',
      text: `${marked}, below the window: for another cylinder, or weakened`,
    })
  }
  if (markedRating <= fillPressure) {
    because.push({ code: 'rating-below-fill', text: `${marked}: filling alone would burst it` })
  }
  return because
}
