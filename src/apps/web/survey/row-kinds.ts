import type { TypedRow } from '#outside/formats/typed-hole-table.ts'

/** What a row can be, in the order in which they are offered, with its word. */
export const ROW_KINDS: readonly { readonly value: string; readonly name: string }[] = [
  { value: 'tee', name: 'tee' },
  { value: 'fairway', name: 'fairway' },
  { value: 'green', name: 'green' },
  { value: 'bunker', name: 'bunker' },
  { value: 'water-red', name: 'water, red' },
  { value: 'water-yellow', name: 'water, yellow' },
  { value: 'ditch-red', name: 'ditch, red' },
  { value: 'ditch-yellow', name: 'ditch, yellow' },
  { value: 'trees', name: 'trees' },
  { value: 'scrub', name: 'scrub' },
  { value: 'heavy', name: 'heavy grass' },
  { value: 'out', name: 'out of bounds' },
  { value: 'bend', name: 'bend of the line' },
  { value: 'start', name: 'start on the earth' },
]

/** Kinds that tell of the line of the hole and are no ground. */
const LINE_KINDS: ReadonlySet<string> = new Set(['bend', 'start'])

/** Kinds whose outline can be traced; a tee is one tap. */
export const TRACED_KINDS: readonly { readonly value: string; readonly name: string }[] = ROW_KINDS.filter(
  ({ value }) => !LINE_KINDS.has(value),
)

export const SIDES: readonly { readonly value: string; readonly name: string }[] = [
  { value: '', name: '' },
  { value: 'left', name: 'left' },
  { value: 'right', name: 'right' },
  { value: 'across', name: 'across' },
]

/** A kind in words. */
export function kindWords(what: string): string {
  return ROW_KINDS.find(({ value }) => value === what)?.name ?? what
}

/** What a distance cell of a row means, where it is something of its own; shown in it while it is blank. */
export function cellHint(row: TypedRow, cell: 'from' | 'to' | 'near' | 'far'): string {
  const own = HINTS[row.what]?.[cell]
  if (own !== undefined || row.what === 'tee' || LINE_KINDS.has(row.what)) return own ?? ''
  return cell === 'far' && row.side !== 'left' && row.side !== 'right' && row.what !== '' ? 'width' : ''
}

/** What the note of a row is for, where it is something of its own. */
export function noteHint({ what }: Pick<TypedRow, 'what'>): string {
  return what === 'tee' ? 'name' : what === 'start' ? '55.9412 -1.8031 toward 43' : ''
}

const HINTS: Readonly<Record<string, Partial<Record<'from' | 'to' | 'near' | 'far', string>>>> = {
  tee: { from: '0', to: 'card', near: 'off' },
  bend: { to: 'deg' },
  green: { from: 'front', to: 'back' },
}
