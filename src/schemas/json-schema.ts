import * as z from 'zod/mini'
import { requireWord } from '../errors/index.ts'
import { registerRowSchema, stampSchema } from './cylinder.ts'
import { ascentSchema, breathedDiveSchema, diveProfileSchema, measuredUseSchema, supplySchema } from './dive.ts'
import { cylinderContentsSchema, mixtureSchema } from './gas.ts'
import { breathingLogSchema, breathingSettingSchema, testConditionsSchema } from './regulator.ts'
import { waterColumnSchema } from './water.ts'

/** Every schema of an input, by name. */
export const inputSchemas = {
  mixture: mixtureSchema,
  cylinderContents: cylinderContentsSchema,
  waterColumn: waterColumnSchema,
  stamp: stampSchema,
  registerRow: registerRowSchema,
  diveProfile: diveProfileSchema,
  measuredUse: measuredUseSchema,
  supply: supplySchema,
  breathedDive: breathedDiveSchema,
  ascent: ascentSchema,
  breathingLog: breathingLogSchema,
  breathingSetting: breathingSettingSchema,
  testConditions: testConditionsSchema,
} as const

/** The name of an input that has a schema. */
export type InputName = keyof typeof inputSchemas

/**
 * The JSON Schema of an input, draft 2020-12: what a person or a file may write, before the library reads it.
 * It says which fields there are and of what form; units and ranges are checked by the schema itself.
 *
 * @param name - name of the input
 * @returns a JSON Schema with its own `$id`
 * @example
 * jsonSchemaOf('waterColumn')['$schema'] // => 'https://json-schema.org/draft/2020-12/schema'
 */
export function jsonSchemaOf(name: InputName): Record<string, unknown> {
  requireWord('name', name, Object.keys(inputSchemas) as InputName[])
  const { $schema, ...schema } = z.toJSONSchema(inputSchemas[name], { target: 'draft-2020-12', io: 'input' })
  return { $schema, $id: `urn:litrebar:input:${name}`, title: name, ...schema }
}
