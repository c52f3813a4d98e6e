import { isLitrebarError } from '../../errors/index.ts'
import { type Mixture, type TabulatedFunction, type TabulateOptions, tabulated } from '../../gas-law/index.ts'
import type { AbsolutePressure, Temperature } from '../../units/index.ts'
import { propertyOf, type StateProperty } from './calculation.table.ts'

/** A property of one mixture, as a table where the property allows one. */
export interface PreparedProperty {
  /** Whether the table holds the property over the pressure: a density is far smoother so. */
  readonly isPerPressure: boolean
  readonly exactly: (pressure: AbsolutePressure, temperature: Temperature) => number
  /** One after another: a state that none holds goes by the full equation. */
  readonly tables: readonly TabulatedFunction[]
}

// What breathing gas meets in cylinders, from a cold night to a hot fill. Rows outside go by the full equation.
const box = {
  pressure: [0.5e5 as AbsolutePressure, 350e5 as AbsolutePressure],
  temperature: [243.15 as Temperature, 338.15 as Temperature],
} as const satisfies Omit<TabulateOptions, 'tolerance'>

// Viscosity and conductivity are known to 350 bar. Cells that reach beyond, if only by a rounded last bit, would be cut out.
const transportBox = { ...box, pressure: [box.pressure[0], 349.9e5 as AbsolutePressure] } as const

// The published correlation for helium has a kink there: no cubic runs through it.
const kink = 300 as Temperature

/** The boxes in which a property is smooth. */
function smoothBoxes(property: StateProperty, mixture: Mixture): readonly Omit<TabulateOptions, 'tolerance'>[] {
  if (!isTransport(property)) return [box]
  if (property !== 'viscosity' || mixture.helium === 0) return [transportBox]
  const [coldest, hottest] = transportBox.temperature
  return [
    { ...transportBox, temperature: [coldest, kink] },
    { ...transportBox, temperature: [kink, hottest] },
  ]
}

/**
 * A property made ready for many rows. The box of the table is always the same, so that a result never depends on the other rows.
 *
 * @param property - its name
 * @param mixture - the gas
 * @param options - model of the gas; largest error of the table and of what, 0 for no table
 * @returns the function, and its table where it has one
 */
export function preparedProperty(
  property: StateProperty,
  mixture: Mixture,
  options: {
    readonly gas: 'real' | 'ideal'
    readonly tolerance: number
    readonly errorOf: 'each' | 'largest'
  },
): PreparedProperty {
  const exactly = propertyOf(property, mixture, options.gas)
  const isPerPressure = property === 'molarDensity'
  if (options.tolerance === 0) return { exactly, isPerPressure, tables: [] }
  const tolerance = Math.max(options.tolerance, isTransport(property) ? transportTolerance : 0)
  const smooth: typeof exactly = isPerPressure ? (p, t) => exactly(p, t) / p : exactly
  const tables = smoothBoxes(property, mixture).flatMap((smoothBox) => {
    try {
      return [tabulated(smooth, { ...smoothBox, tolerance, errorOf: options.errorOf })]
    } catch (thrown) {
      // too close to condensing for a table: every row goes by the full equation
      if (isLitrebarError(thrown)) return []
      throw thrown
    }
  })
  return { exactly, isPerPressure, tables }
}

// A ten-thousandth of what transport properties are known to is enough.
const transportTolerance = 1e-6

function isTransport(property: StateProperty): boolean {
  return property === 'viscosity' || property === 'thermalConductivity'
}
