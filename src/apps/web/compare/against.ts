import type { Day } from '#golf/course/day.ts'
import type { Desk } from '../desk/desk.ts'

/** What is different in what the desk is compared with; an absent part is the same. */
export interface Against {
  readonly playerId?: string
  readonly teeName?: string
  readonly pin?: 'front' | 'middle' | 'back'
  /** A day of the store by its id, or `''` for the calm one, with what it is. */
  readonly day?: { readonly id: string; readonly day: Day }
}

/** The desk with other parts in place of its own; `null` when nothing is different. */
export function otherDesk(desk: Desk, against: Against): Desk | null {
  const { playerId, teeName, pin, day } = against
  if (playerId === undefined && teeName === undefined && pin === undefined && day === undefined) return null
  return {
    ...desk,
    club: null,
    aimDegrees: null,
    ...(playerId === undefined ? {} : { playerId, carries: {} }),
    // From other markers the hole has another frame: a place in it is not the same place.
    ...(teeName === undefined
      ? {}
      : { teeName, ball: null, pin: typeof desk.pin === 'string' ? desk.pin : 'day' }),
    ...(pin === undefined ? {} : { pin }),
    ...(day === undefined ? {} : { dayId: day.id === '' ? null : day.id, day: day.day }),
  }
}
