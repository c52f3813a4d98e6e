import type { Gas } from '../mixture/gas.ts'

// GERG-2008, seven of its 21 gases. Numbers as printed: temperatures in K, densities in mol/L.
// Source gerg-2008, tables of the pure gases and of the pairs, as carried by nist-aga8.

/** One term of a pure gas, n δ^d τ^t exp(-δ^c): `[n, d, t, c]`; c = 0 means no exponential. */
export type ResidualTerm = readonly [n: number, d: number, t: number, c: number]

/** One term of a departure function, n δ^d τ^t exp(-η (δ - ε)² - β (δ - γ)): `[n, d, t, η, ε, β, γ]`. */
export type DepartureTerm = readonly [
  n: number,
  d: number,
  t: number,
  eta: number,
  epsilon: number,
  beta: number,
  gamma: number,
]

/** Parameters of one gas. */
export interface GasParameters {
  readonly criticalTemperature: number
  readonly criticalDensity: number
  readonly residual: readonly ResidualTerm[]
  /** Ideal-gas heat capacity; `n1` and `n2` set the zero of enthalpy and entropy. */
  readonly ideal: {
    readonly n1: number
    readonly n2: number
    readonly n3: number
    /** Terms of ln sinh(θ/T) and ln cosh(θ/T): `[n, θ]`. */
    readonly sinh: readonly (readonly [n: number, theta: number])[]
    readonly cosh: readonly (readonly [n: number, theta: number])[]
  }
}

/** Gas constant of the equation, J/(mol K). Not that of the SI since 2019: with it densities would be off by 1.1e-6. */
export const gerg2008GasConstant = 8.314472

/** Gas constant behind the ideal-gas heat capacities, J/(mol K). Only its ratio to `gerg2008GasConstant` is used. */
export const idealGasConstant = 8.31451

/** Enthalpy and entropy of each pure ideal gas are zero at this temperature, K. */
export const referenceTemperature = 298.15

/** Entropy of each pure ideal gas is zero at this pressure, Pa. */
export const referencePressure = 101_325

/** Parameters by gas. */
export const gasParameters: Readonly<Record<Gas, GasParameters>> = {
  nitrogen: {
    criticalTemperature: 126.192,
    criticalDensity: 11.1839,
    residual: [
      [0.59889711801201, 1, 0.125, 0],
      [-1.6941557480731, 1, 1.125, 0],
      [0.24579736191718, 2, 0.375, 0],
      [-0.23722456755175, 2, 1.125, 0],
      [0.017954918715141, 4, 0.625, 0],
      [0.014592875720215, 4, 1.5, 0],
      [0.10008065936206, 1, 0.625, 1],
      [0.73157115385532, 1, 2.625, 1],
      [-0.88372272336366, 1, 2.75, 1],
      [0.31887660246708, 2, 2.125, 1],
      [0.20766491728799, 3, 2, 1],
      [-0.019379315454158, 6, 1.75, 1],
      [-0.16936641554983, 2, 4.5, 2],
      [0.13546846041701, 3, 4.75, 2],
      [-0.033066712095307, 3, 5, 2],
      [-0.060690817018557, 4, 4, 2],
      [0.012797548292871, 4, 4.5, 2],
      [0.0058743664107299, 2, 7.5, 3],
      [-0.018451951971969, 3, 14, 3],
      [0.0047226622042472, 4, 11.5, 3],
      [-0.0052024079680599, 5, 26, 6],
      [0.043563505956635, 6, 28, 6],
      [-0.036251690750939, 6, 30, 6],
      [-0.0028974026866543, 7, 16, 6],
    ],
    ideal: {
      n1: 17.56770785,
      n2: -2801.729072,
      n3: 3.50031,
      sinh: [
        [0.13732, 662.738],
        [0.90066, 1740.06],
      ],
      cosh: [[-0.1466, 680.562]],
    },
  },
  oxygen: {
    criticalTemperature: 154.595,
    criticalDensity: 13.63,
    residual: [
      [0.88878286369701, 1, 0.25, 0],
      [-2.4879433312148, 1, 1.125, 0],
      [0.59750190775886, 1, 1.5, 0],
      [0.0096501817061881, 2, 1.375, 0],
      [0.07197042871277, 3, 0.25, 0],
      [0.00022337443000195, 7, 0.875, 0],
      [0.18558686391474, 2, 0.625, 1],
      [-0.03812936803576, 5, 1.75, 1],
      [-0.15352245383006, 1, 3.625, 2],
      [-0.026726814910919, 4, 3.625, 2],
      [-0.025675298677127, 3, 14.5, 3],
      [0.0095714302123668, 4, 12, 3],
    ],
    ideal: { n1: 16.8017173, n2: -2318.32269, n3: 3.50146, sinh: [[1.07558, 2235.71]], cosh: [[1.01334, 1116.69]] },
  },
  argon: {
    criticalTemperature: 150.687,
    criticalDensity: 13.407429659,
    residual: [
      [0.85095714803969, 1, 0.25, 0],
      [-2.400322294348, 1, 1.125, 0],
      [0.54127841476466, 1, 1.5, 0],
      [0.016919770692538, 2, 1.375, 0],
      [0.068825965019035, 3, 0.25, 0],
      [0.00021428032815338, 7, 0.875, 0],
      [0.17429895321992, 2, 0.625, 1],
      [-0.033654495604194, 5, 1.75, 1],
      [-0.13526799857691, 1, 3.625, 2],
      [-0.016387350791552, 4, 3.625, 2],
      [-0.024987666851475, 3, 14.5, 3],
      [0.0088769204815709, 4, 12, 3],
    ],
    ideal: { n1: 10.04639507, n2: -745.375, n3: 2.5, sinh: [], cosh: [] },
  },
  helium: {
    criticalTemperature: 5.1953,
    criticalDensity: 17.399,
    residual: [
      [-0.45579024006737, 1, 0, 0],
      [1.2516390754925, 1, 0.125, 0],
      [-1.5438231650621, 1, 0.75, 0],
      [0.020467489707221, 4, 1, 0],
      [-0.34476212380781, 1, 0.75, 1],
      [-0.020858459512787, 3, 2.625, 1],
      [0.016227414711778, 5, 0.125, 1],
      [-0.057471818200892, 5, 1.25, 1],
      [0.019462416430715, 5, 2, 1],
      [-0.03329568012302, 2, 1, 2],
      [-0.010863577372367, 1, 4.5, 3],
      [-0.022173365245954, 2, 5, 3],
    ],
    ideal: { n1: 10.04639507, n2: -745.375, n3: 2.5, sinh: [], cosh: [] },
  },
  carbonDioxide: {
    criticalTemperature: 304.1282,
    criticalDensity: 10.624978698,
    residual: [
      [0.52646564804653, 1, 0, 0],
      [-1.4995725042592, 1, 1.25, 0],
      [0.27329786733782, 2, 1.625, 0],
      [0.12949500022786, 3, 0.375, 0],
      [0.15404088341841, 3, 0.375, 1],
      [-0.58186950946814, 3, 1.375, 1],
      [-0.18022494838296, 4, 1.125, 1],
      [-0.095389904072812, 5, 1.375, 1],
      [-0.0080486819317679, 6, 0.125, 1],
      [-0.03554775127309, 6, 1.625, 1],
      [-0.28079014882405, 1, 3.75, 2],
      [-0.082435890081677, 4, 3.5, 2],
      [0.010832427979006, 1, 7.5, 3],
      [-0.0067073993161097, 1, 8, 3],
      [-0.0046827907600524, 3, 6, 3],
      [-0.028359911832177, 3, 16, 3],
      [0.019500174744098, 4, 11, 3],
      [-0.21609137507166, 5, 24, 5],
      [0.43772794926972, 5, 26, 5],
      [-0.22130790113593, 5, 28, 5],
      [0.015190189957331, 5, 24, 6],
      [-0.0153809489533, 5, 26, 6],
    ],
    ideal: {
      n1: 20.65844696,
      n2: -4902.171516,
      n3: 3.50002,
      sinh: [
        [2.04452, 919.306],
        [2.03366, 483.553],
      ],
      cosh: [
        [-1.06044, 865.07],
        [0.01393, 341.109],
      ],
    },
  },
  water: {
    criticalTemperature: 647.096,
    criticalDensity: 17.87371609,
    residual: [
      [0.82728408749586, 1, 0.5, 0],
      [-1.8602220416584, 1, 1.25, 0],
      [-1.1199009613744, 1, 1.875, 0],
      [0.15635753976056, 2, 0.125, 0],
      [0.87375844859025, 2, 1.5, 0],
      [-0.36674403715731, 3, 1, 0],
      [0.053987893432436, 4, 0.75, 0],
      [1.0957690214499, 1, 1.5, 1],
      [0.053213037828563, 5, 0.625, 1],
      [0.013050533930825, 5, 2.625, 1],
      [-0.41079520434476, 1, 5, 2],
      [0.1463744334412, 2, 4, 2],
      [-0.055726838623719, 4, 4.5, 2],
      [-0.0112017741438, 4, 3, 3],
      [-0.0066062758068099, 1, 4, 5],
      [0.0046918522004538, 1, 6, 5],
    ],
    ideal: {
      n1: 21.57882705,
      n2: -7766.733078,
      n3: 4.00392,
      sinh: [
        [0.01059, 268.795],
        [3.06904, 2507.37],
      ],
      cosh: [[0.98763, 1141.41]],
    },
  },
  hydrogen: {
    criticalTemperature: 33.19,
    criticalDensity: 14.94,
    residual: [
      [5.3579928451252, 1, 0.5, 0],
      [-6.2050252530595, 1, 0.625, 0],
      [0.13830241327086, 2, 0.375, 0],
      [-0.071397954896129, 2, 0.625, 0],
      [0.015474053959733, 4, 1.125, 0],
      [-0.14976806405771, 1, 2.625, 1],
      [-0.026368723988451, 5, 0, 1],
      [0.056681303156066, 5, 0.25, 1],
      [-0.060063958030436, 5, 1.375, 1],
      [-0.45043942027132, 1, 4, 2],
      [0.424788402445, 1, 4.25, 2],
      [-0.021997640827139, 2, 5, 3],
      [-0.01049952137453, 5, 8, 3],
      [-0.0028955902866816, 1, 8, 5],
    ],
    ideal: {
      n1: 13.07520288,
      n2: -5836.943696,
      n3: 2.47906,
      sinh: [
        [0.95806, 228.734],
        [1.56039, 1651.71],
      ],
      cosh: [
        [0.45444, 326.843],
        [-1.3756, 1671.69],
      ],
    },
  },
}

/** Parameters of a pair of gases for the reducing functions. The order of the gases matters: β is inverse the other way. */
export type PairParameters = readonly [
  first: Gas,
  second: Gas,
  betaV: number,
  gammaV: number,
  betaT: number,
  gammaT: number,
]

/**
 * The pairs that were fitted to measurements. The eight that are absent have all four parameters 1
 * (combining rule of Lorentz and Berthelot): oxygen–helium and helium–argon among them.
 */
export const pairParameters: readonly PairParameters[] = [
  ['nitrogen', 'oxygen', 0.99952177, 0.997082328, 0.997190589, 0.995157044],
  ['nitrogen', 'argon', 1.004166412, 1.002212182, 0.999069843, 0.990034831],
  ['nitrogen', 'helium', 0.969501055, 0.932629867, 0.692868765, 1.47183158],
  ['nitrogen', 'carbonDioxide', 0.977794634, 1.047578256, 1.005894529, 1.107654104],
  ['nitrogen', 'water', 1, 1.094749685, 1, 0.968808467],
  ['nitrogen', 'hydrogen', 0.972532065, 0.970115357, 0.946134337, 1.175696583],
  ['oxygen', 'argon', 0.999746847, 0.993907223, 1.000023103, 0.990430423],
  ['oxygen', 'water', 1, 1.143174289, 1, 0.964767932],
  ['carbonDioxide', 'argon', 1.008392428, 1.029205465, 0.996512863, 1.050971635],
  ['water', 'argon', 1, 1.038993495, 1, 1.070941866],
  ['carbonDioxide', 'helium', 0.846647561, 0.864141549, 0.76837763, 3.207456948],
  ['carbonDioxide', 'water', 0.949055959, 1.542328793, 0.997372205, 0.775453996],
  ['carbonDioxide', 'hydrogen', 0.904142159, 1.15279255, 0.942320195, 1.782924792],
]

/** Departure function of nitrogen–carbon dioxide, the only pair of these gases that has one. */
export const departureTerms: readonly DepartureTerm[] = [
  [0.28661625028399, 2, 1.85, 0, 0, 0, 0],
  [-0.10919833861247, 3, 1.4, 0, 0, 0, 0],
  [-1.137403208227, 1, 3.2, 0.25, 0.5, 0.75, 0.5],
  [0.76580544237358, 1, 2.5, 0.25, 0.5, 1, 0.5],
  [0.0042638000926819, 1, 8, 0, 0.5, 2, 0.5],
  [0.17673538204534, 2, 3.75, 0, 0.5, 3, 0.5],
]
