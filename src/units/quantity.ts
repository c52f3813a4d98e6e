import type { Dimension } from './dimension.ts'

declare const quantity: unique symbol

/** What a quantity is: its dimension, and what it is counted from or stands for. Exists for the compiler only. */
export interface Tag<D extends Dimension, Reference extends string> {
  readonly dimension: D
  readonly reference: Reference
}

/**
 * A number in SI that knows what it is. At run time it is a plain number, nothing else.
 * Two quantities fit each other only if dimension and reference are the same.
 */
export type Quantity<D extends Dimension = Dimension, Reference extends string = 'amount'> = number & {
  /** @hidden */
  readonly [quantity]: Tag<D, Reference>
}

/** A number without a meaning yet: what constructors take, so that a quantity cannot be given a second unit. */
export type PlainNumber = number & {
  /** @hidden */
  readonly [quantity]?: never
}

/** Pressure above vacuum, Pa. */
export type AbsolutePressure = Quantity<'pressure', 'absolute'>
/** Pressure above that around the gauge, Pa. What a cylinder gauge shows. */
export type GaugePressure = Quantity<'pressure', 'gauge'>
/** Difference of two pressures of one reference, Pa. Also breathing pressures and intermediate pressure over ambient. */
export type PressureDifference = Quantity<'pressure', 'difference'>
/** Energy per volume, which is a pressure: 1 J/L = 1 kPa. Pa. */
export type EnergyPerVolume = PressureDifference
/** Thermodynamic temperature, K. */
export type Temperature = Quantity<'temperature', 'thermodynamic'>
/** Conservative temperature of TEOS-10, K: potential enthalpy of sea water on a scale of temperature. Not the reading of a thermometer. */
export type ConservativeTemperature = Quantity<'temperature', 'conservative'>
/** Difference of two temperatures, K. */
export type TemperatureDifference = Quantity<'temperature difference', 'difference'>
/** The volume that gas or water can fill inside a cylinder, m³. */
export type InternalVolume = Quantity<'volume', 'internal'>
/** The volume that gas fills at a named reference condition, m³. Free gas at two conditions does not add. */
export type FreeGas<Reference extends string = string> = Quantity<'volume', `free gas at ${Reference}`>
/** The volume of water that a body displaces, m³. */
export type DisplacedVolume = Quantity<'volume', 'displaced'>
/** The volume of gas at the pressure and temperature that it has, m³. */
export type GasVolume = Quantity<'volume', 'gas at its own state'>
/** Any other volume, m³. */
export type Volume = Quantity<'volume'>
/** Depth below the surface, m, downwards. */
export type Depth = Quantity<'length', 'depth'>
/** Height above mean sea level, m. */
export type Altitude = Quantity<'length', 'altitude'>
/** Any other length, m. */
export type Length = Quantity<'length'>
/** Area, m². */
export type Area = Quantity<'area'>
/** Mole fraction, from 0 to 1. */
export type MoleFraction = Quantity<'fraction', 'mole'>
/** Volume fraction, from 0 to 1. Equal to the mole fraction for ideal gases only. */
export type VolumeFraction = Quantity<'fraction', 'volume'>
/** Mass fraction, from 0 to 1. */
export type MassFraction = Quantity<'fraction', 'mass'>
/** Any other fraction or count without a dimension. */
export type Fraction = Quantity<'fraction'>
/** Practical salinity of the 1978 scale, a number: 35 in the open ocean. */
export type PracticalSalinity = Quantity<'fraction', 'practical salinity'>
/** Absolute salinity: mass of dissolved matter per mass of sea water, kg/kg. 35.165 g/kg where the practical salinity is 35. */
export type AbsoluteSalinity = Quantity<'fraction', 'absolute salinity'>
/** Plane angle, rad. */
export type Angle = Quantity<'angle'>
/** Mass, kg. */
export type Mass = Quantity<'mass'>
/** Mass per volume, kg/m³. */
export type Density = Quantity<'density'>
/** Weight: the force of gravity on a mass, N. */
export type Weight = Quantity<'force', 'weight'>
/** Force, N. */
export type Force = Quantity<'force'>
/** Flow of reference gas over upstream pressure, m³/(s·Pa). */
export type SonicConductance = Quantity<'sonic conductance'>
/** Force of a spring per length, N/m. */
export type SpringRate = Quantity<'spring rate'>
/** Torque, N·m. */
export type Torque = Quantity<'torque'>
/** Time between two events, s. */
export type Duration = Quantity<'duration'>
/** Frequency, Hz. */
export type Frequency = Quantity<'frequency'>
/** Speed, m/s. */
export type Speed = Quantity<'speed'>
/** Acceleration, m/s². */
export type Acceleration = Quantity<'acceleration'>
/** Volume flow at the state of the gas that flows, m³/s. */
export type VolumeFlow = Quantity<'volume flow'>
/** Flow of free gas at a named reference condition, m³/s. */
export type FreeGasFlow<Reference extends string = string> = Quantity<'volume flow', `free gas at ${Reference}`>
/** Mass flow, kg/s. */
export type MassFlow = Quantity<'mass flow'>
/** Amount of substance, mol. */
export type Amount = Quantity<'amount of substance'>
/** Molar density, mol/m³. */
export type MolarDensity = Quantity<'molar density'>
/** Molar mass, kg/mol. */
export type MolarMass = Quantity<'molar mass'>
/** Molar energy or enthalpy, J/mol. */
export type MolarEnergy = Quantity<'molar energy'>
/** Molar heat capacity or entropy, J/(mol·K). */
export type MolarHeatCapacity = Quantity<'molar heat capacity'>
/** Energy, J. */
export type Energy = Quantity<'energy'>
/** Pressure times volume, Pa·m³: the trade's bar·litre. */
export type PressureVolume = Quantity<'pressure volume'>
/** Pressure times volume for each time, Pa·m³/s: what a diver takes from a cylinder. It grows with depth; a volume flow does not. */
export type PressureVolumeFlow = Quantity<'pressure volume flow'>
/** Power, W. */
export type Power = Quantity<'power'>
/** Heat capacity, J/K. */
export type HeatCapacity = Quantity<'heat capacity'>
/** Specific heat capacity, J/(kg·K). */
export type SpecificHeatCapacity = Quantity<'specific heat capacity'>
/** Thermal conductivity, W/(m·K). */
export type ThermalConductivity = Quantity<'thermal conductivity'>
/** Thermal conductance, W/K. */
export type ThermalConductance = Quantity<'thermal conductance'>
/** Thermal insulance, m²·K/W: what a layer keeps in, by area. */
export type ThermalInsulance = Quantity<'thermal insulance'>
/** Joule–Thomson coefficient, K/Pa: warming with pressure at constant enthalpy. */
export type JouleThomsonCoefficient = Quantity<'Joule–Thomson coefficient'>
/** Dynamic viscosity, Pa·s. */
export type Viscosity = Quantity<'viscosity'>
/** Diffusivity, m²/s. */
export type Diffusivity = Quantity<'diffusivity'>
/** Voltage, V. */
export type Voltage = Quantity<'voltage'>
/** Elastance: pressure per volume, Pa/m³. */
export type Elastance = Quantity<'elastance'>
/** Resistance to flow: pressure per volume flow, Pa·s/m³. */
export type FlowResistance = Quantity<'flow resistance'>
/** Resistance that grows with the square of flow, Pa·s²/m⁶. */
export type QuadraticFlowResistance = Quantity<'quadratic flow resistance'>
/** Inertance: pressure per change of volume flow, Pa·s²/m³. */
export type Inertance = Quantity<'inertance'>
