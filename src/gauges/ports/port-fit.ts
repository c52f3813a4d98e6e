import { requireKeys, requireWord } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import { type Accepted, bar, type GaugePressure, inch, type Length, one, requireWithin } from '../../units/index.ts'
import { type HoseId, hoses, type PortId, ports, type UnifiedThread } from './port.table.ts'

/** A hose that is to be screwed into a port. */
export interface PortFit {
  readonly port: PortId
  readonly hose: HoseId
  /** Highest pressure behind that port, gauge. */
  readonly pressure: GaugePressure
  /** Rated pressure marked on the hose, gauge; left out where it cannot be read. */
  readonly rating?: GaugePressure
}

const pressureRange: Accepted = { above: 0, atMost: 700, unit: bar, hint: 'Give the highest pressure behind the port.' }

/**
 * Whether a hose belongs into a port: thread, side of the first stage, and the rating marked on the hose against the pressure there.
 * A thread that engages proves nothing: old first stages have the low-pressure thread at cylinder pressure, and a low-pressure hose there bursts.
 *
 * @param fit - port and hose by id; highest pressure behind the port, gauge, Pa; rating marked on the hose, gauge, Pa
 * @returns an assessment of the pressure against the rating
 * @throws LitrebarError `range`, naming the field; `input` for an unknown id or key
 * @source common-practice
 * @example
 * const fit = { port: 'high-3/8', hose: 'low-pressure', pressure: gauge(232, bar), rating: gauge(30, bar) } as const
 * assessPortFit(fit).because.map(({ code }) => code) // => ['side', 'rating', 'memory']
 */
export function assessPortFit(fit: PortFit): Assessment<GaugePressure> {
  requireKeys('fit', fit, { port: true, hose: true, pressure: true, rating: false })
  requireWord('fit.port', fit.port, Object.keys(ports) as PortId[])
  requireWord('fit.hose', fit.hose, Object.keys(hoses) as HoseId[])
  requireWithin('fit.pressure', fit.pressure, pressureRange)
  if (fit.rating !== undefined) requireWithin('fit.rating', fit.rating, pressureRange)
  const port = ports[fit.port]
  const hose = hoses[fit.hose]
  const against: Reason[] = []
  const doubts: Reason[] = []
  if (port.designation !== hose.designation)
    against.push({ code: 'thread', text: `The port is ${port.designation}, the hose ${hose.designation}.` })
  if (port.side !== hose.side)
    against.push({
      code: 'side',
      text: `The port is on the ${port.side}-pressure side, the hose is made for the other.`,
    })
  if (fit.rating === undefined)
    doubts.push({ code: 'no-rating', text: 'The rating of the hose is not known: read it on the hose.' })
  else if (fit.pressure > fit.rating)
    against.push({ code: 'rating', text: 'The pressure behind the port lies above the rating of the hose.' })
  if (port.source === 'memory')
    doubts.push({ code: 'memory', text: 'This port is known from memory only.', source: 'memory' })
  return {
    value: fit.pressure,
    ...(fit.rating === undefined ? {} : { limit: fit.rating, margin: fit.rating - fit.pressure }),
    ...verdictFrom({ against, doubts }),
    cautions: ['valve-connection', 'regulator'],
    sources: ['common-practice', 'memory'],
  }
}

const diameterRange: Accepted = { above: 0, atMost: 8, unit: one, hint: 'Give inches.' }
const threadsRange: Accepted = { above: 2.5, atMost: 200, unit: one, hint: 'Count threads per inch.' }

/** Sizes of a thread, from its designation. */
export interface ThreadSize {
  readonly diameter: Length
  readonly pitch: Length
}

/**
 * Diameter and pitch of a unified thread by its designation, to tell one from the other with a caliper.
 *
 * @param thread - a row of `ports` or `hoses`
 * @returns nominal diameter and pitch, m
 * @throws LitrebarError `range` for a row of your own that is none
 * @source litrebar-derivation (what the designation says)
 * @example
 * inUnit(threadSize(ports['high-7/16']).diameter, millimetre).toFixed(2) // => '11.11'
 */
export function threadSize(thread: UnifiedThread): ThreadSize {
  requireKeys('thread', thread, { ...ports['high-7/16'], diameterInch: true, perInch: true }) // a row of ports, or less
  requireWithin('thread.diameterInch', thread.diameterInch, diameterRange)
  requireWithin('thread.perInch', thread.perInch, threadsRange)
  return { diameter: (thread.diameterInch * inch.factor) as Length, pitch: (inch.factor / thread.perInch) as Length }
}
