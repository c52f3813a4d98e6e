import { assert, double, property, record } from 'fast-check'
import { expect, test } from 'vitest'
import { differentiate } from '../../../src/gas-law/equation/density-derivatives.ts'
import { equationOf } from '../../../src/gas-law/equation/gerg2008.ts'
import { setTemperature } from '../../../src/gas-law/equation/set-temperature.ts'
import {
  dryAir,
  gasState,
  heliox,
  type Mixture,
  mixture,
  molarDensity,
  nitrox,
  pureGas,
  saturatedWaterFraction,
  saturationPressure,
  trimix,
} from '../../../src/gas-law/index.ts'
import { absolute, bar, celsius, kelvin, type Temperature, temperatureOf } from '../../../src/units/index.ts'

const refused = expect.objectContaining({ code: 'outside-validity' })

function density(gas: Mixture, pressure: number, temperature: Temperature): number {
  return molarDensity(gas, absolute(pressure, bar), temperature)
}

// Saturation pressures as tables print them, bar; from memory, last digit rounded. Just below is gas, just above is not.
test.each([
  ['carbonDioxide', 293.15, 57.3],
  ['carbonDioxide', 273.15, 34.85],
  ['carbonDioxide', 230, 8.93],
  ['nitrogen', 100, 7.78],
  ['oxygen', 110, 5.43],
  ['argon', 110, 6.66],
  ['water', 400, 2.458],
  ['water', 500, 26.39],
] as const)('%s at %s K is gas up to %s bar and no further', (gas, kelvins, saturation) => {
  const temperature = temperatureOf(kelvins, kelvin)
  expect(density(pureGas(gas), 0.99 * saturation, temperature)).toBeGreaterThan(0)
  for (const factor of [1.01, 1.1, 2, 8]) {
    expect(() => density(pureGas(gas), factor * saturation, temperature), `${factor}`).toThrow(refused)
  }
})

test('liquid carbon dioxide at 20 °C is refused, supercritical carbon dioxide is not', () => {
  const dioxide = pureGas('carbonDioxide')
  expect(() => density(dioxide, 60, temperatureOf(20, celsius))).toThrow(refused)
  expect(() => density(dioxide, 200, temperatureOf(20, celsius))).toThrow(refused)
  expect(density(dioxide, 200, temperatureOf(40, celsius))).toBeGreaterThan(15_000)
})

test('dry ice is told from gas at its sublimation pressure of one atmosphere, 194.69 K', () => {
  const dioxide = pureGas('carbonDioxide')
  expect(density(dioxide, 1.01325, temperatureOf(195.2, kelvin))).toBeGreaterThan(0)
  expect(() => density(dioxide, 1.01325, temperatureOf(194.2, kelvin))).toThrow(refused)
})

// Dew line of air near 132 K: 1.06 bar at 82 K … 37.8 bar at 132.6 K; figures of nitrogen–oxygen from memory
test('air condenses below its critical temperature and not above', () => {
  const air = nitrox(0.21)
  expect(density(air, 20, temperatureOf(120, kelvin))).toBeGreaterThan(0)
  expect(() => density(air, 30, temperatureOf(120, kelvin))).toThrow(refused)
  expect(() => density(air, 400, temperatureOf(120, kelvin))).toThrow(refused)
  for (const pressure of [30, 40, 100, 400])
    expect(density(air, pressure, temperatureOf(140, kelvin))).toBeGreaterThan(0)
})

test.each([
  ['air', dryAir],
  ['oxygen', pureGas('oxygen')],
  ['argon', pureGas('argon')],
  ['helium', pureGas('helium')],
  ['hydrogen', pureGas('hydrogen')],
  ['nitrogen', pureGas('nitrogen')],
  ['trimix', trimix({ oxygen: 0.1, helium: 0.7 })],
  ['heliox', heliox(0.21)],
] as const)('%s is one dense gas from 200 to 700 K up to 700 bar, with no jump on the way', (_, gas) => {
  const jumps: number[][] = []
  for (let kelvins = 200; kelvins <= 700; kelvins += 25) {
    let last = 0
    for (let pressure = 5; pressure <= 700; pressure += 5) {
      const now = density(gas, pressure, temperatureOf(kelvins, kelvin))
      if (!(now > last && (pressure <= 50 || now / last < 1.2))) jumps.push([kelvins, pressure, now / last])
      last = now
    }
  }
  expect(jumps).toEqual([])
})

test('carbon dioxide condenses from a mixture that is rich in it, and not from one that is lean', () => {
  const rich = mixture({ nitrogen: 0.1, carbonDioxide: 0.9 })
  const half = mixture({ nitrogen: 0.5, carbonDioxide: 0.5 })
  const lean = mixture({ nitrogen: 0.95, carbonDioxide: 0.05 })
  expect(density(rich, 60, temperatureOf(293, kelvin))).toBeGreaterThan(0)
  expect(() => density(rich, 80, temperatureOf(293, kelvin))).toThrow(refused)
  expect(() => density(half, 80, temperatureOf(250, kelvin))).toThrow(refused)
  expect(density(half, 80, temperatureOf(300, kelvin))).toBeGreaterThan(0)
  for (const pressure of [50, 100, 200, 450])
    expect(density(lean, pressure, temperatureOf(230, kelvin))).toBeGreaterThan(0)
})

test('moist air is gas up to its saturation by the humidity functions, and refused well above', () => {
  assert(
    property(
      record({
        kelvins: double({ min: 235, max: 370, noNaN: true }),
        logPressure: double({ min: 0, max: Math.log(290), noNaN: true }),
      }),
      ({ kelvins, logPressure }) => {
        const temperature = temperatureOf(kelvins, kelvin)
        const pressure = absolute(Math.exp(logPressure), bar)
        if (pressure < 1.5 * saturationPressure(temperature)) return
        const saturated: number = saturatedWaterFraction({ temperature, pressure })
        const moist = (water: number): Mixture =>
          mixture({ nitrogen: 0.79 * (1 - water), oxygen: 0.21 * (1 - water), water })
        expect(molarDensity(moist(saturated), pressure, temperature)).toBeGreaterThan(0)
        const far = 1.6 * saturated
        if (far < 0.9) expect(() => molarDensity(moist(far), pressure, temperature)).toThrow(refused)
      },
    ),
    { numRuns: 300 },
  )
})

test('the error says the state, the gases and what to do', () => {
  const moist = mixture({ nitrogen: 0.95, water: 0.05 })
  expect(() => density(moist, 200, temperatureOf(300, kelvin))).toThrow(
    'state is 200 bar and 300 K, expected a gas of nitrogen, water. Water condenses or freezes out',
  )
})

test('states outside the range of the equation are refused, and what is no state is told apart', () => {
  const room = temperatureOf(300, kelvin)
  expect(() => density(dryAir, 701, room)).toThrow(refused)
  expect(() => density(dryAir, 1, temperatureOf(89, kelvin))).toThrow(refused)
  expect(() => density(dryAir, 1, temperatureOf(701, kelvin))).toThrow(refused)
  const range = expect.objectContaining({ code: 'range' })
  const at = { pressure: absolute(1, bar), temperature: room }
  expect(() => gasState(dryAir, { ...at, pressure: Number.NaN as never })).toThrow(range)
  expect(() => gasState(dryAir, { ...at, pressure: 0 as never })).toThrow(range)
  expect(() => gasState(dryAir, { ...at, temperature: Infinity as never })).toThrow(range)
  expect(() => gasState({ oxygen: 0.5 } as unknown as Mixture, at)).toThrow(
    expect.objectContaining({ code: 'mixture' }),
  )
})

// The claim that lets the density solve do without a walk: density-solve.ts, oneRootAbove
test('above 1.25 T_r no isotherm turns back', () => {
  let seed = 7
  const random = (): number => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0
    return seed / 2 ** 32
  }
  const names = ['nitrogen', 'oxygen', 'argon', 'helium', 'carbonDioxide', 'water', 'hydrogen'] as const
  for (let k = 0; k < 1000; k++) {
    const amounts = names.map((name, n): [string, number] => {
      const trace = random() < 0.5 ? random() ** 3 : 0
      return [name, n === k % 7 ? 0.01 + random() : trace]
    })
    const gas = mixture(Object.fromEntries(amounts), { normalise: true })
    const equation = equationOf(gas)
    let flattest = { slope: Infinity, factor: 0, delta: 0 }
    for (const factor of [1.25, 1.4, 1.8, 2.5]) {
      setTemperature(equation, factor * equation.reducingTemperature)
      for (let delta = 0.02; delta < 3; delta += 0.04) {
        differentiate(equation, delta)
        const slope = 1 + (equation.derivative[0] as number) + (equation.derivative[1] as number)
        if (!(slope >= flattest.slope)) flattest = { slope, factor, delta }
      }
    }
    expect(flattest.slope, JSON.stringify({ gas, ...flattest })).toBeGreaterThan(0)
  }
})
