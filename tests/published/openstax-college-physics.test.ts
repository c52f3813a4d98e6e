import { netBuoyancy } from '../../src/buoyancy/index.ts'
import { depthAtPressure } from '../../src/environment/index.ts'
import {
  gayLussac,
  idealGasDensity,
  idealGasLaw,
  mixtureOfPartialPressures,
  partialPressure,
} from '../../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  celsius,
  cubicMetre,
  difference,
  displacedVolumeOf,
  fahrenheit,
  fractionOf,
  gasVolumeOf,
  gauge,
  gramPerCubicMetre,
  gramPerMole,
  inUnit,
  kelvin,
  kilogram,
  kilogramPerCubicMetre,
  litre,
  measure,
  metre,
  metrePerSecondSquared,
  millimetreOfMercury,
  mole,
  newton,
  offsetBy,
  one,
  type PressureDifference,
  pascal,
  percent,
  temperatureOf,
  toAbsolute,
  toGauge,
  type Unit,
} from '../../src/units/index.ts'
import { openstaxCollegePhysics } from '../fixtures/openstax-college-physics.ts'
import { provePublished } from './prove.ts'

// The book's gravity, and a millimetre of mercury of its own in some exercises.
const gravity = measure(9.8, metrePerSecondSquared)
const millimetreOfMercuryOfBook: Unit<'pressure'> = { ...millimetreOfMercury, factor: 133 }
const surfacePressure = absolute(1, atmosphere)

const depthOfFreshWater = (excess: PressureDifference): number => {
  const water = { surfacePressure, density: measure(1000, kilogramPerCubicMetre), gravity }
  return inUnit(depthAtPressure({ pressure: offsetBy(surfacePressure, excess), ...water }), metre)
}

provePublished(
  openstaxCollegePhysics,
  {
    'pw-003': ({ P_Pa }) => depthOfFreshWater(difference(P_Pa, pascal)),
    'pw-006': ({ p_mmHg }) => depthOfFreshWater(difference(p_mmHg, millimetreOfMercury)),
    'pw-008': () => inUnit(absolute(30_000, pascal), millimetreOfMercuryOfBook), // 3.0 N on 1.0 cm²
    'pw-009': ({ p_Pa }) => depthOfFreshWater(difference(p_Pa, pascal)),
    'pw-014': ({ p_Pa }) => inUnit(absolute(p_Pa, pascal), millimetreOfMercuryOfBook),
    'pw-026': ({ m_kg, rho_body, rho_sw }) =>
      inUnit(
        netBuoyancy(
          { mass: measure(m_kg, kilogram), displacedVolume: displacedVolumeOf(m_kg / rho_body, cubicMetre) },
          { density: measure(rho_sw, kilogramPerCubicMetre), gravity },
        ),
        newton,
      ),
    'pw-032': ({ p_Pa, V_L, T_K }) =>
      inUnit(
        idealGasLaw({
          pressure: absolute(p_Pa, pascal),
          volume: gasVolumeOf(V_L, litre),
          temperature: temperatureOf(T_K, kelvin),
        }).amount,
        mole,
      ),
    'pw-033': ({ p_gauge_Pa, t1_C, t2_C }) => {
      const { finalPressure } = gayLussac({
        initialPressure: toAbsolute(gauge(p_gauge_Pa, pascal), surfacePressure),
        initialTemperature: temperatureOf(t1_C, celsius),
        finalTemperature: temperatureOf(t2_C, celsius),
      })
      return inUnit(toGauge(finalPressure, surfacePressure), atmosphere)
    },
    'pw-034': ({ t0_C, t1_C }) => {
      const { finalPressure } = gayLussac({
        initialPressure: surfacePressure,
        initialTemperature: temperatureOf(t0_C, celsius),
        finalTemperature: temperatureOf(t1_C, celsius),
      })
      return inUnit(toGauge(finalPressure, surfacePressure), atmosphere)
    },
    'pw-036': ({ V_L, t_C, p_atm }) =>
      inUnit(
        idealGasLaw({
          pressure: absolute(p_atm, atmosphere),
          volume: gasVolumeOf(V_L, litre),
          temperature: temperatureOf(t_C, celsius),
        }).amount,
        mole,
      ),
    'pw-039': ({ p_Pa, t1_C, t2_C }) =>
      inUnit(
        gayLussac({
          initialPressure: absolute(p_Pa, pascal),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalPressure,
        pascal,
      ),
    'pw-040': ({ p_Pa }) => {
      const cylinder = { volume: gasVolumeOf(1, litre), temperature: temperatureOf(-78.5, celsius) }
      const { amount } = idealGasLaw({ ...cylinder, pressure: absolute(p_Pa, pascal) })
      const left = measure(0.9 * inUnit(amount, mole), mole)
      return inUnit(idealGasLaw({ ...cylinder, amount: left }).pressure, pascal)
    },
    'pw-042': ({ p_Pa, T1 }) =>
      inUnit(
        gayLussac({
          initialPressure: absolute(p_Pa, pascal),
          initialTemperature: temperatureOf(T1, kelvin),
          finalPressure: surfacePressure,
        }).finalTemperature,
        kelvin,
      ),
    'pw-057': ({ x, p_Pa }) => inUnit(partialPressure(fractionOf(x, one), absolute(p_Pa, pascal)), pascal),
    'pw-058': ({ pO2_Pa, p_Pa }) => {
      const oxygen = absolute(pO2_Pa, pascal)
      return inUnit(mixtureOfPartialPressures({ oxygen, helium: absolute(p_Pa - pO2_Pa, pascal) }).oxygen, percent)
    },
    'pw-060': ({ rho, T_K }) =>
      inUnit(
        idealGasDensity({
          density: measure(rho, gramPerCubicMetre),
          molarMass: measure(18, gramPerMole),
          temperature: temperatureOf(T_K, kelvin),
        }).pressure,
        pascal,
      ),
    'pw-062': ({ pv_Pa, p0_Pa }) => inUnit(toGauge(absolute(pv_Pa, pascal), absolute(p0_Pa, pascal)), atmosphere),
    'p3-615': ({ t_F }) => inUnit(temperatureOf(t_F, fahrenheit), celsius),
    'p3-616': ({ t_F }) => inUnit(temperatureOf(t_F, fahrenheit), celsius),
  },
  {
    'force, area or weight behind a pressure, or a sum of two pressures: one step of arithmetic': [
      'pw-001',
      'pw-002',
      'pw-005',
      'pw-007',
      'pw-010',
      'pw-011',
      'pw-012',
      'pw-013',
      'pw-017',
      'p3-536',
      'p3-537',
      'p3-538',
      'p3-539',
    ],
    'a column of mercury of a density of its own: the unit has the conventional one': ['pw-004'],
    'ships: beyond the range of displaced volume': ['pw-019', 'pw-020'],
    'bodies that float partly out of the water, or densities weighed in a liquid': [
      'pw-021',
      'pw-022',
      'pw-023',
      'pw-024',
      'pw-025',
      'pw-027',
    ],
    'molecules are not counted one by one': ['pw-030'],
    'a reciprocal, product or quotient of figures given': ['pw-031', 'pw-055', 'pw-056', 'pw-059', 'pw-061'],
    'work and heat of gases in cycles': ['pw-063', 'pw-064', 'p3-693', 'p3-694', 'p3-695'],
    'flow of liquids': [
      'pw-080',
      'pw-081',
      'pw-082',
      'pw-083',
      'pw-084',
      'pw-085',
      'pw-086',
      'p3-551',
      'p3-556',
      'p3-557',
      'p3-560',
      'p3-562',
      'p3-563',
      'p3-564',
      'p3-566',
      'p3-593',
      'p3-594',
      'p3-595',
      'p3-596',
      'p3-597',
    ],
    'surface tension and diffusion in liquids': [
      'p3-598',
      'p3-600',
      'p3-603',
      'p3-604',
      'p3-605',
      'p3-606',
      'p3-607',
      'p3-608',
      'p3-610',
      'p3-611',
    ],
    'expansion and heat of solids and liquids': ['p3-621', 'p3-626', 'p3-627', 'p3-639', 'p3-640'],
    'speed of molecules: litrebar has no kinetic theory': ['p3-673', 'p3-675'],
  },
)
