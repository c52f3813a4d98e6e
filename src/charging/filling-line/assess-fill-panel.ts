import { requireKeys, requireWord } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import { type Accepted, bar, type GaugePressure, type PressureDifference, requireWithin } from '../../units/index.ts'

/**
 * What stands between a supply and a cylinder. `open`: a valve and a gauge, the supply itself comes through. `fixed`: a regulator
 * that is set and sealed. `adjustable`: one that whoever fills can turn, up to a highest setting.
 */
export type FillPanel =
  | { readonly kind: 'open'; readonly set?: never; readonly highestSetting?: never; readonly error?: never }
  | {
      readonly kind: 'fixed'
      readonly set: GaugePressure
      readonly highestSetting?: never
      /** By how much the outlet may stand above the setting: regulation, lock-up and the error of its gauge together. */
      readonly error: PressureDifference
    }
  | {
      readonly kind: 'adjustable'
      readonly set: GaugePressure
      readonly highestSetting: GaugePressure
      readonly error: PressureDifference
    }

/** A cylinder at a panel. */
export interface PanelFill {
  readonly panel: FillPanel
  /** Highest that the supply reaches: the fullest bank, or the final pressure of the compressor. */
  readonly supply: GaugePressure
  /** What the cylinder may be filled to at its temperature now, as `fillLimit` or the stamp and the local code say. */
  readonly allowed: GaugePressure
  /** Opening pressure of a relief valve behind the panel with its own error added, where there is one. */
  readonly reliefOpens?: GaugePressure
}

const range: Accepted = { above: 0, atMost: 500, unit: bar, hint: 'Give a gauge pressure.' }
const errorRange: Accepted = { atLeast: 0, atMost: 100, unit: bar, hint: 'Give what the outlet may be off by.' }

/**
 * The highest pressure that a fill panel lets into a cylinder, held against what the cylinder may be filled to. An open panel lets in
 * whatever the supply has: only whoever stands there ends the fill. A fixed one lets in its setting and its error; an adjustable one does
 * so until somebody turns it, which keeps it from `within` where its highest setting is too high. A relief valve is counted as the last bound
 * and never makes `within` of a setting that is too high: it is no means of filling.
 *
 * @param fill - panel; supply, allowed and relief pressure, gauge, Pa, up to 500 bar
 * @returns the highest pressure as set against the allowed one, gauge, Pa
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key or word
 * @source litrebar-derivation; common-practice (kinds of panels)
 * @example
 * const panel = { kind: 'adjustable', set: gauge(200, bar), highestSetting: gauge(300, bar), error: difference(5, bar) } as const
 * const { verdict, because } = assessFillPanel({ panel, supply: gauge(300, bar), allowed: gauge(232, bar) })
 * const shown = `${verdict}: ${because[0]?.code}` // => 'undetermined: setting-can-be-raised'
 */
export function assessFillPanel(fill: PanelFill): Assessment<GaugePressure> {
  requireFill(fill)
  const { panel, supply, allowed, reliefOpens } = fill
  const setting = (set: number, error: number): number => Math.min(supply, set + error)
  const highest = panel.kind === 'open' ? supply : setting(panel.set, panel.error)
  const against: Reason[] = []
  const doubts: Reason[] = []
  const notes: Reason[] = []
  if (highest > allowed)
    against.push({
      code: panel.kind === 'open' ? 'supply-unregulated' : 'setting-too-high',
      text: `Up to ${inBar(highest)} bar come through; ${inBar(allowed)} bar are allowed.`,
    })
  else if (panel.kind === 'adjustable' && setting(panel.highestSetting, panel.error) > allowed)
    doubts.push({
      code: 'setting-can-be-raised',
      text: `Turned up, the panel lets in ${inBar(setting(panel.highestSetting, panel.error))} bar: whoever fills decides.`,
    })
  if (highest === supply)
    notes.push({ code: 'supply-ends-it', text: `The supply ends at ${inBar(supply)} bar: the panel limits nothing.` })
  if (reliefOpens !== undefined)
    notes.push({
      code: reliefOpens > allowed ? 'relief-above-allowed' : 'relief-below-allowed',
      text: `The relief valve is open from ${inBar(reliefOpens)} bar at the latest. It is no means of filling.`,
    })
  return {
    value: highest as GaugePressure,
    limit: allowed,
    margin: allowed - highest,
    ...verdictFrom({ against, doubts, notes }),
    cautions: ['fill-limit', 'hot-fill', 'always'],
    sources: ['litrebar-derivation', 'common-practice'],
  }
}

const panelKeys = {
  open: { kind: true },
  fixed: { kind: true, set: true, error: true },
  adjustable: { kind: true, set: true, highestSetting: true, error: true },
} as const

function requireFill(fill: PanelFill): void {
  requireKeys('fill', fill, { panel: true, supply: true, allowed: true, reliefOpens: false })
  const { panel, supply, allowed, reliefOpens } = fill
  requireKeys('fill.panel', panel, { kind: true, set: false, highestSetting: false, error: false })
  requireWord('fill.panel.kind', panel.kind, ['open', 'fixed', 'adjustable'])
  requireKeys('fill.panel', panel, panelKeys[panel.kind])
  requireWithin('fill.supply', supply, range)
  requireWithin('fill.allowed', allowed, range)
  if (reliefOpens !== undefined) requireWithin('fill.reliefOpens', reliefOpens, range)
  if (panel.kind === 'open') return
  requireWithin('fill.panel.set', panel.set, range)
  requireWithin('fill.panel.error', panel.error, errorRange)
  if (panel.kind !== 'adjustable') return
  requireWithin('fill.panel.highestSetting', panel.highestSetting, {
    ...range,
    atLeast: panel.set / bar.factor,
    hint: 'The highest setting is not below the present one.',
  })
}

function inBar(pascals: number): string {
  return String(Number((pascals / bar.factor).toPrecision(4)))
}
