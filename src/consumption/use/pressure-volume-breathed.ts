import { type PressureVolume, requireWithin, type VolumeFlow } from '../../units/index.ts'
import { breathingRate, pressureTime } from './breathed-dive.ts'
import { type Profile, requireProfile, segmentsOf } from './profile.ts'

/**
 * Pressure times volume breathed over a profile at one rate: exact for even changes between the points, and free of any
 * equation of state.
 *
 * @param profile - pressure against time
 * @param respiratoryMinuteVolume - at the pressure of the diver, m³/s, above 0 and at most 500 L/min
 * @returns pressure times volume at ambient, Pa·m³
 * @throws LitrebarError `range` or `input`
 * @source litrebar-derivation
 * @example
 * const profile = steadyProfile(absolute(3, bar), measure(40, minute))
 * inUnit(pressureVolumeBreathed(profile, measure(15, litrePerMinute)), barLitre) // => 1800
 */
export function pressureVolumeBreathed(profile: Profile, respiratoryMinuteVolume: VolumeFlow): PressureVolume {
  requireProfile('profile', profile)
  requireWithin('respiratoryMinuteVolume', respiratoryMinuteVolume, breathingRate)
  let integral = 0
  for (const segment of segmentsOf(profile)) integral += pressureTime(segment)
  return (respiratoryMinuteVolume * integral) as PressureVolume
}
