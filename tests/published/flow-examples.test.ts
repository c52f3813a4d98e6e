import { criticalFlow } from '../../src/regulator-performance/index.ts'
import type { Fraction } from '../../src/units/index.ts'
import { flowExamples } from '../fixtures/flow-examples.ts'
import { provePublished } from './prove.ts'

// The standard's unit of C: kg/h through a square millimetre at a kilopascal, molar mass in g/mol; 0.03948 as it prints it.
const reliefCoefficient = (k: number): number => 0.03948 * criticalFlow(k as Fraction).criticalFlowFactor

provePublished(
  flowExamples,
  {
    'p3-493': ({ k }) => reliefCoefficient(k),
    // k = 1 is a limit, which no gas reaches: the function wants a ratio above 1
    'p3-494': ({ k }) => reliefCoefficient(k + 1e-7),
    'p3-499': ({ p0_Pa, k }) => p0_Pa * criticalFlow(k as Fraction).criticalPressureRatio,
  },
  {
    'speed along a pipe or nozzle: flow is reckoned at a throat, never by the speed of the stream': [
      'p3-500',
      'p3-502',
      ...(['p3-772', 'p3-773', 'p3-774', 'p3-775', 'p3-776', 'p3-777', 'p3-778', 'p3-779', 'p3-780'] as const),
      ...(['p3-781', 'p3-782', 'p3-783', 'p3-784', 'p3-786', 'p3-788', 'p3-789', 'p3-791'] as const),
    ],
    'stages of a compressor: the charging room is not built': ['p3-501', 'p3-503'],
    'size of a relief valve below critical flow: the work of a plant, with a coefficient of its own': ['p3-497'],
    'flow meters (Venturi, wedge, orifice with taps): no equipment of the gear room': [
      ...(['p3-504', 'p3-506', 'p3-507', 'p3-510', 'p3-511', 'p3-512', 'p3-513', 'p3-514', 'p3-515'] as const),
      ...(['p3-516', 'p3-517', 'p3-519', 'p3-524', 'p3-525'] as const),
    ],
    'pipelines, pumps and valves of liquids': ['p3-520', 'p3-521', 'p3-522', 'p3-523', 'p3-526', 'p3-528'],
  },
)
