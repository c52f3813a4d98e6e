import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'
import { type Browser, chromium } from 'playwright-core'

/** Path of a Chromium on this machine: the one that CHROMIUM names, or the first on the PATH. */
export function chromiumPath(): string | undefined {
  const named = process.env['CHROMIUM']
  if (named !== undefined && named !== '') return named
  const folders = (process.env['PATH'] ?? '').split(delimiter)
  return folders
    .flatMap((folder) => ['chromium', 'chromium-browser'].map((name) => join(folder, name)))
    .find(isExecutable)
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/** Whether tests in a browser can run here; says so aloud when they cannot. */
export function hasBrowser(subject: string): boolean {
  if (chromiumPath() !== undefined) return true
  console.warn(`NOTICE: ${subject} is NOT tested here, for want of a browser. Install chromium or set CHROMIUM.`)
  return false
}

/** A headless Chromium that stays off the network. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = chromiumPath()
  if (executablePath === undefined) throw new Error('there is no chromium; ask hasBrowser first')
  return chromium.launch({
    executablePath,
    headless: true,
    args: [
      '--no-sandbox', // Chromium refuses its sandbox to root, which is whom containers run as
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })
}
