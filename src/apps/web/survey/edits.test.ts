import { describe, expect, it } from 'vitest'
import { beginHistory, remember } from '../desk/history.ts'
import * as edits from './edits.ts'
import { KEPT_SURVEY, keepSurvey, keptSurvey } from './kept-survey.ts'
import { newSurvey, openHole, type Survey } from './survey.ts'

function traced(): Survey {
  const corners = [
    [0, 100],
    [10, 100],
    [10, 120],
  ] as const
  const draft = corners.reduce((survey, at) => edits.addCorner(survey, 'bunker', at), newSurvey('m', 0))
  return edits.closeDraft(draft)
}

describe('edits of a survey', () => {
  it('close an outline of three corners and not of two', () => {
    const two = edits.addCorner(edits.addCorner(newSurvey('m', 0), 'bunker', [0, 0]), 'bunker', [1, 0])
    expect(edits.closeDraft(two)).toBe(two)
    const [row, open] = openHole(traced()).rows
    expect(row).toMatchObject({
      what: 'bunker',
      outline: [
        [0, 100],
        [10, 100],
        [10, 120],
      ],
    })
    expect(open).toMatchObject({ what: '', outline: null })
  })

  it('begin anew when another kind is traced, and make a tee of one tap', () => {
    const changed = edits.addCorner(edits.addCorner(newSurvey('m', 0), 'bunker', [0, 0]), 'scrub', [5, 5])
    expect(changed.draft).toEqual({ what: 'scrub', corners: [[5, 5]] })
    const [tee] = openHole(edits.addCorner(newSurvey('m', 0), 'tee', [-3, 12])).rows
    expect(tee).toMatchObject({ what: 'tee', side: 'left', from: '12', near: '3' })
  })

  it('turn lengths into the other unit, but neither degrees nor what is no number', () => {
    const survey = ['bend', '20', 'x'].reduce(
      (now, text, index) => edits.setCell(now, 1, (['what', 'to', 'near'] as const)[index]!, text),
      edits.setCell(newSurvey('m', 0), 1, 'from', '91,44'),
    )
    const [row] = openHole(edits.setUnit(survey, 'yd')).rows
    expect(row).toMatchObject({ from: '100', to: '20', near: 'x' })
  })

  it('give a new hole the next number and never take the last hole away', () => {
    const two = edits.addHole(edits.setHole(newSurvey('m', 0), 'ref', '7'))
    expect(two.holes.map(({ ref }) => ref)).toEqual(['7', '8'])
    const one = edits.removeHole(two)
    expect(one.holes.map(({ ref }) => ref)).toEqual(['7'])
    expect(edits.removeHole(one)).toBe(one)
  })
})

describe('a kept survey', () => {
  const memory = (room: number) => {
    const texts = new Map<string, string>()
    return {
      getItem: (key: string) => texts.get(key) ?? null,
      setItem(key: string, text: string) {
        if (text.length > room) throw new Error('full')
        texts.set(key, text)
      },
    }
  }
  const history = remember(beginHistory(newSurvey('m', 0)), traced(), { kind: 'close', at: 0, drag: null })

  it('is the same again with its past', () => {
    const place = memory(1e6)
    expect(keepSurvey(history, place)).toBe(true)
    expect(keptSurvey(place)).toEqual({ ...history, last: null })
  })

  it('lets its past go before itself when there is little room, and says when there is none', () => {
    const bare = JSON.stringify({ now: history.now, past: [], future: [] }).length
    const place = memory(bare)
    expect(keepSurvey(history, place)).toBe(true)
    expect(keptSurvey(place)).toEqual({ ...beginHistory(history.now) })
    expect(keepSurvey(history, memory(bare - 1))).toBe(false)
  })

  it.each(['{', '1', '{"now":{"holes":[]}}', '{"now":{"name":"a","unit":"ft","holes":[{}]}}'])(
    'of another shape is none: %s',
    (text) => {
      const place = memory(1e6)
      place.setItem(KEPT_SURVEY, text)
      expect(keptSurvey(place)).toBeNull()
    },
  )
})
