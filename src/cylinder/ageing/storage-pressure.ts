import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import { type Accepted, bar, type GaugePressure, requireWithin } from '../../units/index.ts'

/** The pressure that the trade keeps in a stored cylinder, in its two customary units. */
export const storagePressure = {
  bar: 20,
  psi: 300,
  source: 'common-practice',
} as const

const pressure: Accepted = { atLeast: 0, atMost: 500, unit: bar, hint: 'Give what the gauge shows.' }

// Ours: 20 bar is taken as 10 to 30; below 1 bar the cylinder breathes with the weather.
const rows = [
  { upTo: 1, code: 'empty', text: 'practically open: moist air can get in, and sea water through an open valve' },
  { upTo: 10, code: 'low', text: 'enough to keep water out, but too little to show a leak' },
  { upTo: 30, code: 'as-practised', text: 'about the usual storage pressure' },
  {
    upTo: Number.POSITIVE_INFINITY,
    code: 'high',
    text: 'more oxygen for rusting if there is water inside, and more pressure in a fire',
  },
] as const
const least = 10
const most = 30

/**
 * The pressure of a stored cylinder against common practice, 20 bar (300 psi): enough to keep water out and to show
 * a leak, little enough to burst its disc late in a fire and to feed little rust. Makers and depots may ask otherwise.
 *
 * @param gaugePressure - what the gauge shows, Pa, 0 to 500 bar
 * @returns an assessment against the nearer end of 10 to 30 bar: `within` from one to the other, both included, `beyond` outside
 * @throws LitrebarError `range`
 * @source common-practice
 * @example
 * assessStorage(gauge(300, psi)).because[0]?.code // => 'as-practised'
 */
export function assessStorage(gaugePressure: GaugePressure): Assessment<GaugePressure> {
  requireWithin('gaugePressure', gaugePressure, pressure)
  const bars = gaugePressure / bar.factor
  const isKept = bars >= least && bars <= most
  const row = isKept ? rows[2] : (rows.find(({ upTo }) => bars < upTo) ?? rows[3])
  const because: Reason = { code: row.code, text: row.text, source: 'common-practice' }
  const isNearTop = bars - least > most - bars
  const limit = ((isNearTop ? most : least) * bar.factor) as GaugePressure
  return {
    value: gaugePressure,
    limit,
    margin: isNearTop ? limit - gaugePressure : gaugePressure - limit,
    ...verdictFrom({ against: isKept ? [] : [because], doubts: [], notes: isKept ? [because] : [] }),
    cautions: row.code === 'empty' ? ['inspection', 'rust-oxygen'] : ['rust-oxygen'],
    sources: ['common-practice'],
  }
}
