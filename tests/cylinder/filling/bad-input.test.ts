import { expect, test } from 'vitest'
import {
  assessFill,
  bankOrder,
  blendUncertainty,
  capacityTable,
  coldestRemainder,
  compareRatedCapacity,
  continuousMix,
  cylinderBuoyancy,
  developedPressure,
  equalise,
  fillAtConstantFlow,
  fillInSteps,
  fillLimit,
  fillTemperature,
  freeFlowEmptying,
  internalVolumeForCapacity,
  leakTest,
  massOfGasTaken,
  planBlend,
  ratedCapacity,
  settlingAfterFill,
  stopPressure,
  suddenCompression,
} from '../../../src/cylinder/index.ts'
import { isLitrebarError } from '../../../src/errors/index.ts'
import { dryAir, nitrox, pureGas, roomCondition } from '../../../src/gas-law/index.ts'

// Plain numbers in SI, as untyped code hands them over.
const ambientPressure = 101_325
const temperature = 293.15
const mixture = dryAir
const internalVolume = 0.012
const start = { pressure: 5e6, temperature }
const cylinder = { internalVolume, mixture, pressure: 2e7, temperature }
const order = {
  internalVolume,
  start: { mixture, pressure: 1e6 },
  target: { oxygen: 0.3, helium: 0.2, pressure: 2e7 },
  gases: [pureGas('helium'), pureGas('oxygen'), dryAir],
  temperature,
}
const fill = {
  internalVolume,
  start: { mixture, pressure: 1e6 },
  steps: [{ mixture: nitrox(0.5), pressure: 2e7 }],
  temperature,
}
const rated = { internalVolume, servicePressure: 2e7, ambientPressure, temperature, mixture }
const reference = { reference: roomCondition }
const hot = {
  internalVolume,
  mixture,
  start,
  supply: { pressure: 3e7, temperature },
  pressure: 2e7,
  settledTemperature: 288.15,
}

const calls: Readonly<Record<string, readonly [given: unknown, call: (given: never) => unknown]>> = {
  ratedCapacity: [rated, (given) => ratedCapacity(given, reference)],
  internalVolumeForCapacity: [
    { servicePressure: 2e7, ambientPressure, temperature, mixture, ratedCapacity: 2 },
    (given) => internalVolumeForCapacity(given, reference),
  ],
  compareRatedCapacity: [{ ...rated, stated: 2, roundedTo: 0.03 }, (given) => compareRatedCapacity(given, reference)],
  capacityTable: [
    { internalVolume, servicePressure: 2e7 },
    (given) =>
      capacityTable([{ name: 'one', ...(given as object) } as never], {
        mixture,
        reference: roomCondition,
        ...(plain({ temperature, ambientPressure }) as never as object),
      } as never),
  ],
  fillLimit: [
    { rule: 'un-receptacle', testPressure: 3e7, workingPressure: 2e7, mixture, ambientPressure },
    (given) => fillLimit(given),
  ],
  assessFill: [
    {
      rule: 'us-specification',
      servicePressure: 2e7,
      mixture,
      ambientPressure,
      reading: 2e7,
      gasTemperature: 300,
      readingUncertainty: 1e5,
      temperatureUncertainty: 1,
    },
    (given) => assessFill(given),
  ],
  developedPressure: [
    { mixture, pressure: 2e7, temperature },
    (given) => developedPressure(given, plain(300) as never),
  ],
  stopPressure: [
    { mixture, ambientPressure, settledPressure: 2e7, settledTemperature: 288, gasTemperature: 310 },
    (given) => stopPressure(given),
  ],
  planBlend: [order, (given) => planBlend(given)],
  fillInSteps: [fill, (given) => fillInSteps(given)],
  blendUncertainty: [
    { fill, reading: 1e5, scale: 0.01, temperature: 1, analyser: 0.005 },
    (given) => blendUncertainty(given),
  ],
  continuousMix: [
    { totalFlow: 0.003, target: { oxygen: 0.32 }, intake: mixture, added: [pureGas('oxygen')] },
    (given) => continuousMix(given),
  ],
  equalise: [[cylinder, { ...cylinder, pressure: 5e6 }], (given) => equalise(given, { heat: 'isothermal' })],
  'equalise without heat': [
    [cylinder, { ...cylinder, pressure: 5e6 }],
    (given) => equalise(given, { heat: 'adiabatic' }),
  ],
  bankOrder: [
    { receiver: { ...cylinder, pressure: 2e6 }, bank: [cylinder, cylinder], target: 1e7 },
    (given) => bankOrder(given),
  ],
  fillTemperature: [{ ...hot, wallHeatCapacity: 6000 }, (given) => fillTemperature(given)],
  fillAtConstantFlow: [
    {
      internalVolume,
      mixture,
      start,
      supply: { pressure: 3e7, temperature },
      flow: 0.008,
      duration: 200,
      wallTemperature: 288,
      wallConductance: 10,
    },
    (given) => fillAtConstantFlow(given),
  ],
  settlingAfterFill: [
    { mixture, pressure: 2e7, temperature: 320, surroundings: 290, timeConstant: 1200, after: 600 },
    (given) => settlingAfterFill(given),
  ],
  suddenCompression: [
    { mixture, start: { pressure: 1e5, temperature }, pressure: 1e6 },
    (given) => suddenCompression(given),
  ],
  coldestRemainder: [{ mixture, start, pressure: 2e6 }, (given) => coldestRemainder(given)],
  leakTest: [
    {
      internalVolume,
      mixture,
      first: { pressure: 2e7, temperature },
      last: { pressure: 1.95e7, temperature: 288 },
      duration: 86_400,
      pressureUncertainty: 1e5,
      temperatureUncertainty: 1,
    },
    (given) => leakTest(given, reference),
  ],
  freeFlowEmptying: [
    {
      internalVolume,
      mixture,
      temperature,
      from: 2e7,
      to: 2e6,
      ambientPressure: 5e5,
      orificeDiameter: 0.002,
      dischargeCoefficient: 0.8,
    },
    (given) => freeFlowEmptying(given),
  ],
  cylinderBuoyancy: [
    { ...cylinder, body: { mass: 14.5, density: 7850 }, attached: [{ mass: 0.8, density: 8500 }], waterDensity: 1025 },
    (given) => cylinderBuoyancy(given),
  ],
  massOfGasTaken: [{ internalVolume, mixture, temperature, from: 2e7, to: 5e6 }, (given) => massOfGasTaken(given)],
}

function plain(value: unknown): unknown {
  return value
}

/** The paths of all numbers in an input; gases are left to their own tests. */
function numbersIn(value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value === 'number') return [path]
  if (typeof value !== 'object' || value === null || 'carbonDioxide' in value) return []
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, [...path, key]))
}

function replaced(value: unknown, [key, ...rest]: readonly (string | number)[], by: number): unknown {
  if (key === undefined) return by
  const copy: Record<string, unknown> = { ...(value as object) }
  copy[String(key)] = replaced(copy[String(key)], rest, by)
  return Array.isArray(value) ? Object.values(copy) : copy
}

for (const [name, [given, call]] of Object.entries(calls)) {
  test(`${name} refuses every number that is missing, without end or negative, by its name`, () => {
    expect(() => call(given as never)).not.toThrow()
    const paths = numbersIn(given)
    expect(paths.length).toBeGreaterThan(0)
    for (const path of paths) {
      for (const bad of [Number.NaN, Infinity, -Infinity, -1]) {
        let thrown: unknown
        try {
          call(replaced(given, path, bad) as never)
        } catch (error) {
          thrown = error
        }
        expect(isLitrebarError(thrown), `${path.join('.')} = ${bad}: ${String(thrown)}`).toBe(true)
        const { argument } = thrown as { argument: string }
        expect(argument, `${path.join('.')} = ${bad}`).toContain(nameOf(path))
      }
    }
  })
}

/** The last name of a path: what the error must speak of. */
function nameOf(path: readonly (string | number)[]): string {
  return String(path.filter((part) => Number.isNaN(Number(part))).at(-1) ?? '')
}
