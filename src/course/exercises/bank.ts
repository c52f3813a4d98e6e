import { parse } from 'yaml'
import { LitrebarError, requireKeys, requireText, shown } from '../../errors/index.ts'
import { seededRandom } from '../../uncertainty/index.ts'
import { languageShape } from '../language-shape.table.ts'
import { requireShape } from '../require-shape.ts'
import type { Exercise } from './exercise.ts'
import { drawShape } from './exercise-shapes.ts'
import { type ReadExerciseOptions, readExercise } from './read-exercise.ts'
import { requireBank } from './require-exercise.ts'
import { shuffled } from './shuffled.ts'

/** A subject of a bank with its exercises. */
export interface BankSubject {
  readonly id: string
  readonly title: string
  readonly exercises: readonly Exercise[]
}

/**
 * Reads a question bank: one text in YAML or JSON for each subject, with `subject`, `title` and `exercises`.
 *
 * @param files - the texts by their file names
 * @param options - the language of the bank
 * @returns the subjects, in the order of the names
 * @throws LitrebarError `input` naming file and entry for anything that cannot be read, and for an id that stands twice
 * @example
 * const bank = readBank({ 'forces.yaml': `subject: forces
 * title: Forces
 * exercises:
 *   - { id: due, kind: drawn, level: 2, drawn: due-stamp, source: cfr-49-180-209 }` })
 * bank[0]?.title // => 'Forces'
 */
export function readBank(
  files: Readonly<Record<string, string>>,
  options: ReadExerciseOptions = {},
): readonly BankSubject[] {
  if (Object(files) !== files || Array.isArray(files))
    throw unfit('files', shown(files), 'texts by the names of their files')
  for (const [name, text] of Object.entries(files)) requireText(`files[${JSON.stringify(name)}]`, text)
  requireShape('options', options, { fields: { 'language?': languageShape } })
  const seen = new Set<string>()
  return Object.entries(files)
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, text]) => {
      const data = parsed(name, text)
      requireKeys(name, data, { subject: true, title: true, exercises: true })
      const { subject, title, exercises } = data as Readonly<Record<string, unknown>>
      if (typeof subject !== 'string' || typeof title !== 'string' || !Array.isArray(exercises))
        throw unfit(name, typeof exercises, 'subject and title as texts, exercises as a list')
      const read = exercises.map((entry, index) =>
        readExercise(entry, subject, `${name}: exercises[${String(index)}]`, options),
      )
      for (const { id } of read) {
        if (seen.has(id)) throw unfit(name, `the id ${id} again`, 'every id once in the bank')
        seen.add(id)
      }
      return { id: subject, title, exercises: read }
    })
}

function parsed(name: string, text: string): unknown {
  try {
    return parse(text)
  } catch (error) {
    throw unfit(name, (error as Error).message.split('\n')[0] ?? '', 'a text in YAML or JSON')
  }
}

/** What is drawn from a bank. */
export interface DrawOptions {
  readonly count: number
  readonly seed: number
  /** Ids of subjects; all where left out. */
  readonly subjects?: readonly string[]
  /** How hard; all where left out. */
  readonly levels?: readonly (1 | 2 | 3)[]
  readonly kinds?: readonly Exercise['kind'][]
}

/**
 * Exercises drawn from a bank by subject and difficulty: no one twice, subjects in turn, so that each has its share.
 *
 * @param bank - the bank as read
 * @param options - how many, the seed, and from what
 * @returns the exercises, subject by subject
 * @throws LitrebarError `input` where the bank has fewer that fit, or a subject is unknown
 * @example
 * const bank = readBank({ 'forces.yaml': `subject: forces
 * title: Forces
 * exercises:
 *   - { id: due, kind: drawn, level: 2, drawn: due-stamp, source: cfr-49-180-209 }` })
 * drawExercises(bank, { count: 1, seed: 5 }).map(({ id }) => id) // => ['due']
 */
export function drawExercises(bank: readonly BankSubject[], options: DrawOptions): readonly Exercise[] {
  requireShape('options', options, drawShape)
  const { count, seed, subjects, levels, kinds } = options
  requireBank('bank', bank)
  for (const subject of subjects ?? []) {
    if (!bank.some(({ id }) => id === subject))
      throw unfit('options.subjects', subject, bank.map(({ id }) => id).join(', '))
  }
  const random = seededRandom(seed)
  const piles = bank
    .filter(({ id }) => subjects?.includes(id) ?? true)
    .map(({ exercises }) =>
      shuffled(
        exercises.filter((one) => (levels?.includes(one.level) ?? true) && (kinds?.includes(one.kind) ?? true)),
        random,
      ),
    )
  const fit = piles.reduce((sum, pile) => sum + pile.length, 0)
  if (!Number.isInteger(count) || count < 1 || count > fit)
    throw unfit('options.count', String(count), `a whole number from 1 to ${String(fit)}, what fits in the bank`)
  const taken = piles.map(() => 0)
  for (let left = count, turn = 0; left > 0; turn = (turn + 1) % piles.length) {
    if ((taken[turn] as number) >= (piles[turn] as readonly Exercise[]).length) continue
    taken[turn] = (taken[turn] as number) + 1
    left -= 1
  }
  return piles.flatMap((pile, index) => pile.slice(0, taken[index]))
}

function unfit(argument: string, value: string, expected: string): LitrebarError {
  return new LitrebarError({ code: 'input', argument, value, expected, hint: 'See the how-to on sheets of exercises.' })
}
