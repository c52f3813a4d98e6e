export { type RegisterRowInput, registerRowSchema, stampSchema } from './cylinder.ts'
export {
  type AscentInput,
  ascentSchema,
  type BreathedCylinderInput,
  type BreathedDiveInput,
  breathedCylinderSchema,
  breathedDiveSchema,
  type DepthPointInput,
  type DiveProfileInput,
  depthPointSchema,
  diveProfileSchema,
  type MeasuredUseInput,
  measuredUseSchema,
  type ResidualInput,
  residualSchema,
  type SupplyInput,
  supplySchema,
} from './dive.ts'
export { type CylinderContentsInput, cylinderContentsSchema, type MixtureInput, mixtureSchema } from './gas.ts'
export { type InputName, inputSchemas, jsonSchemaOf } from './json-schema.ts'
export { type QuantityInput, quantitySchema } from './quantity.ts'
export {
  type BreathingLogInput,
  type BreathingSettingInput,
  breathingLogSchema,
  breathingSettingSchema,
  type ColumnInput,
  type TestConditionsInput,
  testConditionsSchema,
} from './regulator.ts'
export { type WaterColumnInput, waterColumnSchema } from './water.ts'
