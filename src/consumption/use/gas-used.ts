import { type GasContents, molarMass } from '../../gas-law/index.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import type { AbsolutePressure, Amount, Duration, GaugePressure, Mass, PressureVolume } from '../../units/index.ts'
import { amountIn, type GasOptions, type GasQuantity, requireGasOptions } from '../gas/vessel-gas.ts'
import { pressureHolding } from '../gas/vessel-pressure.ts'
import { type BreathedDive, requireDive, stretchesOf } from './breathed-dive.ts'
import { constantTemperature, drawdownOf, mixtureOf, type RunOut } from './drawdown.ts'

/** What a dive takes from one cylinder. */
export interface CylinderUse {
  /** Down to the residual pressure and no further. */
  readonly used: GasQuantity
  /** Absolute pressure left, at the temperature of the contents. */
  readonly pressureLeft: AbsolutePressure
  /** The same on the gauge, where the contents were stated by gauge pressure. */
  readonly gaugePressureLeft?: GaugePressure
  /** When the cylinder is used up before its last breath of the dive; absent where it lasts. */
  readonly runsOut?: RunOut
}

/** What a dive takes from its cylinders. */
export interface DiveUse<Name extends string> {
  readonly cylinders: Readonly<Record<Name, CylinderUse>>
  /** The first cylinder to be used up; absent where all last. */
  readonly runsOut?: { readonly cylinder: Name; readonly at: Duration }
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/**
 * Gas that a dive takes from each of its cylinders, and the pressure left. A cylinder is breathed down to its residual pressure, never
 * below the pressure around the diver; a dive that needs more says from which cylinder, from which moment on and how much. What is planned
 * after that moment is not counted as breathed.
 *
 * @param dive - profile; periods of breathing; cylinders by name, each with its residual pressure: absolute, Pa, at least the highest
 *   pressure at which it is breathed, or `{ aboveAmbient }`, what the stage needs above the pressure around the diver, Pa, 0 to 100 bar;
 *   temperature of the gas as it is breathed, K
 * @param options - `gas: 'ideal'` to leave out compressibility, in the cylinder and where it is breathed
 * @returns use and pressure left by the names of the cylinders, and the first to run out
 * @throws LitrebarError `range` for a residual pressure below the pressure around the diver; `input` for periods that are out of order
 *   or name no cylinder
 * @source litrebar-derivation; gerg-2008, density
 * @example
 * const contents = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   pressure: absolute(200, bar),
 *   temperature: temperatureOf(10, celsius),
 *   mixture: dryAir,
 * }
 * const dive = {
 *   profile: steadyProfile(absolute(3, bar), measure(40, minute)),
 *   breathing: [{ from: measure(0, minute), respiratoryMinuteVolume: measure(15, litrePerMinute), cylinder: 'back' }],
 *   cylinders: { back: { contents, residualPressure: { aboveAmbient: difference(10, bar) } } },
 *   breathingGasTemperature: temperatureOf(10, celsius),
 * }
 * inUnit(gasUsed(dive).cylinders.back.pressureLeft, bar).toFixed(1) // => '45.8'
 * const longer = { ...dive, profile: steadyProfile(absolute(3, bar), measure(60, minute)) }
 * const { runsOut } = gasUsed(longer)
 * runsOut === undefined ? 'lasts' : inUnit(runsOut.at, minute).toFixed(1) // => '48.9'
 */
export function gasUsed<Name extends string>(dive: BreathedDive<Name>, options: GasOptions = {}): DiveUse<Name> {
  requireDive(dive)
  requireGasOptions(options)
  const stretches = stretchesOf(dive)
  const names = Object.keys(dive.cylinders) as Name[]
  const uses = names.map((name): [Name, CylinderUse] => {
    const { contents } = dive.cylinders[name]
    const drawn = drawdownOf(dive, name, stretches, options, constantTemperature(contents.temperature))
    const left = pressureHolding(amountIn(contents, options) - drawn.amount, contents, options)
    return [
      name,
      {
        used: {
          amount: drawn.amount as Amount,
          mass: (drawn.amount * molarMass(mixtureOf(dive, name))) as Mass,
          pressureVolume: drawn.pressureVolume as PressureVolume,
        },
        pressureLeft: left,
        ...gaugeOf(contents, left),
        ...(drawn.runsOut === undefined ? {} : { runsOut: drawn.runsOut }),
      },
    ]
  })
  return {
    cylinders: Object.fromEntries(uses) as Record<Name, CylinderUse>,
    ...firstToRunOut(uses.map(([cylinder, { runsOut }]) => ({ cylinder, runsOut }))),
    cautions: ['reserve', 'always'],
    sources: ['litrebar-derivation', 'gerg-2008'],
  }
}

function gaugeOf(contents: GasContents, pressure: AbsolutePressure): { readonly gaugePressureLeft?: GaugePressure } {
  if (contents.gaugePressure === undefined) return {}
  return { gaugePressureLeft: (pressure - contents.ambientPressure) as GaugePressure }
}

/** The cylinder that is used up first, if one is. */
export function firstToRunOut<Name extends string>(
  cylinders: readonly { readonly cylinder: Name; readonly runsOut: RunOut | undefined }[],
): { readonly runsOut?: { readonly cylinder: Name; readonly at: Duration } } {
  let found: { readonly cylinder: Name; readonly at: Duration } | undefined
  for (const { cylinder, runsOut } of cylinders) {
    if (runsOut !== undefined && !(found !== undefined && found.at <= runsOut.at)) found = { cylinder, at: runsOut.at }
  }
  return found === undefined ? {} : { runsOut: found }
}
