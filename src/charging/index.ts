export * from './compressor/index.ts'
