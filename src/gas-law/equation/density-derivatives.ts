import { decay } from './exponential.ts'
import type { Equation } from './gerg2008.ts'
import { groups, slots } from './structure.ts'

/**
 * θα, θ²α and θ³α at a reduced density, into `equation.derivative`.
 * Written out by slot: a loop over them takes half as long again.
 *
 * @param equation - with its temperature set
 * @param x - δ = ρ/ρ_r
 */
export function differentiate(equation: Equation, x: number): void {
  const { coefficient: a, sums, groupsPresent, derivative } = equation
  const x2 = x * x
  const x3 = x2 * x
  const x4 = x2 * x2
  const x5 = x4 * x
  const x6 = x3 * x3
  const x7 = x6 * x

  // c = 0: polynomials
  let t1 = (a[0] as number) * x
  let t2 = (a[1] as number) * x2
  let t3 = (a[2] as number) * x3
  let t4 = (a[3] as number) * x4
  let t7 = (a[4] as number) * x7
  let first = t1 + 2 * t2 + 3 * t3 + 4 * t4 + 7 * t7
  let second = t1 + 4 * t2 + 9 * t3 + 16 * t4 + 49 * t7
  let third = t1 + 8 * t2 + 27 * t3 + 64 * t4 + 343 * t7
  // c = 1
  t1 = (a[5] as number) * x
  t2 = (a[6] as number) * x2
  t3 = (a[7] as number) * x3
  t4 = (a[8] as number) * x4
  let t5 = (a[9] as number) * x5
  let t6 = (a[10] as number) * x6
  sums[0] = x
  sums[1] = t1 + t2 + t3 + t4 + t5 + t6
  sums[2] = t1 + 2 * t2 + 3 * t3 + 4 * t4 + 5 * t5 + 6 * t6
  sums[3] = t1 + 4 * t2 + 9 * t3 + 16 * t4 + 25 * t5 + 36 * t6
  sums[4] = t1 + 8 * t2 + 27 * t3 + 64 * t4 + 125 * t5 + 216 * t6
  // c = 2
  t1 = (a[11] as number) * x
  t2 = (a[12] as number) * x2
  t3 = (a[13] as number) * x3
  t4 = (a[14] as number) * x4
  sums[5] = x2
  sums[6] = t1 + t2 + t3 + t4
  sums[7] = t1 + 2 * t2 + 3 * t3 + 4 * t4
  sums[8] = t1 + 4 * t2 + 9 * t3 + 16 * t4
  sums[9] = t1 + 8 * t2 + 27 * t3 + 64 * t4
  // c = 3
  t1 = (a[15] as number) * x
  t2 = (a[16] as number) * x2
  t3 = (a[17] as number) * x3
  t4 = (a[18] as number) * x4
  t5 = (a[19] as number) * x5
  sums[10] = x3
  sums[11] = t1 + t2 + t3 + t4 + t5
  sums[12] = t1 + 2 * t2 + 3 * t3 + 4 * t4 + 5 * t5
  sums[13] = t1 + 4 * t2 + 9 * t3 + 16 * t4 + 25 * t5
  sums[14] = t1 + 8 * t2 + 27 * t3 + 64 * t4 + 125 * t5
  // c = 5
  t1 = (a[20] as number) * x
  t5 = (a[21] as number) * x5
  sums[15] = x5
  sums[16] = t1 + t5
  sums[17] = t1 + 5 * t5
  sums[18] = t1 + 25 * t5
  sums[19] = t1 + 125 * t5
  // c = 6
  t5 = (a[22] as number) * x5
  t6 = (a[23] as number) * x6
  t7 = (a[24] as number) * x7
  sums[20] = x6
  sums[21] = t5 + t6 + t7
  sums[22] = 5 * t5 + 6 * t6 + 7 * t7
  sums[23] = 25 * t5 + 36 * t6 + 49 * t7
  sums[24] = 125 * t5 + 216 * t6 + 343 * t7

  for (let k = 0; k < groupsPresent.length; k++) {
    const group = groupsPresent[k] as number
    const c = groups[group] as number
    const u = sums[5 * group] as number
    const s0 = sums[5 * group + 1] as number
    const s1 = sums[5 * group + 2] as number
    const s2 = sums[5 * group + 3] as number
    const s3 = sums[5 * group + 4] as number
    // θ of f exp(-δ^c) is (θ - v) f times the exponential, with v = c δ^c and θv = c v
    const factor = decay(u)
    const v = c * u
    first += factor * (s1 - v * s0)
    second += factor * (s2 - v * (2 * s1 - (v - c) * s0))
    third += factor * (s3 - v * (3 * (s2 - (v - c) * s1) + (v * v - 3 * c * v + c * c) * s0))
  }
  derivative[0] = first
  derivative[1] = second
  derivative[2] = third
  if (equation.gaussians.length > 0) addGaussians(equation, x)
}

function addGaussians({ coefficient, gaussians, derivative }: Equation, x: number): void {
  let first = 0
  let second = 0
  let third = 0
  let slot = slots.length
  for (let k = 0; k < gaussians.length; k += 4) {
    const d = gaussians[k] as number
    const eta = gaussians[k + 1] as number
    const beta = gaussians[k + 3] as number
    const away = x - (gaussians[k + 2] as number)
    const term = (coefficient[slot++] as number) * (d === 1 ? x : x * x) * decay(eta * away * away + beta * x)
    // θ of the exponent is y, its θ is y - e, and that one's is y - 3e
    const e = 2 * eta * x * x
    const y = x * (-2 * eta * away - beta)
    const w = d + y
    first += term * w
    second += term * (w * w + y - e)
    third += term * (w * (w * w + 3 * (y - e)) + y - 3 * e)
  }
  derivative[0] = (derivative[0] as number) + first
  derivative[1] = (derivative[1] as number) + second
  derivative[2] = (derivative[2] as number) + third
}
