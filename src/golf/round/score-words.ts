import { pageName } from '#golf/player/first-name.ts'
import type { HoleLimit } from '#golf/rules/hole-limit.ts'
import { matchState, matchWords } from '#golf/rules/match-state.ts'
import { capital } from '#golf/strategy/capital.ts'
import type { BallHole } from './ball-card.ts'
import type { Competition, Counting, Play } from './competition.ts'
import type { CardBall, CardSide, CompetitionCard } from './competition-card.ts'
import type { WordTable } from './word-table.ts'

/** Forms of play, as they are called. */
export const PLAY_WORDS: Readonly<Record<Play, string>> = {
  singles: 'each their own ball',
  'four-ball': 'four-ball, the better ball of the side',
  foursomes: 'foursomes',
  greensomes: 'greensomes',
  chapman: 'Chapman foursomes',
  scramble: 'scramble',
}
/** What is counted, as it is called. */
export const BY_WORDS: Readonly<Record<Counting, string>> = {
  strokes: 'stroke play',
  points: 'points',
  maximum: 'maximum score',
  par: 'par/bogey',
  match: 'match play',
}
const COUNT_WORDS: Readonly<Record<Counting, string>> = {
  strokes: 'net',
  points: 'points',
  maximum: 'net',
  par: 'against par',
  match: 'net',
}

/** `Sandrel Ness: four-ball, the better ball of the side, match play`. */
export function scoreTitle(course: string, { play, by }: Competition): string {
  return `${course}: ${PLAY_WORDS[play]}, ${BY_WORDS[by]}`
}

/** Who plays off what. */
export function handicapWords(card: CompetitionCard, { by, limit, allowance }: Competition): string[] {
  const isLevel = card.sides.every(({ balls }) => balls.every(({ received }) => received === 0))
  return [
    allowance === null || card.allowance === null
      ? allowanceWords(card.allowance)
      : `${allowance} % of the course handicap, as the Committee lays down.`,
    ...(by === 'maximum' ? [`The most that counts on a hole is ${limitWords(limit)} (Rule 21.2).`] : []),
    ...card.sides.flatMap((side) => side.balls.map((ball) => ballWords(ball, by, isLevel))),
  ]
}

/** What the star in the table means; nothing where each side has one ball. */
export function starWords(card: CompetitionCard): string[] {
  return card.sides.some(({ balls }) => balls.length > 1) ? ['* counts for the side.'] : []
}

function allowanceWords(allowance: CompetitionCard['allowance']): string {
  if (allowance === null) return 'Gross: nobody receives strokes.'
  const share =
    typeof allowance === 'number'
      ? `${allowance} % of the course handicap`
      : `${allowance.join(' + ')} % of the partners’ course handicaps, the lowest first, added and rounded once`
  return `${share} (Rules of Handicapping 2024, Appendix C). What the Committee lays down stands.`
}

function limitWords(limit: HoleLimit): string {
  switch (limit.kind) {
    case 'net-double-bogey':
      return 'net double bogey'
    case 'double-par':
      return 'twice its par'
    case 'over-par':
      return `${limit.strokes} over par`
    case 'strokes':
      return `${limit.strokes} strokes`
  }
}

function ballWords(ball: CardBall, by: Counting, isLevel: boolean): string {
  const { tee, playingHandicap, received } = ball
  const from = tee === null ? '' : `, ${tee} tees`
  if (playingHandicap === null) return `${nameOf(ball)}${from}.`
  const given =
    by !== 'match' || isLevel
      ? ''
      : received === 0
        ? ', gives the strokes'
        : `, receives ${received} in the match`
  return `${nameOf(ball)}${from}: playing handicap ${handicapText(playingHandicap)}${given}.`
}

/** A plus handicap as it is written on cards. */
export function handicapText(handicap: number): string {
  return handicap < 0 ? `+${-handicap}` : String(handicap)
}

function nameOf({ players }: CardBall): string {
  return players.map(({ name, age }) => pageName(name, age)).join(' and ')
}

/** Hole by hole, the balls of each side beside what counts for it. */
export function scoreTable(card: CompetitionCard, by: Counting): WordTable {
  const refs = [...new Set(card.sides.flatMap(({ holes }) => holes.map(({ ref }) => ref)))]
  const hasBalls = card.sides.some(({ balls }) => balls.length > 1)
  const columns = [
    { heading: 'hole' },
    { heading: 'par', isFigure: true },
    { heading: 'index', isFigure: true },
    ...card.sides.flatMap(({ balls }, side) => [
      ...balls.map((ball) => ({ heading: nameOf(ball), isFigure: true })),
      ...(hasBalls
        ? [
            {
              heading: card.sides.length > 1 ? (side === 0 ? 'first side' : 'second side') : 'side',
              isFigure: true,
            },
          ]
        : []),
    ]),
    ...(card.match === null ? [] : [{ heading: 'match' }]),
  ]
  const rows = refs.map((ref) => {
    const known = card.sides
      .flatMap(({ balls }) => balls.flatMap(({ holes }) => holes))
      .find((hole) => hole.ref === ref) as BallHole
    return [
      ref,
      known.par === null ? '' : String(known.par),
      known.strokeIndex === null ? '' : String(known.strokeIndex),
      ...card.sides.flatMap((side) => [
        ...side.balls.map((ball, number) => ballCell(side, ball, number, ref, by)),
        ...(hasBalls ? [countText(side.holes.find((hole) => hole.ref === ref)?.counts ?? null, by)] : []),
      ]),
      ...(card.match === null ? [] : [matchCell(card.match, ref)]),
    ]
  })
  return { columns, rows }
}

/** `4* (5 −1)`: what it counts and whether for its side; in brackets gross or picked up, and strokes received. */
function ballCell(side: CardSide, ball: CardBall, number: number, ref: string, by: Counting): string {
  const hole = ball.holes.find((one) => one.ref === ref)
  if (hole === undefined) return ''
  const { gross, received, counts } = hole
  const star =
    side.balls.length < 2 ? '' : side.holes.find((one) => one.ref === ref)?.by.includes(number) ? '*' : ' '
  const strokes = received === 0 ? '' : received > 0 ? ` −${received}` : ` +${-received}`
  return `${countText(counts, by)}${star} (${gross ?? 'up'}${strokes})`
}

function countText(counts: number | null, by: Counting): string {
  if (counts === null) return '–'
  if (by !== 'par') return String(counts)
  return counts > 0 ? 'won' : counts < 0 ? 'lost' : 'tied'
}

/** How the match stood after a hole; nothing after the last one that both played. */
function matchCell({ holes, of }: NonNullable<CompetitionCard['match']>, ref: string): string {
  const place = holes.findIndex((hole) => hole.ref === ref)
  if (place < 0) return ''
  const { up } = matchState(
    holes.slice(0, place + 1).map(({ result }) => result),
    of,
  )
  return up === 0 ? 'level' : `${Math.abs(up)} ${up > 0 ? 'up' : 'down'}`
}

/** How it stands: each side’s total, or the match. */
export function standingWords(card: CompetitionCard, by: Counting): string[] {
  const names = card.sides.map(({ balls }) => balls.map(nameOf).join(' and '))
  if (card.match !== null) return [`${names[0]}: ${matchWords(card.match)}.`]
  const lines = card.sides.map(
    (side, number) =>
      `${names[number]}: ${totalWords(side, by, card.allowance === null)}${partWords(side, by, card.of)}.`,
  )
  const [own, theirs] = card.sides
  if (own?.total == null || theirs?.total == null || own.holes.length !== theirs.holes.length) return lines
  const lead = (own.total - theirs.total) * (by === 'points' || by === 'par' ? 1 : -1)
  const ahead = lead === 0 ? 'Level.' : `${names[lead > 0 ? 0 : 1]} ahead by ${Math.abs(lead)}.`
  return [...lines, capital(ahead)]
}

/** A card in stroke play that lacks holes is no score; nine holes may be a round of their own. */
function partWords({ holes, total }: CardSide, by: Counting, of: number): string {
  const isWhole = holes.length >= of || holes.length === NINE
  return by !== 'strokes' || total === null || isWhole
    ? ''
    : `, so far: no score of ${of} holes while one is not holed out (Rule 3.3c)`
}
const NINE = 9

function totalWords({ balls, holes, total }: CardSide, by: Counting, isGross: boolean): string {
  const count = `${holes.length} ${holes.length === 1 ? 'hole' : 'holes'}`
  if (total === null) {
    const open = holes.filter(({ counts }) => counts === null).map(({ ref }) => ref)
    return `no total, because no ball was holed out on ${open.length === 1 ? 'hole' : 'holes'} ${open.join(', ')}`
  }
  if (by === 'par')
    return `${total === 0 ? 'level with par' : `${Math.abs(total)} ${total > 0 ? 'up' : 'down'}`} on ${count}`
  if (by === 'points') return `${total} points on ${count}`
  if (isGross) return `${total} gross on ${count}`
  const [ball] = balls
  const gross =
    balls.length === 1 && ball !== undefined && by === 'strokes'
      ? `${ball.holes.reduce((sum, hole) => sum + (hole.gross ?? 0), 0)} gross, `
      : ''
  return `${gross}${total} ${COUNT_WORDS[by]} on ${count}`
}
