import { clubKind } from './club-names.ts'

/** What a word for a club is in one of the spellings people use. */
export type SpelledClub =
  | { readonly kind: 'club'; readonly name: string }
  /** The putter: in every bag, and among no player's clubs. */
  | { readonly kind: 'putter' }
  /** Neither is clear; `likely` are the names it may stand for, none when the word is no club at all. */
  | { readonly kind: 'unknown'; readonly likely: readonly string[] }

/** Words for the families of numbered clubs, in the languages of the trade's common tables. From memory. */
const FAMILIES: readonly (readonly [family: string, words: string])[] = [
  ['wood', 'wood|woods|wd|w|holz|bois|madera|legno|fairway wood|fairway'],
  ['hybrid', 'hybrid|hybride|hyb|hy|h|utility|ibrido|hibrido'],
  ['iron', 'iron|irons|ir|i|eisen|fer|hierro|ferro'],
]

/** Words for clubs without a number, and short ways to write them. Common practice. */
const NAMED: Readonly<Record<string, string>> = {
  driver: 'driver',
  dr: 'driver',
  drv: 'driver',
  d: 'driver',
  '1-wood': 'driver',
  pw: 'pitching-wedge',
  p: 'pitching-wedge',
  pitch: 'pitching-wedge',
  'pitching wedge': 'pitching-wedge',
  'pitch wedge': 'pitching-wedge',
  gw: 'gap-wedge',
  aw: 'gap-wedge',
  uw: 'gap-wedge',
  'gap wedge': 'gap-wedge',
  'approach wedge': 'gap-wedge',
  'attack wedge': 'gap-wedge',
  'utility wedge': 'gap-wedge',
  sw: 'sand-wedge',
  s: 'sand-wedge',
  sand: 'sand-wedge',
  'sand wedge': 'sand-wedge',
  'sand iron': 'sand-wedge',
  lw: 'lob-wedge',
  l: 'lob-wedge',
  lob: 'lob-wedge',
  'lob wedge': 'lob-wedge',
}

const PUTTERS = new Set(['putter', 'pt', 'put', 'putt'])

const NUMBER_WORDS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']

/**
 * The club that a word stands for: `7i`, `Iron 7`, `7-iron`, `3W`, `HY5`, `Eisen 7`, `PW`, `Sand Wedge`, `56°`,
 * `54 deg wedge`. A number alone is asked about, because it may be a wood, a hybrid or an iron.
 */
export function parseClubName(text: string): SpelledClub {
  const words = plainWords(text)
  if (PUTTERS.has(words)) return { kind: 'putter' }
  const named = NAMED[words]
  if (named !== undefined) return { kind: 'club', name: named }
  const name = numberedName(words) ?? wedgeByLoft(words)
  if (name !== null) {
    const known = NAMED[name] ?? name
    return clubKind(known) === null ? { kind: 'unknown', likely: [] } : { kind: 'club', name: known }
  }
  if (/^[1-9]$/.test(words)) {
    const likely = ['wood', 'hybrid', 'iron'].map((family) => `${words}-${family}`)
    return { kind: 'unknown', likely: likely.filter((one) => clubKind(one) !== null) }
  }
  return { kind: 'unknown', likely: [] }
}

/** Small letters, words apart by single blanks, no accents, number words as digits. */
function plainWords(text: string): string {
  return text
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[\s_\-./]+/g, ' ')
    .replaceAll(/\b[a-z]+\b/g, (word) => {
      const index = NUMBER_WORDS.indexOf(word)
      return index === -1 ? word : String(index + 1)
    })
    .replace(/\((\d\d)\)$/, '$1')
    .trim()
}

function numberedName(words: string): string | null {
  for (const [family, spellings] of FAMILIES) {
    const before = new RegExp(`^(\\d) ?(?:${spellings})$`).exec(words)
    const after = new RegExp(`^(?:${spellings}) ?(\\d)$`).exec(words)
    const number = before?.[1] ?? after?.[1]
    if (number !== undefined) return `${number}-${family}`
  }
  return null
}

/** `56`, `56°`, `56 deg`, `56 wedge`, `wedge 56`, `sw 56`: the loft says more than the name beside it. */
function wedgeByLoft(words: string): string | null {
  const side = '(?:wedge|w|gw|aw|sw|lw|gap wedge|sand wedge|lob wedge)'
  const found =
    new RegExp(`^(\\d\\d) ?(?:°|º|deg|degree|degrees)? ?${side}?$`).exec(words) ??
    new RegExp(`^${side} ?(\\d\\d) ?(?:°|º|deg|degree|degrees)?$`).exec(words)
  return found === null ? null : `${found[1]}-wedge`
}
