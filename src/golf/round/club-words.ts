import { costText } from '#golf/strategy/cost-text.ts'
import { QUICK_WORDS } from '#golf/strategy/rough-words.ts'
import type { Club, ClubHole, ClubTee } from './club.ts'
import { gamePartWords } from './recap-words.ts'
import { FEW_GREENS_SHARE, NAMED_INDEX_PLACES } from './settings.ts'
import type { WordTable } from './word-table.ts'

/** Stroke indexes by hole ref, as far as the course has them. */
export type StrokeIndexes = Readonly<Record<string, number | null>>

/** A mean in strokes: none is a figure too. */
function signed(strokes: number): string {
  const words = costText(strokes)
  return words === costText(0) ? '0.00' : words
}

const figure = (heading: string) => ({ heading, isFigure: true })

/** Where members lose strokes, a round of eighteen holes more than their own plans expect. */
function clubPartTable({ parts }: Club): WordTable {
  return {
    columns: [{ heading: '' }, figure('members'), figure('choices'), figure('struck')],
    rows: parts.map(({ part, members, choices, struck }) => [
      gamePartWords(part),
      String(members),
      signed(choices),
      signed(struck),
    ]),
  }
}

/** The holes, the hardest first, beside their stroke indexes. */
function clubHoleTable({ holes }: Club, indexes: StrokeIndexes): WordTable {
  return {
    columns: ['hole', 'par', 'members', 'over par', 'over the plans', 'stroke index'].map((heading, index) =>
      index === 0 ? { heading } : figure(heading),
    ),
    rows: holes.map(({ ref, par, members, overPar, overPlan }) => [
      ref,
      String(par),
      String(members),
      signed(overPar),
      signed(overPlan),
      indexes[ref]?.toString() ?? '',
    ]),
  }
}

/** By markers. */
function clubTeeTable({ tees }: Club): WordTable {
  return {
    columns: [{ heading: 'tee' }, figure('members'), figure('greens'), figure('a hole over the plans')],
    rows: tees.map(({ tee, members, greens, overPlan }) => [
      tee,
      String(members),
      `${Math.round(100 * greens)} %`,
      signed(overPlan),
    ]),
  }
}

/** By where the hole was cut. */
function clubLocationTable({ locations }: Club): WordTable {
  return {
    columns: [{ heading: 'hole' }, { heading: 'location' }, figure('members'), figure('over the plans')],
    rows: locations.map(({ ref, location, members, overPlan }) => [
      ref,
      location,
      String(members),
      signed(overPlan),
    ]),
  }
}

/** All tables that have a row, with what stands over them. */
export function clubTables(
  club: Club,
  indexes: StrokeIndexes,
): readonly { readonly heading: string; readonly table: WordTable }[] {
  return [
    { heading: 'Where strokes are lost, a round of eighteen holes', table: clubPartTable(club) },
    { heading: 'The holes, the hardest first', table: clubHoleTable(club, indexes) },
    { heading: 'By markers', table: clubTeeTable(club) },
    { heading: 'By hole location', table: clubLocationTable(club) },
  ].filter(({ table }) => table.rows.length > 0)
}

/** `Sandrel Ness: 31 rounds of 9 members`. */
export function clubTitle({ rounds, members }: Club, course: string): string {
  return `${course}: ${rounds} ${rounds === 1 ? 'round' : 'rounds'} of ${members} ${members === 1 ? 'member' : 'members'}`
}

/** Why nothing is said of so few members. */
export function tooFewWords(members: number, minimum: number): string {
  return `The rounds are of ${members} ${members === 1 ? 'member' : 'members'}: nothing is said of fewer than ${minimum}.`
}

/** Where there is no such sentence. */
export const NOTHING_STANDS_OUT =
  'No hole is far from its place by stroke index, and from no markers are greens out of reach.'

/** What of it a committee may want to look at, in sentences; none where nothing stands out. */
export function clubWords({ holes, tees }: Club, indexes: StrokeIndexes): string[] {
  return [...indexWords(holes, indexes), ...tees.flatMap(teeWords)]
}

/** Holes whose difficulty is far from the order of their stroke indexes. */
function indexWords(holes: readonly ClubHole[], indexes: StrokeIndexes): string[] {
  const known = holes.filter(({ ref }) => indexes[ref] != null)
  const byIndex = known.toSorted((a, b) => (indexes[a.ref] as number) - (indexes[b.ref] as number))
  return known.flatMap((hole, place) => {
    const away = byIndex.indexOf(hole) - place
    if (Math.abs(away) < NAMED_INDEX_PLACES) return []
    return [
      `Hole ${hole.ref} is number ${place + 1} of ${known.length} by difficulty and number ${place + 1 + away} by stroke index. The Committee allocates (Rules of Handicapping 2024, Appendix E).`,
    ]
  })
}

function teeWords({ tee, greens }: ClubTee): string[] {
  if (greens >= FEW_GREENS_SHARE) return []
  return [
    `From the ${tee} markers ${Math.round(100 * greens)} greens in 100 are reached in par less two: markers further forward would give these members more to play for.`,
  ]
}

/** What the figures are, and whose they are not. */
export function clubBasis({ minimum, withheld }: Club, isQuick: boolean): string[] {
  return [
    `No figure is of fewer than ${minimum} members, every member weighs the same, and nothing here says who they are.`,
    ...(withheld === 0
      ? []
      : [
          `${withheld} ${withheld === 1 ? 'figure is' : 'figures are'} left out: too few members, or another could be reckoned from them.`,
        ]),
    'Each round is held against the plan for that member on its own day, so a good player and a beginner weigh alike.',
    ...(isQuick ? [QUICK_WORDS] : []),
  ]
}
