import { type Accepted, one } from '../units/index.ts'

// The ends are ours: between them no square and no sum of squares overflows.

/** A value in SI, of either sign. */
export const anyValue: Accepted = {
  atLeast: -1e150,
  atMost: 1e150,
  unit: one,
  hint: 'Leave a missing value out, or replace it before the calculation.',
}

/** An uncertainty in SI. */
export const spread: Accepted = {
  atLeast: 0,
  atMost: 1e150,
  unit: one,
  hint: 'An uncertainty is a finite number in SI, without sign.',
}
