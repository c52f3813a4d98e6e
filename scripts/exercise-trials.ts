// Draws very many variants of the bank in examples/bank and counts what must not happen, and how fast they come.
// Usage: npm run script -- exercise-trials [variants, 100000 unless given]
import { readdirSync, readFileSync } from 'node:fs'
import { markAnswer, readBank, variantsOf } from '../src/course/index.ts'
import { seededRandom } from '../src/uncertainty/index.ts'
import { roundNumber } from '../src/units/index.ts'

const wanted = Number(process.argv.at(-1)) || 100_000
const names = readdirSync('examples/bank').filter((name) => name.endsWith('.yaml'))
const bank = readBank(Object.fromEntries(names.map((name) => [name, readFileSync(`examples/bank/${name}`, 'utf8')])))
const exercises = bank.flatMap((subject) => subject.exercises)
const each = Math.ceil(wanted / exercises.length)
const random = seededRandom(1)
const faults = new Map<string, number>()
const slowest: { id: string; microseconds: number }[] = []
let drawn = 0
let seconds = 0

function count(fault: string, id: string): void {
  const key = `${fault}: ${id}`
  faults.set(key, (faults.get(key) ?? 0) + 1)
}

for (const exercise of exercises) {
  const variant = variantsOf(exercise)
  for (let seed = 0; seed < 200; seed++) variant(seed) // the engine has seen it
  const before = process.cpuUsage()
  const items = Array.from({ length: each }, (_, index) => variant(10_000 + index))
  const { user, system } = process.cpuUsage(before)
  seconds += (user + system) / 1e6
  slowest.push({ id: exercise.id, microseconds: (user + system) / each })
  drawn += items.length
  for (const item of items) {
    const { number, choices, text, working } = item
    if (/[{}]|NaN|undefined|Infinity/.test([text, ...working].join('\n'))) count('a hole in the text', exercise.id)
    if (/\bsafe(ly|ty)?\b/i.test(text)) count('a word too much', exercise.id)
    if (choices !== undefined) {
      const right = choices.filter((choice) => choice.right).length
      if (right < 1 || right === choices.length) count('no choice', exercise.id)
      if (item.kind !== 'several' && right !== 1) count('several right', exercise.id)
      if (new Set(choices.map((choice) => choice.text)).size < choices.length) count('two alike', exercise.id)
    }
    if (number === undefined) continue
    const { value, tolerance, distractors } = number
    if (!/^-?\d{1,5}(\.\d{1,4})?$/.test(number.text)) count('ugly', exercise.id)
    if (tolerance.total > 0.06 * Math.abs(value)) count('blunt', exercise.id)
    if (distractors.some((wrong) => Math.abs(Number(wrong.text) - value) <= 3 * tolerance.total))
      count('near', exercise.id)
    if (distractors.length === 0) count('without a distractor', exercise.id)
    // any hand calculation within the roundings, rounded as asked, is right
    const hand = value + (2 * random() - 1) * (tolerance.rounding + tolerance.conventions)
    const answer = roundNumber(hand, { figures: number.figures }).text
    const half = 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(Number(answer)))) - number.figures + 1)
    if (half <= tolerance.halfUnit && choices === undefined && markAnswer(item, answer).value !== 'right')
      count('a hand calculation refused', exercise.id)
  }
}

const worst = slowest.toSorted((a, b) => b.microseconds - a.microseconds).slice(0, 5)
console.log(
  `${String(drawn)} variants of ${String(exercises.length)} exercises in ${seconds.toFixed(1)} s of CPU time: ${(drawn / seconds).toFixed(0)} a second`,
)
console.log(`slowest: ${worst.map(({ id, microseconds }) => `${id} ${microseconds.toFixed(0)} µs`).join(', ')}`)
for (const [fault, times] of faults) console.log(`${fault}: ${String(times)}`)
console.log(faults.size === 0 ? 'no fault' : `${String(faults.size)} kinds of faults`)
if (faults.size > 0) process.exitCode = 1
