/** What a note says beside plain words. */
export interface RowNote {
  readonly par: string | null
  /** Stroke index. */
  readonly index: string | null
  /** The note without these; a name of tee markers or of the ground. */
  readonly rest: string
}

const PAR = /\bpar\s*:?\s*(\d)\b/i
const INDEX = /\b(?:stroke\s+)?index\s*:?\s*(\d{1,2})\b/i

/** Reads a note such as `par 4, index 7` or `white`. */
export function readNote(note: string): RowNote {
  const rest = note
    .replace(PAR, '')
    .replace(INDEX, '')
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .join(', ')
  return { par: PAR.exec(note)?.[1] ?? null, index: INDEX.exec(note)?.[1] ?? null, rest }
}
