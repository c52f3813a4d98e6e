import type { Column } from './column.ts'

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
export interface LoopCrossings {
  readonly crossings: number
  /** Sum of the sizes of all lobes, J: what a signed area hides in a loop that crosses. */
  readonly grossWork: number
}

const mostSlices = 256

// A lobe below this share of the gross area changes no verdict. Ours.
const negligibleShare = 0.002

export function loopCrossings(
  volume: Column,
  pressure: Column,
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
function exactNetHeight(volume: Column, pressure: Column): NetHeight {
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
    for (let slice = indexOf(edge, Math.min(fromVolume, toVolume)); (edge[slice] as number) < last; slice++) {
      left[slice] = (left[slice] as number) + sign * (fromPressure + slope * ((edge[slice] as number) - fromVolume))
      right[slice] =
        (right[slice] as number) + sign * (fromPressure + slope * ((edge[slice + 1] as number) - fromVolume))
    }
  }
  return { edge, left, right }
}

function indexOf(sorted: Float64Array, value: number): number {
  let low = 0
  let high = sorted.length - 1
  while (low < high) {
    const middle = (low + high) >> 1
    if ((sorted[middle] as number) < value) low = middle + 1
    else high = middle
  }
  return low
}

// Slices of equal width: the work of each, spread evenly.
function averagedNetHeight(
  volume: Column,
  pressure: Column,
  { lowest, highest }: { readonly lowest: number; readonly highest: number },
): NetHeight {
  const work = new Float64Array(mostSlices)
  const last = volume.length - 1
  const scale = { lowest, perSlice: (highest - lowest) / mostSlices }
  addSegment(work, scale, volume[last] as number, volume[0] as number, pressure[last] as number, pressure[0] as number)
  addWorkBySlice(work, scale, volume, pressure, 0, last)
  const width = scale.perSlice
  const edge = Float64Array.from({ length: mostSlices + 1 }, (_, index) => lowest + index * width)
  const height = work.map((one) => one / width)
  return { edge, left: height, right: height }
}

export interface SliceScale {
  readonly lowest: number
  readonly perSlice: number
}

/** Adds the work of each segment from row `from` to row `to` to the slices that it crosses, cut exactly at their edges. */
export function addWorkBySlice(
  work: Float64Array,
  scale: SliceScale,
  volume: Column,
  pressure: Column,
  from: number,
  to: number,
): void {
  for (let row = from; row < to; row++) {
    addSegment(
      work,
      scale,
      volume[row] as number,
      volume[row + 1] as number,
      pressure[row] as number,
      pressure[row + 1] as number,
    )
  }
}

/** Adds the work of one segment, cut exactly at the edges of the slices. */
export function addSegment(
  work: Float64Array,
  { lowest, perSlice }: SliceScale,
  fromVolume: number,
  toVolume: number,
  fromPressure: number,
  toPressure: number,
): void {
  const from = (fromVolume - lowest) / perSlice
  const to = (toVolume - lowest) / perSlice
  const lastSlice = work.length - 1
  const first = clampSlice(Math.min(from, to), lastSlice)
  const last = clampSlice(Math.max(from, to), lastSlice)
  if (first === last) {
    work[first] = (work[first] as number) - ((toVolume - fromVolume) * (fromPressure + toPressure)) / 2
    return
  }
  const slope = (toPressure - fromPressure) / (to - from)
  const sign = to > from ? -perSlice : perSlice
  for (let slice = first; slice <= last; slice++) {
    const a = slice === first ? Math.min(from, to) : slice
    const b = slice === last ? Math.max(from, to) : slice + 1
    work[slice] = (work[slice] as number) + sign * (b - a) * (fromPressure + slope * ((a + b) / 2 - from))
  }
}

/** Adds the time that a segment lasts, in proportion to the volume that it covers in each slice. */
export function addTime(
  target: Float64Array,
  { lowest, perSlice }: SliceScale,
  fromVolume: number,
  toVolume: number,
  lasting: number,
): void {
  const a = (Math.min(fromVolume, toVolume) - lowest) / perSlice
  const b = (Math.max(fromVolume, toVolume) - lowest) / perSlice
  const lastSlice = target.length - 1
  const first = clampSlice(a, lastSlice)
  const last = clampSlice(b, lastSlice)
  for (let slice = first; slice <= last; slice++) {
    const from = slice === first ? a : slice
    const to = slice === last ? b : slice + 1
    target[slice] = (target[slice] as number) + (first === last ? lasting : (lasting * (to - from)) / (b - a))
  }
}

// What lies a little outside, by drift or noise, counts in the outermost slice: nothing is lost from the sum.
function clampSlice(position: number, last: number): number {
  return position < 0 ? 0 : position >= last ? last : Math.floor(position)
}
