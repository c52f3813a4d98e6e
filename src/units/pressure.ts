import type { Unit } from './unit.ts'

// Pressure units. Whether a pressure is gauge, absolute or a difference is never part of the unit: the constructors say it.

/** Pascal, the SI unit. */
export const pascal: Unit<'pressure'> = {
  symbol: 'Pa',
  quantity: 'pressure',
  factor: 1,
  definition: '1',
  spellings: ['pascal', 'pascals', 'N/m2'],
}

/** Hectopascal, the unit of weather reports. */
export const hectopascal: Unit<'pressure'> = {
  symbol: 'hPa',
  quantity: 'pressure',
  factor: 100,
  definition: '100',
  spellings: ['hectopascal', 'hectopascals'],
}

/** Kilopascal; equals one joule per litre. */
export const kilopascal: Unit<'pressure'> = {
  symbol: 'kPa',
  quantity: 'pressure',
  factor: 1000,
  definition: '1000',
  spellings: ['kilopascal', 'kilopascals'],
}

/** Megapascal. */
export const megapascal: Unit<'pressure'> = {
  symbol: 'MPa',
  quantity: 'pressure',
  factor: 1_000_000,
  definition: '1e6',
  spellings: ['megapascal', 'megapascals', 'N/mm2'],
}

/** Gigapascal, the unit of elastic moduli. */
export const gigapascal: Unit<'pressure'> = {
  symbol: 'GPa',
  quantity: 'pressure',
  factor: 1_000_000_000,
  definition: '1e9',
  spellings: ['gigapascal'],
}

/** Bar: 100 kPa. */
export const bar: Unit<'pressure'> = {
  symbol: 'bar',
  quantity: 'pressure',
  factor: 100_000,
  definition: '1e5',
  spellings: ['bars'],
}

/** Millibar: 100 Pa. */
export const millibar: Unit<'pressure'> = {
  symbol: 'mbar',
  quantity: 'pressure',
  factor: 100,
  definition: '100',
  spellings: ['millibar', 'millibars'],
}

/** Decibar: 10 kPa, the unit of oceanography. */
export const decibar: Unit<'pressure'> = {
  symbol: 'dbar',
  quantity: 'pressure',
  factor: 10_000,
  definition: '1e4',
  spellings: ['decibar', 'decibars'],
}

/** Standard atmosphere: 101 325 Pa exactly. */
export const atmosphere: Unit<'pressure'> = {
  symbol: 'atm',
  quantity: 'pressure',
  factor: 101_325,
  definition: '101325',
  spellings: ['atmosphere', 'atmospheres', 'standard atmosphere'],
}

/** Technical atmosphere: one kilogram-force per square centimetre. */
export const technicalAtmosphere: Unit<'pressure'> = {
  symbol: 'at',
  quantity: 'pressure',
  factor: 98066.5,
  definition: '9.80665*1e4',
  spellings: ['technical atmosphere', 'technical atmospheres'],
}

/** Kilogram-force per square centimetre, on older gauges and stamps. */
export const kilogramForcePerSquareCentimetre: Unit<'pressure'> = {
  symbol: 'kgf/cm²',
  quantity: 'pressure',
  factor: 98066.5,
  definition: '9.80665*1e4',
  spellings: ['kg/cm2', 'kp/cm2'],
}

/** Torr: 1/760 of a standard atmosphere. */
export const torr: Unit<'pressure'> = {
  symbol: 'Torr',
  quantity: 'pressure',
  factor: 133.32236842105263,
  definition: '101325/760',
  spellings: ['torr', 'torrs'],
}

/** Conventional millimetre of mercury: density 13 595.1 kg/m³, standard gravity. */
export const millimetreOfMercury: Unit<'pressure'> = {
  symbol: 'mmHg',
  quantity: 'pressure',
  factor: 133.322387415,
  definition: '13.5951*9.80665',
  spellings: ['mm Hg', 'millimetre of mercury', 'millimetres of mercury'],
}

/** Conventional inch of mercury. */
export const inchOfMercury: Unit<'pressure'> = {
  symbol: 'inHg',
  quantity: 'pressure',
  factor: 3386.388640341,
  definition: '13.5951*9.80665*25.4',
  spellings: ['in Hg', 'inch of mercury', 'inches of mercury'],
}

/** Conventional millimetre of water: density 1000 kg/m³, standard gravity. */
export const millimetreOfWater: Unit<'pressure'> = {
  symbol: 'mmH2O',
  quantity: 'pressure',
  factor: 9.80665,
  definition: '9.80665',
  spellings: ['mm H2O', 'mmWC', 'mm WC', 'mmWS'],
}

/** Conventional centimetre of water, the older unit of breathing pressures. */
export const centimetreOfWater: Unit<'pressure'> = {
  symbol: 'cmH2O',
  quantity: 'pressure',
  factor: 98.0665,
  definition: '98.0665',
  spellings: ['cm H2O', 'cmWC', 'cm WC'],
}

/** Conventional metre of water: density 1000 kg/m³, standard gravity. */
export const metreOfWater: Unit<'pressure'> = {
  symbol: 'mH2O',
  quantity: 'pressure',
  factor: 9806.65,
  definition: '9806.65',
  spellings: ['m H2O', 'mWC', 'm WC', 'mWS'],
}

/** Conventional inch of water, the bench unit of cracking effort in US workshops. */
export const inchOfWater: Unit<'pressure'> = {
  symbol: 'inH2O',
  quantity: 'pressure',
  factor: 249.08891,
  definition: '9.80665*25.4',
  spellings: ['in H2O', 'inWC', 'in WC', '"H2O'],
}

/** Conventional foot of water. */
export const footOfWater: Unit<'pressure'> = {
  symbol: 'ftH2O',
  quantity: 'pressure',
  factor: 2989.06692,
  definition: '9.80665*304.8',
  spellings: ['ft H2O', 'ftWC'],
}

/** Pound-force per square inch. */
export const psi: Unit<'pressure'> = {
  symbol: 'psi',
  quantity: 'pressure',
  factor: 6894.757293168362,
  definition: '0.45359237*9.80665/0.0254^2',
  spellings: ['lbf/in2', 'lb/in2'],
}

/** Thousand pound-force per square inch, the US unit of wall stress. */
export const ksi: Unit<'pressure'> = {
  symbol: 'ksi',
  quantity: 'pressure',
  factor: 6894757.293168361,
  definition: '1000*0.45359237*9.80665/0.0254^2',
  spellings: ['kip/in2'],
}

/** Pound-force per square foot. */
export const poundForcePerSquareFoot: Unit<'pressure'> = {
  symbol: 'lbf/ft²',
  quantity: 'pressure',
  factor: 47.880258980335846,
  definition: '0.45359237*9.80665/0.3048^2',
  spellings: ['psf'],
}

/** Joule per litre: work of breathing per volume breathed. The same quantity as a kilopascal. */
export const joulePerLitre: Unit<'pressure'> = {
  symbol: 'J/L',
  quantity: 'pressure',
  factor: 1000,
  definition: '1000',
  spellings: ['J/l', 'joule per litre', 'joules per litre'],
}

/** Kilogram-force metre per litre, the older unit of work of breathing. */
export const kilogramForceMetrePerLitre: Unit<'pressure'> = {
  symbol: 'kgf·m/L',
  quantity: 'pressure',
  factor: 9806.65,
  definition: '9.80665*1000',
  spellings: ['kgf m/L', 'kg·m/L', 'kg m/L', 'kgm/L', 'kpm/L'],
}
