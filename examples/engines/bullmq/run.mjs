// Rows on a queue: partitions of a file, two worker processes, one of them killed in the middle, and the same bytes as by one process.
// Needs redis-server, bullmq and ioredis. Usage: node run.mjs [rows in a part] [parts]
import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { once } from 'node:events'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Queue, QueueEvents } from 'bullmq'
import { Redis } from 'ioredis'
import { runRows } from 'litrebar/batch'

const [size = 20_000, count = 8] = process.argv.slice(2).map(Number)
const folder = mkdtempSync(join(tmpdir(), 'rows-on-a-queue-'))
const place = (...names) => join(folder, ...names)
for (const name of ['in', 'out', 'alone']) mkdirSync(place(name))

const plan = {
  compute: ['density', 'viscosity'],
  inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { column: 'T', unit: '°C' } },
  mixture: { value: 'air' },
}
writeFileSync(place('plan.json'), JSON.stringify(plan))
const parts = Array.from({ length: count }, (_, part) => `part-${String(part).padStart(4, '0')}.csv`)
parts.forEach((name, part) => {
  const line = (row) => `${(1 + ((row * 0.37) % 230)).toFixed(2)},${(5 + ((row * 0.11) % 30)).toFixed(2)}`
  const lines = Array.from({ length: size }, (_, row) => line(part * size + row))
  writeFileSync(place('in', name), `p,T\n${lines.join('\n')}\n`)
})

const socket = place('redis.sock')
const redis = spawn('redis-server', ['--port', '0', '--unixsocket', socket, '--save', '', '--dir', folder])
const children = [redis]
try {
  for await (const chunk of redis.stdout) if (String(chunk).includes('eady to accept connections')) break
  const connect = () => new Redis({ path: socket, maxRetriesPerRequest: null })
  const queue = new Queue('rows', { connection: connect() })
  const events = new QueueEvents('rows', { connection: connect() })
  await events.waitUntilReady()
  let stalled = 0
  events.on('stalled', () => {
    stalled++
  })
  const start = () => {
    const child = spawn(process.execPath, [join(import.meta.dirname, 'work.mjs'), socket, place('plan.json')], {
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    children.push(child)
    return child
  }
  const [first, second] = [start(), start()]
  await Promise.all([once(first.stdout, 'data'), once(second.stdout, 'data')])
  const jobs = await queue.addBulk(
    parts.map((name) => ({ name, data: { input: place('in', name), output: place('out', name) } })),
  )
  await once(first.stdout, 'data') // it has taken a part
  first.kill('SIGKILL')
  const rows = await Promise.all(jobs.map((job) => job.waitUntilFinished(events)))
  for (const name of parts) await runRows({ input: place('in', name), output: place('alone', name), plan })
  const hashOf = (kind) =>
    parts.reduce((hash, name) => hash.update(readFileSync(place(kind, name))), createHash('sha256')).digest('hex')
  const isSame = hashOf('out') === hashOf('alone')
  console.log(`${rows.reduce((sum, each) => sum + each, 0)} rows in ${count} parts; one of two workers killed`)
  console.log(
    `parts taken over: ${stalled > 0 ? 'yes' : 'none'}; ${isSame ? 'same bytes as one process' : 'DIFFERENT BYTES'}`,
  )
  if (!isSame) process.exitCode = 1
  await Promise.all([events.close(), queue.close()])
} finally {
  for (const child of children) child.kill('SIGKILL')
  rmSync(folder, { recursive: true, force: true })
}
process.exit()
