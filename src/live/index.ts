export { liveScript } from './live-script.ts'
