import type { SourceId } from '../../references/sources.ts'

/** The gases whose solubility in sea water was measured closely. */
export type SeaDissolvedGas = 'oxygen' | 'nitrogen' | 'argon' | 'helium'

/** Coefficients by temperature (A) and salinity (B), and the factor that later measurements put on them. */
interface BunsenRow {
  readonly a: readonly [number, number, number]
  readonly b: readonly [number, number, number]
  readonly source: SourceId
  readonly place: string
  readonly factor: number
}

/**
 * Bunsen coefficients of the pure gases. From memory, held against two other sets: IAPWS in fresh water, the equations for air in sea water.
 * Nitrogen lies 1 to 1.6 % below the later measurements and carries a factor of 1.013 for them.
 */
export const bunsenTable: Readonly<Record<SeaDissolvedGas, BunsenRow>> = {
  oxygen: {
    a: [-58.3877, 85.8079, 23.8439],
    b: [-0.034892, 0.015568, -0.0019387],
    source: 'weiss-1970',
    place: 'equation for the Bunsen coefficient; from memory',
    factor: 1,
  },
  nitrogen: {
    a: [-59.6274, 85.7661, 24.3696],
    b: [-0.05158, 0.026329, -0.0037252],
    source: 'weiss-1970',
    place: 'equation for the Bunsen coefficient; from memory; factor after hamme-emerson-2004',
    factor: 1.013,
  },
  argon: {
    a: [-55.6578, 82.0262, 22.5929],
    b: [-0.036267, 0.016241, -0.0020114],
    source: 'weiss-1970',
    place: 'equation for the Bunsen coefficient; from memory',
    factor: 1,
  },
  helium: {
    a: [-34.6261, 43.0285, 14.1391],
    b: [-0.04234, 0.022624, -0.003312],
    source: 'weiss-1971',
    place: 'equation for the Bunsen coefficient; from memory',
    factor: 1,
  },
}

/** Coefficients for air at one atmosphere, saturated with vapour: mL of the gas at 0 °C and 1 atm per litre of water. */
export const airSaturationTable: Readonly<
  Record<
    'oxygen' | 'nitrogen' | 'argon',
    {
      readonly a: readonly [number, number, number, number]
      readonly b: readonly [number, number, number]
      readonly source: SourceId
      readonly place: string
    }
  >
> = {
  oxygen: {
    a: [-173.4292, 249.6339, 143.3483, -21.8492],
    b: [-0.033096, 0.014259, -0.0017],
    source: 'weiss-1970',
    place: 'equation for moist air, as carried by ocean routines',
  },
  nitrogen: {
    a: [-172.4965, 248.4262, 143.0738, -21.712],
    b: [-0.049781, 0.025018, -0.0034861],
    source: 'weiss-1970',
    place: 'equation for moist air, as carried by ocean routines',
  },
  argon: {
    a: [-173.5146, 245.451, 141.8222, -21.802],
    b: [-0.034474, 0.014934, -0.0017729],
    source: 'weiss-1970',
    place: 'equation for moist air, as carried by ocean routines',
  },
}
