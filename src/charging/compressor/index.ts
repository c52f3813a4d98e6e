export { type CompressedGas, type Compression, type CompressionPath, compression } from './compression.ts'
export {
  type ClearanceSpace,
  clearanceFromStall,
  stallRatio,
  volumetricEfficiency,
} from './volumetric-efficiency.ts'
