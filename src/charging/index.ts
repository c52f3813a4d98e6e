export * from './compressor/index.ts'
export * from './water/index.ts'
