import type { LogColumn } from '../log/column.ts'

// A loop cut into slices of volume. In each slice the halves are weighed against each other: what inhalation costs above what
// exhalation gives back, or the other way. Jitter cancels inside a slice, so that noise makes no crossing; a loop that truly
// crosses has slices of both signs.

/** The net pressure of a loop over volume: at the left and the right edge of each slice. */
interface NetHeight {
  readonly edge: Float64Array
  readonly left: Float64Array
  readonly right: Float64Array
}

/** Areas of one sign that follow each other along the volume. */
interface Lobe {
  area: number
  width: number
}

/** How a loop crosses itself, as seen along the volume. */
interface LoopCrossings {
  readonly crossings: number
  /** Sum of the sizes of all lobes, J: what a signed area hides in a loop that crosses. */
  readonly grossWork: number
}

const mostSlices = 256

// A lobe below this share of the gross area changes no verdict. Ours.
const negligibleShare = 0.002

export function loopCrossings(
  volume: LogColumn,
  pressure: LogColumn,
  range: { readonly lowest: number; readonly highest: number; readonly pressureNoise: number },
): LoopCrossings {
  const net =
    volume.length <= mostSlices ? exactNetHeight(volume, pressure) : averagedNetHeight(volume, pressure, range)
  return crossingsOf(net, noiseOf(range, volume.length))
}

/** Crossings of a loop that is already averaged into slices of equal width: the work of each, and the noise of the whole. */
export function crossingsOfSlices(work: Float64Array, noise: number): LoopCrossings {
  const edge = Float64Array.from({ length: work.length + 1 }, (_, index) => index)
  return crossingsOf({ edge, left: work, right: work }, (share) => noise * Math.sqrt(share))
}

// Noise of the work in a lobe that takes this share of the tidal volume: independent noise on both halves.
function noiseOf(
  {
    lowest,
    highest,
    pressureNoise,
  }: { readonly lowest: number; readonly highest: number; readonly pressureNoise: number },
  samples: number,
): (share: number) => number {
  const whole = (2 * pressureNoise * (highest - lowest)) / Math.sqrt(samples)
  return (share) => whole * Math.sqrt(share)
}

function crossingsOf(net: NetHeight, noise: (share: number) => number): LoopCrossings {
  const lobes = lobesOf(net)
  const grossWork = lobes.reduce((sum, lobe) => sum + Math.abs(lobe.area), 0)
  const width = lobes.reduce((sum, lobe) => sum + lobe.width, 0)
  const real = lobes.filter(
    (lobe) => Math.abs(lobe.area) > Math.max(negligibleShare * grossWork, 3 * noise(lobe.width / width)),
  )
  const crossings = real.filter((lobe, index) => index > 0 && lobe.area * (real[index - 1]?.area ?? 0) < 0).length
  return { crossings, grossWork }
}

function lobesOf({ edge, left, right }: NetHeight): readonly Lobe[] {
  const lobes: Lobe[] = []
  for (let slice = 0; slice < left.length; slice++) {
    const width = (edge[slice + 1] as number) - (edge[slice] as number)
    const from = left[slice] as number
    const to = right[slice] as number
    if (from * to < 0) {
      const cut = (width * from) / (from - to)
      extend(lobes, (from * cut) / 2, cut)
      extend(lobes, (to * (width - cut)) / 2, width - cut)
    } else {
      extend(lobes, ((from + to) * width) / 2, width)
    }
  }
  return lobes
}

function extend(lobes: Lobe[], area: number, width: number): void {
  const last = lobes.at(-1)
  if (last === undefined || last.area * area < 0) {
    lobes.push({ area, width })
  } else {
    last.area += area
    last.width += width
  }
}

// Slices between the volumes of the corners: every segment that reaches into one spans it, so heights are exact.
function exactNetHeight(volume: LogColumn, pressure: LogColumn): NetHeight {
  const edge = Float64Array.from(new Set(volume)).sort()
  const left = new Float64Array(edge.length - 1)
  const right = new Float64Array(edge.length - 1)
  for (let k = 0, before = volume.length - 1; k < volume.length; before = k++) {
    const fromVolume = volume[before] as number
    const toVolume = volume[k] as number
    const fromPressure = pressure[before] as number
    const slope = ((pressure[k] as number) - fromPressure) / (toVolume - fromVolume)
    const sign = toVolume > fromVolume ? -1 : 1
    const last = Math.max(fromVolume, toVolume)
    for (let slice = edge.indexOf(Math.min(fromVolume, toVolume)); (edge[slice] as number) < last; slice++) {
      left[slice] = (left[slice] as number) + sign * (fromPressure + slope * ((edge[slice] as number) - fromVolume))
      right[slice] =
        (right[slice] as number) + sign * (fromPressure + slope * ((edge[slice + 1] as number) - fromVolume))
    }
  }
  return { edge, left, right }
}

// Slices of equal width: the work of each, spread evenly.
function averagedNetHeight(
  volume: LogColumn,
  pressure: LogColumn,
  { lowest, highest }: { readonly lowest: number; readonly highest: number },
): NetHeight {
  const height = new Float64Array(mostSlices)
  const perVolume = mostSlices / (highest - lowest)
  for (let row = 0, before = volume.length - 1; row < volume.length; before = row++) {
    const from = ((volume[before] as number) - lowest) * perVolume
    const to = ((volume[row] as number) - lowest) * perVolume
    addToSlices(height, from, to, pressure[before] as number, pressure[row] as number)
  }
  const edge = Float64Array.from({ length: mostSlices + 1 }, (_, index) => lowest + index / perVolume)
  return { edge, left: height, right: height }
}

/**
 * Adds the work −∫ p dV of one segment to the slices that it crosses, cut exactly at their edges; and the time that it lasts, in
 * proportion. Volumes are counted in slices. What lies a little outside, by drift or noise, counts in the outermost slice: nothing
 * is lost from the sum.
 */
export function addToSlices(
  work: Float64Array,
  from: number,
  to: number,
  fromPressure: number,
  toPressure: number,
  time?: Float64Array,
  lasting = 0,
): void {
  const lastSlice = work.length - 1
  const low = Math.min(from, to)
  const high = Math.max(from, to)
  const first = sliceOf(low, lastSlice)
  const last = sliceOf(high, lastSlice)
  if (first === last) {
    work[first] = (work[first] as number) - ((to - from) * (fromPressure + toPressure)) / 2
    if (time !== undefined) time[first] = (time[first] as number) + lasting
    return
  }
  const slope = (toPressure - fromPressure) / (to - from)
  const sign = to > from ? -1 : 1
  const perSlice = lasting / (high - low)
  for (let slice = first; slice <= last; slice++) {
    const a = slice === first ? low : slice
    const b = slice === last ? high : slice + 1
    work[slice] = (work[slice] as number) + sign * (b - a) * (fromPressure + slope * ((a + b) / 2 - from))
    if (time !== undefined) time[slice] = (time[slice] as number) + perSlice * (b - a)
  }
}

function sliceOf(position: number, last: number): number {
  return position < 0 ? 0 : position >= last ? last : Math.floor(position)
}
