import { useCallback, useEffect, useState } from 'react'
import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Club, Lie, Player } from '#golf/player/player.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import type { Reader } from '../desk/desk.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { groundWord, readerMetres } from '../words.ts'
import { type AskedLine, placeOf } from './asked-line.ts'
import { usualLength } from './range-view.ts'
import type { ShotChoice } from './shot-choices.tsx'
import type { NewShot } from './shot-sheet.ts'
import { lieNamed, reachable, type Spot, shotWords } from './shot-words.ts'

/** The shot that is put down next: what is hit, and the cross where it would go. */
export interface NextShot {
  /** On a hole: to where it stopped. */
  readonly choice: ShotChoice
  readonly choose: (choice: ShotChoice) => void
  readonly club: Club | undefined
  readonly spot: Spot
  /** Puts it down at a spot, or the nearest that a ball can come to. */
  readonly putAt: (spot: Spot) => void
  readonly step: (right: number, further: number, isFine: boolean) => void
  /** What was put down last, in words. */
  readonly told: string
}

/** Where shots on a hole are put down. */
export interface HoleLine {
  readonly courseId: string
  readonly hole: Hole
  readonly line: AskedLine
  readonly lie: Lie
}

/** The next shot of a player; `line` is `null` on a range. `firstClub` is the club it begins with. */
export function useNextShot(
  player: Player,
  firstClub: string | undefined,
  line: HoleLine | null,
  reader: Reader,
  put: (shots: readonly NewShot[]) => void,
): NextShot {
  const [chosen, choose] = useState<ShotChoice>({
    club: firstClub ?? '',
    lie: 'mat',
    to: 'carry',
    isMishit: false,
  })
  const [told, setTold] = useState('')
  const [spot, setSpot] = useState<Spot>({ along: 0, right: 0 })
  const club = player.clubs.find(({ name }) => name === chosen.club) ?? player.clubs[0]
  const isOnHole = line !== null
  const to = isOnHole ? 'total' : chosen.to
  const middle = club === undefined ? 0 : usualLength(club, { to })
  const { units } = reader
  // Another club is another range: the cross begins in the middle of its pattern.
  useEffect(() => setSpot(reachable({ along: middle, right: 0 }, to, { units })), [middle, to, units])
  const choice: ShotChoice = {
    ...chosen,
    club: club?.name ?? '',
    to,
  }
  return {
    choice,
    choose: (next) => choose({ ...next, to: isOnHole ? chosen.to : next.to }),
    club,
    spot,
    told,
    putAt(asked) {
      const at = reachable(asked, to, reader)
      const record = recordOf(at, choice, line?.lie ?? lieNamed(chosen.lie))
      const finish = line === null ? null : finishOf(at, line)
      put([finish === null ? record : { ...record, finish }])
      setSpot(at)
      choose((before) => ({ ...before, isMishit: false }))
      const ground = finish === null ? '' : `; it finished: ${groundWord(finish.ground)}`
      setTold(`Put down: ${shotWords(record, reader)}${ground}.`)
    },
    step: useCallback(
      (right, further, isFine) => {
        const step = (isFine ? DESK_SETTINGS.shotFineStep : DESK_SETTINGS.shotStep) * readerMetres(reader)
        setSpot((from) =>
          reachable({ along: from.along + further * step, right: from.right + right * step }, to, reader),
        )
      },
      [to, reader],
    ),
  }
}

function recordOf({ along, right }: Spot, { club, to, isMishit }: ShotChoice, lie: Lie): ShotRecord {
  return {
    date: today(),
    club,
    lie,
    carryMetres: to === 'carry' ? along : null,
    totalMetres: to === 'total' ? along : null,
    offlineMetres: right,
    strike: isMishit ? 'mishit' : null,
  }
}

function finishOf(spot: Spot, { courseId, hole, line }: HoleLine): NonNullable<NewShot['finish']> {
  const at = placeOf(spot, line)
  return { courseId, holeRef: hole.ref, at, ground: groundAt(hole, at) }
}

/** The day where the player stands, as ISO. */
function today(): string {
  const now = new Date()
  const two = (value: number): string => String(value).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
