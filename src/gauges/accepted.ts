import { type Accepted, bar, celsius, hectopascal, metre, one, percent } from '../units/index.ts'

// What several instruments accept. The ranges are ours: they catch a wrong unit or datum.

/** Absolute pressure around an instrument, or sealed in it. */
export const surroundingPressure: Accepted = {
  atLeast: 200,
  atMost: 1_200_000,
  unit: hectopascal,
  hint: 'Give the absolute pressure, in air or in water.',
}

/** Absolute pressure of the air above the water. */
export const surfacePressure: Accepted = {
  atLeast: 200,
  atMost: 1200,
  unit: hectopascal,
  hint: 'State the absolute pressure at the surface.',
}

/** Temperature of an instrument. */
export const instrumentTemperature: Accepted = {
  atLeast: -40,
  atMost: 80,
  unit: celsius,
  hint: 'Check the temperature scale.',
}

/** Scale of a gauge, from end to end. */
export const span: Accepted = {
  above: 0,
  atMost: 1500,
  unit: bar,
  hint: 'Give the scale of the gauge from end to end.',
}

/** A pressure gauge's reading. */
export const gaugeReading: Accepted = { atLeast: -1, atMost: 1500, unit: bar, hint: 'Give what the gauge shows.' }

/** Class of a gauge. */
export const accuracyClass: Accepted = {
  above: 0,
  atMost: 100,
  unit: percent,
  hint: 'A class of 1.6 is 1.6 per cent of the span: 0.016.',
}

/** A standard uncertainty, or the largest error, in SI. */
export const uncertainty: Accepted = {
  atLeast: 0,
  unit: one,
  hint: 'An uncertainty is a finite number in SI, without sign.',
}

/** A coefficient of correlation. */
export const correlation: Accepted = { atLeast: -1, atMost: 1, unit: one, hint: 'A correlation lies between -1 and 1.' }

/** A depth in water, or as a display shows it. */
export const depth: Accepted = {
  atLeast: 0,
  atMost: 11_000,
  unit: metre,
  hint: 'Depth counts downwards from the surface.',
}

/** Any finite number. */
export const finite: Accepted = { unit: one, hint: 'Replace a missing value.' }
