import type { AbsolutePressure, Temperature } from '../../units/quantity.ts'
import type { ReferenceCondition } from './reference-condition.ts'

// One literal per condition, so that an application carries those it names. Pa and K; as stated in the name.

const none = 0 as AbsolutePressure

/** 15 °C and 1.01325 bar, dry: ISO's for gas, and the sea level of the standard atmosphere. */
export const isoStandard: ReferenceCondition<'15 °C, 1.01325 bar, dry'> = {
  name: '15 °C, 1.01325 bar, dry',
  pressure: 101_325 as AbsolutePressure,
  temperature: 288.15 as Temperature,
  moisture: 'dry',
  waterVapourPressure: none,
  source: 'iso-13443',
  place: 'the standard reference condition',
}

/** 0 °C and 1.01325 bar, dry: the normal cubic metre of European industry; in chemistry the older standard state. */
export const normalCondition: ReferenceCondition<'0 °C, 1.01325 bar, dry'> = {
  name: '0 °C, 1.01325 bar, dry',
  pressure: 101_325 as AbsolutePressure,
  temperature: 273.15 as Temperature,
  moisture: 'dry',
  waterVapourPressure: none,
  source: 'openstax-chemistry-2e',
  place: 'section 9.2',
}

/** 0 °C and 1 bar, dry: chemistry's since 1982. Holds 1.3 % less than the normal cubic metre. */
export const iupacStandard: ReferenceCondition<'0 °C, 1 bar, dry'> = {
  name: '0 °C, 1 bar, dry',
  pressure: 100_000 as AbsolutePressure,
  temperature: 273.15 as Temperature,
  moisture: 'dry',
  waterVapourPressure: none,
  source: 'iupac-gold-book',
  place: 'entry on standard conditions for gases',
}

/** 20 °C and 1 atm, dry: the room temperature of laboratories. */
export const roomCondition: ReferenceCondition<'20 °C, 1 atm, dry'> = {
  name: '20 °C, 1 atm, dry',
  pressure: 101_325 as AbsolutePressure,
  temperature: 293.15 as Temperature,
  moisture: 'dry',
  waterVapourPressure: none,
  source: 'common-practice',
  place: 'normal temperature and pressure of US metrology, as restated in open references',
}

/** 70 °F and 14.696 psi, dry: the standard cubic foot of the US compressed gas trade. */
export const usStandard: ReferenceCondition<'70 °F, 14.696 psi, dry'> = {
  name: '70 °F, 14.696 psi, dry',
  pressure: 101_325.35318040225 as AbsolutePressure,
  temperature: 294.26111111111106 as Temperature,
  moisture: 'dry',
  waterVapourPressure: none,
  source: 'common-practice',
  place: 'rated capacities of cylinders in cubic feet',
}

/** STPD: 0 °C, 1 atm, dry. Oxygen uptake is stated so. The state is that of `normalCondition`, the name that of physiology. */
export const stpd: ReferenceCondition<'STPD'> = {
  name: 'STPD',
  pressure: 101_325 as AbsolutePressure,
  temperature: 273.15 as Temperature,
  moisture: 'dry',
  waterVapourPressure: none,
  source: 'common-practice',
  place: 'respiratory physiology',
}

/** BTPS at 1 atm: 37 °C, saturated. Ventilation is stated so. Elsewhere `btpsAt`. */
export const btps: ReferenceCondition<'BTPS'> = {
  name: 'BTPS',
  pressure: 101_325 as AbsolutePressure,
  temperature: 310.15 as Temperature,
  moisture: 'saturated',
  waterVapourPressure: 6282.38 as AbsolutePressure,
  source: 'wagner-pruss-1993',
  place: 'saturation pressure at 37 °C, without enhancement',
}

/** BTPS at 1 atm with the vapour pressure that physiology fixes: 47 mmHg. Its volumes are 0.02 % smaller than those of `btps`. */
export const btpsConventional: ReferenceCondition<'BTPS, 47 mmHg'> = {
  name: 'BTPS, 47 mmHg',
  pressure: 101_325 as AbsolutePressure,
  temperature: 310.15 as Temperature,
  moisture: 'saturated',
  waterVapourPressure: 6266 as AbsolutePressure,
  source: 'common-practice',
  place: 'respiratory physiology, 47 mmHg rounded to the pascal',
}

/** All fixed reference conditions, for lists and documentation. */
export const referenceConditions: readonly ReferenceCondition[] = [
  isoStandard,
  normalCondition,
  iupacStandard,
  roomCondition,
  usStandard,
  stpd,
  btps,
  btpsConventional,
]
