import { Failure } from '#faults/failure.ts'
import { dayParts } from './calendar.ts'
import { type PlanNumbers, parsePlanNumbers } from './plan-numbers.ts'
import { type PlanNumbersFile, planNumbersIn } from './plan-numbers-file.ts'
import { textNumber } from './text-number.ts'

/** A card that was made for somebody: what its plans stood on, so that a round by it is held against them. */
export interface PrintedCard {
  readonly course: string
  readonly courseId: string
  readonly player: string
  readonly playerId: string
  /** From this day on it is the card, until the next. */
  readonly date: string
  readonly planNumbers: PlanNumbersFile
}

/** What ids of the cards of a player on a course begin with: both ids together may be longer than an id can be. */
function cardsOf({ courseId, playerId }: Pick<PrintedCard, 'courseId' | 'playerId'>): string {
  return `card-${textNumber(`${courseId}/${playerId}`)}-`
}

/** The id under which a card is kept: one a day for a player and course. */
export function cardId(card: Pick<PrintedCard, 'courseId' | 'playerId' | 'date'>): string {
  return `${cardsOf(card)}${card.date}`
}

/** The id of the last card that a player had on a course on a date, among ids of the store; `null` = there was none. */
export function lastCardId(
  ids: readonly string[],
  of: Pick<PrintedCard, 'courseId' | 'playerId'>,
  date: string,
): string | null {
  const own = cardsOf(of)
  const dateOf = (id: string): string => id.slice(own.length, own.length + DATE_LETTERS)
  const until = ids.filter((id) => id.startsWith(own) && dateOf(id) <= date)
  // One of another machine for the same day stands beside ours under a number, and ours counts: its id is the shorter.
  return until.reduce<string | null>((last, id) => {
    if (last === null || dateOf(id) > dateOf(last)) return id
    return dateOf(id) === dateOf(last) && id.length < last.length ? id : last
  }, null)
}
/** As in 2026-05-02. */
const DATE_LETTERS = 10

/** A card as a `card/1` file. */
export function encodePrintedCard({ courseId, playerId, planNumbers, ...words }: PrintedCard): string {
  return `${JSON.stringify({
    schema: 'card/1',
    name: `${words.date}, ${words.player}, ${words.course}`,
    ...words,
    course_id: courseId,
    player_id: playerId,
    plan_numbers: planNumbers,
  })}\n`
}

/** A card from the text of a `card/1` file, with its numbers read. Throws MAR-SERVER-018, or the Failure of what reads player or day. */
export function parsePrintedCard(
  text: string,
  where: string,
): { readonly card: PrintedCard; readonly numbers: PlanNumbers } {
  const file = JSON.parse(text) as Readonly<Record<string, unknown>> | null
  const planNumbers = planNumbersIn(file ?? {})
  if (file?.schema !== 'card/1' || planNumbers === null)
    throw new Failure(
      'MAR-SERVER-018',
      'This is not a card (card/1) with its plan_numbers.',
      `${where}: ${planNumbers === null ? 'plan_numbers' : 'schema'}`,
    )
  const word = (name: string): string => {
    const value = file[name]
    if (typeof value === 'string' && value !== '') return value
    throw new Failure('MAR-SERVER-018', `A card (card/1) needs its ${name}, a text.`, `${where}: ${name}`)
  }
  const date = word('date')
  if (dayParts(date) === null)
    throw new Failure('MAR-SERVER-018', `"${date}" is no date; write it like 2026-05-02.`, `${where}: date`)
  return {
    card: {
      course: word('course'),
      courseId: word('course_id'),
      player: word('player'),
      playerId: word('player_id'),
      date,
      planNumbers,
    },
    numbers: parsePlanNumbers(planNumbers, `${where}: plan_numbers`),
  }
}
