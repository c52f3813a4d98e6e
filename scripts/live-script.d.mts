/** A file of cards, every card cut down to what the script needs. */
export function withoutCardData(code: string, path: string): string
/** The joined script, as it stands between the tags, and its hash for the content policy. */
export function joinedLiveScript(): Promise<{ readonly text: string; readonly hash: string }>
/** The names in src/live/live-script.ts with what the build puts in their places. */
export function liveScriptDefinitions(): Promise<Readonly<Record<'LIVE_PAGE_TEXT' | 'LIVE_PAGE_HASH', string>>>
