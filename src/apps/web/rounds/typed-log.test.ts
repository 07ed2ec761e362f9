import { describe, expect, it } from 'vitest'
import { parseKeptRound } from '#golf/round/parse-kept-round.ts'
import { parseLog } from '#golf/round/parse-log.ts'
import { parseRound } from '#golf/round/parse-round.ts'
import { holesOf, keepTyped, readLine, roundOfTyped, type TypedLog, typedBefore } from './typed-log.ts'

const LOG: TypedLog = {
  courseId: 'sandrel-ness',
  playerId: 'wren',
  date: '2026-05-02',
  tee: 'drift',
  lines: { '1': 'driver f-180 / 5i r-25 / sw g-6 / 2 putts', '2': '3w o / 3w x-90 +1 / pick up', '3': '' },
}

describe('a paper log on the desk', () => {
  it('says beside the line which stroke and column does not make sense, counted in what was typed', () => {
    const line = 'driver f-180 / spoon r-25 / 2 putts'
    const { hole, faults } = readLine('12', line, 'yards')
    expect(hole?.strokes).toHaveLength(2)
    expect(faults.map(({ place }) => place)).toEqual([`stroke 2, column ${line.indexOf('spoon') + 1}`])
    expect(readLine('12', '  ', 'yards')).toEqual({ hole: null, faults: [] })
  })

  it('becomes the round that the same lines are on the command line', () => {
    const holes = holesOf(LOG, ['1', '2', '3'], 'yards')
    const { text } = roundOfTyped(LOG, holes, { course: 'Sandrel Ness', player: 'Wren' }, 'abc', null)
    const { round, faults } = parseRound(text, 'file')
    const typed = Object.entries(LOG.lines).map(([ref, line]) => (line === '' ? '' : `${ref}: ${line}`))
    const { round: written } = parseLog(typed.join('\n'), 'log')
    expect(faults).toEqual([])
    const said = ({ holes: all }: typeof round): unknown =>
      all.map(({ ref, putts, isPickedUp, strokes }) => ({
        ref,
        putts,
        isPickedUp,
        strokes: strokes.map(({ club, finish, penalty }) => ({ club, finish, penalty })),
      }))
    expect(said(round)).toEqual(said(written))
    expect(parseKeptRound(text, 'file')?.faults).toEqual([])
  })

  it('is there again after the page was closed', () => {
    const texts = new Map<string, string>()
    const storage = {
      getItem: (key: string) => texts.get(key) ?? null,
      setItem: (key: string, text: string) => void texts.set(key, text),
      removeItem: (key: string) => void texts.delete(key),
    }
    expect(typedBefore(storage)).toBeNull()
    keepTyped(LOG, storage)
    expect(typedBefore(storage)).toEqual(LOG)
    keepTyped(null, storage)
    expect(typedBefore(storage)).toBeNull()
  })
})
