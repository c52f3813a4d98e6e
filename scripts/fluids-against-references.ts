// Holds water and moist air against two reference libraries of oceanography and steam, which are not of this ecosystem:
// apt-get install python3-gsw python3-iapws, then npm run script -- fluids-against-references [seed] [states].
// With --write the table goes into docs/measured/fluids-against-references.md.
import { spawnSync } from 'node:child_process'
import { mkdirSync, writeFileSync } from 'node:fs'
import {
  absoluteSalinityOf,
  conservativeTemperatureOf,
  freezingPointOfWater,
  liquidWaterAt,
  normalGravity,
  pressureInWaterColumn,
  seawaterDensity,
  seawaterDensityTeos10,
  speedOfSoundInWater,
  toPracticalSalinity,
} from '../src/environment/index.ts'
import {
  type DissolvedGas,
  henryConstant,
  humidAirVirials,
  saturationPressureOverIce,
  saturationPressureOverWater,
  waterFugacityInAir,
} from '../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  celsius,
  decibar,
  degree,
  depthOf,
  difference,
  fractionOf,
  gramPerKilogram,
  inUnit,
  kelvin,
  measure,
  megapascal,
  metre,
  offsetBy,
  temperatureOf,
} from '../src/units/index.ts'

type Row = Readonly<Record<string, number>> & { readonly gas?: string }

const plain = process.argv.slice(2).filter((word) => word !== '--write')
const [seed = '1', states = '1000'] = plain
const python = spawnSync('/usr/bin/python3', ['scripts/fluids-reference.py', seed, states], {
  encoding: 'utf8',
  maxBuffer: 1e9,
})
if (python.status !== 0) throw new Error(`${python.stderr}\nInstall the Debian packages python3-gsw and python3-iapws.`)
const { versions, ...sets } = JSON.parse(python.stdout) as Record<string, Row[]> & { versions: Record<string, string> }

const surface = absolute(1, atmosphere)
const atSea = (p: number) => offsetBy(surface, difference(p, decibar))
const salinity = (SA: number) => toPracticalSalinity(absoluteSalinityOf(SA, gramPerKilogram))
const sea = ({ SA = NaN, t = NaN, p = NaN }: Row) => ({
  salinity: salinity(SA),
  temperature: temperatureOf(t, celsius),
  pressure: atSea(p),
})
const K = ({ T = NaN }: Row) => temperatureOf(T, kelvin)

/** What is compared, in which unit, and the most that it may differ: what the documentation of the function says. */
interface Comparison {
  readonly set: string
  readonly found: (row: Row) => number
  readonly reference?: string
  readonly unit: string
  readonly allowed: number
  readonly relative?: true
}

const virials = ['Baa', 'Baw', 'Bww', 'Caaa', 'Caaw', 'Caww', 'Cwww'] as const
const liquid = [
  ['rho', 'density', 1],
  ['cp', 'isobaricHeatCapacity', 1000],
  ['w', 'speedOfSound', 1],
  ['mu', 'viscosity', 1],
  ['k', 'thermalConductivity', 1],
] as const

const comparisons: readonly Comparison[] = [
  {
    set: 'density of sea water, 0 to 300 dbar',
    found: (row) => seawaterDensity(sea(row)),
    unit: 'kg/m³',
    allowed: 0.006,
  },
  {
    set: 'density of sea water, 0 to 3000 dbar',
    found: (row) => seawaterDensity(sea(row)),
    unit: 'kg/m³',
    allowed: 0.01,
  },
  {
    set: 'density by TEOS-10 polynomial',
    found: ({ SA = NaN, t = NaN, p = NaN }) =>
      seawaterDensityTeos10({
        salinity: absoluteSalinityOf(SA, gramPerKilogram),
        temperature: conservativeTemperatureOf(t, celsius),
        pressure: atSea(p),
      }),
    unit: 'kg/m³',
    allowed: 1e-9,
  },
  { set: 'speed of sound, 0 to 300 dbar', found: (row) => speedOfSoundInWater(sea(row)), unit: 'm/s', allowed: 0.4 },
  { set: 'speed of sound, 0 to 3000 dbar', found: (row) => speedOfSoundInWater(sea(row)), unit: 'm/s', allowed: 1.1 },
  {
    set: 'gravity at sea level',
    found: ({ latitude = NaN }) => normalGravity({ latitude: measure(latitude, degree) }),
    unit: 'm/s²',
    allowed: 1e-12,
  },
  {
    set: 'pressure in the standard ocean',
    found: (row) =>
      (pressureInWaterColumn({
        depth: depthOf(row['depth'] ?? NaN, metre),
        surfacePressure: surface,
        salinity: salinity(row['SA'] ?? NaN),
        temperature: temperatureOf(row['t'] ?? NaN, celsius),
        latitude: measure(row['latitude'] ?? NaN, degree),
      }) -
        surface) /
      decibar.factor,
    unit: 'dbar',
    allowed: 0.005,
  },
  {
    set: 'freezing point',
    found: ({ SA = NaN, p = NaN }) =>
      inUnit(freezingPointOfWater({ salinity: salinity(SA), pressure: atSea(p) }), celsius),
    unit: 'K',
    allowed: 0.005,
  },
  {
    set: 'vapour pressure over water',
    found: (row) => saturationPressureOverWater(K(row)),
    unit: '',
    allowed: 1e-12,
    relative: true,
  },
  {
    set: 'vapour pressure over water by phase equilibrium',
    found: (row) => saturationPressureOverWater(K(row)),
    unit: '',
    allowed: 3e-4,
    relative: true,
  },
  {
    set: 'vapour pressure over ice',
    found: (row) => saturationPressureOverIce(K(row)),
    unit: '',
    allowed: 1e-9,
    relative: true,
  },
  {
    set: 'fugacity of water in air',
    found: (row) =>
      waterFugacityInAir({
        waterFraction: fractionOf(row['x'] ?? NaN),
        pressure: absolute(row['p'] ?? NaN, megapascal),
        temperature: K(row),
      }),
    unit: '',
    allowed: 1e-9,
    relative: true,
  },
  ...virials.map(
    (name): Comparison => ({
      set: 'virial coefficients',
      found: (row) => humidAirVirials(K(row))[name],
      reference: name,
      unit: '',
      // the third of air passes zero nowhere, the second of air does at 346 K
      allowed: name === 'Baa' ? 1e-6 : 1e-9,
      relative: true,
    }),
  ),
  ...liquid.map(
    ([reference, name, factor]): Comparison => ({
      set: 'liquid water',
      found: (row) => liquidWaterAt(K(row))[name] / factor,
      reference,
      unit: '',
      allowed: 1e-10,
      relative: true,
    }),
  ),
  {
    set: "Henry's constants",
    found: (row) => henryConstant(row.gas as DissolvedGas, K(row)),
    unit: '',
    allowed: 1e-12,
    relative: true,
  },
]

let failures = 0
const lines = comparisons.map(({ set, found, reference = 'reference', unit, allowed, relative }) => {
  const rows = sets[set] ?? []
  let worst = 0
  let where: Row = {}
  for (const row of rows) {
    const expected = row[reference] ?? NaN
    const off = Math.abs(relative ? found(row) / expected - 1 : found(row) - expected)
    if (!(off <= worst)) [worst, where] = [off, row]
  }
  if (!(worst <= allowed) || rows.length === 0) failures++
  const name = reference === 'reference' ? set : `${set}: ${reference}`
  const place = Object.entries(where)
    .filter(([key]) => key.length < 3 || key === 'depth' || key === 'gas' || key === 'latitude')
    .filter(([key]) => !(virials as readonly string[]).includes(key) && !['cp', 'w', 'mu', 'k'].includes(key))
    .map(([key, value]) => `${key} ${typeof value === 'number' ? Number(value.toPrecision(5)) : value}`)
    .join(', ')
  return `| ${name} | ${rows.length} | ${worst.toExponential(1)}${relative ? '' : ` ${unit}`} | ${String(allowed)} | ${place} |`
})

const table = [
  '| Quantity | States | Worst difference | Allowed | At |',
  '| :--- | ---: | ---: | ---: | :--- |',
  ...lines,
].join('\n')
const origin = `gsw ${versions['gsw'] ?? '?'}, iapws ${versions['iapws'] ?? '?'}; seed ${seed}, ${states} states each.`
console.log(`${table}\n\n${origin}`)
if (process.argv.includes('--write')) {
  mkdirSync('docs/measured', { recursive: true })
  writeFileSync(
    'docs/measured/fluids-against-references.md',
    `# Water and moist air against reference libraries

Written by \`npm run script -- fluids-against-references --write\`, which needs the Debian packages python3-gsw (TEOS-10, oceanography) and
python3-iapws (water and steam). Differences without a unit are relative. SA in g/kg, t in °C, T in K, p in dbar or MPa, depth in m.
Where the library uses another equation than the reference, the allowed difference is that of the two equations: density and sound of
1980 against TEOS-10, the closed form of the column against its integral, an auxiliary equation against phase equilibrium.

${table}

${origin}
`,
  )
}
if (failures > 0) {
  console.error(`${failures} comparisons are beyond what is allowed`)
  process.exitCode = 1
}
