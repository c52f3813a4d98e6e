import { LitrebarError } from '../errors/index.ts'

/** A straight fit: coefficients with what the scatter about it says of them. */
export interface Fit {
  readonly coefficients: readonly number[]
  /** Inverse of the normal matrix: times the variance of a value, the covariance of the coefficients. */
  readonly inverse: readonly (readonly number[])[]
  /** Standard deviation of the values about the fit; 0 where there are no degrees of freedom left to tell. */
  readonly scatter: number
  readonly degreesOfFreedom: number
}

/**
 * Least squares for values that are linear in a few coefficients, by the normal equations of columns scaled to one size.
 *
 * @param rows - one row of the design matrix per value
 * @param values - what was measured
 * @param argument - the name of the input, for the error
 */
export function leastSquares(rows: readonly (readonly number[])[], values: readonly number[], argument: string): Fit {
  const normal = new NormalEquations(rows[0]?.length ?? 0)
  rows.forEach((row, index) => {
    normal.add(row, values[index] as number)
  })
  return normal.solve(argument)
}

/** Normal equations gathered row by row, for logs of any length. */
export class NormalEquations {
  private readonly matrix: Float64Array
  private readonly right: Float64Array
  private squares = 0
  private count = 0
  private readonly size: number

  constructor(size: number) {
    this.size = size
    this.matrix = new Float64Array(size * size)
    this.right = new Float64Array(size)
  }

  add(row: ArrayLike<number>, value: number): void {
    const { size, matrix, right } = this
    for (let i = 0; i < size; i++) {
      const a = row[i] as number
      right[i] = (right[i] as number) + a * value
      for (let j = 0; j <= i; j++) matrix[i * size + j] = (matrix[i * size + j] as number) + a * (row[j] as number)
    }
    this.squares += value * value
    this.count++
  }

  solve(argument: string): Fit {
    const { size } = this
    const scale = Array.from({ length: size }, (_, i) => Math.sqrt(this.at(i, i)))
    const inverse = this.scaledInverse(scale, argument)
    const coefficients = inverse.map(
      (row, i) =>
        row.reduce((sum, entry, j) => sum + (entry * (this.right[j] as number)) / (scale[j] as number), 0) /
        (scale[i] as number),
    )
    const explained = coefficients.reduce((sum, c, i) => sum + c * (this.right[i] as number), 0)
    const degreesOfFreedom = this.count - size
    const rest = Math.max(0, this.squares - explained)
    return {
      coefficients,
      inverse: inverse.map((row, i) => row.map((entry, j) => entry / ((scale[i] as number) * (scale[j] as number)))),
      scatter: degreesOfFreedom > 0 ? Math.sqrt(rest / degreesOfFreedom) : 0,
      degreesOfFreedom,
    }
  }

  private at(i: number, j: number): number {
    return this.matrix[Math.max(i, j) * this.size + Math.min(i, j)] as number
  }

  // Gauss and Jordan with pivots on the diagonal: the scaled matrix is symmetric and positive definite.
  private scaledInverse(scale: readonly number[], argument: string): number[][] {
    const { size } = this
    const a = scale.map((si, i) => scale.map((sj, j) => this.at(i, j) / (si * sj)))
    const inverse = scale.map((_, i) => scale.map((__, j) => (i === j ? 1 : 0)))
    for (let pivot = 0; pivot < size; pivot++) {
      const row = a[pivot] as number[]
      const inverseRow = inverse[pivot] as number[]
      const by = row[pivot] as number
      if (!(by > 1e-12)) throw notSeparable(argument)
      for (let j = 0; j < size; j++) {
        row[j] = (row[j] as number) / by
        inverseRow[j] = (inverseRow[j] as number) / by
      }
      for (let i = 0; i < size; i++) {
        if (i === pivot) continue
        const other = a[i] as number[]
        const inverseOther = inverse[i] as number[]
        const times = other[pivot] as number
        for (let j = 0; j < size; j++) {
          other[j] = (other[j] as number) - times * (row[j] as number)
          inverseOther[j] = (inverseOther[j] as number) - times * (inverseRow[j] as number)
        }
      }
    }
    return inverse
  }
}

function notSeparable(argument: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value: 'settings that do not differ enough',
    expected: 'at least as many distinct settings as parts to find',
    hint: 'Measure at settings further apart.',
  })
}
