import { ascentReserve, type Endurance, endurance, type Reserve } from '../../consumption/index.ts'
import {
  type BlendPlan,
  nextRequalification,
  planBlend,
  type Requalification,
  readStamp,
  type Stamp,
} from '../../cylinder/index.ts'
import { isLitrebarError } from '../../errors/index.ts'
import { dryAir, type Mixture, pureGas } from '../../gas-law/index.ts'
import { type MinimumSupplyPressure, minimumSupplyPressure } from '../../regulator-performance/index.ts'
import {
  type AbsolutePressure,
  type Area,
  bar,
  type Density,
  type Depth,
  type Duration,
  type Fraction,
  type InternalVolume,
  type MoleFraction,
  type PressureDifference,
  type Speed,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import { type BlockState, codeOf } from './block-state.ts'
import type { MixtureGroup } from './mixture-groups.ts'
import type { RecordCalculation, RowRecord } from './record-calculation.table.ts'
import { fieldOf, type RowBlock } from './row-block.ts'
import type { RowInputName } from './row-input.table.ts'
import { columnNamed } from './row-inputs.ts'
import type { ReadyPlan } from './row-plan.ts'

/** Inputs of a block by name, SI, pressures absolute. */
export type InputColumns = ReadonlyMap<RowInputName, Float64Array>

/** A result that receives a value, SI, or words by row. */
export interface RecordResult {
  readonly calculation: RecordCalculation
  readonly out: Float64Array | string[]
}

/**
 * Results that are computed row by row. A row for which a function throws has failed.
 *
 * @param ready - the plan
 * @param block - the rows
 * @param inputs - their quantities
 * @param groups - which row has which mixture; empty for a plan without one
 * @param results - what is computed
 * @param state - knows the rows that have failed, and receives those that do
 */
export function recordColumns(
  ready: ReadyPlan,
  block: RowBlock,
  inputs: InputColumns,
  groups: readonly MixtureGroup[],
  results: readonly RecordResult[],
  state: BlockState,
): void {
  const mixtureOf = mixturesByRow(groups, block.count)
  const stamps = ready.stamp === undefined ? undefined : columnNamed(ready.stamp, block)
  for (let row = 0; row < block.count; row++) {
    if (state.code[row] !== 0) continue
    const record = recordOf(
      ready,
      inputs,
      row,
      mixtureOf(row),
      stamps === undefined ? '' : String(fieldOf(stamps, row)),
    )
    try {
      for (const { calculation, out } of results) out[row] = calculation.of(record)
    } catch (thrown) {
      if (!isLitrebarError(thrown)) throw thrown
      state.fail(row, codeOf(thrown), thrown.message)
    }
  }
}

function mixturesByRow(groups: readonly MixtureGroup[], count: number): (row: number) => Mixture | undefined {
  const [first] = groups
  if (first === undefined || first.rows === undefined) return () => first?.met.mixture
  const places = new Int32Array(count).fill(-1)
  groups.forEach(({ rows }, place) => {
    for (const row of rows ?? []) places[row] = place
  })
  return (row) => groups[places[row] as number]?.met.mixture
}

function recordOf(
  { gas, ruleSet, asOf }: ReadyPlan,
  inputs: InputColumns,
  row: number,
  mixture: Mixture | undefined,
  text: string,
): RowRecord {
  const cautions = new Set<string>()
  const noted = <Result extends { readonly cautions: readonly string[] }>(result: Result): Result => {
    for (const id of result.cautions) cautions.add(id)
    return result
  }
  const number = (name: RowInputName): number => inputs.get(name)?.[row] ?? Number.NaN
  const pressure = (name: RowInputName): AbsolutePressure => number(name) as AbsolutePressure
  const internalVolume = (): InternalVolume => number('internalVolume') as InternalVolume
  const temperature = (): Temperature => number('temperature') as Temperature
  const difference = (name: RowInputName): PressureDifference => number(name) as PressureDifference
  const stamp = once((): Stamp => readStamp(text, asOf === undefined ? {} : { asOf }))
  return {
    number,
    stamp,
    requalification: once(
      (): Requalification => noted(nextRequalification(stamp(), { ruleSet: needed(ruleSet), asOf: needed(asOf) })),
    ),
    blend: once((): BlendPlan => {
      const helium = number('targetHelium') as MoleFraction
      const gases = [...(helium > 0 ? [pureGas('helium')] : []), pureGas('oxygen'), dryAir]
      const target = { oxygen: number('targetOxygen') as MoleFraction, helium, pressure: pressure('targetPressure') }
      const start = { mixture: needed(mixture), pressure: pressure('pressure') }
      return noted(
        planBlend({ internalVolume: internalVolume(), start, target, gases, temperature: temperature() }, { gas }),
      )
    }),
    endurance: once((): Endurance => {
      const contents = {
        internalVolume: internalVolume(),
        pressure: pressure('pressure'),
        temperature: temperature(),
        mixture: needed(mixture),
      }
      const supply = {
        cylinders: [{ contents, residualPressure: pressure('residualPressure') }],
        respiratoryMinuteVolume: number('respiratoryMinuteVolume') as VolumeFlow,
        ambientPressure: pressure('pressureAtDepth'),
        breathingGasTemperature: number('breathingGasTemperature') as Temperature,
      }
      return noted(endurance(supply, { gas }))
    }),
    reserve: once((): Reserve => {
      const ascent = {
        depth: number('depth') as Depth,
        water: { surfacePressure: pressure('surfacePressure'), density: number('waterDensity') as Density },
        breathers: [number('respiratoryMinuteVolume') as VolumeFlow],
        stressFactor: number('stressFactor'),
        timeAtDepth: number('timeAtDepth') as Duration,
        ascentRate: number('ascentRate') as Speed,
        stop: { depth: number('stopDepth') as Depth, duration: number('stopDuration') as Duration },
      }
      const cylinder = {
        internalVolume: internalVolume(),
        temperature: temperature(),
        mixture: needed(mixture),
        residualPressure: pressure('residualPressure'),
        maximumPermissibleError: difference('maximumPermissibleError'),
      }
      // what is shown of it is rounded: rows have it unrounded
      return noted(ascentReserve(ascent, cylinder, { gas, show: { unit: bar, step: 1 } }))
    }),
    supply: once((): MinimumSupplyPressure => {
      const demand = {
        orifice: {
          area: number('orificeArea') as Area,
          dischargeCoefficient: number('dischargeCoefficient') as Fraction,
        },
        mixture: needed(mixture),
        supplyTemperature: temperature(),
        breathingGasTemperature: number('breathingGasTemperature') as Temperature,
        ambientPressure: pressure('pressureAtDepth'),
        peakFlow: number('peakFlow') as VolumeFlow,
        intermediatePressure: difference('intermediatePressure'),
        regulatingMargin: difference('regulatingMargin'),
      }
      return noted(minimumSupplyPressure(demand, { gas }))
    }),
    cautions: () => [...cautions],
  }
}

function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}

function needed<Value>(value: Value | undefined): Value {
  if (value === undefined) throw new Error('the plan has been checked')
  return value
}
