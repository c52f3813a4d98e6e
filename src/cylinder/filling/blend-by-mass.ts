import { requireKeys } from '../../errors/index.ts'
import { type GasModelOption, type Mixture, molarMass } from '../../gas-law/index.ts'
import type { CautionId, Reason } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  gram,
  kilogram,
  type Mass,
  type MoleFraction,
  requireWithin,
} from '../../units/index.ts'
import { type BlendOrder, planBlend } from './plan-blend.ts'

/** One gas of a fill by mass. */
export interface MassStep {
  readonly mixture: Mixture
  readonly amount: Amount
  /** What goes in of this gas. */
  readonly mass: Mass
  /** What the scale shows at the end of the step, if it showed nothing at the start of the first. */
  readonly reading: Mass
  /** What the gauge will show once the gas has settled, absolute: a check, not the measure. */
  readonly pressure: AbsolutePressure
  readonly contents: Mixture
}

/** A fill by mass, and how well a scale of a stated resolution fixes its mixture. */
export interface MassBlend {
  readonly steps: readonly MassStep[]
  readonly mixture: Mixture
  /** Standard uncertainties from the resolution of the scale alone. */
  readonly oxygenUncertainty: MoleFraction
  readonly heliumUncertainty: MoleFraction
  readonly notes: readonly Reason[]
  readonly cautions: readonly CautionId[]
}

export interface MassBlendOptions extends GasModelOption {
  /** The step of the scale: what its display counts in. */
  readonly resolution: Mass
}

const resolutionRange: Accepted = {
  above: 0,
  atMost: 1000,
  unit: gram,
  hint: 'Give the resolution of the scale’s display.',
}

/**
 * A fill by mass: what the scale has to show after each gas, and the uncertainty that its resolution leaves in the mixture.
 *
 * The masses need no settled temperature, which is why a scale does better than a gauge for a gas of which little goes in; how much gas
 * reaches the wanted pressure still hangs on the equation of state. Each reading counts as uniform over one step of the display, and one
 * reading ends a gas and begins the next. Drift of the scale, forces of the hose and buoyancy of the air are not in it.
 * A fill that would need draining first is refused: drain, then ask again.
 *
 * @param order - as for `planBlend`
 * @param options - resolution of the scale, kg, up to 1 kg; `gas: 'ideal'` to show the difference
 * @returns masses and scale readings, kg, the mixture, and standard uncertainties of its oxygen and helium fractions
 * @throws LitrebarError as `planBlend`; `range` for the resolution, also where all the gas weighs less than one step of it
 * @source litrebar-derivation, balance of oxygen, helium and amount; gum-2008, 4.3.7 (a reading of a digital scale)
 * @example
 * const blend = blendByMass(
 *   {
 *     internalVolume: internalVolumeOf(12, litre),
 *     start: { mixture: dryAir, pressure: absolute(1, bar) },
 *     target: { oxygen: fractionOf(0.32), pressure: absolute(201, bar) },
 *     gases: [pureGas('oxygen'), dryAir],
 *     temperature: temperatureOf(20, celsius),
 *   },
 *   { resolution: measure(10, gram) },
 * )
 * const shown = blend.steps.map(({ reading }) => inUnit(reading, gram).toFixed(0)) // => ['436', '2851']
 * const points = (100 * blend.oxygenUncertainty).toFixed(2) // => '0.10'
 */
export function blendByMass(order: BlendOrder, options: MassBlendOptions): MassBlend {
  requireKeys('options', options, { resolution: true, gas: false })
  const { resolution, ...model } = options
  requireWithin('options.resolution', resolution, resolutionRange)
  const plan = planBlend(order, model)
  let reading = 0
  const steps = plan.steps.map(({ mixture, amount, pressure, contents }): MassStep => {
    const mass = amount * molarMass(mixture)
    reading += mass
    return { mixture, amount, mass: mass as Mass, reading: reading as Mass, pressure, contents }
  })
  if (steps.length > 0) {
    const hint = 'All the gas together weighs less than one step of the scale: use a finer scale.'
    requireWithin('options.resolution', resolution, { above: 0, atMost: reading, unit: kilogram, hint })
  }
  const uncertaintyOf = (gas: 'oxygen' | 'helium'): MoleFraction => {
    // How the fraction follows the mass of each gas; a reading ends one gas and begins the next.
    const slopes = steps.map(({ mixture }) => (mixture[gas] - plan.mixture[gas]) / (plan.amount * molarMass(mixture)))
    const byReading = [...slopes, 0].map((slope, k) => (slopes[k - 1] ?? 0) - slope)
    return ((Math.hypot(...byReading) * resolution) / Math.sqrt(12)) as MoleFraction
  }
  return {
    steps,
    mixture: plan.mixture,
    oxygenUncertainty: uncertaintyOf('oxygen'),
    heliumUncertainty: uncertaintyOf('helium'),
    notes: plan.notes,
    cautions: plan.cautions,
  }
}
