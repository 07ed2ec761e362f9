import { describe, expect, it } from 'vitest'
import { beginHistory, type History, redo, remember, undo } from './history.ts'

const at = (milliseconds: number, kind = 'wind', drag: number | null = null) => ({
  kind,
  at: milliseconds,
  drag,
})

describe('history', () => {
  it('goes back one edit at a time, and stays at the beginning', () => {
    const history = remember(remember(beginHistory(1), 2, at(0)), 3, at(5000))
    expect(undo(history).now).toBe(2)
    expect(undo(undo(history)).now).toBe(1)
    expect(undo(undo(undo(history))).now).toBe(1)
  })

  it('takes quick edits of one kind as one step, and edits of another kind as their own', () => {
    let history: History<number> = beginHistory(0)
    for (const [index, value] of [1, 2, 3].entries()) history = remember(history, value, at(index * 300))
    expect(undo(history).now).toBe(0)
    expect(undo(remember(history, 4, at(700, 'firmness'))).now).toBe(3)
  })

  it('takes a whole drag as one step, however slow, and the next drag as another', () => {
    let history: History<number> = beginHistory(0)
    for (const [index, value] of [1, 2, 3].entries())
      history = remember(history, value, at(index * 9000, 'aim', 1))
    history = remember(history, 4, at(27_100, 'aim', 2))
    expect(undo(history).now).toBe(3)
    expect(undo(undo(history)).now).toBe(0)
  })

  it('remembers nothing when nothing changed', () => {
    const history = beginHistory(7)
    expect(remember(history, 7, at(0))).toBe(history)
  })

  it('goes forth again what it went back, until something else is done', () => {
    const history = remember(remember(beginHistory(1), 2, at(0)), 3, at(5000))
    const back = undo(undo(history))
    expect(redo(back).now).toBe(2)
    expect(redo(redo(redo(back)))).toEqual({ ...history, last: null })
    expect(redo(remember(back, 9, at(9000))).now).toBe(9)
  })

  it('keeps as many steps as are made, and goes on from those that were kept', () => {
    let history: History<number> = beginHistory(0)
    for (let step = 1; step <= 1000; step += 1) history = remember(history, step, at(step * 5000))
    let again: History<number> = beginHistory(history.now, history)
    for (let step = 0; step < 1000; step += 1) again = undo(again)
    expect(again.now).toBe(0)
    expect(again.past).toEqual([])
    expect(again.future).toHaveLength(1000)
  })
})
