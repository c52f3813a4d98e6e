import { clearanceFromStall, kelvin, measure, one, stagesNeeded, temperatureOf } from '../../src/index.ts'
import { compressorExamples, compressorMisprints } from '../fixtures/compressor-examples.ts'
import {
  discharge,
  equalStages,
  exponentBetween,
  filled,
  filledWithFreeAir,
  heatOverRT,
  ratioBetween,
  swept,
  workOverRT,
} from './compressor.ts'
import { proveMisprints, provePublished } from './prove.ts'

const hp = 0.7457 // kW, as the first book has it

/** The first book’s two stages with a loss of pressure between, kg/min. */
const lossy = (g: {
  bore_m: number
  stroke_m: number
  clearance: number
  n: number
  T1_K: number
  R: number
}): number => (100 * 2 * 200 * swept(g.bore_m, g.stroke_m) * filled(g.clearance, 3, g.n)) / (g.R * g.T1_K)

/** kg/min of air free at a state, kPa, K. */
const mass = (volume: number, p: number, t: number, r: number): number => (p * volume) / (r * t)

provePublished(compressorExamples, {
  'CX-01': ({ p1_bar, p2_bar, n }) => (100 * Math.log(p2_bar / p1_bar)) / workOverRT([p1_bar, p2_bar], n),
  'CX-02': ({ V_m3_min, speed_rpm, L_over_D }) => 100 * ((4 * V_m3_min) / speed_rpm / Math.PI / L_over_D) ** (1 / 3),
  'CX-03': ({ p1_bar, p2_bar, n, V_m3_min, eta_mech }) =>
    ((100 * p1_bar * V_m3_min) / 60) * (workOverRT([p1_bar, p2_bar], n) / eta_mech / hp),
  'CX-04': (g) =>
    100 *
    filledWithFreeAir({
      clearance: g.clearance,
      n: g.n,
      drawn: { bar: g.p1_bar, K: g.T1_K },
      free: { bar: g.p_free_bar, K: g.T_free_K },
      to: g.ratio * g.p1_bar,
    }),
  'CX-07': ({ p_bar: [from, to], stages }) => equalStages(from, to, stages)[0] as number,
  'CX-08': ({ p_bar: [from, to], stages }) => equalStages(from, to, stages)[1] as number,
  'CX-11': ({ p_bar, n, R, T1_K }) => R * T1_K * workOverRT(p_bar, n),
  'CX-12': ({ n, m_kg_min, R, T1_K }) =>
    ((m_kg_min / 60) * R * T1_K * workOverRT([1, ...equalStages(1, 25, 2)], n)) / hp,
  'CX-13': ({ n }) => (100 * Math.log(25)) / workOverRT([1, ...equalStages(1, 25, 2)], n),
  'CX-14': ({ n, m_kg_min, R, T1_K, cp }) =>
    m_kg_min * (R * T1_K * workOverRT([1, 5], n) - cp * (discharge(T1_K, 5, n) - T1_K)),
  'CX-15': ({ n, m_kg_min, speed_rpm, R, T1_K, clearance_HP: c }) =>
    ((1000 * m_kg_min * R * T1_K) / speed_rpm / 500) * ((1 + c) / filled(c, 5, n)),
  'CX-16': ({ n, m_kg_min, speed_rpm, R, T1_K, clearance_LP: c }) =>
    ((m_kg_min * R * T1_K) / speed_rpm / 100) * ((1 + c) / filled(c, 5, n)),
  'CX-17': (g) => lossy(g) * g.cp * (discharge(g.T1_K, 3, g.n) - g.T1_K),
  'CX-18': ({ bore_m, p_interstage_after_loss_bar }) => 100 * bore_m * Math.sqrt(1 / p_interstage_after_loss_bar),
  'CX-19': (g) =>
    (lossy(g) / 60) * g.R * g.T1_K * (workOverRT([g.p_interstage_after_loss_bar, g.p_final_bar], g.n) / hp),
  'CX-21': () => equalStages(1, 20, 3)[0] as number,
  'CX-22': () => equalStages(1, 20, 3)[1] as number,
  'CX-23': ({ bore_m, stroke_m, clearance_LP, n }) =>
    swept(bore_m, stroke_m) * filled(clearance_LP, equalStages(1, 20, 3)[0] as number, n),
  'CX-25': ({ bore_m, stroke_m, clearance_LP, n, T1_K }) => {
    const ratio = equalStages(1, 20, 3)[0] as number
    return ((swept(bore_m, stroke_m) * filled(clearance_LP, ratio, n)) / 20) * (discharge(T1_K, ratio, n) / T1_K)
  },
  'CX-27': ({ m_kg_s, R, T1_K, T5_K, T6_K, clearance }) =>
    (60 * m_kg_s * R * T1_K) / 100 / filled(clearance[0], 6, exponentBetween(T5_K, T6_K, 5)),
  'CX-28': ({ m_kg_s, R, T5_K, T6_K, clearance }) =>
    (60 * m_kg_s * R * T5_K) / 600 / filled(clearance[1], 5, exponentBetween(T5_K, T6_K, 5)),
  'CX-29': ({ m_kg_s, cp, T1_K, T5_K, T6_K }) =>
    m_kg_s * cp * (discharge(T1_K, 6, exponentBetween(T5_K, T6_K, 5)) - T5_K),
  'CX-30': ({ m_kg_s, R, T1_K, T5_K, T6_K, p_bar }) =>
    m_kg_s * R * T1_K * workOverRT(p_bar, exponentBetween(T5_K, T6_K, 5), [T1_K, T5_K]),
  // the heat of the stage in units of the isochoric heat capacity, which the book takes as 0.72
  'CX-31': ({ m_kg_s, cv, gamma, T1_K, T5_K, T6_K }) =>
    m_kg_s * cv * T1_K * heatOverRT(6, exponentBetween(T5_K, T6_K, 5), gamma) * (gamma - 1),
  'CX-34': ({ T1_K, T2_K, n }) => ratioBetween(T1_K, T2_K, n),
  'CX-36': ({ T1_K, T2_K, n }) => ratioBetween(T1_K, T2_K, n) ** 2,
  'CX-38': (g) =>
    100 *
    filledWithFreeAir({
      clearance: g.clearance,
      n: g.n,
      drawn: { bar: g.p1_kPa / 100, K: g.T1_K },
      free: { bar: g.p_free_kPa / 100, K: g.T_free_K },
      to: g.p2_kPa / 100,
    }),
  'CX-39': ({ V_swept_cm3, V_clearance_cm3, speed_rpm, ratio, n }) =>
    1e-6 * V_swept_cm3 * speed_rpm * filled(V_clearance_cm3 / V_swept_cm3, ratio, n),
  'CX-40': ({ V_swept_cm3, V_clearance_cm3, ratio, n }) => 100 * filled(V_clearance_cm3 / V_swept_cm3, ratio, n),
  'CX-41': ({ V_swept_cm3, V_clearance_cm3, speed_rpm, ratio, n, p1_kPa }) =>
    ((p1_kPa * 1e-6 * V_swept_cm3 * speed_rpm) / 60) *
    filled(V_clearance_cm3 / V_swept_cm3, ratio, n) *
    workOverRT([1, ratio], n),
  'CX-43': ({ p1_bar, p2_bar, p_limit_bar, n, T1_K, T_free_K }) => {
    const clearance = clearanceFromStall({ ratio: measure(p_limit_bar / p1_bar, one), exponent: measure(n, one) })
    const free = { bar: p1_bar, K: T_free_K }
    return 100 * filledWithFreeAir({ clearance, n, drawn: { bar: p1_bar, K: T1_K }, free, to: p2_bar })
  },
  'CX-44': ({ n, R, T1_K }) => R * T1_K * workOverRT([1, ...equalStages(1, 9, 2)], n),
  'CX-46': ({ V_m3_min, p_bar: [from, to], n, eta_mech }) =>
    ((100 * from * V_m3_min) / 60) * (workOverRT([from, ...equalStages(from, to, 2)], n) / eta_mech),
  'CX-47': ({ p_bar, T1_K, p_free_bar, T_free_K, V_free_m3_min, n, R }) =>
    (mass(V_free_m3_min, 100 * p_free_bar, T_free_K, R) / 60) * R * T1_K * workOverRT(p_bar, n),
  'CX-48': ({ p_bar, n }) => (100 * Math.log(p_bar[2] / p_bar[0])) / workOverRT(p_bar, n),
  'CX-49': ({ p_bar, T1_K, p_free_bar, T_free_K, V_free_m3_min, n, R, clearance, speed_rpm }) => {
    const drawn = (mass(V_free_m3_min, 100 * p_free_bar, T_free_K, R) * R * T1_K) / (100 * p_bar[0]) / speed_rpm
    return 100 * ((4 * drawn) / filled(clearance, p_bar[1] / p_bar[0], n) / Math.PI) ** (1 / 3)
  },
  'CX-52': () => equalStages(1, 15, 3)[1] as number,
  'CX-54': ({ T1_K, n }) => discharge(T1_K, equalStages(1, 15, 3)[0] as number, n) - 273,
  'CX-58': (g) =>
    swept(g.bore_m, g.stroke_m) *
    g.speed_rpm *
    filledWithFreeAir({
      clearance: g.clearance,
      n: g.n,
      drawn: { bar: g.p1_kPa / 100, K: g.T1_K },
      free: { bar: g.p_free_kPa / 100, K: g.T_free_K },
      to: g.p2_kPa / 100,
    }),
  'CX-59': (g) =>
    100 *
    filledWithFreeAir({
      clearance: g.clearance,
      n: g.n,
      drawn: { bar: g.p1_kPa / 100, K: g.T1_K },
      free: { bar: g.p_free_kPa / 100, K: g.T_free_K },
      to: g.p2_kPa / 100,
    }),
  'CX-60': ({ T1_K, p1_kPa, p2_kPa, n }) => discharge(T1_K, p2_kPa / p1_kPa, n) - 273,
  'CX-61': (g) =>
    ((g.p1_kPa * swept(g.bore_m, g.stroke_m) * g.speed_rpm) / 60) *
    filled(g.clearance, g.p2_kPa / g.p1_kPa, g.n) *
    workOverRT([1, g.p2_kPa / g.p1_kPa], g.n),
  'CX-62': ({ p_MPa: [from, to] }) => (equalStages(10 * from, 10 * to, 2)[0] as number) / 10,
})

const bound = (inlet: number, discharged: number, n: number) => ({
  inletTemperature: temperatureOf(inlet, kelvin),
  dischargeTemperature: temperatureOf(discharged, kelvin),
  exponent: measure(n, one),
})

proveMisprints(
  compressorMisprints,
  {
    'CX-05': ({ n }) => 100 * (1 - workOverRT([1, ...equalStages(1, 8, 2)], n) / workOverRT([1, 8], n)),
    'CX-06': ({ n, T1_K, T_after_intercooler_K }) => {
      const stages = [1, ...equalStages(1, 8, 2)]
      return 100 * (1 - workOverRT(stages, n, [T1_K]) / workOverRT(stages, n, [T1_K, T_after_intercooler_K]))
    },
    'CX-10': ({ n, V_m3_min }) => ((100 * V_m3_min) / 60) * (workOverRT([1, ...equalStages(1, 150, 4)], n) / hp),
    'CX-20': ({ n, T1_K, T_limit_K }) => stagesNeeded(measure(180, one), bound(T1_K, T_limit_K, n)),
    'CX-33': ({ displacement_m3_rev, speed_rpm, clearance, n }) =>
      2 * 100 * displacement_m3_rev * speed_rpm * filled(clearance, 6, n) * workOverRT([1, 6], n),
    'CX-50': ({ n, T1_K, T_max_K }) => stagesNeeded(measure(36, one), bound(T1_K, T_max_K, n)),
    'CX-64': ({ V_m3_s, p_MPa: [from, to], n }) =>
      1000 * from * V_m3_s * workOverRT([10 * from, ...equalStages(10 * from, 10 * to, 2)], n),
  },
  {},
)
