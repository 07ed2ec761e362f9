/** Something that can be found by its name or number. */
export interface Entry {
  readonly name: string
  /** What it is, which is looked through as well: `hole of Sandrel Ness`. */
  readonly kind: string
  /** Leads there or does it. */
  readonly go: () => void
}

/** Found entries shown at most. */
const MOST = 12

/**
 * The entries in which every word that was typed begins a word of the name or the kind, whole words before beginnings and
 * names before kinds; all alike in the order they came. Nothing typed finds nothing.
 */
export function findEntries(entries: readonly Entry[], typed: string): readonly Entry[] {
  const asked = wordsOf(typed)
  if (asked.length === 0) return []
  return entries
    .flatMap((entry) => {
      const [name, kind] = [wordsOf(entry.name), wordsOf(entry.kind)]
      const worths = asked.map((word) => worthOf(word, name, kind))
      return worths.includes(0) ? [] : [{ entry, worth: worths.reduce((sum, worth) => sum + worth, 0) }]
    })
    .toSorted((one, other) => other.worth - one.worth)
    .slice(0, MOST)
    .map(({ entry }) => entry)
}

function worthOf(word: string, name: readonly string[], kind: readonly string[]): number {
  if (name.includes(word)) return 4
  if (name.some((each) => each.startsWith(word))) return 3
  if (kind.includes(word)) return 2
  return kind.some((each) => each.startsWith(word)) ? 1 : 0
}

/** Words and numbers in small letters, without the marks on letters. */
function wordsOf(text: string): readonly string[] {
  return (
    text
      .normalize('NFD')
      .replaceAll(/\p{M}/gu, '')
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  )
}
