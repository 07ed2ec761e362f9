import { RULES_2023 } from '#golf/rules/rules-2023.ts'

/** What each relief costs and where the ball is dropped, a sentence each, by the Rules as dated data. */
export function reliefReminders(localRules: readonly string[]): string[] {
  const { penaltyArea, lostOrOut, unplayable, immovableObstruction } = RULES_2023
  const near = lostOrOut.nearFairway
  return [
    `Red or yellow: ${cost(penaltyArea.backOnTheLine.penaltyStrokes)}, back on the line from the pin through where it crossed the edge, or again from the last spot (Rule 17.1d).`,
    `Red only, too: ${cost(penaltyArea.lateral.penaltyStrokes)}, within ${lengths(penaltyArea.lateral.clubLengths)} of where it crossed, not nearer the hole (Rule ${penaltyArea.lateral.clause}).`,
    `Lost or out: ${cost(lostOrOut.strokeAndDistance.penaltyStrokes)} and again from the last spot; play a provisional ball, and search ${RULES_2023.searchMinutes} minutes at most (Rule 18).`,
    ...(localRules.includes(near.localRule)
      ? [`${near.clause} is in force: ${cost(near.penaltyStrokes)}, near the fairway instead.`]
      : []),
    `Unplayable: ${cost(unplayable.lateral.penaltyStrokes)}, within ${lengths(unplayable.lateral.clubLengths)}, back on the line, or again from the last spot; out of a bunker on the line ${cost(unplayable.outOfBunker.penaltyStrokes)} (Rule 19).`,
    `Made path or fixed thing in the way: free, within ${lengths(immovableObstruction.clubLengths)} of the nearest clear point (Rule ${immovableObstruction.clause}).`,
  ]
}

const NUMBERS = ['no', 'one', 'two', 'three']

function cost(strokes: number): string {
  return `${NUMBERS[strokes] ?? strokes} stroke${strokes === 1 ? '' : 's'}`
}

function lengths(count: number): string {
  return `${NUMBERS[count] ?? count} club-length${count === 1 ? '' : 's'}`
}
