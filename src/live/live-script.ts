import type { LiveScript } from '../course/index.ts'

// the build puts the joined script and its hash in the place of these names
declare const LIVE_PAGE_TEXT: string
declare const LIVE_PAGE_HASH: string

/**
 * The script of live pages: every formula of the library, the writing of workings, tables and charts, and nothing that asks a network.
 * `chapterHtml` and `coursePages` put it into the pages whose chapters let readers change numbers.
 *
 * @source common-practice
 * @example
 * liveScript.hash.startsWith('sha256-') // => true
 */
export const liveScript: LiveScript = { text: LIVE_PAGE_TEXT, hash: LIVE_PAGE_HASH }
