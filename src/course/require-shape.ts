import { requireKeys, requireList, requireText, requireWord } from '../errors/index.ts'
import { type Accepted, one, requireWithin } from '../units/index.ts'

/** What a document holds: a kind of value, a list of one shape, or an object of shapes by key; `?` ends the key of what may be left out. */
export type Shape =
  | 'text'
  | 'number'
  | 'truth'
  | 'any'
  | readonly [Shape]
  | { readonly words: readonly string[] }
  | { readonly fields: Readonly<Record<string, Shape>> }

const finite: Accepted = { unit: one, hint: 'Leave out what has no value.' }

/**
 * Refuses a part of a document that does not have its shape, before any of it is written.
 *
 * @param argument - the parameter with its path
 * @param given - what was handed in
 * @param shape - what it must hold
 * @throws LitrebarError `input` for what is missing, misspelt or of another kind; `range` for a number that is not finite
 */
export function requireShape(argument: string, given: unknown, shape: Shape): void {
  if (shape === 'any') return
  if (shape === 'text') requireText(argument, given)
  else if (shape === 'truth') requireWord(argument, given, [true, false])
  else if (shape === 'number') requireWithin(argument, given as number, finite)
  else if ('words' in shape) requireWord(argument, given, shape.words)
  else if ('fields' in shape) requireShapes(argument, given, shape.fields)
  else {
    if (!(given instanceof Float64Array)) requireList(argument, given)
    ;(given as readonly unknown[]).forEach((part, i) => {
      // the path of a number is written only where it is needed: a loop has thousands
      if (shape[0] !== 'number' || !Number.isFinite(part)) requireShape(`${argument}[${i}]`, part, shape[0])
    })
  }
}

function requireShapes(argument: string, given: unknown, fields: Readonly<Record<string, Shape>>): void {
  const shapes = Object.entries(fields).map(
    ([key, shape]) => [key.replace('?', ''), !key.endsWith('?'), shape] as const,
  )
  requireKeys(argument, given, Object.fromEntries(shapes.map(([key, isRequired]) => [key, isRequired])))
  for (const [key, , shape] of shapes) {
    const { [key]: part } = given as Readonly<Record<string, unknown>>
    if (part !== undefined) requireShape(`${argument}.${key}`, part, shape)
  }
}
