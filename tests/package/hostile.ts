// Spoils one thing at a time in a valid list of arguments.

/** Where in the arguments something stands: first the number of the argument, then names of fields. */
export type Place = readonly (string | number)[]

/** Values that no parameter of this package means. */
export const hostileValues: Readonly<Record<string, unknown>> = {
  NaN: Number.NaN,
  Infinity,
  '-Infinity': -Infinity,
  '-0': -0,
  '1e308': 1e308,
  '5e-324': 5e-324,
  'empty text': '',
  constructor: 'constructor',
  __proto__: '__proto__',
  null: null,
  undefined,
  BigInt: 1n,
  'empty list': [],
  'empty object': {},
  function: () => 1,
  Symbol: Symbol('hostile'),
  true: true,
  "'5'": '5',
}

/** What a getter throws that a caller wrote. */
export const ofTheCaller = new Error('from the getter of the caller')

/** One spoilt list of arguments. */
export interface Spoilt {
  readonly what: string
  readonly args: readonly unknown[]
  /** A number was replaced by something that is none: only a refusal will do. */
  readonly mustBeRefused: boolean
}

const deepest = 5

/** Every spoilt form of a valid list of arguments. */
export function* spoiltFormsOf(args: readonly unknown[]): Generator<Spoilt> {
  for (const place of placesIn(args, [], 0)) {
    const valid = at(args, place)
    const where = place.join('.')
    for (const [name, value] of Object.entries(hostileValues)) {
      const mustBeRefused = typeof valid === 'number' && typeof value !== 'number' && value !== undefined
      yield { what: `${where} = ${name}`, args: withValue(args, place, value), mustBeRefused }
    }
    if (typeof valid === 'object' && isRecord(valid)) {
      if (!isRow(valid)) {
        yield {
          what: `${where} with a misspelt key`,
          args: withValue(args, place, { ...valid, misspelt: 1 }),
          mustBeRefused: true,
        }
      }
      const payload = JSON.parse('{"__proto__": {"polluted": true}}') as object
      const spread = Object.defineProperties(
        {},
        { ...Object.getOwnPropertyDescriptors(valid), ...Object.getOwnPropertyDescriptors(payload) },
      )
      yield { what: `${where} with a __proto__ of its own`, args: withValue(args, place, spread), mustBeRefused: false }
      for (const key of Object.keys(valid)) {
        const { [key]: _, ...rest } = valid
        yield { what: `${where} without ${key}`, args: withValue(args, place, rest), mustBeRefused: false }
        const throwing = Object.defineProperty({ ...valid }, key, {
          enumerable: true,
          get() {
            throw ofTheCaller
          },
        })
        yield { what: `${where} whose ${key} throws`, args: withValue(args, place, throwing), mustBeRefused: false }
      }
    }
  }
}

/** A copy in which everything is frozen that can be. */
export function frozenCopy<Value>(value: Value): Value {
  if (Array.isArray(value)) return Object.freeze(value.map(frozenCopy)) as Value
  if (!isRecord(value)) return value
  return Object.freeze(Object.fromEntries(Object.entries(value).map(([key, part]) => [key, frozenCopy(part)]))) as Value
}

/** The arguments as text, to see whether a call changed them. */
export function fingerprint(value: unknown, depth = 0): string {
  if (typeof value === 'number') return Object.is(value, -0) ? '-0' : String(value)
  if (ArrayBuffer.isView(value)) return `[${(value as Float64Array).join()}]`
  if (typeof value !== 'object' || value === null || depth > deepest)
    return typeof value === 'symbol' ? 'symbol' : String(value)
  return `{${Reflect.ownKeys(value)
    .map((key) => {
      const descriptor = Object.getOwnPropertyDescriptor(value, key)
      const part: unknown = descriptor?.value
      return `${String(key)}:${descriptor !== undefined && 'value' in descriptor ? fingerprint(part, depth + 1) : 'getter'}`
    })
    .join()}}`
}

/** Where in a result a number is that is none, or infinite. */
export function notFiniteIn(value: unknown, place = 'result', seen: Set<unknown> = new Set()): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `${place} is ${String(value)}`
  if (typeof value === 'string')
    return /\bNaN\b|\bundefined\b|\[object /.test(value) ? `${place} says "${value.slice(0, 80)}"` : undefined
  if (typeof value !== 'object' || value === null || seen.has(value)) return undefined
  seen.add(value)
  for (const [key, part] of Object.entries(value)) {
    if (key === 'degreesOfFreedom' && part === Infinity) continue // documented: a standard uncertainty known exactly
    const found = notFiniteIn(part, `${place}.${key}`, seen)
    if (found !== undefined) return found
  }
  return undefined
}

function* placesIn(value: unknown, place: Place, depth: number): Generator<Place> {
  if (depth > deepest) return
  if (depth > 0) yield place
  if (Array.isArray(value)) {
    const last = depth === 0 ? value.length : Math.min(value.length, 1)
    for (let i = 0; i < last; i++) yield* placesIn(value[i], [...place, i], depth + 1)
  } else if (isRecord(value) && !isUnit(value)) {
    for (const [key, part] of Object.entries(value)) yield* placesIn(part, [...place, key], depth + 1)
  }
}

function at(value: unknown, place: Place): unknown {
  return place.reduce<unknown>((part, key) => (part as Record<string | number, unknown>)[key], value)
}

function withValue(args: readonly unknown[], place: Place, value: unknown): readonly unknown[] {
  return replaced(args, place, value) as readonly unknown[]
}

function replaced(whole: unknown, [first, ...rest]: Place, value: unknown): unknown {
  if (first === undefined) return value
  const part = replaced((whole as Record<string | number, unknown>)[first], rest, value)
  return Array.isArray(whole) ? whole.with(Number(first), part) : { ...(whole as object), [first]: part }
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false
  const prototype: unknown = Object.getPrototypeOf(value)
  return prototype === Object.prototype || prototype === null
}

function isUnit(value: Readonly<Record<string, unknown>>): boolean {
  return 'symbol' in value && 'factor' in value
}

/** Rows of tables and sets of columns may carry more than a function reads: a source, a remark, another column. */
function isRow(value: Readonly<Record<string, unknown>>): boolean {
  const isColumns = Object.values(value).some((part) => ArrayBuffer.isView(part))
  return isUnit(value) || isColumns || 'source' in value || 'place' in value
}
