import { requireWord } from '../errors/index.ts'
import type { SourceId } from './sources.ts'

/** One caution: a sentence that belongs beside a number that can hurt someone. */
export interface Caution {
  readonly text: string
  /** The results that it belongs to, in the words of the trade. */
  readonly appliesTo: string
  readonly source: SourceId
}

/**
 * The table of cautions, by id. Results carry ids; an application looks the text up here and shows or translates it.
 */
export const cautions = {
  always: {
    text: 'This result supports trained people. It replaces neither the maker’s instructions, nor the authority that governs the equipment, nor a licensed inspector, filler or technician, nor training.',
    appliesTo: 'every result',
    source: 'common-practice',
  },
  'fill-limit': {
    text: 'The marking, the local code and the filling station’s own rules decide how far a cylinder may be filled. Where they differ from this figure, the lower pressure holds.',
    appliesTo: 'filling pressures and their limits',
    source: 'common-practice',
  },
  overfill: {
    text: 'A cylinder filled beyond what its marking allows must be bled to the permitted pressure by a trained person; repeated overfilling shortens its life and may end it at the next inspection.',
    appliesTo: 'pressures above a filling limit',
    source: 'common-practice',
  },
  'plus-mark': {
    text: 'A plus mark is a decision of the requalifier, renewed at each requalification. A calculation can show that conditions are met, never that the mark has been earned.',
    appliesTo: 'the ten per cent permission of US cylinders',
    source: 'phmsa-13-0042',
  },
  'hot-fill': {
    text: 'Gas warms while it is filled and the pressure falls as it cools. A warm reading says nothing about the settled pressure unless the temperature of the gas is known.',
    appliesTo: 'pressures during and shortly after filling',
    source: 'common-practice',
  },
  'oxygen-handling': {
    text: 'Oxygen and rich mixtures set fire to materials that do not burn in air. Handle them only with equipment cleaned and rated for oxygen, opened slowly, by trained people.',
    appliesTo: 'oxygen and mixtures rich in it',
    source: 'common-practice',
  },
  'analyse-mixture': {
    text: 'Every mixture is analysed before use by the person who will breathe it. A calculated composition is a plan, not an analysis.',
    appliesTo: 'mixtures, computed or blended',
    source: 'common-practice',
  },
  'residual-helium': {
    text: 'Helium that stays in a cylinder makes another gas of the mixture than its oxygen alone tells: analyse for helium as well, and do not use it as nitrox.',
    appliesTo: 'mixtures blended on a remainder that holds helium',
    source: 'common-practice',
  },
  'oxygen-limits': {
    text: 'Too much and too little oxygen both kill without warning. Limits of oxygen partial pressure come from training and local rules; this library only does their arithmetic.',
    appliesTo: 'depth limits of a mixture',
    source: 'common-practice',
  },
  'gas-density': {
    text: 'Dense gas makes carbon dioxide build up, and below the limit it may be retained as well: hard work, a poor regulator and the person decide. Published recommendations of density are limits for planning, not for comfort.',
    appliesTo: 'density of breathed gas',
    source: 'anthony-mitchell-2016',
  },
  requalification: {
    text: 'The authority that governs the cylinder, its approval and its use decide the interval of inspection and test; the stamp alone does not. Damage, corrosion, heat or doubt bring the inspection forward to today.',
    appliesTo: 'due dates of inspection and test',
    source: 'common-practice',
  },
  'stamp-reading': {
    text: 'A reading of a stamp is no inspection. Where a stamp is unclear, altered or contradicts itself, withdraw the cylinder and ask a licensed inspector.',
    appliesTo: 'decoded shoulder stamps',
    source: 'common-practice',
  },
  inspection: {
    text: 'Only a licensed inspector may pass or condemn a cylinder. A finding described here is a reason to withdraw it and ask, never a reason to keep it in use.',
    appliesTo: 'inspection findings and test results',
    source: 'common-practice',
  },
  'rust-oxygen': {
    text: 'Gas from a wet or long-stored steel cylinder may have lost its oxygen. Analyse before breathing.',
    appliesTo: 'gas stored in steel with moisture',
    source: 'common-practice',
  },
  'valve-connection': {
    text: 'Never force or adapt a connection. An outlet that does not fit by hand is the wrong outlet; a fitting under pressure must never be loosened.',
    appliesTo: 'valves and connections',
    source: 'common-practice',
  },
  regulator: {
    text: 'A calculated or measured regulator figure holds for its test conditions only. Setting and repair belong to the maker’s instructions and a qualified technician.',
    appliesTo: 'regulator performance',
    source: 'common-practice',
  },
  'regulator-cold': {
    text: 'A margin against freezing is no promise. Cold-water use needs equipment that its maker states for it, training, and a way out when it freezes all the same.',
    appliesTo: 'temperatures behind pressure stages',
    source: 'common-practice',
  },
  reserve: {
    text: 'A calculated reserve rests on a steady breathing rate. Stress, cold, current and a second diver raise it; the rules of the training and of the site come first, and the larger reserve holds.',
    appliesTo: 'turn pressures, reserves, endurance',
    source: 'common-practice',
  },
  warmth: {
    text: 'Calculated insulation and heat loss compare suits and gases. Fit, water that flushes through, wet undergarments, the age of the suit, the work and the person decide how cold a diver gets; no figure here says how long anyone can stay.',
    appliesTo: 'insulation and loss of heat',
    source: 'common-practice',
  },
  'no-decompression-planning': {
    text: 'Nothing here plans decompression. The gas for an ascent is counted for the ascent that the caller states.',
    appliesTo: 'gas for an ascent',
    source: 'common-practice',
  },
  buoyancy: {
    text: 'A calculated ballast is a starting point for a check in the water, made with nearly empty cylinders at the shallowest stop.',
    appliesTo: 'ballast and lift',
    source: 'common-practice',
  },
  'breathing-air': {
    text: 'Breathing air is judged by an analysis of a competent laboratory against the rule that applies locally. Limits of different rules must not be mixed.',
    appliesTo: 'purity of breathing gas',
    source: 'common-practice',
  },
  'carbon-monoxide': {
    text: 'Charcoal and molecular sieve let carbon monoxide pass; only a catalyst kept dry, and an intake in clean air, keep it out. It has no odour: it is found by analysis alone.',
    appliesTo: 'filters, cartridges, intakes, breathing air from a compressor',
    source: 'common-practice',
  },
  'breathing-loop': {
    text: 'A breathing loop gives no warning before too little oxygen, too much of it or carbon dioxide takes away consciousness. A calculated oxygen fraction replaces no oxygen cell, and the capacity of an absorbent holds for its test conditions only.',
    appliesTo: 'semi-closed and closed circuits',
    source: 'common-practice',
  },
  'altitude-pressure': {
    text: 'The standard atmosphere is not the weather: real surface pressure differs by about three per cent. Measure it where it matters.',
    appliesTo: 'surface pressure from altitude',
    source: 'common-practice',
  },
  instrument: {
    text: 'An instrument is only as good as its last check. A reading near a limit is treated as beyond it.',
    appliesTo: 'gauges, depth instruments, oxygen cells',
    source: 'common-practice',
  },
} as const

/** The id of a caution. */
export type CautionId = keyof typeof cautions

/**
 * The row of a caution.
 *
 * @param id - id of the table
 * @returns text, what it applies to, source
 * @throws LitrebarError `input` for an id that is not of the table
 */
export function cautionOf(id: CautionId): Caution {
  requireWord('caution', id, Object.keys(cautions) as CautionId[])
  return cautions[id]
}
