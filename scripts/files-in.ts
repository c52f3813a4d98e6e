import { existsSync, readdirSync } from 'node:fs'

/** The files below a folder whose names end so, sorted, with forward slashes; none if there is no such folder. */
export function filesIn(folder: string, ending: string): string[] {
  if (!existsSync(folder)) return []
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((path) => `${folder}/${path.replaceAll('\\', '/')}`)
    .filter((path) => path.endsWith(ending))
    .sort()
}
