import {
  averageWallStress,
  bendingStress,
  directExpansion,
  longitudinalStress,
  minimumWallForStress,
  rejectionElasticExpansion,
  wallStress,
  waterCompression,
  waterVolume,
} from '../../cylinder/index.ts'
import type {
  Density,
  Force,
  Fraction,
  GaugePressure,
  InternalVolume,
  Length,
  Mass,
  PressureDifference,
  Volume,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Stress in the wall of a cylinder at test pressure. */
export const wallStressCard: Card<'S' | 'pt' | 'D' | 't'> = {
  id: 'wall-stress',
  title: 'Stress in the wall of a cylinder at test pressure',
  documents: 'wallStress',
  result: 'S',
  symbols: {
    S: { letter: 'S', meaning: 'stress in the wall', dimension: 'pressure', datum: 'difference', parameter: 'stress' },
    pt: {
      letter: 'p',
      subscript: 't',
      meaning: 'test pressure, gauge',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'testPressure',
    },
    D: { letter: 'D', meaning: 'outside diameter', dimension: 'length', parameter: 'outsideDiameter' },
    t: { letter: 't', meaning: 'thickness of the wall', dimension: 'length', parameter: 'wall' },
  },
  forms: {
    S: [
      '/',
      ['*', 'pt', ['+', ['*', 1.3, ['^', 'D', 2]], ['*', 0.4, ['^', ['-', 'D', ['*', 2, 't']], 2]]]],
      ['-', ['^', 'D', 2], ['^', ['-', 'D', ['*', 2, 't']], 2]],
    ],
  },
  core: {
    S: ({
      testPressure: pt,
      outsideDiameter: D,
      wall: t,
    }: {
      testPressure: GaugePressure
      outsideDiameter: Length
      wall: Length
    }) => wallStress({ outsideDiameter: D, wall: t }, pt),
  },
  conditions: ['seamless steel cylinder with a uniform wall', 'away from shoulder and base'],
  source: 'cfr-49-178-46',
  place: 'wall stress formula',
  cautions: ['inspection'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'By the thin-wall hoop stress formula',
      instead: { S: ['/', ['*', 'pt', 'D'], ['*', 2, 't']] },
    },
    { slip: 'diameter-for-radius', text: 'Radius and diameter confused', symbols: ['D'] },
  ],
  range: { S: [400000000.0, 700000000.0], pt: [20000000.0, 50000000.0], D: [0.12, 0.25], t: [0.004, 0.012] },
}

/** Stress along a cylinder at test pressure. */
export const longitudinalStressCard: Card<'S' | 'pt' | 'D' | 't'> = {
  id: 'longitudinal-stress',
  title: 'Stress along a cylinder at test pressure',
  documents: 'longitudinalStress',
  result: 'S',
  symbols: {
    S: {
      letter: 'S',
      meaning: 'stress along the cylinder',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'stress',
    },
    pt: {
      letter: 'p',
      subscript: 't',
      meaning: 'test pressure, gauge',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'testPressure',
    },
    D: { letter: 'D', meaning: 'outside diameter', dimension: 'length', parameter: 'outsideDiameter' },
    t: { letter: 't', meaning: 'thickness of the wall', dimension: 'length', parameter: 'wall' },
  },
  forms: {
    S: [
      '/',
      ['*', 'pt', ['^', ['-', 'D', ['*', 2, 't']], 2]],
      ['-', ['^', 'D', 2], ['^', ['-', 'D', ['*', 2, 't']], 2]],
    ],
  },
  core: {
    S: ({
      testPressure: pt,
      outsideDiameter: D,
      wall: t,
    }: {
      testPressure: GaugePressure
      outsideDiameter: Length
      wall: Length
    }) => longitudinalStress({ outsideDiameter: D, wall: t }, pt),
  },
  conditions: ['closed ends', 'away from shoulder and base'],
  source: 'cfr-49-178-37',
  place: 'paragraph (a)(2)(iii)',
  cautions: ['inspection'],
  commonErrors: [{ slip: 'diameter-for-radius', text: 'Radius and diameter confused', symbols: ['D'] }],
  range: { S: [400000000.0, 700000000.0], pt: [20000000.0, 50000000.0], D: [0.12, 0.25], t: [0.004, 0.012] },
}

/** Thinnest wall for a stress at test pressure. */
export const minimumWallForStressCard: Card<'t' | 'D' | 'S' | 'pt'> = {
  id: 'minimum-wall-for-stress',
  title: 'Minimum wall for a stress at test pressure',
  documents: 'minimumWallForStress',
  result: 't',
  symbols: {
    t: { letter: 't', meaning: 'thickness of the wall', dimension: 'length', parameter: 'wall' },
    D: { letter: 'D', meaning: 'outside diameter', dimension: 'length', parameter: 'outsideDiameter' },
    S: {
      letter: 'S',
      meaning: 'allowable stress',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'stressLimit',
    },
    pt: {
      letter: 'p',
      subscript: 't',
      meaning: 'test pressure, gauge',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'testPressure',
    },
  },
  forms: {
    t: ['*', ['/', 'D', 2], ['-', 1, ['sqrt', ['/', ['-', 'S', ['*', 1.3, 'pt']], ['+', 'S', ['*', 0.4, 'pt']]]]]],
  },
  core: {
    t: ({
      outsideDiameter: D,
      stressLimit: S,
      testPressure: pt,
    }: {
      outsideDiameter: Length
      stressLimit: PressureDifference
      testPressure: GaugePressure
    }) => minimumWallForStress({ outsideDiameter: D, testPressure: pt, stressLimit: S }),
  },
  conditions: ['the wall stress formula, solved for the wall'],
  source: 'litrebar-derivation',
  place: 'algebra on the formula of cfr-49-178-46',
  cautions: ['inspection'],
  commonErrors: [{ slip: 'diameter-for-radius', text: 'Radius and diameter confused', symbols: ['D'] }],
  range: { t: [0.004, 0.012], D: [0.12, 0.25], S: [400000000.0, 700000000.0], pt: [20000000.0, 50000000.0] },
}

/** Bending stress of a filled cylinder lying on two supports. */
export const bendingStressCard: Card<'S' | 'W' | 'L' | 'D' | 't' | 'k'> = {
  id: 'bending-stress',
  title: 'Bending stress of a filled cylinder lying on two supports',
  documents: 'bendingStress',
  result: 'S',
  symbols: {
    S: { letter: 'S', meaning: 'bending stress', dimension: 'pressure', datum: 'difference', parameter: 'stress' },
    W: { letter: 'W', meaning: 'filled weight', dimension: 'force', parameter: 'weight' },
    L: { letter: 'L', meaning: 'length between the supports', dimension: 'length', parameter: 'length' },
    D: { letter: 'D', meaning: 'outside diameter', dimension: 'length', parameter: 'outsideDiameter' },
    t: { letter: 't', meaning: 'thickness of the wall', dimension: 'length', parameter: 'wall' },
    k: { letter: 'k', meaning: 'π/64 as the rule prints it', dimension: 'fraction' },
  },
  forms: {
    S: [
      '/',
      ['*', ['/', ['*', 'W', 'L'], 8], ['/', 'D', 2]],
      ['*', 'k', ['-', ['^', 'D', 4], ['^', ['-', 'D', ['*', 2, 't']], 4]]],
    ],
  },
  constants: { k: 0.04909 },
  core: {
    S: ({
      weight: W,
      length: L,
      outsideDiameter: D,
      wall: t,
    }: {
      weight: Force
      length: Length
      outsideDiameter: Length
      wall: Length
    }) => bendingStress({ outsideDiameter: D, wall: t }, { weight: W, length: L }),
  },
  conditions: ['the weight is spread over the length'],
  source: 'cfr-49-178-37',
  place: 'paragraph (a)(2)(ii)',
  commonErrors: [{ slip: 'diameter-for-radius', text: 'Radius and diameter confused', symbols: ['D'] }],
  range: { S: [400000000.0, 700000000.0], W: [100, 1000], L: [0.3, 2], D: [0.12, 0.25], t: [0.004, 0.012] },
}

/** Average wall stress from the elastic expansion. */
export const averageWallStressCard: Card<'S' | 'EE' | 'k' | 'pk' | 'V' | 'pt'> = {
  id: 'average-wall-stress',
  title: 'Average wall stress from the elastic expansion',
  documents: 'averageWallStress',
  result: 'S',
  symbols: {
    S: {
      letter: 'S',
      meaning: 'average wall stress',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'stressLimit',
    },
    EE: {
      letter: 'E',
      subscript: 'e',
      meaning: 'elastic expansion at test pressure',
      dimension: 'volume',
      parameter: 'elasticExpansion',
    },
    k: {
      letter: 'k',
      meaning: 'elastic expansion at the stated pressure, as a fraction',
      dimension: 'fraction',
      parameter: 'factor.fraction',
    },
    pk: {
      letter: 'p',
      subscript: 'k',
      meaning: 'pressure for which that fraction is stated',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'factor.per',
    },
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'internalVolume' },
    pt: {
      letter: 'p',
      subscript: 't',
      meaning: 'test pressure, gauge',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'testPressure',
    },
  },
  forms: {
    S: ['-', ['/', ['*', 1.7, 'EE'], ['*', ['/', 'k', 'pk'], 'V']], ['*', 0.4, 'pt']],
    EE: ['/', ['*', ['+', 'S', ['*', 0.4, 'pt']], ['/', 'k', 'pk'], 'V'], 1.7],
  },
  core: {
    S: ({
      elasticExpansion: EE,
      'factor.fraction': k,
      'factor.per': pk,
      internalVolume: V,
      testPressure: pt,
    }: {
      elasticExpansion: Volume
      'factor.fraction': Fraction
      'factor.per': PressureDifference
      internalVolume: InternalVolume
      testPressure: GaugePressure
    }) => averageWallStress(EE, { factor: { fraction: k, per: pk }, internalVolume: V, testPressure: pt }),
    EE: ({
      stressLimit: S,
      testPressure: pt,
      'factor.fraction': k,
      'factor.per': pk,
      internalVolume: V,
    }: {
      stressLimit: PressureDifference
      testPressure: GaugePressure
      'factor.fraction': Fraction
      'factor.per': PressureDifference
      internalVolume: InternalVolume
    }) => rejectionElasticExpansion(S, { factor: { fraction: k, per: pk }, internalVolume: V, testPressure: pt }),
  },
  conditions: ['steel', 'the fraction goes with the pressure it is stated for'],
  source: 'cfr-49-173-302a-2015',
  place: 'paragraph (b)(3)(i)(A)',
  cautions: ['inspection'],
  range: {
    S: [400000000.0, 700000000.0],
    EE: [0.0001, 0.0003],
    k: [1e-7, 1.4e-7],
    pk: [6894, 6895],
    V: [0.02, 0.05],
    pt: [20000000.0, 50000000.0],
  },
}

/** Volume by which the water of a test is compressed. */
export const waterCompressionCard: Card<'dV' | 'm' | 'r1' | 'r2'> = {
  id: 'water-compression',
  title: 'Volume by which the water of a test is compressed',
  documents: 'waterCompression',
  result: 'dV',
  symbols: {
    dV: { letter: 'Δ', subscript: 'w', meaning: 'volume lost by the water', dimension: 'volume', parameter: 'volume' },
    m: { letter: 'm', meaning: 'mass of the water', dimension: 'mass', parameter: 'waterMass' },
    r1: {
      letter: 'ρ',
      subscript: '1',
      meaning: 'density of the water at ambient pressure',
      dimension: 'density',
      parameter: 'atAmbient',
    },
    r2: {
      letter: 'ρ',
      subscript: '2',
      meaning: 'density of the water at test pressure',
      dimension: 'density',
      parameter: 'atTestPressure',
    },
  },
  forms: { dV: ['*', 'm', ['-', ['/', 1, 'r1'], ['/', 1, 'r2']]] },
  core: {
    dV: ({
      waterMass: m,
      atAmbient: r1,
      atTestPressure: r2,
    }: {
      waterMass: Mass
      atAmbient: Density
      atTestPressure: Density
    }) => waterCompression(m, { atAmbient: r1, atTestPressure: r2 }),
  },
  conditions: ['no air in the water or the pipes', 'constant temperature'],
  source: 'litrebar-derivation',
  place: 'mass over density at both pressures',
  range: { m: [5, 20], r1: [990, 1000], r2: [1005, 1020] },
}

/** Total expansion by the direct method. */
export const totalExpansionCard: Card<'TE' | 'Vf' | 'm' | 'r1' | 'r2'> = {
  id: 'total-expansion',
  title: 'Total expansion by the direct method',
  documents: 'directExpansion',
  result: 'TE',
  symbols: {
    TE: { letter: 'E', subscript: 't', meaning: 'total expansion', dimension: 'volume', parameter: 'totalExpansion' },
    Vf: { letter: 'V', subscript: 'f', meaning: 'water forced in', dimension: 'volume', parameter: 'waterForcedIn' },
    m: { letter: 'm', meaning: 'mass of the water', dimension: 'mass', parameter: 'waterMass' },
    r1: {
      letter: 'ρ',
      subscript: '1',
      meaning: 'density of the water at ambient pressure',
      dimension: 'density',
      parameter: 'densities.atAmbient',
    },
    r2: {
      letter: 'ρ',
      subscript: '2',
      meaning: 'density of the water at test pressure',
      dimension: 'density',
      parameter: 'densities.atTestPressure',
    },
  },
  forms: { TE: ['-', 'Vf', ['*', 'm', ['-', ['/', 1, 'r1'], ['/', 1, 'r2']]]] },
  core: {
    TE: ({
      waterForcedIn: Vf,
      waterMass: m,
      'densities.atAmbient': r1,
      'densities.atTestPressure': r2,
    }: {
      waterForcedIn: Volume
      waterMass: Mass
      'densities.atAmbient': Density
      'densities.atTestPressure': Density
    }) =>
      directExpansion({
        waterForcedIn: Vf,
        waterRecovered: 0 as Volume,
        waterMass: m,
        densities: { atAmbient: r1, atTestPressure: r2 },
      }),
  },
  besides: ['waterRecovered'],
  conditions: ['no air in the water or the pipes', 'the test without a water jacket'],
  source: 'litrebar-derivation',
  place: 'direct expansion test',
  cautions: ['inspection'],
  commonErrors: [{ slip: 'other-formula', text: 'Compression of the water left out', instead: { TE: ['*', 1, 'Vf'] } }],
  range: { Vf: [0.001, 0.0015], m: [5, 20], r1: [990, 1000], r2: [1005, 1020] },
}

/** Permanent expansion by the direct method. */
export const permanentExpansionCard: Card<'PE' | 'Vf' | 'Vr'> = {
  id: 'permanent-expansion',
  title: 'Permanent expansion by the direct method',
  documents: 'directExpansion',
  result: 'PE',
  symbols: {
    PE: {
      letter: 'E',
      subscript: 'p',
      meaning: 'permanent expansion',
      dimension: 'volume',
      parameter: 'permanentExpansion',
    },
    Vf: { letter: 'V', subscript: 'f', meaning: 'water forced in', dimension: 'volume', parameter: 'waterForcedIn' },
    Vr: {
      letter: 'V',
      subscript: 'r',
      meaning: 'water that came back',
      dimension: 'volume',
      parameter: 'waterRecovered',
    },
  },
  forms: { PE: ['-', 'Vf', 'Vr'] },
  core: {
    PE: ({ waterForcedIn: Vf, waterRecovered: Vr }: { waterForcedIn: Volume; waterRecovered: Volume }) =>
      directExpansion({
        waterForcedIn: Vf,
        waterRecovered: Vr,
        waterMass: 1 as Mass,
        densities: { atAmbient: 1000 as Density, atTestPressure: 1001 as Density },
      }),
  },
  besides: ['waterMass', 'densities'],
  conditions: ['both readings at ambient pressure'],
  source: 'litrebar-derivation',
  place: 'direct expansion test',
  cautions: ['inspection'],
  range: { Vf: [0.001, 0.0015], Vr: [0.0005, 0.0009] },
}

/** Internal volume from the mass of water that fills it. */
export const waterVolumeCard: Card<'V' | 'm' | 'rho'> = {
  id: 'water-volume',
  title: 'Internal volume from the mass of water that fills it',
  documents: 'waterVolume',
  result: 'V',
  symbols: {
    V: { letter: 'V', meaning: 'internal volume', dimension: 'volume', parameter: 'internalVolume' },
    m: { letter: 'm', meaning: 'mass of the water', dimension: 'mass', parameter: 'mass' },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'density' },
  },
  forms: { V: ['/', 'm', 'rho'] },
  core: {
    V: ({ mass: m, density: rho }: { mass: Mass; density: Density }) => waterVolume(m, rho),
  },
  conditions: ['water without air bubbles'],
  source: 'litrebar-derivation',
  place: 'mass over density',
  commonErrors: [{ slip: 'sea-water-for-fresh', text: 'Density of sea water used, 1025 kg/m³', symbols: ['rho'] }],
  range: { V: [0.003, 0.02], m: [3, 20], rho: [990, 1000] },
}
