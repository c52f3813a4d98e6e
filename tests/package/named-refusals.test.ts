// A refusal names the field that is wrong: of each valid call every number is spoilt in turn, and every field left out.
import { expect, test } from 'vitest'
import { isLitrebarError } from '../../src/errors/index.ts'
import * as core from '../../src/index.ts'
import { validCalls } from '../fixtures/valid-calls.ts'

type Callable = (...args: readonly unknown[]) => unknown
type Path = readonly (string | number)[]

const judged = [
  ...[
    'assessMixtures',
    'assessReliefValve',
    'assessRunning',
    'assessSemiClosed',
    'assessFillPanel',
    'assessIntakeOxygen',
  ],
  ...['ballast', 'ballastFromCheck', 'netBuoyancy', 'ballastForOtherWater', 'bubbleHead', 'oRingFit', 'seatLeak'],
  ...[
    'assessCartridge',
    'assessContaminantAtDepth',
    'assessFrost',
    'assessCell',
    'assessDisagreement',
    'assessGaugeTest',
  ],
  ...[
    'assessEquivalentGauges',
    'assessSurfaceCheck',
    'assessPortFit',
    'semiClosedFlow',
    'semiClosedUptake',
    'ventedLine',
  ],
  ...[
    'reliefArea',
    'preload',
    'circuitEndurance',
    'semiClosedOxygen',
    'boostedDrive',
    'boosterStroke',
    'chargeCylinder',
  ],
] as const

/** Paths to every field of every argument, the argument’s place first. */
function pathsOf(value: unknown, path: Path): readonly Path[] {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return path.length > 1 ? [path] : []
  const inner = Object.entries(value).flatMap(([key, each]) =>
    pathsOf(each, [...path, Array.isArray(value) ? Number(key) : key]),
  )
  return path.length > 1 ? [path, ...inner] : inner
}

function changed(args: readonly unknown[], path: Path, to: unknown): readonly unknown[] {
  const copy = structuredClone(args) as unknown[]
  let at = copy as unknown as Record<string | number, unknown>
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, unknown>
  at[path.at(-1) as string] = to
  return copy
}

/** What a call names as wrong; undefined where it takes the arguments. */
function named(call: Callable, args: readonly unknown[]): string | undefined {
  try {
    call(...args)
  } catch (thrown) {
    if (!isLitrebarError(thrown)) throw thrown
    return thrown.argument
  }
  return undefined
}

/** Whether an argument of an error ends with the field: `fill.wall.temperature` for the temperature of a wall. */
const endsWith = (argument: string, key: string | number): boolean =>
  typeof key === 'number' ? argument.includes(`[${key}]`) : argument === key || argument.endsWith(`.${key}`)

// A mixture is refused as a whole, a unit by what it is for; without `gas` it is the ratio beside it that is too much.
const asWhole =
  /^gas$|mixture|unit|nitrogen|oxygen|argon|helium|carbonDioxide|water|hydrogen|^symbol$|^quantity$|^factor$|^offset$|^name$/

test.each(judged)('%s names the field that is spoilt or left out', (name) => {
  const call = (core as unknown as Record<string, Callable>)[name] as Callable
  const calls = validCalls[name]
  expect(calls, 'give it a valid call').toBeDefined()
  const wrong: string[] = []
  for (const valid of calls ?? []) {
    const args = valid()
    for (const path of args.flatMap((arg, place) => pathsOf(arg, [place]))) {
      const key = path.at(-1) as string | number
      if (path.some((step) => asWhole.test(String(step)))) continue
      const value = path.reduce<unknown>((at, step) => (at as Record<string | number, unknown>)[step], args)
      for (const to of typeof value === 'number' ? [Number.NaN, undefined] : [undefined]) {
        const found = named(call, changed(args, path, to))
        const isFree = to === undefined && found === undefined // may be left out
        if (!isFree && !(found !== undefined && endsWith(found, key)))
          wrong.push(`${path.join('.')} ${String(to)}: ${found}`)
      }
    }
  }
  expect(wrong).toEqual([])
})
