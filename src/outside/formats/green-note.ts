/** The slope of a green as a person types it: every text may be blank or wrong. */
export interface TypedGreen {
  /** Per cent; between the steps, where there are any. */
  readonly fall: string
  /** Downhill: a side of the green, or degrees clockwise from the line of approach. */
  readonly toward: string
  readonly tiers: readonly TypedTier[]
  readonly heights: readonly TypedHeight[]
}

/** A step across a green. */
export interface TypedTier {
  /** Its middle, on from the front edge, in the unit of the table. */
  readonly on: string
  /** How much higher the ground is behind it, cm. */
  readonly rise: string
  /** From its foot to its head, in the unit of the table. */
  readonly over: string
}

/** A height measured on a green or its apron. */
export interface TypedHeight {
  /** On from the front edge, in the unit of the table. */
  readonly on: string
  /** Beside the line of approach through the middle of the green, right positive, in the unit of the table. */
  readonly beside: string
  /** Above any one zero, cm. */
  readonly height: string
}

/** A green of which nothing is typed. */
export const BLANK_GREEN: TypedGreen = { fall: '', toward: '', tiers: [], heights: [] }

const FALL = /\bfall\s+([^\s,;%]+)\s*(?:%|per cent)?\s+towards?\s+([^,;]+)/i
const TIERS = /\btiers?((?:\s+[^\s,;:]*:[^\s,;]*)+)/i
const HEIGHTS = /\bheights?((?:\s+[^\s,;:]*:[^\s,;]*)+)/i

/**
 * Reads `fall 2.5 toward front left`, `tier 14:40:4` (on from the front : cm up : over) and `heights 2:-8:0 15:6:32` (on from
 * the front : beside : cm) out of the note of a green; `words` is the note without them.
 */
export function parseGreenNote(note: string): { readonly green: TypedGreen; readonly words: string } {
  const fall = FALL.exec(note)
  const words = note
    .replace(FALL, '')
    .replace(TIERS, '')
    .replace(HEIGHTS, '')
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .join(', ')
  return {
    green: {
      fall: typed(fall?.[1]),
      toward: typed(fall?.[2]),
      tiers: triples(TIERS, note).map(([on, rise, over]) => ({ on, rise, over })),
      heights: triples(HEIGHTS, note).map(([on, beside, height]) => ({ on, beside, height })),
    },
    words,
  }
}

/** The note that {@link parseGreenNote} reads back; what is blank throughout is left out. */
export function encodeGreenNote({ fall, toward, tiers, heights }: TypedGreen, words: string): string {
  const isBlank = (texts: readonly string[]): boolean => texts.every((text) => text.trim() === '')
  const list = (name: string, rows: readonly (readonly string[])[]): string => {
    const filled = rows.filter((row) => !isBlank(row))
    return filled.length === 0 ? '' : `${name} ${filled.map((row) => row.map(token).join(':')).join(' ')}`
  }
  return [
    words,
    isBlank([fall, toward]) ? '' : `fall ${token(fall)} toward ${token(toward).replaceAll('_', ' ')}`,
    list(
      'tier',
      tiers.map(({ on, rise, over }) => [on, rise, over]),
    ),
    list(
      'heights',
      heights.map(({ on, beside, height }) => [on, beside, height]),
    ),
  ]
    .filter((part) => part !== '')
    .join(', ')
}

/** Stands in a note for what is blank. */
const BLANK = '?'

/** What is typed, without the signs that part a note. */
function token(text: string): string {
  const word = text
    .trim()
    .replace(',', '.')
    .replaceAll(/[\s,;:]+/g, '_')
  return word === '' ? BLANK : word
}

function typed(text: string | undefined): string {
  return text === undefined || text === BLANK ? '' : text.trim()
}

function triples(pattern: RegExp, note: string): [string, string, string][] {
  const listed = pattern.exec(note)?.[1]?.trim().split(/\s+/) ?? []
  return listed.map((texts) => {
    const [first, second, ...more] = texts.split(':')
    return [typed(first), typed(second), typed(more.join(':'))]
  })
}
