import { describe, expect, it } from 'vitest'
import type { GoOrLayUp } from './thumb.ts'
import { choiceSentences } from './thumb-words.ts'

type Band = GoOrLayUp['bands'][number]

const band = (choice: Band['choice'], from_m: number, to_m: number): Band => ({
  from_m,
  to_m,
  choice,
  gains: null,
  go: null,
  layUp: null,
})
const go = (bands: Band[], switches: GoOrLayUp['switches'] = [], over: string | null = null): GoOrLayUp => ({
  over,
  bands,
  curve: [],
  switches,
})

describe('going or laying up in words', () => {
  it('says where it turns, and where it is too close to call', () => {
    const turning = go(
      [band('lay-up', 230, 200), band('either', 190, 170), band('go', 160, 50)],
      [{ at_m: 181, to: 'go', by: 'cost' }],
    )
    expect(choiceSentences('fairway', turning, 'metres')).toEqual([
      'From the fairway go for the green from 181 metres in.',
      'Between 170 and 190 metres it is too close to call.',
    ])
  })

  it('says what holds all along where it turns nowhere', () => {
    expect(choiceSentences('rough', go([band('go', 200, 50)], [], 'burn'), 'metres')).toEqual([
      'From rough going over the burn costs less wherever it is in reach.',
    ])
    expect(choiceSentences('rough', go([band('lay-up', 200, 50)]), 'metres')).toEqual([
      'From rough laying up costs less all along.',
    ])
    expect(choiceSentences('fairway', go([band('either', 150, 150)]), 'metres')).toEqual([
      'At 150 metres it is too close to call.',
    ])
    expect(choiceSentences('heavy', go([band('out-of-reach', 400, 50)]), 'metres')).toEqual([
      'From heavy grass the green is out of reach all along.',
    ])
  })
})
