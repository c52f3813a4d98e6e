export { german } from './german.ts'
