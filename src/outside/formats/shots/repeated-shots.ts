import type { ShotRecord } from '#golf/player/shot-record.ts'
import { FALSE_BATCHES, LEAST_BATCH } from './settings.ts'

/**
 * Which shots are written twice: the places of the later copies, ascending.
 *
 * A shot alone that looks like another is no copy, because whole yards repeat by chance, most of all in the middle of a
 * pattern, which must not be thinned. Taken for copies are
 * - a stretch of shots that stands again in the same order, with so many different shots in it that chance would not
 *   do it once in a hundred such files;
 * - everything beyond the first, when every shot of the tables, or of one day, stands there the same number of times, as
 *   where two tables were joined and sorted;
 * - a row whose `mark` was there before: all its cells where one is a time of day, else empty.
 */
export function repeatedShots(shots: readonly ShotRecord[], marks: readonly string[]): readonly number[] {
  const ids = shotIds(shots)
  const all = [...ids.keys()]
  const whole = wholeCopies(ids, all)
  if (whole.length > 0) return whole
  const copies = new Set(batchCopies(ids))
  for (const places of placesByDay(shots)) for (const copy of wholeCopies(ids, places)) copies.add(copy)
  const seen = new Set<string>()
  for (const [place, mark] of marks.entries()) {
    if (mark === '' || copies.has(place)) continue
    if (seen.has(mark)) copies.add(place)
    seen.add(mark)
  }
  return [...copies].sort((a, b) => a - b)
}

/** The same number for shots that look the same. */
function shotIds(shots: readonly ShotRecord[]): readonly number[] {
  const known = new Map<string, number>()
  return shots.map((shot) => {
    const key = `${shot.date}|${shot.club}|${shot.lie}|${shot.carryMetres}|${shot.totalMetres}|${shot.offlineMetres}|${shot.strike}`
    const id = known.get(key)
    if (id !== undefined) return id
    known.set(key, known.size)
    return known.size - 1
  })
}

/** So many different shots, each an even number of times, are no chance: 1 in 30,000. Our assumption. */
const LEAST_DIFFERENT = 15

/** The later copies among some places, when every shot there stands there twice, or three times …; else none. */
function wholeCopies(ids: readonly number[], places: readonly number[]): readonly number[] {
  const times = countsOf(places.map((place) => ids[place] ?? 0))
  const every = [...times.values()].reduce(greatestDivisor, 0)
  if (every < 2 || times.size < LEAST_DIFFERENT) return []
  const seen = new Map<number, number>()
  return places.filter((place) => {
    const id = ids[place] ?? 0
    const before = seen.get(id) ?? 0
    seen.set(id, before + 1)
    return before >= (times.get(id) ?? 0) / every
  })
}

function placesByDay(shots: readonly ShotRecord[]): Iterable<readonly number[]> {
  const days = new Map<string | null, number[]>()
  for (const [place, { date }] of shots.entries()) {
    const own = days.get(date)
    if (own === undefined) days.set(date, [place])
    else own.push(place)
  }
  return days.values()
}

function batchCopies(ids: readonly number[]): readonly number[] {
  const length = batchLength(ids)
  const copies: number[] = []
  if (length === null) return copies
  const firstAt = new Map<string, number>()
  let place = 0
  while (place + length <= ids.length) {
    const key = ids.slice(place, place + length).join(' ')
    const before = firstAt.get(key)
    if (before === undefined || before + length > place) {
      if (before === undefined) firstAt.set(key, place)
      place += 1
      continue
    }
    let end = place + length
    while (end < ids.length && before + end - place < place && ids[end] === ids[before + end - place])
      end += 1
    const isTelling = new Set(ids.slice(place, end)).size >= length
    if (isTelling) for (let copy = place; copy < end; copy += 1) copies.push(copy)
    place = isTelling ? end : place + 1
  }
  return copies
}

/**
 * How many different shots in a row make a batch: so many that the pairs of stretches that agree by chance are fewer
 * than {@link FALSE_BATCHES}, at the rate at which single shots of this file agree. `null` when nearly all agree.
 */
function batchLength(ids: readonly number[]): number | null {
  const count = ids.length
  const pairs = (count * (count - 1)) / 2
  if (pairs === 0) return null
  let alike = 0
  for (const times of countsOf(ids).values()) alike += (times * (times - 1)) / 2
  const rate = alike / pairs
  if (rate === 0 || rate > 0.5) return null
  return Math.max(LEAST_BATCH, Math.ceil(Math.log(FALSE_BATCHES / pairs) / Math.log(rate)))
}

function countsOf(ids: readonly number[]): ReadonlyMap<number, number> {
  const times = new Map<number, number>()
  for (const id of ids) times.set(id, (times.get(id) ?? 0) + 1)
  return times
}

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b)
}
