// A refusal names the field that is wrong: of each valid call every number is spoilt in turn, and every field left out.
import { expect, test } from 'vitest'
import { isLitrebarError } from '../../src/errors/index.ts'
import * as core from '../../src/index.ts'
import { validCalls } from '../fixtures/valid-calls.ts'
import { spoiltElsewhere } from './documented-exceptions.ts'

type Callable = (...args: readonly unknown[]) => unknown
type Path = readonly (string | number)[]

/** Functions whose errors name something else than the spoilt field, and why. One that covers nothing fails: whoever mends it takes it out. */
const namedOtherwise: Readonly<Record<string, readonly string[]>> = {
  'a constructor says which quantity it makes': [
    ...[
      'absolute',
      'absoluteSalinityOf',
      'altitudeOf',
      'conservativeTemperatureOf',
      'depthOf',
      'difference',
      'displacedVolumeOf',
    ],
    ...[
      'fractionOf',
      'freeGasFlowOf',
      'freeGasOf',
      'gasVolumeOf',
      'gauge',
      'internalVolumeOf',
      'massFractionOf',
      'measure',
    ],
    ...['practicalSalinityOf', 'temperatureOf', 'toAbsoluteSalinity', 'toPracticalSalinity', 'volumeFractionOf'],
  ],
  'of several values all but one are given, and which one is missing is open': [
    ...['boyle', 'charles', 'combinedGasLaw', 'gayLussac', 'graham', 'henry', 'idealGasDensity', 'idealGasLaw'],
  ],
  'a damaged table is refused as a whole': ['compiledCompressibilityFactor', 'compiledMolarDensity', 'tabulatedValue'],
  'the field is not read, or a bare number goes through by design': [
    ...['comparedWork', 'coverageInterval', 'deviationAt', 'expandedUncertainty', 'isWithin', 'linearityCheck'],
    ...['quantileOf', 'siColumn', 'breathingAnalysis', 'loopWork', 'measuredPerformance'],
  ],
  'where the marks of a stamp stand is not read': [
    ...['assessFilling', 'nextRequalification', 'plusMark', 'requalifications', 'writeStamp'],
  ],
  'a result, or a stamp, is taken whole, and not every field of it is read': [
    ...[
      'breathingAnalysis',
      'measuredPerformance',
      'nextRequalification',
      'plusMark',
      'requalifications',
      'writeStamp',
    ],
    ...['assessFilling', 'loopWork'],
  ],
  'what is no object is named by what it is taken for': [
    ...[
      'assessCell',
      'breathingSeries',
      'compressorDelivery',
      'condensate',
      'droop',
      'freeGasAt',
      'lockUp',
      'measuredRate',
    ],
    ...['simulatedBreathing'],
  ],
  'anything may be asked, or the field is not read': ['depthBeforePointerMoves', 'isLitrebarError'],
  'what is missing is named by what it is taken for': [
    ...[
      'assessAnalysis',
      'assessFill',
      'bankCapacity',
      'bankSequence',
      'buoyancySeries',
      'cautionOf',
      'compressorWork',
    ],
    ...['correctedReading', 'fillLimit', 'format', 'inflationUse', 'inspectionAdvice', 'pressureUsed', 'recordSlips'],
    ...['requireWithin', 'round', 'roundNumber', 'sourceOf', 'sumOf', 'tradeSizeReadings'],
  ],
  'the state that is worked out from the field is named': [
    ...[
      'dewPointAtPressure',
      'foamLoss',
      'freeGasFlowAt',
      'maximumOperatingDepth',
      'minimumOperatingDepth',
      'orificeFlow',
    ],
  ],
}
const otherwise: ReadonlySet<string> = new Set(Object.values(namedOtherwise).flat())

/** What checks for the other functions, and is handed the name; and `inUnit`, which divides and checks nothing by design. */
const machinery: readonly string[] = [
  'nearestOf',
  'requireKeys',
  'requireWord',
  'faultOfRow',
  'requireRows',
  'requireList',
  'requireText',
  'inUnit',
]

const judged = Object.entries(core as unknown as Record<string, Callable>)
  .filter(([name, call]) => typeof call === 'function' && Object.hasOwn(validCalls, name))
  .map(([name]) => name)
  .filter((name) => !name.endsWith('Into') && !machinery.includes(name) && !Object.hasOwn(spoiltElsewhere, name))

/** A column is longer than this: its rows are no fields, and a bad one makes a bad row. */
const longestList = 8

/** Paths to every field of every argument, the argument’s place first. */
function pathsOf(value: unknown, path: Path): readonly Path[] {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return [path]
  if (Array.isArray(value) && value.length > longestList) return [path]
  const inner = Object.entries(value).flatMap(([key, each]) =>
    pathsOf(each, [...path, Array.isArray(value) ? Number(key) : key]),
  )
  return [path, ...inner]
}

function changed(args: readonly unknown[], path: Path, to: unknown): readonly unknown[] {
  const copy = copied(args) as unknown[]
  let at = copy as unknown as Record<string | number, unknown>
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, unknown>
  at[path.at(-1) as string] = to
  return copy
}

/** A copy that may be changed; functions and columns stay the same. */
function copied(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(copied)
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, copied(part)]))
}

/** Names of the parameters of a function, without the figure that a bundler adds; empty where one is taken apart in the head. */
function parametersOf(call: Callable): readonly string[] {
  const text = call.toString()
  const names = ['']
  let depth = 0
  for (const character of text.slice(text.indexOf('('))) {
    if ('([{'.includes(character)) depth++
    else if (')]}'.includes(character)) depth--
    else if (character === ',' && depth === 1) names.push('')
    else if (depth === 1) names.push(`${names.pop() ?? ''}${character}`)
    if (depth === 0) break
  }
  return names.map((name) => /^[a-zA-Z]+/.exec(name.trim())?.[0] ?? '')
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
  /^gas$|mixture|unit|nitrogen|oxygen|argon|helium|carbonDioxide|water|hydrogen|^symbol$|^spellings$|^quantity$|^factor$|^offset$|^name$/

/** A number becomes none, an object or a list a number; everything is left out once. */
function spoiltFormsOf(value: unknown): readonly unknown[] {
  if (typeof value === 'number') return [Number.NaN, undefined]
  return typeof value === 'object' && value !== null && !ArrayBuffer.isView(value) ? [7, undefined] : [undefined]
}

test.each(judged)('%s names the field that is spoilt or left out', (name) => {
  const call = (core as unknown as Record<string, Callable>)[name] as Callable
  const parameters = parametersOf(call)
  const wrong: string[] = []
  for (const valid of validCalls[name] ?? []) {
    const args = valid()
    for (const path of args.flatMap((arg, place) => pathsOf(arg, [place]))) {
      const key = path.length === 1 ? parameters[path[0] as number] : path.at(-1)
      if (key === undefined || key === '' || path.some((step) => asWhole.test(String(step)))) continue
      const value = path.reduce<unknown>((at, step) => (at as Record<string | number, unknown>)[step], args)
      for (const to of spoiltFormsOf(value)) {
        const found = named(call, changed(args, path, to))
        const isFree = to === undefined && found === undefined // may be left out
        const isNamed =
          found !== undefined && (endsWith(found, key) || (path.length === 1 && found.startsWith(String(key))))
        if (!isFree && !isNamed) wrong.push(`${path.join('.')} ${String(to)}: ${found}`)
      }
    }
  }
  if (otherwise.has(name)) expect(wrong, 'it names every field by now: take it out of the table').not.toEqual([])
  else expect(wrong).toEqual([])
})

test('the table of what is named otherwise names functions that are judged', () => {
  expect([...otherwise].filter((name) => !judged.includes(name))).toEqual([])
})
