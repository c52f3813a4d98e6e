import { depthAtPressure } from '../../src/environment/index.ts'
import {
  atpd,
  boyle,
  btpsConventional,
  dryAir,
  freeGas,
  freeGasAt,
  gayLussac,
  graham,
  henry,
  idealGasDensity,
  idealGasLaw,
  molarMass,
  partialPressure,
  pressureVolume,
  pureGas,
  type ReferenceCondition,
  saturationPressure,
  vanDerWaalsConstants,
  vanDerWaalsPressure,
} from '../../src/gas-law/index.ts'
import {
  type AbsolutePressure,
  absolute,
  atmosphere,
  bar,
  celsius,
  cubicFoot,
  cubicInch,
  difference,
  fahrenheit,
  foot,
  footOfSeaWaterSixtyFourPound,
  fractionOf,
  freeGasOf,
  gasVolumeOf,
  gauge,
  gram,
  internalVolumeOf,
  inUnit,
  kelvin,
  kilogramPerCubicMetre,
  kilometre,
  kilopascal,
  litre,
  measure,
  metre,
  metreOfSeaWaterTenKilopascal,
  metrePerSecondSquared,
  millilitre,
  millimetreOfMercury,
  mole,
  molePerCubicMetre,
  molePerLitre,
  offsetBy,
  one,
  pascal,
  psi,
  psiCubicFoot,
  temperatureOf,
  toAbsolute,
  toGauge,
  torr,
} from '../../src/units/index.ts'
import { misprints } from '../fixtures/misprints.ts'
import { filled, filledWithFreeAir, swept, workOverRT } from './compressor.ts'
import { proveMisprints } from './prove.ts'

const surfacePressure = absolute(1, atmosphere)
const avogadroConstant = 6.02214076e23 // codata-2018

const alone = (moles: number, litres: number, t: number): AbsolutePressure =>
  idealGasLaw({
    amount: measure(moles, mole),
    volume: gasVolumeOf(litres, litre),
    temperature: temperatureOf(t, celsius),
  }).pressure
const nitrogenMoles = (grams: number): number => measure(grams, gram) / molarMass(pureGas('nitrogen'))
const psiInBar = ({ psi: pounds }: { readonly psi: number }): number => inUnit(gauge(pounds, psi), bar)
const capacity = ({ V_in3, p_psig }: { readonly V_in3: number; readonly p_psig: number }): number => {
  const ambientPressure = absolute(14.7, psi)
  const temperature = temperatureOf(70, fahrenheit)
  const internalVolume = internalVolumeOf(V_in3, cubicInch)
  const contents = { internalVolume, gaugePressure: gauge(p_psig, psi), ambientPressure, temperature, mixture: dryAir }
  const reference = atpd({ name: 'outside', pressure: ambientPressure, temperature })
  return inUnit(freeGas(contents, { reference, gas: 'ideal' }), cubicFoot)
}

proveMisprints(
  misprints,
  {
    'ox-017': ({ V_L, T_K, P_atm }) =>
      inUnit(
        idealGasLaw({
          volume: gasVolumeOf(V_L, litre),
          temperature: temperatureOf(T_K, kelvin),
          pressure: absolute(P_atm, atmosphere),
        }).amount,
        mole,
      ) * 67.806, // g/mol of boron trifluoride
    'ox-034': ({ n_mol, V_L, t_C }) => inUnit(alone(n_mol, V_L, t_C), atmosphere),
    'ox-036': ({ n_mol, V_L, t_C }) => inUnit(alone(n_mol.N2 + n_mol.CO + n_mol.H2, V_L, t_C), atmosphere),
    'ox-038': ({ n_mol, P_kPa }) => {
      const fraction = fractionOf(n_mol.O2 / (n_mol.O2 + n_mol.N2O), one)
      return inUnit(partialPressure(fraction, absolute(P_kPa, kilopascal)), kilopascal)
    },
    'ox-043': ({ V_L, P_torr, p_H2O_torr }) =>
      inUnit(
        boyle({
          initialPressure: absolute(P_torr - p_H2O_torr, torr),
          initialVolume: gasVolumeOf(V_L, litre),
          finalPressure: absolute(P_torr, torr),
        }).finalVolume,
        litre,
      ),
    'ox-055': ({ m_g, ratio_H2_per_Ga, t_C, P_torr }) =>
      inUnit(
        idealGasLaw({
          amount: measure((m_g / 69.723) * ratio_H2_per_Ga, mole),
          temperature: temperatureOf(t_C, celsius),
          pressure: absolute(P_torr, torr),
        }).volume,
        litre,
      ),
    'ox-065': ({ t_He_h }) =>
      t_He_h *
      graham({ firstMolarMass: molarMass(pureGas('helium')), secondMolarMass: molarMass(pureGas('hydrogen')) })
        .rateRatio,
    'ox-071': ({ m_g, V_mL, t_C }) => inUnit(alone(nitrogenMoles(m_g), V_mL / 1000, t_C), atmosphere),
    'ox-072': ({ m_g, V_mL, t_C, a_L2atm_mol2, b_L_mol }) =>
      inUnit(
        vanDerWaalsPressure({
          constants: { ...vanDerWaalsConstants.nitrogen, a: a_L2atm_mol2, b: b_L_mol },
          temperature: temperatureOf(t_C, celsius),
          molarDensity: measure(nitrogenMoles(m_g) / (V_mL / 1000), molePerLitre),
        }),
        atmosphere,
      ),
    'ox-077': ({ k_mol_L_atm, P_atm, M }) =>
      inUnit(
        henry({
          initialConcentration: measure(k_mol_L_atm, molePerLitre),
          initialPartialPressure: absolute(1, atmosphere),
          finalPartialPressure: absolute(P_atm, atmosphere),
        }).finalConcentration,
        molePerCubicMetre,
      ) * M,
    'dv-011': ({ dP_psig, FV_cf }) =>
      inUnit(pressureVolume(difference(dP_psig, psi), internalVolumeOf(FV_cf, cubicFoot)), psiCubicFoot) / 14.7,
    'dv-016': ({ cf }) => inUnit(internalVolumeOf(cf, cubicFoot), litre),
    'pw-138': ({ p_psi, t_F }) => {
      const { finalPressure } = gayLussac({
        initialPressure: toAbsolute(gauge(p_psi, psi), surfacePressure),
        initialTemperature: temperatureOf(t_F[0], fahrenheit),
        finalTemperature: temperatureOf(t_F[1], fahrenheit),
      })
      return inUnit(toGauge(finalPressure, surfacePressure), psi)
    },
    'pw-147': ({ V_L, T_K }) =>
      inUnit(
        idealGasLaw({
          pressure: surfacePressure,
          volume: gasVolumeOf(V_L, litre),
          temperature: temperatureOf(T_K, kelvin),
        }).amount,
        mole,
      ),
    'pw-176': psiInBar,
    'pw-178': psiInBar,
    'pw-180': psiInBar,
    'pw-182': psiInBar,
    // the gas of the example before: saturated at 27 °C with 26.7 mmHg of vapour
    'pw-186': ({ V_mL }) => {
      const spirometer: ReferenceCondition<'spirometer'> = {
        name: 'spirometer',
        pressure: surfacePressure,
        temperature: temperatureOf(27, celsius),
        moisture: 'saturated',
        waterVapourPressure: absolute(26.7, millimetreOfMercury),
        source: 'common-practice',
        place: 'as given',
      }
      const options = { from: spirometer, to: btpsConventional, mixture: dryAir, gas: 'ideal' } as const
      return inUnit(freeGasAt(freeGasOf(V_mL, millilitre, spirometer), options), millilitre)
    },
    'pw-187': ({ mmHg }) => inUnit(absolute(mmHg, millimetreOfMercury), kilopascal),
    'pw-015': ({ p_mmHg }) =>
      inUnit(
        depthAtPressure({
          pressure: offsetBy(surfacePressure, difference(p_mmHg, millimetreOfMercury)),
          surfacePressure,
          density: measure(1000, kilogramPerCubicMetre),
          gravity: measure(9.8, metrePerSecondSquared),
        }),
        metre,
      ),
    'pw-038': ({ n_m3, p_Pa }) =>
      inUnit(
        idealGasLaw({
          amount: measure(n_m3 / avogadroConstant, mole),
          volume: gasVolumeOf(1000, litre),
          pressure: absolute(p_Pa, pascal),
        }).temperature,
        celsius,
      ),
    'pw-044': ({ rho0, rho1, t_C }) => {
      const temperature = temperatureOf(t_C, celsius)
      const { molarMass: mass } = idealGasDensity({
        pressure: surfacePressure,
        temperature,
        density: measure(rho0, kilogramPerCubicMetre),
      })
      const density = measure(rho1, kilogramPerCubicMetre)
      return inUnit(idealGasDensity({ temperature, density, molarMass: mass }).pressure, atmosphere)
    },
    'p3-666': ({ t, td }) =>
      (100 * saturationPressure(temperatureOf(td, celsius))) / saturationPressure(temperatureOf(t, celsius)),
    'p3-691': ({ ft }) => inUnit(measure(ft, foot), kilometre),
    'pw-156': capacity,
    'pw-163': capacity,
    'pw-175': ({ cf }) => inUnit(measure(cf, cubicFoot), litre),
    'pw-089': (g) => ((100 * swept(g.D_m, g.L_m) * g.rpm) / 60) * workOverRT(g.p_bar, g.n),
    'pw-095': (g) => {
      const displacement = swept(g.D_m, g.L_m)
      const filling = filledWithFreeAir({
        clearance: g.Vc_m3 / displacement,
        n: g.n,
        drawn: { bar: g.p_bar[0], K: g.T_K[0] },
        free: { bar: g.p_free, K: g.T_K[1] },
        to: g.p_bar[1],
      })
      return displacement * g.rpm * filling
    },
    'pw-106': (g) => ((100 * swept(g.D_m, g.L_m) * g.rpm) / 60) * workOverRT(g.p_bar, g.n),
    'pw-108': (g) => {
      const flow = g.IP_kW / 100 / workOverRT(g.p_bar, g.n) // m³/s, both sides of the piston
      return 1000 * g.stroke_bore * Math.sqrt((4 * flow) / (g.piston_speed_m_min / 60) / Math.PI)
    },
    'pw-112': (g) => ((100 * swept(g.D_m, g.L_m) * 500) / 60) * filled(g.c, 5.5, g.n) * workOverRT(g.p_bar, g.n),
    'pw-120': (g) => ((100 * swept(g.D_m, g.L_m) * g.rpm) / 60) * workOverRT(g.p_bar, g.n, g.T_K),
    'pw-130': (g) =>
      100 *
      filledWithFreeAir({
        clearance: g.c,
        n: g.n,
        drawn: { bar: g.p_bar[0], K: g.T_K[0] },
        free: { bar: g.p_free, K: g.T_K[1] },
        to: g.p_bar[1],
      }),
    'pw-188': ({ slope_per_msw }) =>
      (slope_per_msw * footOfSeaWaterSixtyFourPound.factor) / metreOfSeaWaterTenKilopascal.factor,
  },
  {
    'a drop of the gauge per minute: litrebar counts gas': ['dv-038'],
    'a sum or product of figures given': ['pw-016', 'pw-046', 'pw-048'],
    'speed and free path of molecules, heat of gases and of water, expansion of ice, flow of liquids': [
      'p3-719',
      'p3-725',
      'p3-554',
      'pw-071',
      'pw-078',
      'p3-625',
      'p3-654',
      'p3-668',
      'p3-683',
      'p3-684',
    ],
    'an atmosphere from 293 K at the ground: the standard atmosphere starts at 288.15 K': ['p3-583'],
  },
)
