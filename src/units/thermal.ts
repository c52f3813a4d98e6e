import type { Unit } from './unit.ts'

// Heat capacity, conduction, throttling and viscosity.

/** Joule per kelvin. */
export const joulePerKelvin: Unit<'heat capacity'> = {
  symbol: 'J/K',
  quantity: 'heat capacity',
  factor: 1,
  definition: '1',
}

/** Joule per kilogram and kelvin. */
export const joulePerKilogramKelvin: Unit<'specific heat capacity'> = {
  symbol: 'J/(kg·K)',
  quantity: 'specific heat capacity',
  factor: 1,
  definition: '1',
  spellings: ['J/kg/K', 'J/(kg K)'],
}

/** Watt per metre and kelvin. */
export const wattPerMetreKelvin: Unit<'thermal conductivity'> = {
  symbol: 'W/(m·K)',
  quantity: 'thermal conductivity',
  factor: 1,
  definition: '1',
  spellings: ['W/m/K', 'W/(m K)'],
}

/** Watt per kelvin: the conductance of a heat exchanger. */
export const wattPerKelvin: Unit<'thermal conductance'> = {
  symbol: 'W/K',
  quantity: 'thermal conductance',
  factor: 1,
  definition: '1',
}

/** Square metre kelvin per watt: the insulance of a layer. */
export const squareMetreKelvinPerWatt: Unit<'thermal insulance'> = {
  symbol: 'm²·K/W',
  quantity: 'thermal insulance',
  factor: 1,
  definition: '1',
  spellings: ['K·m²/W', 'm2 K/W', 'm2·K/W', 'm²K/W'],
}

/** Clo, the insulation of clothing: exactly 0.155 m²·K/W. */
export const clo: Unit<'thermal insulance'> = {
  symbol: 'clo',
  quantity: 'thermal insulance',
  factor: 0.155,
  definition: '0.155',
}

/** Kelvin per pascal: how much a gas warms for each pascal that its pressure rises while its enthalpy stays. */
export const kelvinPerPascal: Unit<'Joule–Thomson coefficient'> = {
  symbol: 'K/Pa',
  quantity: 'Joule–Thomson coefficient',
  factor: 1,
  definition: '1',
}

/** Kelvin per bar. */
export const kelvinPerBar: Unit<'Joule–Thomson coefficient'> = {
  symbol: 'K/bar',
  quantity: 'Joule–Thomson coefficient',
  factor: 1e-5,
  definition: '1e-5',
}

/** Pascal second. */
export const pascalSecond: Unit<'viscosity'> = {
  symbol: 'Pa·s',
  quantity: 'viscosity',
  factor: 1,
  definition: '1',
  spellings: ['Pa s'],
}

/** Micropascal second, a fitting size for gases. */
export const micropascalSecond: Unit<'viscosity'> = {
  symbol: 'µPa·s',
  quantity: 'viscosity',
  factor: 1e-6,
  definition: '1e-6',
  spellings: ['uPa s', 'µPa s'],
}

/** Centipoise: one millipascal second. */
export const centipoise: Unit<'viscosity'> = {
  symbol: 'cP',
  quantity: 'viscosity',
  factor: 0.001,
  definition: '1e-3',
}

/** Square metre per second. */
export const squareMetrePerSecond: Unit<'diffusivity'> = {
  symbol: 'm²/s',
  quantity: 'diffusivity',
  factor: 1,
  definition: '1',
}
