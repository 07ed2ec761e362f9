import { describe, expect, it } from 'vitest'
import { taskQueue } from './task-queue.ts'

describe('taskQueue', () => {
  it('keeps a lane with its group, then begins what nobody has begun', () => {
    const queue = taskQueue(['1', '2', '3', '1', '2', '3'])
    expect(queue.take(null)).toEqual({ index: 0, group: '1' })
    expect(queue.take(null)).toEqual({ index: 1, group: '2' })
    expect(queue.take('1')).toEqual({ index: 3, group: '1' })
    expect(queue.take('1')).toEqual({ index: 2, group: '3' })
    expect(queue.take('2')).toEqual({ index: 4, group: '2' })
  })

  it('lets a lane help where most is left once every group is begun, and hands out everything once', () => {
    const queue = taskQueue(['1', '1', '2', '2', '2', '2'])
    queue.take(null)
    queue.take(null)
    expect(queue.take('1')?.group).toBe('1')
    expect(queue.take('1')?.group).toBe('2')
    const rest = [queue.take('1'), queue.take('2'), queue.take('2')]
    expect(rest.map((task) => task?.index ?? null)).toEqual([4, 5, null])
  })
})
