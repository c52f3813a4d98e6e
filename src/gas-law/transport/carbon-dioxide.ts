// Carbon dioxide as a gas: viscosity of Laesecke and Muzny, conductivity of Huber and others, without the rise at the critical
// point. Densities in mol/m³.

const molarMass = 0.0440098
const criticalTemperature = 304.1282
const tripleTemperature = 216.592
const avogadro = 6.02214076e23
const gasConstant = 8.3144598

/**
 * @source laesecke-muzny-2017
 */
const viscosity = {
  dilute: [
    1749.35489318835, -369.069300007128, 5423856.34887691, -2.21283852168356, -269503.247933569, 73145.021531826,
    5.34368649509278,
  ],
  size: 3.78421e-10,
  energy: 200.76,
  /** Factor and power of reduced temperature. */
  initial: [
    [-19.572881, 0],
    [219.73999, -0.25],
    [-1015.3226, -0.5],
    [2471.0125, -0.75],
    [-3375.1717, -1],
    [2491.6597, -1.25],
    [-787.26086, -1.5],
    [14.085455, -2.5],
    [-0.34664158, -5.5],
  ],
  tripleDensity: 1178.53,
  c1: 0.360603235428487,
  c2: 0.121550806591497,
  power: 8.06282737481277,
} as const

/**
 * @source huber-2016
 */
const conductivity = {
  dilute: [0.0151874307, 0.028067404, 0.022856419, -0.0074162421],
  reducingDensity: 467.6,
  /** Powers of density from the first on: constant and slope with reduced temperature. */
  excess: [
    [0.0100128, 0.00430829],
    [0.0560488, -0.0358563],
    [-0.081162, 0.067148],
    [0.0624337, -0.0522855],
    [-0.0206336, 0.0174571],
    [0.00253248, -0.00196414],
  ],
} as const

/** Viscosity of the dilute gas, Pa·s. */
export function carbonDioxideDiluteViscosity(temperature: number): number {
  const [a0, a1, a2, a3, a4, a5, a6] = viscosity.dilute
  const third = Math.cbrt(temperature)
  const root = Math.sqrt(temperature)
  const denominator =
    a0 + a1 * Math.sqrt(third) + a2 * Math.exp(a3 * third) + (a4 + a5 * third) / Math.exp(third) + a6 * root
  return (0.0010055 * root) / denominator
}

/** What neighbours add to the viscosity, Pa·s. */
export function carbonDioxideExcessViscosity(temperature: number, density: number): number {
  const { size, energy, initial, tripleDensity, c1, c2, power } = viscosity
  const reduced = temperature / energy
  let sum = 0
  for (const [factor, exponent] of initial) sum += factor * reduced ** exponent
  const linear = carbonDioxideDiluteViscosity(temperature) * avogadro * size ** 3 * sum * density

  const t = temperature / tripleTemperature
  const r = (density * molarMass) / tripleDensity
  const scale =
    (Math.cbrt(tripleDensity) ** 2 * Math.sqrt(gasConstant * tripleTemperature)) /
    (molarMass ** (1 / 6) * 84446887.43579945)
  return linear + scale * (c1 * t * r ** 3 + (r * r + r ** power) / (t - c2))
}

/** Thermal conductivity of the dilute gas, W/(m·K). */
export function carbonDioxideDiluteConductivity(temperature: number): number {
  const tau = criticalTemperature / temperature
  return 1e-3 / (Math.sqrt(tau) * polynomial(conductivity.dilute, tau))
}

/** What neighbours add to the thermal conductivity, W/(m·K). */
export function carbonDioxideExcessConductivity(temperature: number, density: number): number {
  const t = temperature / criticalTemperature
  const r = (density * molarMass) / conductivity.reducingDensity
  return (
    r *
    polynomial(
      conductivity.excess.map(([constant, slope]) => constant + slope * t),
      r,
    )
  )
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0)
}
