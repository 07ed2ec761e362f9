import { expect, it } from 'vitest'
import type { Player } from '#golf/player/player.ts'
import { knownWords } from './known-words.ts'

const player = (guesses: readonly boolean[], shots: number): Player =>
  ({
    hand: 'left',
    handicapIndex: -1.2,
    clubs: guesses.map((isGuess, index) => ({ isGuess, shots: index === 0 ? shots : 0 })),
  }) as unknown as Player

it('says the hand, the index, which carries are known and what the patterns are from', () => {
  expect(knownWords(player([true, true], 0))).toBe(
    'Left-handed, off +1.2. Every carry is a guess; no pattern is from shots.',
  )
  expect(knownWords(player([false, true], 12))).toContain(
    '1 of 2 carries are known; the patterns are from 12 shots.',
  )
  expect(knownWords(player([false], 1))).toContain('Every carry is known; the patterns are from 1 shot.')
})
