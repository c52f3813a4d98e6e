import { checkSync } from 'recheck'
import { expect, test } from 'vitest'
import stored from '../../docs/measured/regular-expressions.json' with { type: 'json' }
import { shippedPatterns } from '../../scripts/shipped-patterns.ts'
import { judgeClaims } from '../../src/course/index.ts'
import { readStamp } from '../../src/cylinder/index.ts'

// The proof itself, by a tool, is `npm run script -- regular-expressions`.
const { patterns, built } = shippedPatterns()
const ofFile = (line: string): string => line.replace(/:\d+:/, ':')
const written = patterns.map(({ source, flags }) => `/${source}/${flags}`)

test('every pattern of the library was tried by the tool, now or at the last stored run', () => {
  expect(written.length).toBeGreaterThan(100)
  const known = new Set(stored.patterns.map(({ pattern }) => pattern))
  const fresh = patterns.filter(({ source, flags }) => !known.has(`/${source}/${flags}`))
  const worse = fresh.filter(({ source, flags }) => {
    const found = checkSync(source, flags, { timeout: 10_000 })
    return found.status === 'unknown' || !/^(linear|safe.*|2nd degree polynomial)$/.test(found.complexity.summary)
  })
  expect(worse).toEqual([])
  expect(built.map(ofFile).filter((line) => !stored.built.map(ofFile).includes(line))).toEqual([])
}, 120_000)

test('none is worse than quadratic, and no quadratic one takes long on the worst text of a thousand characters', () => {
  const worse = stored.patterns.filter(({ complexity }) => !/^(linear|safe.*|2nd degree polynomial)$/.test(complexity))
  expect(worse).toEqual([])
  const slow = stored.patterns.filter((row) => ((row as { millisecondsAt1000?: number }).millisecondsAt1000 ?? 0) > 20)
  expect(slow).toEqual([])
})

test('those that are quadratic become fewer, never more', () => {
  const quadratic = stored.patterns.filter(({ complexity }) => complexity === '2nd degree polynomial')
  expect(quadratic.length).toBeLessThanOrEqual(13)
})

/** Seconds of the processor. */
function secondsOf(work: () => unknown): number {
  const before = process.cpuUsage()
  work()
  return process.cpuUsage(before).user / 1e6
}

test('a run of letters that could be cut in many ways does not hold up the reading of a stamp', () => {
  // VE is one suffix, and V and E are two: n pairs could be cut in 2^n ways
  expect(secondsOf(() => readStamp(`3AA2015 12345 0512${'VE'.repeat(60)}x`))).toBeLessThan(2)
})

test('a long row of digits and spaces does not hold up the reading of a claim', () => {
  const says = `${'1 '.repeat(3000)}!`
  expect(secondsOf(() => judgeClaims(`- says: "${says}"\n  formula: boyle\n`, { file: 'claims.yaml' }))).toBeLessThan(2)
})
