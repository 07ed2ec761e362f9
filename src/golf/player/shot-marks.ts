import { lieEffect } from './lie-effects.ts'
import type { Player } from './player.ts'
import type { ShotRecord } from './shot-record.ts'

/** Where the balls of one club came down, as a picture of its pattern shows them. */
export interface ShotMarks {
  /** Metres right of the intended line and along it, as from the reference lie: what the lie took of the carry is put back. */
  readonly places: readonly { readonly x: number; readonly y: number; readonly isMishit: boolean }[]
  /** Carries of shots of which nobody wrote down the side, metres. */
  readonly withoutSide: readonly number[]
  /** Shots that have no carry: where they stopped says nothing of where they came down. */
  readonly withoutCarry: number
}

/** The marks of all shots with this club; a mishit is one that the player called so. */
export function shotMarks(player: Player, club: string, shots: readonly ShotRecord[]): ShotMarks {
  const places: { x: number; y: number; isMishit: boolean }[] = []
  const withoutSide: number[] = []
  let withoutCarry = 0
  for (const { club: struck, carryMetres, offlineMetres, lie, strike } of shots) {
    if (struck !== club) continue
    if (carryMetres === null) {
      withoutCarry += 1
      continue
    }
    const share = lie === null ? 1 : lieEffect(lie, club, player).carry
    if (offlineMetres === null) withoutSide.push(carryMetres / share)
    else places.push({ x: offlineMetres / share, y: carryMetres / share, isMishit: strike === 'mishit' })
  }
  return { places, withoutSide, withoutCarry }
}
