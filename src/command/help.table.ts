/** One command of the tool: what it is for, how it is written, what it may be told. */
export interface Help {
  readonly purpose: string
  readonly usage: string
  readonly options: readonly (readonly [name: string, meaning: string])[]
  readonly examples: readonly string[]
  /** What a file for it looks like. */
  readonly file?: readonly string[]
}

/** The commands with their help. */
export const help: Readonly<Record<'chapter' | 'explain' | 'claims' | 'list' | 'rows', Help>> = {
  chapter: {
    purpose: 'Turn chapters written as Markdown into pages, documents or text; a folder becomes a linked course.',
    usage: 'litrebar chapter FILE.md … | FOLDER [options]',
    options: [
      ['--as html|pdf|markdown|latex|text', 'what to make; html unless given. pdf needs a browser'],
      ['--into FOLDER', 'where to write; beside the chapter unless given'],
      ['--title TEXT', 'title of a course made of a folder'],
      ['--live', 'let readers change the numbers of every working, not only where the chapter says so'],
      ['--replace', 'write over files that are there'],
      ['--check', 'only look for problems and judge the claims; writes nothing'],
      ['--watch', 'make the pages again whenever a chapter is saved, until Ctrl+C'],
    ],
    examples: [
      'litrebar chapter lake.md',
      'litrebar chapter course/ --into pages --replace',
      'litrebar chapter lake.md --check',
    ],
  },
  explain: {
    purpose: 'Work out a formula on the terminal, read a cylinder stamp, or write a number in other units.',
    usage: 'litrebar explain FORMULA SYMBOL=VALUE … | stamp TEXT | NUMBER UNIT',
    options: [
      ['--find SYMBOL', 'which symbol to find; the usual one unless given'],
      ['--show "UNIT, 3 figures"', 'unit and rounding of the answer'],
      ['--units metric|us|both', 'the whole working in a system of units'],
      ['--mistakes', 'also what common mistakes lead to'],
    ],
    examples: [
      'litrebar explain pressure-at-depth p0="1 atm" rho="1025 kg/m³" g="9.81 m/s²" d="30 m"',
      'litrebar explain 232 bar',
    ],
  },
  claims: {
    purpose: 'Check the numbers that a text prints against what the library computes.',
    usage: 'litrebar claims FILE.yaml …',
    options: [['--all', 'show also the claims that agree']],
    examples: ['litrebar claims handbook.yaml'],
    file: [
      '- { says: 207 bar, same as: 3000 psi }',
      '- { says: 3.94 bar, formula: pressure-at-depth, p0: 1 bar, rho: 1000 kg/m³, g: 9.81 m/s², d: 30 m }',
    ],
  },
  list: {
    purpose: 'Look up names: formulas with their symbols, units, sources, cautions.',
    usage: 'litrebar list [formulas|units|sources|cautions] [WORD] | list FORMULA',
    options: [],
    examples: ['litrebar list formulas pressure', 'litrebar list free-gas', 'litrebar list units volume'],
  },
  rows: {
    purpose: 'Compute every row of a file or a pipe: CSV, TSV, NDJSON, Arrow or Parquet.',
    usage: 'litrebar rows INPUT OUTPUT --plan FILE.json [options]',
    options: [
      ['--plan FILE.json', 'what is computed, and what the columns mean'],
      ['--read-as FORMAT', 'csv, tsv, ndjson, arrow or parquet; by the ending of the name unless given'],
      ['--write-as FORMAT', 'the same for what is written'],
      ['--resume', 'go on with an output whose run was stopped'],
      ['--replace', 'write over an output that is there'],
      ['--schema', 'print the JSON Schema of a plan'],
    ],
    examples: [
      'litrebar rows log.csv results.csv --plan plan.json',
      'litrebar rows - - --plan plan.json --read-as arrow --write-as arrow < in.arrow > out.arrow',
      'litrebar rows --schema > plan.schema.json',
    ],
  },
}

/** The name of a command. */
export type CommandName = keyof typeof help
