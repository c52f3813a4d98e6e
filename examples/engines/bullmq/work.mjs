// One worker: takes partitions by reference from the queue, and writes each result as a part that is named by its partition.
import { renameSync } from 'node:fs'
import { Worker } from 'bullmq'
import { Redis } from 'ioredis'
import { runRows } from 'litrebar/batch'

const [socket, plan] = process.argv.slice(2)
const connection = new Redis({ path: socket, maxRetriesPerRequest: null })
const compute = async ({ data: { input, output } }) => {
  // written beside and renamed: a part is there whole or not at all, and a second try writes the same bytes over it
  const own = output.replace(/(\.\w+)$/, `.${process.pid}$1`)
  const { rows } = await runRows({ input, output: own, plan, overwrite: true })
  renameSync(own, output)
  renameSync(`${own}.provenance.json`, `${output}.provenance.json`)
  return rows
}
// a lock must outlast a block of rows, during which nothing can renew it
const times = { lockDuration: 8000, stalledInterval: 1000, maxStalledCount: 5 }
const worker = new Worker('rows', compute, { connection, ...times })
worker.on('ready', () => console.log('ready'))
worker.on('active', () => console.log('active'))
