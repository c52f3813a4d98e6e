import type { CautionId, SourceId } from '../../references/index.ts'

/** What is seen on the bench, what it points to, and what is done. */
export interface BenchFinding {
  readonly id: string
  readonly seen: string
  readonly pointsTo: readonly string[]
  /** Always ends with the maker's instructions and a qualified technician. */
  readonly action: string
  readonly source: SourceId
  readonly cautions: readonly CautionId[]
}

const technician = 'Withdraw the regulator; a technician qualified for it acts by the maker’s instructions.'

/** Findings of the trade. None replaces a service; each says where to look. */
export const benchFindings: readonly BenchFinding[] = [
  {
    id: 'filter-red-brown',
    seen: 'inlet filter red or brown',
    pointsTo: ['iron oxide shed by steel', 'water in the cylinder'],
    action: `${technician} The cylinder goes to an inspector.`,
    source: 'common-practice',
    cautions: ['regulator', 'inspection', 'rust-oxygen'],
  },
  {
    id: 'filter-white-grey',
    seen: 'inlet filter white or grey, powdery',
    pointsTo: ['oxide from an aluminium cylinder', 'salt from sea water that came in'],
    action: `${technician} The cylinder goes to an inspector.`,
    source: 'common-practice',
    cautions: ['regulator', 'inspection'],
  },
  {
    id: 'filter-green',
    seen: 'inlet filter green',
    pointsTo: ['corroded brass inside, after water has stood in the stage'],
    action: technician,
    source: 'common-practice',
    cautions: ['regulator'],
  },
  {
    id: 'filter-black',
    seen: 'inlet filter black',
    pointsTo: ['charcoal or oil from a compressor filter'],
    action: `${technician} The air of the filling station is analysed before anyone breathes it.`,
    source: 'common-practice',
    cautions: ['regulator', 'breathing-air'],
  },
  {
    id: 'intermediate-creep',
    seen: 'intermediate pressure climbs slowly without flow',
    pointsTo: ['worn or dirty seat of the first stage', 'damaged sealing edge'],
    action: technician,
    source: 'common-practice',
    cautions: ['regulator'],
  },
  {
    id: 'intermediate-high',
    seen: 'intermediate pressure above 10 bar (150 psi)',
    pointsTo: ['wrong setting', 'leaking high-pressure seat'],
    action: technician,
    source: 'common-practice',
    cautions: ['regulator'],
  },
  {
    id: 'intermediate-low',
    seen: 'intermediate pressure below 6 bar (90 psi)',
    pointsTo: ['wrong setting', 'tired spring', 'supply nearly empty', 'blocked filter'],
    action: technician,
    source: 'common-practice',
    cautions: ['regulator'],
  },
  {
    id: 'droop',
    seen: 'intermediate pressure drops far while purging',
    pointsTo: ['blocked filter', 'cylinder valve not open', 'first stage near its flow limit'],
    action: `Open the valve fully and repeat. ${technician}`,
    source: 'common-practice',
    cautions: ['regulator'],
  },
  {
    id: 'second-stage-hiss',
    seen: 'second stage flows softly at rest',
    pointsTo: [
      'cracking pressure set too low',
      'worn low-pressure seat',
      'intermediate pressure too high',
      'sand under the seat',
    ],
    action: technician,
    source: 'common-practice',
    cautions: ['regulator'],
  },
  {
    id: 'second-stage-attitude',
    seen: 'second stage flows in one attitude only',
    pointsTo: [
      'water column between diaphragm and exhaust valve: no fault where the margin is small',
      'cracking pressure set too low',
    ],
    action: `Compare with the margin of \`attitudeEffect\`. ${technician}`,
    source: 'common-practice',
    cautions: ['regulator'],
  },
  {
    id: 'second-stage-sand',
    seen: 'sand in the second stage',
    pointsTo: ['exhaust valve held open: water comes in', 'lever or seat held open: free flow'],
    action: `Rinse only as the maker says. ${technician}`,
    source: 'common-practice',
    cautions: ['regulator'],
  },
  {
    id: 'wet-breathing',
    seen: 'water comes in while breathing',
    pointsTo: ['exhaust valve folded, torn or dirty', 'diaphragm torn', 'mouthpiece torn'],
    action: technician,
    source: 'common-practice',
    cautions: ['regulator'],
  },
  {
    id: 'bubbles-first-stage',
    seen: 'bubbles at the first stage under water',
    pointsTo: ['O-ring of the connection', 'O-ring of a port or hose', 'piston or diaphragm seal'],
    action: `Close the valve, vent, and look at the connection’s O-ring. ${technician}`,
    source: 'common-practice',
    cautions: ['regulator', 'valve-connection'],
  },
  {
    id: 'service-due',
    seen: 'a year since the last service, or as many dives as the maker allows',
    pointsTo: ['seals and seats age in use and at rest'],
    action: `Service yearly, or sooner where the maker says so. ${technician}`,
    source: 'common-practice',
    cautions: ['regulator'],
  },
]
