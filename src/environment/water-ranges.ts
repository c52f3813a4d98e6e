import { type Accepted, kilogramPerCubicMetre, metrePerSecondSquared } from '../units/index.ts'

// The ranges are ours: they catch a wrong unit, not a failing law.

/** Density of water that is fresh, salt or brackish. */
export const waterDensityRange: Accepted = {
  atLeast: 900,
  atMost: 1300,
  unit: kilogramPerCubicMetre,
  hint: 'State the density of the water: fresh is near 1000, sea near 1025 kg/m³.',
}

/** Gravity anywhere on the earth. */
export const gravityRange: Accepted = {
  atLeast: 9.7,
  atMost: 9.9,
  unit: metrePerSecondSquared,
  hint: 'Leave gravity out for the standard value.',
}
