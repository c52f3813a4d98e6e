import { LitrebarError, requireKeys } from '../errors/index.ts'
import type { ContentsByAbsolutePressure, ContentsByGaugePressure, GasContents } from '../gas-law/index.ts'
import { requireMixture } from '../gas-law/mixture/mixture.ts'
import { type AbsolutePressure, type Accepted, requireWithin, toAbsolute } from '../units/index.ts'
import { ambientPressure, pressureOrVacuum, temperature } from './accepted-contents.ts'

/** Gas in a closed cylinder of any size: its state, with the pressure absolute, or as a gauge shows it with the ambient pressure. */
export type GasInside =
  | (Omit<ContentsByAbsolutePressure, 'internalVolume'> & Partial<Pick<GasContents, 'internalVolume'>>)
  | (Omit<ContentsByGaugePressure, 'internalVolume'> & Partial<Pick<GasContents, 'internalVolume'>>)

/**
 * The absolute pressure of a gas inside a cylinder, once its state has been checked.
 *
 * @param path - of the gas, for the error; empty where the fields are the caller's own
 * @param inside - what is inside, by absolute or by gauge pressure
 * @param accepted - the range of the absolute pressure
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range`, `input` or `mixture`, naming the field
 */
export function pressureInside(path: string, inside: GasInside, accepted: Accepted): AbsolutePressure {
  requireKeys(path, inside, keys)
  const { mixture, temperature: t, gaugePressure } = inside
  requireMixture(`${path}.mixture`, mixture)
  requireWithin(`${path}.temperature`, t, temperature)
  if (gaugePressure === undefined) {
    requireWithin(`${path}.pressure`, inside.pressure, accepted)
    return inside.pressure
  }
  if ((inside.pressure as number | undefined) !== undefined) throw bothPressures(path)
  if (inside.elasticExpansion !== undefined) throw notRigid(path)
  requireWithin(`${path}.ambientPressure`, inside.ambientPressure, ambientPressure)
  const absolute = toAbsolute(gaugePressure, inside.ambientPressure)
  requireWithin(`${path}.gaugePressure + ${path}.ambientPressure`, absolute, accepted)
  return absolute
}

const keys = {
  internalVolume: false,
  mixture: true,
  pressure: false,
  gaugePressure: false,
  ambientPressure: false,
  temperature: true,
  elasticExpansion: false,
}

function bothPressures(path: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: `${path}.pressure`,
    value: 'stated together with a gauge pressure',
    expected: 'one of the two',
    hint: 'Leave one out: they can contradict each other.',
  })
}

function notRigid(path: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: `${path}.elasticExpansion`,
    value: 'stated',
    expected: 'nothing: the cylinder is treated as rigid here',
    hint: 'Leave it out, or state the expansion in the options of developedPressure.',
  })
}

/** Contents by absolute pressure, of a cylinder that may be evacuated: what the balances between cylinders count with. */
export function byAbsolutePressure(
  path: string,
  contents: GasContents,
  accepted: Accepted = pressureOrVacuum,
): ContentsByAbsolutePressure {
  const pressure = pressureInside(path, contents, accepted)
  const { internalVolume, mixture, temperature: t } = contents
  return { internalVolume, mixture, pressure, temperature: t }
}
