import { requireWhole } from '../bounds.ts'

/** A source of random numbers that gives the same numbers again for the same seed and keys. */
export interface SeededRandom {
  /** The next number, strictly between 0 and 1, 53 bits. */
  uniform(): number
  /**
   * The source that belongs to a key (a season, an order, a batch). It depends on the seed and the keys alone, never
   * on how many numbers were drawn before, so the same season has the same luck whatever the plan and however
   * many workers share the seasons out.
   */
  stream(key: number): SeededRandom
}

/**
 * Seeded random numbers: xoshiro128**, started from the seed and the keys through a mixing of all bits.
 * Not for secrets.
 *
 * @param seed a whole number, 0 to 2^53 − 1
 * @throws RangeError for an argument out of range
 * @source Blackman & Vigna 2021, ACM Transactions on Mathematical Software 47(4):36 (generator);
 *   Appleby's MurmurHash3 finaliser (mixing), both in the public domain, from memory
 * @example seededRandom(1).stream(7).uniform() === seededRandom(1).stream(7).uniform() // true
 */
export function seededRandom(seed: number): SeededRandom {
  requireWhole('seededRandom', 'seed', seed, 0)
  return new Xoshiro128(absorb(absorb(0x9e3779b9, seed >>> 0), Math.floor(seed / 4294967296)), 0x243f6a88)
}

class Xoshiro128 implements SeededRandom {
  readonly #high: number
  readonly #low: number
  #a: number
  #b: number
  #c: number
  #d: number

  constructor(high: number, low: number) {
    this.#high = high
    this.#low = low
    this.#a = mix(high ^ 0x13198a2e)
    this.#b = mix(low ^ 0x03707344)
    this.#c = mix(Math.imul(high, 0xa4093822) ^ low)
    this.#d = mix(Math.imul(low, 0x299f31d1) ^ high) | 1
    for (let i = 0; i < 4; i++) this.#next()
  }

  uniform(): number {
    const high = this.#next() >>> 5
    const low = this.#next() >>> 6
    return (high * 67108864 + low + 0.5) / 9007199254740992
  }

  stream(key: number): SeededRandom {
    requireWhole('SeededRandom.stream', 'key', key, 0)
    const top = Math.floor(key / 4294967296)
    const high = absorb(absorb(this.#high, key >>> 0), top)
    const low = absorb(absorb(this.#low ^ 0x85a308d3, top), key >>> 0)
    return new Xoshiro128(high, low)
  }

  #next(): number {
    const times5 = Math.imul(this.#b, 5)
    const result = Math.imul((times5 << 7) | (times5 >>> 25), 9)
    const shifted = this.#b << 9
    this.#c ^= this.#a
    this.#d ^= this.#b
    this.#b ^= this.#c
    this.#a ^= this.#d
    this.#c ^= shifted
    this.#d = (this.#d << 11) | (this.#d >>> 21)
    return result
  }
}

/** Every bit of the 32 affects every other. */
function mix(bits: number): number {
  let h = bits | 0
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35)
  return h ^ (h >>> 16)
}

const absorb = (state: number, word: number) =>
  mix(Math.imul(state ^ mix(word + 0x9e3779b9), 0x9e3779b1) + 0x7f4a7c15)
