import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  assessPortFit,
  cardTilt,
  compassDeviation,
  deviationAt,
  hoses,
  ports,
  threadSize,
  tiltError,
  trueHeading,
} from '../../src/gauges/index.ts'
import { type Angle, bar, degree, gauge, inUnit, measure, millimetre } from '../../src/units/index.ts'

const angle = (degrees: number): Angle => measure(degrees, degree)
const swingOf = (deviations: readonly number[]) =>
  deviations.map((deviation, i) => ({
    compassHeading: angle((360 / deviations.length) * i),
    deviation: angle(deviation),
  }))

describe('deviation', () => {
  // nga-compass-adjustment, section 501: N, NE, E … NW, east positive
  const swing = swingOf([10.5, 20, 11.5, -1.2, -5.5, -8, -12.5, -6.8])
  const fitted = compassDeviation(swing)

  test('section 501: A, D and E are 1.0, 5.0 and 1.5 degrees; B and C within 0.1 of the estimates 12.0 and 8.0', () => {
    const { a, b, c, d, e } = fitted.coefficients
    expect(inUnit(a, degree)).toBeCloseTo(1, 9)
    expect(inUnit(d, degree)).toBeCloseTo(5, 9)
    expect(inUnit(e, degree)).toBeCloseTo(1.5, 9)
    // the handbook takes B from east and west and C from north and south alone
    expect(Math.abs(inUnit(b, degree) - 12)).toBeLessThan(0.1)
    expect(Math.abs(inUnit(c, degree) - 8)).toBeLessThan(0.1)
  })

  test('the curve runs through the swing within its scatter', () => {
    for (const { compassHeading, deviation } of swing) {
      const away = deviationAt(fitted, compassHeading).deviation - deviation
      expect(Math.abs(away)).toBeLessThan(2 * fitted.scatter)
    }
    expect(fitted.degreesOfFreedom).toBe(3)
    // equal headings: A is known to s/√8, the others to s/√4
    expect(fitted.standardUncertainties.a / fitted.scatter).toBeCloseTo(1 / Math.sqrt(8), 9)
    expect(fitted.standardUncertainties.b / fitted.scatter).toBeCloseTo(1 / 2, 9)
    const on = deviationAt(fitted, angle(0)).standardUncertainty / fitted.scatter
    expect(on).toBeCloseTo(Math.sqrt(5 / 8), 9)
  })

  test('any five coefficients come back from a swing without noise', () => {
    const coefficient = fc.double({ min: -15, max: 15, noNaN: true })
    fc.assert(
      fc.property(fc.tuple(coefficient, coefficient, coefficient, coefficient, coefficient), (given) => {
        const [a, b, c, d, e] = given
        const headings = [3, 50, 110, 160, 200, 255, 310]
        const exact = headings.map((heading) => {
          const h = (heading * Math.PI) / 180
          const deviation = a + b * Math.sin(h) + c * Math.cos(h) + d * Math.sin(2 * h) + e * Math.cos(2 * h)
          return { compassHeading: angle(heading), deviation: angle(deviation) }
        })
        const found = Object.values(compassDeviation(exact).coefficients).map((each) => inUnit(each as Angle, degree))
        found.forEach((each, i) => {
          expect(each).toBeCloseTo(given[i] as number, 8)
        })
      }),
    )
  })

  test('five headings, headings in a heap and a misspelt field are refused', () => {
    expect(() => compassDeviation(swing.slice(0, 5))).toThrow(expect.objectContaining({ code: 'input' }))
    const heap = swing.map((point) => ({ ...point, compassHeading: angle(10) }))
    expect(() => compassDeviation(heap)).toThrow(expect.objectContaining({ code: 'input' }))
    const misspelt = swing.map(({ compassHeading, deviation }) => ({ heading: compassHeading, deviation }))
    expect(() => compassDeviation(misspelt as never)).toThrow(expect.objectContaining({ code: 'input' }))
  })
})

test('east deviation and east declination are added, round the circle', () => {
  const heading = (compass: number, deviation: number, declination: number) =>
    inUnit(
      trueHeading({ compassHeading: angle(compass), deviation: angle(deviation), declination: angle(declination) }),
      degree,
    )
  expect(heading(358, 3, 4)).toBeCloseTo(5, 9)
  expect(heading(2, -3, -4)).toBeCloseTo(355, 9)
  expect(heading(180, 0, 0)).toBeCloseTo(180, 9)
})

describe('tilt', () => {
  const error = (heading: number, roll: number, pitch: number, dip: number) =>
    inUnit(tiltError({ heading: angle(heading), roll: angle(roll), pitch: angle(pitch), dip: angle(dip) }), degree)

  test('a level compass, or one without dip rolled on north, is right', () => {
    for (const heading of [0, 77, 180, 301]) expect(error(heading, 0, 0, 65)).toBeCloseTo(0, 9)
    expect(error(0, 20, 0, 0)).toBeCloseTo(0, 9)
  })

  test('on north a roll turns the heading by the tangent of the dip times the sine of the roll', () => {
    expect(error(0, 5, 0, 65)).toBeCloseTo(
      (-Math.atan(Math.sin((5 * Math.PI) / 180) * Math.tan((65 * Math.PI) / 180)) * 180) / Math.PI,
      9,
    )
    expect(error(0, -5, 0, 65)).toBeCloseTo(-error(0, 5, 0, 65), 9)
    expect(error(0, 5, 0, -65)).toBeCloseTo(-error(0, 5, 0, 65), 9)
    expect(error(180, 5, 0, 65)).toBeCloseTo(-error(0, 5, 0, 65), 9)
  })

  test('on east a pitch does what a roll does on north, and a roll nearly nothing', () => {
    expect(Math.abs(error(90, 0, 5, 65))).toBeCloseTo(Math.abs(error(0, 5, 0, 65)), 9)
    expect(Math.abs(error(90, 5, 0, 65))).toBeLessThan(1e-9)
  })

  test('a misspelt field and an upright compass are refused', () => {
    expect(() => error(0, 90, 0, 60)).toThrow(expect.objectContaining({ argument: 'held.roll' }))
    expect(() => tiltError({ heading: angle(0), rol: angle(0), pitch: angle(0), dip: angle(0) } as never)).toThrow(
      expect.objectContaining({ code: 'input' }),
    )
  })

  test('a card used where it was balanced hangs level, in the other hemisphere it dips the other way', () => {
    const card = { balancedFor: 2, usedAt: 2, horizontalRatio: 1, righting: 20 }
    expect(cardTilt(card)).toBe(0)
    expect(cardTilt({ ...card, usedAt: -2 })).toBeLessThan(0)
    expect(cardTilt({ ...card, usedAt: 3 })).toBeGreaterThan(0)
    expect(Math.abs(cardTilt({ ...card, usedAt: 3, righting: 40 }))).toBeLessThan(cardTilt({ ...card, usedAt: 3 }))
  })
})

describe('ports and hoses', () => {
  test.each([
    { port: 'low-3/8', hose: 'low-pressure', pressure: 10, rating: 30, verdict: 'within', codes: [] },
    { port: 'high-7/16', hose: 'high-pressure', pressure: 232, rating: 400, verdict: 'within', codes: [] },
    { port: 'high-7/16', hose: 'high-pressure', pressure: 300, rating: 232, verdict: 'beyond', codes: ['rating'] },
    { port: 'low-3/8', hose: 'low-pressure', pressure: 10, verdict: 'undetermined', codes: ['no-rating'] },
    {
      port: 'high-7/16',
      hose: 'low-pressure',
      pressure: 232,
      rating: 400,
      verdict: 'beyond',
      codes: ['thread', 'side'],
    },
    {
      port: 'high-3/8',
      hose: 'low-pressure',
      pressure: 232,
      rating: 30,
      verdict: 'beyond',
      codes: ['side', 'rating', 'memory'],
    },
    { port: 'low-1/2', hose: 'low-pressure', pressure: 10, rating: 30, verdict: 'beyond', codes: ['thread'] },
  ] as const)(
    '$hose in $port at $pressure bar: $verdict $codes',
    ({ port, hose, pressure, verdict, codes, ...marks }) => {
      const rating = 'rating' in marks ? { rating: gauge(marks.rating, bar) } : {}
      const found = assessPortFit({ port, hose, pressure: gauge(pressure, bar), ...rating })
      expect(found.verdict).toBe(verdict)
      expect(found.because.map(({ code }) => code)).toEqual(codes)
      expect(found.cautions).toContain('valve-connection')
    },
  )

  test('the numbers of each row are those of its designation', () => {
    for (const row of [...Object.values(ports), ...Object.values(hoses)]) {
      const [fraction = '', rest = ''] = row.designation.split('-')
      const [over = 0, under = 1] = fraction.split('/').map(Number)
      expect(row.diameterInch).toBe(over / under)
      expect(row.perInch).toBe(Number.parseInt(rest, 10))
    }
    const { diameter, pitch } = threadSize(ports['low-3/8'])
    expect(inUnit(diameter, millimetre)).toBeCloseTo(9.525, 12)
    expect(inUnit(pitch, millimetre)).toBeCloseTo(25.4 / 24, 12)
  })

  test('an inherited name and a misspelt id are refused', () => {
    const fit = { hose: 'low-pressure', pressure: gauge(10, bar), rating: gauge(30, bar) } as const
    for (const port of ['constructor', 'low-3-8'])
      expect(() => assessPortFit({ ...fit, port: port as 'low-3/8' })).toThrow(
        expect.objectContaining({ argument: 'fit.port' }),
      )
  })
})
