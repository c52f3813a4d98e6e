import {
  boyle,
  charles,
  combinedGasLaw,
  gayLussac,
  graham,
  henry,
  type IdealGasState,
  idealGasDensity,
  idealGasLaw,
  type OneOmitted,
  partialPressure,
  totalPressure,
  vanDerWaalsConstants,
  vanDerWaalsPressure,
} from '../../src/gas-law/index.ts'
import {
  type AbsolutePressure,
  type Amount,
  absolute,
  atmosphere,
  bar,
  celsius,
  cubicInch,
  difference,
  differenceOf,
  fahrenheit,
  foot,
  fractionOf,
  gasVolumeOf,
  gramPerLitre,
  gramPerMole,
  inchOfMercury,
  inUnit,
  kelvin,
  kilogram,
  kilometre,
  kilopascal,
  litre,
  measure,
  millibar,
  millilitre,
  millimetreOfMercury,
  mole,
  molePerLitre,
  one,
  pound,
  psi,
  temperatureOf,
  torr,
  usGallon,
} from '../../src/units/index.ts'
import { openstaxChemistry2e } from '../fixtures/openstax-chemistry-2e.ts'
import { provePublished } from './prove.ts'

// Molar masses that the exercises leave to the reader, g/mol: sums of standard atomic weights, as students take them.
const molarMass = {
  hydrogen: 2.016,
  helium: 4.003,
  nitrogen: 28.01,
  oxygen: 32.0,
  neon: 20.18,
  argon: 39.95,
  xenon: 131.29,
  carbonDioxide: 44.01,
  sulfurDioxide: 64.06,
  methane: 16.04,
  ethene: 28.05,
  butane: 58.12,
  ammonia: 17.03,
  hydrogenChloride: 36.46,
  dichlorodifluoromethane: 120.91,
  fluoroethane: 48.06,
} as const
const atomicMass = { sulfur: 32.06, mercuryOxide: 216.59 } as const

const moles = (grams: number, gramsPerMole: number): Amount => measure(grams / gramsPerMole, mole)

const gasMass = (at: OneOmitted<IdealGasState>, gramsPerMole: number): number =>
  inUnit(idealGasLaw(at).amount, mole) * gramsPerMole

const partOf = (fraction: number, pressure: AbsolutePressure): AbsolutePressure =>
  partialPressure(fractionOf(fraction, one), pressure)

const molarMassOf = (grams: number, litres: number, pressure: AbsolutePressure, t: number): number =>
  inUnit(
    idealGasDensity({
      pressure,
      temperature: temperatureOf(t, celsius),
      density: measure(grams / litres, gramPerLitre),
    }).molarMass,
    gramPerMole,
  )

const rateRatio = (first: number, second: number): number =>
  graham({ firstMolarMass: measure(first, gramPerMole), secondMolarMass: measure(second, gramPerMole) }).rateRatio

provePublished(
  openstaxChemistry2e,
  {
    'ox-001': ({ P1_kPa, t1_C, t2_C }) =>
      inUnit(
        gayLussac({
          initialPressure: absolute(P1_kPa, kilopascal),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalPressure,
        kilopascal,
      ),
    'ox-002': ({ P1_torr, t1_C, t2_C }) =>
      inUnit(
        gayLussac({
          initialPressure: absolute(P1_torr, torr),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalPressure,
        torr,
      ),
    'ox-003': ({ V1_L, t1_C, t2_C }) =>
      inUnit(
        charles({
          initialVolume: gasVolumeOf(V1_L, litre),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalVolume,
        litre,
      ),
    'ox-004': ({ V1_mL, t1_C, t2_C }) =>
      inUnit(
        charles({
          initialVolume: gasVolumeOf(V1_mL, millilitre),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalVolume,
        millilitre,
      ),
    'ox-005': ({ V1_cm3, t1_C, V2_cm3 }) =>
      inUnit(
        charles({
          initialVolume: gasVolumeOf(V1_cm3, millilitre),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalVolume: gasVolumeOf(V2_cm3, millilitre),
        }).finalTemperature,
        kelvin,
      ),
    'ox-006': ({ V1_mL, T1_K, T2_K }) =>
      inUnit(
        charles({
          initialVolume: gasVolumeOf(V1_mL, millilitre),
          initialTemperature: temperatureOf(T1_K, kelvin),
          finalTemperature: temperatureOf(T2_K, kelvin),
        }).finalVolume,
        millilitre,
      ),
    'ox-007': ({ P1_psi, V1_mL, V2_mL }) =>
      inUnit(
        boyle({
          initialPressure: absolute(P1_psi, psi),
          initialVolume: gasVolumeOf(V1_mL, millilitre),
          finalVolume: gasVolumeOf(V2_mL, millilitre),
        }).finalPressure,
        psi,
      ),
    'ox-008': ({ P1_psi, V1_mL, P2_psi }) =>
      inUnit(
        boyle({
          initialPressure: absolute(P1_psi, psi),
          initialVolume: gasVolumeOf(V1_mL, millilitre),
          finalPressure: absolute(P2_psi, psi),
        }).finalVolume,
        millilitre,
      ),
    'ox-009': ({ m_g, t_C, P_torr }) =>
      inUnit(
        idealGasLaw({
          amount: moles(m_g, molarMass.methane),
          temperature: temperatureOf(t_C, celsius),
          pressure: absolute(P_torr, torr),
        }).volume,
        litre,
      ),
    'ox-010': ({ n_mol, t_C, V_L }) =>
      inUnit(
        idealGasLaw({
          amount: measure(n_mol, mole),
          temperature: temperatureOf(t_C, celsius),
          volume: gasVolumeOf(V_L, litre),
        }).pressure,
        bar,
      ),
    'ox-011': ({ P1_atm, V1_L, t1_C, P2_atm, t2_C }) =>
      inUnit(
        combinedGasLaw({
          initialPressure: absolute(P1_atm, atmosphere),
          initialVolume: gasVolumeOf(V1_L, litre),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalPressure: absolute(P2_atm, atmosphere),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalVolume,
        litre,
      ),
    'ox-012': ({ V1_L, t1_C, P1_atm, t2_C, P2_atm }) =>
      inUnit(
        combinedGasLaw({
          initialPressure: absolute(P1_atm, atmosphere),
          initialVolume: gasVolumeOf(V1_L, litre),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalPressure: absolute(P2_atm, atmosphere),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalVolume,
        litre,
      ),
    'ox-013': ({ P1_torr, t1_C, t2_C }) =>
      inUnit(
        gayLussac({
          initialPressure: absolute(P1_torr, torr),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalPressure,
        torr,
      ),
    'ox-014': ({ V1_L, t1_C, t2_C }) =>
      inUnit(
        charles({
          initialVolume: gasVolumeOf(V1_L, litre),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalVolume,
        litre,
      ),
    'ox-015': ({ n_mol, P_atm, t_C }) =>
      inUnit(
        idealGasLaw({
          amount: measure(n_mol, mole),
          pressure: absolute(P_atm, atmosphere),
          temperature: temperatureOf(t_C, celsius),
        }).volume,
        litre,
      ),
    'ox-016': ({ V_L, T_K, P_atm }) =>
      inUnit(
        idealGasLaw({
          volume: gasVolumeOf(V_L, litre),
          temperature: temperatureOf(T_K, kelvin),
          pressure: absolute(P_atm, atmosphere),
        }).amount,
        mole,
      ),
    'ox-018': ({ V_L, P_torr, t_C }) =>
      gasMass(
        {
          volume: gasVolumeOf(V_L, litre),
          pressure: absolute(P_torr, torr),
          temperature: temperatureOf(t_C, celsius),
        },
        molarMass.carbonDioxide,
      ),
    'ox-019': ({ V_L, P_kPa, T_K }) =>
      gasMass(
        {
          volume: gasVolumeOf(V_L, litre),
          pressure: absolute(P_kPa, kilopascal),
          temperature: temperatureOf(T_K, kelvin),
        },
        molarMass.ethene,
      ),
    'ox-020': ({ V_mL, P_torr, t_C }) =>
      gasMass(
        {
          volume: gasVolumeOf(V_mL, millilitre),
          pressure: absolute(P_torr, torr),
          temperature: temperatureOf(t_C, celsius),
        },
        molarMass.argon,
      ),
    'ox-021': ({ V1_L, P1_atm, t1_C, P2_atm, t2_C }) =>
      inUnit(
        combinedGasLaw({
          initialPressure: absolute(P1_atm, atmosphere),
          initialVolume: gasVolumeOf(V1_L, litre),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalPressure: absolute(P2_atm, atmosphere),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalVolume,
        litre,
      ),
    'ox-022': ({ V_L, P_atm, t_C }) =>
      gasMass(
        {
          volume: gasVolumeOf(V_L, litre),
          pressure: absolute(P_atm, atmosphere),
          temperature: temperatureOf(t_C, celsius),
        },
        molarMass.butane,
      ),
    'ox-023': ({ m_g, t_C, P_atm }) =>
      inUnit(
        idealGasLaw({
          amount: moles(m_g, molarMass.dichlorodifluoromethane),
          temperature: temperatureOf(t_C, celsius),
          pressure: absolute(P_atm, atmosphere),
        }).volume,
        litre,
      ),
    'ox-024': ({ m_g, t_C, P_atm }) =>
      inUnit(
        idealGasLaw({
          amount: moles(m_g, molarMass.fluoroethane),
          temperature: temperatureOf(t_C, celsius),
          pressure: absolute(P_atm, atmosphere),
        }).volume,
        litre,
      ),
    'ox-025': ({ V1_L, t1_C, P1_atm, V2_L, t2_C }) =>
      inUnit(
        combinedGasLaw({
          initialPressure: absolute(P1_atm, atmosphere),
          initialVolume: gasVolumeOf(V1_L, litre),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalVolume: gasVolumeOf(V2_L, litre),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalPressure,
        atmosphere,
      ),
    'ox-026': ({ n_mol, T_K, P_atm }) =>
      inUnit(
        idealGasLaw({
          amount: measure(n_mol, mole),
          temperature: temperatureOf(T_K, kelvin),
          pressure: absolute(P_atm, atmosphere),
        }).volume,
        litre,
      ),
    'ox-027': ({ T_K, P_atm }) =>
      inUnit(
        idealGasDensity({
          molarMass: measure(molarMass.nitrogen, gramPerMole),
          temperature: temperatureOf(T_K, kelvin),
          pressure: absolute(P_atm, atmosphere),
        }).density,
        gramPerLitre,
      ),
    'ox-028': ({ t_C, P_torr }) =>
      inUnit(
        idealGasDensity({
          molarMass: measure(molarMass.hydrogen, gramPerMole),
          temperature: temperatureOf(t_C, celsius),
          pressure: absolute(P_torr, torr),
        }).density,
        gramPerLitre,
      ),
    'ox-029': ({ m_g, V_L, P_atm, t_C }) => molarMassOf(m_g, V_L, absolute(P_atm, atmosphere), t_C),
    'ox-030': ({ m_g, V_cm3, t_C, P_mmHg }) =>
      molarMassOf(m_g, V_cm3 / 1000, absolute(P_mmHg, millimetreOfMercury), t_C),
    'ox-031': ({ m_g, P_kPa, V_mL, t_C }) => molarMassOf(m_g, V_mL / 1000, absolute(P_kPa, kilopascal), t_C),
    'ox-032': ({ n_mol, V_L, t_C }) => inUnit(alone(n_mol, V_L, t_C), atmosphere),
    'ox-033': ({ n_mol, V_L, t_C }) => inUnit(alone(n_mol, V_L, t_C), atmosphere),
    'ox-035': ({ n_mol, V_L, t_C }) => inUnit(alone(n_mol.H2 + n_mol.He + n_mol.Ne, V_L, t_C), atmosphere),
    'ox-040': ({ n_mol, P_kPa }) =>
      inUnit(partOf(n_mol.N2O / (n_mol.O2 + n_mol.N2O), absolute(P_kPa, kilopascal)), kilopascal),
    'ox-041': ({ m_g, V_L, t_C }) =>
      inUnit(
        alone(m_g.H2 / molarMass.hydrogen + m_g.N2 / molarMass.nitrogen + m_g.Ar / molarMass.argon, V_L, t_C),
        atmosphere,
      ),
    'ox-042': ({ P_torr, p_H2O_torr }) =>
      inUnit(differenceOf(absolute(P_torr, torr), absolute(p_H2O_torr, torr)), torr),
    'ox-054': ({ P_torr, p_H2O_torr }) =>
      inUnit(differenceOf(absolute(P_torr, torr), absolute(p_H2O_torr, torr)), torr),
    'ox-044': ({ t_C, P_atm }) =>
      inUnit(
        idealGasDensity({
          molarMass: measure(molarMass.dichlorodifluoromethane, gramPerMole),
          temperature: temperatureOf(t_C, celsius),
          pressure: absolute(P_atm, atmosphere),
        }).density,
        gramPerLitre,
      ),
    'ox-045': ({ V_L, P_atm, t_C }) =>
      gasMass(
        {
          volume: gasVolumeOf(V_L, litre),
          pressure: absolute(P_atm, atmosphere),
          temperature: temperatureOf(t_C, celsius),
        },
        molarMass.oxygen,
      ),
    'ox-046': ({ m_g, V_mL, t_C, P_torr }) => molarMassOf(m_g, V_mL / 1000, absolute(P_torr, torr), t_C),
    'ox-047': ({ rho_g_per_L, t_C, P_atm }) => molarMassOf(rho_g_per_L, 1, absolute(P_atm, atmosphere), t_C),
    'ox-048': ({ V_L, m_g, t_C }) => inUnit(breathingGas(m_g, V_L, t_C), atmosphere),
    'ox-049': ({ V_L, m_g, t_C }) => inUnit(breathingGas(m_g, V_L, t_C), torr),
    'ox-050': ({ V_L, m_g, t_C }) => inUnit(breathingGas(m_g, V_L, t_C), kilopascal),
    'ox-051': ({ P_kPa, fraction }) => inUnit(partOf(fraction, absolute(P_kPa, kilopascal)), kilopascal),
    'ox-052': ({ P_kPa, fraction }) => inUnit(partOf(fraction, absolute(P_kPa, kilopascal)), kilopascal),
    'ox-053': ({ P_kPa, fraction }) => inUnit(partOf(fraction, absolute(P_kPa, kilopascal)), kilopascal),
    'ox-056': ({ m_kg, t_C, P_atm }) =>
      inUnit(
        idealGasLaw({
          amount: moles(m_kg * 1000, atomicMass.sulfur),
          temperature: temperatureOf(t_C, celsius),
          pressure: absolute(P_atm, atmosphere),
        }).volume,
        litre,
      ),
    'ox-057': ({ m_g, ratio_O2, t_C, P_atm }) =>
      inUnit(
        idealGasLaw({
          amount: moles(m_g * ratio_O2, atomicMass.mercuryOxide),
          temperature: temperatureOf(t_C, celsius),
          pressure: absolute(P_atm, atmosphere),
        }).volume,
        litre,
      ),
    'ox-058': ({ m_kg, ratio_H2, t_C, P_atm }) =>
      inUnit(
        idealGasLaw({
          amount: moles(m_kg * 1000 * ratio_H2, molarMass.dichlorodifluoromethane),
          temperature: temperatureOf(t_C, celsius),
          pressure: absolute(P_atm, atmosphere),
        }).volume,
        litre,
      ),
    'ox-059': ({ M1, M2 }) => rateRatio(M1, M2),
    'ox-060': ({ rate_N2_mL_s }) => rate_N2_mL_s * rateRatio(molarMass.sulfurDioxide, molarMass.nitrogen),
    'ox-061': ({ t_Xe_s }) => t_Xe_s * rateRatio(molarMass.xenon, molarMass.neon),
    'ox-062': ({ M2 }) => (1 / 2 / (1 / 3)) * 8 * rateRatio(molarMass.helium, M2),
    'ox-063': ({ rate_ratio }) =>
      inUnit(
        graham({ rateRatio: measure(rate_ratio, one), secondMolarMass: measure(molarMass.carbonDioxide, gramPerMole) })
          .firstMolarMass,
        gramPerMole,
      ),
    'ox-064': ({ rate_ratio_H2 }) =>
      inUnit(
        graham({ rateRatio: measure(rate_ratio_H2, one), firstMolarMass: measure(molarMass.hydrogen, gramPerMole) })
          .secondMolarMass,
        gramPerMole,
      ),
    'ox-066': ({ M1, M2 }) => rateRatio(M1, M2),
    'ox-067': ({ M1, M2 }) => rateRatio(M1, M2),
    'ox-068': ({ L_cm }) => {
      const ratio = rateRatio(molarMass.ammonia, molarMass.hydrogenChloride)
      return (L_cm * ratio) / (1 + ratio)
    },
    'ox-069': ({ n_mol, V_L, t_C }) => inUnit(alone(n_mol, V_L, t_C), atmosphere),
    'ox-070': ({ n_mol, V_L, t_C, a_L2atm_mol2, b_L_mol }) =>
      inUnit(
        vanDerWaalsPressure({
          constants: { ...vanDerWaalsConstants.carbonDioxide, a: a_L2atm_mol2, b: b_L_mol },
          temperature: temperatureOf(t_C, celsius),
          molarDensity: measure(n_mol / V_L, molePerLitre),
        }),
        atmosphere,
      ),
    'ox-074': ({ c1_mol_L, P1_kPa, P2_kPa }) =>
      inUnit(
        henry({
          initialConcentration: measure(c1_mol_L, molePerLitre),
          initialPartialPressure: absolute(P1_kPa, kilopascal),
          finalPartialPressure: absolute(P2_kPa, kilopascal),
        }).finalConcentration,
        molePerLitre,
      ),
    'ox-073': ({ c_mol_L, P_kPa }) =>
      inUnit(
        henry({
          initialConcentration: measure(c_mol_L, molePerLitre),
          initialPartialPressure: absolute(P_kPa, kilopascal),
          finalPartialPressure: absolute(1, kilopascal),
        }).finalConcentration,
        molePerLitre,
      ),
    'ox-075': ({ m_g, V_mL, P1_torr, P2_torr }) =>
      inUnit(
        henry({
          initialConcentration: measure(m_g / V_mL, molePerLitre),
          initialPartialPressure: absolute(P1_torr, torr),
          finalPartialPressure: absolute(P2_torr, torr),
        }).finalConcentration,
        molePerLitre,
      ) * 1000,
    'ox-076': ({ k_mol_L_atm, P_atm }) =>
      inUnit(
        henry({
          initialConcentration: measure(k_mol_L_atm, molePerLitre),
          initialPartialPressure: absolute(1, atmosphere),
          finalPartialPressure: absolute(P_atm, atmosphere),
        }).finalConcentration,
        molePerLitre,
      ),
    'dv-041': ({ V_L, P_atm, t1_C, P2_atm, t2_C }) =>
      inUnit(
        combinedGasLaw({
          initialPressure: absolute(P_atm, atmosphere),
          initialVolume: gasVolumeOf(V_L, litre),
          initialTemperature: temperatureOf(t1_C, celsius),
          finalPressure: absolute(P2_atm, atmosphere),
          finalTemperature: temperatureOf(t2_C, celsius),
        }).finalVolume,
        litre,
      ),
    'p3-698': ({ p_inHg }) => inUnit(absolute(p_inHg, inchOfMercury), atmosphere),
    'p3-699': ({ p_inHg }) => inUnit(absolute(p_inHg, inchOfMercury), kilopascal),
    'p3-700': ({ p_inHg }) => inUnit(absolute(p_inHg, inchOfMercury), millibar),
    'p3-701': ({ p_torr }) => inUnit(absolute(p_torr, torr), atmosphere),
    'p3-702': ({ p_torr }) => inUnit(absolute(p_torr, torr), kilopascal),
    'p3-703': ({ p_torr }) => inUnit(absolute(p_torr, torr), bar),
    'p3-706': ({ h_cm }) => inUnit(absolute(10 * h_cm, millimetreOfMercury), bar),
    'p3-707': ({ h_mm, p_mmHg }) => inUnit(absolute(p_mmHg + h_mm, millimetreOfMercury), atmosphere),
    'p3-708': ({ p_mmHg }) => inUnit(absolute(p_mmHg, millimetreOfMercury), kilopascal),
    'p3-709': ({ p_mmHg }) => inUnit(absolute(p_mmHg, millimetreOfMercury), atmosphere),
    'p3-710': ({ p_mmHg }) => inUnit(absolute(p_mmHg, millimetreOfMercury), kilopascal),
    'p3-711': ({ p_mmHg }) => inUnit(absolute(p_mmHg, millimetreOfMercury), atmosphere),
    'p3-713': ({ p_psi }) => inUnit(absolute(p_psi, psi), kilopascal),
    'p3-716': ({ dp_inHg }) => inUnit(difference(dp_inHg, inchOfMercury), torr),
    'p3-717': ({ p_mmHg }) => inUnit(absolute(p_mmHg, millimetreOfMercury), atmosphere),
    'p3-718': ({ p_mmHg }) => inUnit(absolute(p_mmHg, millimetreOfMercury), kilopascal),
    'p3-730': ({ t_C }) => inUnit(temperatureOf(t_C, celsius), fahrenheit),
    'p3-731': ({ t_C }) => inUnit(temperatureOf(t_C, celsius), kelvin),
    'p3-732': ({ t_C }) => inUnit(temperatureOf(t_C, celsius), fahrenheit),
    'p3-733': ({ t_F }) => inUnit(temperatureOf(t_F, fahrenheit), celsius),
    'p3-735': ({ t_C }) => inUnit(temperatureOf(t_C, celsius), kelvin),
    'p3-738': ({ gal }) => inUnit(measure(gal, usGallon), litre),
    'p3-739': ({ floz }) => inUnit(measure(floz / 128, usGallon), millilitre),
    'p3-740': ({ lb }) => inUnit(measure(lb, pound), kilogram),
    'p3-741': ({ lb }) => inUnit(measure(lb, pound), kilogram),
    'p3-742': ({ ft }) => inUnit(measure(ft, foot), kilometre),
    'p3-743': ({ in3 }) => inUnit(measure(in3, cubicInch), litre),
  },
  {
    'a ratio of amounts of gases of which one is no component of a mixture': ['ox-037', 'ox-039'],
    'a column of mercury of a density of its own: the unit has the conventional one': ['p3-704'],
    'speed of molecules: litrebar has no kinetic theory': ['p3-720'],
    'heat and pressure of vaporisation of liquids': ['p3-721', 'p3-722', 'p3-723', 'p3-724'],
    'surface tension': ['p3-726', 'p3-728'],
    'mass or volume from a density given: one product': ['p3-744', 'p3-745'],
    'osmotic pressure': ['p3-747', 'p3-748'],
  },
)

/** The pressure that an amount of gas has alone in a volume. */
function alone(molesOfGas: number, litres: number, t: number): AbsolutePressure {
  return idealGasLaw({
    amount: measure(molesOfGas, mole),
    volume: gasVolumeOf(litres, litre),
    temperature: temperatureOf(t, celsius),
  }).pressure
}

function breathingGas(
  grams: { readonly CO2: number; readonly O2: number; readonly N2: number },
  litres: number,
  t: number,
): AbsolutePressure {
  return totalPressure({
    carbonDioxide: alone(grams.CO2 / molarMass.carbonDioxide, litres, t),
    oxygen: alone(grams.O2 / molarMass.oxygen, litres, t),
    nitrogen: alone(grams.N2 / molarMass.nitrogen, litres, t),
  })
}
