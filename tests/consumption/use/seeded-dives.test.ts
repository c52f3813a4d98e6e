import { expect, test } from 'vitest'
import { seededRandom } from '../../../src/uncertainty/index.ts'
import { againstSeconds, leastAboveAmbient, seededDive } from './seeded-dives.ts'

// The long form: npm run script -- run-out-trials 100000
test('seeded dives end within a second of what counting seconds finds, and none goes below ambient', () => {
  const random = seededRandom(2024)
  let ends = 0
  for (let k = 0; k < 300; k++) {
    const { apart, least, runsOut } = againstSeconds(seededDive(random))
    expect(apart).toBeLessThanOrEqual(1.000001)
    expect(least).toBeGreaterThan(-1e-3)
    if (runsOut) ends++
  }
  // both kinds occur
  expect(ends).toBeGreaterThan(60)
  expect(ends).toBeLessThan(285)
})

test('with real gas no breath of a seeded dive is taken from below ambient', () => {
  const random = seededRandom(7)
  for (let k = 0; k < 60; k++) expect(leastAboveAmbient(seededDive(random))).toBeGreaterThan(-1)
})

test('with real gas the dives end within a second as well', () => {
  const random = seededRandom(31)
  for (let k = 0; k < 40; k++) expect(againstSeconds(seededDive(random), 'real').apart).toBeLessThanOrEqual(1.000001)
})
