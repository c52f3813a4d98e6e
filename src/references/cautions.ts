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
    text: 'This result is an aid for trained people. It does not replace the maker’s instructions, the authority that governs the equipment, a licensed inspector, filler or technician, or training.',
    appliesTo: 'every result',
    source: 'common-practice',
  },
  'fill-limit': {
    text: 'The marking, the local code and the filling station’s own rules determine how far a cylinder may be filled. Where they differ from this figure, the lower pressure applies.',
    appliesTo: 'filling pressures and their limits',
    source: 'common-practice',
  },
  overfill: {
    text: 'A cylinder filled beyond what its marking allows must be bled to the permitted pressure by a trained person; repeated overfilling shortens its life and may get it condemned at the next inspection.',
    appliesTo: 'pressures above a filling limit',
    source: 'common-practice',
  },
  'plus-mark': {
    text: 'A plus mark is a decision of the requalifier, renewed at each requalification. A calculation can show that conditions are met, never that the mark has been earned.',
    appliesTo: 'plus ratings of US cylinders',
    source: 'phmsa-13-0042',
  },
  'hot-fill': {
    text: 'Gas heats up during filling, and the pressure falls as it cools. A warm reading says nothing about the settled pressure unless the gas temperature is known.',
    appliesTo: 'pressures during and shortly after filling',
    source: 'common-practice',
  },
  'oxygen-handling': {
    text: 'Oxygen and oxygen-rich mixtures ignite materials that do not burn in air. Use only equipment cleaned and rated for oxygen, open valves slowly, and leave the work to trained people.',
    appliesTo: 'oxygen and oxygen-rich mixtures',
    source: 'common-practice',
  },
  'analyse-mixture': {
    text: 'Whoever will breathe a mixture must analyse it before use. A calculated composition is a plan, not an analysis.',
    appliesTo: 'mixtures, computed or blended',
    source: 'common-practice',
  },
  'residual-helium': {
    text: 'Helium left in a cylinder changes the mixture in a way that its oxygen content does not show: analyse for helium as well, and do not use the gas as nitrox.',
    appliesTo: 'mixtures blended on top of a residue with helium',
    source: 'common-practice',
  },
  'oxygen-limits': {
    text: 'Too much and too little oxygen both kill without warning. Limits on oxygen partial pressure come from training and local rules; this library only does the arithmetic.',
    appliesTo: 'depth limits of a mixture',
    source: 'common-practice',
  },
  'gas-density': {
    text: 'Dense gas makes the body retain carbon dioxide. It can happen below the limit, too: hard work, a poor regulator and the individual all matter. Published density recommendations are planning limits, not comfort limits.',
    appliesTo: 'density of breathing gas',
    source: 'anthony-mitchell-2016',
  },
  requalification: {
    text: 'The authority that governs the cylinder, its approval and its use determine the interval between inspections and tests; the stamp alone does not. After damage, corrosion or heat, or when in doubt, have it inspected now.',
    appliesTo: 'due dates of inspection and test',
    source: 'common-practice',
  },
  'stamp-reading': {
    text: 'Reading a stamp is not an inspection. If a stamp is unclear, altered or contradicts itself, withdraw the cylinder and ask a licensed inspector.',
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
    text: 'A calculated or measured regulator figure is valid for its test conditions only. Adjust and repair by the maker’s instructions; it is work for a qualified technician.',
    appliesTo: 'regulator performance',
    source: 'common-practice',
  },
  'regulator-cold': {
    text: 'A margin against freezing is no guarantee. Cold-water use needs equipment that its maker rates for it, training, and a plan for when it freezes anyway.',
    appliesTo: 'temperatures downstream of pressure stages',
    source: 'common-practice',
  },
  reserve: {
    text: 'A calculated reserve assumes a steady breathing rate. Stress, cold, current and a second diver raise it; the rules of your training and of the site come first, and the larger reserve applies.',
    appliesTo: 'turn pressures, reserves, endurance',
    source: 'common-practice',
  },
  warmth: {
    text: 'Calculated insulation and heat loss are for comparing suits and gases. Fit, flushing, wet undergarments, the age of the suit, workload and the individual decide how cold a diver gets; no figure here says how long anyone can stay.',
    appliesTo: 'insulation and heat loss',
    source: 'common-practice',
  },
  'no-decompression-planning': {
    text: 'Nothing here plans decompression. Ascent gas is calculated for the ascent that the caller states.',
    appliesTo: 'gas for an ascent',
    source: 'common-practice',
  },
  buoyancy: {
    text: 'Calculated ballast is a starting point: check it in the water, with nearly empty cylinders, at the shallowest stop.',
    appliesTo: 'ballast and lift',
    source: 'common-practice',
  },
  'breathing-air': {
    text: 'Breathing air is judged by a competent laboratory’s analysis against the rule that applies locally. Never mix limits from different rules.',
    appliesTo: 'purity of breathing gas',
    source: 'common-practice',
  },
  'carbon-monoxide': {
    text: 'Charcoal and molecular sieve do not stop carbon monoxide; only a dry catalyst and an intake in clean air keep it out. It is odourless: only analysis finds it.',
    appliesTo: 'filters, cartridges, intakes, breathing air from a compressor',
    source: 'common-practice',
  },
  'breathing-loop': {
    text: 'A breathing loop gives no warning before too little oxygen, too much oxygen or carbon dioxide makes the diver unconscious. A calculated oxygen fraction does not replace an oxygen cell, and the capacity of an absorbent is valid for its test conditions only.',
    appliesTo: 'semi-closed and closed circuits',
    source: 'common-practice',
  },
  'altitude-pressure': {
    text: 'The standard atmosphere is not the weather: actual surface pressure differs from it by about three per cent. Measure it where it matters.',
    appliesTo: 'surface pressure from altitude',
    source: 'common-practice',
  },
  instrument: {
    text: 'An instrument is only as good as its last check. Treat a reading near a limit as beyond it.',
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
