import { requireKeys } from '../../errors/index.ts'
import {
  type Accepted,
  type EnergyPerVolume,
  type FlowResistance,
  kilopascal,
  kilopascalSecondPerLitre,
  kilopascalSecondSquaredPerLitreSquared,
  litrePerSecond,
  one,
  type PressureDifference,
  type QuadraticFlowResistance,
  requireWithin,
  type VolumeFlow,
} from '../../units/index.ts'

/** What resists flow in one half of a breath: `cracking + laminar × flow + turbulent × flow²`. */
export interface ResistanceParts {
  /** Pressure that any flow costs, however small. */
  readonly crackingPressure: PressureDifference
  readonly laminarResistance: FlowResistance
  readonly turbulentResistance: QuadraticFlowResistance
}

/** Work and peaks of a sinusoidal breath against stated resistances. */
export interface ResistiveWork {
  readonly workOfBreathingPerLitre: EnergyPerVolume
  readonly inhalationPerLitre: EnergyPerVolume
  readonly exhalationPerLitre: EnergyPerVolume
  /** Lowest pressure, on inhalation; negative. */
  readonly inhalationPressure: PressureDifference
  readonly exhalationPressure: PressureDifference
}

/** What the shape of half a loop says of its resistance. */
export interface LoopShape {
  /** Twice the work per litre of the half over its peak pressure. */
  readonly shapeFactor: number
  /** Exponent of flow that gives this factor; undefined where none does (a factor above 2). */
  readonly flowExponent: number | undefined
  /** The nearest of the pure regimes; `undetermined` for a factor above 2.1 or below 1. */
  readonly regime: 'cracking' | 'laminar' | 'turbulent' | 'undetermined'
}

const peak: Accepted = {
  above: 0,
  atMost: 100,
  unit: kilopascal,
  hint: 'State the size of the peak, without its sign.',
}
const exponent: Accepted = {
  atLeast: 0,
  atMost: 100,
  unit: one,
  hint: '0 is a cracking pressure, 1 laminar, 2 turbulent.',
}
const flow: Accepted = {
  above: 0,
  atMost: 100,
  unit: litrePerSecond,
  hint: 'State the peak flow, π times the ventilation.',
}

/**
 * Work of breathing per litre of a resistance that grows with a power of flow, on a sinusoid, from its peak pressure.
 * Half of it falls to each half of the breath. A rectangle (exponent 0) costs 2 peaks, an ellipse (1) π/2, a turbulent loop (2) 4/3.
 *
 * @param peakPressure - size of the peak, Pa, above 0 and at most 100 kPa
 * @param flowExponent - from 0 to 100
 * @returns work per litre of the whole breath, Pa
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * inUnit(powerLawWorkPerLitre(difference(1.2, kilopascal), 1.75), joulePerLitre).toFixed(6) // => '1.659166'
 */
export function powerLawWorkPerLitre(peakPressure: PressureDifference, flowExponent: number): EnergyPerVolume {
  requireWithin('peakPressure', peakPressure, peak)
  requireWithin('flowExponent', flowExponent, exponent)
  return (peakPressure * sineIntegral(flowExponent)) as EnergyPerVolume
}

/**
 * Work and peak pressures of a sinusoidal breath against a cracking pressure, a laminar and a turbulent resistance in each half.
 *
 * @param parts - what resists inhalation and exhalation; a negative part is an assist
 * @param peakFlow - m³/s, above 0 and at most 100 L/s; the same in both halves
 * @returns work per litre and peaks
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * const valve = { crackingPressure: difference(2, millibar), laminarResistance: measure(0.02, kilopascalSecondPerLitre), turbulentResistance: measure(0.06, kilopascalSecondSquaredPerLitreSquared) }
 * const peakFlow = peakInhalationFlow(measure(62.5, litrePerMinute), { shape: 'sinusoid' })
 * inUnit(resistiveWork({ inhalation: valve, exhalation: valve }, peakFlow).workOfBreathingPerLitre, joulePerLitre).toFixed(3) // => '1.360'
 */
export function resistiveWork(
  parts: { readonly inhalation: ResistanceParts; readonly exhalation: ResistanceParts },
  peakFlow: VolumeFlow,
): ResistiveWork {
  requireWithin('peakFlow', peakFlow, flow)
  requireKeys('parts', parts, { inhalation: true, exhalation: true })
  requireParts('parts.inhalation', parts.inhalation)
  requireParts('parts.exhalation', parts.exhalation)
  const inhalation = halfWork(parts.inhalation, peakFlow)
  const exhalation = halfWork(parts.exhalation, peakFlow)
  return {
    workOfBreathingPerLitre: (inhalation + exhalation) as EnergyPerVolume,
    inhalationPerLitre: inhalation as EnergyPerVolume,
    exhalationPerLitre: exhalation as EnergyPerVolume,
    inhalationPressure: -peakOf(parts.inhalation, peakFlow) as PressureDifference,
    exhalationPressure: peakOf(parts.exhalation, peakFlow) as PressureDifference,
  }
}

const anyCracking: Accepted = { unit: kilopascal, hint: 'Give 0 for none.' }
const anyLaminar: Accepted = { unit: kilopascalSecondPerLitre, hint: 'Give 0 for none.' }
const anyTurbulent: Accepted = { unit: kilopascalSecondSquaredPerLitreSquared, hint: 'Give 0 for none.' }

function requireParts(path: string, parts: ResistanceParts): void {
  requireKeys(path, parts, { crackingPressure: true, laminarResistance: true, turbulentResistance: true })
  requireWithin(`${path}.crackingPressure`, parts.crackingPressure, anyCracking)
  requireWithin(`${path}.laminarResistance`, parts.laminarResistance, anyLaminar)
  requireWithin(`${path}.turbulentResistance`, parts.turbulentResistance, anyTurbulent)
}

function halfWork(parts: ResistanceParts, q: number): number {
  const { crackingPressure, laminarResistance, turbulentResistance } = parts
  return crackingPressure + (Math.PI / 4) * laminarResistance * q + (2 / 3) * turbulentResistance * q * q
}

function peakOf({ crackingPressure, laminarResistance, turbulentResistance }: ResistanceParts, q: number): number {
  return crackingPressure + laminarResistance * q + turbulentResistance * q * q
}

/**
 * What the shape of half a loop says: nearly rectangular is a stiff cracking valve, elliptic is laminar, pointed is turbulent.
 * Holds for a sinusoid without elastance; a spike at the opening of the valve hides the regime.
 *
 * @param half - work per litre of the half, Pa, and the size of its peak pressure, Pa, above 0
 * @returns shape factor, the exponent of flow that fits it, and the nearest regime
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * loopShape({ workPerLitre: difference(0.667, kilopascal), peakPressure: difference(1, kilopascal) }).regime // => 'turbulent'
 */
export function loopShape(half: {
  readonly workPerLitre: EnergyPerVolume
  readonly peakPressure: PressureDifference
}): LoopShape {
  requireKeys('half', half, { workPerLitre: true, peakPressure: true })
  requireWithin('half.peakPressure', half.peakPressure, peak)
  requireWithin('half.workPerLitre', half.workPerLitre, { unit: kilopascal, hint: 'State the net work of the half.' })
  const shapeFactor = (2 * half.workPerLitre) / half.peakPressure
  return { shapeFactor, flowExponent: exponentOf(shapeFactor), regime: regimeOf(shapeFactor) }
}

// Half way between the factors of the pure regimes, 2, π/2 and 4/3.
function regimeOf(factor: number): LoopShape['regime'] {
  if (!(factor >= 1 && factor <= 2.1)) return 'undetermined'
  if (factor > (2 + Math.PI / 2) / 2) return 'cracking'
  return factor > (Math.PI / 2 + 4 / 3) / 2 ? 'laminar' : 'turbulent'
}

/** The exponent whose integral is this factor; the integral falls steadily from 2. */
function exponentOf(factor: number): number | undefined {
  if (!(factor <= 2 + 1e-12 && factor >= sineIntegral(exponent.atMost ?? 0))) return undefined
  let low = 0
  let high = exponent.atMost ?? 0
  while (high - low > 1e-12 * (1 + high)) {
    const middle = (low + high) / 2
    if (sineIntegral(middle) > factor) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/**
 * Integral of sin^(n+1) over half a turn, √π Γ(n/2 + 1) / Γ(n/2 + 3/2): by steps of the gamma function's recurrence up to where
 * the series of the ratio in 1/x is exact to the last digits.
 */
function sineIntegral(n: number): number {
  let x = n / 2 + 1
  let steps = 1
  while (x < 40) {
    steps *= (x + 0.5) / x
    x += 1
  }
  const r = 1 / (8 * x)
  const ratio = 1 - r * (1 - r * (1 / 2 + r * (5 / 2 - r * (21 / 8 + r * (399 / 8 - (r * 869) / 16)))))
  return (steps * Math.sqrt(Math.PI / x)) / ratio
}
