import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parseDay } from '#golf/course/parse-day.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import { encodePlanNumbers, type PlanNumbers, parsePlanNumbers } from './plan-numbers.ts'
import { planNumbersIn } from './plan-numbers-file.ts'
import { cardId, encodePrintedCard, lastCardId, parsePrintedCard } from './printed-card.ts'

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

  it('are of no other day than they say, and of a card or not', () => {
    const file = encodePlanNumbers(numbersOf('wren'))
    for (const wrong of [{ date: '2026-13-45' }, { date: undefined }, { from: 'memory' }])
      expect(() => parsePlanNumbers({ ...file, ...wrong }, 'plan_numbers'), JSON.stringify(wrong)).toThrow(
        expect.objectContaining({ code: 'MAR-ROUND-016' }),
      )
  })

  it('are found by the last card of the date or before, the own one first', () => {
    const of = { courseId: 'links', playerId: 'wren' }
    const id = (date: string): string => cardId({ ...of, date })
    const [may, june, other] = [
      id('2026-05-02'),
      id('2026-06-01'),
      cardId({ ...of, playerId: 'odd', date: '2026-05-20' }),
    ]
    const ids = [`${may}-2`, june, other, may, `${may}-3`]
    expect(lastCardId(ids, of, '2026-05-01')).toBeNull()
    for (const date of ['2026-05-02', '2026-05-31']) expect(lastCardId(ids, of, date)).toBe(may)
    expect(lastCardId(ids, of, '2027-01-01')).toBe(june)
    expect(lastCardId([`${may}-2`], of, '2026-05-03')).toBe(`${may}-2`)
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
    const broken = JSON.stringify({
      ...JSON.parse(text),
      plan_numbers: { ...card.planNumbers, player: { schema: 'player/1' } },
    })
    expect(() => parsePrintedCard(broken, 'cards/x')).toThrow(
      expect.objectContaining({ where: expect.stringContaining('cards/x: plan_numbers.player') }),
    )
  })
})
