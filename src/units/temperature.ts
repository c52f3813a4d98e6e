import type { Unit } from './unit.ts'

// Temperature units. `temperatureOf` uses the offset, `difference` does not.

/** Kelvin, the SI unit. */
export const kelvin: Unit<'temperature'> = {
  symbol: 'K',
  quantity: 'temperature',
  factor: 1,
  definition: '1',
  spellings: ['kelvin', 'kelvins'],
}

/** Degree Celsius. */
export const celsius: Unit<'temperature'> = {
  symbol: '°C',
  quantity: 'temperature',
  factor: 1,
  offset: 273.15,
  definition: '1',
  offsetDefinition: '273.15',
  spellings: ['C', 'degC', 'deg C', 'celsius'],
}

/** Degree Fahrenheit. */
export const fahrenheit: Unit<'temperature'> = {
  symbol: '°F',
  quantity: 'temperature',
  factor: 0.5555555555555556,
  offset: 255.37222222222223,
  definition: '5/9',
  offsetDefinition: '459.67*5/9',
  spellings: ['F', 'degF', 'deg F', 'fahrenheit'],
}

/** Degree Rankine. */
export const rankine: Unit<'temperature'> = {
  symbol: '°R',
  quantity: 'temperature',
  factor: 0.5555555555555556,
  definition: '5/9',
  spellings: ['R', 'degR', 'rankine'],
}
