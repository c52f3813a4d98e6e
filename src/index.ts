export * from './environment/index.ts'
export * from './errors/index.ts'
export * from './references/index.ts'
export * from './units/index.ts'
