import * as z from 'zod/mini'
import {
  type CylinderService,
  cylinderServices,
  type RegisterRow,
  type RuleSetId,
  readStamp,
  ruleSetIds,
  type Stamp,
  writeStamp,
} from '../cylinder/index.ts'
import { guarded } from './quantity.ts'

/**
 * The text of a shoulder stamp, one line or several. Gives the stamp with its findings; only a text with nothing to read is refused.
 * `z.encode` punches its marks anew: what was not read is not in it.
 */
export const stampSchema: z.ZodMiniType<Stamp, string> = z.codec(
  z.string().check(z.meta({ description: 'a shoulder stamp as punched; line breaks, or a slash between lines' })),
  z.custom<Stamp>(),
  { decode: (text, context) => guarded(context, () => readStamp(text)), encode: (stamp) => writeStamp(stamp) },
)

/** One row of a register of cylinders. */
export interface RegisterRowInput {
  readonly id: string
  readonly stamp: string
  readonly ruleSet: RuleSetId
  readonly service?: CylinderService
  readonly alloy?: '6351-T6' | 'other'
  readonly lastInspection?: string
  readonly hasRiskAssessment?: boolean
}

/** One row of a register, as `dueWithin` takes it. The stamp stays text: one that cannot be read stays a row of the answer. */
export const registerRowSchema: z.ZodMiniType<RegisterRow, RegisterRowInput> = z.strictObject({
  id: z.string().check(z.minLength(1)),
  stamp: z.string(),
  ruleSet: z.enum(ruleSetIds, {
    error: ({ input }) =>
      `ruleSet is ${JSON.stringify(input)}, expected one of ${ruleSetIds.join(', ')}. Name the rules that govern the cylinder where it is used.`,
  }),
  service: z.exactOptional(z.enum(cylinderServices)),
  alloy: z.exactOptional(z.enum(['6351-T6', 'other'])),
  lastInspection: z.exactOptional(
    z
      .string()
      .check(z.regex(/^\d{4}-\d{2}(-\d{2})?$/, 'expected a month such as 2025-04, or a day such as 2025-04-30')),
  ),
  hasRiskAssessment: z.exactOptional(z.boolean()),
}) as z.ZodMiniType<RegisterRow, RegisterRowInput>
