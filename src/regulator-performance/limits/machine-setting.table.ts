import type { SourceId } from '../../references/index.ts'
import { litre, litrePerMinute, perMinute } from '../../units/index.ts'
import type { PrintedLimit } from './acceptance-limit.table.ts'

/** One published setting of a sinusoidal breathing machine, as printed. */
export interface MachineSetting {
  readonly respiratoryMinuteVolume: PrintedLimit
  readonly tidalVolume: PrintedLimit
  readonly breathingFrequency: PrintedLimit
  readonly source: SourceId
  readonly place: string
  /** What tidal volume and frequency rest on; the ventilations themselves were read in `nedu-ada272974`. */
  readonly evidence: 'primary' | 'secondary' | 'memory'
}

/** The published settings, from light work to heavy. */
export const machineSettings: readonly MachineSetting[] = [
  {
    respiratoryMinuteVolume: { printed: '22.5', unit: litrePerMinute },
    tidalVolume: { printed: '1.5', unit: litre },
    breathingFrequency: { printed: '15', unit: perMinute },
    source: 'mil-01-94',
    place: 'machine settings',
    evidence: 'memory',
  },
  {
    respiratoryMinuteVolume: { printed: '40', unit: litrePerMinute },
    tidalVolume: { printed: '2.0', unit: litre },
    breathingFrequency: { printed: '20', unit: perMinute },
    source: 'mil-01-94',
    place: 'machine settings',
    evidence: 'memory',
  },
  {
    respiratoryMinuteVolume: { printed: '62.5', unit: litrePerMinute },
    tidalVolume: { printed: '2.5', unit: litre },
    breathingFrequency: { printed: '25', unit: perMinute },
    source: 'en-250-2014',
    place: 'clause 6.7.1, excerpt',
    evidence: 'secondary',
  },
  {
    respiratoryMinuteVolume: { printed: '75', unit: litrePerMinute },
    tidalVolume: { printed: '2.5', unit: litre },
    breathingFrequency: { printed: '30', unit: perMinute },
    source: 'mil-01-94',
    place: 'machine settings',
    evidence: 'memory',
  },
  {
    respiratoryMinuteVolume: { printed: '90', unit: litrePerMinute },
    tidalVolume: { printed: '3.0', unit: litre },
    breathingFrequency: { printed: '30', unit: perMinute },
    source: 'mil-01-94',
    place: 'machine settings',
    evidence: 'memory',
  },
]
