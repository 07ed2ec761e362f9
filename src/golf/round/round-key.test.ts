import { expect, it } from 'vitest'
import { parseLog } from './parse-log.ts'
import { parseRound } from './parse-round.ts'
import { roundKey } from './round-key.ts'

const LOG = 'date 2026-07-23\n3: 7i g-12ft / 1 putt\n7: driver r-120 / pw b-17 / sw g-16ft / 2 putts'

it('knows the same round again however its lines stand', () => {
  const key = roundKey(parseLog(LOG, 'one'))
  expect(roundKey(parseLog(`# a note\n\n${LOG}`, 'other'))).toBe(key)
  expect(roundKey(parseLog(LOG.replace('r-120', 'r-121'), 'one'))).not.toBe(key)
  expect(roundKey(parseLog(LOG.replace('07-23', '07-24'), 'one'))).not.toBe(key)
})

it('knows two copies of one round by its id, whatever was logged on each', () => {
  const copy = (club: string): string =>
    JSON.stringify({
      schema: 'round/1',
      id: 'round-of-july',
      holes: [{ ref: '3', strokes: [{ club }], putts: 2 }],
    })
  const [one, other] = ['7-iron', '8-iron'].map((club) => roundKey(parseRound(copy(club), 'a phone')))
  expect(one).toBe('round-of-july')
  expect(other).toBe(one)
})
