import { describe, expect, it } from 'vitest'
import type { Answers } from '#golf/player/player-questions.ts'
import { askQuestions } from './ask-questions.ts'

/** Types these lines, then breaks off; returns the answers and everything that was shown. */
async function typed(lines: readonly string[]): Promise<{ answers: Answers | string; shown: string }> {
  const waiting = [...lines]
  let shown = ''
  const person = {
    say: (words: string): void => {
      shown += words
    },
    ask: async (prompt: string): Promise<string | null> => {
      shown += `${prompt}\n`
      return waiting.shift() ?? null
    },
  }
  const answers = await askQuestions(person, 'metres').catch((error: { code: string }) => error.code)
  return { answers, shown }
}

//                 age, name, sex, hand, index
const BEGUN = ['', 'Wren', '', 'left', '20']

describe('askQuestions', () => {
  it('asks ten questions, and no usual score of somebody with an index', async () => {
    const { answers, shown } = await typed([...BEGUN, '', '7i 126', '2', '', '', '', ''])
    expect(answers).toEqual({
      name: 'Wren',
      hand: 'left',
      handicapIndex: '20',
      carries: '7i 126',
      shape: '2',
    })
    for (const number of [1, 5, 10]) expect(shown).toMatch(new RegExp(`^${number}\\. [A-Z]`, 'm'))
    expect(shown).not.toContain('usual score over 18 holes?')
    expect(shown).toContain('(metres)')
  })

  it('helps, says why an answer cannot stand, and asks again', async () => {
    const { answers, shown } = await typed([
      ...[
        '12',
        '?',
        '',
        'Wren Loam',
        'Wren',
        '',
        '',
        'right',
        '',
        '',
        '',
        '',
        '',
        '7i 126',
        '',
        '',
        '',
        '',
        '',
      ],
    ])
    expect(answers).toEqual({ age: '12', name: 'Wren', hand: 'right', carries: '7i 126' })
    expect(shown).toContain('It stays on this machine.')
    expect(shown).toContain('by first name only. Write Wren')
    expect(shown).toContain('This cannot be left open.')
    expect(shown).toContain('Nothing says yet how good the player is.')
  })

  it('goes back, shows what was answered, keeps it on an empty line and takes it out on a dash', async () => {
    const { answers, shown } = await typed([...BEGUN, '<', '<', '', '-', '95', '', '', '', '', '', '', ''])
    expect(shown).toContain('[left; - takes it out]')
    expect(shown).toContain('[20; - takes it out]')
    expect(answers).toEqual({ name: 'Wren', hand: 'left', handicapIndex: '', usualScore: '95' })
  })

  it('keeps nothing of somebody who breaks off', async () => {
    for (let count = 0; count < 8; count += 1) {
      const { answers } = await typed([...BEGUN, '', '', ''].slice(0, count))
      expect(answers).toBe('MAR-ANSWER-012')
    }
  })
})
