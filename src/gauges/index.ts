export * from './depth/index.ts'
export * from './pressure/index.ts'
