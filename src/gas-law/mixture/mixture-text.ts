import { LitrebarError, nearestOf, requireText } from '../../errors/index.ts'
import { type Gas, gases } from './gas.ts'
import { dryAir, heliox, type Mixture, nitrox, pureGas, trimix } from './mixture.ts'

const percent = String.raw`(\d{1,3}(?:[.,]\d{1,4})?)`
const oneNumber = new RegExp(`^(?:(nitrox|ean|heliox)\\s*)?${percent}\\s*(%)?$`)
const twoNumbers = new RegExp(`^(?:(trimix|heliox|tmx)\\s*)?${percent}\\s*/\\s*${percent}$`)
const names: Readonly<Record<string, Gas>> = { o2: 'oxygen', n2: 'nitrogen', he: 'helium', ar: 'argon' }

/**
 * A mixture as people write it: `air`, `nitrox 32`, `EAN32`, `32 %`, `0.32`, `18/45`, `trimix 18/45`, `heliox 21`, `heliox 21/79`,
 * `oxygen`. Of two numbers the first is oxygen, the second helium, in per cent. A number alone needs its sign of per cent, or is a
 * fraction up to 1: a plain 32 is refused.
 *
 * @param text - the words, upper or lower case
 * @returns the mixture; `air` is `dryAir`, nitrox is oxygen and nitrogen
 * @throws LitrebarError `mixture` for a text that is none of these, with the nearest gas or the way to write it
 * @source common-practice
 * @example
 * mixtureFromText('18/45').helium // => 0.45
 * mixtureFromText('EAN32').oxygen // => 0.32
 */
export function mixtureFromText(text: string): Mixture {
  requireText('text', text, 'Write air, nitrox 32 or 18/45.')
  const word = text.trim().toLowerCase()
  if (word === 'air' || word === 'dry air') return dryAir
  const gas = Object.hasOwn(names, word) ? names[word] : gases.find((name) => name.toLowerCase() === word)
  if (gas !== undefined) return pureGas(gas)
  const two = twoNumbers.exec(word)
  if (two !== null) return ofTwo(text, two[1], numberOf(two[2]) / 100, numberOf(two[3]) / 100)
  const one = oneNumber.exec(word)
  if (one !== null) return ofOne(text, one[1], numberOf(one[2]), one[3] !== undefined)
  const near = nearestOf(word, ['air', ...gases])
  throw refused(
    text,
    near === undefined ? 'Write air, nitrox 32, 18/45 or the name of a gas.' : `Did you mean ${near}?`,
  )
}

function ofTwo(text: string, kind: string | undefined, oxygen: number, helium: number): Mixture {
  const sum = oxygen + helium
  if (sum > 1 + 1e-9) throw refused(text, 'Oxygen and helium are more than 100 % together.')
  if (kind !== 'heliox') return helium === 0 ? nitrox(oxygen) : trimix({ oxygen, helium })
  if (Math.abs(sum - 1) > 1e-9) throw refused(text, 'The two parts of heliox are 100 % together.')
  return heliox(oxygen)
}

function ofOne(text: string, kind: string | undefined, number: number, isPercent: boolean): Mixture {
  if (kind === undefined && !isPercent && number > 1) throw refused(text, `Write nitrox ${number} or ${number} %.`)
  const oxygen = isPercent || kind !== undefined ? number / 100 : number
  if (kind !== undefined && !isPercent && number > 0 && number < 1)
    throw refused(text, `Write ${kind} ${number * 100}.`)
  if (!(oxygen <= 1)) throw refused(text, 'Oxygen is at most 100 %.')
  return kind === 'heliox' ? heliox(oxygen) : nitrox(oxygen)
}

function numberOf(digits: string | undefined): number {
  return Number((digits ?? '').replace(',', '.'))
}

function refused(text: string, hint: string): LitrebarError {
  return new LitrebarError({
    code: 'mixture',
    argument: 'text',
    value: JSON.stringify(text.slice(0, 60)),
    expected: 'a mixture as people write it',
    hint,
  })
}
