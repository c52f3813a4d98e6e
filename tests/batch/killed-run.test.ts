// A process that is killed without warning, as by a cluster that takes its machine back.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test, vi } from 'vitest'
import { type RowPlan, runRows } from '../../src/batch/index.ts'
import { journalPath } from '../../src/batch/run/journal.ts'
import { seededRandom } from '../../src/uncertainty/random.ts'
import { hashOf, rowProgram, runKilled, writeRows } from './killed-run.ts'

vi.setConfig({ testTimeout: 180_000 })

const folder = mkdtempSync(join(tmpdir(), 'litrebar-killed-'))
afterAll(() => rmSync(folder, { recursive: true }))

const plan: RowPlan = {
  compute: ['density'],
  inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { column: 'T', unit: '°C' } },
  mixture: { value: 'air' },
}
const rows = 400_000

test.each(['csv', 'arrow'])(
  'a run killed three times has the rows and the bytes of one that was not: %s',
  async (format) => {
    const files = writeRows(folder, rows, plan)
    const program = await rowProgram()
    const whole = join(folder, `whole.${format}`)
    const output = join(folder, `killed.${format}`)
    try {
      const done = await runRows({ ...files, output: whole })
      const met = await runKilled({ program, ...files, output }, 3, seededRandom(16, 0))
      expect(met).toBe(3)
      expect(hashOf(output)).toBe(hashOf(whole))
      expect(hashOf(`${output}.provenance.json`)).toBe(hashOf(`${whole}.provenance.json`))
      if (format === 'csv') expect(readFileSync(output, 'utf8').split('\n')).toHaveLength(rows + 2)
      expect(done.rows).toBe(rows)
      expect(done.bad['input']).toBe(Math.ceil(rows / 997))
      expect(existsSync(journalPath(output))).toBe(false)
    } finally {
      program.remove()
    }
  },
)
