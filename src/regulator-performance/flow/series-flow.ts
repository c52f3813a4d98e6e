import { LitrebarError, requireKeys, requireText, requireWord } from '../../errors/index.ts'
import { type Mixture, molarMass, viscosity } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type MassFlow,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { criticalFlow, realCriticalFlow } from './critical-flow.ts'
import { type Hose, type HoseGas, hoseFlow } from './hose.ts'
import {
  flowFactor,
  idealRatioOfHeatCapacities,
  massFluxScale,
  type Orifice,
  requireGasModel,
  requireOrifice,
} from './orifice.ts'

/** One part of the way of the gas, by the name that results call it by. */
export type FlowElement =
  /** A valve, a filter or a seat that stands open. */
  | { readonly kind: 'orifice'; readonly name: string; readonly orifice: Orifice }
  /** A stage: an orifice that throttles down to its outlet pressure while it can. */
  | {
      readonly kind: 'regulated orifice'
      readonly name: string
      readonly orifice: Orifice
      /** Absolute, that it holds behind it. */
      readonly outletPressure: AbsolutePressure
    }
  | { readonly kind: 'hose'; readonly name: string; readonly hose: Hose }

/** What drives the gas through a series of elements. */
export interface SeriesState {
  readonly mixture: Mixture
  /** Before the first element, absolute. */
  readonly supplyPressure: AbsolutePressure
  /** Before each element: that of the water, which the gas takes between them. */
  readonly temperature: Temperature
  /** Behind the last element, absolute. */
  readonly downstreamPressure: AbsolutePressure
}

/** The most that a series of elements passes. */
export interface SeriesFlow {
  readonly maximumMassFlow: MassFlow
  /** The element that is choked there, or that takes the largest share of the pressure ratio where none is. */
  readonly limitedBy: string
  readonly choked: boolean
  /** At the largest flow, before and behind each element, absolute. */
  readonly elements: readonly {
    readonly name: string
    readonly before: AbsolutePressure
    readonly behind: AbsolutePressure
  }[]
  readonly cautions: readonly CautionId[]
}

const pressure: Accepted = { above: 0, atMost: 500, unit: bar, hint: 'Give the absolute pressure.' }
const resolution = 1e-10
const mostSteps = 200

/**
 * Flow through elements in series, from the cylinder to the mouth: the largest mass flow that all of them pass, and the element that limits it.
 * One mass flow is marched from the supply downstream. The gas takes the temperature of the water between the elements, which is the most
 * warming there can be; a colder gas is denser and passes at a smaller drop.
 *
 * @param elements - in the order in which the gas meets them, at least one
 * @param state - mixture; supply and downstream pressure, absolute, Pa; temperature, K
 * @param options - `gas: 'ideal'` for ideal orifices
 * @returns largest mass flow, kg/s, what limits it, and the pressures on the way
 * @throws LitrebarError `input` for no element; `range` for a value out of range, a downstream pressure that is not below the supply, or an
 *   outlet pressure that is not above it; as `gasState`
 * @source litrebar-derivation, one mass flow through all elements
 * @example
 * const state = {
 *   mixture: dryAir,
 *   supplyPressure: absolute(50, bar),
 *   temperature: temperatureOf(10, celsius),
 *   downstreamPressure: absolute(6, bar),
 * }
 * const opening = (area: number) => ({ area: measure(area, squareMillimetre), dischargeCoefficient: 0.8 as Fraction })
 * const flow = seriesFlow(
 *   [
 *     { kind: 'orifice', name: 'cylinder valve', orifice: opening(12) },
 *     { kind: 'regulated orifice', name: 'first stage', orifice: opening(1.8), outletPressure: absolute(15.5, bar) },
 *     { kind: 'hose', name: 'hose', hose: { bore: measure(6, millimetre), length: measure(0.7, metre) } },
 *     { kind: 'orifice', name: 'second stage', orifice: opening(24) },
 *   ],
 *   state,
 * )
 * flow.limitedBy // => 'first stage'
 * inUnit(flow.maximumMassFlow, gramPerSecond).toFixed(1) // => '17.6'
 */
export function seriesFlow(
  elements: readonly FlowElement[],
  state: SeriesState,
  options: { readonly gas?: 'real' | 'ideal' } = {},
): SeriesFlow {
  requireSeries(elements, state)
  requireGasModel(options)
  const way = wayOf(elements, state, options.gas ?? 'real')
  const steps = mostPassed(way, state)
  const reached = march(way, state, steps.flow).pressures
  const stopped = march(way, state, steps.tooMuch)
  const elementsPassed = elements.map(({ name }, index) => ({
    name,
    before: reached[index] as AbsolutePressure,
    behind: reached[index + 1] as AbsolutePressure,
  }))
  const choked = stopped.chokedAt !== undefined
  const limiting = stopped.chokedAt ?? steepest(elements, reached)
  return {
    maximumMassFlow: steps.flow as MassFlow,
    limitedBy: (elements[limiting] as FlowElement).name,
    choked,
    elements: elementsPassed,
    cautions: ['regulator'],
  }
}

/** Pressure behind an element for a mass flow from a pressure before it; undefined where it chokes. */
type Passage = (before: number, massFlow: number) => number | undefined

function wayOf(elements: readonly FlowElement[], state: SeriesState, gas: 'real' | 'ideal'): readonly Passage[] {
  const { mixture, temperature } = state
  const k = idealRatioOfHeatCapacities(mixture, temperature)
  const ideal = criticalFlow(k)
  const throughOrifice =
    (orifice: Orifice): Passage =>
    (before, massFlow) => {
      const drive = massFluxScale(mixture, before, temperature) * orifice.dischargeCoefficient * orifice.area
      const critical =
        gas === 'ideal' ? ideal : realCriticalFlow(mixture, { pressure: before as AbsolutePressure, temperature })
      const { criticalFlowFactor: factor, criticalPressureRatio: lowest } = critical
      const wanted = massFlow / drive
      if (wanted > factor) return undefined
      return before * falling(lowest, 1, (ratio) => flowFactor(ratio, factor, lowest, ideal, k) - wanted)
    }
  const passage = (element: FlowElement): Passage => {
    switch (element.kind) {
      case 'orifice':
        return throughOrifice(element.orifice)
      case 'regulated orifice': {
        const open = throughOrifice(element.orifice)
        return (before, massFlow) => {
          const most = open(before, massFlow)
          return most === undefined ? undefined : Math.min(element.outletPressure, most)
        }
      }
      case 'hose': {
        const mass = molarMass(mixture)
        return (before, massFlow) => {
          const upstreamPressure = before as AbsolutePressure
          const gasBefore: HoseGas = {
            molarMass: mass,
            temperature,
            viscosity: viscosity(mixture, { pressure: upstreamPressure, temperature }),
          }
          const passed = hoseFlow(element.hose, gasBefore, { upstreamPressure, massFlow: massFlow as MassFlow })
          return passed.kind === 'delivers' ? passed.downstreamPressure : undefined
        }
      }
    }
  }
  return elements.map(passage)
}

interface March {
  /** Before the first element, then behind each. */
  readonly pressures: readonly number[]
  readonly chokedAt?: number
}

function march(way: readonly Passage[], { supplyPressure }: SeriesState, massFlow: number): March {
  const pressures: number[] = [supplyPressure]
  for (const [index, passage] of way.entries()) {
    const behind = passage(pressures[index] as number, massFlow)
    if (behind === undefined) return { pressures, chokedAt: index }
    pressures.push(behind)
  }
  return { pressures }
}

/** The largest flow that arrives at the downstream pressure or above, and one a hair above it. */
function mostPassed(way: readonly Passage[], state: SeriesState): { readonly flow: number; readonly tooMuch: number } {
  const arrives = (massFlow: number): boolean => {
    const { pressures, chokedAt } = march(way, state, massFlow)
    return chokedAt === undefined && (pressures.at(-1) as number) >= state.downstreamPressure
  }
  let flow = 0
  let tooMuch = 1e-6
  for (let step = 0; arrives(tooMuch); step++) {
    flow = tooMuch
    tooMuch *= 2
    if (step > mostSteps) throw notConverged()
  }
  for (let step = 0; tooMuch - flow > resolution * tooMuch; step++) {
    const middle = (flow + tooMuch) / 2
    if (arrives(middle)) flow = middle
    else tooMuch = middle
    if (step > mostSteps) throw notConverged()
  }
  return { flow, tooMuch }
}

/** The element, no regulating one that still regulates, across which the pressure falls by the largest factor. */
function steepest(elements: readonly FlowElement[], pressures: readonly number[]): number {
  const factor = (index: number): number => {
    const element = elements[index] as FlowElement
    const behind = pressures[index + 1] as number
    const regulates = element.kind === 'regulated orifice' && behind >= element.outletPressure
    return regulates ? 1 : (pressures[index] as number) / behind
  }
  return elements.map((_, index) => index).reduce((most, index) => (factor(index) > factor(most) ? index : most), 0)
}

/** Where a falling function passes zero, to the last bits. */
function falling(from: number, to: number, f: (x: number) => number): number {
  let low = from
  let high = to
  for (let step = 0; step < mostSteps && high - low > 1e-14; step++) {
    const middle = (low + high) / 2
    if (f(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

const elementKeys: Readonly<Record<FlowElement['kind'], Readonly<Record<string, boolean>>>> = {
  orifice: { kind: true, name: true, orifice: true },
  'regulated orifice': { kind: true, name: true, orifice: true, outletPressure: true },
  hose: { kind: true, name: true, hose: true },
}

function requireSeries(elements: readonly FlowElement[], state: SeriesState): void {
  requireSome(elements)
  requireKeys('state', state, { mixture: true, supplyPressure: true, temperature: true, downstreamPressure: true })
  requireWithin('state.supplyPressure', state.supplyPressure, pressure)
  requireWithin('state.downstreamPressure', state.downstreamPressure, {
    above: 0,
    below: state.supplyPressure / bar.factor,
    unit: bar,
    hint: 'Gas flows towards the lower pressure: exchange the two.',
  })
  elements.forEach((element, index) => {
    const path = `elements[${index}]`
    requireWord(`${path}.kind`, (element as FlowElement | undefined)?.kind, Object.keys(elementKeys))
    requireKeys(path, element, elementKeys[element.kind])
    requireText(`${path}.name`, element.name, 'Name the element.')
    if (element.kind === 'hose') return
    requireOrifice(element.orifice)
    if (element.kind === 'orifice') return
    requireWithin(`${path}.outletPressure`, element.outletPressure, {
      above: state.downstreamPressure / bar.factor,
      atMost: 500,
      unit: bar,
      hint: 'Add the ambient pressure to the intermediate pressure.',
    })
  })
}

function requireSome(elements: readonly FlowElement[]): void {
  if (Array.isArray(elements) && elements.length > 0) return
  throw new LitrebarError({
    code: 'input',
    argument: 'elements',
    value: 'no element',
    expected: 'at least one',
    hint: 'Name what the gas flows through, from the cylinder on.',
  })
}

function notConverged(): LitrebarError {
  return new LitrebarError({
    code: 'not-converged',
    argument: 'elements',
    value: 'a flow that does not end',
    expected: 'an element that limits it',
    hint: 'Check the areas and bores.',
  })
}
