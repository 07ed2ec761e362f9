import { describe, expect, it } from 'vitest'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { shotKeeper } from './shot-keeper.ts'
import { applyEdit, type EnteredShot, enter, inverseOf } from './shot-sheet.ts'

const record = (carryMetres: number): ShotRecord => ({
  date: '2026-05-02',
  club: '7-iron',
  lie: 'fairway',
  carryMetres,
  totalMetres: null,
  offlineMetres: 3,
  strike: null,
})
const put = (shots: readonly EnteredShot[]) => ({ put: shots, taken: [] })
const carries = (shots: readonly EnteredShot[]): (number | null)[] => shots.map((shot) => shot.carryMetres)

describe('a sheet of shots', () => {
  const [first, second, third] = enter([record(100), record(101), record(102)], [], { tab: 'a', at: 1000 })

  it('puts shots down in their order, and a shot that was taken back to its old place', () => {
    const all = applyEdit([], put([first!, second!, third!]))
    const removed = { put: [], taken: [second!] }
    expect(carries(applyEdit(all, removed))).toEqual([100, 102])
    expect(carries(applyEdit(applyEdit(all, removed), inverseOf(removed)))).toEqual([100, 101, 102])
    expect(applyEdit(all, inverseOf(put([first!, second!, third!])))).toEqual([])
  })

  it('puts later shots after all that stand there, whatever the clock says', () => {
    const all = applyEdit([], put([first!, second!, third!]))
    const [late] = enter([record(99)], all, { tab: 'b', at: 5 })
    expect(carries(applyEdit(all, put([late!])))).toEqual([100, 101, 102, 99])
  })

  it('counts a shot once, however often it is put down again', () => {
    expect(carries(applyEdit(applyEdit([], put([first!])), put([first!])))).toEqual([100])
  })
})

/** A browser's storage that may be full, and the tabs that hear of its changes. */
function browser() {
  const values = new Map<string, string>()
  const tabs: (() => void)[] = []
  const place = { isFull: false }
  const tab = (playerId = 'wren') =>
    shotKeeper(playerId, {
      storage: {
        getItem: (key) => values.get(key) ?? null,
        setItem(key, value) {
          if (place.isFull) throw new Error('no room')
          values.set(key, value)
        },
        removeItem: (key) => void values.delete(key),
      },
      onOtherTab(changed) {
        tabs.push(changed)
        return () => undefined
      },
    })
  return {
    values,
    place,
    tab,
    tellAll: () => {
      for (const changed of tabs) changed()
    },
  }
}

describe('the keeper of a sheet', () => {
  const shot = (carry: number, tab: string) => enter([record(carry)], [], { tab, at: carry })[0]!

  it('has the shots again when the page is loaded again, and nothing of another player', () => {
    const { tab } = browser()
    tab().edit(put([shot(100, 'a')]))
    expect(carries(tab().shots())).toEqual([100])
    expect(tab('aldous').shots()).toEqual([])
  })

  it('keeps what two tabs put down and take away, each without the other’s being lost', () => {
    const { tab, tellAll } = browser()
    const [one, two] = [tab(), tab()]
    let told = 0
    two.listen(() => {
      told += 1
    })
    one.edit(put([shot(100, 'a')]))
    // The second tab has not heard of it yet, and still loses nothing.
    two.edit(put([shot(101, 'b')]))
    expect(carries(two.shots())).toEqual([100, 101])
    one.edit({ put: [], taken: [shot(100, 'a')] })
    tellAll()
    expect(carries(two.shots())).toEqual([101])
    expect(told).toBe(2)
  })

  it('says that a full browser keeps nothing, has the shots all the same, and keeps them once there is room', () => {
    const { tab, place } = browser()
    const [one, other] = [tab(), tab()]
    one.edit(put([shot(100, 'a')]))
    place.isFull = true
    one.edit(put([shot(101, 'a')]))
    expect(one.isKept()).toBe(false)
    expect(carries(one.shots())).toEqual([100, 101])
    place.isFull = false
    other.edit(put([shot(102, 'b')]))
    one.edit(put([shot(103, 'a')]))
    expect(one.isKept()).toBe(true)
    expect(carries(tab().shots())).toEqual([100, 101, 102, 103])
  })

  it('leaves nothing of the pupil in the browser once all is taken away', () => {
    const { tab, values } = browser()
    tab().edit(put([shot(100, 'a')]))
    tab().edit({ put: [], taken: [shot(100, 'a')] })
    expect([...values.keys()]).toEqual([])
  })

  it('takes nothing for a shot that is none', () => {
    const { tab, values } = browser()
    const sound = JSON.stringify([
      shot(100, 'a'),
      { ...shot(101, 'a'), lie: 'lawn' },
      { club: '7-iron' },
      null,
    ])
    for (const text of ['', '{', '{}', '7']) {
      values.set('marram.shots.wren', text)
      expect(tab().shots()).toEqual([])
    }
    values.set('marram.shots.wren', sound)
    expect(carries(tab().shots())).toEqual([100])
  })
})
