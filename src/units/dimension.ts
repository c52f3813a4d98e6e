/**
 * The dimensions of quantities, with their exponents of metre, kilogram, second, kelvin and mole.
 * Some share exponents and stay apart all the same: a torque is no energy, a bar·litre no torque.
 */
export const dimensions = {
  pressure: [-1, 1, -2, 0, 0],
  temperature: [0, 0, 0, 1, 0],
  'temperature difference': [0, 0, 0, 1, 0],
  volume: [3, 0, 0, 0, 0],
  length: [1, 0, 0, 0, 0],
  area: [2, 0, 0, 0, 0],
  mass: [0, 1, 0, 0, 0],
  density: [-3, 1, 0, 0, 0],
  duration: [0, 0, 1, 0, 0],
  frequency: [0, 0, -1, 0, 0],
  speed: [1, 0, -1, 0, 0],
  acceleration: [1, 0, -2, 0, 0],
  'volume flow': [3, 0, -1, 0, 0],
  'mass flow': [0, 1, -1, 0, 0],
  'amount of substance': [0, 0, 0, 0, 1],
  'molar density': [-3, 0, 0, 0, 1],
  'molar mass': [0, 1, 0, 0, -1],
  'molar energy': [2, 1, -2, 0, -1],
  'molar heat capacity': [2, 1, -2, -1, -1],
  energy: [2, 1, -2, 0, 0],
  'pressure volume': [2, 1, -2, 0, 0],
  'pressure volume flow': [2, 1, -3, 0, 0],
  power: [2, 1, -3, 0, 0],
  force: [1, 1, -2, 0, 0],
  'spring rate': [0, 1, -2, 0, 0],
  'sonic conductance': [4, -1, 1, 0, 0],
  torque: [2, 1, -2, 0, 0],
  fraction: [0, 0, 0, 0, 0],
  angle: [0, 0, 0, 0, 0],
  'heat capacity': [2, 1, -2, -1, 0],
  'specific heat capacity': [2, 0, -2, -1, 0],
  'thermal conductivity': [1, 1, -3, -1, 0],
  'thermal conductance': [2, 1, -3, -1, 0],
  'thermal insulance': [0, -1, 3, 1, 0],
  viscosity: [-1, 1, -1, 0, 0],
  diffusivity: [2, 0, -1, 0, 0],
  elastance: [-4, 1, -2, 0, 0],
  'flow resistance': [-4, 1, -1, 0, 0],
  'quadratic flow resistance': [-7, 1, 0, 0, 0],
  inertance: [-4, 1, 0, 0, 0],
  voltage: null, // the only electrical quantity; it never meets another in a formula
} as const

/** The name of a dimension. */
export type Dimension = keyof typeof dimensions
