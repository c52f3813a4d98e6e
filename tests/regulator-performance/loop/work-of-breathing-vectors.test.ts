import { expect, test } from 'vitest'
import { hydrostaticImbalance, siColumn, workOfBreathing } from '../../../src/regulator-performance/index.ts'
import {
  centimetreOfWater,
  difference,
  inchOfWater,
  inUnit,
  joule,
  joulePerLitre,
  kilogramForceMetrePerLitre,
  kilogramPerCubicMetre,
  kilopascal,
  litre,
  measure,
  metre,
  metrePerSecondSquared,
  millibar,
  millimetreOfMercury,
} from '../../../src/units/index.ts'
import { close, number, vectorsOf } from '../vectors.ts'

type Points = readonly (readonly [number, number])[]

function loopOf(points: Points) {
  return {
    volume: siColumn({ values: points.map(([v]) => v), unit: litre }),
    pressure: siColumn({ values: points.map(([, p]) => p), unit: kilopascal }),
  }
}

test.each(vectorsOf('R2'))('$id: $title', ({ in: given, out, tolerance }) => {
  const result = workOfBreathing(loopOf(given['points_V_L_p_kPa'] as Points))
  close(inUnit(result.workOfBreathing, joule), number(out, 'W'), tolerance)
  if (out['VT'] !== undefined) close(inUnit(result.tidalVolume, litre), number(out, 'VT'), tolerance)
  if (out['WOB'] !== undefined) {
    close(inUnit(result.workOfBreathingPerLitre, joulePerLitre), number(out, 'WOB'), tolerance)
  }
})

test('R2-5 is flagged as crossing with its gross work, R2-6 as reversed', () => {
  const eight = workOfBreathing(
    loopOf([
      [0, -1],
      [2.5, 1],
      [2.5, -1],
      [0, 1],
    ]),
  )
  expect(eight.crossings).toBe(1)
  expect(inUnit(eight.grossWork, joule)).toBeCloseTo(2.5, 12)
  expect(eight.findings.map(({ code }) => code)).toEqual(['crossing'])
  const reversed = workOfBreathing(
    loopOf([
      [0, 0.8],
      [2.5, 0.8],
      [2.5, -1],
      [0, -1],
    ]),
  )
  expect(reversed.findings.map(({ code }) => code)).toEqual(['reversed'])
})

test.each(vectorsOf('R5'))('$id: $title', ({ in: given, out, tolerance }) => {
  const { inhalation } = workOfBreathing(loopOf(given['points_V_L_p_kPa'] as Points))
  close(inUnit(inhalation.workOfDiver, joule), number(out, 'W_insp_diver'), tolerance)
  close(inUnit(inhalation.work, joule), number(out, 'W_insp_net'), tolerance)
  close(inUnit(inhalation.workOfAssist, joule), number(out, 'W_assist'), tolerance)
})

test.each(vectorsOf('R12'))('$id: $title', ({ in: given, out, tolerance }) => {
  const samples = number(given, 'N')
  const tidalVolume = number(given, 'VT')
  const points = Array.from({ length: samples }, (_, k) => {
    const phase = (2 * Math.PI * k) / samples
    return [(tidalVolume / 2) * (1 - Math.cos(phase)), -number(given, 'p_peak') * Math.sin(phase)] as const
  })
  const work = inUnit(workOfBreathing(loopOf(points)).workOfBreathing, joule)
  // per set tidal volume, as the vector counts; N is even, so the record holds both ends
  close(work / tidalVolume, number(out, 'WOB_polygon'), tolerance)
  close(work / tidalVolume / number(out, 'WOB_exact'), number(out, 'factor'), tolerance)
})

test.each(vectorsOf('R6'))('$id: $title', ({ in: given, out, tolerance }) => {
  const head = hydrostaticImbalance({
    height: measure(number(given, 'dz'), metre),
    waterDensity: measure(number(given, 'rho'), kilogramPerCubicMetre),
    gravity: measure(number(given, 'g'), metrePerSecondSquared),
  })
  close(inUnit(head, kilopascal), number(out, 'p'), tolerance)
  close(inUnit(head, millibar), number(out, 'p_mbar'), tolerance)
  close(inUnit(head, centimetreOfWater), number(out, 'p_cmH2O'), tolerance)
})

test('R10-5 and R10-6: the old units', () => {
  const work = difference(0.14, kilogramForceMetrePerLitre)
  close(inUnit(work, joulePerLitre), 1.372931, 1e-12)
  const peak = difference(25, millibar)
  close(inUnit(peak, kilopascal), 2.5, 1e-8)
  close(inUnit(peak, centimetreOfWater), 25.492905324448206, 1e-8)
  close(inUnit(peak, inchOfWater), 10.036576899389058, 1e-8)
  close(inUnit(peak, millimetreOfMercury), 18.751539396141407, 1e-8)
})
