import type { Profile } from '../consumption/index.ts'
import type { GasContents } from '../gas-law/index.ts'
import { recordSlips, type StatedRecord } from '../units/index.ts'

/** The part of a check of zod that is used here. */
interface Checked<Value> {
  readonly value: Value
  readonly issues: { push: (issue: never) => unknown }
}

/**
 * A check of an input whose numbers are usual one by one: refuses them where they do not go together and one slip explains all of it.
 * What is unusual without an explanation passes; the library's own ranges hold for it.
 *
 * @param recordOf - the numbers of the input by what they stand for
 * @returns a check for `.check`
 */
export function goingTogether<Value>(recordOf: (value: Value) => StatedRecord): (checked: Checked<Value>) => void {
  return ({ value, issues }) => {
    const [slip] = recordSlips(recordOf(value)).slips
    if (slip === undefined) return
    const message = `${slip.because}: perhaps, in the ${slip.role}, ${slip.text}. State the unit that was meant.`
    issues.push({ code: 'custom', message, input: value, params: { code: 'input', role: slip.role } } as never)
  }
}

/** Of a dive on one gas: depths counted from its first pressure, in water between fresh and salt. */
export function recordOfDive(profile: Profile, { internalVolume, mixture, ...contents }: GasContents): StatedRecord {
  const [first] = profile
  const last = profile.at(-1)
  if (first === undefined || last === undefined) return {}
  const surface = Math.min(...profile.map(({ ambientPressure }) => ambientPressure))
  const deepest = Math.max(...profile.map(({ ambientPressure }) => ambientPressure))
  return {
    'internal volume': internalVolume,
    'starting gauge pressure': 'gaugePressure' in contents ? contents.gaugePressure : undefined,
    'surface pressure': surface > 0.6e5 && surface < 1.1e5 ? surface : undefined,
    depth: (deepest - surface) / (1020 * 9.80665),
    'oxygen fraction': mixture.oxygen,
    'helium fraction': mixture.helium,
  }
}
