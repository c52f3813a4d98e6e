import {
  bodyVolume,
  foamConductivity,
  foamVolume,
  gasFractionOfFoam,
  netBuoyancy,
  type RigidItem,
  unfilledDrySuit,
  type Water,
} from '../../buoyancy/index.ts'
import type {
  AbsolutePressure,
  Density,
  DisplacedVolume,
  Fraction,
  GasVolume,
  Mass,
  ThermalConductivity,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Net buoyancy of a thing that keeps its volume. */
export const netBuoyancyCard: Card<'F' | 'V' | 'rho' | 'm' | 'g'> = {
  id: 'net-buoyancy',
  title: 'Net buoyancy is the weight of the displaced water minus the weight of the object',
  documents: 'netBuoyancy',
  result: 'F',
  symbols: {
    F: { letter: 'F', meaning: 'net buoyancy, upward', dimension: 'force', parameter: 'force' },
    V: { letter: 'V', meaning: 'displaced volume, walls included', dimension: 'volume', parameter: 'displacedVolume' },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'density' },
    m: { letter: 'm', meaning: 'mass in air', dimension: 'mass', parameter: 'mass' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'gravity' },
  },
  forms: { F: ['*', ['-', ['*', 'V', 'rho'], 'm'], 'g'] },
  core: {
    F: ({ density, gravity, ...item }: RigidItem & Water) =>
      netBuoyancy(
        { mass: item.mass, displacedVolume: item.displacedVolume },
        { density, ...(gravity !== undefined && { gravity }) },
      ),
  },
  conditions: ['the object keeps its volume', 'weighed in air, air buoyancy neglected'],
  source: 'litrebar-derivation',
  cautions: ['buoyancy'],
  commonErrors: [
    { slip: 'fresh-water-for-sea', text: 'Density of fresh water used, 1000 kg/m³', symbols: ['rho'] },
    { slip: 'sea-water-for-fresh', text: 'Density of sea water used, 1025 kg/m³', symbols: ['rho'] },
  ],
  range: { V: [0.005, 0.02], rho: [990, 1040], m: [5, 25], g: [9.78, 9.83] },
}

/** Gas in the cells of a foam, from two densities. */
export const gasFractionOfFoamCard: Card<'x' | 'rf' | 'rr'> = {
  id: 'gas-fraction-of-foam',
  title: 'How much of a foam is gas',
  documents: 'gasFractionOfFoam',
  result: 'x',
  symbols: {
    x: {
      letter: 'x',
      subscript: 'g',
      meaning: 'fraction of the volume that is gas',
      dimension: 'fraction',
      parameter: 'fraction',
    },
    rf: { letter: 'ρ', subscript: 'f', meaning: 'density of the foam', dimension: 'density', parameter: 'foam' },
    rr: { letter: 'ρ', subscript: 'r', meaning: 'density of its rubber', dimension: 'density', parameter: 'rubber' },
  },
  forms: { x: ['-', 1, ['/', 'rf', 'rr']] },
  core: { x: ({ foam, rubber }: { foam: Density; rubber: Density }) => gasFractionOfFoam(foam, rubber) },
  conditions: ['the mass of the gas is negligible'],
  source: 'litrebar-derivation',
  range: { rf: [100, 400], rr: [900, 1300] },
}

/** Volume of a foam suit at a pressure. */
export const foamVolumeCard: Card<'V' | 'V0' | 'x' | 'p0' | 'p'> = {
  id: 'foam-volume',
  title: 'In a foam suit the gas shrinks by Boyle’s law, the rubber keeps its volume',
  documents: 'foamVolume',
  result: 'V',
  symbols: {
    V: { letter: 'V', meaning: 'volume of the foam at the pressure', dimension: 'volume', parameter: 'volume' },
    V0: {
      letter: 'V',
      subscript: '0',
      meaning: 'volume of the foam at the surface',
      dimension: 'volume',
      parameter: 'displacedVolume',
    },
    x: {
      letter: 'x',
      subscript: 'g',
      meaning: 'fraction of the volume that is gas',
      dimension: 'fraction',
      parameter: 'gasFraction',
    },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'statedAt',
    },
    p: { letter: 'p', meaning: 'absolute pressure around the suit', dimension: 'pressure', parameter: 'pressure' },
  },
  forms: { V: ['*', 'V0', ['+', ['-', 1, 'x'], ['*', 'x', ['/', 'p0', 'p']]]] },
  core: {
    V: (knowns: {
      displacedVolume: DisplacedVolume
      gasFraction: Fraction
      statedAt: AbsolutePressure
      pressure: AbsolutePressure
    }) => {
      const { pressure, ...suit } = knowns
      return foamVolume({ mass: 2 as Mass, ...suit }, pressure)
    },
  },
  besides: ['mass', 'stiffness'],
  conditions: ['the rubber does not resist: real suits shrink less', 'the suit has had time to adjust to the pressure'],
  source: 'litrebar-derivation',
  cautions: ['buoyancy'],
  commonErrors: [{ slip: 'gauge-for-absolute', text: 'Gauge pressure used as absolute', symbols: ['p'] }],
  range: { V0: [0.004, 0.02], x: [0.5, 0.85], p0: [60_000, 105_000], p: [110_000, 600_000] },
}

/** Lift of the gas in a dry suit that is not filled on the way down. */
export const unfilledDrySuitCard: Card<'F' | 'rho' | 'g' | 'V0' | 'p0' | 'p'> = {
  id: 'unfilled-dry-suit',
  title: 'Lift left in a dry suit when no gas is added',
  documents: 'unfilledDrySuit',
  result: 'F',
  symbols: {
    F: { letter: 'F', meaning: 'lift of the gas in the suit', dimension: 'force', parameter: 'lift' },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'density' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'gravity' },
    V0: {
      letter: 'V',
      subscript: '0',
      meaning: 'gas in the suit at the start',
      dimension: 'volume',
      parameter: 'gasVolume',
    },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the start of the descent',
      dimension: 'pressure',
      parameter: 'filledAt',
    },
    p: { letter: 'p', meaning: 'absolute pressure around the suit', dimension: 'pressure', parameter: 'pressure' },
  },
  forms: { F: ['*', 'rho', 'g', ['/', ['*', 'V0', 'p0'], 'p']] },
  core: {
    F: (knowns: { gasVolume: GasVolume; filledAt: AbsolutePressure; pressure: AbsolutePressure } & Required<Water>) => {
      const { gasVolume, filledAt, pressure, density, gravity } = knowns
      return unfilledDrySuit({ gasVolume, filledAt, loft: 0.003 as GasVolume }, pressure, { density, gravity })
    },
  },
  besides: ['loft'],
  conditions: ['no gas added or vented', 'same temperature'],
  source: 'litrebar-derivation',
  cautions: ['buoyancy'],
  commonErrors: [{ slip: 'gauge-for-absolute', text: 'Gauge pressure used as absolute', symbols: ['p'] }],
  range: { rho: [990, 1040], g: [9.78, 9.83], V0: [0.005, 0.02], p0: [60_000, 105_000], p: [110_000, 600_000] },
}

/** Volume of a body. */
export const bodyVolumeCard: Card<'V' | 'm' | 'f' | 'Vl' | 'rf' | 'rl'> = {
  id: 'body-volume',
  title: 'Volume of water that a body displaces',
  documents: 'bodyVolume',
  result: 'V',
  symbols: {
    V: { letter: 'V', meaning: 'volume displaced', dimension: 'volume', parameter: 'volume' },
    m: { letter: 'm', meaning: 'mass of the body', dimension: 'mass', parameter: 'mass' },
    f: { letter: 'f', meaning: 'fat, fraction by mass', dimension: 'fraction', parameter: 'fatFraction' },
    Vl: { letter: 'V', subscript: 'l', meaning: 'gas in the lungs', dimension: 'volume', parameter: 'lungGas' },
    rf: { letter: 'ρ', subscript: 'f', meaning: 'density of fat', dimension: 'density' },
    rl: { letter: 'ρ', subscript: 'l', meaning: 'density of everything else', dimension: 'density' },
  },
  forms: { V: ['+', ['*', 'm', ['+', ['/', 'f', 'rf'], ['/', ['-', 1, 'f'], 'rl']]], 'Vl'] },
  core: { V: (body: { mass: Mass; fatFraction: Fraction; lungGas: GasVolume }) => bodyVolume(body) },
  constants: { rf: 900, rl: 1100 },
  conditions: ['two-component model: individuals deviate by several litres, so check in the water'],
  source: 'siri-1956',
  place: 'two-component model',
  cautions: ['buoyancy'],
  commonErrors: [
    { slip: 'percent-for-fraction', text: 'Fat entered in per cent', symbols: ['f'] },
    {
      slip: 'other-formula',
      text: 'Gas in the lungs left out',
      instead: { V: ['*', 'm', ['+', ['/', 'f', 'rf'], ['/', ['-', 1, 'f'], 'rl']]] },
    },
  ],
  range: { m: [45, 120], f: [0.08, 0.4], Vl: [0.001, 0.006] },
}

/** Conductivity of foam. */
export const foamConductivityCard: Card<'k' | 'kr' | 'kg' | 'x'> = {
  id: 'foam-conductivity',
  title: 'Thermal conductivity of rubber with gas cells that do not touch',
  documents: 'foamConductivity',
  result: 'k',
  symbols: {
    k: {
      letter: 'k',
      meaning: 'conductivity of the foam',
      dimension: 'thermal conductivity',
      parameter: 'conductivity',
    },
    kr: {
      letter: 'k',
      subscript: 'r',
      meaning: 'conductivity of the rubber',
      dimension: 'thermal conductivity',
      parameter: 'rubberConductivity',
    },
    kg: {
      letter: 'k',
      subscript: 'g',
      meaning: 'conductivity of the gas',
      dimension: 'thermal conductivity',
      parameter: 'gasConductivity',
    },
    x: { letter: 'x', meaning: 'gas, fraction by volume', dimension: 'fraction', parameter: 'gasFraction' },
  },
  forms: {
    k: [
      '*',
      'kr',
      [
        '/',
        ['-', ['+', ['*', 2, 'kr'], 'kg'], ['*', 2, 'x', ['-', 'kr', 'kg']]],
        ['+', ['*', 2, 'kr'], 'kg', ['*', 'x', ['-', 'kr', 'kg']]],
      ],
    ],
  },
  core: {
    k: (foam: {
      rubberConductivity: ThermalConductivity
      gasConductivity: ThermalConductivity
      gasFraction: Fraction
    }) => foamConductivity(foam),
  },
  conditions: ['cells that do not touch: the highest conductivity a uniform foam can have'],
  source: 'litrebar-derivation',
  place: 'rule of Maxwell and Eucken (memory)',
  commonErrors: [
    { slip: 'percent-for-fraction', text: 'Gas entered in per cent', symbols: ['x'] },
    {
      slip: 'other-formula',
      text: 'Averaged by volume, as if rubber and gas were side by side',
      instead: { k: ['+', ['*', 'x', 'kg'], ['*', ['-', 1, 'x'], 'kr']] },
    },
  ],
  range: { kr: [0.15, 0.25], kg: [0.02, 0.03], x: [0.5, 0.9] },
}
