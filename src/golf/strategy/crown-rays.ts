/**
 * The stretches of crowns that lie on rays from fixed points, by heading. A ray is one number: 0 when nothing is on it,
 * else its stretches are numbers `first[ray]` to `first[ray + 1] - 1`, nearest first. Arrays are replaced as they grow:
 * read them anew after {@link CrownRays.rayAt}.
 */
export interface CrownRays {
  /** Headings to a turn. */
  readonly headings: number
  /** Ray by slot and heading number, one more than its number; 0 = not yet followed. Open for the inner loop. */
  readonly known: Int32Array
  /** The number of the heading nearest to a direction; mirrored directions have mirrored numbers. */
  headingNumber(radians: number): number
  rayAt(slot: number, headingNumber: number): number
  first: Int32Array
  /** By ray: where its first stretch begins, where its last one ends, metres, and how high the highest of its crowns is. */
  begins: Float32Array
  ends: Float32Array
  tops: Float32Array
  /** Metres from the point. */
  from: Float32Array
  to: Float32Array
  /** Number of the crown, as the canopy counts them. */
  crown: Uint16Array
}

/** Rays that `follow` finds when they are first asked for. */
export function crownRays(options: {
  readonly slots: number
  readonly stepRadians: number
  /** Height of a crown, metres. */
  readonly topOf: (crown: number) => number
  readonly follow: (
    slot: number,
    heading: number,
    add: (from: number, to: number, crown: number) => void,
  ) => void
}): CrownRays {
  const { stepRadians } = options
  const headings = Math.round((2 * Math.PI) / stepRadians)
  const known = new Int32Array(options.slots * headings)
  let rays = 1
  let stretches = 0
  const made: CrownRays = {
    headings,
    known,
    headingNumber(radians) {
      const nearest = Math.sign(radians) * Math.round(Math.abs(radians) / stepRadians)
      return ((nearest % headings) + headings) % headings
    },
    rayAt(slot, headingNumber) {
      const at = slot * headings + headingNumber
      const ray = known[at] as number
      if (ray > 0) return ray - 1
      const signed = headingNumber > headings / 2 ? headingNumber - headings : headingNumber
      const firstStretch = stretches
      options.follow(slot, signed * stepRadians, add)
      if (stretches === firstStretch) {
        known[at] = 1
        return 0
      }
      if (rays + 2 > made.first.length) {
        made.first = grown(made.first, new Int32Array(2 * made.first.length))
        made.begins = grown(made.begins, new Float32Array(made.first.length))
        made.ends = grown(made.ends, new Float32Array(made.first.length))
        made.tops = grown(made.tops, new Float32Array(made.first.length))
      }
      made.begins[rays] = made.from[firstStretch] as number
      for (let stretch = firstStretch; stretch < stretches; stretch++) {
        made.ends[rays] = Math.max(made.ends[rays] as number, made.to[stretch] as number)
        const top = options.topOf(made.crown[stretch] as number)
        made.tops[rays] = Math.max(made.tops[rays] as number, top)
      }
      made.first[rays] = firstStretch
      made.first[rays + 1] = stretches
      rays += 1
      known[at] = rays
      return rays - 1
    },
    first: new Int32Array(64),
    begins: new Float32Array(64),
    ends: new Float32Array(64),
    tops: new Float32Array(64),
    from: new Float32Array(64),
    to: new Float32Array(64),
    crown: new Uint16Array(64),
  }
  function add(from: number, to: number, crown: number): void {
    if (stretches === made.from.length) {
      made.from = grown(made.from, new Float32Array(2 * stretches))
      made.to = grown(made.to, new Float32Array(2 * stretches))
      made.crown = grown(made.crown, new Uint16Array(2 * stretches))
    }
    made.from[stretches] = from
    made.to[stretches] = to
    made.crown[stretches] = crown
    stretches += 1
  }
  return made
}

function grown<T extends { set(from: T): void }>(from: T, into: T): T {
  into.set(from)
  return into
}
