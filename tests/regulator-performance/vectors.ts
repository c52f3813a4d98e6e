import { readFileSync } from 'node:fs'
import { expect } from 'vitest'

export type Figures = Readonly<Record<string, unknown>>

export interface Vector {
  readonly id: string
  readonly equation: string
  readonly title: string
  readonly in: Figures
  readonly out: Figures
  /** Relative. */
  readonly tolerance: number
}

const vectors = ['breathing-vectors', 'regulator-mechanics-vectors'].flatMap((name) => vectorsIn(name))

/** All vectors of one fixture. */
export function vectorsIn(name: string): readonly Vector[] {
  const file = new URL(`../fixtures/${name}.json`, import.meta.url)
  return (JSON.parse(readFileSync(file, 'utf8')) as { readonly vectors: readonly Vector[] }).vectors
}

/** The vectors of one equation; never none, so that a misspelt name cannot pass. */
export function vectorsOf(equation: string): readonly Vector[] {
  const found = vectors.filter((vector) => vector.equation === equation)
  expect(found.length, equation).toBeGreaterThan(0)
  return found
}

export function number(figures: Figures, name: string): number {
  const value = figures[name]
  if (typeof value !== 'number') throw new Error(`no number ${name}`)
  return value
}

/** Relative difference; absolute where the expected value is 0. */
export function close(actual: number, expected: number, tolerance: number): void {
  const scale = expected === 0 ? 1 : Math.abs(expected)
  expect(Math.abs(actual - expected) / scale).toBeLessThanOrEqual(tolerance)
}
