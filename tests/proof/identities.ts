// What must hold between results of the library, whatever the gas and the state: one table, walked over a grid.
import {
  allUnits,
  amountOfGas,
  type Depth,
  depthAtPressure,
  dryAir,
  equalise,
  type GasState,
  gasState,
  gerg2008GasConstant,
  heliox,
  inUnit,
  type Mixture,
  mixture,
  molarDensity,
  molarMass,
  nitrox,
  partialPressures,
  pressureAltitude,
  pressureAtDensity,
  pressureAtDepth,
  pureGas,
  saturationPressure,
  saturationTemperature,
  temperatureAtDensity,
  temperatureAtEnthalpy,
  temperatureAtEntropy,
  temperatureAtInternalEnergy,
  toAbsolute,
  toAbsoluteSalinity,
  toGauge,
  toPracticalSalinity,
  trimix,
} from '../../src/index.ts'

/** One statement: how far it is from true, and how far it may be. */
export interface Identity<Case> {
  readonly name: string
  readonly gap: (of: Case) => number
  readonly allowed: number
}

interface State {
  readonly gas: Mixture
  readonly pressure: number
  readonly temperature: number
  readonly state: GasState
}

const relative = (found: number, expected: number): number => Math.abs(found / expected - 1)

export const mixtures: Readonly<Record<string, Mixture>> = {
  air: dryAir,
  nitrogen: pureGas('nitrogen'),
  oxygen: pureGas('oxygen'),
  argon: pureGas('argon'),
  helium: pureGas('helium'),
  hydrogen: pureGas('hydrogen'),
  'nitrox 21': nitrox(0.21),
  'nitrox 28': nitrox(0.28),
  'nitrox 32': nitrox(0.32),
  'nitrox 36': nitrox(0.36),
  'nitrox 50': nitrox(0.5),
  'nitrox 80': nitrox(0.8),
  'trimix 21/35': trimix({ oxygen: 0.21, helium: 0.35 }),
  'trimix 18/45': trimix({ oxygen: 0.18, helium: 0.45 }),
  'trimix 15/55': trimix({ oxygen: 0.15, helium: 0.55 }),
  'trimix 10/70': trimix({ oxygen: 0.1, helium: 0.7 }),
  'heliox 20': heliox(0.2),
  'heliox 5': heliox(0.05),
  'hydreliox 1': mixture({ oxygen: 0.01, helium: 0.5, hydrogen: 0.49 }),
  'argon 80': mixture({ argon: 0.8, oxygen: 0.2 }),
  'air with carbon dioxide': mixture({ nitrogen: 0.77, oxygen: 0.2, carbonDioxide: 0.03 }),
  'six gases': mixture({ nitrogen: 0.4, oxygen: 0.2, argon: 0.05, helium: 0.3, carbonDioxide: 0.01, hydrogen: 0.04 }),
}

const pressures = [1e4, 1e5, 3e5, 1e6, 4e6, 8e6, 1.2e7, 1.5e7, 2e7, 2.32e7, 2.5e7, 3e7, 4e7]
const temperatures = [265, 275, 283.15, 288.15, 293.15, 305, 320, 350]

/** Every mixture at every pressure and temperature. */
export const states: readonly State[] = Object.values(mixtures).flatMap((gas) =>
  pressures.flatMap((pressure) =>
    temperatures.map((temperature) => ({ gas, pressure, temperature, state: stateOf(gas, pressure, temperature) })),
  ),
)

function stateOf(gas: Mixture, pressure: number, temperature: number): GasState {
  return gasState(gas, { pressure, temperature } as never)
}

/** Central difference of fourth order. */
function slope(f: (x: number) => number, x: number, step: number): number {
  return (8 * (f(x + step) - f(x - step)) - (f(x + 2 * step) - f(x - 2 * step))) / (12 * step)
}

const R = gerg2008GasConstant as number
const mass = (gas: Mixture): number => molarMass(gas)

export const stateIdentities: readonly Identity<State>[] = [
  {
    name: 'p is Z ρ R T',
    gap: ({ state: s }) => relative(s.compressibilityFactor * s.molarDensity * R * s.temperature, s.pressure),
    allowed: 1e-12,
  },
  {
    name: 'Z − 1 is Z less 1',
    gap: ({ state: s }) => Math.abs(s.compressibilityFactor - 1 - s.compressibilityFactorMinusOne),
    allowed: 1e-15,
  },
  {
    name: 'mass density is molar density times molar mass',
    gap: ({ state: s, gas }) => relative(s.molarDensity * mass(gas), s.density),
    allowed: 1e-14,
  },
  {
    name: 'h is u + p v',
    gap: ({ state: s }) =>
      Math.abs(s.molarEnthalpy - s.molarInternalEnergy - s.pressure / s.molarDensity) / (R * s.temperature),
    allowed: 1e-12,
  },
  {
    name: 'g is h − T s',
    gap: ({ state: s }) =>
      Math.abs(s.molarGibbsEnergy - s.molarEnthalpy + s.temperature * s.molarEntropy) / (R * s.temperature),
    allowed: 1e-11,
  },
  {
    name: 'c_p − c_v is T (∂p/∂T)² / (ρ² ∂p/∂ρ)',
    gap: ({ state: s }) =>
      Math.abs(
        s.isobaricHeatCapacity -
          s.isochoricHeatCapacity -
          (s.temperature * s.pressureTemperatureDerivative ** 2) / (s.molarDensity ** 2 * s.pressureDensityDerivative),
      ) / R,
    allowed: 1e-12,
  },
  {
    name: 'w² is c_p/c_v ∂p/∂ρ per mass',
    gap: ({ state: s, gas }) =>
      relative(
        s.speedOfSound ** 2 * mass(gas),
        (s.isobaricHeatCapacity / s.isochoricHeatCapacity) * s.pressureDensityDerivative,
      ),
    allowed: 1e-12,
  },
  {
    name: 'the isentropic exponent is ρ w² / p',
    gap: ({ state: s }) => relative(s.isentropicExponent, (s.density * s.speedOfSound ** 2) / s.pressure),
    allowed: 1e-12,
  },
  {
    name: 'the Joule–Thomson coefficient follows from the derivatives of p',
    gap: ({ state: s }) => {
      const expansion =
        (s.temperature * s.pressureTemperatureDerivative) / (s.molarDensity * s.pressureDensityDerivative)
      const found = (expansion - 1) / (s.molarDensity * s.isobaricHeatCapacity)
      return Math.abs(found - s.jouleThomsonCoefficient) * s.molarDensity * s.isobaricHeatCapacity
    },
    allowed: 1e-11,
  },
  {
    name: 'heat capacities are positive, and c_p is the larger',
    gap: ({ state: s }) =>
      s.isochoricHeatCapacity > 0 && s.isobaricHeatCapacity > s.isochoricHeatCapacity && s.pressureDensityDerivative > 0
        ? 0
        : 1,
    allowed: 0,
  },
  {
    name: 'Maxwell: ∂s/∂p at constant T is −∂v/∂T at constant p',
    gap: ({ state: s, gas, temperature }) => {
      const found = slope((p) => stateOf(gas, p, temperature).molarEntropy, s.pressure, 1e-3 * s.pressure)
      return relative(found, -s.pressureTemperatureDerivative / (s.pressureDensityDerivative * s.molarDensity ** 2))
    },
    allowed: 1e-8,
  },
  {
    name: 'Maxwell: ∂s/∂v at constant T is ∂p/∂T at constant v',
    gap: ({ state: s, gas }) => {
      const at = (temperature: number): number =>
        pressureAtDensity(gas, { molarDensity: s.molarDensity, temperature } as never)
      return relative(slope(at, s.temperature, 1e-3 * s.temperature), s.pressureTemperatureDerivative)
    },
    allowed: 1e-8,
  },
  {
    name: 'c_p is ∂h/∂T at constant p',
    gap: ({ state: s, gas, pressure }) =>
      relative(
        slope((T) => stateOf(gas, pressure, T).molarEnthalpy, s.temperature, 1e-3 * s.temperature),
        s.isobaricHeatCapacity,
      ),
    allowed: 1e-8,
  },
  {
    name: 'v is ∂g/∂p at constant T',
    gap: ({ state: s, gas, temperature }) =>
      relative(
        slope((p) => stateOf(gas, p, temperature).molarGibbsEnergy, s.pressure, 1e-3 * s.pressure) * s.molarDensity,
        1,
      ),
    allowed: 1e-8,
  },
  {
    name: '−s is ∂g/∂T at constant p',
    gap: ({ state: s, gas, pressure }) =>
      Math.abs(
        slope((T) => stateOf(gas, pressure, T).molarGibbsEnergy, s.temperature, 1e-3 * s.temperature) + s.molarEntropy,
      ) / R,
    allowed: 1e-7,
  },
  {
    name: 'fugacity: Σ x ln φ falls with pressure as (Z − 1)/p says',
    gap: ({ state: s, gas, temperature }) => {
      const sum = (p: number): number =>
        Object.entries(stateOf(gas, p, temperature).fugacityCoefficients).reduce(
          (total, [name, coefficient]) => total + gas[name as 'oxygen'] * Math.log(coefficient),
          0,
        )
      const expected = s.compressibilityFactorMinusOne / s.pressure
      return Math.abs(slope(sum, s.pressure, 1e-3 * s.pressure) - expected) * s.pressure
    },
    allowed: 1e-9,
  },
  {
    name: 'molarDensity is that of the state',
    gap: ({ state: s, gas }) => relative(molarDensity(gas, s.pressure, s.temperature), s.molarDensity),
    allowed: 1e-15,
  },
  {
    name: 'pressure comes back from density',
    gap: ({ state: { molarDensity, temperature, pressure }, gas }) =>
      relative(pressureAtDensity(gas, { molarDensity, temperature }), pressure),
    allowed: 1e-12,
  },
  {
    name: 'temperature comes back from density',
    gap: ({ state: { molarDensity, temperature, pressure }, gas }) =>
      relative(temperatureAtDensity(gas, { molarDensity, pressure }), temperature),
    allowed: 1e-10,
  },
  {
    name: 'temperature comes back from enthalpy',
    gap: ({ state: { molarEnthalpy, temperature, pressure }, gas }) =>
      relative(temperatureAtEnthalpy(gas, { molarEnthalpy, pressure }), temperature),
    allowed: 1e-11,
  },
  {
    name: 'temperature comes back from entropy',
    gap: ({ state: { molarEntropy, temperature, pressure }, gas }) =>
      relative(temperatureAtEntropy(gas, { molarEntropy, pressure }), temperature),
    allowed: 1e-11,
  },
  {
    name: 'temperature comes back from internal energy',
    gap: ({ state: { molarInternalEnergy, molarDensity, temperature }, gas }) =>
      relative(temperatureAtInternalEnergy(gas, { molarInternalEnergy, molarDensity }), temperature),
    allowed: 1e-11,
  },
  {
    name: 'density rises with pressure and falls with temperature',
    gap: ({ state: s, gas, pressure, temperature }) =>
      molarDensity(gas, (pressure * 1.001) as never, s.temperature) > s.molarDensity &&
      molarDensity(gas, s.pressure, (temperature * 1.001) as never) < s.molarDensity
        ? 0
        : 1,
    allowed: 0,
  },
  {
    name: 'entropy falls with pressure and rises with temperature',
    gap: ({ state: s, gas, pressure, temperature }) =>
      stateOf(gas, pressure * 1.001, temperature).molarEntropy < s.molarEntropy &&
      stateOf(gas, pressure, temperature * 1.001).molarEntropy > s.molarEntropy
        ? 0
        : 1,
    allowed: 0,
  },
  {
    name: 'partial pressures add up to the pressure',
    gap: ({ state: s, gas }) =>
      relative(
        Object.values(partialPressures(gas, s.pressure) as Record<string, number>).reduce((a, b) => a + b, 0),
        s.pressure,
      ),
    allowed: 1e-15,
  },
  {
    name: 'twice the vessel holds twice the gas',
    gap: ({ gas, pressure, temperature }) => {
      const amount = (internalVolume: number): number =>
        amountOfGas({ internalVolume, pressure, temperature, mixture: gas } as never)
      return relative(amount(0.024), 2 * amount(0.012))
    },
    allowed: 1e-15,
  },
  {
    name: 'the order in which a mixture is written does not matter',
    gap: ({ state: s, gas }) => {
      const turned = Object.fromEntries(Object.entries(gas).reverse()) as unknown as Mixture
      return relative(molarDensity(turned, s.pressure, s.temperature), s.molarDensity)
    },
    allowed: 1e-15,
  },
]

interface Column {
  readonly depth: number
  readonly surface: number
  readonly density: number
}

/** Columns of water: depths from the surface to 150 m, from the sea to 3500 m up. */
export const columns: readonly Column[] = [0.5, 3, 10, 18.3, 30, 42.5, 66, 100, 150].flatMap((depth) =>
  [65_000, 80_000, 91_500, 101_325, 104_000].flatMap((surface) =>
    [997, 1000, 1010, 1025, 1030].map((density) => ({ depth, surface, density })),
  ),
)

export const columnIdentities: readonly Identity<Column>[] = [
  {
    name: 'depth comes back from pressure',
    gap: ({ depth, surface, density }) => {
      const water = { surfacePressure: surface, density } as never as Parameters<typeof depthAtPressure>[0]
      const pressure = pressureAtDepth({ ...water, depth: depth as Depth })
      return relative(depthAtPressure({ ...water, pressure }), depth)
    },
    allowed: 1e-11,
  },
  {
    name: 'gauge pressure comes back from absolute',
    gap: ({ depth, surface }) =>
      relative(toGauge(toAbsolute((depth * 1e5) as never, surface as never), surface as never), depth * 1e5),
    allowed: 1e-11,
  },
  {
    name: 'pressure at depth rises in step with depth',
    gap: ({ depth, surface, density }) => {
      const at = (d: number): number => pressureAtDepth({ surfacePressure: surface, density, depth: d } as never)
      return relative(at(2 * depth) - at(depth), at(depth) - at(0))
    },
    allowed: 1e-10,
  },
]

/** Numbers for units and for functions of one number. */
export const plainNumbers = [0.001, 0.37, 1, 2.5, 14.7, 32, 101.325, 232, 3000, 1.25e5]

export const unitIdentities: readonly Identity<{ readonly unit: (typeof allUnits)[number]; readonly n: number }>[] = [
  {
    name: 'a number comes back from SI',
    gap: ({ unit, n }) => {
      const offset = unit.offset ?? 0
      const back = inUnit((n * unit.factor + offset) as never, unit as never)
      return Math.abs(back - n) / (n + offset / unit.factor)
    },
    allowed: 1e-15,
  },
  {
    name: 'the way by any other unit of the quantity ends at the same SI',
    gap: ({ unit, n }) => {
      const si = n * unit.factor + (unit.offset ?? 0)
      const others = allUnits.filter(({ quantity }) => quantity === unit.quantity)
      return Math.max(
        ...others.map((other) => {
          const offset = other.offset ?? 0
          const back = inUnit(si as never, other as never) * other.factor + offset
          return Math.abs(back - si) / (Math.abs(si) + offset) // near its zero a scale rounds by its offset
        }),
      )
    },
    allowed: 4e-15,
  },
]

export const oneNumberIdentities: readonly Identity<number>[] = [
  {
    name: 'temperature comes back from the vapour pressure of water',
    gap: (share) => {
      const temperature = 230 + 120 * share
      return relative(saturationTemperature(saturationPressure(temperature as never)), temperature)
    },
    allowed: 1e-12,
  },
  {
    name: 'vapour pressure rises with temperature',
    gap: (share) =>
      saturationPressure((230.1 + 120 * share) as never) > saturationPressure((230 + 120 * share) as never) ? 0 : 1,
    allowed: 0,
  },
  {
    name: 'altitude comes back from pressure',
    gap: (share) => {
      const altitude = 9000 * share
      const pressure = 101_325 * (1 - (0.0065 * altitude) / 288.15) ** (9.80665 / (0.0065 * 287.05287))
      return Math.abs(
        pressureAltitude(pressure as never) / 9000 - (altitude * 6_356_766) / (6_356_766 - altitude) / 9000,
      )
    },
    allowed: 1e-6,
  },
  {
    name: 'practical salinity comes back from absolute',
    gap: (share) =>
      Math.abs(toPracticalSalinity(toAbsoluteSalinity((41.5 * share) as never)) - 41.5 * share) / (41.5 * share + 1),
    allowed: 1e-14,
  },
]

interface Pair {
  readonly gas: Mixture
  readonly high: number
  readonly low: number
  readonly ratio: number
}

/** Two cylinders of one gas, joined. */
export const pairs: readonly Pair[] = Object.values(mixtures).flatMap((gas) =>
  [5e6, 2e7, 3e7].flatMap((high) =>
    [1e5, 1e6, 5e6].flatMap((low) => [0.2, 1, 4].map((ratio) => ({ gas, high, low, ratio }))),
  ),
)

export const pairIdentities: readonly Identity<Pair>[] = [
  {
    name: 'gas is neither made nor lost when cylinders are joined at constant temperature',
    gap: ({ gas, high, low, ratio }) => {
      const cylinders = [
        { internalVolume: 0.05, mixture: gas, pressure: high, temperature: 293.15 },
        { internalVolume: 0.05 * ratio, mixture: gas, pressure: low, temperature: 293.15 },
      ]
      const before = cylinders.reduce((sum, each) => sum + amountOfGas(each as never), 0)
      const joined = equalise(cylinders as never, { heat: 'isothermal' })
      const after = amountOfGas({
        internalVolume: 0.05 * (1 + ratio),
        mixture: gas,
        pressure: joined.pressure,
        temperature: 293.15,
      } as never)
      return relative(after, before)
    },
    allowed: 1e-10,
  },
]
