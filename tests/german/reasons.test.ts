import { readFileSync } from 'node:fs'
import ts from 'typescript'
import { expect, test } from 'vitest'
import { filesIn } from '../../scripts/files-in.ts'
import { reasonIn } from '../../src/course/index.ts'
import { german } from '../../src/german/index.ts'
import * as core from '../../src/index.ts'
import { validCalls } from '../fixtures/valid-calls.ts'

/** Rooms whose texts are no reasons, or have an overlay of their own. */
const elsewhere =
  /^src\/(german|command|batch|live|course|schemas|errors|units)\/|field-text|finding-text|cautions|marking-rule/

/** Tables and texts that never become a reason: facts for teaching, and words between a caller and a reader of code. */
const noReasons: readonly RegExp[] = [/requalification-note\.table|material-rule\.table|joined-words/]
const noReasonTexts: readonly RegExp[] = [
  /^(Before each filling|The limit at 131|A cylinder that predates|The plus (does|belongs)|A limit prescribed)/, // notes on fill limits
  /^(specification 3A,|the gas is not liquefied|frangible-disc|elastic expansion measured|average or maximum wall|no excessive|a plus sign)/,
  /^(test pressure is held|no expansion test|a leak through|a rejection elastic|a foreign cylinder under|an aluminium cylinder of|a steel cylinder of|burst over)/,
  /^(disc without|relief disc|unbacked disc)/,
  /^(one outlet|two outlets|two cylinders joined)/,
  /\.needs|^general corrosion|^local corrosion|^dent deeper|^pit deeper|^line or broad/, // joined with their figure, asked at run time
]

/** Their places hold whole phrases that only a run fills: asked at run time, below. */
const composed: readonly string[] = [
  ...[
    'Stage {}: {} {}, {}.',
    'Coldest {}, {} point of the expanded air {} to {}.',
    '{}: {}',
    '{} {}',
    '{}; the limit holds {}',
  ],
  ...['{} of the {} pressure', '{} {} against {} {}, {}', '{}: the mean stands for no single breath.'],
  '{}; without the uncertainty of pressure and temperature this shows nothing either way',
  '{}: a closed cylinder gains no gas, so one of the readings is wrong',
  '{}: the mean lies {} the limit by {}, where the t test at 5 % asks for {}',
  '{}: a gain, a unit or the breathing changed, and the mean stands for neither.',
  'The density is {} times the {} measured: the fit is stretched, and a regulator near its flow limit departs from it.',
]

const plain = (text: string): string => text.replaceAll(/\{[^{}]*\}/g, '{}')

/** Every English template that a syntax node may give. */
function templatesOf(node: ts.Node): readonly string[] {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return [node.text]
  if (ts.isTemplateExpression(node))
    return [node.head.text + node.templateSpans.map(({ literal }) => `{}${literal.text}`).join('')]
  if (ts.isConditionalExpression(node)) return [...templatesOf(node.whenTrue), ...templatesOf(node.whenFalse)]
  if (ts.isBinaryExpression(node)) return [...templatesOf(node.left), ...templatesOf(node.right)]
  if (ts.isParenthesizedExpression(node)) return templatesOf(node.expression)
  return ts.isArrowFunction(node) ? templatesOf(node.body) : []
}

function reasonTemplates(): readonly { readonly file: string; readonly text: string }[] {
  const found: { file: string; text: string }[] = []
  for (const file of filesIn('src', '.ts')) {
    if (elsewhere.test(file) || noReasons.some((each) => each.test(file))) continue
    const visit = (node: ts.Node): void => {
      const isCall = ts.isCallExpression(node) && node.expression.getText() === 'reason' ? node.arguments[1] : undefined
      if (isCall !== undefined)
        for (const text of templatesOf(isCall)) if (text.includes(' ')) found.push({ file, text })
      const isText = ts.isPropertyAssignment(node) && node.name.getText() === 'text'
      const isTextLater = ts.isVariableDeclaration(node) && node.name.getText() === 'text' && node.initializer
      const source = isText ? node.initializer : isTextLater === false ? undefined : isTextLater
      if (source !== undefined)
        for (const text of templatesOf(source)) if (text.includes(' ')) found.push({ file, text })
      ts.forEachChild(node, visit)
    }
    visit(ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2022, true))
  }
  return found
}

const { sentences } = german.reasons

test('every reason that the core can give has its German', () => {
  const have = new Set(sentences.map(([english]) => plain(english)))
  const filled = (text: string): string => text.replaceAll('{}', '7')
  const missing = reasonTemplates().filter(
    ({ text }) =>
      !have.has(text) &&
      !composed.includes(text) &&
      !noReasonTexts.some((each) => each.test(text)) &&
      reasonIn({ text: filled(text) }, german) === filled(text),
  )
  expect(missing).toEqual([])
})

test('no German stands for an English sentence that is gone: a piece of it is written in the core', () => {
  const source = filesIn('src', '.ts')
    .filter((file) => !file.startsWith('src/german/'))
    .map((file) => readFileSync(file, 'utf8'))
    .join('\n')
  // Of three the words are filled in one by one: `% of the {}`, `of the {} pressure`.
  const inParts = /^\{a\} % of the (original wall|outside diameter)$|^\{a\} of the (working|service) pressure$/
  const gone = sentences.filter(([english]) => {
    if (inParts.test(english)) return false
    const pieces = english.split(/\{\w\}|: |; |, |%/).map((piece) => piece.trim())
    return !pieces.some((piece) => piece.length > 1 && source.includes(piece.slice(0, 60)))
  })
  expect(gone.map(([english]) => english)).toEqual([])
})

test('both sides have the same places, and no English sentence stands twice', () => {
  for (const [english, into] of sentences) {
    const places = (text: string): readonly string[] => (text.match(/\{\w\}/g) ?? []).toSorted()
    expect(places(into), english).toEqual(places(english))
  }
  expect(new Set(sentences.map(([english]) => english)).size).toBe(sentences.length)
})

test('reasons that calls give come out in German, with decimal commas', () => {
  const met: string[] = []
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) for (const part of value) visit(part)
    else if (typeof value === 'object' && value !== null && !ArrayBuffer.isView(value)) {
      const { because, findings } = value as { because?: unknown; findings?: unknown }
      for (const list of [because, findings])
        if (Array.isArray(list))
          for (const each of list as readonly { code?: string; text?: string; severity?: string }[])
            if (
              each.text !== undefined &&
              each.severity === undefined &&
              !/^(\S+: )?[\w.-]+$|^\d+ bar: [\w-]+$/.test(each.text)
            )
              met.push(each.text)
      for (const part of Object.values(value)) visit(part)
    }
  }
  for (const [name, calls] of Object.entries(validCalls)) {
    const call = (core as unknown as Record<string, unknown>)[name]
    if (typeof call === 'function')
      for (const args of calls) visit((call as (...args: unknown[]) => unknown)(...args()))
  }
  expect(met.length).toBeGreaterThan(60)
  const english = met
    .map((text) => ({ text, into: reasonIn({ text }, german) }))
    .filter(({ text, into }) => into === text || /\b(the|with|of|which|from|for)\b/.test(into))
  expect(english).toEqual([])
})

test('figures get the decimal sign of the language, marks and editions stay', () => {
  const text = 'due in 2027-03, valid through 2027-03-31'
  expect(reasonIn({ text }, german)).toBe('Fällig 2027-03, gültig bis einschließlich 2027-03-31.')
  expect(reasonIn({ text: 'settles at 241.6 bar, limit 232.0 bar' }, german)).toBe(
    'Stellt sich auf 241,6 bar ein, Grenze 232,0 bar.',
  )
  expect(reasonIn({ text: 'rule set us-180.209 has no interval for 3HT' }, german)).toContain('us-180.209')
  expect(reasonIn({ text: 'what no rule says' }, german)).toBe('what no rule says')
  expect(reasonIn({ text: '70 bar: the limit is recalled, its text was not seen' }, german)).toBe(
    '70 bar: Die Grenze ist aus dem Gedächtnis, ihr Text wurde nicht gesehen.',
  )
})
