// Text written as bytes into one buffer that is used again for every block: no string is made for a number.

const startSize = 1 << 16
const zero = 48
const minus = 45
const point = 46
const powersOfTen = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15]
const lowestExponent = -6
const highestExponent = 15
// Beyond so many the shortest text that reads back as the same double is written.
const mostScaledFigures = 15

/** Text that is put together in bytes. */
export class TextBytes {
  #bytes = Buffer.allocUnsafe(startSize)
  #length = 0

  /** What has been written since the last time. Valid until something is written again. */
  take(): Uint8Array {
    const taken = this.#bytes.subarray(0, this.#length)
    this.#length = 0
    return taken
  }

  byte(value: number): void {
    this.#need(1)
    this.#bytes[this.#length++] = value
  }

  text(text: string): void {
    this.#need(3 * text.length)
    this.#length += this.#bytes.write(text, this.#length, 'utf8')
  }

  copy(from: Uint8Array, start: number, end: number): void {
    const length = end - start
    this.#need(length)
    const bytes = this.#bytes
    let at = this.#length
    for (let i = start; i < end; i++) bytes[at++] = from[i] as number // for some ten bytes faster than a call
    this.#length = at
  }

  /**
   * A finite number, rounded to so many significant figures, without zeros at its end. From 16 figures on it is the shortest text
   * that reads back as the same double.
   */
  number(value: number, figures: number): void {
    const size = Math.abs(value)
    if (figures > mostScaledFigures) this.exact(value)
    else if (size === 0) this.byte(zero)
    else if (size >= 1e-6 && size < 1e15) this.#rounded(value, size, figures)
    else this.text(String(Number(value.toPrecision(figures))))
  }

  #rounded(value: number, size: number, figures: number): void {
    let exponent = 0
    if (size >= 1) while (exponent + 1 < highestExponent && size >= (powersOfTen[exponent + 1] as number)) exponent++
    else while (exponent > lowestExponent && size * (powersOfTen[-exponent] as number) < 1) exponent--
    const scale = figures - 1 - exponent
    let mantissa = Math.round(scaled(size, scale))
    if (mantissa >= (powersOfTen[figures] as number)) {
      mantissa /= 10
      exponent++
    }
    if (value < 0) this.byte(minus)
    this.#decimal(mantissa, figures, exponent)
  }

  /** The shortest text that reads back as the same finite double. */
  exact(value: number): void {
    const size = Math.abs(value)
    if (size >= 1e-3 && size < 1e6) {
      // at most fifteen digits: a double holds them, and no shorter text reads back as it
      const millionths = Math.round(size * 1e6)
      if (millionths / 1e6 === size) {
        if (value < 0) this.byte(minus)
        let figures = 7
        while (figures < 13 && millionths >= (powersOfTen[figures] as number)) figures++
        this.#decimal(millionths, figures, figures - 7)
        return
      }
    }
    this.text(String(value))
  }

  /** Digits of a whole number with the point after the first, moved by the exponent; zeros behind the point are taken off its end. */
  #decimal(mantissa: number, figures: number, exponent: number): void {
    this.#need(longest)
    const bytes = this.#bytes
    let start = this.#length
    const whole = exponent + 1
    if (whole >= figures) {
      writeDigits(bytes, start, mantissa, figures)
      bytes.fill(zero, start + figures, start + whole)
      this.#length = start + whole
      return
    }
    if (whole > 0) {
      writeDigits(bytes, start + 1, mantissa, figures)
      for (let i = 0; i < whole; i++, start++) bytes[start] = bytes[start + 1] as number
      bytes[start] = point
      start -= whole
    } else {
      bytes[start++] = zero
      bytes[start++] = point
      for (let i = whole; i < 0; i++) bytes[start++] = zero
      start--
      writeDigits(bytes, start + 1, mantissa, figures)
    }
    let end = start + figures + 1
    while (bytes[end - 1] === zero) end--
    this.#length = bytes[end - 1] === point ? end - 1 : end
  }

  #need(more: number): void {
    if (this.#length + more <= this.#bytes.length) return
    const larger = Buffer.allocUnsafe(Math.max(2 * this.#bytes.length, this.#length + more))
    larger.set(this.#bytes.subarray(0, this.#length))
    this.#bytes = larger
  }
}

// A sign, a point, zeros before the first figure, fifteen figures.
const longest = 32

/** All pairs of digits one after another, so that one division gives two digits. */
const pairs = new Uint8Array(200)
for (let i = 0; i < 100; i++) {
  pairs[2 * i] = zero + Math.floor(i / 10)
  pairs[2 * i + 1] = zero + (i % 10)
}

/** Writes so many digits of a whole number below 1e15, in two halves that fit small whole numbers: the engine divides them far faster. */
function writeDigits(bytes: Uint8Array, start: number, value: number, count: number): void {
  const high = Math.floor(value / 1e7)
  const half = Math.max(start, start + count - 7)
  writeSmall(bytes, half, (value - high * 1e7) | 0, start + count)
  if (half > start) writeSmall(bytes, start, high | 0, half)
}

function writeSmall(bytes: Uint8Array, start: number, value: number, end: number): void {
  let left = value
  let at = end
  while (at - start > 1) {
    const rest = (left / 100) | 0
    const pair = (left - rest * 100) << 1
    bytes[--at] = pairs[pair + 1] as number
    bytes[--at] = pairs[pair] as number
    left = rest
  }
  if (at > start) bytes[start] = zero + (left % 10)
}

function scaled(size: number, scale: number): number {
  if (scale < 0) return size / (powersOfTen[-scale] as number)
  if (scale <= 15) return size * (powersOfTen[scale] as number)
  return size * 1e15 * (powersOfTen[scale - 15] as number)
}
