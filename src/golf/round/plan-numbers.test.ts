import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parseDay } from '#golf/course/parse-day.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import { encodePlanNumbers, type PlanNumbers, parsePlanNumbers } from './plan-numbers.ts'
import { planNumbersIn } from './plan-numbers-file.ts'
import { encodePrintedCard, parsePrintedCard } from './printed-card.ts'

const example = (name: string): string =>
  readFileSync(new URL(`../../../examples/${name}`, import.meta.url), 'utf8')
const PLAYERS = ['tobin-skell', 'ysolde-marrin', 'aldous-brack', 'wren']
const DAY = parseDay(example('westerly.day.json'), 'day')

const numbersOf = (name: string): PlanNumbers => ({
  from: 'card',
  date: '2026-05-02',
  player: completePlayer(parsePlayer(example(`${name}.player.json`), name)),
  day: DAY,
})

describe('the numbers of a plan', () => {
  it.each(PLAYERS)('come back from a file as they were: %s', (name) => {
    const numbers = numbersOf(name)
    const file: unknown = JSON.parse(JSON.stringify({ plan_numbers: encodePlanNumbers(numbers) }))
    expect(parsePlanNumbers(planNumbersIn(file as object) ?? {}, 'plan_numbers')).toEqual(numbers)
  })

  it('may be of a calm day, and say nothing of the words of cards', () => {
    const sentence = { course: 'Links', hole: '1', reader: 'player', part: 'words', words: 'Mine.' } as never
    const { player, ...rest } = numbersOf('wren')
    const file = encodePlanNumbers({ ...rest, player: { ...player, sentences: [sentence] }, day: null })
    expect(parsePlanNumbers(file, 'plan_numbers')).toEqual({ ...rest, player, day: null })
  })

  it('stand in a card, which says what it lacks', () => {
    const card = {
      ...{ course: 'Links', courseId: 'links', player: 'Wren', playerId: 'wren', date: '2026-05-02' },
      planNumbers: encodePlanNumbers(numbersOf('wren')),
    }
    const text = encodePrintedCard(card)
    expect(parsePrintedCard(text, 'cards/x')).toEqual({ card, numbers: numbersOf('wren') })
    const without = (field: string): string => JSON.stringify({ ...JSON.parse(text), [field]: undefined })
    for (const field of ['course', 'course_id', 'player', 'player_id', 'date', 'plan_numbers', 'schema'])
      expect(() => parsePrintedCard(without(field), 'cards/x'), field).toThrow(
        expect.objectContaining({ code: 'MAR-SERVER-018', where: `cards/x: ${field}` }),
      )
    const broken = JSON.stringify({ ...JSON.parse(text), plan_numbers: { player: { schema: 'player/1' } } })
    expect(() => parsePrintedCard(broken, 'cards/x')).toThrow(
      expect.objectContaining({ where: expect.stringContaining('cards/x: plan_numbers.player') }),
    )
  })
})
