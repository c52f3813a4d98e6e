export { assessFillPanel, type FillPanel, type PanelFill } from './assess-fill-panel.ts'
export { assessIntakeOxygen, type IntakeOxygen, type IntakeOxygenLimit } from './assess-intake-oxygen.ts'
export { type HotBankFill, hotBankFill, type QuickBankFill } from './hot-bank-fill.ts'
export { type FillingLine, type VentedLine, ventedLine } from './vented-line.ts'
