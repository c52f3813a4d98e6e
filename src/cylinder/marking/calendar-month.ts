import { LitrebarError, requireText, shown } from '../../errors/index.ts'
import type { PlainNumber } from '../../units/index.ts'

/** A month as ISO 8601 writes it, `2026-11`: as close as a stamp says when something was done. */
export type CalendarMonth = `${number}-${number}`

/** A day as ISO 8601 writes it, `2026-11-25`. */
export type CalendarDate = `${number}-${number}-${number}`

/**
 * The month a number of months later. A stamped month has no day, so none is invented:
 * what is due in a month may be used through the last day of that month (`lastDayOf`).
 *
 * @param month - `YYYY-MM`, or `YYYY-MM-DD`, whose day is left out
 * @param count - whole months, of either sign
 * @returns `YYYY-MM`
 * @throws LitrebarError `input` for text that is no month, `range` for a count that is not whole
 * @source common-practice
 * @example
 * monthsLater('2023-08', 60) // => '2028-08'
 */
export function monthsLater(month: CalendarMonth | CalendarDate, count: PlainNumber): CalendarMonth {
  if (!Number.isInteger(count)) {
    throw new LitrebarError({
      code: 'range',
      argument: 'count',
      value: shown(count),
      expected: 'a whole number of months',
      hint: 'Rules count in whole months: 2.5 years are 30.',
    })
  }
  return monthText(monthNumber('month', month) + count)
}

/**
 * Last day of a month: the last on which a cylinder due in that month is not overdue.
 *
 * @param month - `YYYY-MM` or `YYYY-MM-DD`
 * @returns `YYYY-MM-DD`
 * @throws LitrebarError `input` for text that is no month
 * @source common-practice
 * @example
 * lastDayOf('2028-02') // => '2028-02-29'
 */
export function lastDayOf(month: CalendarMonth | CalendarDate): CalendarDate {
  const number = monthNumber('month', month)
  return `${monthText(number)}-${twoDigits(daysIn(number))}` as CalendarDate
}

/**
 * Days from one date to another, by the calendar alone: no clock, no time zone.
 *
 * @param from - `YYYY-MM-DD`; of a month the first day counts
 * @param to - `YYYY-MM-DD`; of a month the last day counts
 * @returns whole days, negative if `to` comes first
 * @throws LitrebarError `input` for text that is no date
 * @source common-practice
 * @example
 * daysBetween('2026-11-25', '2026-12') // => 36
 */
export function daysBetween(from: CalendarMonth | CalendarDate, to: CalendarMonth | CalendarDate): number {
  return dayNumber('to', to, 'last') - dayNumber('from', from, 'first')
}

/** Months since year 0; throws for text that is no month or date of the years 1000 to 9999. */
export function monthNumber(argument: string, text: string): number {
  requireText(argument, text, 'Write a month as 2027-06 or a date as 2027-06-01.')
  const isShaped = isDigits(text, 0, 4) && text[4] === '-' && isDigits(text, 5, 7)
  const isDated = text.length === 7 || (text.length === 10 && text[7] === '-' && isDigits(text, 8, 10))
  if (isShaped && isDated) {
    const year = figuresAt(text, 0, 4)
    const month = figuresAt(text, 5, 7)
    const day = text.length === 10 ? figuresAt(text, 8, 10) : 1
    const number = year * 12 + month - 1
    if (year >= 1000 && month >= 1 && month <= 12 && day >= 1 && day <= daysIn(number)) return number
  }
  throw new LitrebarError({
    code: 'input',
    argument,
    value: JSON.stringify(text.slice(0, 40)),
    expected: 'a month or day of the calendar, such as 2026-11 or 2026-11-25',
    hint: 'Write year, month and day in this order with leading zeros.',
  })
}

/** The number that figures make; no text is cut for it. */
function figuresAt(text: string, from: number, to: number): number {
  let number = 0
  for (let at = from; at < to; at++) number = number * 10 + text.charCodeAt(at) - 48
  return number
}

/** `YYYY-MM` of months since year 0. */
export function monthText(number: number): CalendarMonth {
  const year = Math.floor(number / 12)
  const digits = year >= 1000 ? String(year) : String(year).padStart(4, '0')
  return `${digits}-${twoDigits((number % 12) + 1)}` as CalendarMonth
}

function twoDigits(n: number): string {
  return n < 10 ? `0${String(n)}` : String(n)
}

function isDigits(text: string, from: number, to: number): boolean {
  if (text.length < to) return false
  for (let i = from; i < to; i++) {
    const code = text.charCodeAt(i)
    if (code < 48 || code > 57) return false
  }
  return true
}

function daysIn(number: number): number {
  const year = Math.floor(number / 12)
  const month = (number % 12) + 1
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31
}

function dayNumber(argument: string, text: string, dayOfMonth: 'first' | 'last'): number {
  const number = monthNumber(argument, text)
  const day = text.length === 10 ? Number(text.slice(8)) : dayOfMonth === 'first' ? 1 : daysIn(number)
  const year = Math.floor(number / 12)
  const month = number % 12
  let days = year * 365 + Math.floor((year - 1) / 4) - Math.floor((year - 1) / 100) + Math.floor((year - 1) / 400)
  for (let m = 0; m < month; m++) days += daysIn(year * 12 + m)
  return days + day
}
