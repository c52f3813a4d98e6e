import type { CautionId } from './cautions.ts'

/**
 * Cautions of the functions whose result carries no ids, by the name of the function: a bare number has no room for them and can hurt
 * all the same. Other results carry their ids under `cautions`. Show `always` beside both.
 *
 * @source common-practice
 * @example
 * cautionsOf.developedPressure.join(', ') // => 'fill-limit, hot-fill'
 */
export const cautionsOf = {
  guaranteedWall: ['inspection'],
  minimumWallForStress: ['inspection'],
  wallStress: ['inspection'],
  averageWallStress: ['inspection'],
  developedPressure: ['fill-limit', 'hot-fill'],
  pressureAtGasDensity: ['gas-density'],
  surfaceEquivalentFraction: ['oxygen-limits'],
  oxygenEndurance: ['breathing-loop', 'reserve'],
  breathedOxygenPressure: ['rust-oxygen', 'oxygen-limits'],
  indicatedDepth: ['instrument'],
  pressureAtShownDepth: ['instrument'],
  surfacePressureAtAltitude: ['altitude-pressure'],
  pressureAltitude: ['altitude-pressure'],
  ventFlow: ['buoyancy'],
  liftGainPerMetre: ['buoyancy'],
  unventedLift: ['buoyancy'],
} as const satisfies Readonly<Record<string, readonly CautionId[]>>
