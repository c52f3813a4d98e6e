// ESLint rules that keep the arrows between rooms. What may import what is data: layers.json.
import { posix } from 'node:path'

/**
 * Why `from` may not import `specifier`, or undefined when it may.
 *
 * @param {typeof import('../layers.json')} layers - the table of rooms
 * @param {string} from - importing file, relative to src, with forward slashes
 * @param {string} specifier - as written in the import
 * @param {boolean} typeOnly - whether nothing of it is left at run time
 */
export function layerFault(layers, from, specifier, typeOnly) {
  const order = [...layers.core, ...layers.outer]
  const layerOf = (room) => order.findIndex((layer) => layer.includes(room))
  const room = from.includes('/') ? from.split('/')[0] : 'the root'
  const isRoot = room === 'the root'
  const inCore = isRoot || layers.core.flat().includes(room)
  if (!isRoot && layerOf(room) < 0) return `room ${room} is not in layers.json; add it to its layer`

  if (!specifier.startsWith('.')) {
    const allowed = [...(layers.packages[from] ?? []), ...(layers.packages[room] ?? [])]
    const isAllowed = allowed.some((name) =>
      name.endsWith(':') ? specifier.startsWith(name) : specifier === name || specifier.startsWith(`${name}/`),
    )
    return isAllowed ? undefined : `${from} may import no package ${specifier}; layers.json says which rooms may`
  }

  const target = posix.join(posix.dirname(from), specifier)
  if (target.startsWith('..')) return `${specifier} leaves src`
  if (!/\.(ts|json)$/.test(target)) return `${specifier} needs its file suffix .ts`
  const targetRoom = target.includes('/') ? target.split('/')[0] : 'the root'
  if (targetRoom === room) return undefined
  if (targetRoom === 'the root') return `${from} may not import the root entry`
  if (layerOf(targetRoom) < 0) return `room ${targetRoom} is not in layers.json; add it to its layer`
  const isRegistry = layers.typeOnlyInCore.includes(target)
  if (isRegistry && typeOnly) return undefined
  if (isRoot)
    return layers.core.flat().includes(targetRoom) ? undefined : `the root gives core rooms, not ${targetRoom}`
  if (isRegistry && inCore) return `core rooms import ${target} by type only; its texts stay out of their bundles`
  if (layerOf(targetRoom) < layerOf(room)) return undefined
  return layerOf(targetRoom) === layerOf(room)
    ? `${room} and ${targetRoom} are siblings; what both need belongs a layer lower`
    : `${room} may import only rooms before it, and ${targetRoom} comes later`
}

const insideSource = (filename) => /(?:^|\/)src\/(.+)$/.exec(filename.replaceAll('\\', '/'))?.[1]

const arrows = {
  meta: { type: 'problem', schema: [{ type: 'object' }] },
  create(context) {
    const [layers] = context.options
    const from = insideSource(context.filename)
    if (from === undefined) return {}
    const check = (node) => {
      if (node.source === null || node.source === undefined) return
      const names = node.specifiers ?? []
      const kind = node.importKind ?? node.exportKind ?? 'value'
      const typeOnly =
        kind === 'type' || (names.length > 0 && names.every((name) => (name.importKind ?? name.exportKind) === 'type'))
      const message = layerFault(layers, from, node.source.value, typeOnly)
      if (message !== undefined) context.report({ node, message })
      if (layers.namespaceOnly.includes(node.source.value) && node.type === 'ImportDeclaration') {
        const isNamespace = names.every((name) => name.type === 'ImportNamespaceSpecifier')
        if (!isNamespace && !typeOnly)
          context.report({
            node,
            message: `write import * as … from '${node.source.value}': named imports defeat tree shaking`,
          })
      }
    }
    return {
      ImportDeclaration: check,
      ExportNamedDeclaration: check,
      ExportAllDeclaration: check,
      ImportExpression: (node) => {
        const message =
          node.source.type === 'Literal'
            ? layerFault(layers, from, String(node.source.value), false)
            : 'import() needs a literal, or the layers cannot be checked'
        if (message !== undefined) context.report({ node, message })
      },
      TSImportType: (node) => {
        const message = layerFault(layers, from, String(node.source?.value ?? node.argument?.literal?.value), true)
        if (message !== undefined) context.report({ node, message })
      },
    }
  },
}

const indexOnlyReexports = {
  meta: { type: 'problem', schema: [] },
  create(context) {
    const from = insideSource(context.filename)
    if (from === undefined || posix.basename(from) !== 'index.ts') return {}
    return {
      Program(program) {
        for (const statement of program.body) {
          const isNamed = statement.type === 'ExportNamedDeclaration' && statement.source !== null
          // a sub-room decides itself what is public; a file of cards holds nothing but cards
          const isWholeStar =
            statement.type === 'ExportAllDeclaration' &&
            /(?:\/index|^\.\/cards\/[a-z-]+)\.ts$/.test(statement.source.value)
          if (!isNamed && !isWholeStar)
            context.report({
              node: statement,
              message: 'index.ts only re-exports: names by hand, sub-rooms and files of cards whole',
            })
        }
      },
    }
  },
}

export default { rules: { arrows, 'index-only-reexports': indexOnlyReexports } }
