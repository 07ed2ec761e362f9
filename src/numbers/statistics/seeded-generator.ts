/**
 * A repeatable source of uniform random numbers in [0, 1), 53 bits each: the same seed gives the same numbers
 * on every machine. Small fast counting generator with 128 bits of state, period at least 2³²; not for secrets.
 */
export function seededGenerator(seed: number): () => number {
  // Both halves of the seed count, so that 0.5, 1 and 2³² + 1 differ.
  let a = Math.floor(seed) | 0
  let b = Math.floor(seed / 2 ** 32) | 0
  let c = Math.floor((seed - Math.floor(seed)) * 2 ** 32) | 0
  let counter = 1

  function next32(): number {
    const sum = (((a + b) | 0) + counter) | 0
    counter = (counter + 1) | 0
    a = b ^ (b >>> 9)
    b = (c + (c << 3)) | 0
    c = ((c << 21) | (c >>> 11)) + sum
    c |= 0
    return sum >>> 0
  }

  // Neighbouring seeds start alike: run until they have nothing in common.
  for (let i = 0; i < 20; i++) next32()
  return () => ((next32() >>> 5) * 2 ** 26 + (next32() >>> 6)) / 2 ** 53
}
