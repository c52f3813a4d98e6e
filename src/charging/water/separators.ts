import { requireKeys } from '../../errors/index.ts'
import { dryAir, type GasModelOption, molarDensityBy, saturatedWaterDensity } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/cautions.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Duration,
  type Fraction,
  gramPerHour,
  kelvin,
  litre,
  type MassFlow,
  type MoleFraction,
  requireWithin,
  type Temperature,
  type Volume,
  type VolumeFlow,
} from '../../units/index.ts'
import { efficiency, flow, humidity, requireSome } from '../accepted.ts'
import {
  requireGasOption,
  requireSeparator,
  type SeparatorState,
  saturatedRatio,
  type WaterFlow,
  waterMolarMass,
} from './saturation.ts'

/** A cooler with its separator. */
export interface Separator extends SeparatorState {
  /** Share of the liquid that it holds back; the rest goes on as droplets. Left out, all of it. */
  readonly separation?: Fraction
}

/** Moist air on its way through coolers and separators. */
export interface SeparatorTrain {
  readonly intake: {
    readonly pressure: AbsolutePressure
    readonly temperature: Temperature
    readonly relativeHumidity: Fraction
  }
  /** Moist air at the intake. */
  readonly flow: VolumeFlow
  /** In the order in which the air passes them. */
  readonly separators: readonly Separator[]
}

/** What a separator does to the water. */
export interface SeparatedWater {
  readonly drained: WaterFlow
  /** Droplets that go on with the air. */
  readonly droplets: WaterFlow
  /** Mole fraction of vapour in the air that leaves. */
  readonly waterFraction: MoleFraction
  readonly saturated: boolean
}

/** Water of a compressor, from intake to cartridge. */
export interface TrainWater {
  readonly takenIn: WaterFlow
  readonly separators: readonly SeparatedWater[]
  /** What leaves the last separator, vapour and droplets: the load of the cartridge. */
  readonly carryOver: WaterFlow
  /** Mole fraction of all water in the air that leaves. */
  readonly waterFraction: MoleFraction
  /** Relative standard uncertainty of that fraction. */
  readonly relativeUncertainty: number
  readonly cautions: readonly CautionId[]
}

/**
 * Water that each separator of a compressor drains, and what is left in the air. Compressed air holds more vapour than the vapour
 * pressure alone would let it, at 300 bar twice as much, so the last separator leaves hundreds of mg/m³: the cartridge has to take the rest.
 *
 * @param train - intake: absolute Pa, K, relative humidity 0 to 1; flow of moist air at the intake, m³/s; of each separator pressure,
 *   absolute, Pa, up to 350 bar, temperature of the gas, K, and the share of the liquid that it holds
 * @param options - `gas: 'ideal'` leaves out compressibility and enhancement, to show the difference
 * @returns flows of water, kg/s, each with the uncertainty that the enhancement factor gives it
 * @throws LitrebarError `range` or `outside-validity`, naming the separator and field; `input` for none or an unknown key
 * @source litrebar-derivation, balance of water with `enhancementFactor`
 * @example
 * const separator = (bars: number, degrees: number) => ({ pressure: absolute(bars, bar), temperature: temperatureOf(degrees, celsius) })
 * const train = {
 *   intake: { pressure: absolute(1, atmosphere), temperature: temperatureOf(20, celsius), relativeHumidity: measure(60, percent) },
 *   flow: measure(100, litrePerMinute),
 *   separators: [separator(6.5, 30), separator(40, 32), separator(225, 35)],
 * }
 * const { separators, carryOver } = separatedWater(train)
 * separators.map(({ drained }) => inUnit(drained.value, gramPerHour).toFixed(1)) // => ['32.8', '23.8', '3.9']
 * const shown = [carryOver.value, carryOver.standardUncertainty].map((m) => inUnit(m, gramPerHour).toFixed(1)) // => ['2.0', '0.2']
 */
export function separatedWater(train: SeparatorTrain, options: GasModelOption = {}): TrainWater {
  requireTrain(train)
  const gas = requireGasOption(options)
  const { intake } = train
  const full = saturatedRatio(intake, gas)
  const fraction = (intake.relativeHumidity * full.ratio) / (1 + full.ratio)
  const dryFlow = train.flow * molarDensityBy(gas, dryAir, intake.pressure, intake.temperature) * (1 - fraction) // mol/s
  const flowOf = (value: number, doubt: number): WaterFlow => ({
    value: (value * dryFlow * waterMolarMass) as MassFlow,
    standardUncertainty: (doubt * dryFlow * waterMolarMass) as MassFlow,
  })
  const takenIn = fraction / (1 - fraction)
  let total = takenIn
  // Whether the errors of the enhancement factor at two pressures go together is not known: they are added, not squared.
  let doubt = takenIn * full.relative
  const separators = train.separators.map((separator): SeparatedWater => {
    const { ratio, relative } = saturatedRatio(separator, gas)
    const { separation = 1 } = separator
    const isSaturated = total >= ratio
    const vapour = isSaturated ? ratio : total
    const liquid = total - vapour
    const vapourDoubt = isSaturated ? ratio * relative : doubt
    const liquidDoubt = isSaturated ? doubt + ratio * relative : Math.max(0, total + doubt - ratio * (1 - relative))
    total = vapour + (1 - separation) * liquid
    doubt = vapourDoubt + (1 - separation) * liquidDoubt
    return {
      drained: flowOf(separation * liquid, separation * liquidDoubt),
      droplets: flowOf((1 - separation) * liquid, (1 - separation) * liquidDoubt),
      waterFraction: (vapour / (1 + vapour)) as MoleFraction,
      saturated: isSaturated,
    }
  })
  return {
    takenIn: flowOf(takenIn, takenIn * full.relative),
    separators,
    carryOver: flowOf(total, doubt),
    waterFraction: (total / (1 + total)) as MoleFraction,
    relativeUncertainty: total > 0 ? doubt / total : 0,
    cautions: ['breathing-air'],
  }
}

function requireTrain(train: SeparatorTrain): void {
  requireKeys('train', train, { intake: true, flow: true, separators: true })
  requireSeparator('train.intake', train.intake, { relativeHumidity: true })
  requireWithin('train.intake.relativeHumidity', train.intake.relativeHumidity, humidity)
  requireWithin('train.flow', train.flow, flow)
  requireSome('train.separators', train.separators, 'List the separators in the order in which the air passes them.')
  for (const [k, separator] of train.separators.entries()) {
    requireSeparator(`train.separators[${k}]`, separator, { separation: false })
    if (separator.separation !== undefined)
      requireWithin(`train.separators[${k}].separation`, separator.separation, efficiency)
  }
}

const waterFlow: Accepted = { atLeast: 0, atMost: 1e6, unit: gramPerHour, hint: 'Take it from separatedWater.' }
const liquidRange: Accepted = { above: 0, atMost: 100, unit: litre, hint: 'Give the volume that the liquid may fill.' }
const liquidTemperature: Accepted = {
  atLeast: 273.16,
  atMost: 373.15,
  unit: kelvin,
  hint: 'Below 0 °C the separator holds ice and does not drain.',
}

/** How long a separator may fill. */
export interface DrainInterval {
  readonly interval: Duration
  /** With two standard uncertainties more water. */
  readonly shortest: Duration
}

/**
 * Drain interval of a separator: the running time in which its liquid reaches the volume that it may hold. A separator that is drained
 * late passes liquid on, and with it what the cartridge is there to keep out.
 *
 * @param separator - water drained, from `separatedWater`; volume of liquid that it may hold, m³; its temperature, K, 273.16 to 373 K
 * @returns running time, s; infinite where no water separates
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, balance of water
 * @example
 * const water = { value: measure(33, gramPerHour), standardUncertainty: measure(0.6, gramPerHour) }
 * const { interval } = drainInterval({ water, liquidVolume: measure(10, millilitre), temperature: temperatureOf(30, celsius) })
 * inUnit(interval, minute).toFixed(0) // => '18'
 */
export function drainInterval(separator: {
  readonly water: WaterFlow
  readonly liquidVolume: Volume
  readonly temperature: Temperature
}): DrainInterval {
  requireKeys('separator', separator, { water: true, liquidVolume: true, temperature: true })
  requireKeys('separator.water', separator.water, { value: true, standardUncertainty: true })
  const { water, liquidVolume, temperature } = separator
  requireWithin('separator.water.value', water.value, waterFlow)
  requireWithin('separator.water.standardUncertainty', water.standardUncertainty, waterFlow)
  requireWithin('separator.liquidVolume', liquidVolume, liquidRange)
  requireWithin('separator.temperature', temperature, liquidTemperature)
  const mass = liquidVolume * saturatedWaterDensity(temperature)
  return {
    interval: (mass / (water.value + 0)) as Duration, // -0 + 0 is 0,
    shortest: (mass / (water.value + 2 * water.standardUncertainty)) as Duration,
  }
}
