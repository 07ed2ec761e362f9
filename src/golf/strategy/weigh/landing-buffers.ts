import type { LaidAction } from './laid-actions.ts'

/** Gives every landing that an action reads one of a few buffers, over those that were read longest ago. */
export interface LandingBuffers {
  /** Hands over each landing of an action that is not laid, with the number of the buffer to lay it in. */
  read(action: LaidAction, lay: (landing: number, buffer: number) => void): void
}

/** Empty buffers; at least as many as one action reads. */
export function landingBuffers(buffers: number, landings: number): LandingBuffers {
  const bufferOf = new Int32Array(landings).fill(-1)
  const owner = new Int32Array(buffers).fill(-1)
  const lastRead = new Int32Array(buffers).fill(-1)
  let reads = 0
  return {
    read(action, lay) {
      reads += 1
      for (const landing of action.landings)
        if ((bufferOf[landing] as number) >= 0) lastRead[bufferOf[landing] as number] = reads
      for (const landing of action.landings) {
        if ((bufferOf[landing] as number) >= 0) continue
        let oldest = 0
        for (let buffer = 1; buffer < buffers; buffer++)
          if ((lastRead[buffer] as number) < (lastRead[oldest] as number)) oldest = buffer
        if ((owner[oldest] as number) >= 0) bufferOf[owner[oldest] as number] = -1
        owner[oldest] = landing
        bufferOf[landing] = oldest
        lastRead[oldest] = reads
        lay(landing, oldest)
      }
    },
  }
}

/**
 * Actions in the order in which fewer landings are laid over and over: line by line, where the shots share them, or shot
 * by shot, where each has its own.
 */
export function inLayingOrder(
  actions: readonly LaidAction[],
  buffers: number,
  landings: number,
): readonly LaidAction[] {
  const byShot = actions.toSorted((a, b) => a.shot - b.shot)
  const laysOf = (order: readonly LaidAction[]): number => {
    let lays = 0
    const counted = landingBuffers(buffers, landings)
    for (const action of order)
      counted.read(action, () => {
        lays += 1
      })
    return lays
  }
  return laysOf(byShot) < laysOf(actions) ? byShot : actions
}
