/** The gases that a mixture is made of. Carbon monoxide and oil are trace quantities, not components. */
export type Gas = 'nitrogen' | 'oxygen' | 'argon' | 'helium' | 'carbonDioxide' | 'water' | 'hydrogen'

/** All gases, in the order of every table. */
export const gases: readonly Gas[] = ['nitrogen', 'oxygen', 'argon', 'helium', 'carbonDioxide', 'water', 'hydrogen']

/**
 * Molar masses as the equation of state has them, g/mol.
 *
 * @source gerg-2008, table of molar masses, as carried by nist-aga8
 */
export const molarMasses: Readonly<Record<Gas, number>> = {
  nitrogen: 28.0134,
  oxygen: 31.9988,
  argon: 39.948,
  helium: 4.002602,
  carbonDioxide: 44.0095,
  water: 18.01528,
  hydrogen: 2.01588,
}
