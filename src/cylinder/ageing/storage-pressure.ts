import type { Assessment, Reason } from '../../references/assessment.ts'
import { type Accepted, bar, type GaugePressure, requireWithin } from '../../units/index.ts'

/** The pressure that the trade keeps in a stored cylinder, in the two units it is said in. */
export const storagePressure = {
  bar: 20,
  psi: 300,
  source: 'common-practice',
} as const

const pressure: Accepted = { atLeast: 0, atMost: 500, unit: bar, hint: 'Give what the gauge shows.' }

// Ours: "about 20 bar" is taken as 10 to 30; below 1 bar the cylinder breathes with the weather.
const rows = [
  { below: 1, code: 'empty', text: 'as good as open: moist air can come in, and sea water through an open valve' },
  { below: 10, code: 'low', text: 'enough to keep water out, little to show a leak' },
  { below: 30, code: 'as-practised', text: 'about what is kept in store' },
  {
    below: Number.POSITIVE_INFINITY,
    code: 'high',
    text: 'more oxygen for rust if there is water, and more pressure in a fire',
  },
] as const

/**
 * The pressure of a stored cylinder against common practice, about 20 bar or 300 psi: enough to keep water out and to show
 * a leak, little enough to burst its disc late in a fire and to feed little rust. Makers and depots may ask otherwise.
 *
 * @param gaugePressure - what the gauge shows, Pa, 0 to 500 bar
 * @returns an assessment: `within` from 10 to 30 bar, `beyond` outside, with the reason
 * @throws LitrebarError `range`
 * @source common-practice
 * @example
 * assessStorage(gauge(300, psi)).because[0]?.code // => 'as-practised'
 */
export function assessStorage(gaugePressure: GaugePressure): Assessment<GaugePressure> {
  requireWithin('gaugePressure', gaugePressure, pressure)
  const row = rows.find(({ below }) => gaugePressure < below * bar.factor) ?? rows[3]
  const because: Reason[] = [{ code: row.code, text: row.text, source: 'common-practice' }]
  const limit = (storagePressure.bar * bar.factor) as GaugePressure
  return {
    value: gaugePressure,
    limit,
    margin: limit - gaugePressure,
    verdict: row.code === 'as-practised' ? 'within' : 'beyond',
    because,
    cautions: row.code === 'empty' ? ['inspection', 'rust-oxygen'] : ['rust-oxygen'],
    sources: ['common-practice'],
  }
}
