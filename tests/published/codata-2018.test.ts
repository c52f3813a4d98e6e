import { idealGasLaw, molarGasConstant } from '../../src/gas-law/index.ts'
import {
  absolute,
  celsius,
  cubicMetre,
  inUnit,
  kilopascal,
  measure,
  mole,
  temperatureOf,
} from '../../src/units/index.ts'
import { codata2018 } from '../fixtures/codata-2018.ts'
import { provePublished } from './prove.ts'

const molarVolume = (kilopascals: number): number => {
  const temperature = temperatureOf(0, celsius)
  const { volume } = idealGasLaw({ amount: measure(1, mole), pressure: absolute(kilopascals, kilopascal), temperature })
  return inUnit(volume, cubicMetre)
}

provePublished(
  codata2018,
  {
    'p3-486': () => molarGasConstant,
    'p3-487': () => molarVolume(101.325),
    'p3-488': () => molarVolume(100),
  },
  {
    'molecules are not counted one by one': ['p3-489', 'p3-490'],
    'radiation of heat': ['p3-491'],
  },
)
