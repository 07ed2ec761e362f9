import { describe, expect, it } from 'vitest'
import { STATIONS } from '#golf/player/test-day-stations.ts'
import { drawTestSheet } from './draw-test-sheet.ts'

describe('the sheet of a test day', () => {
  const sheet = drawTestSheet({
    playerName: 'Ilo',
    stationWords: ({ name }) => `say ${name}`,
    leaveUnit: 'feet',
  })

  it('has a box for every ball, all on the sheet and none on another', () => {
    const boxes = sheet.shapes.flatMap((shape) => {
      if (shape.kind !== 'path') return []
      const [start] = shape.steps
      return start?.[0] === 'M' ? [{ left: start[1], top: start[2] }] : []
    })
    expect(boxes.length).toBe(STATIONS.reduce((sum, { balls }) => sum + balls, 0))
    for (const { left, top } of boxes) {
      expect(left).toBeGreaterThan(0)
      expect(left + 36).toBeLessThan(sheet.width)
      expect(top + 36).toBeLessThan(sheet.height)
    }
    for (const [index, one] of boxes.entries())
      for (const other of boxes.slice(index + 1))
        expect(Math.abs(one.left - other.left) >= 36 || Math.abs(one.top - other.top) >= 36).toBe(true)
  })

  it('says every station as a person would and as it is typed, and the cautions', () => {
    const words = sheet.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
    for (const { name } of STATIONS) {
      expect(words).toContain(name)
      expect(words).toContain(`say ${name}`)
    }
    expect(words.join(' ')).toMatch(/lightning/)
  })
})
