import {
  type AirAnalysis,
  assessAnalysis,
  assessCartridge,
  assessContaminantAtDepth,
  assessFillPanel,
  assessFilters,
  assessFrost,
  assessIntakeOxygen,
  assessRunning,
  type ExpandedAir,
  type FillPanel,
  type MeasuredTrace,
  type PurityRuleId,
  partialPressureLimits,
  type StageReadings,
} from '../../src/charging/index.ts'
import { roomCondition } from '../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  fractionOf,
  freeGasFlowOf,
  gauge,
  gram,
  hour,
  kelvin,
  litrePerMinute,
  measure,
  milligramPerCubicMetre,
  partPerMillion,
  percent,
  temperatureOf,
} from '../../src/units/index.ts'
import type { Decision } from '../fixtures/decision.ts'

const trace = (ppm: number, doubt: number): MeasuredTrace => ({
  fraction: fractionOf(ppm, partPerMillion),
  standardUncertainty: fractionOf(doubt, partPerMillion),
})
const oxygen = (share: number, doubt = 0.1): MeasuredTrace => ({
  fraction: fractionOf(share, percent),
  standardUncertainty: fractionOf(doubt, percent),
})
const mass = (milligrams: number, doubt: number): MeasuredTrace => ({
  concentration: measure(milligrams, milligramPerCubicMetre),
  standardUncertainty: measure(doubt, milligramPerCubicMetre),
})
const clean: AirAnalysis = {
  sample: { from: 'compressor-outlet' },
  measured: {
    oxygen: oxygen(20.9),
    carbonMonoxide: trace(1, 0.1),
    carbonDioxide: trace(430, 10),
    oil: mass(0.1, 0.02),
    water: mass(15, 1),
    hydrocarbons: trace(2, 0.2),
  },
  odour: 'none',
}
const outlet = { from: 'compressor-outlet' } as const
const cylinderAt = (bars: number) => ({ from: 'cylinder', pressure: absolute(bars, bar) }) as const

interface Asked {
  readonly rule?: PurityRuleId
  readonly measured?: AirAnalysis['measured']
  readonly sample?: AirAnalysis['sample']
  readonly breathedAt?: number
}
function analysed(change: Asked = {}, odour: AirAnalysis['odour'] | 'not recorded' = 'none') {
  const { rule = 'en-12021-2014', measured = {}, sample = outlet, breathedAt } = change
  const { odour: _, ...rest } = clean
  const analysis = { ...rest, sample, measured: { ...clean.measured, ...measured } }
  const found = assessAnalysis(odour === 'not recorded' ? analysis : { ...analysis, odour }, [rule], {
    reference: roomCondition,
    ...(breathedAt === undefined ? {} : { breathedAt: absolute(breathedAt, bar) }),
  })[0]
  if (found === undefined) throw new Error('no assessment')
  return found
}
const without = (...names: readonly (keyof AirAnalysis['measured'])[]) => {
  const { odour = 'none', measured, sample } = clean
  const kept = Object.entries(measured).filter(([name]) => !names.includes(name as keyof AirAnalysis['measured']))
  const found = assessAnalysis({ sample, odour, measured: Object.fromEntries(kept) }, ['en-12021-2014'], {
    reference: roomCondition,
  })[0]
  if (found === undefined) throw new Error('no assessment')
  return found
}

// The codes of an analysis under EN 12021:2014 where nothing is wrong, without those named.
const rest = (...gone: readonly string[]) =>
  [
    'note-on-rule',
    'note-on-rule',
    'oxygen-within',
    'oxygen-sources-differ',
    'carbonMonoxide-within',
    'carbonDioxide-within',
    'oil-within',
    'water-within',
    'hydrocarbons-not-limited',
    'reference-not-in-rule',
  ].filter((code) => !gone.includes(code))
const open = (name: string) => [`${name}-within-uncertainty-of-limit`, ...rest(`${name}-within`)]
const over = (name: string) => [`${name}-beyond`, ...rest(`${name}-within`)]

const analysis: readonly Decision[] = [
  ['clean air', 'within', rest(), () => analysed()],
  [
    'a trace two uncertainties below its limit',
    'within',
    rest(),
    () => analysed({ measured: { carbonMonoxide: trace(4.79, 0.1) } }),
  ],
  [
    'a trace nearer',
    'undetermined',
    open('carbonMonoxide'),
    () => analysed({ measured: { carbonMonoxide: trace(4.81, 0.1) } }),
  ],
  [
    'a trace on its limit',
    'undetermined',
    open('carbonMonoxide'),
    () => analysed({ measured: { carbonMonoxide: trace(5, 0.1) } }),
  ],
  [
    'a trace above',
    'beyond',
    over('carbonMonoxide'),
    () => analysed({ measured: { carbonMonoxide: trace(5.01, 0.1) } }),
  ],
  [
    'carbon dioxide near its limit',
    'undetermined',
    open('carbonDioxide'),
    () => analysed({ measured: { carbonDioxide: trace(481, 10) } }),
  ],
  [
    'carbon dioxide above',
    'beyond',
    over('carbonDioxide'),
    () => analysed({ measured: { carbonDioxide: trace(501, 10) } }),
  ],
  ['oil near its limit', 'undetermined', open('oil'), () => analysed({ measured: { oil: mass(0.47, 0.02) } })],
  ['oil above', 'beyond', over('oil'), () => analysed({ measured: { oil: mass(0.51, 0.02) } })],
  [
    'oil as a fraction: it has no molar mass',
    'undetermined',
    ['oil-not-comparable', ...rest('oil-within')],
    () => analysed({ measured: { oil: trace(0.1, 0.01) } }),
  ],
  ['oxygen two uncertainties inside, below', 'within', rest(), () => analysed({ measured: { oxygen: oxygen(20.21) } })],
  [
    'oxygen nearer its lower limit',
    'undetermined',
    open('oxygen'),
    () => analysed({ measured: { oxygen: oxygen(20.19) } }),
  ],
  ['too little oxygen', 'beyond', over('oxygen'), () => analysed({ measured: { oxygen: oxygen(19.99) } })],
  ['oxygen two uncertainties inside, above', 'within', rest(), () => analysed({ measured: { oxygen: oxygen(21.79) } })],
  [
    'oxygen nearer its upper limit',
    'undetermined',
    open('oxygen'),
    () => analysed({ measured: { oxygen: oxygen(21.81) } }),
  ],
  ['too much oxygen', 'beyond', over('oxygen'), () => analysed({ measured: { oxygen: oxygen(22.01) } })],
  [
    'oxygen not analysed',
    'undetermined',
    ['oxygen-not-analysed', ...rest('oxygen-within', 'oxygen-sources-differ')],
    () => without('oxygen'),
  ],
  ['water not analysed', 'undetermined', ['water-not-analysed', ...rest('water-within')], () => without('water')],
  ['what the rule does not limit left out', 'within', rest('hydrocarbons-not-limited'), () => without('hydrocarbons')],

  [
    'water at the outlet, 24 mg/m³',
    'undetermined',
    open('water'),
    () => analysed({ measured: { water: mass(24, 1) } }),
  ],
  ['water at the outlet, 26 mg/m³', 'beyond', over('water'), () => analysed({ measured: { water: mass(26, 1) } })],
  [
    '26 mg/m³ in a cylinder of 200 bar',
    'within',
    rest(),
    () => analysed({ sample: cylinderAt(200), measured: { water: mass(26, 1) } }),
  ],
  [
    '37 mg/m³ in a cylinder of 200 bar',
    'within',
    rest(),
    () => analysed({ sample: cylinderAt(200), measured: { water: mass(37, 1) } }),
  ],
  [
    '37 mg/m³ in a cylinder of 201 bar',
    'beyond',
    over('water'),
    () => analysed({ sample: cylinderAt(201), measured: { water: mass(37, 1) } }),
  ],
  [
    'a nearly empty cylinder, for which no limit is known',
    'undetermined',
    ['water-limit-not-known-here', ...rest('water-within')],
    () => analysed({ sample: cylinderAt(40) }),
  ],
  ['a cylinder of just more', 'within', rest(), () => analysed({ sample: cylinderAt(40.1) })],

  ['an odour where none is allowed', 'beyond', ['odour-beyond', ...rest()], () => analysed({}, 'slight')],
  ['a worse odour', 'beyond', ['odour-beyond', ...rest()], () => analysed({}, 'objectionable')],
  ['an odour not recorded', 'undetermined', ['odour-not-checked', ...rest()], () => analysed({}, 'not recorded')],
  [
    'a slight odour where it is allowed',
    'within',
    [
      'note-on-rule',
      'note-on-rule',
      'oxygen-within',
      'carbonMonoxide-within',
      'carbonDioxide-within',
      'oil-within',
      'water-not-limited',
      'hydrocarbons-not-limited',
    ],
    () => analysed({ rule: 'as-nzs-2299-1-2015' }, 'slight'),
  ],
  [
    'an objectionable odour there',
    'beyond',
    [
      'odour-beyond',
      'note-on-rule',
      'note-on-rule',
      'oxygen-within',
      'carbonMonoxide-within',
      'carbonDioxide-within',
      'oil-within',
      'water-not-limited',
      'hydrocarbons-not-limited',
    ],
    () => analysed({ rule: 'as-nzs-2299-1-2015' }, 'objectionable'),
  ],
  ...(
    [
      ['breathed down to its scope', 'within', [], 6],
      ['breathed beyond its scope', 'undetermined', ['beyond-scope-of-rule'], 6.1],
    ] as const
  ).map(([when, verdict, codes, breathedAt]): Decision => {
    const found = () => analysed({ rule: 'en-12021-1999', breathedAt }, 'none')
    return [`${when}, under the edition of 1999`, verdict, [...codes, ...oldNotes()], found]
  }),
  [
    'a rule for shallow use, where nobody says how deep',
    'within',
    [...oldNotes().slice(0, -1), 'made-for-shallow-use', 'reference-not-in-rule'],
    () => analysed({ rule: 'en-12021-1999' }),
  ],
]

function oldNotes(): readonly string[] {
  const { because } = analysed({ rule: 'en-12021-1999', breathedAt: 6 })
  return because.map(({ code }) => code)
}

const air = (degrees: number) => ({
  freeAir: freeGasFlowOf(100, litrePerMinute, roomCondition),
  separator: { pressure: absolute(200, bar), temperature: temperatureOf(degrees, celsius) },
})
const worn = (grams: number, basis: 'maker' | 'measured' | 'memory' = 'maker', doubt = 10) =>
  assessCartridge(
    {
      capacity: { value: measure(grams, gram), standardUncertainty: measure(doubt, gram), basis },
      runs: [{ ...air(25), duration: measure(40, hour) }],
      next: air(25),
    },
    { reference: roomCondition },
  )
const alone = 'water-alone'
/** What the run above puts into the cartridge, g, and its standard uncertainty. */
const taken = worn(300).value / gram.factor
const takenDoubt = Math.sqrt((worn(300).marginUncertainty ?? 0) ** 2 / gram.factor ** 2 - 100)

const cartridge: readonly Decision[] = [
  ['room left beyond two uncertainties', 'within', [alone], () => worn(taken + 2 * Math.hypot(10, takenDoubt) + 0.01)],
  [
    'room left within two uncertainties',
    'undetermined',
    ['within-uncertainty-of-capacity', alone],
    () => worn(taken + 2 * Math.hypot(10, takenDoubt) - 0.01),
  ],
  ['just not used up', 'undetermined', ['within-uncertainty-of-capacity', alone], () => worn(taken + 0.01)],
  ['used up', 'beyond', ['capacity-used', alone], () => worn(taken - 0.01)],
  ['a measured capacity', 'within', [alone], () => worn(300, 'measured')],
  ['a capacity from memory', 'undetermined', ['capacity-from-memory', alone], () => worn(300, 'memory')],
  ['used up by memory', 'beyond', ['capacity-used', 'capacity-from-memory', alone], () => worn(40, 'memory')],
  [
    'near by memory',
    'undetermined',
    ['within-uncertainty-of-capacity', 'capacity-from-memory', alone],
    () => worn(taken + 1, 'memory'),
  ],
  [
    'a capacity known less well',
    'undetermined',
    ['within-uncertainty-of-capacity', alone],
    () => worn(300, 'maker', 140),
  ],
]

const monoxide = (ppm: number, doubt: number, pressure = 6) =>
  assessContaminantAtDepth(
    { ...trace(ppm, doubt), pressure: absolute(pressure, bar), surfacePressure: absolute(1, bar) } as Parameters<
      typeof assessContaminantAtDepth
    >[0],
    partialPressureLimits.carbonMonoxide,
  )
// 5 Pa at 6 bar are 8.33 ppm.
const contaminant: readonly Decision[] = [
  ['well below', 'within', ['partial-pressure-within'], () => monoxide(2, 0.1)],
  ['two uncertainties below', 'within', ['partial-pressure-within'], () => monoxide(8.13, 0.1)],
  ['nearer', 'undetermined', ['within-uncertainty-of-limit'], () => monoxide(8.14, 0.1)],
  ['just below, known exactly', 'within', ['partial-pressure-within'], () => monoxide(8.333, 0)],
  ['just above', 'beyond', ['partial-pressure-beyond'], () => monoxide(8.334, 0)],
  ['the same fraction shallower', 'within', ['partial-pressure-within'], () => monoxide(8.334, 0.1, 5)],
]

const stages = ['separator', 'molecular-sieve', 'activated-carbon'] as const
const needs = (ids: readonly string[]) => ids.map((id) => `${id}-needs`)
const row = (
  when: string,
  verdict: Decision[1],
  codes: readonly string[],
  ids: Parameters<typeof assessFilters>[0],
  against: Parameters<typeof assessFilters>[1],
): Decision => [when, verdict, [...codes, ...needs(ids)], () => assessFilters(ids, against)]
const everything = [
  'particles',
  'liquid-water',
  'water-vapour',
  'oil-mist',
  'oil-vapour',
  'odour',
  'carbon-monoxide',
] as const

const filters: readonly Decision[] = [
  row('water and odour, each with its stage', 'within', [], stages, [
    'water-vapour',
    'odour',
    'oil-vapour',
    'oil-mist',
  ]),
  row(
    'everything but carbon dioxide',
    'within',
    [],
    ['separator', 'molecular-sieve', 'activated-carbon', 'catalyst', 'dust-filter'],
    everything,
  ),
  row('carbon dioxide, which no stage takes', 'beyond', ['carbon-dioxide-passes'], stages, ['carbon-dioxide']),
  row('carbon monoxide without a catalyst', 'beyond', ['carbon-monoxide-passes'], stages, ['carbon-monoxide']),
  row('particles without a dust filter', 'beyond', ['particles-passes'], stages, ['particles']),
  row('odour without carbon', 'beyond', ['odour-passes'], ['separator', 'molecular-sieve'], ['odour']),
  row(
    'water vapour without a sieve',
    'beyond',
    ['water-vapour-passes', 'carbon-not-dry'],
    ['separator', 'activated-carbon'],
    ['water-vapour'],
  ),
  row(
    'a catalyst before the sieve',
    'beyond',
    ['catalyst-not-dry'],
    ['separator', 'catalyst', 'molecular-sieve'],
    ['carbon-monoxide'],
  ),
  row('a catalyst without a sieve', 'beyond', ['catalyst-not-dry'], ['separator', 'catalyst'], ['carbon-monoxide']),
  row('a catalyst after the sieve', 'within', [], ['separator', 'molecular-sieve', 'catalyst'], ['carbon-monoxide']),
  row('a bed before the separator', 'beyond', ['bed-meets-liquid'], ['molecular-sieve', 'separator'], ['water-vapour']),
  row('carbon without a separator', 'beyond', ['bed-meets-liquid', 'carbon-not-dry'], ['activated-carbon'], ['odour']),
  row(
    'a catalyst before the separator',
    'beyond',
    ['catalyst-not-dry', 'bed-meets-liquid'],
    ['catalyst', 'separator'],
    ['carbon-monoxide'],
  ),
  row('carbon in damp air', 'undetermined', ['carbon-not-dry'], ['separator', 'activated-carbon'], ['odour']),
  row(
    'carbon before the sieve',
    'undetermined',
    ['carbon-not-dry'],
    ['separator', 'activated-carbon', 'molecular-sieve'],
    ['odour'],
  ),
  row('a separator alone', 'within', [], ['separator'], ['liquid-water']),
  row('a dust filter alone', 'within', [], ['dust-filter'], ['particles']),
]

const expanded = (ppm: number, change: Partial<ExpandedAir> = {}) =>
  assessFrost({
    waterFraction: fractionOf(ppm, partPerMillion),
    relativeUncertainty: 0.05,
    supply: { pressure: absolute(100, bar), temperature: temperatureOf(20, celsius) },
    to: absolute(10, bar),
    surfaceTemperature: temperatureOf(15, celsius),
    ...change,
  })
const bare = (ppm: number) => {
  const { surfaceTemperature: _, ...air } = {
    waterFraction: fractionOf(ppm, partPerMillion),
    relativeUncertainty: 0.05,
    supply: { pressure: absolute(100, bar), temperature: temperatureOf(20, celsius) },
    to: absolute(10, bar),
    surfaceTemperature: undefined,
  }
  return assessFrost(air)
}
/** Frost point of the air with 47 ppm of water at 10 bar, and its bounds with the uncertainty, K: the surface decides about it. */
const frostPoint = expanded(47).limit ?? Number.NaN
const frostDoubt = 2 * (expanded(47).marginUncertainty ?? Number.NaN)
const onSurface = (t: number) => expanded(47, { surfaceTemperature: temperatureOf(t, kelvin) })

const frost: readonly Decision[] = [
  ['dry air', 'within', ['above-frost-point'], () => expanded(1)],
  [
    'a surface above the frost point and its uncertainty',
    'within',
    ['above-frost-point'],
    () => onSurface(frostPoint + frostDoubt + 0.1),
  ],
  [
    'a surface within the uncertainty, above',
    'undetermined',
    ['within-uncertainty-of-frost-point'],
    () => onSurface(frostPoint + frostDoubt / 2),
  ],
  [
    'a surface within the uncertainty, below',
    'undetermined',
    ['within-uncertainty-of-frost-point'],
    () => onSurface(frostPoint - frostDoubt / 2),
  ],
  ['a surface below the frost point', 'beyond', ['below-frost-point'], () => onSurface(frostPoint - frostDoubt - 0.1)],
  ['moist air, whose throttling is enough', 'beyond', ['below-frost-point'], () => expanded(2000)],
  ['dry air with the surface not stated', 'undetermined', ['surface-not-stated'], () => bare(1)],
  ['moist air with the surface not stated', 'beyond', ['below-frost-point', 'surface-not-stated'], () => bare(2000)],
]

const readings = (
  bars: readonly number[],
  inlets = [25, 25, 25],
  discharges = [150, 150, 150],
): readonly StageReadings[] =>
  bars.map((p, k) => ({
    pressure: absolute(p, bar),
    inletTemperature: temperatureOf(inlets[k] ?? 25, celsius),
    dischargeTemperature: temperatureOf(discharges[k] ?? 150, celsius),
  }))
const sound = [5.7, 32.3, 226]
const running = (read: readonly StageReadings[], expected = readings(sound), doubt = 0.2) =>
  assessRunning({
    expected,
    read,
    intakePressure: absolute(1, bar),
    allowed: { pressureShare: 0.1, temperature: difference(10, kelvin) },
    uncertainty: { pressure: difference(doubt, bar), temperature: difference(1, kelvin) },
  })
const only = (bars: readonly number[]) => bars.map((p) => ({ pressure: absolute(p, bar) }))
const unread = (n: number) =>
  Array.from({ length: n }, () => ['inlet-temperature-not-read', 'discharge-temperature-not-read']).flat()

// 10 % of 32.3 bar are 3.23 bar; two uncertainties of reading 0.4 bar; 10 K allowed, two uncertainties 2 K.
const runningCheck: readonly Decision[] = [
  ['as it should be', 'within', [], () => running(readings(sound))],
  ['the second stage just inside, with its uncertainty', 'within', [], () => running(readings([5.7, 35.1, 226]))],
  [
    'the second stage too near to tell',
    'undetermined',
    ['pressure-open'],
    () => running(readings([5.7, 35.2, 226], undefined, [150, 158, 150])),
  ],
  [
    'the second stage high',
    'beyond',
    ['pressure-high'],
    () => running(readings([5.7, 36, 226], undefined, [150, 158, 145])),
  ],
  [
    'the second stage low',
    'beyond',
    ['pressure-low'],
    () => running(readings([5.7, 28.6, 226], undefined, [150, 142, 156])),
  ],
  [
    'the first stage high',
    'beyond',
    ['pressure-high', ...unread(3)],
    () => running(only([6.7, 32.3, 226]), only(sound)),
  ],
  ['temperatures that were not read', 'undetermined', unread(3), () => running(only(sound))],
  ['temperatures that nothing is known of', 'undetermined', unread(3), () => running(readings(sound), only(sound))],
  [
    'another final pressure',
    'undetermined',
    ['final-pressure-differs'],
    () => running(readings([5.7, 32.3, 150], undefined, [150, 150, 122])),
  ],
  ['a warm inlet just inside', 'within', [], () => running(readings(sound, [25, 33, 25], [150, 161, 150]))],
  [
    'a warm inlet too near to tell',
    'undetermined',
    ['inlet-temperature-open'],
    () => running(readings(sound, [25, 34, 25], [150, 162, 150])),
  ],
  ['a warm inlet', 'beyond', ['inlet-temperature-high'], () => running(readings(sound, [25, 38, 25], [150, 168, 150]))],
  ['a cold inlet', 'beyond', ['inlet-temperature-low'], () => running(readings(sound, [25, 12, 25], [150, 132, 150]))],
  ['a discharge just inside', 'within', [], () => running(readings(sound, undefined, [150, 157.9, 150]))],
  [
    'a discharge too near to tell',
    'undetermined',
    ['discharge-temperature-open'],
    () => running(readings(sound, undefined, [150, 158.1, 150])),
  ],
  [
    'a discharge hotter than explained',
    'beyond',
    ['discharge-temperature-high'],
    () => running(readings(sound, undefined, [150, 163, 150])),
  ],
  [
    'a discharge colder than explained',
    'beyond',
    ['discharge-temperature-low'],
    () => running(readings(sound, undefined, [150, 137, 150])),
  ],
]

const gaugeBar = (n: number) => gauge(n, bar)
const fixed = (set: number, error = 5): FillPanel => ({
  kind: 'fixed',
  set: gaugeBar(set),
  error: difference(error, bar),
})
const adjustable = (set: number, highestSetting: number): FillPanel => ({
  kind: 'adjustable',
  set: gaugeBar(set),
  highestSetting: gaugeBar(highestSetting),
  error: difference(5, bar),
})
const atPanel = (panel: FillPanel, supply = 300, reliefOpens?: number) =>
  assessFillPanel({
    panel,
    supply: gaugeBar(supply),
    allowed: gaugeBar(232),
    ...(reliefOpens === undefined ? {} : { reliefOpens: gaugeBar(reliefOpens) }),
  })

const fillPanel: readonly Decision[] = [
  ['a fixed setting with its error below what is allowed', 'within', [], () => atPanel(fixed(225))],
  ['a fixed setting that meets it with its error', 'within', [], () => atPanel(fixed(227))],
  ['a fixed setting that goes beyond with its error', 'beyond', ['setting-too-high'], () => atPanel(fixed(228))],
  ['a fixed setting for another cylinder', 'beyond', ['setting-too-high'], () => atPanel(fixed(280))],
  ['a setting too high, from a supply that ends before', 'within', ['supply-ends-it'], () => atPanel(fixed(280), 232)],
  [
    'the same with a supply just beyond',
    'beyond',
    ['setting-too-high', 'supply-ends-it'],
    () => atPanel(fixed(280), 233),
  ],
  ['an open panel with a low supply', 'within', ['supply-ends-it'], () => atPanel({ kind: 'open' }, 232)],
  [
    'an open panel with a full bank',
    'beyond',
    ['supply-unregulated', 'supply-ends-it'],
    () => atPanel({ kind: 'open' }),
  ],
  ['a panel that cannot be turned up too far', 'within', [], () => atPanel(adjustable(200, 227))],
  ['a panel that can', 'undetermined', ['setting-can-be-raised'], () => atPanel(adjustable(200, 228))],
  ['one that could, from a supply that ends before', 'within', [], () => atPanel(adjustable(200, 300), 232)],
  ['a panel turned up too far', 'beyond', ['setting-too-high'], () => atPanel(adjustable(228, 300))],
  [
    'a relief valve below what is allowed does not excuse it',
    'beyond',
    ['setting-too-high', 'relief-below-allowed'],
    () => atPanel(fixed(280), 300, 230),
  ],
  ['a relief valve above it changes nothing', 'within', ['relief-above-allowed'], () => atPanel(fixed(225), 300, 260)],
]

const intake = (oxygen: number, doubt: number, basis: 'maker' | 'memory' = 'maker') =>
  assessIntakeOxygen(
    { oxygen: fractionOf(oxygen), standardUncertainty: fractionOf(doubt) },
    { highest: fractionOf(0.4), basis },
  )
const mean = 'mean-of-intake'
const intakeOxygen: readonly Decision[] = [
  ['two uncertainties below the limit', 'within', [mean], () => intake(0.3799, 0.01)],
  ['nearer', 'undetermined', ['within-uncertainty-of-limit', mean], () => intake(0.3801, 0.01)],
  ['on the limit, known exactly', 'within', [mean], () => intake(0.4, 0)],
  ['above', 'beyond', ['intake-too-rich', mean], () => intake(0.4001, 0.01)],
  ['well below a limit from memory', 'undetermined', ['limit-from-memory', mean], () => intake(0.3, 0.01, 'memory')],
  [
    'near a limit from memory',
    'undetermined',
    ['within-uncertainty-of-limit', 'limit-from-memory', mean],
    () => intake(0.39, 0.01, 'memory'),
  ],
  [
    'above a limit from memory',
    'beyond',
    ['intake-too-rich', 'limit-from-memory', mean],
    () => intake(0.41, 0, 'memory'),
  ],
]

/** Decision tables of the room, by function. */
export const decisions: Readonly<Record<string, readonly Decision[]>> = {
  assessAnalysis: analysis,
  assessCartridge: cartridge,
  assessContaminantAtDepth: contaminant,
  assessFillPanel: fillPanel,
  assessFilters: filters,
  assessFrost: frost,
  assessIntakeOxygen: intakeOxygen,
  assessRunning: runningCheck,
}
