import {
  endurance,
  meanAmbientPressure,
  type Profile,
  pressureVolumeBreathed,
  steadyProfile,
} from '../../src/consumption/index.ts'
import {
  type DepthConvention,
  densityOfConvention,
  depthConventions,
  indicatedDepth,
  pressureAtShownDepth,
} from '../../src/environment/index.ts'
import {
  dryAir,
  freeGas,
  normalCondition,
  partialPressure,
  pressureChange,
  pressureVolume,
  pureGas,
  richestMixture,
} from '../../src/gas-law/index.ts'
import {
  type AbsolutePressure,
  absolute,
  atmosphere,
  cubicFoot,
  cubicFootPerMinute,
  depthOf,
  differenceOf,
  fahrenheit,
  foot,
  footPerMinute,
  fractionOf,
  gauge,
  internalVolumeOf,
  inUnit,
  litre,
  litrePerMinute,
  measure,
  millibar,
  millimetreOfMercury,
  minute,
  offsetBy,
  percent,
  psi,
  psiCubicFoot,
  roundNumber,
  sumOf,
  temperatureOf,
  toAbsolute,
  type Unit,
} from '../../src/units/index.ts'
import { usNavyDivingManual } from '../fixtures/us-navy-diving-manual.ts'
import { provePublished } from './prove.ts'

// The manual counts 33 feet of sea water as one atmosphere, and an atmosphere as 14.7 psi.
const convention = depthConventions.footOfSeaWaterThirtyThree
const surfacePressure = absolute(1, atmosphere)
const sea = { surfacePressure, density: densityOfConvention(convention) }
const standardCubicFoot: Unit<'pressure volume'> = {
  symbol: 'scf',
  quantity: 'pressure volume',
  factor: atmosphere.factor * cubicFoot.factor,
}
const standardCubicFootOfManual: Unit<'pressure volume'> = { ...standardCubicFoot, factor: 14.7 * psiCubicFoot.factor }

const at = (feet: number): AbsolutePressure =>
  pressureAtShownDepth({ depth: depthOf(feet, foot), surfacePressure, convention })
const steady = (pressure: AbsolutePressure, minutes: number): Profile =>
  steadyProfile(pressure, measure(minutes, minute))
const ascent = (from: number, minutes: number): Profile => [
  { time: measure(0, minute), ambientPressure: at(from) },
  { time: measure(minutes, minute), ambientPressure: surfacePressure },
]
const breathed = (profile: Profile, cubicFeetPerMinute: number) =>
  pressureVolumeBreathed(profile, measure(cubicFeetPerMinute, cubicFootPerMinute))
const saturationMix = richestMixture({
  depth: depthOf(660, foot),
  maximumOxygenPartialPressure: absolute(0.9, atmosphere),
  ...sea,
}).oxygenFraction

provePublished(
  usNavyDivingManual,
  {
    'dv-001': ({ depth_fsw, demand_acfm }) =>
      inUnit(breathed(steady(at(depth_fsw), 1), demand_acfm), standardCubicFoot),
    'dv-002': ({ depth_fsw }) => inUnit(at(depth_fsw), atmosphere),
    'dv-003': ({ depth_fsw, demand_acfm, T_min }) =>
      inUnit(breathed(steady(at(depth_fsw), T_min), demand_acfm), standardCubicFoot),
    'dv-004': ({ from_fsw }) =>
      inUnit(indicatedDepth({ pressure: meanAmbientPressure(ascent(from_fsw, 7)), surfacePressure, convention }), foot),
    'dv-005': ({ depth_fsw, rate_ft_min }) =>
      roundNumber(measure(depth_fsw, foot) / measure(rate_ft_min, footPerMinute) / minute.factor, {
        step: 1,
        toward: 'up',
      }).value,
    'dv-006': ({ avg_depth_fsw, demand_acfm, T_min }) =>
      inUnit(breathed(ascent(2 * avg_depth_fsw, T_min), demand_acfm), standardCubicFoot),
    'dv-007': () => inUnit(sumOf(breathed(steady(at(190), 3), 1.4), breathed(ascent(190, 7), 1.4)), standardCubicFoot),
    'dv-008': ({ Vr_scf, FV_cf, Pm_psig }) => {
      const needed = pressureChange(measure(Vr_scf, standardCubicFootOfManual), internalVolumeOf(FV_cf, cubicFoot))
      return inUnit(offsetBy(gauge(Pm_psig, psi), needed), psi)
    },
    'dv-009': ({ depth_fsw, overbottom_psi, psi_per_fsw }) => {
      const perFoot: DepthConvention = {
        ...convention,
        pressure: { ...convention.pressure, factor: psi_per_fsw * psi.factor },
      }
      const bottom = pressureAtShownDepth({ depth: depthOf(depth_fsw, foot), surfacePressure, convention: perFoot })
      return inUnit(offsetBy(gauge(overbottom_psi, psi), differenceOf(bottom, surfacePressure)), psi)
    },
    'dv-010': ({ P_psig, mmp_psig }) => inUnit(differenceOf(gauge(P_psig, psi), gauge(mmp_psig, psi)), psi),
    'dv-012': ({ acfm, ata }) => inUnit(breathed(steady(absolute(ata, atmosphere), 1), acfm), standardCubicFoot),
    'dv-014': ({ FV_cf, Pi_psig, Pr_psig, T_air_F, T_water_F, VO2_scfm }) => {
      const flask = {
        internalVolume: internalVolumeOf(FV_cf, cubicFoot),
        ambientPressure: surfacePressure,
        mixture: pureGas('oxygen'),
      }
      const options = { reference: normalCondition, gas: 'ideal' } as const
      const full = freeGas(
        { ...flask, gaugePressure: gauge(Pi_psig, psi), temperature: temperatureOf(T_air_F, fahrenheit) },
        options,
      )
      const left = freeGas(
        { ...flask, gaugePressure: gauge(Pr_psig, psi), temperature: temperatureOf(T_water_F, fahrenheit) },
        options,
      )
      return inUnit(differenceOf(full, left), cubicFoot) / VO2_scfm
    },
    'dv-015': ({ scfm }) => inUnit(measure(scfm, cubicFootPerMinute), litrePerMinute),
    'dv-017': ({ scf }) => inUnit(measure(scf, cubicFoot), litre),
    'dv-018': ({ FV_cf, N, Pi_psig, Pr_psig }) =>
      inUnit(
        pressureVolume(differenceOf(gauge(Pi_psig, psi), gauge(Pr_psig, psi)), internalVolumeOf(N * FV_cf, cubicFoot)),
        standardCubicFootOfManual,
      ),
    'dv-019': ({ P_psi }) => inUnit(toAbsolute(gauge(P_psi, psi), surfacePressure), atmosphere),
    'dv-020': ({ pO2_ata, depth_fsw }) =>
      inUnit(
        richestMixture({
          depth: depthOf(depth_fsw, foot),
          maximumOxygenPartialPressure: absolute(pO2_ata, atmosphere),
          ...sea,
        }).oxygenFraction,
        percent,
      ),
    'dv-021': ({ depth_fsw, fO2 }) =>
      inUnit(partialPressure(fractionOf(fO2 * 100, percent), at(depth_fsw)), atmosphere),
    'dv-022': ({ depth_fsw, fO2 }) =>
      inUnit(partialPressure(fractionOf(fO2 * 100, percent), at(depth_fsw)), atmosphere),
    'dv-023': () => inUnit(saturationMix, percent),
    'dv-024': ({ depth_fsw }) => inUnit(partialPressure(saturationMix, at(depth_fsw)), atmosphere),
    'dv-025': ({ depth_fsw, RMV_acfm }) => inUnit(breathed(steady(at(depth_fsw), 1), RMV_acfm), standardCubicFoot),
    'dv-026': ({ P_psig, Pm_psig, FV_cf, N }) =>
      inUnit(
        pressureVolume(differenceOf(gauge(P_psig, psi), gauge(Pm_psig, psi)), internalVolumeOf(N * FV_cf, cubicFoot)),
        standardCubicFootOfManual,
      ),
    // from the cylinders of the steps before, not from their rounded results
    'dv-027': () => {
      const temperature = temperatureOf(70, fahrenheit)
      const cylinder = { internalVolume: internalVolumeOf(0.42, cubicFoot), temperature, mixture: dryAir }
      const filled = { ...cylinder, gaugePressure: gauge(2250, psi), ambientPressure: surfacePressure }
      const full = { contents: filled, residualPressure: toAbsolute(gauge(500, psi), surfacePressure) }
      const { duration } = endurance(
        {
          cylinders: [full, full],
          respiratoryMinuteVolume: measure(1.4, cubicFootPerMinute),
          ambientPressure: at(70),
          breathingGasTemperature: temperature,
        },
        { gas: 'ideal' },
      )
      return inUnit(duration, minute)
    },
    'dv-039': ({ pCO2_ata }) => inUnit(absolute(pCO2_ata, atmosphere), millimetreOfMercury),
    'dv-040': ({ SEV_percent }) =>
      inUnit(partialPressure(fractionOf(SEV_percent, percent), surfacePressure), millimetreOfMercury),
    'pw-137': ({ p_mb }) => inUnit(absolute(p_mb, millibar), atmosphere),
  },
  {
    'rests on dv-011, which adds the atmosphere to a difference of pressures (see the misprints)': ['dv-013'],
    'a stop depth at altitude belongs to decompression, which litrebar does not plan': ['pw-136'],
  },
)
