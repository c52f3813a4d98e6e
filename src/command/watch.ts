import { statSync, watch } from 'node:fs'
import { basename, dirname } from 'node:path'

/**
 * Watches chapters until the program is stopped. It watches folders, since most editors save by putting a new file in the place of the old
 * one; and only the names of chapters, since the pages that are made may lie in the same folder.
 *
 * @param paths - chapters, and folders of chapters
 * @param changed - called with the path when one of its chapters was saved
 * @returns ends all watching
 */
export function watchChapters(paths: readonly string[], changed: (path: string) => void): () => void {
  const watchers = paths.map((path) => {
    const isCourse = statSync(path).isDirectory()
    const isOurs = (name: string): boolean => (isCourse ? name.endsWith('.md') : name === basename(path))
    let timer: NodeJS.Timeout | undefined
    return watch(isCourse ? path : dirname(path), (_, name) => {
      if (name === null || !isOurs(name)) return
      clearTimeout(timer) // one save makes several events
      timer = setTimeout(() => {
        changed(path)
      }, 100)
    })
  })
  return () => {
    for (const watcher of watchers) watcher.close()
  }
}
