// Writes breathing-log.csv: a breathing machine at 25 breaths of 2.5 litres a minute, and a regulator with a cracking pressure, a laminar and
// a turbulent part on each half of the breath, an assist on inhalation, noise on both channels, a slow drift of the pressure zero,
// and steps that are not quite even. The regulator is invented; the same seed writes the same file.
import { writeFileSync } from 'node:fs'
import { seededRandom } from 'litrebar'

const seed = 20261125
const breaths = 14
const frequency = 25 / 60 // 1/s
const tidalVolume = 2.5 // L

const inhalation = { cracking: 2.6, laminar: 1.1, turbulent: 0.42 } // mbar, mbar/(L/s), mbar/(L/s)²
const exhalation = { cracking: 0.9, laminar: 0.7, turbulent: 0.61 }
const assist = { height: 3.2, from: 2.1 } // mbar taken off above a flow, L/s
const noise = { pressure: 0.12, volume: 0.004 } // mbar, L
const drift = 0.6 // mbar over the record

const random = seededRandom(seed)
/** Normal by the sum of twelve uniform numbers: close enough for noise. */
const normalNoise = () => Array.from({ length: 12 }, random).reduce((sum, n) => sum + n, -6)

const duration = (breaths + 0.35) / frequency
const rows = ['time (s),volume (L),pressure (mbar)']
for (let time = 0; time <= duration; time += 0.02 + 0.006 * random()) {
  const angle = 2 * Math.PI * frequency * time
  const volume = (tidalVolume * (1 - Math.cos(angle))) / 2
  const flow = Math.PI * frequency * tidalVolume * Math.sin(angle)
  const size = Math.abs(flow)
  const half = flow > 0 ? inhalation : exhalation
  const opening = size / (size + 0.08) // the valve opens over a little flow, not at once
  const resistance = half.cracking * opening + half.laminar * size + half.turbulent * size * size
  const helped = flow > 0 ? assist.height * Math.max(0, size / assist.from - 1) : 0
  const pressure = -Math.sign(flow) * (resistance - helped) + drift * (time / duration)
  rows.push(
    [
      time.toFixed(4),
      (volume + noise.volume * normalNoise()).toFixed(4),
      (pressure + noise.pressure * normalNoise()).toFixed(3),
    ].join(','),
  )
}
writeFileSync(new URL('breathing-log.csv', import.meta.url), `${rows.join('\n')}\n`)
console.log(`breathing-log.csv: ${rows.length - 1} rows, seed ${seed}`)
