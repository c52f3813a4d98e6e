export { type Accepted, isWithin, requireWithin } from './accepted.ts'
export {
  kilomole,
  mole,
} from './amount.ts'
export { degree, radian } from './angle.ts'
export {
  squareCentimetre,
  squareFoot,
  squareInch,
  squareMetre,
  squareMillimetre,
} from './area.ts'
export {
  centimetreOfWaterPerLitre,
  kilopascalPerLitre,
  kilopascalSecondPerLitre,
  kilopascalSecondSquaredPerLitre,
  kilopascalSecondSquaredPerLitreSquared,
  pascalPerCubicMetre,
  pascalSecondPerCubicMetre,
  pascalSecondSquaredPerCubicMetre,
  pascalSecondSquaredPerMetreToTheSixth,
} from './breathing-mechanics.ts'
export {
  absolute,
  altitudeOf,
  depthOf,
  difference,
  displacedVolumeOf,
  fractionOf,
  freeGasFlowOf,
  freeGasOf,
  gasVolumeOf,
  gauge,
  internalVolumeOf,
  type MeasuredDimension,
  massFractionOf,
  measure,
  temperatureOf,
  volumeFractionOf,
} from './construct.ts'
export {
  type Additive,
  convertInto,
  differenceInUnit,
  differenceOf,
  inUnit,
  offsetBy,
  sumOf,
  toAbsolute,
  toGauge,
} from './convert.ts'
export {
  gramPerCubicCentimetre,
  gramPerCubicMetre,
  gramPerLitre,
  kilogramPerCubicMetre,
  milligramPerCubicMetre,
  poundPerCubicFoot,
} from './density.ts'
export {
  footOfSeaWaterSixtyFourPound,
  footOfSeaWaterThirtyThree,
  footOfSeaWaterThirtyThreePointZeroEight,
  footOfSeaWaterThirtyThreePointZeroSixSix,
  metreOfSeaWaterTenKilopascal,
} from './depth-pressure.ts'
export { type Dimension, dimensions } from './dimension.ts'
export {
  day,
  hour,
  millisecond,
  minute,
  second,
} from './duration.ts'
export {
  millivolt,
  volt,
} from './electric.ts'
export {
  footPoundForce,
  joule,
  kilocalorie,
  kilogramForceMetre,
  kilojoule,
  kilowattHour,
} from './energy.ts'
export {
  cubicFootPerMinute,
  cubicMetrePerHour,
  cubicMetrePerSecond,
  cubicMetrePerSecondPascal,
  litrePerMinute,
  litrePerSecond,
  litrePerSecondBar,
} from './flow.ts'
export {
  kilogramForce,
  kilonewton,
  newton,
  newtonPerMetre,
  newtonPerMillimetre,
  poundForce,
} from './force.ts'
export { format, type NumberStyle, withNumberStyle, withUnit } from './format.ts'
export {
  gramPerKilogram,
  one,
  partPerBillion,
  partPerMillion,
  percent,
} from './fraction.ts'
export {
  hertz,
  perMinute,
} from './frequency.ts'
export {
  centimetre,
  fathom,
  foot,
  inch,
  kilometre,
  metre,
  micrometre,
  millimetre,
  nauticalMile,
  yard,
} from './length.ts'
export { type LikelySlip, likelySlips, type Plausibility } from './likely-slip.ts'
export {
  grain,
  gram,
  kilogram,
  milligram,
  ounce,
  pound,
  tonne,
} from './mass.ts'
export {
  gramPerHour,
  gramPerSecond,
  kilogramPerHour,
  kilogramPerSecond,
  poundPerHour,
} from './mass-flow.ts'
export {
  gramPerMole,
  joulePerMole,
  joulePerMoleKelvin,
  kilogramPerMole,
  molePerCubicMetre,
  molePerLitre,
} from './molar.ts'
export {
  footPerMinute,
  knot,
  metrePerMinute,
  metrePerSecond,
  metrePerSecondSquared,
} from './motion.ts'
export { type ParsedKind, type ParsedKinds, type ParseOptions, parseQuantity, parseUnit } from './parse.ts'
export {
  horsepower,
  kilowatt,
  watt,
} from './power.ts'
export {
  atmosphere,
  bar,
  centimetreOfWater,
  decibar,
  footOfWater,
  gigapascal,
  hectopascal,
  inchOfMercury,
  inchOfWater,
  joulePerLitre,
  kilogramForceMetrePerLitre,
  kilogramForcePerSquareCentimetre,
  kilopascal,
  ksi,
  megapascal,
  metreOfWater,
  millibar,
  millimetreOfMercury,
  millimetreOfWater,
  pascal,
  poundForcePerSquareFoot,
  psi,
  technicalAtmosphere,
  torr,
} from './pressure.ts'
export {
  barLitre,
  barLitrePerMinute,
  pascalCubicMetre,
  pascalCubicMetrePerSecond,
  psiCubicFoot,
} from './pressure-volume.ts'
export type {
  AbsolutePressure,
  AbsoluteSalinity,
  Acceleration,
  Altitude,
  Amount,
  Angle,
  Area,
  ConservativeTemperature,
  Density,
  Depth,
  Diffusivity,
  DisplacedVolume,
  Duration,
  Elastance,
  Energy,
  EnergyPerVolume,
  FlowResistance,
  Force,
  Fraction,
  FreeGas,
  FreeGasFlow,
  Frequency,
  GasVolume,
  GaugePressure,
  HeatCapacity,
  Inertance,
  InternalVolume,
  JouleThomsonCoefficient,
  Length,
  Mass,
  MassFlow,
  MassFraction,
  MolarDensity,
  MolarEnergy,
  MolarHeatCapacity,
  MolarMass,
  MoleFraction,
  PlainNumber,
  Power,
  PracticalSalinity,
  PressureDifference,
  PressureVolume,
  PressureVolumeFlow,
  QuadraticFlowResistance,
  Quantity,
  SonicConductance,
  SpecificHeatCapacity,
  Speed,
  SpringRate,
  Tag,
  Temperature,
  TemperatureDifference,
  ThermalConductance,
  ThermalConductivity,
  ThermalInsulance,
  Torque,
  Viscosity,
  Voltage,
  Volume,
  VolumeFlow,
  VolumeFraction,
  Weight,
} from './quantity.ts'
export type { StatedRecord } from './record-relation.table.ts'
export { type RecordPlausibility, type RecordSlip, recordSlips } from './record-slips.ts'
export { type Direction, type Fineness, type Rounded, type RoundingRule, round, roundNumber } from './round.ts'
export { type RoundingUse, type RoundingUseId, roundingUses } from './rounding-uses.table.ts'
export type { SlipRole } from './slip-role.table.ts'
export {
  celsius,
  fahrenheit,
  kelvin,
  rankine,
} from './temperature.ts'
export {
  centipoise,
  clo,
  joulePerKelvin,
  joulePerKilogramKelvin,
  kelvinPerBar,
  kelvinPerPascal,
  micropascalSecond,
  pascalSecond,
  squareMetreKelvinPerWatt,
  squareMetrePerSecond,
  wattPerKelvin,
  wattPerMetreKelvin,
} from './thermal.ts'
export {
  kilogramForceCentimetre,
  newtonMetre,
  poundForceFoot,
  poundForceInch,
} from './torque.ts'
export type { Unit } from './unit.ts'
export { allUnits } from './unit-list.ts'
export {
  cubicFoot,
  cubicInch,
  cubicMetre,
  gallonImperial,
  litre,
  millilitre,
  usGallon,
} from './volume.ts'
