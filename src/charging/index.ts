export * from './compressor/index.ts'
export * from './purity/index.ts'
export * from './water/index.ts'
