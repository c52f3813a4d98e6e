import type { SourceId } from '../../references/index.ts'

/** A size of cylinder as the trade names it. Internal volume and pressure as stated, in the units stated. */
export interface CylinderSize {
  readonly name: string
  readonly metal: 'steel' | 'aluminium' | 'composite'
  readonly internalVolume: { readonly value: number; readonly unit: 'litre' }
  readonly servicePressure: { readonly value: number; readonly unit: 'bar' | 'psi' }
  /** The free gas that the trade rounds to, where it names the size so. */
  readonly trade?: { readonly value: number; readonly unit: 'cubicFoot' }
  readonly source: SourceId
}

const source = 'common-practice'

/** Sizes met in the trade. Actual cylinders differ by some per cent in volume: the marking of each one counts. */
export const cylinderSizes: readonly CylinderSize[] = [
  {
    name: 'aluminium, 40 cubic foot class',
    metal: 'aluminium',
    internalVolume: { value: 5.7, unit: 'litre' },
    servicePressure: { value: 3000, unit: 'psi' },
    trade: { value: 40, unit: 'cubicFoot' },
    source,
  },
  {
    name: 'aluminium, 80 cubic foot class',
    metal: 'aluminium',
    internalVolume: { value: 11.1, unit: 'litre' },
    servicePressure: { value: 3000, unit: 'psi' },
    trade: { value: 80, unit: 'cubicFoot' },
    source,
  },
  {
    name: 'steel, 100 cubic foot class',
    metal: 'steel',
    internalVolume: { value: 12.9, unit: 'litre' },
    servicePressure: { value: 3442, unit: 'psi' },
    trade: { value: 100, unit: 'cubicFoot' },
    source,
  },
  {
    name: '3 L, 232 bar',
    metal: 'steel',
    internalVolume: { value: 3, unit: 'litre' },
    servicePressure: { value: 232, unit: 'bar' },
    source,
  },
  {
    name: '7 L, 300 bar',
    metal: 'steel',
    internalVolume: { value: 7, unit: 'litre' },
    servicePressure: { value: 300, unit: 'bar' },
    source,
  },
  {
    name: '10 L, 200 bar',
    metal: 'steel',
    internalVolume: { value: 10, unit: 'litre' },
    servicePressure: { value: 200, unit: 'bar' },
    source,
  },
  {
    name: '10 L, 300 bar',
    metal: 'steel',
    internalVolume: { value: 10, unit: 'litre' },
    servicePressure: { value: 300, unit: 'bar' },
    source,
  },
  {
    name: '12 L, 232 bar',
    metal: 'steel',
    internalVolume: { value: 12, unit: 'litre' },
    servicePressure: { value: 232, unit: 'bar' },
    source,
  },
  {
    name: '15 L, 232 bar',
    metal: 'steel',
    internalVolume: { value: 15, unit: 'litre' },
    servicePressure: { value: 232, unit: 'bar' },
    source,
  },
  {
    name: '50 L, 300 bar, bank',
    metal: 'steel',
    internalVolume: { value: 50, unit: 'litre' },
    servicePressure: { value: 300, unit: 'bar' },
    source,
  },
]
