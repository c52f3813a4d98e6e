export * from './gas/index.ts'
export * from './rates/index.ts'
export * from './reserves/index.ts'
export * from './use/index.ts'
