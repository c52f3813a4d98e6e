import { requireKeys, requireWord } from '../../errors/index.ts'
import type { SourceId } from '../../references/sources.ts'
import {
  type Accepted,
  bar,
  type Fraction,
  type GaugePressure,
  type Length,
  megapascal,
  millimetre,
  requireWithin,
} from '../../units/index.ts'
import { noWallIsEnough, type Stress } from './wall-stress.ts'

/** Where a design standard sets the share of yield that the wall may reach, and the floor below which no wall goes. */
export interface WallDesignRule {
  readonly standard: string
  /** The share of yield is at most this over the ratio of yield to tensile strength … */
  readonly factorTimesRatio: number
  /** … and at most this. */
  readonly factorCap: number
  /** The least wall is the diameter over this, plus `floorAdded` millimetres. */
  readonly floorDivisor: number
  readonly floorAdded: number
  readonly source: SourceId
  readonly place: string
}

/** Factors and floors from memory: the texts of the two standards were not seen. The algebra is derived. */
export const wallDesignRules = {
  'ISO 9809-1': {
    standard: 'ISO 9809-1',
    factorTimesRatio: 0.65,
    factorCap: 0.85,
    floorDivisor: 250,
    floorAdded: 1,
    source: 'memory',
    place: 'ISO 9809-1, clause 7.3',
  },
  'ISO 7866': {
    standard: 'ISO 7866',
    factorTimesRatio: 0.65,
    factorCap: 0.85,
    floorDivisor: 100,
    floorAdded: 1.5,
    source: 'memory',
    place: 'ISO 7866, clause 7',
  },
} as const satisfies Record<string, WallDesignRule>

/** A guaranteed wall with what decided it. */
export interface GuaranteedWall {
  readonly wall: Length
  /** Share of yield that the test pressure may reach. */
  readonly factor: Fraction
  /** What the stress asks for, and the floor of the standard: the larger one is `wall`. */
  readonly byStress: Length
  readonly floor: Length
  readonly sources: readonly SourceId[]
}

const strength: Accepted = {
  above: 0,
  atMost: 2500,
  unit: megapascal,
  hint: 'Give the guaranteed strength of the metal.',
}

/**
 * Guaranteed minimum wall of a seamless ISO cylinder: the wall at which the inside of the shell would just begin to yield
 * if it had only a share F of its yield strength.
 *
 * The algebra is Lamé’s thick closed cylinder with the yield condition of von Mises,
 * √3 p R²/(R² − r²) = F Re at the bore, solved for the wall. F and the floor come from memory of the standards.
 *
 * @param design - standard; outside diameter, m, up to 1 m; test pressure, gauge, Pa, up to 2000 bar; guaranteed yield and
 *   tensile strength, Pa, yield not above tensile
 * @returns wall with its factor and its floor, m
 * @throws LitrebarError `range`, naming the field; `input` where no wall is thick enough, and for an unknown standard or key
 * @source litrebar-derivation (algebra); memory (factor and floor)
 * @example
 * const { wall, factor } = guaranteedWall({
 *   standard: 'ISO 9809-1',
 *   outsideDiameter: measure(171, millimetre),
 *   testPressure: gauge(348, bar),
 *   yieldStrength: difference(760, megapascal),
 *   tensileStrength: difference(900, megapascal),
 * })
 * const shown = `${inUnit(wall, millimetre).toFixed(2)} mm at F = ${factor.toFixed(3)}` // => '4.52 mm at F = 0.770'
 */
export function guaranteedWall(design: {
  readonly standard: keyof typeof wallDesignRules
  readonly outsideDiameter: Length
  readonly testPressure: GaugePressure
  readonly yieldStrength: Stress
  readonly tensileStrength: Stress
}): GuaranteedWall {
  requireKeys('design', design, {
    standard: true,
    outsideDiameter: true,
    testPressure: true,
    yieldStrength: true,
    tensileStrength: true,
  })
  requireWord('standard', design.standard, Object.keys(wallDesignRules) as (keyof typeof wallDesignRules)[])
  const { outsideDiameter, testPressure, yieldStrength, tensileStrength } = design
  requireWithin('outsideDiameter', outsideDiameter, {
    above: 0,
    atMost: 1000,
    unit: millimetre,
    hint: 'Give the outside.',
  })
  requireWithin('testPressure', testPressure, { above: 0, atMost: 2000, unit: bar, hint: 'Give the test pressure.' })
  requireWithin('tensileStrength', tensileStrength, strength)
  requireWithin('yieldStrength', yieldStrength, {
    ...strength,
    atMost: tensileStrength / 1e6,
    hint: 'Yield strength is below tensile strength: are the two swapped?',
  })
  const rule = wallDesignRules[design.standard]
  const factor = Math.min(rule.factorTimesRatio / (yieldStrength / tensileStrength), rule.factorCap)
  const allowed = factor * yieldStrength
  const left = allowed - Math.sqrt(3) * testPressure
  if (left <= 0) throw noWallIsEnough('yieldStrength', yieldStrength, (Math.sqrt(3) * testPressure) / factor)
  const byStress = (outsideDiameter / 2) * (1 - Math.sqrt(left / allowed))
  const floor = outsideDiameter / rule.floorDivisor + rule.floorAdded / 1000
  return {
    wall: Math.max(byStress, floor) as Length,
    factor: factor as Fraction,
    byStress: byStress as Length,
    floor: floor as Length,
    sources: ['litrebar-derivation', rule.source],
  }
}
