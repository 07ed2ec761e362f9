import { useCallback, useEffect, useState } from 'react'
import type { LogStep } from '#golf/round/log-steps.ts'
import type { HolePicture } from './hole-picture.ts'
import { type OpenRound, onOtherTab, picturesOf, readRound, takeBack, takeStep } from './round-shelf.ts'

/** A round of this phone and what can be done to it; every step is on the phone's disk before it is shown. */
export interface RoundAtHand {
  /** `undefined` while it is read, `null` when it is not on this phone. */
  readonly open: OpenRound | null | undefined
  readonly pictures: readonly HolePicture[]
  /** What went wrong with the last step; empty when nothing did. */
  readonly trouble: string
  readonly step: (step: LogStep) => void
  readonly undo: () => void
  readonly reload: () => void
}

/** Reads a round and its pictures, again when another tab of this phone has changed it. */
export function useRound(id: string): RoundAtHand {
  const [open, setOpen] = useState<OpenRound | null | undefined>(undefined)
  const [pictures, setPictures] = useState<readonly HolePicture[]>([])
  const [trouble, setTrouble] = useState('')
  const settle = useCallback((change: Promise<OpenRound | null>): void => {
    change
      .then((next) => {
        setOpen(next)
        setTrouble('')
      })
      .catch((error: unknown) =>
        setTrouble(`This phone did not keep it: ${error instanceof Error ? error.message : String(error)}`),
      )
  }, [])
  const reload = useCallback(() => {
    settle(readRound(id))
    picturesOf(id).then(setPictures, () => {})
  }, [id, settle])
  useEffect(() => {
    reload()
    return onOtherTab((changed) => changed === id && settle(readRound(id)))
  }, [id, reload, settle])
  return {
    open,
    pictures,
    trouble,
    step: (next) => settle(takeStep(id, next)),
    undo: () => settle(takeBack(id)),
    reload,
  }
}
