export { type Gas, gases } from './gas.ts'
export {
  dryAir,
  enrichedAir,
  heliox,
  type Mixture,
  type MixtureOptions,
  type MoleFractions,
  mixture,
  molarMass,
  nitrox,
  pureGas,
  sameMixture,
  trimix,
} from './mixture.ts'
export { mixtureFromText } from './mixture-text.ts'
export {
  mixtureOfPartialPressures,
  type PartialPressures,
  partialPressure,
  partialPressures,
  totalPressure,
} from './partial-pressures.ts'
