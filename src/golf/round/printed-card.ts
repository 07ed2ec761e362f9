import { Failure } from '#faults/failure.ts'
import { type PlanNumbers, parsePlanNumbers } from './plan-numbers.ts'
import { type PlanNumbersFile, planNumbersIn } from './plan-numbers-file.ts'

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
  return {
    card: {
      course: word('course'),
      courseId: word('course_id'),
      player: word('player'),
      playerId: word('player_id'),
      date: word('date'),
      planNumbers,
    },
    numbers: parsePlanNumbers(planNumbers, `${where}: plan_numbers`),
  }
}
