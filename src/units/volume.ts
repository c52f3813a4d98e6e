import type { Unit } from './unit.ts'

// Volume units. Whether a volume is the inside of a cylinder, free gas or displaced water is said by the constructor.

/** Cubic metre, the SI unit. */
export const cubicMetre: Unit<'volume'> = {
  symbol: 'm³',
  quantity: 'volume',
  factor: 1,
  definition: '1',
  spellings: ['cubic metre', 'cubic metres', 'cubic meter', 'cubic meters'],
}

/** Litre. */
export const litre: Unit<'volume'> = {
  symbol: 'L',
  quantity: 'volume',
  factor: 0.001,
  definition: '1e-3',
  spellings: ['l', 'litre', 'litres', 'liter', 'liters', 'dm3'],
}

/** Millilitre; equals one cubic centimetre. */
export const millilitre: Unit<'volume'> = {
  symbol: 'mL',
  quantity: 'volume',
  factor: 1e-6,
  definition: '1e-6',
  spellings: ['ml', 'millilitre', 'millilitres', 'cm3', 'cc'],
}

/** Cubic foot. */
export const cubicFoot: Unit<'volume'> = {
  symbol: 'ft³',
  quantity: 'volume',
  factor: 0.028316846592,
  definition: '0.3048^3',
  spellings: ['cu ft', 'cu. ft.', 'cuft', 'cubic foot', 'cubic feet'],
}

/** Cubic inch, the unit of US water capacity. */
export const cubicInch: Unit<'volume'> = {
  symbol: 'in³',
  quantity: 'volume',
  factor: 1.6387064e-5,
  definition: '0.0254^3',
  spellings: ['cu in', 'cu. in.', 'cubic inch', 'cubic inches'],
}

/** US gallon: 231 cubic inches. */
export const usGallon: Unit<'volume'> = {
  symbol: 'gal (US)',
  quantity: 'volume',
  factor: 0.003785411784,
  definition: '231*0.0254^3',
  spellings: ['US gallon', 'US gallons', 'US gal'],
}

/** Imperial gallon. */
export const gallonImperial: Unit<'volume'> = {
  symbol: 'gal (imp)',
  quantity: 'volume',
  factor: 0.00454609,
  definition: '4.54609e-3',
  spellings: ['imperial gallon', 'imperial gallons', 'imp gal'],
}
