import { liftOf, netBuoyancy } from '../../src/buoyancy/index.ts'
import {
  densityOfConvention,
  depthConventions,
  indicatedDepth,
  pressureAtDepth,
  pressureAtShownDepth,
} from '../../src/environment/index.ts'
import {
  boyle,
  btpsConventional,
  charles,
  combinedGasLaw,
  dryAir,
  freeGasAt,
  maximumOperatingDepth,
  nitrox,
  partialPressure,
  type ReferenceCondition,
  richestMixture,
  surfaceEquivalentFraction,
} from '../../src/gas-law/index.ts'
import {
  type AbsolutePressure,
  absolute,
  atmosphere,
  bar,
  celsius,
  cubicFoot,
  depthOf,
  displacedVolumeOf,
  foot,
  fractionOf,
  freeGasOf,
  gasVolumeOf,
  gramPerCubicCentimetre,
  inch,
  inchOfWater,
  inUnit,
  kelvin,
  kilogram,
  kilogramForce,
  kilogramPerCubicMetre,
  litre,
  measure,
  metre,
  metrePerSecondSquared,
  millilitre,
  millimetreOfMercury,
  one,
  pascal,
  percent,
  pound,
  poundForce,
  poundPerCubicFoot,
  psi,
  round,
  temperatureOf,
  type Unit,
} from '../../src/units/index.ts'
import { teachingNotes } from '../fixtures/teaching-notes.ts'
import { provePublished } from './prove.ts'

// Thirty-three feet of sea water to the atmosphere throughout.
const convention = depthConventions.footOfSeaWaterThirtyThree
const surfacePressure = absolute(1, atmosphere)
const sea = { surfacePressure, density: densityOfConvention(convention) }

const at = (feet: number): AbsolutePressure =>
  pressureAtShownDepth({ depth: depthOf(feet, foot), surfacePressure, convention })
const share = (fraction: number, pressure: AbsolutePressure): number =>
  inUnit(partialPressure(fractionOf(fraction, one), pressure), atmosphere)
const bubble = { surfacePressure: absolute(101_300, pascal), density: measure(1000, kilogramPerCubicMetre) }
const bubblePressure = (metres: number): AbsolutePressure =>
  pressureAtDepth({ ...bubble, depth: depthOf(metres, metre), gravity: measure(9.8, metrePerSecondSquared) })
// What a table calls the capacity is the volume at one bar.
const waterCapacity = (cubicFeet: number, bars: number): number =>
  inUnit(
    boyle({
      initialPressure: absolute(1, bar),
      initialVolume: gasVolumeOf(cubicFeet, cubicFoot),
      finalPressure: absolute(bars, bar),
    }).finalVolume,
    litre,
  )

provePublished(
  teachingNotes,
  {
    'dv-028': ({ depth_fsw }) => inUnit(at(depth_fsw), atmosphere),
    'dv-029': ({ depth_fsw, fO2 }) => share(fO2, at(depth_fsw)),
    'dv-030': ({ pO2_atm }) => inUnit(absolute(pO2_atm, atmosphere), psi),
    'dv-031': ({ depth_fsw, fO2 }) => share(fO2, at(depth_fsw)),
    'dv-032': ({ depth_m, CO2_percent }) => {
      const surface = { surfacePressure: absolute(1, bar) }
      const depth = depthOf(depth_m, metre)
      const pressure = pressureAtShownDepth({ depth, convention: depthConventions.depthGauge, ...surface })
      return inUnit(
        surfaceEquivalentFraction({ fraction: fractionOf(CO2_percent, percent), pressure, ...surface }),
        percent,
      )
    },
    'dv-033': ({ depth_fsw, CO2_percent }) => {
      const fraction = fractionOf(CO2_percent, percent)
      return inUnit(surfaceEquivalentFraction({ fraction, pressure: at(depth_fsw), surfacePressure }), percent)
    },
    'dv-034': ({ fraction, depth_fsw }) => share(fraction, at(depth_fsw)),
    'dv-035': ({ fraction, depth_fsw }) => share(fraction, at(depth_fsw)),
    'dv-036': ({ fraction, depth_fsw }) => share(fraction, at(depth_fsw)),
    'dv-042': ({ fO2, pO2_ata }) => {
      const maximumOxygenPartialPressure = absolute(pO2_ata, atmosphere)
      const { depth } = maximumOperatingDepth({ mixture: nitrox(fO2), maximumOxygenPartialPressure, ...sea })
      return round(depth, { unit: foot, step: 1, toward: 'down' }).value
    },
    'dv-043': ({ depth_fsw, pO2_ata }) => {
      const maximumOxygenPartialPressure = absolute(pO2_ata, atmosphere)
      const depth = depthOf(depth_fsw, foot)
      return inUnit(richestMixture({ depth, maximumOxygenPartialPressure, ...sea }).oxygenFraction, percent)
    },
    'pw-139': ({ P_ata }) =>
      inUnit(indicatedDepth({ pressure: absolute(P_ata, atmosphere), surfacePressure, convention }), foot),
    'pw-140': ({ W_lb, V_cf, w_lb_cf }) =>
      inUnit(
        netBuoyancy(
          { mass: measure(W_lb, pound), displacedVolume: displacedVolumeOf(V_cf, cubicFoot) },
          { density: measure(w_lb_cf, poundPerCubicFoot) },
        ),
        poundForce,
      ),
    'pw-141': ({ V_cf, w_lb_cf }) =>
      inUnit(liftOf(displacedVolumeOf(V_cf, cubicFoot), { density: measure(w_lb_cf, poundPerCubicFoot) }), poundForce),
    'pw-146': ({ m_kg, V_L, rho }) =>
      -inUnit(
        netBuoyancy(
          { mass: measure(m_kg, kilogram), displacedVolume: displacedVolumeOf(V_L, litre) },
          { density: measure(rho, gramPerCubicCentimetre) },
        ),
        kilogramForce,
      ),
    'pw-142': ({ inHg, ratio }) => {
      const mercury: Unit<'pressure'> = { symbol: 'inHg', quantity: 'pressure', factor: ratio * inchOfWater.factor }
      return inUnit(absolute(inHg, mercury), inchOfWater)
    },
    'pw-143': (given) => inUnit(measure(given.in, inch), foot),
    'pw-144': ({ V_cm3, t_C, depth_m }) =>
      inUnit(
        combinedGasLaw({
          initialPressure: bubblePressure(depth_m),
          initialVolume: gasVolumeOf(V_cm3, millilitre),
          initialTemperature: temperatureOf(t_C[0] + 273, kelvin), // the book's offset
          finalPressure: bubble.surfacePressure,
          finalTemperature: temperatureOf(t_C[1] + 273, kelvin),
        }).finalVolume,
        millilitre,
      ),
    'pw-145': ({ depth_m }) => inUnit(bubblePressure(depth_m), pascal),
    'pw-177': ({ cf, bar_printed }) => waterCapacity(cf, bar_printed),
    'pw-179': ({ cf, bar_printed }) => waterCapacity(cf, bar_printed),
    'pw-181': ({ cf, bar_printed }) => waterCapacity(cf, bar_printed),
    'pw-183': ({ cf, bar_printed }) => waterCapacity(cf, bar_printed),
    'pw-185': ({ t_C, pB, pH2O_27 }) => {
      const spirometer: ReferenceCondition<'spirometer'> = {
        name: 'spirometer',
        pressure: absolute(pB, millimetreOfMercury),
        temperature: temperatureOf(t_C, celsius),
        moisture: 'saturated',
        waterVapourPressure: absolute(pH2O_27, millimetreOfMercury),
        source: 'common-practice',
        place: 'as given',
      }
      const measured = freeGasOf(1, litre, spirometer)
      const options = { from: spirometer, to: btpsConventional, mixture: dryAir, gas: 'ideal' } as const
      return inUnit(freeGasAt(measured, options), litre)
    },
    'pw-197': ({ V_L, t_C }) =>
      inUnit(
        charles({
          initialVolume: gasVolumeOf(V_L, litre),
          initialTemperature: temperatureOf(t_C[0], celsius),
          finalTemperature: temperatureOf(t_C[1], celsius),
        }).finalVolume,
        litre,
      ),
    'pw-198': ({ x, p_atm }) => share(x, absolute(p_atm, atmosphere)),
    'pw-199': ({ x, p_atm }) => share(x, absolute(p_atm, atmosphere)),
  },
  {
    'a drop of the gauge per minute, and a share of rated capacity per drop: litrebar counts gas': ['dv-037', 'dv-044'],
    'narcotic depth is a judgement of training that litrebar does not make': ['dv-045'],
    'one product or sum of figures given': ['pw-148', 'pw-149'],
    'alveolar gas: physiology beyond the apparatus': ['pw-184'],
  },
)
