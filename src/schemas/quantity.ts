import * as z from 'zod/mini'
import { isLitrebarError, requireKeys, requireWord } from '../errors/index.ts'
import {
  allUnits,
  type Dimension,
  likelySlips,
  type ParsedKind,
  type ParsedKinds,
  parseQuantity,
  type SlipRole,
} from '../units/index.ts'
import { requireKind } from '../units/parse.ts'

/** A quantity as people and files state it: text such as `"232 bar"`, or a number with the symbol of its unit. */
export type QuantityInput = string | { readonly value: number; readonly unit: string }

/**
 * Schema of a quantity that a person or a file states. Gives the branded number in SI; `z.encode` gives it back as a number with its
 * SI unit, which the schema reads. A bare number is refused with what to write, and a number of a size that is not met in practice
 * with the slip that would explain it, where there is one.
 *
 * @param kind - what the quantity is, which settles gauge or absolute
 * @param options - `role`: what it stands for, to check its size; `allowUnusual`: take it anyway
 * @returns a schema from text or `{ value, unit }` to the branded number, and back
 * @example
 * quantitySchema('gauge pressure').parse('232 bar') // => 23200000
 */
export function quantitySchema<Kind extends ParsedKind>(
  kind: Kind,
  options: { readonly role?: SlipRole; readonly allowUnusual?: boolean } = {},
): z.ZodMiniType<ParsedKinds[Kind], QuantityInput> {
  requireKind('kind', kind)
  requireKeys('options', options, { role: false, allowUnusual: false })
  if (options.role !== undefined) likelySlips(options.role, 0) // refuses a role that there is not
  if (options.allowUnusual !== undefined) requireWord('options.allowUnusual', options.allowUnusual, [true, false])
  const example = examples[kind]?.[0]
  const stated = z
    .union([z.string(), z.strictObject({ value: z.number(), unit: z.string() })], {
      error: ({ input }) =>
        typeof input === 'number'
          ? `${input} has no unit. Write ${input} ${unitShown(kind)}, or { "value": ${input}, "unit": "${unitShown(kind)}" }.`
          : `expected a ${kind} with its unit${example === undefined ? '' : `, such as "${example}"`}`,
    })
    .check(z.meta({ description: `${kind}: a number with its unit, as text or apart`, examples: examples[kind] ?? [] }))
  return z.codec(stated, z.custom<ParsedKinds[Kind]>(), {
    decode: (input, context) => {
      const text = typeof input === 'string' ? input : `${String(input.value)} ${input.unit}`
      return guarded(context, () => {
        const quantity = parseQuantity(text, kind)
        const unusual =
          options.role === undefined || options.allowUnusual ? undefined : slipMessage(options.role, quantity, text)
        if (unusual !== undefined)
          context.issues.push({
            code: 'custom',
            message: unusual,
            input,
            params: { code: 'input', role: options.role },
          })
        return quantity
      })
    },
    encode: (quantity) => ({ value: Number(quantity), unit: siSymbolOf(kind) }),
  })
}

function unitShown(kind: ParsedKind): string {
  const example = examples[kind]?.[0]
  return example === undefined ? siSymbolOf(kind) : example.replace(/^\S+ /, '')
}

const dimensions: Partial<Record<ParsedKind, Dimension>> = {
  'gauge pressure': 'pressure',
  'absolute pressure': 'pressure',
  'pressure difference': 'pressure',
  'internal volume': 'volume',
  'gas volume': 'volume',
  'displaced volume': 'volume',
  'temperature difference': 'temperature',
  depth: 'length',
  altitude: 'length',
  'mole fraction': 'fraction',
  'volume fraction': 'fraction',
  'mass fraction': 'fraction',
}

/** Symbol of the unit in which a quantity of this kind is held. */
function siSymbolOf(kind: ParsedKind): string {
  const dimension = dimensions[kind] ?? kind
  return allUnits.find((unit) => unit.quantity === dimension && unit.factor === 1 && !unit.offset)?.symbol ?? ''
}

const examples: Partial<Record<ParsedKind, readonly string[]>> = {
  'gauge pressure': ['232 bar', '3000 psi'],
  'absolute pressure': ['1013.25 hPa', '101.3 kPa(a)'],
  temperature: ['15 °C', '70 °F'],
  'internal volume': ['12 L'],
  depth: ['30 m', '100 ft'],
  duration: ['40 min'],
  'volume flow': ['20 L/min'],
  'mole fraction': ['0.32', '32 %'],
}

function slipMessage(role: SlipRole, value: number, text: string): string | undefined {
  const { usual, slips } = likelySlips(role, value)
  if (usual) return undefined
  const meant = slips.map((slip) => slip.text).join(', or ')
  return `${JSON.stringify(text)} is no usual ${role}${meant === '' ? '' : `: perhaps ${meant}`}. State the unit that was meant, or allow unusual values.`
}

/** The part of a context of zod that problems go into. */
interface Issues {
  readonly value: unknown
  readonly issues: { push: (issue: never) => unknown }
}

/**
 * Runs a function of the library inside a schema: its typed error becomes an issue of the schema, with its facts beside the message.
 *
 * @param context - the context of a transform
 * @param make - what may throw a `LitrebarError`
 * @returns what `make` gives; after an issue nothing that anyone sees
 */
export function guarded<Made>(context: Issues, make: () => Made): Made {
  try {
    return make()
  } catch (thrown) {
    if (!isLitrebarError(thrown)) throw thrown
    const { message, ...facts } = thrown.toJSON()
    context.issues.push({ code: 'custom', message, input: context.value, params: { ...facts } } as never)
    return z.NEVER
  }
}
