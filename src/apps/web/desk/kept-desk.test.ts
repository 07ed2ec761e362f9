import { describe, expect, it } from 'vitest'
import { openDesk } from './desk.ts'
import { movePin } from './edits.ts'
import { keepDesk, keepSteps, keptDesk, keptSteps } from './kept-desk.ts'

const stored = { courses: [{ id: 'ness' }], players: [{ id: 'wren' }] }

function storage(text: string | null = null): Pick<Storage, 'getItem' | 'setItem'> & { text: string | null } {
  return {
    text,
    getItem() {
      return this.text
    },
    setItem(_key, value) {
      this.text = value
    },
  }
}

describe('keptDesk', () => {
  it('gives back what was kept, to the last choice', () => {
    const place = storage()
    const desk = movePin({ ...openDesk('ness', '7', 'wren'), club: '7-iron', aimDegrees: -3.5 }, [2, 330])
    keepDesk(desk, place)
    expect(keptDesk(stored, place)).toEqual(desk)
  })

  it('forgets a desk whose player or course is no longer there', () => {
    const place = storage()
    keepDesk(openDesk('ness', '7', 'someone'), place)
    expect(keptDesk(stored, place)).toBeNull()
    keepDesk(openDesk('elsewhere', '7', 'wren'), place)
    expect(keptDesk(stored, place)).toBeNull()
  })

  it('takes nothing for a desk that is none, and lives without storage', () => {
    const { day: _, ...dayless } = openDesk('ness', '7', 'wren')
    for (const text of [null, '', '{', '[]', '{"courseId":"ness"}', JSON.stringify(dayless)])
      expect(keptDesk(stored, storage(text))).toBeNull()
    const forbidden = {
      getItem: (): string => {
        throw new Error('no')
      },
      setItem: (): void => {
        throw new Error('no')
      },
    }
    expect(() => keepDesk(openDesk('ness', '7', 'wren'), forbidden)).not.toThrow()
    expect(keptDesk(stored, forbidden)).toBeNull()
  })
})

describe('keptSteps', () => {
  it('gives back the steps that still fit the store, in their order', () => {
    const place = storage()
    const [first, second] = [openDesk('ness', '7', 'wren'), openDesk('ness', '8', 'wren')]
    keepSteps({ past: [first, openDesk('ness', '7', 'someone'), second], future: [first] }, place)
    expect(keptSteps(stored, place)).toEqual({ past: [first, second], future: [first] })
  })

  it('has none where nothing or nonsense was kept', () => {
    for (const text of [null, '', '{', '[]', '7', '{"past":7}', '{"past":[{}],"future":[null]}'])
      expect(keptSteps(stored, storage(text))).toEqual({ past: [], future: [] })
  })
})
