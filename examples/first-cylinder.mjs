// One cylinder, one section: what it really holds, as a number and as a page.
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  dryAir,
  format,
  freeGas,
  gauge,
  internalVolumeOf,
  isoStandard,
  litre,
  temperatureOf,
} from 'litrebar'
import { chapterHtml, readChapter } from 'litrebar/course'

const cylinder = {
  internalVolume: internalVolumeOf(12, litre),
  gaugePressure: gauge(232, bar),
  ambientPressure: absolute(1, atmosphere),
  temperature: temperatureOf(15, celsius),
  mixture: dryAir,
}
console.log(format(freeGas(cylinder, { reference: isoStandard }), { unit: litre, step: 10 }))

const { chapter, problems } = readChapter(
  `# Our cylinder

What 232 bar really hold.

## What comes out of it

**It holds \`value air\` of free air.**

\`\`\`values
air: { formula: free-gas, V: 12 L, p: 233.01325 bar, T: 15 °C, p0: 1 atm, T0: 15 °C, show: "L, step 10" }
\`\`\`

\`\`\`working
formula: free-gas
V: 12 L
p: 233.01325 bar
T: 15 °C
p0: 1 atm
T0: 15 °C
show: L, step 10
mistakes: yes
\`\`\`
`,
  { file: 'cylinder.md' },
)
for (const { line, message } of problems) console.error(`cylinder.md:${line}  ${message}`)
const page = join(mkdtempSync(join(tmpdir(), 'cylinder-')), 'cylinder.html')
writeFileSync(page, chapterHtml(chapter))
console.log(`${chapter.sections.length} section written`)
