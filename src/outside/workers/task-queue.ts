/** Tasks waiting for a lane. */
export interface TaskQueue {
  /** The next task for a lane that worked on the group `last` before (`null` = on none); `null` when none is left. */
  take(last: string | null): { readonly index: number; readonly group: string } | null
}

/**
 * Hands out tasks so that what a group shares is worked out as seldom as can be: a lane stays with its group, then begins
 * the first group that nobody has begun, and only then helps with the one that has most left. `groups` names the group of
 * each task.
 */
export function taskQueue(groups: readonly string[]): TaskQueue {
  const waiting = new Map<string, number[]>()
  groups.forEach((group, index) => {
    waiting.set(group, [...(waiting.get(group) ?? []), index])
  })
  const begun = new Set<string>()

  function choose(last: string | null): string | null {
    if (last !== null && waiting.has(last)) return last
    let longest: string | null = null
    for (const [group, indices] of waiting) {
      if (!begun.has(group)) return group
      if (indices.length > (waiting.get(longest ?? '')?.length ?? 0)) longest = group
    }
    return longest
  }

  return {
    take(last) {
      const group = choose(last)
      const index = group === null ? undefined : waiting.get(group)?.shift()
      if (group === null || index === undefined) return null
      begun.add(group)
      if (waiting.get(group)?.length === 0) waiting.delete(group)
      return { index, group }
    },
  }
}
