import type { ESLint } from 'eslint'

/** The table of rooms, as it stands in layers.json. */
export interface Layers {
  readonly core: readonly (readonly string[])[]
  readonly outer: readonly (readonly string[])[]
  readonly packages: Readonly<Record<string, readonly string[]>>
  readonly typeOnlyInCore: readonly string[]
  readonly namespaceOnly: readonly string[]
}

/** Why `from` (relative to src) may not import `specifier`, or undefined when it may. */
export function layerFault(layers: Layers, from: string, specifier: string, typeOnly: boolean): string | undefined

declare const plugin: ESLint.Plugin
export default plugin
