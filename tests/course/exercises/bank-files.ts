import { readdirSync, readFileSync } from 'node:fs'
import { readBank } from '../../../src/course/index.ts'

const folder = new URL('../../../examples/bank/', import.meta.url)

/** The texts of the bank of the demo course, by file name. */
export const bankTexts: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => [name, readFileSync(new URL(name, folder), 'utf8')]),
)

/** The bank of the demo course. */
export const bank = readBank(bankTexts)

/** All its exercises. */
export const exercises = bank.flatMap((subject) => subject.exercises)
