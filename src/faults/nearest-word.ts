/**
 * The known word a person most likely meant, `null` when none is near: at most a third of the letters differ, or one is
 * the start of the other (`temperature` for `temperature_c`).
 */
export function nearestWord(word: string, known: readonly string[]): string | null {
  let best: string | null = null
  let fewest = Math.max(1, Math.floor(word.length / 3)) + 1
  for (const candidate of known) {
    const edits = editsBetween(word.toLowerCase(), candidate.toLowerCase())
    if (edits >= fewest) continue
    best = candidate
    fewest = edits
  }
  return best ?? known.find((candidate) => isStart(lettersOf(candidate), lettersOf(word))) ?? null
}

/** Fewer letters than this are the start of too many words. */
const LEAST_START = 3

function isStart(a: string, b: string): boolean {
  return Math.min(a.length, b.length) >= LEAST_START && (a.startsWith(b) || b.startsWith(a))
}

function lettersOf(word: string): string {
  return word.toLowerCase().replace(/[^a-z0-9]/g, '')
}

/** Fewest insertions, deletions and replacements that turn one word into the other. */
function editsBetween(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, index) => index)
  for (let i = 1; i <= from.length; i += 1) {
    const next = [i]
    for (let j = 1; j <= to.length; j += 1) {
      const replaced = (row[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1)
      next.push(Math.min(replaced, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1))
    }
    row = next
  }
  return row[to.length] ?? 0
}
