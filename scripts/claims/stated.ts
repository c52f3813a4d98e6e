/** Why a number of a page needs no measuring here. */
type Why =
  | 'name' // of a thing: a version, a mixture, a standard
  | 'condition' // under which something was measured
  | 'aim'
  | `bench: ${string}` // by a browser and the wall clock, which no check repeats
  | 'other program' // found once by a program that is no part of this repository
  | `tested: ${string}` // asserted by a test, which is named

/** Pages that a command writes whole. */
export const generatedPages: readonly string[] = [
  'docs/measured/fluids-against-references.md',
  'docs/measured/environments.md',
  'docs/measured/mutation.md',
]

/** Phrases with numbers of README.md and docs/measured, as they stand there. */
export const stated: Readonly<Record<string, Readonly<Record<string, Why>>>> = {
  'README.md': { 'Node 20.19': 'name', 'Apache-2.0': 'name' },
  'docs/measured/errors.md': { 'in 40 digits': 'condition', 'above 1': 'condition' },
  'docs/measured/fluids.md': { '20 000 calls': 'condition' },
  'docs/measured/speed-and-size.md': {
    'Node 20.20': 'condition',
    'gzip 9': 'condition',
    'passes 1940 times a second': 'condition',
    'medians 1.8 to 3.8 ms (aim 5 ms)': 'bench: live-page',
    'medians 0.6 to 9.1 ms (aim 16 ms)': 'bench: live-page',
    '66 cells 23 ms, which misses the aim of 16 ms': 'bench: live-page',
  },
  'docs/measured/work-of-breathing.md': {
    '10 to 30 breaths per minute of 1 to 3 L': 'condition',
    '60 to 400 uneven samples': 'condition',
    'noise of 2 to 60 Pa and 0.2 to 4 mL': 'condition',
    'a drift up to 10 Pa/s': 'condition',
    'a wander up to 100 Pa': 'condition',
    'a delay up to 40 ms and a lag up to 20 ms': 'condition',
    '(0.1 to 1 % and up to 3 ms)': 'condition',
    '95.45 % of a normal distribution': 'name',
  },
  'docs/measured/regulator-mechanics.md': {
    'at their tolerances, 1e-8 to 1e-12': 'tested: tests/regulator-performance/mechanics-vectors.test.ts',
    'widened by 2e-11': 'tested: tests/regulator-performance/mechanics-vectors.test.ts',
    'GERG-2008': 'name',
    'throttle from 16, 50, 100 and 200 bar at 4 °C and from 200 bar at 20 °C, air also from 300 bar, to 6 to 16 bar':
      'condition',
    'from 4 to 20 °C and up to 300 bar': 'condition',
    'up to 0.17 K away for air and 0.27 K for oxygen': 'other program',
    'Take 0.3 K': 'aim',
    'within 5e-6: air, trimix 18/45 and helium, 1 to 300 bar': 'tested: tests/regulator-performance/flow/flow.test.ts',
    '40 for each of air, nitrox 32, oxygen, trimix 18/45 and helium, at −10, 4 and 20 °C, up to 300 and 500 bar':
      'condition',
    'was 2.7e-7 up to 300 bar and 1.3e-6 up to 500 bar': 'tested: tests/regulator-performance/flow/flow.test.ts',
    'for oxygen at −10 °C': 'condition',
  },
}
