// Helium: viscosity of Arp, McCarty and Friend, conductivity of Hands and Arp. Temperatures from 100 K. Densities in mol/m³.

const molarMass = 0.004002602

/**
 * Coefficients of powers of x = ln T, held at ln 300: 1/x, 1, x, x², x³.
 *
 * @source arp-1998, viscosity of the gas
 */
const byDensity = {
  first: [-47.5295259, 87.6799309, -42.0741589, 8.33128289, -0.589252385],
  second: [547.309267, -904.870586, 431.404928, -81.4504854, 5.37008433],
  third: [-1684.39324, 3331.0863, -1632.19172, 308.804413, -20.2936367],
  none: [-0.135311743, 1.00347841, 1.20654649, -0.149564551, 0.012520841],
} as const

/** Viscosity, Pa·s. */
export function heliumViscosity(temperature: number, density: number): number {
  const x = Math.log(Math.min(temperature, 300))
  const rho = density * molarMass * 1e-3 // g/cm³
  const dilute = series(byDensity.none, x)
  const dense =
    ((series(byDensity.third, x) * rho + series(byDensity.second, x)) * rho + series(byDensity.first, x)) * rho
  const hot =
    196 * temperature ** 0.71938 * Math.exp(12.451 / temperature - 295.67 / (temperature * temperature) - 4.1249)
  return 1e-7 * (Math.exp(dilute + dense) + hot - Math.exp(dilute))
}

/**
 * Thermal conductivity of the dilute gas, W/(m·K).
 *
 * @source hands-arp-1981
 */
export function heliumDiluteConductivity(temperature: number): number {
  const u = 1 / temperature
  return (
    2.7870034e-3 *
    temperature ** 0.7034007057 *
    Math.exp(u * (3.739232544 + u * (-26.20316969 + u * (59.82252246 - 49.26397634 * u))))
  )
}

/**
 * What neighbours add to the thermal conductivity, W/(m·K).
 *
 * @source hands-arp-1981
 */
export function heliumExcessConductivity(temperature: number, density: number): number {
  const rho = density * molarMass // kg/m³
  if (rho === 0) return 0
  const third = Math.cbrt(temperature)
  const square = third * third
  const linear = 0.000186297053 - 7.275964435e-7 * temperature - 0.0001427549651 * third + 3.290833592e-5 * square
  const cubic = -5.213335363e-8 + 4.492659933e-8 * third - 5.924416513e-9 * square
  const logarithmic = 7.087321137e-6 - 6.013335678e-6 * third + 8.067145814e-7 * square + 3.995125013e-7 / temperature
  return rho * (linear + rho * (cubic * rho + logarithmic * Math.log(rho / 68)))
}

function series(
  [inverse, one, first, second, third]: readonly [number, number, number, number, number],
  x: number,
): number {
  return inverse / x + one + x * (first + x * (second + x * third))
}
