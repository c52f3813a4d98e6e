import { atpd, dryAir, freeGas } from '../../src/gas-law/index.ts'
import {
  absolute,
  cubicFoot,
  cubicInch,
  type Direction,
  fahrenheit,
  gauge,
  internalVolumeOf,
  psi,
  round,
  temperatureOf,
} from '../../src/units/index.ts'
import { divingReferenceTables } from '../fixtures/diving-reference-tables.ts'
import { type Computations, provePublished } from './prove.ts'

// The table counts an ideal gas against an atmosphere of 14.7 psi, and cuts its figures at two decimals; one row it rounds.
const ambientPressure = absolute(14.7, psi)
const temperature = temperatureOf(70, fahrenheit)
const reference = atpd({ name: 'outside', pressure: ambientPressure, temperature })

interface Listed {
  readonly V_in3: number
  readonly p_psig: number
}
const capacity = ({ V_in3, p_psig }: Listed, rule: Direction = { toward: 'down' }): number => {
  const internalVolume = internalVolumeOf(V_in3, cubicInch)
  const contents = { internalVolume, gaugePressure: gauge(p_psig, psi), ambientPressure, temperature, mixture: dryAir }
  return round(freeGas(contents, { reference, gas: 'ideal' }), { unit: cubicFoot, decimals: 2, ...rule }).value
}

const { 'pw-189': conversion, ...capacities } = divingReferenceTables
const cut = Object.fromEntries(Object.keys(capacities).map((id) => [id, (given: Listed) => capacity(given)]))

provePublished(
  divingReferenceTables,
  { ...(cut as Computations<typeof capacities>), 'pw-170': (given) => capacity(given, { toward: 'nearest' }) },
  { [`a quotient of two figures given: ${conversion.topic}`]: ['pw-189'] },
)
