import { LIES, type Lie } from '#golf/player/player.ts'
import { HEADINGS } from './lines-of-play.ts'

/**
 * An action of a hole's problem as one number: shot, lie and heading. Tables are laid and kept by this number, and far
 * states share them.
 */
export function actionOf(shot: number, lie: Lie, heading: number): number {
  return (shot * LIES.length + LIES.indexOf(lie)) * HEADINGS + heading
}

/** How many actions a number of shots has. */
export function actionCount(shots: number): number {
  return shots * LIES.length * HEADINGS
}

/** Number of the shot. */
export function actionShot(action: number): number {
  return Math.floor(action / (LIES.length * HEADINGS))
}

/** Lie that the action is played from. */
export function actionLie(action: number): Lie {
  return LIES[Math.floor(action / HEADINGS) % LIES.length] as Lie
}

/** Number of the heading. */
export function actionHeading(action: number): number {
  return action % HEADINGS
}
