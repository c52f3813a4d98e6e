import {
  assessFill,
  assessFilling,
  assessNeckCrack,
  assessOxygenService,
  assessPit,
  assessStorage,
  assessWear,
  expansionTest,
  type FillingRequest,
  leakTest,
} from '../../../src/cylinder/index.ts'
import { dryAir, isoStandard, nitrox, pureGas } from '../../../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  day,
  difference,
  fahrenheit,
  gauge,
  internalVolumeOf,
  litre,
  measure,
  millilitre,
  millimetre,
  psi,
  temperatureOf,
} from '../../../src/units/index.ts'
import type { VerdictRow } from './row.ts'

const gas = { mixture: dryAir, ambientPressure: absolute(1, atmosphere) }
const us = {
  ...gas,
  rule: 'us-specification',
  servicePressure: gauge(3000, psi),
  reading: gauge(3000, psi),
  gasTemperature: temperatureOf(70, fahrenheit),
} as const
const un = {
  ...gas,
  rule: 'un-receptacle',
  testPressure: gauge(300, bar),
  workingPressure: gauge(200, bar),
  reading: gauge(190, bar),
  gasTemperature: temperatureOf(15, celsius),
} as const
/** The same object without one of its fields. */
function without<Given extends object, Key extends keyof Given & string>(given: Given, key: Key): Omit<Given, Key> {
  return Object.fromEntries(Object.entries(given).filter(([name]) => name !== key)) as Omit<Given, Key>
}

const mm = (n: number) => measure(n, millimetre)
const pit = { material: 'steel', depth: mm(0.1), wall: mm(6), guaranteedMinimumWall: mm(5) } as const
const readings = (total: number, permanent: number) => ({
  totalExpansion: measure(total, millilitre),
  permanentExpansion: measure(permanent, millilitre),
})
const night = {
  internalVolume: internalVolumeOf(12, litre),
  mixture: dryAir,
  first: { pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) },
  last: { pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) },
  duration: measure(1, day),
  pressureUncertainty: difference(0.3, bar),
  temperatureUncertainty: difference(0.3, celsius),
}
const tight = (test: Partial<typeof night>) =>
  leakTest({ ...night, ...test }, { reference: isoStandard }).assessment.verdict

const whip: FillingRequest = {
  ...gas,
  stamp: 'DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 23',
  rules: { ruleSet: 'us-180.209', asOf: '2026-11-25', service: 'diving' },
  country: 'US',
  gasTemperature: temperatureOf(70, fahrenheit),
  valve: { outlet: 'cga-850', thread: '3/4-14 NPSM', ratedPressure: gauge(3000, psi) },
  neckThread: '3/4-14 NPSM',
  outside: [],
}

/** Functions of filling, ageing and testing. */
export const rows: Readonly<Record<string, VerdictRow>> = {
  assessFill: {
    base: () => assessFill(us).verdict,
    turnedBy: {
      'above the limit': () => assessFill({ ...us, reading: gauge(3001, psi) }).verdict,
      'temperature of the gas unknown': () => assessFill(without(us, 'gasTemperature')).verdict,
      'a condition of the plus mark unknown': () =>
        assessFill({ ...us, reading: gauge(3200, psi), plus: { plusSign: true } }).verdict,
      'a plus stated for aluminium': () =>
        assessFill({ ...us, material: 'aluminium', plus: { specification: true } }).verdict,
      'marks that contradict each other': () => assessFill({ ...un, workingPressure: gauge(232, bar) }).verdict,
      'a rich gas in a cylinder of unknown material': () =>
        assessFill({ ...us, mixture: nitrox(0.32), servicePressure: gauge(3442, psi) }).verdict,
      'a rich gas in aluminium above 3000 psi': () =>
        assessFill({
          ...us,
          mixture: nitrox(0.32),
          material: 'aluminium',
          servicePressure: gauge(3442, psi),
          reading: gauge(3100, psi),
        }).verdict,
    },
  },
  assessFilling: {
    base: () => assessFilling(whip).verdict,
    turnedBy: {
      condemned: () =>
        assessFilling({ ...whip, stamp: 'DOT-3AL3000 CONDEMNED\nP4711 BRISKA\n07 V 08\n10 A902 23' }).verdict,
      overdue: () => assessFilling({ ...whip, rules: { ...whip.rules, asOf: '2028-11' } }).verdict,
      'an unread figure': () =>
        assessFilling({ ...whip, stamp: 'DOT-3AL3000\nP4711 BRISKA\n07 V 08\n13 A902 23' }).verdict,
      'a test after the day': () => assessFilling({ ...whip, rules: { ...whip.rules, asOf: '2022-01' } }).verdict,
      'nobody looked at the outside': () => assessFilling(without(whip, 'outside')).verdict,
      'no valve stated': () => assessFilling(without(whip, 'valve')).verdict,
      'no neck thread known': () => assessFilling(without(whip, 'neckThread')).verdict,
      'another country': () => assessFilling({ ...whip, country: 'FR' }).verdict,
      'a rich gas without a policy': () => assessFilling({ ...whip, mixture: nitrox(0.32) }).verdict,
    },
  },
  assessOxygenService: {
    base: () => assessOxygenService([nitrox(0.4)], 'us-diving-equipment').verdict,
    turnedBy: {
      'one gas that is richer': () => assessOxygenService([dryAir, pureGas('oxygen')], 'us-diving-equipment').verdict,
    },
  },
  assessNeckCrack: {
    isNeverWithin: true,
    base: () => assessNeckCrack({ lengthInThreads: 0.1, isInThreads: false })['appendix-c'].verdict,
    turnedBy: {
      'the other criterion': () => assessNeckCrack({ lengthInThreads: 0.1, isInThreads: false })['letter-2011'].verdict,
      'two threads': () => assessNeckCrack({ lengthInThreads: 2, isInThreads: false })['appendix-c'].verdict,
      'in the threads': () => assessNeckCrack({ lengthInThreads: 0.1, isInThreads: true })['letter-2011'].verdict,
    },
  },
  assessWear: {
    isNeverWithin: true,
    base: () => assessWear('general-corrosion', { depth: mm(0), of: mm(5) }).verdict,
    turnedBy: {
      'deeper than the limit': () => assessWear('general-corrosion', { depth: mm(1), of: mm(5) }).verdict,
      'a dent': () => assessWear('dent', { depth: mm(1), of: mm(171) }).verdict,
      'local corrosion': () => assessWear('local-corrosion', { depth: mm(0.5), of: mm(5.1) }).verdict,
    },
  },
  assessPit: {
    isNeverWithin: true,
    base: () => assessPit(pit).verdict,
    turnedBy: {
      'below the marked minimum': () => assessPit({ ...pit, guaranteedMinimumWall: mm(6) }).verdict,
      'no marked minimum': () => assessPit({ material: 'steel', depth: mm(0.1), wall: mm(6) }).verdict,
      'a material without a limit': () => assessPit({ ...pit, material: 'composite' }).verdict,
    },
  },
  assessStorage: {
    base: () => assessStorage(gauge(25, bar)).verdict,
    turnedBy: {
      'too little': () => assessStorage(gauge(9, bar)).verdict,
      'too much': () => assessStorage(gauge(31, bar)).verdict,
    },
  },
  expansionTest: {
    base: () => expansionTest(readings(56, 0.5), { limit: 'us-ten-percent', specification: '3AA' }).permanent.verdict,
    turnedBy: {
      'above the limit': () => expansionTest(readings(56, 5.7), { limit: 'us-ten-percent' }).permanent.verdict,
      'a limit from memory': () => expansionTest(readings(56, 0.5), { limit: 'iso-ten-percent' }).permanent.verdict,
      'a limit of another type': () =>
        expansionTest(readings(56, 0.5), { limit: 'us-4e', specification: '3AL' }).permanent.verdict,
      'a permit decides': () =>
        expansionTest(readings(56, 0.5), { limit: 'us-ten-percent', specification: 'special permit' }).permanent
          .verdict,
      'no rejection value': () =>
        expansionTest(readings(56, 0.5), { limit: 'us-ten-percent', specification: '3HT' }).elastic.verdict,
      'no specification': () =>
        expansionTest(readings(56, 0.5), {
          limit: 'us-ten-percent',
          rejectionElasticExpansion: measure(66, millilitre),
        }).elastic.verdict,
      'a permit may set its own rejection value': () =>
        expansionTest(readings(56, 0.5), {
          limit: 'us-ten-percent',
          specification: 'special permit',
          rejectionElasticExpansion: measure(66, millilitre),
        }).elastic.verdict,
      'above the rejection value': () =>
        expansionTest(readings(70, 0.5), {
          limit: 'us-ten-percent',
          specification: '3HT',
          rejectionElasticExpansion: measure(66, millilitre),
        }).elastic.verdict,
    },
  },
  leakTest: {
    base: () => tight({}),
    turnedBy: {
      'less than a tight cylinder shows': () => tight({ last: { ...night.last, pressure: absolute(198, bar) } }),
      'more than before: a wrong sign': () => tight({ last: { ...night.last, pressure: absolute(202, bar) } }),
      'uncertainty of pressure missing': () =>
        leakTest(without(night, 'pressureUncertainty'), { reference: isoStandard }).assessment.verdict,
      'uncertainty of temperature missing': () =>
        leakTest(without(night, 'temperatureUncertainty'), { reference: isoStandard }).assessment.verdict,
    },
  },
}
