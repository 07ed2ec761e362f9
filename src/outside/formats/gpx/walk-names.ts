/** What can be walked or marked. */
export type WalkedKind =
  | 'fairway'
  | 'green'
  | 'bunker'
  | 'water-red'
  | 'water-yellow'
  | 'trees'
  | 'scrub'
  | 'heavy'
  | 'out'
  | 'hole'
  | 'tee'
  | 'pin'
  | 'tree'

/** What a name says of a walk or a waypoint. */
export interface WalkName {
  /** `null` where the name does not say. */
  readonly kind: WalkedKind | null
  /** The hole's number; `null` where there is none. */
  readonly ref: string | null
  readonly par: string | null
  /** What else it says: the name of tee markers. */
  readonly rest: string
}

/** The trade's words, in the order in which they are looked for: a tree is no trees, and a hole's green is a green. */
const WORDS: readonly (readonly [pattern: RegExp, kind: WalkedKind])[] = [
  [/\b(fairway|fw)\b/i, 'fairway'],
  [/\bgreen\b/i, 'green'],
  [/\b(bunker|sand)\b/i, 'bunker'],
  [/\byellow (water|pond|lake|pool|stream)\b|\b(water|pond|lake|pool|stream)\b.*\byellow\b/i, 'water-yellow'],
  [/\b(water|pond|lake|pool|stream)\b/i, 'water-red'],
  [/\b(trees|wood|woods|forest)\b/i, 'trees'],
  [/\b(scrub|gorse|heather|bushes)\b/i, 'scrub'],
  [/\b(heavy|hay|deep rough)\b/i, 'heavy'],
  [/\b(out of bounds|out|boundary|ob)\b/i, 'out'],
  [/\b(tee|tees|markers?)\b/i, 'tee'],
  [/\b(pin|flag|cup)\b/i, 'pin'],
  [/\btree\b/i, 'tree'],
  [/\bhole\b/i, 'hole'],
  [/\byellow\b/i, 'water-yellow'],
  [/\bred\b/i, 'water-red'],
]

/** Reads “7 bunker left”, “tee 7 white”, “hole 7 par 4”. */
export function readWalkName(name: string): WalkName {
  const par = /\bpar\s*([3-6])\b/i.exec(name)
  const withoutPar = name.replace(par?.[0] ?? '', ' ')
  const ref = /\b([1-9]\d?)\b/.exec(withoutPar)
  const [pattern, kind] = WORDS.find(([known]) => known.test(withoutPar)) ?? [null, null]
  const rest = withoutPar
    .replace(ref?.[0] ?? '', ' ')
    .replace(pattern ?? '', ' ')
    .replaceAll(/[^\p{L} ]/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim()
  return { kind, ref: ref?.[1] ?? null, par: par?.[1] ?? null, rest }
}
