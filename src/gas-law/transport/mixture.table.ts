import type { SourceId } from '../../references/sources.ts'
import type { Gas } from '../mixture/gas.ts'

/** Soft-sphere size (nm) and depth of attraction (K) of a gas, for how unlike gases collide. */
export interface LennardJones {
  readonly size: number
  readonly energy: number
  readonly source: SourceId
  readonly place: string
}

/** Collision parameters of the mixture rules. */
export const lennardJones: Readonly<Record<Exclude<Gas, 'water'>, LennardJones>> = {
  nitrogen: { size: 0.3656, energy: 98.94, source: 'lemmon-jacobsen-2004', place: 'collision parameters' },
  oxygen: { size: 0.3428, energy: 118.5, source: 'lemmon-jacobsen-2004', place: 'collision parameters' },
  argon: { size: 0.335, energy: 143.2, source: 'lemmon-jacobsen-2004', place: 'collision parameters' },
  helium: { size: 0.2551, energy: 10.22, source: 'memory', place: 'tables of viscosity collision parameters' },
  hydrogen: { size: 0.2827, energy: 59.7, source: 'memory', place: 'tables of viscosity collision parameters' },
  carbonDioxide: { size: 0.3941, energy: 195.2, source: 'memory', place: 'tables of viscosity collision parameters' },
}

/** How far the transport properties are to be trusted: relative standard uncertainty by what is asked and of what. */
export interface TransportUncertainty {
  readonly of: 'viscosity' | 'thermal conductivity'
  readonly gas: 'one gas' | 'mixture without helium' | 'mixture with helium'
  readonly relative: number
  readonly source: SourceId
  readonly place: string
}

/** From the sources of the equations, and from comparing the mixture rules with the equation of air. To 350 bar. */
export const transportUncertainty: readonly TransportUncertainty[] = [
  { of: 'viscosity', gas: 'one gas', relative: 0.02, source: 'memory', place: 'dense gas; 0.005 dilute' },
  {
    of: 'viscosity',
    gas: 'mixture without helium',
    relative: 0.035,
    source: 'litrebar-derivation',
    place: 'against air, 220 to 400 K: 0.032 at 350 bar',
  },
  { of: 'viscosity', gas: 'mixture with helium', relative: 0.03, source: 'memory', place: 'no measurement compared' },
  { of: 'thermal conductivity', gas: 'one gas', relative: 0.05, source: 'memory', place: 'dense gas; 0.02 dilute' },
  {
    of: 'thermal conductivity',
    gas: 'mixture without helium',
    relative: 0.05,
    source: 'memory',
    place: 'as one gas; rule within 0.015 against air',
  },
  {
    of: 'thermal conductivity',
    gas: 'mixture with helium',
    relative: 0.05,
    source: 'memory',
    place: 'no measurement compared',
  },
]
