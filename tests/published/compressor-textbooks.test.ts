import {
  absolute,
  bar,
  compression,
  dryAir,
  gerg2008GasConstant,
  kelvin,
  measure,
  one,
  stagesNeeded,
  temperatureOf,
} from '../../src/index.ts'
import { compressorTextbooks } from '../fixtures/compressor-textbooks.ts'
import { discharge, equalStages, exponentBetween, filled, filledWithFreeAir, swept, workOverRT } from './compressor.ts'
import { provePublished } from './prove.ts'

const R = 0.287 // kJ/(kg K), as the books have it

provePublished(
  compressorTextbooks,
  {
    'pw-087': (g) => (g.R / 1000) * g.T_K * workOverRT(g.p_bar, 1),
    'pw-088': (g) => (g.R / 1000) * g.T_K * workOverRT(g.p_bar, g.k),
    'pw-091': (g) => discharge(g.T_K, 12, g.n),
    'pw-092': (g) => discharge(g.T_K, 9, 1.3),
    'pw-093': (g) => (g.m_kg_min / 60) * R * g.T_K * workOverRT(g.p_bar, 1.4),
    'pw-094': (g) => 1e5 * swept(g.D_m, g.L_m) * filled(g.c, 6.5, g.n) * workOverRT(g.p_bar, g.n),
    'pw-096': (g) => 100 * (1 - workOverRT([1, ...equalStages(1, 9, 2)], g.n) / workOverRT(g.p_bar, g.n)),
    'pw-097': (g) => (g.cp * (discharge(g.T_K, equalStages(1, 36, 2)[0] as number, g.n) - g.T_K)) / (g.cw * g.dTw),
    'pw-098': () => equalStages(1, 8, 2)[0] as number,
    'pw-099': () => Math.sqrt(equalStages(1, 25, 2)[0] as number),
    'pw-100': (g) => stagesNeeded(measure(120, one), { pressureRatio: measure(g.r_max, one) }),
    'pw-101': () => equalStages(1, 120, 4)[0] as number,
    'pw-102': () => equalStages(1, 120, 4)[2] as number,
    'pw-103': (g) => ((100 * g.V_m3_min) / 60) * workOverRT([1, ...equalStages(1, 40, 3)], g.n),
    'pw-104': () => equalStages(1, 40, 3)[1] as number,
    'pw-105': () => equalStages(1, 65, 3)[0] as number,
    'pw-107': (g) => discharge(g.T_K, 8, g.n),
    'pw-109': (g) => 100 * filled(g.c, 7, g.n),
    'pw-110': (g) =>
      100 *
      filledWithFreeAir({
        clearance: 0.05, // of the same example, as pw-109
        n: 1.2,
        drawn: { bar: g.p_bar[0], K: g.T_K[0] },
        free: { bar: g.p_bar[1], K: g.T_K[1] },
        to: 7,
      }),
    'pw-111': (g) => filled(g.c, 5.5, g.n) * workOverRT(g.p_bar, g.n),
    'pw-113': (g) => (g.nv / g.niso) * workOverRT(g.p_bar, 1),
    'pw-114': (g) => (100 * (g.V_m3_h / 3600) * workOverRT(g.p_bar, 1)) / g.niso / g.nm,
    'pw-115': (g) =>
      100 *
      filledWithFreeAir({
        clearance: g.c,
        n: g.n,
        drawn: { bar: g.p_bar[0], K: g.T_K[0] },
        free: { bar: g.pa, K: g.T_K[1] },
        to: g.p_bar[1],
      }),
    'pw-116': (g) => ((100 * g.pa_bar * g.Va_m3_min) / 60) * (g.T1_K / g.Ta_K) * workOverRT(g.p_bar, g.n),
    'pw-117': (g) => (100 * g.p_bar[0] * g.V_m3_s * workOverRT(g.p_bar, g.n)) / g.nm,
    'pw-118': (g) => ((100 * g.V_m3_min) / 60) * workOverRT([1, ...equalStages(1, 10.5, 2)], g.n),
    'pw-119': (g) => {
      const ratio = equalStages(1, 10.5, 2)[0] as number
      return ((100 * g.V_m3_min) / (R * g.T_K)) * g.cp * (discharge(g.T_K, ratio, 1.35) - g.T_K) // n as in pw-118
    },
    'pw-121': () => Math.sqrt(equalStages(1, 30, 2)[0] as number),
    'pw-122': (g) => ((100 * g.p_bar[0] * g.V_m3_min) / 60) * workOverRT(g.p_bar, g.n),
    'pw-123': (g) => discharge(g.T_K, 10, g.n),
    'pw-124': (g) => {
      const from = { pressure: absolute(1, bar), temperature: temperatureOf(g.T_K[0], kelvin) }
      const path = { process: 'polytropic', exponent: measure(g.n, one) } as const
      const options = { gas: 'ideal', heatCapacityRatio: (g.cv + g.R) / g.cv } as const
      return (
        (-compression({ mixture: dryAir, from, to: absolute(10, bar) }, path, options).molarHeat * g.R) /
        gerg2008GasConstant
      )
    },
    'pw-126': (g) => (g.m_kg_min / 60) * R * g.T_K[0] * workOverRT(g.p_bar, exponentBetween(g.T_K[0], g.T_K[1], 6)),
    'pw-128': (g) => ((100 * g.p_bar[0] * g.flow_m3_min) / 60) * workOverRT(g.p_bar, g.n),
    'pw-129': (g) => ((100 * g.free[0] * 14) / 60) * (g.T_K / g.free[1]) * workOverRT(g.p_bar, g.n),
    'pw-131': (g) =>
      ((100 * g.free[0] * g.V_m3_min) / 60) * (g.T_K / g.free[1]) * (workOverRT(g.p_bar, g.n) / g.nm / g.nc),
    'pw-132': (g) => 100 * filled(g.c, 6, g.n),
    'pw-133': (g) => 100 * filled(g.c, 7.5, g.ne),
    'pw-134': (g) => 100 * g.p_bar[0] * (g.V_m3_h / 3600) * workOverRT(g.p_bar, g.k, g.T_K),
    'pw-135': (g) => ((100 * g.V_m3_min) / 60) * (workOverRT(g.p_bar, g.n) / g.nm),
  },
  { 'a quotient or product of figures given': ['pw-090', 'pw-125', 'pw-127'] },
)
