import {
  carbonDioxideDiluteConductivity,
  carbonDioxideDiluteViscosity,
  carbonDioxideExcessConductivity,
  carbonDioxideExcessViscosity,
} from './carbon-dioxide.ts'
import { heliumDiluteConductivity, heliumExcessConductivity, heliumViscosity } from './helium.ts'
import {
  hydrogenDiluteConductivity,
  hydrogenDiluteViscosity,
  hydrogenExcessConductivity,
  hydrogenExcessViscosity,
} from './hydrogen.ts'
import { diluteConductivity, diluteViscosity, excessConductivity, excessViscosity } from './lemmon-jacobsen.ts'
import { airTransport, argonTransport, nitrogenTransport, oxygenTransport } from './pure.table.ts'

/** The gases that have equations of viscosity and conductivity; `air` is dry air as one gas. */
export type TransportGas = 'nitrogen' | 'oxygen' | 'argon' | 'helium' | 'carbonDioxide' | 'hydrogen' | 'air'

/** Viscosity, Pa·s, and thermal conductivity, W/(m·K), of one gas: of the dilute gas, and what neighbours add. T in K, density in mol/m³. */
export interface PureTransport {
  readonly diluteViscosity: (temperature: number) => number
  readonly excessViscosity: (temperature: number, density: number) => number
  readonly diluteConductivity: (temperature: number) => number
  readonly excessConductivity: (temperature: number, density: number) => number
}

/** One entry for each gas. */
export const pureTransport: Readonly<Record<TransportGas, PureTransport>> = {
  nitrogen: {
    diluteViscosity: (t) => diluteViscosity(nitrogenTransport, t),
    excessViscosity: (t, density) => excessViscosity(nitrogenTransport, t, density),
    diluteConductivity: (t) => diluteConductivity(nitrogenTransport, t),
    excessConductivity: (t, density) => excessConductivity(nitrogenTransport, t, density),
  },
  oxygen: {
    diluteViscosity: (t) => diluteViscosity(oxygenTransport, t),
    excessViscosity: (t, density) => excessViscosity(oxygenTransport, t, density),
    diluteConductivity: (t) => diluteConductivity(oxygenTransport, t),
    excessConductivity: (t, density) => excessConductivity(oxygenTransport, t, density),
  },
  argon: {
    diluteViscosity: (t) => diluteViscosity(argonTransport, t),
    excessViscosity: (t, density) => excessViscosity(argonTransport, t, density),
    diluteConductivity: (t) => diluteConductivity(argonTransport, t),
    excessConductivity: (t, density) => excessConductivity(argonTransport, t, density),
  },
  air: {
    diluteViscosity: (t) => diluteViscosity(airTransport, t),
    excessViscosity: (t, density) => excessViscosity(airTransport, t, density),
    diluteConductivity: (t) => diluteConductivity(airTransport, t),
    excessConductivity: (t, density) => excessConductivity(airTransport, t, density),
  },
  helium: {
    diluteViscosity: (t) => heliumViscosity(t, 0),
    excessViscosity: (t, density) => heliumViscosity(t, density) - heliumViscosity(t, 0),
    diluteConductivity: heliumDiluteConductivity,
    excessConductivity: heliumExcessConductivity,
  },
  hydrogen: {
    diluteViscosity: hydrogenDiluteViscosity,
    excessViscosity: hydrogenExcessViscosity,
    diluteConductivity: hydrogenDiluteConductivity,
    excessConductivity: hydrogenExcessConductivity,
  },
  carbonDioxide: {
    diluteViscosity: carbonDioxideDiluteViscosity,
    excessViscosity: carbonDioxideExcessViscosity,
    diluteConductivity: carbonDioxideDiluteConductivity,
    excessConductivity: carbonDioxideExcessConductivity,
  },
}
